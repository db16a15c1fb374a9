#include "model/io/readers/dxf_reader.hpp"

#include <algorithm>
#include <map>

#include "model/core/number_text.hpp"
#include "model/io/readers/dxf_entity.hpp"
#include "model/io/readers/dxf_insert.hpp"
#include "model/io/readers/mesh_reader_text.hpp"
#include "model/io/readers/path_joining.hpp"
#include "model/layout/carried_map.hpp"
#include "model/layout/drawn_names.hpp"

namespace wrapgauge {
namespace {

constexpr std::size_t kMostPoints = 40000;  // of a drawing
// Of shapes that are traced and then refused, so that repeats of one cost no minutes (judgement).
constexpr std::size_t kMostLostPoints = 400000;
constexpr std::size_t kMostEntities = 100000;
// Text looked through, repeats and the names of all blocks round an entity counted: four times the largest
// file.
constexpr std::size_t kMostText = 64u << 20;
constexpr std::size_t kDeepestBlocks = 16;
constexpr int kByLayer = 256, kByBlock = 0;
constexpr Length kUsualJoin = 0.1 * mm;
constexpr std::string_view kOurData = "WRAPGAUGE";  // name of our extended data

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

// Lines of our extended data on an entity, those of a name or of the description put together.
std::string our_data(const DxfEntity& entity, std::string_view title) {
  std::string text;
  bool ours = false;
  for (const DxfGroup& group : entity.groups) {
    if (group.code == 1001) ours = group.value == kOurData;
    if (ours && group.code == 1000 && group.value.starts_with(title))
      text += group.value.substr(title.size());
  }
  return dxf_text(text);
}

bool in_paper_space(const DxfEntity& entity) {
  return entity.whole_number(67, 0) == 1;
}
bool is_drawn(const DxfEntity& entity) {
  return entity.type == "INSERT" || is_dxf_shape(entity.type);
}

// What holds where entities are drawn.
struct DxfScene {
  Eigen::Affine2d to_m;
  std::string layer;                // of the INSERT; entities of a block on layer 0 are on it
  std::optional<int> colour;        // the INSERT's
  std::vector<std::string> groups;  // blocks and layers round it, innermost first
};

class DxfWalk {
 public:
  DxfWalk(const DxfFile& file, Drawing& drawing) : file_(file), drawing_(drawing) {
    for (const DxfEntity& layer : file.layers) {
      const int colour = layer.whole_number(62, 7), flags = layer.whole_number(70, 0);
      layers_[layer.text(2)] = {std::abs(colour), colour < 0 || (flags & 1) != 0};
    }
  }

  std::optional<Problem> walk(Length unit) {
    choose_space();
    entities(file_.entities, {Eigen::Affine2d(Eigen::Scaling(unit.si())), "", {}, {}});
    if (fit_splines_ > 0)
      drawing_.notes.push_back(
          {Phrase::worded("Curves given only by points: %1 (SPLINE, the first at line %2). A smooth curve is "
                          "laid through them, and another program may draw it a little differently between "
                          "them.",
                          {figures_of(fit_splines_), figures_of(first_fit_spline_)})});
    if (file_.clips > 0)
      drawing_.notes.push_back({Phrase::worded(
          "Blocks are clipped in this file (SPATIAL_FILTER), which is not read: what the clip "
          "hides is read too.")});
    if (drawing_.shapes.empty()) say_where_it_is();
    return problem_;
  }

 private:
  // A drawing that was made on a sheet of paper alone is read from there.
  void choose_space() {
    const auto drawn_in = [&](bool paper) {
      return std::any_of(file_.entities.begin(), file_.entities.end(), [&](const DxfEntity& entity) {
        return is_drawn(entity) && in_paper_space(entity) == paper;
      });
    };
    read_paper_ = !drawn_in(false) && drawn_in(true);
    if (read_paper_)
      drawing_.notes.push_back(
          {Phrase::worded("Nothing is drawn in model space, so paper space is read, at the size it has on "
                          "paper: check a length."),
           "Give --scale if the paper shows it smaller."});
  }

  void say_where_it_is() {
    std::size_t in_blocks = 0;
    for (const auto& [name, block] : file_.blocks)
      in_blocks +=
          static_cast<std::size_t>(std::count_if(block.entities.begin(), block.entities.end(), is_drawn));
    if (in_blocks > 0)
      drawing_.notes.push_back(
          {Phrase::worded("Lines in blocks or on sheets that nothing puts into model space: %1. Put them "
                          "there and save the file again.",
                          {figures_of(static_cast<int>(in_blocks))})});
  }

