#include "model/io/dxf_reader.hpp"

#include <algorithm>
#include <map>

#include "model/core/number_text.hpp"
#include "model/io/dxf_entity.hpp"
#include "model/io/mesh_reader_text.hpp"
#include "model/io/path_joining.hpp"

namespace wrapgauge {
namespace {

constexpr std::size_t kMostPoints = 40000;  // of a drawing
constexpr int kByLayer = 256, kByBlock = 0;

struct LayerState {
  int colour = 7;
  bool hidden = false;
};

// $INSUNITS: DXF reference (from memory). 0 and absent: no unit.
std::optional<Length> unit_of_code(int code) {
  static const std::map<int, double> metres = {{1, 0.0254},  {2, 0.3048},  {4, 1e-3},  {5, 1e-2}, {6, 1.0},
                                               {9, 2.54e-5}, {10, 0.9144}, {13, 1e-6}, {14, 0.1}};
  const auto found = metres.find(code);
  return found == metres.end() ? std::nullopt : std::optional<Length>(found->second);
}

// None: the header has no such variable, or it is no whole number.
std::optional<int> unit_code(const DxfFile& file) {
  bool here = false;
  for (const DxfGroup& group : file.header) {
    if (group.code == 9) here = group.value == "$INSUNITS";
    if (!here || group.code != 70) continue;
    const auto value = parse_integer(group.value);
    return value && *value >= 0 && *value <= 1000 ? std::optional<int>(static_cast<int>(*value))
                                                  : std::nullopt;
  }
  return std::nullopt;
}

class DxfWalk {
 public:
  DxfWalk(const DxfFile& file, Drawing& drawing, Length unit) : file_(file), drawing_(drawing), unit_(unit) {
    for (const DxfEntity& layer : file.layers) {
      const int colour = layer.whole_number(62, 7), flags = layer.whole_number(70, 0);
      layers_[layer.text(2)] = {std::abs(colour), colour < 0 || (flags & 1) != 0};
    }
  }

  std::optional<Problem> walk() {
    const auto& entities = file_.entities;
    for (std::size_t i = 0; i < entities.size();) {
      std::size_t next = i + 1;
      if (entities[i].type == "POLYLINE")
        while (next < entities.size() && entities[next].type == "VERTEX") ++next;
      take(entities[i], {entities.begin() + static_cast<std::ptrdiff_t>(i) + 1,
                         entities.begin() + static_cast<std::ptrdiff_t>(next)});
      if (points_ > kMostPoints)
        return bad_input(drawing_.file + " has more than 40 000 points; simplify its curves.");
      i = next;
    }
    return std::nullopt;
  }

 private:
  void leave_out(const DxfEntity& entity, const std::string& why) {
    drawing_.left_out.push_back({entity.line, std::string(entity.type.substr(0, 40)), why});
  }

  void take(const DxfEntity& entity, const std::vector<DxfEntity>& vertices) {
    if (entity.type == "SEQEND" || entity.type == "ATTRIB") return;
    if (entity.type == "INSERT") return leave_out(entity, "is a block put in; explode it first");
    if (!is_dxf_shape(entity.type)) return leave_out(entity, "is not a line");
    const std::string layer = entity.text(8);
    const auto state = layers_.find(layer);
    if (state != layers_.end() && state->second.hidden) return leave_out(entity, "is on a hidden layer");
    if (entity.whole_number(67, 0) == 1) return leave_out(entity, "is in paper space");
    if (entity.whole_number(60, 0) == 1) return leave_out(entity, "is hidden");
    DrawnShape shape;
    shape.kind = entity.type;
    shape.line = entity.line;
    if (!layer.empty()) shape.groups = {layer};
    shape.fill = "none";
    shape.stroke = colour_of(entity, state == layers_.end() ? LayerState{} : state->second);
    trace_dxf_entity(entity, vertices, unit_, shape);
    for (const DrawnPath& path : shape.paths) points_ += path.points_m.size();
    drawing_.shapes.push_back(std::move(shape));
  }

  static std::string colour_of(const DxfEntity& entity, const LayerState& layer) {
    const int own = entity.whole_number(62, kByLayer);
    return "colour " + std::to_string(own == kByLayer || own == kByBlock ? layer.colour : own);
  }

  const DxfFile& file_;
  Drawing& drawing_;
  Length unit_;
  std::map<std::string, LayerState> layers_;
  std::size_t points_ = 0;
};

// The unit to use, and the sentence that goes with it.
Result<Length> settle_unit(const DxfFile& file, const std::string& name, std::optional<Length> told,
                           std::string& note) {
  const auto code = unit_code(file);
  const bool said = code && *code != 0;
  const auto from_file = said ? unit_of_code(*code) : std::nullopt;
  if (said && !from_file && !told)
    return bad_input(name + " gives the unit number " + std::to_string(*code) +
                     " ($INSUNITS), which is not read here; give --unit.");
  const Length unit = told ? *told : from_file.value_or(1.0 * mm);
  note = "One unit of the drawing is " + number_text(unit / mm) + " mm, ";
  note += told        ? "as told."
          : from_file ? "from the file's header."
                      : "assumed: the file names none; --unit changes that.";
  return unit;
}

}  // namespace

Result<Drawing> read_dxf(std::string_view bytes, const std::string& name, std::optional<Length> unit,
                         Length join) {
  const auto file = dxf_groups(bytes, name);
  if (!file) return file.problem();
  Drawing drawing{name, {}, {}, {}, false};
  drawing.notes.emplace_back();
  const auto settled = settle_unit(*file, name, unit, drawing.notes.front());
  if (!settled) return settled.problem();
  if (auto problem = DxfWalk(*file, drawing, *settled).walk()) return *problem;
  join_paths(drawing, join);
  return drawing;
}

}  // namespace wrapgauge
