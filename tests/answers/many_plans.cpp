#include "tests/answers/many_plans.hpp"

#include <map>
#include <memory>
#include <string>

#include "model/body/check_body.hpp"
#include "model/body/girth.hpp"
#include "model/io/readers/mesh_reader.hpp"
#include "model/layout/forms/layout_form.hpp"
#include "model/limits/limit_share.hpp"
#include "model/pipeline/hold_against_limits.hpp"
#include "tests/random_plans/random_plan.hpp"

namespace wrapgauge::answers {
namespace {

constexpr unsigned kPlans = 60;

// Random plans go up to 30 kPa and 60 mL, where most run away; limits are met far below.
void make_gentle(std::vector<InletProgram>& inflation) {
  for (InletProgram& program : inflation) {
    if (auto* pressure = std::get_if<Pressure>(&program.target)) *pressure = 0.25 * *pressure;
    if (auto* volume = std::get_if<Volume>(&program.target)) *volume = 0.5 * *volume;
  }
}

void give_use_and_session(unsigned seed, Plan& plan) {
  constexpr UsePattern kUses[] = {UsePattern::kSustained, UsePattern::kShortHold, UsePattern::kPulse};
  plan.use = kUses[seed % 3];
  if (seed % 2 == 1) return;
  if (plan.use == UsePattern::kSustained)
    plan.session = Session{.length = 25.0 * minute, .hold = {}, .off = {}, .ramp = 10.0 * second};
  else
    plan.session =
        Session{.length = 8.0 * minute, .hold = 30.0 * second, .off = 90.0 * second, .ramp = 1.0 * second};
}

AskedPlan drawn_plan(unsigned seed) {
  int turned_down = 0;
  random_plans::RandomPlan random = random_plans::random_plan(seed, shipped_resources(), turned_down);
  AskedPlan asked{random.words + ", seed " + std::to_string(seed), std::move(random.plan),
                  std::move(random.body)};
  make_gentle(asked.plan.inflation);
  give_use_and_session(seed, asked.plan);
  if (!asked.body.part) asked.plan.part = asked.body.part = BodyPart::kForearm;
  asked.plan.mesh_edge = std::max(asked.plan.mesh_edge, 12.0 * mm);
  asked.plan.solver.steps = 2;
  return asked;
}

// A cuff made for the girth at half of the length.
std::unique_ptr<AskedPlan> scanned_plan(const std::filesystem::path& file, BodyPart part,
                                        const std::string& tissue) {
  const auto raw = read_mesh(file);
  if (!raw) return nullptr;
  const auto checked =
      check_body(raw.value(), {file.stem().string(), LengthUnit::kMillimetre, Vec3(0, 0, 1)});
  if (!checked) return nullptr;
  auto made = std::make_unique<AskedPlan>();
  AskedPlan& asked = *made;
  asked.words = file.filename().string();
  asked.body = checked->body;
  asked.body.part = asked.plan.part = part;
  asked.body.tissue_site = asked.plan.tissue_site = tissue;
  const Length station = 0.5 * body_length(asked.body);
  const Girth girth = girth_at(asked.body, station);
  auto layout = make_layout("cuff", {{"girth", girth.girth / mm}, {"stretch", 0.02}}, {});
  if (!layout) return nullptr;
  asked.plan.name = asked.words;
  asked.plan.body =
      BodyFile{.file = file, .unit = {}, .axis_direction = {}, .front = {}, .side = {}, .mend = {}};
  asked.plan.layout = std::move(layout).value();
  asked.plan.placement.anchor = AnchorAtStation{station, 90.0};
  for (const Inlet& inlet : asked.plan.layout.inlets)
    asked.plan.inflation.push_back({inlet.name, 1.5 * kPa, {}});
  asked.plan.use = UsePattern::kShortHold;
  asked.plan.mesh_edge = 10.0 * mm;
  asked.plan.solver.steps = 3;
  return made;
}

}  // namespace

const Resources& shipped_resources() {
  static const Resources resources =
      read_resources(std::filesystem::path(WRAPGAUGE_SOURCE_DIR) / "resources").value();
  return resources;
}

const std::vector<AskedPlan>& many_plans() {
  static const std::vector<AskedPlan> plans = [] {
    std::vector<AskedPlan> drawn;
    for (unsigned seed = 1; seed <= kPlans; ++seed) drawn.push_back(drawn_plan(seed));
    return drawn;
  }();
  return plans;
}

const std::vector<AskedPlan>& scanned_plans() {
  static const std::vector<AskedPlan> plans = [] {
    const std::filesystem::path folder = std::filesystem::path(WRAPGAUGE_SHARED_DIR) / "data/bodies";
    std::vector<AskedPlan> all;
    const auto add = [&](const char* file, BodyPart part, const char* tissue) {
      if (auto plan = scanned_plan(folder / file, part, tissue)) all.push_back(std::move(*plan));
    };
    add("mpfb_mA_forearm.obj", BodyPart::kForearm, "forearm relaxed");
    add("mpfb_fA_forearm.stl", BodyPart::kForearm, "forearm relaxed");
    add("hubmap_VH_M_forearm.stl", BodyPart::kForearm, "forearm relaxed");
    add("mpfb_mA_calf.obj", BodyPart::kLowerLeg, "calf");
    add("mpfb_fA_calf.stl", BodyPart::kLowerLeg, "calf");
    add("mpfb_mA_thigh.obj", BodyPart::kThigh, "thigh");
    add("mpfb_mA_upperarm.obj", BodyPart::kUpperArm, "upper arm relaxed");
    return all;
  }();
  return plans;
}

std::optional<Estimate> solve(const Plan& plan, const Body& body, bool relief) {
  auto found = estimate(plan, body, shipped_resources(),
                        {.mesh_error = false, .relief = relief, .comparisons = false});
  if (!found) return std::nullopt;
  return std::move(found).value();
}

const std::optional<Estimate>& answer_of(const AskedPlan& asked) {
  static std::map<std::string, std::optional<Estimate>> answers;
  auto found = answers.find(asked.words);
  if (found == answers.end()) found = answers.emplace(asked.words, solve(asked.plan, asked.body)).first;
  return found->second;
}

Estimate judged(const Plan& plan, Estimate estimate, const LimitInputs& inputs) {
  hold_against_limits(plan, shipped_resources(), inputs, std::nullopt, estimate);
  return estimate;
}

Eigen::VectorXd shares(const Estimate& estimate) {
  return share_of_limit(estimate.limits, estimate.limit_inputs, estimate.setup, estimate.path.states.back(),
                        estimate.path.sheet, estimate.figures, estimate.map.mean_1cm2_pa);
}

}  // namespace wrapgauge::answers
