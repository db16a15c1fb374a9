#include "app/desk/views/flat_grips.hpp"

#include <algorithm>

#include "app/desk/views/flat_grip_item.hpp"
#include "app/desk/views/flat_items.hpp"
#include "app/desk/views/flat_words.hpp"
#include "app/desk/views/next_in_ring.hpp"
#include "app/desk/words/phrase_text.hpp"

namespace wrapgauge {
namespace {

using Kind = LayoutGrip::Kind;

// A little longer than the layout is high, so that its ends can be seen.
QPainterPath line_path(const ClosingWindow& lines, const Bounds2& outline_m, Kind kind) {
  const double beyond = 0.07 * (outline_m.high.y() - outline_m.low.y());
  QPainterPath path;
  for (const double y : lines.heights_m(outline_m.low.y() - beyond, outline_m.high.y() + beyond)) {
    const QPointF at = on_scene({kind == Kind::kFirstLine ? lines.from_at_m(y) : lines.to_at_m(y), y});
    path.elementCount() == 0 ? path.moveTo(at) : path.lineTo(at);
  }
  return path;
}

}  // namespace

FlatGrips::FlatGrips(const ShownPlan& shown, QGraphicsScene& scene, Snap snap, QObject* parent)
    : QObject(parent), shown_(shown), scene_(scene), snap_(std::move(snap)) {}

void FlatGrips::forget() {
  items_.clear();
  preview_ = nullptr;
  dragged_ = nullptr;
}

std::optional<Length> FlatGrips::worn_length(const Layout& layout) const {
  if (!shown_.worn() || !shown_.worn()->closing_length) return std::nullopt;
  const Length worn = *shown_.worn()->closing_length;
  const auto &then = shown_.worn()->setup.layout.closure, &now = layout.closure;
  if (!then || !now || !then->stretch || !now->stretch) return worn;
  return worn * ((1.0 + *then->stretch) / (1.0 + *now->stretch));
}

void FlatGrips::show_for(const std::optional<LayoutPart>& part, double pixels_per_mm) {
  if (dragged_) return;
  qDeleteAll(items_);
  items_.clear();
  scale_ = pixels_per_mm;
  if (!shown_.layout()) return;
  if (part) add_points(*part);
  add_lines();
  const auto is_chosen = [this](const FlatGripItem* item) { return item->grip() == chosen_; };
  if (std::none_of(items_.begin(), items_.end(), is_chosen)) chosen_.reset();
}

void FlatGrips::add(FlatGripItem* item, const QString& name) {
  item->setToolTip(name);
  item->set_chosen(item->grip() == chosen_);
  scene_.addItem(item);
  items_.push_back(item);
}

void FlatGrips::add_points(const LayoutPart& part) {
  constexpr double kApart_pixels = 11.0;
  const auto* points = points_of(*shown_.layout(), part);
  if (!points) return;
  std::optional<Vec2> last;
  for (std::size_t k = 0; k < points->size(); ++k) {
    const Vec2& point = (*points)[k];
    const LayoutGrip grip{Kind::kPoint, part, k};
    const auto near = [&](const Vec2& other) {
      return 1e3 * scale_ * (point - other).cwiseAbs().maxCoeff() < kApart_pixels;
    };
    const bool hidden = last && (near(*last) || (k + 1 == points->size() && near(points->front())));
    if (hidden && grip != chosen_) continue;
    last = point;
    auto* item = new FlatGripItem(*this, grip, {point, point}, scale_);
    item->setPos(on_scene(point));
    add(item, tr("Point %1 of %2: drag it to change the shape.")
                  .arg(k + 1)
                  .arg(flat_part_name(*shown_.layout(), part)));
  }
}

void FlatGrips::add_lines() {
  const Layout& layout = *shown_.layout();
  const auto lines = closing_lines_of(layout, worn_length(layout));
  if (!lines) return;
  const Bounds2 outline = bounds(layout.outline_m);
  const auto add_line = [&](Kind kind, double at_m, const QString& name) {
    auto* item = new FlatGripItem(*this, {kind, {}, 0},
                                  {{at_m, lines->middle_y_m}, {at_m, lines->middle_y_m}}, scale_);
    item->setPath(line_path(*lines, outline, kind));
    add(item, name);
  };
  add_line(Kind::kFirstLine, lines->from_x_m,
           tr("First closing line: drag it to close elsewhere; the closing length stays."));
  if (lines->to_x_m <= lines->from_x_m) return;
  add_line(Kind::kSecondLine, lines->to_x_m,
           layout.closure->closing_length
               ? tr("Second closing line: drag it to change the closing length. What lies beyond overlaps.")
               : tr("Second closing line: drag it to change the stretch. What lies beyond overlaps."));
}

std::vector<QRectF> FlatGrips::line_boxes() const {
  std::vector<QRectF> boxes;
  for (const FlatGripItem* item : items_)
    if (item->grip().kind != Kind::kPoint) boxes.push_back(item->sceneBoundingRect());
  return boxes;
}

void FlatGrips::choose_next(int by) {
  if (items_.empty()) return;
  const auto chosen = std::find_if(items_.begin(), items_.end(),
                                   [this](const FlatGripItem* item) { return item->grip() == chosen_; });
  const auto at = static_cast<std::size_t>(chosen - items_.begin());
  grip(*items_[next_in_ring(at, items_.size(), by)]);
  dragged_ = nullptr;
}

void FlatGrips::unchoose() {
  chosen_.reset();
  for (FlatGripItem* item : items_) item->set_chosen(false);
}

void FlatGrips::grip(FlatGripItem& item) {
  unchoose();
  chosen_ = item.grip();
  item.set_chosen(true);
  dragged_ = &item;
  by_m_ = Vec2::Zero();
}

void FlatGrips::drag(FlatGripItem& item, const Vec2& by_m) {
  if (dragged_ != &item) return;
  const bool line = item.grip().kind != Kind::kPoint;
  by_m_ = snap_(item.box_m(), line ? Vec2(by_m.x(), 0.0) : by_m);
  if (line) by_m_.y() = 0.0;
  show_preview();
}

// The part as it will be, over the part as it is.
void FlatGrips::show_preview() {
  if (!preview_) {
    preview_ = scene_.addPath({});
    preview_->setZValue(4.0);
    preview_->setPen(cosmetic_pen(kChosenBlue, 2.0, Qt::DashLine));
  }
  const LayoutGrip& grip = dragged_->grip();
  const Layout moved = moved_layout(grip, by_m_);
  preview_->setVisible(!by_m_.isZero(0.0));
  if (grip.kind == Kind::kPoint) {
    dragged_->setPos(on_scene(dragged_->box_m().low + by_m_));
    return preview_->setPath(flat_path(moved, grip.part));
  }
  QPainterPath both;
  const auto lines = closing_lines_of(moved, worn_length(moved));
  for (const Kind kind : {Kind::kFirstLine, Kind::kSecondLine})
    both.addPath(line_path(*lines, bounds(moved.outline_m), kind));
  preview_->setPath(both);
}

bool FlatGrips::dragging() const {
  return dragged_ && !by_m_.isZero(0.0);
}

void FlatGrips::cancel_drag() {
  if (!dragged_) return;
  by_m_ = Vec2::Zero();
  show_preview();
  dragged_ = nullptr;
}

std::optional<Vec2> FlatGrips::take_drag() {
  const Vec2 by_m = by_m_;
  cancel_drag();
  by_m_ = Vec2::Zero();
  return by_m.isZero(0.0) ? std::nullopt : std::optional(by_m);
}

Layout FlatGrips::moved_layout(const LayoutGrip& grip, const Vec2& by_m) const {
  return with_grip_moved(*shown_.layout(), grip, by_m, worn_length(*shown_.layout()));
}

QString FlatGrips::words() const {
  if (!chosen_ || !shown_.layout()) return {};
  const Layout moved = moved_layout(*chosen_, by_m_);
  if (chosen_->kind == Kind::kPoint) {
    const auto* points = points_of(moved, chosen_->part);
    if (!points || chosen_->point >= points->size()) return {};
    const Vec2& at = (*points)[chosen_->point];
    return tr("point %1 of %2: x %3, y %4 mm")
        .arg(chosen_->point + 1)
        .arg(flat_part_name(moved, chosen_->part), millimetres(at.x()), millimetres(at.y()));
  }
  const auto lines = closing_lines_of(moved, worn_length(moved));
  if (!lines) return {};
  if (chosen_->kind == Kind::kFirstLine)
    return tr("first closing line: x %1 mm").arg(millimetres(lines->from_x_m));
  QString words =
      tr("second closing line: closing length %1 mm").arg(millimetres(lines->to_x_m - lines->from_x_m));
  if (moved.closure->stretch)
    words += tr(", stretch %1 %").arg(fixed_words(100.0 * *moved.closure->stretch, 1));
  return words;
}

}  // namespace wrapgauge
