#pragma once
// A 1:1 template for a paper try-on before casting: what is drawn, whatever it is drawn on.

#include "model/casting/worn_layout.hpp"

namespace wrapgauge {

enum class TemplateStroke {
  kCut,       // outline of silicone
  kStrap,     // outline of cloth
  kSeam,      // edge of a chamber
  kInset,     // inset seam
  kChannel,   // edge of a channel
  kFold,      // closing lines: where the two edges meet
  kCentre,    // line that lies along the limb through the anchor
  kKeepClear  // bony sites
};
const char* stroke_name(TemplateStroke stroke);     // "cut", "strap" ...
const char* stroke_meaning(TemplateStroke stroke);  // "cut the silicone" ...: words of the legend

struct TemplateLine {
  TemplateStroke stroke;
  Polyline path_m;
  bool closed = false;
};
struct TemplateWords {
  Vec2 place_m;  // left end of the base line, or its middle
  std::string words;
  bool centred = false;
};

// In the layout's frame: y upwards, towards proximal; the outer sheet towards you. Metres.
struct TemplateDrawing {
  std::string name;
  std::vector<TemplateLine> lines;
  std::vector<TemplateWords> words;
  std::vector<Vec2> inlets_m;  // drawn as small crossed circles
  Vec2 distal_arrow_m;         // tail of an arrow of 15 mm that points towards distal
  Bounds2 box;                 // of everything
};

struct TemplateMarks {
  std::optional<Length> closing_length;  // none: no second closing line, unless the closure gives it
  std::optional<Vec2> layout_point_m;    // none: middle of the outline
  std::vector<SiteOnLayout> sites;
};

TemplateDrawing template_drawing(const Layout& layout, const TemplateMarks& marks);

// What a printed template has to carry besides the drawing.
inline constexpr Length kCheckBar = 50.0 * mm;
std::string check_bar_words();  // "This bar has to measure 50 mm. ..."

}  // namespace wrapgauge
