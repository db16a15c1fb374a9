#include "model/plan/plan_from_json.hpp"

#include <set>
#include <utility>

#include "model/body/length_unit.hpp"
#include "model/core/json_object.hpp"
#include "model/core/number_text.hpp"
#include "model/io/readers/drawing_reader.hpp"
#include "model/layout/drawing_map_json.hpp"
#include "model/layout/layout_json.hpp"
#include "model/plan/mend_json.hpp"
#include "model/plan/people_json.hpp"
#include "model/plan/plan_numbers.hpp"
#include "model/plan/region_json.hpp"
#include "model/plan/site_json.hpp"
#include "model/plan/supply_json.hpp"

namespace wrapgauge {
namespace {

using nlohmann::json;

constexpr NumberRange kAngle{-360.0, 360.0, "degrees"};
constexpr NumberRange kSeconds{0.0, 86400.0, "s"};

// Reads the object under `key` with `read`; a missing one is reported unless it is optional.
template <class Read>
void read_part(JsonObject& parent, const char* key, bool optional, const Read& read) {
  if (parent.failed() || (optional && !parent.has(key))) return;
  const json& value = parent.value(key);
  if (parent.failed()) return;
  JsonObject part(value, parent.place(key));
  read(part);
  if (auto problem = part.finish()) parent.fail(std::move(*problem));
}

template <class Read>
void read_each(JsonObject& parent, const char* key, const Read& read) {
  int number = 0;
  for (const json& value : parent.list_or_empty(key)) {
    if (parent.failed()) return;
    JsonObject item(value, parent.place(key) + " " + std::to_string(++number));
    read(item);
    if (auto problem = item.finish()) parent.fail(std::move(*problem));
  }
}

BodyFile body_file(JsonObject& object) {
  BodyFile body;
  body.file = object.text("file");
  if (object.has("unit")) body.unit = unit_from_name(object.choice("unit", {"mm", "cm", "m", "in"}));
  if (object.has("axis"))
    body.axis_direction =
        direction_from_json(object, "axis", Phrase::worded("point it from hand or foot to trunk"));
  if (object.has("front"))
    body.front = direction_from_json(object, "front", Phrase::worded("point it to the person's front"));
  if (object.has("side")) body.side = side_from_name(object.choice("side", {"right", "left"}));
  read_each(object, "repair", [&](JsonObject& item) { body.mend.push_back(mend_step_from_json(item)); });
  return body;
}

BodyForm body_form(JsonObject& object) {
  BodyForm body;
  body.form = object.text("form");
  if (object.has("sex")) body.person.sex = sex_from_name(object.choice("sex", {"male", "female"}));
  body.person.percentile = object.optional_number("percentile", {1.0, 99.0, ""});
  if (object.has("side"))
    body.person.side = side_from_name(object.choice("side", {"right", "left"})).value_or(BodySide::kRight);
  if (!object.failed() && body.person.percentile && !body.person.sex)
    object.fail(Phrase::worded("percentile needs a sex: give male or female."));
  if (!object.has("parameters") || object.failed()) return body;
  const json& value = object.value("parameters");
  JsonObject parameters(value, object.place("parameters"));
  if (value.is_object())
    for (const auto& item : value.items())
      body.parameters[item.key()] = parameters.number(item.key().c_str(), {-1e5, 1e5, ""});
  if (auto problem = parameters.finish()) object.fail(std::move(*problem));
  return body;
}

void read_body(JsonObject& object, Plan& plan) {
  const bool is_file = object.has("file"), is_form = object.has("form");
  if (!object.failed() && is_file == is_form) object.fail(Phrase::worded("give either a file or a form."));
  if (const auto part = object.optional_text("part"); part && !object.failed()) {
    plan.part = body_part_from_name(*part);
    if (!plan.part)
      object.fail(Phrase::worded("the part '%1' is not known; it may be %2.",
                                 {name_of(*part), name_of(body_part_names())}));
  }
  read_part(object, "sites_confirmed", true,
            [&](JsonObject& word) { plan.sites_confirmed = sites_confirmed_from_json(word); });
  if (is_form)
    plan.body = body_form(object);
  else
    plan.body = body_file(object);
}

// Regions lie near landmarks or bony sites.
void read_regions(JsonObject& object, Plan& plan) {
  std::vector<Landmark> known = plan.landmarks;
  for (const BonySite& site : plan.bony_sites) known.push_back({site.name, site.point_m});
  const bool form = std::holds_alternative<BodyForm>(plan.body);
  read_each(object, "regions",
            [&](JsonObject& item) { plan.regions.push_back(region_from_json(item, known, form)); });
}

void read_tissue(JsonObject& object, Plan& plan) {
  plan.tissue_site = object.text_or("site", "");
  if (object.has("posture"))
    plan.posture =
        object.choice("posture", {"relaxed", "tense"}) == "tense" ? Posture::kTense : Posture::kRelaxed;
  plan.tissue_stiffness_factor = object.optional_number("stiffness_factor", {0.05, 20.0, ""});
  plan.tissue_poisson = object.optional_number("poisson", {0.0, 0.49, ""});
  if (object.has("model") && object.choice("model", {"foundation", "coupled"}) == "coupled")
    plan.tissue_model = TissueModel::kCoupled;
  const json& depths = object.list_or_empty("depth_mm");
  if (!object.failed() && !depths.empty())
    plan.tissue_depth_mm = object.numbers("depth_mm", depths.size(), kDepth);
  if (!object.failed() && plan.tissue_site.empty() && std::holds_alternative<BodyFile>(plan.body))
    object.fail(Phrase::worded("site is missing; a body from a file needs one, e.g. \"forearm relaxed\"."));
}

void settle_layout(JsonObject& parent, Result<Layout> layout, Plan& plan) {
  if (layout)
    plan.layout = std::move(layout).value();
  else
    parent.fail(layout.problem());
}

// {"drawing": FILE, "map": FILE or the mapping itself}
void read_layout_drawing(JsonObject& parent, const json& value, const std::filesystem::path& folder,
                         Plan& plan) {
  JsonObject reference(value, parent.place("layout"));
  DrawnLayout drawn;
  drawn.file = reference.text("drawing");
  const json& said = reference.value("map");
  if (auto problem = reference.finish()) return parent.fail(std::move(*problem));
  if (said.is_string()) drawn.map = std::filesystem::path(said.get<std::string>());
  const Result<DrawingMap> map = said.is_string() ? read_drawing_map(folder / std::get<0>(drawn.map))
                                                  : drawing_map_from_json(said, reference.place("map"));
  if (!map) return parent.fail(map.problem());
  if (!said.is_string()) drawn.map = *map;
  settle_layout(parent, read_drawn_layout(folder / drawn.file, *map), plan);
  plan.layout_drawing = std::move(drawn);
}

void read_layout_part(JsonObject& parent, const std::filesystem::path& folder, Plan& plan) {
  const json& value = parent.value("layout");
  if (parent.failed()) return;
  if (value.is_object() && value.contains("drawing")) return read_layout_drawing(parent, value, folder, plan);
  if (!value.is_object() || !value.contains("file"))
    return settle_layout(parent, layout_from_json(value, parent.place("layout")), plan);
  JsonObject reference(value, parent.place("layout"));
  plan.layout_file = reference.text("file");
  if (auto problem = reference.finish()) return parent.fail(std::move(*problem));
  settle_layout(parent, read_layout(folder / *plan.layout_file), plan);
}

void read_anchor(JsonObject& object, Placement& placement) {
  const bool at_point = object.has("point_mm"), at_station = object.has("station_mm");
  if (!object.failed() && at_point == at_station)
    object.fail(Phrase::worded("give either point_mm or station_mm."));
  if (at_point) {
    placement.anchor = AnchorAtPoint{point_m(object, "point_mm")};
  } else {
    const double station_mm = object.number("station_mm", {0.0, 3000.0, "mm"});
    placement.anchor = AnchorAtStation{station_mm * mm, object.number_or("angle_deg", 0.0, kAngle)};
  }
}

void read_wear(JsonObject& object, Placement& placement) {
  read_part(object, "anchor", false, [&](JsonObject& anchor) { read_anchor(anchor, placement); });
  if (object.has("layout_point_mm")) {
    const std::vector<double> xy = object.numbers("layout_point_mm", 2, kCoordinate);
    placement.layout_point_m = 1e-3 * Vec2(xy[0], xy[1]);
  }
  placement.turn_deg = object.number_or("turn_deg", 0.0, kAngle);
}

void read_mesh(JsonObject& object, Plan& plan) {
  const auto length = [](const std::optional<double>& value_mm) {
    return value_mm ? std::optional<Length>(*value_mm * mm) : std::nullopt;
  };
  plan.mesh_edge = object.number_or("edge_mm", plan.mesh_edge / mm, {0.5, 30.0, "mm"}) * mm;
  plan.mesh_seam_edge = length(object.optional_number("seam_edge_mm", {0.5, 30.0, "mm"}));
  plan.mesh_seam_band = length(object.optional_number("seam_band_mm", {0.0, 50.0, "mm"}));
  if (object.failed()) return;
  if (plan.mesh_seam_edge && *plan.mesh_seam_edge > plan.mesh_edge)
    object.fail(Phrase::worded(
        "seam_edge_mm is %1 mm, longer than edge_mm, %2 mm; edges beside seams are the shorter ones.",
        {figures_of(number_text(*plan.mesh_seam_edge / mm)), figures_of(number_text(plan.mesh_edge / mm))}));
  if (plan.mesh_seam_band && !plan.mesh_seam_edge)
    object.fail(Phrase::worded("seam_band_mm says how far seam_edge_mm reaches; give seam_edge_mm too."));
}

ProgrammeStep programme_step(JsonObject& object) {
  ProgrammeStep step;
  step.level = object.number("level", {0.0, 1.0, ""});
  step.ramp = object.number_or("ramp_s", 0.0, kSeconds) * second;
  step.hold = object.number_or("hold_s", 0.0, kSeconds) * second;
  return step;
}

InletProgram inlet_program(JsonObject& object) {
  InletProgram program;
  program.inlet = object.text("inlet");
  const auto pressure_kpa = object.optional_number("pressure_kpa", {0.0, 100.0, "kPa"});
  const auto pressure_mmhg = object.optional_number("pressure_mmhg", {0.0, 750.0, "mmHg"});
  const auto volume_ml = object.optional_number("volume_ml", {0.0, 20000.0, "mL"});
  const auto pushed_ml = object.optional_number("pushed_air_ml", {0.0, 20000.0, "mL"});
  const auto dead_ml = object.optional_number("dead_ml", {0.01, 20000.0, "mL"});
  if (object.failed()) return program;
  if (pressure_kpa.has_value() + pressure_mmhg.has_value() + volume_ml.has_value() + pushed_ml.has_value() !=
      1)
    object.fail(
        Phrase::worded("give exactly one of pressure_kpa, pressure_mmhg, volume_ml and pushed_air_ml."));
  if (pushed_ml.has_value() != dead_ml.has_value())
    object.fail(Phrase::worded("pushed_air_ml and dead_ml (what tubing and fittings hold) go together."));
  if (pressure_kpa) program.target = *pressure_kpa * kPa;
  if (pressure_mmhg) program.target = *pressure_mmhg * mmHg;
  if (volume_ml) program.target = *volume_ml * mL;
  if (pushed_ml && dead_ml) program.target = TrappedAir{*pushed_ml * mL, *dead_ml * mL};
  read_each(object, "steps", [&](JsonObject& step) { program.steps.push_back(programme_step(step)); });
  return program;
}

void check_inlets(JsonObject& object, const Plan& plan) {
  std::set<std::string> known, seen;
  std::string list;
  for (const Inlet& inlet : plan.layout.inlets)
    if (known.insert(inlet.name).second) list += (list.empty() ? "'" : ", '") + inlet.name + "'";
  for (const InletProgram& program : plan.inflation) {
    if (!known.contains(program.inlet))
      object.fail(
          Phrase::worded("inflation names the inlet '%1', which the layout does not have; it has %2.",
                         {name_of(program.inlet), list.empty() ? Phrase::worded("none") : name_of(list)}));
    if (!seen.insert(program.inlet).second)
      object.fail(
          Phrase::worded("inflation names the inlet '%1' twice; keep one.", {name_of(program.inlet)}));
  }
}

void read_limits(JsonObject& object, Plan& plan) {
  plan.use = use_from_name(object.choice("use", {"sustained", "short hold", "pulse"})).value_or(plan.use);
  if (const auto file = object.optional_text("file")) plan.limits_file = *file;
  if (object.has("override_reason")) plan.limits_override_reason = object.said("override_reason");
}

void read_session(JsonObject& object, Plan& plan) {
  Session session;
  session.length = object.number("minutes", {0.1, 1440.0, "min"}) * minute;
  if (const auto hold = object.optional_number("hold_s", {0.1, 86400.0, "s"})) session.hold = *hold * second;
  if (const auto off = object.optional_number("off_s", kSeconds)) session.off = *off * second;
  session.ramp = object.number_or("ramp_s", 0.0, {0.0, 3600.0, "s"}) * second;
  if (!object.failed() && session.off && !session.hold)
    object.fail(
        Phrase::worded("off_s stands without hold_s; give both, or neither for one hold from start to end."));
  plan.session = session;
}

void read_wearers(JsonObject& object, Wearers& wearers) {
  wearers.population = object.text_or("population", "");
  if (object.has("number")) wearers.number = object.whole_number_or("number", 1, 1, 100000);
  if (object.has("posture"))
    wearers.posture =
        wearer_posture_from_name(object.choice("posture", {"lying", "sitting", "standing", "moving"}));
  if (const auto above = object.optional_number("above_heart_cm", {-200.0, 200.0, "cm"}))
    wearers.above_heart = *above * 10.0 * mm;
  wearers.watched_by = object.text_or("watched_by", "");
  wearers.how_they_tell = object.text_or("how_they_tell", "");
}

// Steps need a session to be repeated in, and every inlet's must make sense in it.
void check_programmes(JsonObject& object, const Plan& plan) {
  for (const InletProgram& program : plan.inflation) {
    if (!program.steps.empty() && !plan.session)
      object.fail(Phrase::worded(
          "inflation gives inlet '%1' steps over time but the plan has no session; say how many minutes it "
          "lasts.",
          {name_of(program.inlet)}));
    if (!plan.session) continue;
    const auto steps = program.steps.empty() ? session_steps(*plan.session) : program.steps;
    if (const auto problem = programme_problem(steps, plan.session->length))
      object.fail(Phrase::worded("the programme of inlet '%1' %2.", {name_of(program.inlet), *problem}));
  }
}

void read_solver(JsonObject& object, Plan& plan) {
  InflationOptions& solver = plan.solver;
  solver.bending = object.flag_or("bending", solver.bending);
  solver.relaxed_compression = object.flag_or("relaxed_compression", solver.relaxed_compression);
  plan.compare_wrinkled = object.flag_or("compare_wrinkled", plan.compare_wrinkled);
  solver.steps = object.whole_number_or("steps", solver.steps, 1, 100);
}

}  // namespace

Result<Plan> plan_from_json(const json& value, const std::filesystem::path& folder,
                            const std::string& where) {
  JsonObject object(value, where);
  Plan plan;
  plan.folder = folder;
  object.format_one("wrapgauge-plan");
  plan.name = object.text("name");
  read_part(object, "body", false, [&](JsonObject& part) { read_body(part, plan); });
  read_each(object, "bony_sites", [&](JsonObject& item) { plan.bony_sites.push_back(site_from_json(item)); });
  read_each(object, "landmarks",
            [&](JsonObject& item) { plan.landmarks.push_back(landmark_from_json(item)); });
  read_regions(object, plan);
  const bool needs_tissue = std::holds_alternative<BodyFile>(plan.body);
  read_part(object, "tissue", !needs_tissue, [&](JsonObject& part) { read_tissue(part, plan); });
  read_layout_part(object, folder, plan);
  read_part(object, "wear", false, [&](JsonObject& part) { read_wear(part, plan.placement); });
  plan.friction = object.number_or("friction", plan.friction, {0.0, 3.0, ""});
  read_each(object, "inflation", [&](JsonObject& item) { plan.inflation.push_back(inlet_program(item)); });
  check_inlets(object, plan);
  read_part(object, "limits", true, [&](JsonObject& part) { read_limits(part, plan); });
  if (const auto file = object.optional_text("calibration")) plan.calibration = *file;
  read_part(object, "session", true, [&](JsonObject& part) { read_session(part, plan); });
  check_programmes(object, plan);
  read_part(object, "cleared_by", true,
            [&](JsonObject& part) { plan.cleared_by = clearance_from_json(part); });
  read_part(object, "wearers", true, [&](JsonObject& part) { read_wearers(part, plan.wearers); });
  if (object.has("date")) plan.date = object.date("date");
  read_part(object, "supply", true, [&](JsonObject& part) { read_supply(part, plan.supply); });
  read_part(object, "filling", true, [&](JsonObject& part) { read_filling(part, plan.filling); });
  read_part(object, "mesh", true, [&](JsonObject& part) { read_mesh(part, plan); });
  read_part(object, "solver", true, [&](JsonObject& part) { read_solver(part, plan); });
  if (auto problem = object.finish()) return *problem;
  return plan;
}

}  // namespace wrapgauge
