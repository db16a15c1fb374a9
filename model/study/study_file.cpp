#include "model/study/study_file.hpp"

#include <nlohmann/json.hpp>

#include "model/core/json_object.hpp"
#include "model/core/version.hpp"

namespace wrapgauge {

Result<nlohmann::json> read_study(const std::filesystem::path& file, const StudyFile& study,
                                  const std::string& inputs_hash) {
  auto json = read_json(file);
  if (!json) return json.problem();
  const std::string name = file.filename().string(), command = study.command;
  const auto says = [&](const std::string& key, const nlohmann::json& expected) {
    return json->is_object() && json->contains(key) && (*json)[key] == expected;
  };
  if (!says("wrapgauge-" + command, 1))
    return bad_input(name + " is not an answer of wrapgauge " + command + ": " + study.advice + ".");
  if (!says("inputs_hash", inputs_hash) || !says("program", std::string(program_version())))
    return bad_input(name +
                     " was made from other inputs or by another version of the program, so it is stale; "
                     "run wrapgauge " +
                     command + " again.");
  return json;
}

}  // namespace wrapgauge
