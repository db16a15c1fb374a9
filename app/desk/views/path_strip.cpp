#include "app/desk/views/path_strip.hpp"

#include <QChartView>
#include <QEvent>
#include <QGraphicsLayout>
#include <QGraphicsSimpleTextItem>
#include <QHBoxLayout>
#include <QLabel>
#include <QLegend>
#include <QLineSeries>
#include <QScatterSeries>
#include <QSignalBlocker>
#include <QSlider>
#include <QToolButton>
#include <QVBoxLayout>
#include <QValueAxis>
#include <algorithm>
#include <cmath>
#include <utility>

#include "app/desk/views/pressure_words.hpp"
#include "app/desk/views/pump_scale.hpp"
#include "app/desk/views/save_views.hpp"
#include "app/desk/views/view_colours.hpp"
#include "app/desk/words/phrase_text.hpp"
#include "app/picture/colour_map.hpp"
#include "app/picture/nice_axis.hpp"

namespace wrapgauge {
namespace {

constexpr double kShownDot = 15.0;  // across, pixels
constexpr int kBetween = 24;        // steps of the slider from one recorded state to the next
constexpr int kFrame_ms = 30;
constexpr double kWhole_s = 3.0;  // that the filling takes when it is played

// What stands beside a line of the chart.
QGraphicsSimpleTextItem* words_on(QChart* chart) {
  auto* words = new QGraphicsSimpleTextItem(chart);
  words->setZValue(20.0);  // over the curves
  return words;
}

// The least end of an axis on which `value` keeps `pixels` of `length` free.
double leaving_room(double value, double pixels, double length) {
  return value / std::max(0.5, 1.0 - pixels / std::max(1.0, length));
}

}  // namespace

PathStrip::PathStrip(const ShownPlan& shown, Selection& selection, QWidget* parent)
    : QWidget(parent),
      shown_(shown),
      selection_(selection),
      slider_(new QSlider(Qt::Horizontal, this)),
      play_(new QToolButton(this)),
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
  slider_->setSingleStep(kBetween);
  slider_->setPageStep(kBetween);
  play_->setCheckable(true);
  play_->setText(tr("Fill"));
  play_->setToolTip(tr("Play the filling from deflated to the plan's inflation"));
  play_->setAccessibleName(play_->toolTip());
  player_.setInterval(kFrame_ms);
  words_->setWordWrap(true);
  make_chart();
  auto* box = new QVBoxLayout(this);
  box->setContentsMargins(4, 4, 4, 4);
  box->addWidget(words_);
  auto* pump = new QHBoxLayout;
  pump->setSpacing(8);
  pump->addWidget(play_);
  auto* travel = new QVBoxLayout;
  travel->setSpacing(1);
  travel->addWidget(slider_);
  travel->addWidget(new PumpScale(shown_, selection_, *slider_, this));
  pump->addLayout(travel, 1);
  box->addLayout(pump);
  box->addWidget(view_, 1);
  offer_picture(this, tr("inflation curve"), [this] { return picture(); });
  connect(slider_, &QSlider::valueChanged, this,
          [this](int value) { selection_.show_filling(static_cast<double>(value) / kBetween); });
  connect(slider_, &QSlider::sliderPressed, this, [this] { play(false); });
  connect(slider_, &QSlider::sliderReleased, this, &PathStrip::come_to_rest);
  connect(play_, &QToolButton::clicked, this, &PathStrip::play);
  connect(&player_, &QTimer::timeout, this, &PathStrip::play_on);
  connect(&selection_, &Selection::fillingChanged, this, &PathStrip::show_filling);
  connect(&selection_, &Selection::stateChanged, this, &PathStrip::show_state);
  connect(&selection_, &Selection::unitChanged, this, &PathStrip::draw_curve);
  connect(&shown_, &ShownPlan::estimateChanged, this, &PathStrip::estimate_changed);
  connect(&shown_, &ShownPlan::staleChanged, this, &PathStrip::show_state);
  connect(&shown_, &ShownPlan::stateRead, this, &PathStrip::draw_curve);
  estimate_changed();
}

void PathStrip::make_chart() {
  QChart* chart = view_->chart();
  chart->setLocalizeNumbers(true);
  view_->setRenderHint(QPainter::Antialiasing);
  view_->setFrameShape(QFrame::NoFrame);
  view_->setMinimumHeight(10 * fontMetrics().height());  // numbers and names of the axes take four of these
  view_->setAccessibleName(tr("Peak contact pressure while the device fills"));
  chart->setMargins({2, 2, 8, 2});
  chart->layout()->setContentsMargins(0, 0, 0, 0);
  chart->setBackgroundRoundness(0);
  states_->setMarkerSize(8.0);
  now_->setMarkerSize(kShownDot);
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
  for (QValueAxis* axis : {inside_, peak_}) axis->setTickType(QValueAxis::TicksDynamic);
  chart->legend()->hide();  // the lines are named where they run
  limit_words_ = words_on(chart);
  holds_words_ = words_on(chart);
  connect(chart, &QChart::plotAreaChanged, this, &PathStrip::fit_axes);
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
  for (QGraphicsSimpleTextItem* words : {limit_words_, holds_words_}) words->setBrush(colours.ink);
  QColor grid = colours.ink;
  grid.setAlpha(45);
  for (QValueAxis* axis : {inside_, peak_}) {
    axis->setLabelsColor(colours.ink);
    axis->setTitleBrush(colours.ink);
    axis->setLinePenColor(colours.ink);
    axis->setGridLineColor(grid);
  }
}

