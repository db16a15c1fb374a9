#include "app/job/kept_plans.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>

#include "app/job/study_inputs.hpp"
#include "model/core/file.hpp"

namespace wrapgauge {
namespace {

using Json = nlohmann::ordered_json;

constexpr const char* kFiguresEnding = ".kept.json";

std::filesystem::path part(const std::filesystem::path& folder, int number, const std::string& ending) {
  const std::string digits = std::to_string(number);
  return folder / (std::string(3 - std::min<std::size_t>(3, digits.size()), '0') + digits + ending);
}

// One more than the highest that was ever kept there and is left.
int next_number(const std::filesystem::path& folder) {
  int highest = 0;
  std::error_code none;
  for (const auto& entry : std::filesystem::directory_iterator(folder, none))
    highest = std::max(highest, std::atoi(entry.path().filename().string().c_str()));
  return highest + 1;
}

std::string figures_json(const std::string& name, const KeptFigures& figures) {
  const Json json{{"wrapgauge-kept", 1},
                  {"name", name},
                  {"share_of_limit", figures.share_of_limit},
                  {"peak_kPa", figures.peak / kPa},
                  {"inside_kPa", figures.inside / kPa},
                  {"above_limit", figures.above},
                  {"edge_mm", figures.edge / mm}};
  return json.dump(1, ' ', false, Json::error_handler_t::replace) + "\n";
}

std::optional<KeptPlan> kept_of(const std::filesystem::path& file) {
  const auto text = read_file(file);
  const Json json = text ? Json::parse(*text, nullptr, false) : Json();
  if (!json.is_object() || json.value("wrapgauge-kept", 0) != 1) return std::nullopt;
  std::string stem = file.string();
  stem.resize(stem.size() - std::string(kFiguresEnding).size());
  try {
    KeptPlan kept{json.at("name"), stem + ".json", {}, stem + ".png"};
    kept.figures = {json.at("share_of_limit"), json.at("peak_kPa").get<double>() * kPa,
                    json.at("inside_kPa").get<double>() * kPa, json.at("above_limit"),
                    json.at("edge_mm").get<double>() * mm};
    return kept;
  } catch (const Json::exception&) {
    return std::nullopt;
  }
}

void remove_all_of(const KeptPlan& kept) {
  std::error_code none;
  std::filesystem::path figures = kept.plan;
  for (const auto& file : {kept.plan, kept.picture, figures.replace_extension(kFiguresEnding)})
    std::filesystem::remove(file, none);
}

}  // namespace

std::filesystem::path kept_folder(const std::filesystem::path& plan_file) {
  return plan_file.parent_path() / (plan_file.stem().string() + "-kept");
}

std::vector<KeptPlan> kept_plans(const std::filesystem::path& plan_file) {
  std::vector<std::filesystem::path> files;
  std::error_code none;
  for (const auto& entry : std::filesystem::directory_iterator(kept_folder(plan_file), none))
    if (entry.path().string().ends_with(kFiguresEnding)) files.push_back(entry.path());
  std::sort(files.begin(), files.end());
  std::vector<KeptPlan> kept;
  for (const auto& file : files)
    if (auto one = kept_of(file)) kept.push_back(std::move(*one));
  return kept;
}

Result<KeptPlan> keep_plan(const std::filesystem::path& plan_file, const Plan& plan, const std::string& name,
                           const KeptFigures& figures, const std::string& picture) {
  const auto folder = kept_folder(plan_file);
  if (auto made = make_folder(folder); !made) return made.problem();
  const int number = next_number(folder);
  const KeptPlan kept{name, part(folder, number, ".json"), figures, part(folder, number, ".png")};
  const auto written = [&]() -> Result<std::monostate> {
    if (auto of_plan = write_plan(plan, kept.plan); !of_plan) return of_plan;
    if (!picture.empty())
      if (auto of_picture = write_file_atomically(kept.picture, picture); !of_picture) return of_picture;
    // Last, for what has no figures is none.
    return write_file_atomically(part(folder, number, kFiguresEnding), figures_json(name, figures));
  }();
  if (written) return kept;
  remove_all_of(kept);
  return written.problem();
}

Result<std::monostate> drop_kept(const KeptPlan& kept) {
  remove_all_of(kept);
  std::error_code none;
  if (std::filesystem::exists(kept.plan, none))
    return bad_input(Phrase::worded("'%1' could not be deleted: see who else has it open.",
                                    {name_of(kept.plan.filename().string())}));
  std::filesystem::remove(kept.plan.parent_path(), none);  // the last one takes the folder along
  return std::monostate{};
}

}  // namespace wrapgauge
