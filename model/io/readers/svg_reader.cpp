#include "model/io/readers/svg_reader.hpp"

#include <algorithm>
#include <cmath>

#include "model/core/number_text.hpp"
#include "model/io/readers/mesh_reader_text.hpp"
#include "model/io/readers/path_joining.hpp"
#include "model/io/readers/svg_clip.hpp"
#include "model/io/readers/svg_document.hpp"
#include "model/io/readers/svg_page.hpp"
#include "model/io/readers/svg_shape.hpp"
#include "model/io/readers/svg_style.hpp"
#include "model/io/readers/svg_text.hpp"
#include "model/io/readers/template_layout.hpp"
#include "model/layout/carried_map.hpp"
#include "model/layout/drawn_names.hpp"

namespace wrapgauge {
namespace {

constexpr int kMostElements = 100000;
constexpr std::size_t kMostPoints = 40000;  // of a drawing
// Text looked through, repeats and the names of all groups round a shape counted: four times the largest
// file.
constexpr std::size_t kMostText = 64u << 20;
constexpr std::size_t kMostClipping = 300'000'000;  // pairs of a shape's and a clip path's points

// What holds where an element stands.
struct Scene {
  Geom::Affine to_m;
  SvgViewport viewport;
  SvgStyle style;
  std::vector<std::string> groups;  // innermost first
  SvgClips clips;                   // of the element and all round it
};

// What a drawing program calls an element: an attribute "label" in a name space of its own, or the like.
std::string label_of(pugi::xml_node node) {
  for (const pugi::xml_attribute attribute : node.attributes()) {
    const std::string_view name = attribute.name();
    const bool prefixed = name.find(':') != name.npos && svg_local_name(name) == "label";
    if (prefixed || name == "aria-label" || name == "data-name") return svg_trimmed(attribute.value());
  }
  return "";
}

// All text inside an element, white space as single blanks.
void gather_text(pugi::xml_node node, std::string& text) {
  for (const pugi::xml_node child : node.children())
    if (child.type() == pugi::node_pcdata || child.type() == pugi::node_cdata)
      for (const std::string& word : svg_words(child.value())) (text += text.empty() ? "" : " ") += word;
    else
      gather_text(child, text);
}

std::string title_of(pugi::xml_node node) {
  for (const pugi::xml_node child : node.children())
    if (svg_local_name(child.name()) == "title" && is_svg_name(child.name()))
      return svg_trimmed(child.text().get());
  return "";
}

std::vector<std::string> names_of(pugi::xml_node node) {
  std::vector<std::string> names = svg_words(node.attribute("class").value());
  const std::string id = svg_trimmed(node.attribute("id").value());
  if (!id.empty()) names.insert(names.begin(), id);
  if (const std::string label = label_of(node); !label.empty()) names.insert(names.begin(), label);
  return names;
}

std::vector<std::string> group_names_of(pugi::xml_node node) {
  std::vector<std::string> names = names_of(node);
  const std::string title = title_of(node);
  if (!title.empty()) names.insert(names.begin(), title);
  return names;
}

// Holds nothing that is drawn by itself.
bool is_silent(std::string_view element) {
  constexpr std::string_view kSilent[] = {
      "defs",           "symbol",          "clipPath",       "mask",          "marker",
      "pattern",        "title",           "desc",           "style",         "script",
      "linearGradient", "filter",          "metadata",       "view",          "set",
      "animate",        "cursor",          "radialGradient", "animateMotion", "font",
      "font-face",      "animateTransform"};
  return std::find(std::begin(kSilent), std::end(kSilent), element) != std::end(kSilent);
}

// What reading an element may take: its attributes and title, and the names round it.
std::size_t text_of(pugi::xml_node node, const std::vector<std::string>& groups) {
  std::size_t bytes = title_of(node).size();
  for (const pugi::xml_attribute attribute : node.attributes())
    bytes += std::string_view(attribute.value()).size();
  for (const std::string& group : groups) bytes += group.size();
  return bytes;
}

class SvgWalk {
 public:
  SvgWalk(const SvgDocument& document, const SvgStyleSheet& sheet, Drawing& drawing)
      : document_(document), sheet_(sheet), drawing_(drawing) {}