double PathStrip::in_unit(Pressure pressure) const {
  return selection_.unit() == PressureUnit::kKilopascal ? pressure / kPa : pressure / mmHg;
}

void PathStrip::estimate_changed() {
  const int count = shown_.state_count();
  {
    const QSignalBlocker quiet(slider_);
    slider_->setRange(0, kBetween * std::max(0, count - 1));
    slider_->setEnabled(count > 1);
  }
  play_->setEnabled(count > 1);
  play(false);
  draw_curve();
}

void PathStrip::draw_curve() {
  QList<QPointF> points;
  for (int state = 0; state < shown_.state_count(); ++state)
    if (const auto contact = shown_.contact(state))
      points.append({in_unit(contact->inside), in_unit(contact->figures.peak_anywhere)});
  curve_->replace(points);
  states_->replace(points);
  const auto& estimate = shown_.estimate();
  const auto last = shown_.contact(shown_.state_count() - 1);
  const auto limit = estimate && last ? threshold_at_peak(*estimate, last->threshold_pa) : std::nullopt;
  limit_at_ = limit ? in_unit(*limit) : 0.0;
  const auto hold = estimate ? estimate->path.limit_point : std::nullopt;
  holds_at_ = hold ? in_unit(hold->pressure) : 0.0;
  const QString unit = selection_.unit() == PressureUnit::kKilopascal ? "kPa" : "mmHg";
  inside_->setTitleText(tr("inside, %1").arg(unit));
  peak_->setTitleText(tr("peak, %1").arg(unit));
  view_->setVisible(estimate != nullptr);
  fit_axes();
  show_state();
}

// Round numbers as close as there is room for them, and none of the dots cut by the plot's edge. New numbers
// may be wider or narrower and so change the plot's area, which calls this again.
void PathStrip::fit_axes() {
  if (std::exchange(fitting_, true)) return;
  const QRectF plot = view_->chart()->plotArea();
  const double line = fontMetrics().height(), dot = 0.5 * kShownDot + 2.0;
  double right = std::max(0.1, holds_at_),
         top = leaving_room(std::max(0.1, limit_at_), line + 4.0, plot.height());
  for (const QPointF& point : curve_->points()) {
    right = std::max(right, point.x());
    top = std::max(top, leaving_room(point.y(), dot, plot.height()));
  }
  const auto fit = [&](QValueAxis* axis, double least_top, double length, double room) {
    const NiceAxis nice = nice_axis(least_top, std::clamp(static_cast<int>(length / room), 1, 6));
    const double rim = nice.top() * dot / std::max(4.0 * dot, length - 2.0 * dot);
    axis->setLabelFormat(QStringLiteral("%.%1f").arg(nice.decimals));
    axis->setTickInterval(nice.step);
    axis->setRange(-rim, nice.top() + rim);
  };
  fit(inside_, right, plot.width(), 3.0 * line);
  fit(peak_, top, plot.height(), 1.6 * line);
  draw_lines();
  fitting_ = false;
}

void PathStrip::draw_lines() {
  limit_->setVisible(limit_at_ > 0.0);
  limit_->replace(QList<QPointF>{{inside_->min(), limit_at_}, {inside_->max(), limit_at_}});
  holds_->setVisible(holds_at_ > 0.0);
  holds_->replace(QList<QPointF>{{holds_at_, peak_->min()}, {holds_at_, peak_->max()}});
  name_lines();
}

// The limit beside its left end, below it if the curve begins above; how far it goes beside the foot of its
// line.
void PathStrip::name_lines() {
  constexpr double kBeside = 4.0;
  const QRectF plot = view_->chart()->plotArea();
  const auto name = [](QGraphicsSimpleTextItem* words, bool visible, const QString& text) {
    words->setVisible(visible);
    words->setText(text);
    return words->boundingRect();
  };
  const double factor = shown_.estimate() ? shown_.estimate()->limits.model_factor : 1.0;
  const QRectF limit = name(limit_words_, limit_at_ > 0.0, tr("limit ÷ %1").arg(fixed_words(factor, 1)));
  const QPointF at = view_->chart()->mapToPosition({0.0, limit_at_}, limit_);
  const bool begins_above = curve_->count() > 0 && curve_->at(0).y() >= limit_at_;
  const bool below = begins_above && at.y() + 1.0 + limit.height() < plot.bottom();
  limit_words_->setPos(plot.left() + kBeside, below ? at.y() + 1.0 : at.y() - limit.height() - 1.0);
  const QRectF holds = name(holds_words_, holds_at_ > 0.0, tr("as far as it goes"));
  const QPointF foot = view_->chart()->mapToPosition({holds_at_, 0.0}, holds_);
  const bool left = foot.x() - plot.left() > holds.width() + 2.0 * kBeside;
  holds_words_->setPos(left ? foot.x() - holds.width() - kBeside : foot.x() + kBeside,
                       plot.bottom() - holds.height() - 1.0);
}

