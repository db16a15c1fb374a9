#include "model/casting/template_pages.hpp"

#include <algorithm>
#include <cmath>

namespace wrapgauge {
namespace {

constexpr int kMostPages = 200;
constexpr double kBorder_m = 3e-3;  // round the drawing, so that its lines are not on the paper's edge

int count_of(double extent_m, double shown_m, double step_m) {
  return 1 + std::max(0, static_cast<int>(std::ceil((extent_m - shown_m) / step_m - 1e-9)));
}

TemplatePages laid(const Bounds2& box, const Paper& paper, bool lying) {
  TemplatePages pages;
  pages.paper = paper;
  pages.lying = lying;
  pages.width = lying ? paper.height : paper.width;
  pages.height = lying ? paper.width : paper.height;
  const Vec2 extent = box.high - box.low;
  const double shown_x = (pages.width - 2.0 * pages.margin).si(), step_x = shown_x - pages.overlap.si();
  const double shown_y = (pages.height - 2.0 * pages.margin - pages.footer).si(),
               step_y = shown_y - pages.overlap.si();
  pages.columns = count_of(extent.x(), shown_x, step_x);
  pages.rows = count_of(extent.y(), shown_y, step_y);
  for (int row = 0; row < pages.rows; ++row)
    for (int column = 0; column < pages.columns && pages.rows * pages.columns <= kMostPages; ++column) {
      const Vec2 top_left(box.low.x() + column * step_x, box.high.y() - row * step_y);
      const std::string letters = (row >= 26 ? std::string(1, static_cast<char>('A' + row / 26 - 1)) : "") +
                                  static_cast<char>('A' + row % 26);
      pages.pages.push_back(
          {column,
           row,
           letters + std::to_string(column + 1),
           {{top_left.x(), top_left.y() - shown_y}, {top_left.x() + shown_x, top_left.y()}}});
    }
  return pages;
}

}  // namespace

std::optional<Paper> paper_of(std::string_view name) {
  if (name == "a4") return Paper{"A4", 210.0 * mm, 297.0 * mm};           // ISO 216; confirmed
  if (name == "letter") return Paper{"Letter", 8.5 * inch, 11.0 * inch};  // ANSI/ASME Y14.1 size A; confirmed
  return std::nullopt;
}

Result<TemplatePages> template_pages(const TemplateDrawing& drawing, const Paper& paper) {
  const Vec2 border(kBorder_m, kBorder_m);
  const Bounds2 box{drawing.box.low - border, drawing.box.high + border};
  TemplatePages upright = laid(box, paper, false), lying = laid(box, paper, true);
  const int count_upright = upright.columns * upright.rows, count_lying = lying.columns * lying.rows;
  if (std::min(count_upright, count_lying) > kMostPages)
    return bad_input(Phrase::worded(
        "The template would need %1 %2 pages, above the 200 allowed; write it as .svg instead.",
        {figures_of(std::min(count_upright, count_lying)), name_of(paper.name)}));
  return count_lying < count_upright ? lying : upright;
}

}  // namespace wrapgauge
