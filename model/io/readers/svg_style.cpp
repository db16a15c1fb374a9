#include "model/io/readers/svg_style.hpp"

#include "model/io/readers/mesh_reader_text.hpp"
#include "model/io/readers/svg_text.hpp"
#include "model/layout/drawing_colour.hpp"

namespace wrapgauge {

SvgStyle svg_style_of(pugi::xml_node node, const SvgStyleSheet& sheet, SvgStyle style) {
  SvgDeclarations declared = sheet.declarations_for(node);
  lay_over(declared, svg_declarations(node.attribute("style").value()));
  const auto said = [&](const char* name) -> std::string {
    const auto found = declared.find(name);
    const std::string value =
        found != declared.end() ? found->second.value : svg_trimmed(node.attribute(name).value());
    return value == "inherit" ? "" : value;
  };
  if (const auto fill = said("fill"); !fill.empty()) style.fill = plain_colour(fill);
  if (const auto stroke = said("stroke"); !stroke.empty()) style.stroke = plain_colour(stroke);
  if (const auto width = said("stroke-width"); !width.empty())
    if (const auto length = svg_length(width, 0.0); length && *length > 0.0) style.stroke_width = *length;
  if (const auto rule = said("fill-rule"); !rule.empty())
    style.fill_rule = rule == "evenodd" ? FillRule::kEvenOdd : FillRule::kNonZero;
  if (const auto seen = said("visibility"); !seen.empty()) style.visible = seen == "visible";
  if (said("display") == "none") style.display = false;
  style.own = std::move(declared);
  return style;
}

std::string svg_own(pugi::xml_node node, const SvgStyle& style, const char* name) {
  const auto found = style.own.find(name);
  return found != style.own.end() ? found->second.value : svg_trimmed(node.attribute(name).value());
}

std::optional<Geom::Affine> svg_own_transform(pugi::xml_node node, const SvgStyle& style, std::string& why) {
  for (const char* single : {"translate", "rotate", "scale", "offset-path"})
    if (const auto found = style.own.find(single);
        found != style.own.end() && found->second.value != "none") {
      why = std::string("has ") + single + ": " + in_quotes(found->second.value) +
            " in its style, which is not read; write it as transform";
      return std::nullopt;
    }
  const std::string said = svg_own(node, style, "transform"),
                    origin = svg_own(node, style, "transform-origin");
  const bool css = style.own.contains("transform");
  const auto transform = css ? css_transform(said) : svg_transform(said);
  if (!transform) {
    why = (css ? "has transform: " : "has transform=") + in_quotes(said) + ", which is not a transform" +
          (css ? " that is read here; apply it to the shape's points" : "");
    return std::nullopt;
  }
  if (origin.empty() || *transform == Geom::identity()) return transform;
  const std::vector<std::string> words = svg_words(origin);
  const auto x = svg_length(words[0], 0.0), y = svg_length(words.size() > 1 ? words[1] : "", 0.0);
  if (!x || !y || origin.find('%') != origin.npos || !svg_own(node, style, "transform-box").empty()) {
    why = "turns or scales about transform-origin " + in_quotes(origin) +
          ", which is not read; apply the transform to the shape's points";
    return std::nullopt;
  }
  return Geom::Affine(1, 0, 0, 1, -*x, -*y) * *transform * Geom::Affine(1, 0, 0, 1, *x, *y);
}

}  // namespace wrapgauge
