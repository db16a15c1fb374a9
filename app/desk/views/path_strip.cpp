#include "app/desk/views/path_strip.hpp"

#include <QChartView>
#include <QEvent>
#include <QGraphicsLayout>
#include <QLabel>
#include <QLegend>
#include <QLegendMarker>
#include <QLineSeries>
#include <QScatterSeries>
#include <QSignalBlocker>
#include <QSlider>
#include <QVBoxLayout>
#include <QValueAxis>
#include <algorithm>
#include <cmath>

#include "app/desk/views/pressure_words.hpp"
#include "app/desk/views/save_views.hpp"
#include "app/desk/views/view_colours.hpp"
#include "app/picture/colour_map.hpp"

namespace wrapgauge {
namespace {

// Predicted pressure at which the limit is met where the last state presses most; 0: none is set.
Pressure threshold_at_peak(const Estimate& estimate, const StateContact& last) {
  Eigen::Index at = 0;
  if (estimate.map.mean_1cm2_pa.size() == 0) return {};
  estimate.map.mean_1cm2_pa.maxCoeff(&at);
  const double threshold = last.threshold_pa[at];
  return Pressure(std::isfinite(threshold) && threshold > 0.0 ? threshold : 0.0);
}

struct RoundTop {
  double value = 1.0;
  int ticks = 6;  // both ends included: numbers between them are round too
};

RoundTop round_top(double value) {
  for (double step = 0.1;; step *= 10.0)
    for (const auto& [factor, ticks] :
         {std::pair(1.0, 6), {1.5, 4}, {2.0, 5}, {2.5, 6}, {3.0, 4}, {4.0, 5}, {5.0, 6}, {6.0, 4}, {8.0, 5}})
      if (factor * step >= value) return {factor * step, ticks};
}

}  // namespace

PathStrip::PathStrip(const ShownPlan& shown, Selection& selection, QWidget* parent)
    : QWidget(parent),
      shown_(shown),
      selection_(selection),
      slider_(new QSlider(Qt::Horizontal, this)),
      words_(new QLabel(this)),
      view_(new QChartView(this)),
      curve_(new QLineSeries(this)),
      limit_(new QLineSeries(this)),
      holds_(new QLineSeries(this)),
      states_(new QScatterSeries(this)),
      now_(new QScatterSeries(this)),
      inside_(new QValueAxis(this)),
      peak_(new QValueAxis(this)) {
  slider_->setAccessibleName(tr("Recorded states of the inflation"));
  slider_->setPageStep(1);
  words_->setWordWrap(true);
  make_chart();
  auto* box = new QVBoxLayout(this);
  box->setContentsMargins(4, 4, 4, 4);
  box->addWidget(words_);
  box->addWidget(slider_);
  box->addWidget(view_, 1);
  offer_picture(this, tr("inflation curve"), [this] { return picture(); });
  connect(slider_, &QSlider::valueChanged, &selection_, &Selection::show_state);
  connect(&selection_, &Selection::stateChanged, this, &PathStrip::show_state);
  connect(&selection_, &Selection::unitChanged, this, &PathStrip::draw_curve);
  connect(&shown_, &ShownPlan::estimateChanged, this, &PathStrip::estimate_changed);
  connect(&shown_, &ShownPlan::staleChanged, this, &PathStrip::show_state);
  connect(&shown_, &ShownPlan::stateRead, this, &PathStrip::draw_curve);
  estimate_changed();
}

void PathStrip::make_chart() {
  QChart* chart = view_->chart();
  view_->setRenderHint(QPainter::Antialiasing);
  view_->setFrameShape(QFrame::NoFrame);
  view_->setMinimumHeight(90);
  view_->setAccessibleName(tr("Peak contact pressure while the device fills"));
  chart->setMargins({2, 2, 8, 2});
  chart->layout()->setContentsMargins(0, 0, 0, 0);
  chart->setBackgroundRoundness(0);
  curve_->setName(tr("peak over 1 cm²"));
  states_->setName(tr("recorded states"));
  states_->setMarkerSize(8.0);
  now_->setName(tr("shown"));
  now_->setMarkerSize(15.0);
  limit_->setName(tr("limit ÷ model factor"));
  holds_->setName(tr("as far as it goes"));
  for (QXYSeries* series :
       {static_cast<QXYSeries*>(limit_), static_cast<QXYSeries*>(holds_), static_cast<QXYSeries*>(curve_),
        static_cast<QXYSeries*>(states_), static_cast<QXYSeries*>(now_)})
    chart->addSeries(series);
  chart->addAxis(inside_, Qt::AlignBottom);
  chart->addAxis(peak_, Qt::AlignLeft);
  for (QAbstractSeries* series : chart->series()) {
    series->attachAxis(inside_);
    series->attachAxis(peak_);
  }
  chart->legend()->setAlignment(Qt::AlignTop);
  for (QAbstractSeries* series :
       {static_cast<QAbstractSeries*>(curve_), static_cast<QAbstractSeries*>(states_),
        static_cast<QAbstractSeries*>(now_)})
    for (QLegendMarker* marker : chart->legend()->markers(series)) marker->setVisible(false);
  connect(states_, &QScatterSeries::clicked, this, [this](const QPointF& at) {
    const auto points = states_->points();
    const auto found = std::find(points.begin(), points.end(), at);
    if (found != points.end()) selection_.show_state(static_cast<int>(found - points.begin()));
  });
  take_colours();
}

void PathStrip::take_colours() {
  const ViewColours colours = view_colours(*this);
  QChart* chart = view_->chart();
  chart->setBackgroundBrush(palette().color(QPalette::Window));
  view_->setBackgroundBrush(palette().color(QPalette::Window));
  const bool dark = colours.ink.lightness() > 128;
  const QColor line = map_colour(dark ? 0.35 : 0.8);
  curve_->setPen(QPen(line, 2.5));
  states_->setBrush(line);
  states_->setPen(QPen(line));
  now_->setBrush(Qt::NoBrush);
  now_->setPen(QPen(colours.ink, 2.5));
  limit_->setPen(QPen(colours.ink, 2.0));
  holds_->setPen(QPen(colours.ink, 1.6, Qt::DashLine));
  chart->legend()->setLabelColor(colours.ink);
  QColor grid = colours.ink;
  grid.setAlpha(45);
  for (QValueAxis* axis : {inside_, peak_}) {
    axis->setLabelsColor(colours.ink);
    axis->setTitleBrush(colours.ink);
    axis->setLinePenColor(colours.ink);
    axis->setGridLineColor(grid);
    axis->setLabelFormat("%g");
  }
}

double PathStrip::in_unit(Pressure pressure) const {
  return selection_.unit() == PressureUnit::kKilopascal ? pressure / kPa : pressure / mmHg;
}

void PathStrip::estimate_changed() {
  const int count = shown_.state_count();
  {
    const QSignalBlocker quiet(slider_);
    slider_->setRange(0, std::max(0, count - 1));
    slider_->setEnabled(count > 1);
  }
  draw_curve();
}

void PathStrip::draw_curve() {
  QList<QPointF> points;
  double right = 0.0, top = 0.0;
  for (int state = 0; state < shown_.state_count(); ++state) {
    const auto contact = shown_.contact(state);
    if (!contact) continue;
    points.append({in_unit(contact->inside), in_unit(contact->figures.peak_anywhere)});
    right = std::max(right, points.back().x());
    top = std::max(top, points.back().y());
  }
  curve_->replace(points);
  states_->replace(points);
  limit_->clear();
  holds_->clear();
  const auto& estimate = shown_.estimate();
  const auto last = shown_.contact(shown_.state_count() - 1);
  const double limit = estimate && last ? in_unit(threshold_at_peak(*estimate, *last)) : 0.0;
  const auto hold = estimate ? estimate->path.limit_point : std::nullopt;
  if (hold) right = std::max(right, in_unit(hold->pressure));
  const RoundTop along = round_top(std::max(1.04 * right, 0.1));
  const RoundTop up = round_top(std::max({1.1 * top, 1.1 * limit, 0.1}));
  right = along.value;
  top = up.value;
  inside_->setTickCount(along.ticks);
  up_ticks_ = up.ticks;
  show_ticks();
  if (limit > 0.0) limit_->replace(QList<QPointF>{{0.0, limit}, {right, limit}});
  if (hold) holds_->replace(QList<QPointF>{{in_unit(hold->pressure), 0.0}, {in_unit(hold->pressure), top}});
  limit_->setVisible(limit > 0.0);
  holds_->setVisible(hold.has_value());
  inside_->setRange(0.0, right);
  peak_->setRange(0.0, top);
  const QString unit = selection_.unit() == PressureUnit::kKilopascal ? "kPa" : "mmHg";
  inside_->setTitleText(tr("inside, %1").arg(unit));
  peak_->setTitleText(tr("peak, %1").arg(unit));
  view_->setVisible(estimate != nullptr);
  show_state();
}

void PathStrip::show_state() {
  {
    const QSignalBlocker quiet(slider_);
    slider_->setValue(selection_.state());
  }
  now_->clear();
  const int count = shown_.state_count();
  if (count == 0) return words_->setText(tr("No estimate yet: there is nothing to show of the inflation."));
  const auto contact = shown_.contact(selection_.state());
  QString words = tr("State %1 of %2").arg(selection_.state() + 1).arg(count);
  if (!contact) return words_->setText(words + tr(": its contact is being read."));
  words += tr(": inside %1, peak over 1 cm² on the skin %2")
               .arg(pressure_words(contact->inside, selection_.unit()),
                    pressure_words(contact->figures.peak_anywhere, selection_.unit()));
  if (!shown_.stale().isEmpty()) words += ". " + shown_.stale();
  words_->setText(words);
  slider_->setAccessibleDescription(words);
  now_->append(in_unit(contact->inside), in_unit(contact->figures.peak_anywhere));
}

QImage PathStrip::picture() {
  return view_->grab().toImage();
}

// Where there is little room the curve takes it all; the words above say what it shows.
void PathStrip::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  inside_->setTitleVisible(roomy());
  peak_->setTitleVisible(roomy());
  show_ticks();
  view_->chart()->legend()->setVisible(roomy());
}

bool PathStrip::roomy() const {
  return height() > 15 * fontMetrics().height();
}

// Numbers that stand closer than a line of text would be cut to dots.
void PathStrip::show_ticks() {
  const double room = view_->chart()->plotArea().height() / std::max(1.0, 1.6 * fontMetrics().height());
  peak_->setTickCount(room >= up_ticks_ ? up_ticks_ : room >= 3.0 ? 3 : 2);
}

void PathStrip::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange) take_colours();
  QWidget::changeEvent(event);
}

}  // namespace wrapgauge
