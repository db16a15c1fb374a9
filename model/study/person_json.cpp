#include "model/study/person_json.hpp"

#include <nlohmann/json.hpp>

#include "model/study/ceiling_settings.hpp"
#include "model/study/run_lines.hpp"

namespace wrapgauge {
namespace {

using Json = nlohmann::ordered_json;

Json ceiling_to_json(const PersonCeiling& ceiling) {
  return {{"stop", static_cast<int>(ceiling.stop)},
          {"inflation", ceiling.inflation},
          {"where", ceiling.where},
          {"settings", settings_json(ceiling.settings)}};
}

PersonCeiling ceiling_of(const nlohmann::json& json) {
  return {static_cast<CeilingStop>(json.at("stop").get<int>()), json.at("inflation").get<double>(),
          settings_from(json.at("settings")), json.at("where").get<std::string>()};
}

Json length_or_null(const std::optional<Length>& length) {
  return length ? Json(*length / mm) : Json();
}

std::optional<Length> length_of(const nlohmann::json& json) {
  return json.is_null() ? std::nullopt : std::optional(json.get<double>() * mm);
}

template <class T>
std::optional<T> value_of(const nlohmann::json& json) {
  return json.is_null() ? std::nullopt : std::optional(json.get<T>());
}

template <class T>
Json value_or_null(const std::optional<T>& value) {
  return value ? Json(*value) : Json();
}

PersonAnswer answer_of(const nlohmann::json& json) {
  PersonAnswer answer;
  answer.failed = value_of<std::string>(json.at("failed"));
  answer.station = json.at("station_mm").get<double>() * mm;
  answer.limb = json.at("limb_mm").get<double>() * mm;
  answer.girth = json.at("girth_mm").get<double>() * mm;
  answer.closing = length_of(json.at("closing_mm"));
  answer.tail = length_of(json.at("tail_mm"));
  answer.row = value_of<int>(json.at("row"));
  answer.share = json.at("share").get<double>();
  answer.above = json.at("above").get<bool>();
  answer.where = json.at("where").get<std::string>();
  answer.sentence = json.at("sentence").get<std::string>();
  answer.peak = json.at("peak_kPa").get<double>() * kPa;
  if (!json.at("ceiling").is_null()) answer.ceiling = ceiling_of(json.at("ceiling"));
  answer.no_ceiling = value_of<std::string>(json.at("no_ceiling"));
  return answer;
}

}  // namespace

std::string person_json(const PersonAnswer& answer) {
  Json json;
  json["failed"] = value_or_null(answer.failed);
  json["station_mm"] = answer.station / mm;
  json["limb_mm"] = answer.limb / mm;
  json["girth_mm"] = answer.girth / mm;
  json["closing_mm"] = length_or_null(answer.closing);
  json["tail_mm"] = length_or_null(answer.tail);
  json["row"] = value_or_null(answer.row);
  json["share"] = answer.share;
  json["above"] = answer.above;
  json["where"] = answer.where;
  json["sentence"] = answer.sentence;
  json["peak_kPa"] = answer.peak / kPa;
  json["ceiling"] = answer.ceiling ? ceiling_to_json(*answer.ceiling) : Json();
  json["no_ceiling"] = value_or_null(answer.no_ceiling);
  return one_line(json);
}

std::optional<PersonAnswer> person_from(const std::string& text) {
  const auto json = nlohmann::json::parse(text, nullptr, false);
  if (!json.is_object()) return std::nullopt;
  try {
    return answer_of(json);
  } catch (const nlohmann::json::exception&) {
    return std::nullopt;
  }
}

}  // namespace wrapgauge
