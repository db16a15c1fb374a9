#include "model/study/ceiling_settings.hpp"

#include <cmath>
#include <nlohmann/json.hpp>

namespace wrapgauge {
namespace {

double to_a_millionth(double value) {
  return std::round(1e6 * value) / 1e6;
}

}  // namespace

nlohmann::ordered_json settings_json(const std::vector<CeilingInlet>& inlets) {
  auto json = nlohmann::ordered_json::array();
  for (const CeilingInlet& inlet : inlets)
    json.push_back({{"inlet", inlet.inlet},
                    {"gauge_kPa", to_a_millionth(inlet.gauge / kPa)},
                    {"volume_mL", to_a_millionth(inlet.volume / mL)}});
  return json;
}

std::vector<CeilingInlet> settings_from(const nlohmann::json& json) {
  std::vector<CeilingInlet> inlets;
  for (const auto& item : json) {
    CeilingInlet inlet;
    inlet.inlet = item.at("inlet").get<std::string>();
    inlet.gauge = item.at("gauge_kPa").get<double>() * kPa;
    inlet.volume = item.at("volume_mL").get<double>() * mL;
    inlets.push_back(std::move(inlet));
  }
  return inlets;
}

}  // namespace wrapgauge
