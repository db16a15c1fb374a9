#pragma once
// Where the words of a chamber stand over the flat layout, in pixels of the view.

#include <QPainterPath>
#include <QStringList>
#include <functional>
#include <optional>
#include <vector>

#include "app/desk/views/view_legend.hpp"

namespace wrapgauge {

struct FlatLabel {
  QStringList lines;
  QRectF plate;
  std::optional<QPointF> points_at;  // what a line leads to; none: the words stand within the chamber
};

// What the words of one chamber are about.
struct LabelledShape {
  QPainterPath path;
  QPointF inside;                                  // a place for words within it
  std::function<QStringList(double width)> words;  // lines that fit a width
};

struct LabelRoom {
  QRectF view;      // all words stand in here
  QRectF material;  // words that would hide a chamber stand outside of this
  QFontMetricsF metrics;
  std::vector<QRectF> taken;  // what words keep clear of; each label is added
};

// Within the chamber where they leave most of it to be seen, in brief where they would hide much of it, else
// beside the material with a line to the chamber. Where there is no room beside it either, they stand over
// the chamber after all; none: its place is out of sight or other words stand there already.
std::optional<FlatLabel> place_label(const LabelledShape& shape, LabelRoom& room);

void draw_labels(QPainter& painter, const std::vector<FlatLabel>& labels, const LegendLook& look);

}  // namespace wrapgauge
