#pragma once
// The 1:1 template as a PDF of paper pages. start_picture_program has to have run.

#include <string>

#include "model/casting/template_pages.hpp"

namespace wrapgauge {

// First an overview: sheets, amounts, what each line means, and which page shows what. Then every page with
// its part of the drawing, lines and labels for glueing it to its neighbours, and a short legend. Each
// carries the check bar and its label. The file carries no date, so the same input gives the same bytes.
// Problem: the PDF could not be written.
Result<std::string> template_pdf(const TemplateDrawing& drawing, const TemplatePages& pages);

}  // namespace wrapgauge
