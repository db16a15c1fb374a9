#include "app/picture/people_picture.hpp"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>
#include <optional>
#include <vector>

#include "app/picture/colour_map.hpp"
#include "app/picture/legend.hpp"
#include "app/picture/nice_axis.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

constexpr int kPeopleWidth = 1400, kPeopleHeight = 860, kPeopleText = 24;
const QRectF kPlot(150, 110, 1180, 560);
const QColor kBand(226, 232, 240), kMark(60, 30, 100);

// Girth in mm across, share of the limit up.
struct PeopleAxes {
  double least_mm = 0.0, most_mm = 1.0, step_mm = 10.0, top = 1.2, step = 0.2;

  QPointF at(double girth_mm, double share) const {
    return {kPlot.left() + (girth_mm - least_mm) / (most_mm - least_mm) * kPlot.width(),
            kPlot.bottom() - std::min(share, top) / top * kPlot.height()};
  }
};

bool is_measured(const PersonRow& row) {
  return row.answer.girth.si() > 0.0;
}

PeopleAxes axes_of(const People& people) {
  PeopleAxes axes;
  double least = 1e9, most = 0.0, share = 1.1;
  for (const PersonRow& row : people.people) {
    if (!is_measured(row)) continue;
    least = std::min(least, row.answer.girth / mm);
    most = std::max(most, row.answer.girth / mm);
    share = std::max(share, 1.08 * row.answer.share * people.mesh_factor);
  }
  if (most <= 0.0) least = 0.0, most = 100.0;
  const double room = std::max(0.06 * (most - least), 5.0);
  axes.step_mm = round_step(most - least + 2.0 * room, 8.0, 1.0);
  axes.least_mm = axes.step_mm * std::floor((least - room) / axes.step_mm);
  axes.most_mm = axes.step_mm * std::ceil((most + room) / axes.step_mm);
  constexpr double kHighest = 3.0;  // of the limit: what is higher is drawn at the top edge
  axes.step = round_step(std::min(share, kHighest), 6.0, 0.1);
  axes.top = axes.step * std::ceil(std::min(share, kHighest) / axes.step);
  return axes;
}

QString percent(double share) {
  return QString::fromStdString(fixed_text(100.0 * share, 0) + " %");
}

void draw_axes_of_people(const PeopleAxes& axes, QPainter& painter) {
  painter.setPen(QPen(kInk, 2.0));
  painter.drawLine(kPlot.bottomLeft(), kPlot.bottomRight());
  painter.drawLine(kPlot.bottomLeft(), kPlot.topLeft());
  painter.setFont(picture_font(kPeopleText));
  for (double girth = axes.least_mm; girth <= axes.most_mm + 0.5; girth += axes.step_mm) {
    const QPointF tick = axes.at(girth, 0.0);
    painter.drawLine(tick, tick + QPointF(0, 8));
    painter.drawText(QRectF(tick.x() - 60, tick.y() + 12, 120, 32), Qt::AlignHCenter,
                     QString::number(std::lround(girth)));
  }
  for (double share = 0.0; share <= axes.top * 1.0001; share += axes.step) {
    const QPointF tick = axes.at(axes.least_mm, share);
    painter.drawLine(tick, tick - QPointF(8, 0));
    painter.drawText(QRectF(tick.x() - 120, tick.y() - 16, 106, 32), Qt::AlignRight | Qt::AlignVCenter,
                     percent(share));
  }
  painter.drawText(QRectF(kPlot.left(), kPlot.bottom() + 50, kPlot.width(), 34), Qt::AlignHCenter,
                   "girth where the layout's anchor lies, mm");
}

void draw_accepted(const People& people, const PeopleAxes& axes, QPainter& painter) {
  if (!people.accepted) return;
  const double from = people.accepted->from / mm, to = people.accepted->to / mm;
  const QRectF band(QPointF(axes.at(from, 0.0).x(), kPlot.top()), axes.at(to, 0.0));
  painter.fillRect(band, kBand);
  painter.setPen(QPen(kInk, 1.5, Qt::DashLine));
  painter.drawLine(band.topLeft(), band.bottomLeft());
  painter.drawLine(band.topRight(), band.bottomRight());
}

// Above the plot, so that no dot lies under it.
void draw_accepted_words(const People& people, const PeopleAxes& axes, QPainter& painter) {
  painter.setPen(kInk);
  painter.setFont(picture_font(kPeopleText));
  if (!people.accepted) {
    painter.drawText(QRectF(kPlot.left(), kPlot.top() - 40, kPlot.width(), 34), Qt::AlignHCenter,
                     "no range of girths can be given");
    return;
  }
  const double from = people.accepted->from / mm, to = people.accepted->to / mm;
  const QString words =
      QString::fromStdString("accept " + fixed_text(from, 0) + " to " + fixed_text(to, 0) + " mm");
  const double width = QFontMetricsF(painter.font()).horizontalAdvance(words) + 10;
  const double middle = 0.5 * (axes.at(from, 0.0).x() + axes.at(to, 0.0).x());
  const double left = std::clamp(middle - width / 2, kPlot.left(), kPlot.right() - width);
  painter.drawText(QRectF(left, kPlot.top() - 40, width, 34), Qt::AlignCenter, words);
}

void draw_limit_of_people(const PeopleAxes& axes, QPainter& painter) {
  const QPointF left = axes.at(axes.least_mm, 1.0), right = axes.at(axes.most_mm, 1.0);
  painter.fillRect(QRectF(QPointF(left.x(), kPlot.top()), right),
                   QBrush(QColor(150, 142, 162), Qt::BDiagPattern));
  painter.setPen(QPen(kInk, 3.0));
  painter.drawLine(left, right);
}

