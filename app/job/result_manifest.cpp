#include "app/job/result_manifest.hpp"

#include <QCryptographicHash>
#include <algorithm>
#include <nlohmann/json.hpp>

#include "model/core/file.hpp"
#include "model/core/version.hpp"

namespace wrapgauge {
namespace {

using Json = nlohmann::ordered_json;

constexpr int kFormat = 1;

std::string plan_hash(const ResultOrigin& origin) {
  for (const InputFile& input : origin.inputs)
    if (input.role == "plan") return input.sha256;
  return "";
}

Json set_json(const ResultSet& set) {
  Json inputs = Json::array(), files = Json::array();
  for (const InputFile& input : set.origin.inputs)
    inputs.push_back({{"role", input.role}, {"name", input.name}, {"sha256", input.sha256}});
  for (const ManifestFile& file : set.files)
    files.push_back({{"name", file.name}, {"bytes", file.bytes}, {"sha256", file.sha256}});
  const std::string plan = plan_hash(set.origin);
  return {{"command", set.command},
          {"plan", set.origin.plan},
          {"plan_sha256", plan.empty() ? Json() : Json(plan)},
          {"program", set.program},
          {"date", set.origin.date ? Json(*set.origin.date) : Json()},
          {"inputs", inputs},
          {"files", files}};
}

ResultSet set_of(const Json& json) {
  ResultSet set;
  set.command = json.at("command");
  set.origin.plan = json.at("plan");
  if (json.at("date").is_string()) set.origin.date = json.at("date").get<std::string>();
  set.program = json.at("program");
  for (const Json& input : json.at("inputs"))
    set.origin.inputs.push_back({input.at("role"), input.at("name"), input.at("sha256")});
  for (const Json& file : json.at("files")) {
    const std::string name = file.at("name");
    // A name that leads elsewhere is none that was written here.
    if (std::filesystem::path(name).filename() == name && name != "." && name != "..")
      set.files.push_back({name, file.at("bytes"), file.at("sha256")});
  }
  return set;
}

bool holds(const std::vector<InputFile>& inputs, const InputFile& wanted) {
  return std::any_of(inputs.begin(), inputs.end(), [&](const InputFile& input) {
    return input.role == wanted.role && input.sha256 == wanted.sha256;
  });
}

}  // namespace

std::string manifest_json(const ResultManifest& manifest) {
  Json sets = Json::array();
  for (const ResultSet& set : manifest.sets) sets.push_back(set_json(set));
  const Json json{{"wrapgauge-results", kFormat}, {"own_folder", manifest.own_folder}, {"sets", sets}};
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

std::optional<ResultManifest> read_manifest(const std::filesystem::path& folder) {
  const auto bytes = read_file(folder / kManifestName, 16u << 20);
  if (!bytes) return std::nullopt;
  try {
    const Json json = Json::parse(*bytes);
    if (json.at("wrapgauge-results") != kFormat) return std::nullopt;
    ResultManifest manifest{json.at("own_folder"), {}};
    for (const Json& set : json.at("sets")) manifest.sets.push_back(set_of(set));
    return manifest;
  } catch (const Json::exception&) {
    return std::nullopt;
  }
}

std::string changed_inputs(const ResultSet& set, const ResultOrigin& now) {
  std::string words;
  const auto add = [&](const std::string& word) { words += (words.empty() ? "" : ", ") + word; };
  for (const InputFile& input : now.inputs)
    if (!holds(set.origin.inputs, input)) add(input.role + " " + input.name);
  for (const InputFile& input : set.origin.inputs) {
    const bool told = std::any_of(now.inputs.begin(), now.inputs.end(),
                                  [&](const InputFile& other) { return other.role == input.role; });
    if (!told) add(input.role + " " + input.name);
  }
  if (set.program != program_version()) add("the program, which was " + set.program);
  return words;
}

bool outlives_inputs(const ResultSet& set) {
  return set.command == "bench sheet" || set.command == "bench fit";
}

std::string sha256_of(const std::string& bytes) {
  const QByteArray view = QByteArray::fromRawData(bytes.data(), static_cast<qsizetype>(bytes.size()));
  return QCryptographicHash::hash(view, QCryptographicHash::Sha256).toHex().toStdString();
}

}  // namespace wrapgauge
