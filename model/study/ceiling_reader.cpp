#include <nlohmann/json.hpp>

#include "model/study/ceiling_report.hpp"
#include "model/study/study_file.hpp"

namespace wrapgauge {
namespace {

// None: not a list of texts.
std::optional<std::vector<std::string>> texts(const nlohmann::json& json, const char* key) {
  const auto list = json.find(key);
  if (list == json.end() || !list->is_array()) return std::nullopt;
  std::vector<std::string> words;
  for (const auto& word : *list) {
    if (!word.is_string()) return std::nullopt;
    words.push_back(word.get<std::string>());
  }
  return words;
}

}  // namespace

Result<CeilingAnswer> read_ceiling(const std::filesystem::path& file, const std::string& inputs_hash) {
  const auto json = read_study(file, {"ceiling", "give the file written with its --out"}, inputs_hash);
  if (!json) return json.problem();
  const std::string name = file.filename().string();
  const auto words = texts(*json, "words"), brief = texts(*json, "brief");
  if (!words || !brief)
    return bad_input(name + " lacks its words, so it is damaged; run wrapgauge ceiling again.");
  CeilingAnswer answer{*words, *brief, std::nullopt};
  const auto relief = json->find("relief");
  if (relief != json->end() && relief->is_object() && relief->contains("words") &&
      (*relief)["words"].is_string())
    answer.relief = (*relief)["words"].get<std::string>();
  return answer;
}

}  // namespace wrapgauge