  std::optional<Problem> walk(const SvgPage& page) {
    Scene scene{page.to_m, page.viewport, svg_style_of(document_.root(), sheet_, {}), {}, {}};
    turn_page(scene);
    open_.push_back(document_.root());
    children(document_.root(), scene);
    return problem_;
  }

 private:
  // A transform of the whole page acts outside its viewBox, in px.
  void turn_page(Scene& scene) {
    std::string why;
    const auto transform = svg_own_transform(document_.root(), scene.style, why);
    if (!transform) return drawing_.notes.push_back({Phrase::worded("The page %1.", {name_of(why)})});
    const Geom::Affine pixels(kPixel, 0, 0, kPixel, 0, 0);
    scene.to_m = scene.to_m * pixels.inverse() * *transform * pixels;
  }

  void fail(Phrase sentence) {
    if (!problem_) problem_ = bad_input(std::move(sentence));
  }
  Phrase file_name() const { return name_of(drawing_.file); }
  bool take_text(pugi::xml_node node, const Scene& scene) {
    text_ += text_of(node, scene.groups);
    if (text_ > kMostText)
      fail(Phrase::worded(
          "%1 comes to more than 64 MiB of text with its repeats and the names of its groups; simplify it.",
          {file_name()}));
    return text_ <= kMostText;
  }
  void leave_out(pugi::xml_node node, const std::string& why) {
    drawing_.left_out.push_back({document_.line_of(node), std::string(svg_local_name(node.name())), why});
  }

  void children(pugi::xml_node node, const Scene& scene) {
    for (const pugi::xml_node child : node.children()) {
      if (problem_) return;
      if (child.type() == pugi::node_element && is_svg_name(child.name())) element(child, scene);
    }
  }

  void element(pugi::xml_node node, const Scene& outer) {
    const std::string_view name = svg_local_name(node.name());
    if (is_silent(name)) return;
    if (++elements_ > kMostElements)
      return fail(
          Phrase::worded("%1 has more than 100 000 elements, repeats counted; simplify it.", {file_name()}));
    if (static_cast<int>(open_.size()) >= kDeepestNesting)
      return fail(Phrase::worded("%1 repeats its parts inside one another more than 60 deep; simplify it.",
                                 {file_name()}));
    if (!take_text(node, outer)) return;
    Scene scene = outer;
    scene.style = svg_style_of(node, sheet_, outer.style);
    if (!scene.style.display) return leave_out(node, "is hidden");
    std::string why;
    const auto transform = svg_own_transform(node, scene.style, why);
    if (!transform) return is_svg_shape(name) ? wrong(node, scene, why) : leave_out(node, why);
    scene.to_m = *transform * outer.to_m;
    for (auto& clip : svg_clips_of(node, scene.style, document_, sheet_, scene.to_m, scene.viewport))
      scene.clips.push_back(std::move(clip));
    open_.push_back(node);
    draw(node, name, scene);
    open_.pop_back();
  }

  void draw(pugi::xml_node node, std::string_view name, Scene& scene) {
    if (is_svg_shape(name)) return shape(node, scene);
    if (name == "text") return words(node, scene);
    const bool group = name == "g" || name == "a" || name == "switch";
    if (!group && name != "svg" && name != "use")
      return leave_out(node, "is not a shape; turn it into paths");
    const std::vector<std::string> names = group_names_of(node);
    scene.groups.insert(scene.groups.begin(), names.begin(), names.end());
    if (group) children(node, scene);
    if (name == "svg") inner_page(node, node, scene);
    if (name == "use") use(node, scene);
  }

