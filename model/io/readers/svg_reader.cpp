#include "model/io/readers/svg_reader.hpp"

#include <algorithm>
#include <cmath>

#include "model/core/number_text.hpp"
#include "model/io/readers/mesh_reader_text.hpp"
#include "model/io/readers/svg_document.hpp"
#include "model/io/readers/svg_page.hpp"
#include "model/io/readers/svg_shape.hpp"
#include "model/io/readers/svg_style.hpp"
#include "model/io/readers/svg_text.hpp"

namespace wrapgauge {
namespace {

constexpr int kMostElements = 100000;
constexpr std::size_t kMostPoints = 40000;  // of a drawing
// Text looked through, repeats and the names of all groups round a shape counted: four times the largest
// file.
constexpr std::size_t kMostText = 64u << 20;

// What holds where an element stands.
struct Scene {
  Geom::Affine to_m;
  SvgViewport viewport;
  SvgStyle style;
  std::vector<std::string> groups;  // innermost first
};

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
    Scene scene{page.to_m, page.viewport, svg_style_of(document_.root(), sheet_, {}), {}};
    open_.push_back(document_.root());
    children(document_.root(), scene);
    return problem_;
  }

 private:
  void fail(const std::string& message) {
    if (!problem_) problem_ = bad_input(drawing_.file + " " + message);
  }
  bool take_text(pugi::xml_node node, const Scene& scene) {
    text_ += text_of(node, scene.groups);
    if (text_ > kMostText)
      fail("comes to more than 64 MiB of text with its repeats and the names of its groups; simplify it.");
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
      return fail("has more than 100 000 elements, repeats counted; simplify it.");
    if (static_cast<int>(open_.size()) >= kDeepestNesting)
      return fail("repeats its parts inside one another more than 60 deep; simplify it.");
    if (!take_text(node, outer)) return;
    Scene scene = outer;
    scene.style = svg_style_of(node, sheet_, outer.style);
    if (!scene.style.display) return leave_out(node, "is hidden");
    const auto transform = svg_transform(node.attribute("transform").value());
    if (!transform)
      return leave_out(node, "has transform=" + in_quotes(node.attribute("transform").value()) +
                                 ", which is not a transform");
    scene.to_m = *transform * outer.to_m;
    open_.push_back(node);
    draw(node, name, scene);
    open_.pop_back();
  }

  void draw(pugi::xml_node node, std::string_view name, Scene& scene) {
    if (is_svg_shape(name)) return shape(node, scene);
    const bool group = name == "g" || name == "a" || name == "switch";
    if (!group && name != "svg" && name != "use")
      return leave_out(node, "is not a shape; turn it into paths");
    const std::vector<std::string> names = group_names_of(node);
    scene.groups.insert(scene.groups.begin(), names.begin(), names.end());
    if (group) children(node, scene);
    if (name == "svg") inner_page(node, node, scene);
    if (name == "use") use(node, scene);
  }

  void shape(pugi::xml_node node, const Scene& scene) {
    if (!scene.style.visible) return leave_out(node, "is hidden");
    DrawnShape shape;
    shape.kind = svg_local_name(node.name());
    shape.line = document_.line_of(node);
    shape.names = names_of(node);
    shape.name = title_of(node);
    if (shape.name.empty()) shape.name = svg_trimmed(node.attribute("id").value());
    shape.groups = scene.groups;
    shape.fill = scene.style.fill.empty() ? "#000000" : scene.style.fill;  // SVG 1.1, 11.3
    shape.stroke = scene.style.stroke.empty() ? "none" : scene.style.stroke;
    shape.fill_rule = scene.style.fill_rule;
    if (scene.style.stroke_width && shape.stroke != "none")
      shape.stroke_width = Length(*scene.style.stroke_width * std::sqrt(std::abs(scene.to_m.det())));
    trace_svg_shape(node, scene.to_m, scene.viewport, shape);
    if (shape.paths.empty() && shape.fault.empty()) return leave_out(node, "has no size, so it is not drawn");
    for (const DrawnPath& path : shape.paths) points_ += path.points_m.size();
    if (points_ > kMostPoints) return fail("has more than 40 000 points; simplify its curves.");
    drawing_.shapes.push_back(std::move(shape));
  }

  // Children of `node` in a viewport that `sized` gives: an inner svg, or a symbol sized by its use.
  void inner_page(pugi::xml_node node, pugi::xml_node sized, Scene& scene) {
    const auto inner = svg_inner_page(node, sized, scene.viewport);
    if (!inner) return leave_out(node, "has a viewBox or a size that makes no sense");
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
      return fail("repeats its parts inside one another more than 60 deep; simplify it.");
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
  std::size_t points_ = 0, text_ = 0;
};

}  // namespace

Result<Drawing> read_svg(std::string_view bytes, const std::string& name, std::optional<Length> unit) {
  SvgDocument document;
  if (auto problem = document.load(bytes, name)) return *problem;
  Drawing drawing{name, {}, {}, {}, true};
  const auto page = svg_page(document.root(), name, unit);
  if (!page) return page.problem();
  drawing.notes.push_back(page->note);
  const SvgStyleSheet sheet(document.root());
  if (sheet.too_long())
    return bad_input(name + " has a style sheet of more than " +
                     std::to_string(SvgStyleSheet::kMostSelectors) + " selectors; simplify it.");
  drawing.notes.insert(drawing.notes.end(), sheet.notes().begin(), sheet.notes().end());
  if (auto problem = SvgWalk(document, sheet, drawing).walk(*page)) return *problem;
  return drawing;
}

}  // namespace wrapgauge