  void fail(Phrase sentence) {
    if (!problem_) problem_ = bad_input(std::move(sentence));
  }
  Phrase file_name() const { return name_of(drawing_.file); }
  void leave_out(const DxfEntity& entity, const std::string& why) {
    drawing_.left_out.push_back({entity.line, std::string(entity.type.substr(0, 40)), why});
  }

  void count(const DxfEntity& entity, const DxfScene& scene) {
    for (const DxfGroup& group : entity.groups) text_ += 8 + group.value.size();
    for (const std::string& group : scene.groups) text_ += group.size();
    if (++entities_ > kMostEntities)
      fail(Phrase::worded("%1 has more than 100 000 entities, blocks put in counted; simplify it.",
                          {file_name()}));
    else if (text_ > kMostText)
      fail(Phrase::worded("%1 comes to more than 64 MiB of text, blocks put in counted; simplify it.",
                          {file_name()}));
  }

  void entities(const std::vector<DxfEntity>& all, const DxfScene& scene) {
    for (std::size_t i = 0; i < all.size() && !problem_;) {
      std::size_t next = i + 1;
      if (all[i].type == "POLYLINE")
        while (next < all.size() && all[next].type == "VERTEX") ++next;
      for (std::size_t k = i; k < next; ++k) count(all[k], scene);
      if (problem_) return;
      take(
          all[i],
          {all.begin() + static_cast<std::ptrdiff_t>(i) + 1, all.begin() + static_cast<std::ptrdiff_t>(next)},
          scene);
      if (points_ > kMostPoints)
        return fail(Phrase::worded("%1 has more than 40 000 points; simplify its curves.", {file_name()}));
      if (lost_points_ > kMostLostPoints)
        return fail(Phrase::worded(
            "%1 has more than 400 000 points in curves that cannot be read (line %2 is one); take "
            "them out, or make them smaller.",
            {file_name(), figures_of(all[i].line)}));
      i = next;
    }
  }

  void take(const DxfEntity& entity, const std::vector<DxfEntity>& vertices, const DxfScene& scene) {
    if (entity.type == "SEQEND") return;
    const bool insert = entity.type == "INSERT", text = is_dxf_text(entity.type);
    if (!insert && !text && !is_dxf_shape(entity.type)) return leave_out(entity, "is not a line");
    const bool of_insert = !open_.empty() && entity.text(8) == "0";
    const std::string layer = of_insert ? scene.layer : entity.text(8);
    const auto found = layers_.find(layer);
    const LayerState state = found == layers_.end() ? LayerState{} : found->second;
    if (state.hidden) return leave_out(entity, "is on a hidden layer");
    if (in_paper_space(entity) && !read_paper_)
      return leave_out(entity, "is in paper space; only model space is read, so move it there");
    if (entity.whole_number(60, 0) == 1) return leave_out(entity, "is hidden");
    if (text && dxf_number_fault(entity)) return leave_out(entity, *dxf_number_fault(entity));
    if (text) return drawing_.words.push_back(dxf_words(entity, scene.to_m));
    DxfScene inner = scene;
    inner.layer = layer;
    inner.colour = colour_of(entity, state, scene);
    if (!layer.empty()) inner.groups.insert(inner.groups.begin(), layer);
    insert ? put_in(entity, inner) : draw(entity, vertices, inner);
  }

  void draw(const DxfEntity& entity, const std::vector<DxfEntity>& vertices, const DxfScene& scene) {
    DrawnShape shape;
    shape.kind = entity.type;
    shape.line = entity.line;
    shape.groups = scene.groups;
    shape.name = our_data(entity, "name:");
    take_carried(our_data(entity, "carried:"), drawing_);
    shape.fill = "none";
    shape.stroke = "colour " + std::to_string(*scene.colour);
    const std::size_t traced = trace_dxf_entity(entity, vertices, scene.to_m, shape);
    (shape.fault.empty() ? points_ : lost_points_) += traced;
    if (is_dxf_fit_spline(entity) && shape.fault.empty() && fit_splines_++ == 0)
      first_fit_spline_ = entity.line;
    drawing_.shapes.push_back(std::move(shape));
  }