  void words(pugi::xml_node node, const Scene& scene) {
    if (!scene.style.visible) return leave_out(node, "is hidden");
    const auto at = [&](const char* name, double whole) {
      pugi::xml_node placed = node;
      for (const pugi::xml_node child : node.children())
        if (!placed.attribute(name) && child.attribute(name)) placed = child;
      const std::vector<std::string> list = svg_words(placed.attribute(name).value());
      return list.empty() ? 0.0 : svg_length(list[0], whole).value_or(0.0);
    };
    const Geom::Point place =
        Geom::Point(at("x", scene.viewport.width), at("y", scene.viewport.height)) * scene.to_m;
    std::string text;
    gather_text(node, text);
    drawing_.words.push_back({document_.line_of(node), {place.x(), place.y()}, "text", std::move(text)});
  }

  DrawnShape named(pugi::xml_node node, const Scene& scene) const {
    DrawnShape shape;
    shape.kind = svg_local_name(node.name());
    shape.line = document_.line_of(node);
    shape.names = names_of(node);
    shape.name = title_of(node);
    if (shape.name.empty()) shape.name = label_of(node);
    if (shape.name.empty()) shape.name = svg_trimmed(node.attribute("id").value());
    shape.groups = scene.groups;
    shape.fill = scene.style.fill.empty() ? "#000000" : scene.style.fill;  // SVG 1.1, 11.3
    shape.stroke = scene.style.stroke.empty() ? "none" : scene.style.stroke;
    shape.fill_rule = scene.style.fill_rule;
    return shape;
  }

  void wrong(pugi::xml_node node, const Scene& scene, const std::string& fault) {
    DrawnShape shape = named(node, scene);
    shape.fault = fault;
    drawing_.shapes.push_back(std::move(shape));
  }

  // The first clip path or mask that does not let the shape through whole.
  SvgSeen clipped(const DrawnShape& shape, const Scene& scene, std::string& what) {
    std::size_t points = 0;
    for (const DrawnPath& path : shape.paths) points += path.points_m.size();
    for (const auto& clip : scene.clips) {
      clipping_ += points * std::max<std::size_t>(clip->points(), 1);
      what = clip->what;
      const SvgSeen seen = clipping_ > kMostClipping ? SvgSeen::kInPart : seen_through(*clip, shape);
      if (seen != SvgSeen::kWhole) return seen;
    }
    return SvgSeen::kWhole;
  }

  void shape(pugi::xml_node node, const Scene& scene) {
    if (!scene.style.visible) return leave_out(node, "is hidden");
    DrawnShape shape = named(node, scene);
    // A stroke that the map makes wider across than along has no one width.
    const bool one_width =
        keeps_angles(scene.to_m) && svg_own(node, scene.style, "vector-effect") != "non-scaling-stroke";
    if (scene.style.stroke_width && shape.stroke != "none" && one_width)
      shape.stroke_width = Length(*scene.style.stroke_width * std::sqrt(std::abs(scene.to_m.det())));
    trace_svg_shape(node, scene.style, scene.to_m, scene.viewport, shape);
    if (shape.paths.empty() && shape.fault.empty()) return leave_out(node, "has no size, so it is not drawn");
    for (const DrawnPath& path : shape.paths) points_ += path.points_m.size();
    if (points_ > kMostPoints)
      return fail(Phrase::worded("%1 has more than 40 000 points; simplify its curves.", {file_name()}));
    std::string what;
    const SvgSeen seen = shape.fault.empty() ? clipped(shape, scene, what) : SvgSeen::kWhole;
    if (seen == SvgSeen::kNothing) return leave_out(node, "is clipped away by " + what);
    shape.cut = seen == SvgSeen::kInPart;
    if (shape.cut)
      shape.fault = "is cut by " + what + ", which is not read (cut the shape itself, or release it)";
    drawing_.shapes.push_back(std::move(shape));
  }

  // Children of `node` in a viewport that `sized` gives: an inner svg, or a symbol sized by its use.
  void inner_page(pugi::xml_node node, pugi::xml_node sized, Scene& scene) {
    const auto inner = svg_inner_page(node, sized, scene.viewport);
    if (!inner) return leave_out(node, "has a viewBox or a size that makes no sense");
    if (auto clip = svg_page_clip(node, scene.style, inner->frame, scene.to_m))
      scene.clips.push_back(std::move(clip));
    scene.to_m = inner->to_m * scene.to_m;
    scene.viewport = inner->viewport;
    children(node, scene);
  }

