#pragma once
// Pens, words and signs of a printed template, alike on every page. The painter's unit is 1 mm of paper.

#include <QPainter>

#include "model/casting/template_pages.hpp"

namespace wrapgauge::template_ink {

inline const QColor kBlack(0, 0, 0), kGrey(110, 110, 110), kPale(170, 170, 170);

QPen pen_of(TemplateStroke stroke);
// Inset seams are filled, so that welds inside a chamber are seen at a glance.
QBrush brush_of(TemplateStroke stroke);

double words_width_mm(const QString& words, double height_mm, bool bold = false);
struct WordsLook {
  double height_mm = 3.0;
  bool bold = false;
  WordsFrom from = WordsFrom::kLeft;
  bool over_lines = false;  // with white round them, so that a line below does not cross them out
};
void put_words(QPainter& painter, const QPointF& at, const QString& words, const WordsLook& look);

void draw_sample(QPainter& painter, TemplateStroke stroke, const QPointF& at, double length_mm);
void draw_inlet(QPainter& painter, const QPointF& at);
void draw_arrow(QPainter& painter, const QPointF& tail, double length_mm = 15.0);
// The bar of 50 mm, the title and the page's label, below what a page shows.
void draw_footer(QPainter& painter, const TemplatePages& pages, const QString& title);
QRectF shown_of(const TemplatePages& pages);  // between the margins, above the footer

}  // namespace wrapgauge::template_ink
