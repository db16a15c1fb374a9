#include "model/io/readers/svg_page.hpp"

#include <cmath>

#include "model/core/number_text.hpp"
#include "model/io/readers/mesh_reader_text.hpp"
#include "model/io/readers/svg_text.hpp"

namespace wrapgauge {
namespace {

constexpr double kLargestPage = 100.0;  // m

bool said(pugi::xml_node node, const char* name) {
  return static_cast<bool>(node.attribute(name));
}

// What the page says of its width or height: in its style, else as an attribute.
std::string page_text(pugi::xml_node root, const char* name) {
  const SvgDeclarations style = svg_declarations(root.attribute("style").value());
  const auto found = style.find(name);
  return found != style.end() ? found->second.value : svg_trimmed(root.attribute(name).value());
}

bool in_pixels(const std::string& text) {
  return !text.empty() && (text.ends_with("px") || (text.back() >= '0' && text.back() <= '9'));
}

// A length of the page; none when it is missing, "auto" or in %.
std::optional<double> page_length(pugi::xml_node root, const char* name) {
  const std::string text = page_text(root, name);
  if (text.ends_with("%")) return std::nullopt;
  const auto length = svg_length(text, 0.0);
  return length && *length > 0.0 ? length : std::nullopt;
}

std::optional<SvgBox> view_box(pugi::xml_node node) {
  const auto n = svg_numbers(node.attribute("viewBox").value());
  if (!n || n->size() != 4 || !((*n)[2] > 0.0 && (*n)[3] > 0.0)) return std::nullopt;
  return SvgBox{(*n)[0], (*n)[1], (*n)[2], (*n)[3]};
}

Geom::Affine scaled(double scale, double x = 0.0, double y = 0.0) {
  return Geom::Affine(scale, 0, 0, scale, -scale * x, -scale * y);
}

// "0.26 mm", or what it is across and down.
Phrase unit_words(const SvgPage& page) {
  const double across = std::abs(page.to_m[0]), down = std::abs(page.to_m[3]);
  const Phrase one = figures_of(number_text(across / 1e-3) + " mm");
  if (std::abs(across - down) <= 1e-9 * across) return one;
  return Phrase::worded("%1 across and %2 down", {one, figures_of(number_text(down / 1e-3) + " mm")});
}

// The page's viewport in px where the file gives its size; one side may follow from the view's shape.
std::optional<SvgBox> viewport_of(pugi::xml_node root, const std::optional<SvgBox>& view) {
  auto width = page_length(root, "width"), height = page_length(root, "height");
  if (view && width && !height) height = *width * view->height / view->width;
  if (view && height && !width) width = *height * view->width / view->height;
  if (!width || !height) return std::nullopt;
  return SvgBox{0.0, 0.0, *width, *height};
}

Geom::Affine from_corner(double factor, const std::optional<SvgBox>& view) {
  return view ? scaled(factor, view->x, view->y) : scaled(factor);
}

SvgPage told_page(SvgPage page, Length unit, const std::optional<SvgBox>& view) {
  page.to_m = from_corner(unit.si(), view);
  page.note = {Phrase::worded("One unit of the page is %1, as told.", {unit_words(page)})};
  return page;
}

SvgPage page_in_pixels(SvgPage page, const std::optional<SvgBox>& view) {
  page.to_m = from_corner(kPixel, view);
  page.note = {Phrase::worded(
                   "One unit of the page is %1: the file gives no size, so it is taken as 1 px (96 an inch).",
                   {unit_words(page)}),
               "--unit changes that, to pt for a program that counts 72 an inch."};
  return page;
}

// False: the view leaves no size.
bool take_size(SvgPage& page, pugi::xml_node root, const SvgBox& port, const std::optional<SvgBox>& view) {
  const auto map = view ? svg_view_map(*view, port, root.attribute("preserveAspectRatio").value())
                        : std::optional<Geom::Affine>(Geom::identity());
  if (!map) return false;
  page.to_m = *map * scaled(kPixel);
  if (in_pixels(page_text(root, "width")) || in_pixels(page_text(root, "height")))
    page.note = {Phrase::worded("One unit of the page is %1, from the size of the page in the file, which is "
                                "in px: 96 an inch are taken.",
                                {unit_words(page)}),
                 "--unit pt takes 72."};
  else
    page.note = {Phrase::worded("One unit of the page is %1, from the size of the page in the file.",
                                {unit_words(page)})};
  return true;
}

}  // namespace

Result<SvgPage> svg_page(pugi::xml_node root, const std::string& name, const DrawingReading& reading) {
  const auto view = view_box(root);
  if (said(root, "viewBox") && !view)
    return bad_input(Phrase::worded("%1 has viewBox=%2; it needs four numbers, the last two above zero.",
                                    {name_of(name), name_of(in_quotes(root.attribute("viewBox").value()))}));
  const auto port = viewport_of(root, view);
  SvgPage page;
  page.viewport = view   ? SvgViewport{view->width, view->height}
                  : port ? SvgViewport{port->width, port->height}
                         : SvgViewport{};
  if (reading.unit)
    page = told_page(page, *reading.unit, view);
  else if (!port)
    page = page_in_pixels(page, view);
  else if (!take_size(page, root, *port, view))
    return bad_input(
        Phrase::worded("%1 has a page without a size; give width and height in mm.", {name_of(name)}));
  if (reading.scale != 1.0) {
    page.to_m *= scaled(reading.scale);
    page.note.words = in_a_row({page.note.words, Phrase::worded("All of it is taken %1 times as large.",
                                                                {figures_of(number_text(reading.scale))})});
    page.note.by_option += " (--scale)";
  }
  if (!std::isfinite(page.to_m.det()) || !std::isfinite(page.to_m[4] + page.to_m[5]) ||
      !(std::abs(page.to_m.det()) > 0.0) || std::abs(page.to_m[0]) > kLargestPage)
    return bad_input(Phrase::worded(
        "%1 has a page whose size makes no sense; give width, height and viewBox anew.", {name_of(name)}));
  return page;
}

std::optional<SvgPage> svg_inner_page(pugi::xml_node node, pugi::xml_node sized, const SvgViewport& outside) {
  const auto length = [&](const char* key, double whole, double fallback) {
    return said(sized, key) ? svg_length(sized.attribute(key).value(), whole)
                            : std::optional<double>(fallback);
  };
  const bool own = node == sized;
  const auto x = own ? length("x", outside.width, 0.0) : 0.0,
             y = own ? length("y", outside.height, 0.0) : 0.0;
  const auto width = length("width", outside.width, outside.width);
  const auto height = length("height", outside.height, outside.height);
  if (!x || !y || !width || !height) return std::nullopt;
  SvgPage page;
  page.to_m = Geom::Affine(1, 0, 0, 1, *x, *y);
  page.viewport = {*width, *height};
  page.frame = Geom::Rect::from_xywh(*x, *y, *width, *height);
  if (!said(node, "viewBox")) return page;
  const auto view = view_box(node);
  if (!view) return std::nullopt;
  const auto map =
      svg_view_map(*view, {*x, *y, *width, *height}, node.attribute("preserveAspectRatio").value());
  if (!map) return std::nullopt;
  page.to_m = *map;
  page.viewport = {view->width, view->height};
  return page;
}

}  // namespace wrapgauge
