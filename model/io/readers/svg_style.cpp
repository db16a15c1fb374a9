#include "model/io/readers/svg_style.hpp"

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
  return style;
}

}  // namespace wrapgauge
