#pragma once
#include <QPainter>

#include "model/casting/template_pages.hpp"

namespace wrapgauge {

// One page of a template. The painter's unit is 1 mm of paper, its origin the page's upper left corner.
void draw_template_page(QPainter& painter, const TemplateDrawing& drawing, const TemplatePages& pages,
                        std::size_t page);

// The page in front of them: what the sheets are, what each line means, and which page shows what.
void draw_template_overview(QPainter& painter, const TemplateDrawing& drawing, const TemplatePages& pages);

}  // namespace wrapgauge
