#include "app/desk/views/cut_view.hpp"

#include <QLabel>
#include <QSignalBlocker>
#include <QSlider>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "app/desk/views/moment.hpp"
#include "app/desk/views/pressure_words.hpp"
#include "app/desk/views/save_views.hpp"
#include "app/desk/words/phrase_text.hpp"

namespace wrapgauge {
namespace {

constexpr double kStep_m = 0.5e-3;  // of the slider
constexpr QSize kSaved(1200, 900);  // of a picture

int steps_of(double station_m) {
  return static_cast<int>(std::lround(station_m / kStep_m));
}

bool same_surface(const TriangleMesh& a, const TriangleMesh& b) {
  return a.vertices_m.rows() == b.vertices_m.rows() && a.faces.rows() == b.faces.rows() &&
         a.vertices_m == b.vertices_m && a.faces == b.faces;
}

// A large scan takes a while to be made ready for cuts: mostly that was done when the body was shown.
// Sections refer to their body, which is held with them.
std::shared_ptr<const PlaneSections> sections_of(const ShownPlan& shown,
                                                 const std::shared_ptr<const Estimate>& estimate) {
  if (shown.body() && same_surface(shown.body()->surface, estimate->body.surface)) {
    const auto both =
        std::make_shared<std::pair<std::shared_ptr<const Body>, std::shared_ptr<const PlaneSections>>>(
            shown.body(), shown.sections());
    return {both, both->second.get()};
  }
  return std::make_shared<const PlaneSections>(estimate->body.surface);
}

}  // namespace

class CutView::Paper : public QWidget {
 public:
  Paper(const CutView& view, QWidget* parent) : QWidget(parent), view_(view) {
    setMinimumHeight(6 * fontMetrics().height());
  }

 protected:
  void paintEvent(QPaintEvent*) override {
    QPainter painter(this);
    painter.fillRect(rect(), view_colours(*this).paper);
    view_.draw(painter, rect());
  }

 private:
  const CutView& view_;
};

CutView::CutView(const ShownPlan& shown, Selection& selection, QWidget* parent)
    : QWidget(parent),
      shown_(shown),
      selection_(selection),
      words_(new QLabel(this)),
      slider_(new QSlider(Qt::Horizontal, this)),
      paper_(new Paper(*this, this)) {
  slider_->setAccessibleName(tr("Where the limb is cut, along its axis"));
  slider_->setToolTip(tr("Slides the ring along the limb"));
  words_->setWordWrap(true);
  auto* box = new QVBoxLayout(this);
  box->setContentsMargins(4, 4, 4, 4);
  box->addWidget(words_);
  box->addWidget(slider_);
  box->addWidget(paper_, 1);
  offer_picture(this, tr("cut"), [this] { return picture(); });
  offer_drawing(this, tr("cut"), kSaved,
                [this](QPainter& painter) { draw(painter, QRectF(QPointF(), QSizeF(kSaved))); });
  connect(slider_, &QSlider::valueChanged, this, &CutView::read);
  connect(&selection_, &Selection::fillingChanged, this, &CutView::read);
  connect(&selection_, &Selection::unitChanged, this, &CutView::read);
  connect(&selection_, &Selection::placeChanged, this, [this] {
    if (selection_.place_m()) go_to(*selection_.place_m());
  });
  connect(&shown_, &ShownPlan::estimateChanged, this, &CutView::estimate_changed);
  connect(&shown_, &ShownPlan::stateRead, this, &CutView::read);
  connect(&shown_, &ShownPlan::staleChanged, this, &CutView::read);
}

double CutView::station_m() const {
  return kStep_m * slider_->value();
}

// Of an estimate that is new the ring stays where it is, as long as the device is still there.
void CutView::estimate_changed() {
  if (!isVisible()) return;
  const auto& estimate = shown_.estimate();
  if (estimate == of_) return read();
  of_ = estimate;
  sections_ = estimate ? sections_of(shown_, estimate) : nullptr;
  slider_->setEnabled(estimate != nullptr);
  if (!estimate) return read();
  const bool was_set = slider_->maximum() > slider_->minimum() && slider_->value() != 0;
  const auto [least, most] =
      device_stations_m(*estimate, {estimate->wrap.worn_m, estimate->wrap.outward_at_worn});
  const int from = steps_of(least), to = steps_of(most), before = slider_->value();
  {
    const QSignalBlocker quiet(slider_);
    slider_->setRange(from + 1, std::max(from + 1, to - 1));
    if (was_set && before > from && before < to)
      slider_->setValue(before);
    else
      slider_->setValue(steps_of(
          (estimate->figures.peak_at_m - estimate->body.axis.origin_m).dot(estimate->body.axis.direction)));
  }
  read();
}

void CutView::go_to(const Vec3& place_m) {
  if (of_) cut_at((place_m - of_->body.axis.origin_m).dot(of_->body.axis.direction));
}

void CutView::cut_at(double station_m) {
  if (of_) slider_->setValue(steps_of(station_m));
}

void CutView::read() {
  if (!isVisible()) return;
  section_.reset();
  const auto moment = of_ ? moment_at(shown_, selection_.filling()) : std::nullopt;
  if (moment)
    section_ = cut_section(*of_, *sections_,
                           {moment->positions_m, moment->on_skin, moment->indentation_m, moment->pressure_pa,
                            moment->share_of_limit},
                           station_m());
  selection_.show_cut(section_ ? std::optional(station_m()) : std::nullopt);
  words_->setText(words());
  paper_->setAccessibleDescription(words_->text());
  paper_->update();
}

QString CutView::words() const {
  if (!of_) return tr("No estimate yet: there is nothing to cut.");
  if (!section_) return tr("The contact is being read.");
  double most_pa = 0.0;
  for (const CutSkin& piece : section_->pressed) most_pa = std::max(most_pa, piece.pressure_pa);
  const QString where =
      tr("Cut %1 mm from the distal end, seen from there").arg(fixed_words(1e3 * station_m(), 1));
  const QString most =
      most_pa > 0.0
          ? tr("the skin takes up to %1 here").arg(pressure_words(Pressure(most_pa), selection_.unit()))
          : tr("nothing presses here");
  const QString stale = shown_.stale().isEmpty() ? QString() : QStringLiteral(" ") + shown_.stale();
  return QStringLiteral("%1: %2.").arg(where, most) + stale;
}

CutStyle CutView::style() const {
  return {view_colours(*this), shown_.scale().top_pa, selection_.unit(), !shown_.stale().isEmpty()};
}

void CutView::draw(QPainter& painter, const QRectF& room) const {
  if (section_) draw_cut(painter, room, *section_, style());
}

QImage CutView::picture() const {
  QImage image(kSaved, QImage::Format_RGB32);
  image.fill(view_colours(*this).paper);
  QPainter painter(&image);
  draw(painter, QRectF(QPointF(), QSizeF(kSaved)));
  return image;
}

void CutView::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  estimate_changed();
  read();
}

void CutView::hideEvent(QHideEvent* event) {
  QWidget::hideEvent(event);
  selection_.show_cut(std::nullopt);
}

}  // namespace wrapgauge