// From where it stands, or from the beginning where it has come to the end.
void PathStrip::play(bool on) {
  play_->setChecked(on);
  if (on == player_.isActive()) return;
  if (!on) {
    player_.stop();
    return come_to_rest();
  }
  const double last = shown_.state_count() - 1;
  played_from_ = selection_.filling() < last ? selection_.filling() : 0.0;
  selection_.show_filling(played_from_);
  since_.start();
  player_.start();
}

void PathStrip::play_on() {
  const double last = shown_.state_count() - 1;
  const double filling = played_from_ + last * (1e-3 * static_cast<double>(since_.elapsed()) / kWhole_s);
  selection_.show_filling(std::min(filling, last));
  if (filling >= last) play(false);
}

// Figures are those of recorded states, so it stays at one.
void PathStrip::come_to_rest() {
  selection_.show_state(selection_.state());
}

QPointF PathStrip::on_curve(double filling) const {
  const auto points = curve_->points();
  const auto lower = static_cast<qsizetype>(filling);
  if (lower + 1 >= points.size()) return points.isEmpty() ? QPointF() : points.back();
  const double share = filling - static_cast<double>(lower);
  return (1.0 - share) * points[lower] + share * points[lower + 1];
}

void PathStrip::show_filling() {
  {
    const QSignalBlocker quiet(slider_);
    slider_->setValue(static_cast<int>(std::lround(kBetween * selection_.filling())));
  }
  if (curve_->count() == shown_.state_count() && now_->count() > 0)
    now_->replace(QList<QPointF>{on_curve(selection_.filling())});
}

void PathStrip::show_state() {
  {
    const QSignalBlocker quiet(slider_);
    slider_->setValue(static_cast<int>(std::lround(kBetween * selection_.filling())));
  }
  now_->clear();
  const int count = shown_.state_count();
  const auto say = [this](const QString& all, const QString& brief) {
    all_words_ = all;
    brief_words_ = brief;
    slider_->setAccessibleDescription(all);
    fit_words();
  };
  const QString none = tr("No estimate yet: there is nothing to show of the inflation.");
  if (count == 0) return say(none, none);
  const auto contact = shown_.contact(selection_.state());
  const QString state = tr("State %1 of %2").arg(selection_.state() + 1).arg(count);
  const QString read = state + tr(": its contact is being read.");
  if (!contact) return say(read, read);
  const QString inside = pressure_words(contact->inside, selection_.unit()),
                peak = pressure_words(contact->figures.peak_anywhere, selection_.unit());
  const QString stale = shown_.stale().isEmpty() ? QString() : ". " + shown_.stale();
  say(state + tr(": inside %1, peak over 1 cm² on the skin %2").arg(inside, peak) + stale,
      state + tr(": inside %1, peak %2").arg(inside, peak));
  now_->append(curve_->count() == count
                   ? on_curve(selection_.filling())
                   : QPointF(in_unit(contact->inside), in_unit(contact->figures.peak_anywhere)));
}

// In brief where they would take more lines than the curve can spare. Their lines are kept free at any state,
// so that the curve is not pushed out below.
void PathStrip::fit_words() {
  constexpr int kLines = 2, kBriefLines = 3, kHigh = 1000;
  const QFontMetrics metrics = words_->fontMetrics();
  const int needed =
      metrics.boundingRect(QRect(0, 0, words_->width(), kHigh), Qt::TextWordWrap, all_words_).height();
  const bool all = needed <= kLines * metrics.lineSpacing();
  words_->setText(all ? all_words_ : brief_words_);
  words_->setToolTip(all ? QString() : all_words_);
  words_->setMinimumHeight((all ? kLines : kBriefLines) * metrics.lineSpacing());
}

QImage PathStrip::picture() {
  return view_->grab().toImage();
}

// Where there is little room the names of the axes are written small.
void PathStrip::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  const bool roomy = height() > 15 * fontMetrics().height();
  QFont names = font();
  names.setBold(roomy);
  if (!roomy) names.setPointSizeF(0.85 * names.pointSizeF());
  for (QValueAxis* axis : {inside_, peak_}) axis->setTitleFont(names);
  fit_words();
}

void PathStrip::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange) take_colours();
  QWidget::changeEvent(event);
}

}  // namespace wrapgauge