  // `scene`: with the INSERT's own layer and colour.
  void put_in(const DxfEntity& entity, DxfScene scene) {
    const std::string name = entity.text(2);
    const auto found = file_.blocks.find(dxf_block_key(name));
    if (found == file_.blocks.end())
      return leave_out(entity, "puts in " + in_quotes(name) + ", which is not there");
    const DxfBlock& block = found->second;
    constexpr int kOtherFile = 4;
    if ((block.head.whole_number(70, 0) & kOtherFile) != 0)
      return leave_out(entity, "puts in another file, which is not opened");
    if (std::find(open_.begin(), open_.end(), &block) != open_.end())
      return leave_out(entity, "puts " + in_quotes(name) + " into itself");
    if (open_.size() >= kDeepestBlocks)
      return fail(
          Phrase::worded("%1 puts blocks into one another more than 16 deep; simplify it.", {file_name()}));
    std::string fault;
    const auto insert = dxf_insert(entity, block, fault);
    if (!insert) return leave_out(entity, fault);
    scene.groups.insert(scene.groups.begin(), name);
    const Eigen::Affine2d outside = scene.to_m;
    open_.push_back(&block);
    for (int row = 0; row < insert->rows && !problem_; ++row)
      for (int column = 0; column < insert->columns && !problem_; ++column) {
        count(block.head, scene);
        scene.to_m = outside * insert->copy(column, row);
        entities(block.entities, scene);
      }
    open_.pop_back();
  }

  static int colour_of(const DxfEntity& entity, const LayerState& layer, const DxfScene& scene) {
    const int own = entity.whole_number(62, kByLayer);
    if (own == kByBlock && scene.colour) return *scene.colour;
    return own == kByLayer || own == kByBlock ? layer.colour : own;
  }

  const DxfFile& file_;
  Drawing& drawing_;
  std::map<std::string, LayerState> layers_;
  std::vector<const DxfBlock*> open_;  // being put in, outermost first
  std::optional<Problem> problem_;
  bool read_paper_ = false;
  int fit_splines_ = 0, first_fit_spline_ = 0;
  std::size_t points_ = 0, lost_points_ = 0, entities_ = 0, text_ = 0;
};

// The unit to use, and the sentence that goes with it.
Result<Length> settle_unit(const DxfFile& file, const std::string& name, std::optional<Length> told,
                           DrawnNote& note) {
  const auto code = unit_code(file);
  const bool said = code && *code != 0;
  const auto from_file = said ? unit_of_code(*code) : std::nullopt;
  if (said && !from_file && !told)
    return bad_input(
        Phrase::worded("%1 gives the unit number %2 ($INSUNITS), which is not read here; say which "
                       "unit it is: mm, cm, m, in, px or pt.",
                       {name_of(name), figures_of(std::to_string(*code))}));
  const Length unit = told ? *told : from_file.value_or(1.0 * mm);
  const std::vector<Phrase> size{figures_of(number_text(unit / mm) + " mm")};
  if (told)
    note = {Phrase::worded("One unit of the drawing is %1, as told.", size)};
  else if (from_file)
    note = {Phrase::worded("One unit of the drawing is %1, from the file's header.", size)};
  else
    note = {Phrase::worded("One unit of the drawing is %1, assumed: the file names none.", size),
            "--unit changes that."};
  return unit;
}

}  // namespace

Result<Drawing> read_dxf(std::string_view bytes, const std::string& name, const DrawingReading& reading) {
  const auto file = dxf_groups(bytes, name);
  if (!file) return file.problem();
  Drawing drawing;
  drawing.file = name;
  drawing.notes.emplace_back();
  const auto settled = settle_unit(*file, name, reading.unit, drawing.notes.front());
  if (!settled) return settled.problem();
  if (reading.scale != 1.0)
    drawing.notes.push_back(
        {Phrase::worded("All of it is taken %1 times as large.", {figures_of(number_text(reading.scale))}),
         "(--scale)"});
  if (auto problem = DxfWalk(*file, drawing).walk(*settled * reading.scale)) return *problem;
  // Our own drawings are whole: channels that meet there are two.
  if (reading.join || !drawing.carried) join_paths(drawing, reading.join.value_or(kUsualJoin));
  name_by_words(drawing);
  name_by_groups(drawing);
  return drawing;
}

}  // namespace wrapgauge