void draw_cross(const QPointF& at, double size, QPainter& painter) {
  for (const QPen& pen : {QPen(Qt::white, 8.0), QPen(kMark, 4.0)}) {
    painter.setPen(pen);
    painter.drawLine(at + QPointF(-size, -size), at + QPointF(size, size));
    painter.drawLine(at + QPointF(-size, size), at + QPointF(size, -size));
  }
}

void draw_no_answer(const QPointF& at, QPainter& painter) {
  painter.setPen(QPen(kMark, 3.0));
  painter.setBrush(Qt::white);
  painter.drawRect(QRectF(at - QPointF(8, 8), at + QPointF(8, 8)));
}

void draw_within(const QPointF& at, QPainter& painter) {
  painter.setPen(QPen(Qt::white, 2.0));
  painter.setBrush(kMark);
  painter.drawEllipse(at, 10.0, 10.0);
}

QPointF mark_of(const PersonRow& row, const People& people, const PeopleAxes& axes) {
  const double girth = row.answer.girth / mm;
  if (row.verdict == PersonVerdict::kNoAnswer) return axes.at(girth, 0.0) - QPointF(0, 12);
  return axes.at(girth, row.answer.share * people.mesh_factor);
}

void draw_person(const PersonRow& row, const QPointF& at, QPainter& painter) {
  switch (row.verdict) {
    case PersonVerdict::kWithin:
      return draw_within(at, painter);
    case PersonVerdict::kAbove:
      return draw_cross(at, 9.0, painter);
    case PersonVerdict::kNoAnswer:
      return draw_no_answer(at, painter);
  }
}

// Beside a mark, above, left of it or below, whichever is free first.
std::optional<QRectF> free_place(const QPointF& at, const QSizeF& size, const std::vector<QRectF>& taken) {
  constexpr double kGap = 16.0;
  const double across = size.width(), up = size.height();
  for (const QPointF& shift : {QPointF(kGap, -up / 2), QPointF(-across / 2, -up - kGap),
                               QPointF(-across - kGap, -up / 2), QPointF(-across / 2, kGap)}) {
    const QRectF place(at + shift, size);
    const bool free = std::none_of(taken.begin(), taken.end(),
                                   [&](const QRectF& other) { return other.intersects(place); });
    if (free && kPlot.contains(place)) return place;
  }
  return std::nullopt;
}

// Few people are named beside their marks; a name for which there is no room is left to the table.
void name_people(const People& people, const PeopleAxes& axes, QPainter& painter) {
  constexpr std::size_t kNamed = 24;
  if (people.people.size() > kNamed) return;
  painter.setFont(picture_font(kPeopleText - 4));
  const QFontMetricsF letters(painter.font());
  const QPointF limit = axes.at(axes.least_mm, 1.0);
  std::vector<QRectF> taken{QRectF(limit - QPointF(0, 3), QSizeF(kPlot.width(), 6))};
  for (const PersonRow& row : people.people)
    if (is_measured(row))
      taken.push_back(QRectF(mark_of(row, people, axes) - QPointF(12, 12), QSizeF(24, 24)));
  painter.setPen(kInk);
  for (const PersonRow& row : people.people) {
    if (!is_measured(row)) continue;
    const QString name = QString::fromStdString(row.id);
    const QSizeF size(letters.horizontalAdvance(name) + 4, letters.height());
    const auto place = free_place(mark_of(row, people, axes), size, taken);
    if (!place) continue;
    painter.fillRect(*place, QColor(255, 255, 255, 215));
    painter.drawText(*place, Qt::AlignCenter, name);
    taken.push_back(*place);
  }
}

void draw_key(const People& people, QPainter& painter) {
  const double y = kPeopleHeight - 52;
  double x = kPlot.left();
  painter.setFont(picture_font(kPeopleText));
  const auto word = [&](const QString& text) {
    painter.setPen(kInk);
    const double width = QFontMetricsF(painter.font()).horizontalAdvance(text);
    painter.drawText(QRectF(x + 22, y - 18, width + 4, 36), Qt::AlignVCenter, text);
    x += width + 60;
  };
  draw_within({x, y}, painter);
  word("within the limits");
  draw_cross({x, y}, 9.0, painter);
  word("above a limit");
  const bool unanswered = std::any_of(people.people.begin(), people.people.end(), [](const PersonRow& row) {
    return row.verdict == PersonVerdict::kNoAnswer;
  });
  if (unanswered) {
    draw_no_answer({x, y}, painter);
    word("does not close, or no equilibrium");
  }
  x -= 20;
  word("predicted");
}

}  // namespace

QImage people_picture(const People& people) {
  QImage image(kPeopleWidth, kPeopleHeight, QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
  painter.setPen(kInk);
  painter.setFont(picture_font(kPeopleText + 4, true));
  painter.drawText(QRectF(40, 12, kPeopleWidth - 80, 40), Qt::AlignLeft | Qt::AlignVCenter,
                   QString::fromStdString("Share of the limit, " + people.plan));
  const PeopleAxes axes = axes_of(people);
  draw_accepted(people, axes, painter);
  draw_limit_of_people(axes, painter);
  draw_axes_of_people(axes, painter);
  for (const PersonRow& row : people.people)
    if (is_measured(row)) draw_person(row, mark_of(row, people, axes), painter);
  name_people(people, axes, painter);
  draw_accepted_words(people, axes, painter);
  draw_key(people, painter);
  return image;
}

}  // namespace wrapgauge
