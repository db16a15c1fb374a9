#include "model/layout/drawing_map_json.hpp"

#include <array>
#include <utility>

#include "model/core/file.hpp"
#include "model/layout/layout_fields.hpp"

namespace wrapgauge {
namespace {

using nlohmann::json;
using nlohmann::ordered_json;

constexpr NumberRange kWidthRange{1e-3, 10000.0, "mm"};
constexpr NumberRange kJoinRange{0.0, 10.0, "mm"};
constexpr NumberRange kScaleRange{1e-6, 1e6, ""};

constexpr std::array<std::pair<const char*, double>, 6> kUnits = {
    {{"px", 0.0254 / 96.0}, {"pt", 0.0254 / 72.0}, {"mm", 1e-3}, {"cm", 1e-2}, {"m", 1.0}, {"in", 0.0254}}};

constexpr std::array<std::pair<const char*, DrawingRule::Of>, 4> kKeys = {
    {{"name", DrawingRule::Of::kName},
     {"fill", DrawingRule::Of::kFill},
     {"stroke", DrawingRule::Of::kStroke},
     {"shape", DrawingRule::Of::kShape}}};

DrawingRule rule_from(JsonObject& object) {
  DrawingRule rule;
  const char* said = "name";
  int count = 0;
  for (const auto& [key, of] : kKeys) {
    if (!object.has(key)) continue;
    said = key;
    rule.of = of;
    ++count;
  }
  if (!object.failed() && count != 1)
    object.fail(Phrase::worded("give exactly one of name, fill, stroke and shape."));
  rule.pattern = object.text(said);
  const std::string part = object.text("part");
  if (const auto known = part_from_name(part))
    rule.part = *known;
  else
    object.fail(
        Phrase::worded("part is \"%1\"; write outline, chamber, inset seam, channel, inlet, strap or ignore.",
                       {name_of(part)}));
  if (const auto width = object.optional_number("width", kWidthRange)) rule.width = *width * mm;
  return rule;
}

void read_rules(JsonObject& object, DrawingMap& map) {
  int number = 0;
  for (const json& value : object.list_or_empty("map")) {
    JsonObject item(value, object.place("map") + " " + std::to_string(++number));
    map.rules.push_back(rule_from(item));
    if (auto problem = item.finish()) return object.fail(std::move(*problem));
  }
}

void read_strap(JsonObject& object, LayoutDetails& details) {
  JsonObject strap(object.value("strap"), object.place("strap"));
  details.strap_stiffness = strap.number("stiffness", kStiffnessRange) * N_per_mm;
  details.strap_thickness = strap.number("thickness", kThicknessRange) * mm;
  if (auto problem = strap.finish()) object.fail(std::move(*problem));
}

void read_strap_cloths(JsonObject& object, LayoutDetails& details) {
  int number = 0;
  for (const json& value : object.list_or_empty("straps")) {
    JsonObject item(value, object.place("straps") + " " + std::to_string(++number));
    details.strap_cloths.push_back({item.text("name"), item.number("stiffness", kStiffnessRange) * N_per_mm,
                                    item.number("thickness", kThicknessRange) * mm});
    if (auto problem = item.finish()) return object.fail(std::move(*problem));
  }
}

void read_inlets(JsonObject& object, LayoutDetails& details) {
  int number = 0;
  for (const json& value : object.list_or_empty("inlets")) {
    JsonObject item(value, object.place("inlets") + " " + std::to_string(++number));
    const std::string name = item.text("name");
    const std::vector<double> point = item.numbers("point", 2, kCoordinateRange);
    if (auto problem = item.finish()) return object.fail(std::move(*problem));
    details.inlets.push_back({name, Vec2(point[0], point[1]) * 1e-3});
  }
}

void read_details(JsonObject& object, LayoutDetails& details) {
  details.name = object.text_or("layout_name", "");
  if (object.has("skin_sheet")) details.skin_sheet = sheet_from(object, "skin_sheet");
  if (object.has("outer_sheet")) details.outer_sheet = sheet_from(object, "outer_sheet");
  if (object.has("backing")) details.backing = backing_from(object);
  if (object.has("strap")) read_strap(object, details);
  read_strap_cloths(object, details);
  if (object.has("closure")) details.closure = closure_from(object);
  if (object.has("corner")) {
    const std::vector<double> corner = object.numbers("corner", 2, kCoordinateRange);
    details.corner_m = Vec2(corner[0], corner[1]) * 1e-3;
  }
  read_inlets(object, details);
  details.rim_bonded = object.flag_or("rim_bonded", false);
}

ordered_json rule_json(const DrawingRule& rule) {
  ordered_json out;
  for (const auto& [key, of] : kKeys)
    if (of == rule.of) out[key] = rule.pattern;
  out["part"] = part_name(rule.part);
  if (rule.width) out["width"] = rounded_mm(rule.width->si());
  return out;
}

void write_details(const LayoutDetails& details, ordered_json& out) {
  if (!details.name.empty()) out["layout_name"] = details.name;
  if (details.skin_sheet) out["skin_sheet"] = sheet_json(*details.skin_sheet);
  if (details.outer_sheet) out["outer_sheet"] = sheet_json(*details.outer_sheet);
  out["backing"] = backing_json(details.backing);
  if (details.strap_stiffness && details.strap_thickness)
    out["strap"] = {{"stiffness", *details.strap_stiffness / N_per_mm},
                    {"thickness", rounded_mm(details.strap_thickness->si())}};
  for (const StrapCloth& cloth : details.strap_cloths)
    out["straps"].push_back({{"name", cloth.strap},
                             {"stiffness", cloth.stiffness / N_per_mm},
                             {"thickness", rounded_mm(cloth.thickness.si())}});
  if (details.closure) out["closure"] = closure_json(*details.closure);
  if (details.corner_m != Vec2::Zero())
    out["corner"] = {rounded_mm(details.corner_m.x()), rounded_mm(details.corner_m.y())};
  for (const Inlet& inlet : details.inlets)
    out["inlets"].push_back(
        {{"name", inlet.name}, {"point", {rounded_mm(inlet.point_m.x()), rounded_mm(inlet.point_m.y())}}});
  out["rim_bonded"] = details.rim_bonded;
}

// The unit's name; none for one that has no name here.
const char* unit_name_of(Length unit) {
  for (const auto& [name, metres] : kUnits)
    if (unit.si() == metres) return name;
  return nullptr;
}

}  // namespace

std::optional<Length> drawing_unit_from_name(std::string_view name) {
  for (const auto& [known, metres] : kUnits)
    if (name == known) return Length(metres);
  return std::nullopt;
}

Result<DrawingMap> drawing_map_from_json(const json& value, const std::string& where) {
  JsonObject object(value, where);
  DrawingMap map;
  object.format_one("wrapgauge-drawing-map");
  if (object.has("unit"))
    map.reading.unit = drawing_unit_from_name(object.choice("unit", {"mm", "px", "pt", "cm", "m", "in"}));
  map.reading.scale = object.number_or("scale", 1.0, kScaleRange);
  if (const auto join = object.optional_number("join", kJoinRange)) map.reading.join = *join * mm;
  read_rules(object, map);
  map.guess = object.flag_or("guess", true);
  if (const auto width = object.optional_number("channel_width", kWidthRange))
    map.channel_width = *width * mm;
  if (const auto width = object.optional_number("inset_width", kWidthRange)) map.inset_width = *width * mm;
  read_details(object, map.details);
  if (auto problem = object.finish()) return *problem;
  return map;
}

Result<DrawingMap> read_drawing_map(const std::filesystem::path& file) {
  const Result<json> parsed = read_json(file);
  if (!parsed) return parsed.problem();
  return drawing_map_from_json(*parsed, file.filename().string());
}

ordered_json drawing_map_to_json(const DrawingMap& map) {
  ordered_json out{{"wrapgauge-drawing-map", 1}};
  if (map.reading.unit)
    if (const char* name = unit_name_of(*map.reading.unit)) out["unit"] = name;
  if (map.reading.scale != 1.0) out["scale"] = map.reading.scale;
  if (map.reading.join) out["join"] = rounded_mm(map.reading.join->si());
  out["map"] = ordered_json::array();
  for (const DrawingRule& rule : map.rules) out["map"].push_back(rule_json(rule));
  if (!map.guess) out["guess"] = false;
  if (map.channel_width) out["channel_width"] = rounded_mm(map.channel_width->si());
  if (map.inset_width) out["inset_width"] = rounded_mm(map.inset_width->si());
  write_details(map.details, out);
  return out;
}

Result<std::monostate> write_drawing_map(const DrawingMap& map, const std::filesystem::path& file) {
  constexpr auto kReplaceBadText = ordered_json::error_handler_t::replace;
  return write_file_atomically(file, drawing_map_to_json(map).dump(2, ' ', false, kReplaceBadText) + "\n");
}

}  // namespace wrapgauge