  void use(pugi::xml_node node, Scene& scene) {
    std::string link = node.attribute("href").value();
    if (link.empty()) link = node.attribute("xlink:href").value();
    if (!link.starts_with('#')) return leave_out(node, "points outside the file, which is not followed");
    const pugi::xml_node target = document_.find(link.substr(1));
    if (!target) return leave_out(node, "points to " + in_quotes(link) + ", which is not there");
    if (std::find(open_.begin(), open_.end(), target) != open_.end())
      return leave_out(node, "repeats " + in_quotes(link) + " inside itself");
    const auto x = svg_length(node.attribute("x").as_string("0"), scene.viewport.width);
    const auto y = svg_length(node.attribute("y").as_string("0"), scene.viewport.height);
    if (!x || !y) return leave_out(node, "has a place that is not a length");
    scene.to_m = Geom::Affine(1, 0, 0, 1, *x, *y) * scene.to_m;
    if (svg_local_name(target.name()) == "symbol")
      symbol(target, node, scene);
    else
      element(target, scene);
  }

  void symbol(pugi::xml_node target, pugi::xml_node use, Scene& scene) {
    if (static_cast<int>(open_.size()) >= kDeepestNesting)
      return fail(Phrase::worded("%1 repeats its parts inside one another more than 60 deep; simplify it.",
                                 {file_name()}));
    if (!take_text(target, scene)) return;
    scene.style = svg_style_of(target, sheet_, scene.style);
    const std::vector<std::string> names = group_names_of(target);
    scene.groups.insert(scene.groups.begin(), names.begin(), names.end());
    open_.push_back(target);
    inner_page(target, use, scene);
    open_.pop_back();
  }

  const SvgDocument& document_;
  const SvgStyleSheet& sheet_;
  Drawing& drawing_;
  std::vector<pugi::xml_node> open_;  // from the root to the element being drawn, repeats included
  std::optional<Problem> problem_;
  int elements_ = 0;
  std::size_t points_ = 0, text_ = 0, clipping_ = 0;
};

std::string raw_text(pugi::xml_node node) {
  std::string text = node.value();
  for (const pugi::xml_node child : node.children()) text += raw_text(child);
  return text;
}

// Drawings of ours say in a description of the page what no drawing shows.
void take_carried_text(std::string_view bytes, pugi::xml_node root, Drawing& drawing) {
  for (const pugi::xml_node child : root.children()) {
    const std::string_view name = svg_local_name(child.name());
    if (name != "desc" && name != "metadata") continue;
    const std::string text = raw_text(child);
    take_carried(text, drawing);
    take_template(bytes, text, drawing);
  }
}

}  // namespace

Result<Drawing> read_svg(std::string_view bytes, const std::string& name, const DrawingReading& reading) {
  SvgDocument document;
  if (auto problem = document.load(bytes, name)) return *problem;
  Drawing drawing;
  drawing.file = name;
  drawing.y_down = true;
  const auto page = svg_page(document.root(), name, reading);
  if (!page) return page.problem();
  drawing.notes.push_back(page->note);
  const SvgStyleSheet sheet(document.root());
  if (sheet.too_long())
    return bad_input(
        Phrase::worded("%1 has a style sheet of more than %2 selectors; simplify it.",
                       {name_of(name), figures_of(std::to_string(SvgStyleSheet::kMostSelectors))}));
  drawing.notes.insert(drawing.notes.end(), sheet.notes().begin(), sheet.notes().end());
  if (auto problem = SvgWalk(document, sheet, drawing).walk(*page)) return *problem;
  take_carried_text(bytes, document.root(), drawing);
  if (reading.join) join_paths(drawing, *reading.join);
  name_by_words(drawing);
  return drawing;
}

}  // namespace wrapgauge
