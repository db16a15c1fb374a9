#include "app/desk/window/agreement_view.hpp"

#include <QHelpEvent>
#include <QLocale>
#include <QPainter>
#include <QToolTip>
#include <algorithm>
#include <cmath>

#include "app/desk/views/view_colours.hpp"

namespace wrapgauge {
namespace {

constexpr double kMarkRadius = 4.5, kLeft = 40.0, kBelow = 36.0, kMargin = 6.0;

void draw_shape(QPainter& painter, int group, const QPointF& at) {
  constexpr double r = kMarkRadius;
  switch (group % 4) {
    case 0:
      return painter.drawEllipse(at, r, r);
    case 1:
      return painter.drawRect(QRectF(at.x() - r, at.y() - r, 2.0 * r, 2.0 * r));
    case 2:
      return void(
          painter.drawPolygon(QPolygonF({at + QPointF(0.0, -r), at + QPointF(r, r), at + QPointF(-r, r)})));
    default:
      painter.drawPolygon(QPolygonF(
          {at + QPointF(0.0, -r), at + QPointF(r, 0.0), at + QPointF(0.0, r), at + QPointF(-r, 0.0)}));
  }
}

// ln, the geometric mean of what was read of each group.
std::vector<double> middles_of(const std::vector<AgreementMark>& marks) {
  std::vector<double> sums;
  std::vector<int> counts;
  for (const AgreementMark& mark : marks) {
    const auto group = static_cast<std::size_t>(mark.group);
    sums.resize(std::max(sums.size(), group + 1), 0.0);
    counts.resize(sums.size(), 0);
    sums[group] += std::log(mark.read);
    ++counts[group];
  }
  for (std::size_t group = 0; group < sums.size(); ++group) sums[group] /= std::max(counts[group], 1);
  return sums;
}

}  // namespace

AgreementView::AgreementView(QWidget* parent) : QWidget(parent) {
  setAccessibleName(tr("Read against predicted"));
  QSizePolicy policy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

void AgreementView::show_marks(std::vector<AgreementMark> marks, const QString& words) {
  marks_ = std::move(marks);
  words_ = words;
  middle_ = middles_of(marks_);
  reach_ = 0.7;
  for (const AgreementMark& mark : marks_) {
    const double middle = middle_[static_cast<std::size_t>(mark.group)];
    reach_ = std::max({reach_, 1.1 * std::abs(std::log(mark.read) - middle),
                       1.1 * std::abs(std::log(mark.predicted) - middle)});
  }
  say_in_words();
  setVisible(!marks_.empty());
  update();
}

void AgreementView::say_in_words() {
  double sum = 0.0;
  for (const AgreementMark& mark : marks_) sum += std::log(mark.read / mark.predicted);
  const double mean = marks_.empty() ? 1.0 : std::exp(sum / static_cast<double>(marks_.size()));
  setAccessibleDescription(tr("%1 readings; on average %2 times what is %3.")
                               .arg(marks_.size())
                               .arg(QLocale().toString(mean, 'f', 2), words_));
}

QRectF AgreementView::plot() const {
  return QRectF(rect()).adjusted(kLeft, kMargin, -kMargin, -kBelow);
}

QPointF AgreementView::place(const AgreementMark& mark) const {
  const QRectF box = plot();
  const double middle = middle_[static_cast<std::size_t>(mark.group)];
  return {box.center().x() + 0.5 * box.width() * (std::log(mark.predicted) - middle) / reach_,
          box.center().y() - 0.5 * box.height() * (std::log(mark.read) - middle) / reach_};
}

void AgreementView::draw_ground(QPainter& painter) const {
  const QRectF box = plot();
  const ViewColours colours = view_colours(*this);
  double error = 0.0;
  for (const AgreementMark& mark : marks_) error = std::max(error, mark.error);
  const auto at = [&](double predicted, double read) {
    return QPointF(box.center().x() + 0.5 * box.width() * predicted / reach_,
                   box.center().y() - 0.5 * box.height() * read / reach_);
  };
  painter.fillRect(box, colours.paper);
  painter.save();
  painter.setClipRect(box);
  QColor band = colours.ink;
  band.setAlpha(30);
  painter.setPen(Qt::NoPen);
  painter.setBrush(band);
  painter.drawPolygon(QPolygonF({at(-reach_, -reach_ - 2.0 * error), at(reach_, reach_ - 2.0 * error),
                                 at(reach_, reach_ + 2.0 * error), at(-reach_, -reach_ + 2.0 * error)}));
  painter.setPen(QPen(colours.ink, 1.2));
  painter.drawLine(at(-reach_, -reach_), at(reach_, reach_));
  painter.restore();
  painter.setPen(palette().color(QPalette::WindowText));
  painter.drawRect(box);
  for (const double times : {0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0}) {
    const double where = std::log(times);
    if (std::abs(where) > reach_) continue;
    const QString words = QLocale().toString(times);
    painter.drawText(QRectF(at(where, -reach_) + QPointF(-20.0, 2.0), QSizeF(40.0, 14.0)), Qt::AlignHCenter,
                     words);
    painter.drawText(QRectF(at(-reach_, where) + QPointF(-34.0, -7.0), QSizeF(30.0, 14.0)), Qt::AlignRight,
                     words);
  }
}

void AgreementView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  QFont small = font();
  small.setPointSizeF(0.85 * font().pointSizeF());
  painter.setFont(small);
  draw_ground(painter);
  const ViewColours colours = view_colours(*this);
  for (const AgreementMark& mark : marks_) {
    painter.setPen(QPen(colours.ink, 1.5));
    painter.setBrush(mark.outlier ? severity_colour(Severity::kWarn) : colours.paper);
    draw_shape(painter, mark.group, place(mark));
  }
  painter.setPen(palette().color(QPalette::WindowText));
  const QRectF box = plot();
  painter.drawText(QRectF(box.left(), box.bottom() + 17.0, box.width(), 16.0), Qt::AlignHCenter,
                   tr("%1, over the middle of its kind").arg(words_));
  painter.save();
  painter.translate(10.0, box.center().y());
  painter.rotate(-90.0);
  painter.drawText(QRectF(-100.0, -8.0, 200.0, 16.0), Qt::AlignCenter, tr("read"));
  painter.restore();
}

bool AgreementView::event(QEvent* event) {
  if (event->type() != QEvent::ToolTip) return QWidget::event(event);
  const auto* help = static_cast<QHelpEvent*>(event);
  for (const AgreementMark& mark : marks_)
    if ((place(mark) - QPointF(help->pos())).manhattanLength() < 2.5 * kMarkRadius) {
      QToolTip::showText(help->globalPos(), mark.name, this);
      return true;
    }
  QToolTip::hideText();
  return true;
}

}  // namespace wrapgauge
