#include "model/layout/carried_map.hpp"

#include <nlohmann/json.hpp>

#include "model/core/json_object.hpp"
#include "model/layout/drawing_map_json.hpp"

namespace wrapgauge {
namespace {

constexpr std::string_view kMark = "\"wrapgauge-drawing-map\"";

}  // namespace

std::string carried_text(const Layout& layout) {
  DrawingMap map;
  map.guess = false;
  map.details = {layout.name,    layout.skin_sheet, layout.outer_sheet,          layout.backing, {}, {}, {},
                 layout.closure, layout.rim_bonded, bounds(layout.outline_m).low};
  for (const Strap& strap : layout.straps)
    map.details.strap_cloths.push_back({strap.name, strap.stiffness, strap.thickness});
  return drawing_map_to_json(map).dump(-1, ' ', true, nlohmann::ordered_json::error_handler_t::replace);
}

void take_carried(std::string_view text, Drawing& drawing) {
  if (drawing.carried || text.find(kMark) == text.npos) return;
  const std::string where = "the description that " + drawing.file + " carries";
  const auto parsed = parse_json(text, where);
  const auto map = parsed ? drawing_map_from_json(*parsed, where) : Result<DrawingMap>(parsed.problem());
  if (map)
    drawing.carried = *map;
  else
    drawing.notes.push_back(
        {Phrase::worded("Sheets and closure are not read: %1", {phrase_of(map.problem())})});
}

}  // namespace wrapgauge
