#pragma once
// A 1:1 paper mock-up to wrap, mark and cut by before casting: what is drawn, whatever it is drawn on.

#include "model/casting/silicone_amount.hpp"
#include "model/casting/worn_layout.hpp"

namespace wrapgauge {

enum class TemplateStroke {
  kCut,       // outline of silicone
  kStrap,     // outline of cloth
  kSeam,      // edge of what is open: chambers and channels that meet have one
  kInset,     // inset seam
  kFold,      // closing lines: where the two edges meet
  kCentre,    // line that lies along the limb through the anchor
  kKeepClear  // sites to keep clear
};
const char* stroke_name(TemplateStroke stroke);     // "cut", "strap" ...
const char* stroke_meaning(TemplateStroke stroke);  // "cut the silicone" ...: words of the legend

struct TemplateLine {
  TemplateStroke stroke;
  Polyline path_m;
  bool closed = false;
};
enum class WordsFrom { kLeft, kMiddle, kRight };
struct TemplateWords {
  Vec2 place_m;  // of the base line's left end, middle or right end
  std::string words;
  WordsFrom from = WordsFrom::kLeft;
};

// y upwards, towards proximal. Metres. Seen with the outer sheet towards you, in the layout's frame; or with
// the skin sheet towards you, x mirrored.
struct TemplateDrawing {
  std::string name;
  bool skin_side = false;
  std::vector<TemplateLine> lines;
  std::vector<TemplateWords> words;
  std::vector<Vec2> inlets_m;      // drawn as small crossed circles
  Vec2 distal_arrow_m;             // tail of an arrow of 15 mm that points towards distal
  Bounds2 box;                     // of everything
  std::vector<std::string> notes;  // to print beside it: sheets, amounts, straps, sites to keep clear

  std::string title() const;  // "NAME, template 1:1, outer sheet towards you"
};

struct TemplateMarks {
  std::optional<Length> closing_length;  // none: no second closing line, unless the closure gives it
  std::optional<Vec2> layout_point_m;    // none: middle of the outline
  std::vector<SiteOnLayout> sites;
  std::vector<SheetAmount> amounts{};
  CastingAllowance allowance{};  // that the amounts hold
  bool skin_side = false;
};

TemplateDrawing template_drawing(const Layout& layout, const TemplateMarks& marks);

// The kinds of line that a drawing has, in the order of the legend.
std::vector<TemplateStroke> strokes_of(const TemplateDrawing& drawing);
inline constexpr const char* kInletMeaning = "inlet";
inline constexpr const char* kArrowMeaning = "towards distal";

// What a printed template has to carry besides the drawing.
inline constexpr Length kCheckBar = 50.0 * mm;
std::string check_bar_words();  // "Print at 100 % ...: this bar measures 50 mm."

}  // namespace wrapgauge
