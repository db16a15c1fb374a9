#pragma once
// The small band of tests/study/small_band.hpp as a plan's file has it.

#include <nlohmann/json.hpp>

namespace wrapgauge {

// A closed band with one chamber, or two of unlike size fed by one inlet; solves in a blink.
inline nlohmann::json small_band_plan(double pressure_kpa, double stretch = -0.02, bool far_pad = false) {
  const nlohmann::json sheet = {{"material", "00-30"}, {"thickness", 1.5}};
  const auto box = [](double x, double width) {
    return nlohmann::json{{"x", x}, {"y", 10}, {"width", width}, {"height", 30}, {"corner_radius", 8}};
  };
  nlohmann::json plan = {
      {"wrapgauge-plan", 1},
      {"name", "small band"},
      {"body", {{"form", "cylinder"}, {"part", "forearm"}}},
      {"tissue", {{"site", "forearm relaxed"}}},
      {"layout",
       {{"wrapgauge-layout", 1},
        {"name", "band"},
        {"outline",
         {{"rectangle", {{"x", 0}, {"y", 0}, {"width", 270}, {"height", 50}, {"corner_radius", 0}}}}},
        {"chambers",
         {{{"name", "pad"}, {"rectangle", box(60, 50)}}, {{"name", "far pad"}, {"rectangle", box(130, 70)}}}},
        {"channels", {{{"name", "joint"}, {"path", {{105, 25}, {135, 25}}}, {"width", 5}}}},
        {"inlets", {{{"name", "valve"}, {"point", {85, 25}}}}},
        {"skin_sheet", sheet},
        {"outer_sheet", {{"material", "A10"}, {"thickness", 2}}},
        {"backing", {{"along", 1.5}, {"across", 1}}},
        {"closure", {{"from_x", 0}, {"stretch", stretch}}}}},
      {"wear", {{"anchor", {{"station_mm", 120}, {"angle_deg", 90}}}, {"layout_point_mm", {85, 25}}}},
      {"inflation", {{{"inlet", "valve"}, {"pressure_kpa", pressure_kpa}}}},
      {"limits", {{"use", "short hold"}}},
      {"mesh", {{"edge_mm", 14}}},
      {"solver", {{"steps", 2}}}};
  if (!far_pad) {
    plan["layout"]["chambers"].erase(1);
    plan["layout"].erase("channels");
  }
  return plan;
}

}  // namespace wrapgauge
