#include "app/desk/views/drawing_view.hpp"

#include <QKeyEvent>
#include <algorithm>
#include <cmath>
#include <limits>

#include "app/desk/views/save_views.hpp"
#include "app/desk/views/view_colours.hpp"
#include "app/desk/words/phrase_text.hpp"
#include "model/geometry/innermost_point.hpp"
#include "model/layout/drawn_shape_forms.hpp"

namespace wrapgauge {
namespace {

constexpr double kReach = 8.0;  // pixels beside a line that still mean it
constexpr double kInletRadius = 5.0;

bool is_point(const DrawnShape& shape) {
  return shape.paths.size() == 1 && shape.paths[0].points_m.size() == 1;
}

Vec2 inside_m(const DrawnShape& shape) {
  return all_closed(shape) ? innermost_point_m(shape.paths[0].points_m) : middle_m(shape);
}

double distance_to(const QPolygonF& line, const QPointF& at) {
  double least = std::numeric_limits<double>::infinity();
  for (qsizetype i = 0; i < line.size(); ++i) {
    const QPointF from = line[i], along = line[std::min(i + 1, line.size() - 1)] - from, to = at - from;
    const double length2 = QPointF::dotProduct(along, along);
    const double share = length2 > 0.0 ? std::clamp(QPointF::dotProduct(to, along) / length2, 0.0, 1.0) : 0.0;
    const QPointF off = to - share * along;
    least = std::min(least, std::hypot(off.x(), off.y()));
  }
  return least;
}

}  // namespace

DrawingView::DrawingView(QWidget* parent) : QWidget(parent) {
  setAccessibleName(tr("The drawing"));
  setFocusPolicy(Qt::StrongFocus);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
  offer_picture(this, tr("drawing"), [this] { return picture(); });
}

void DrawingView::show_drawing(std::shared_ptr<const Drawing> drawing) {
  drawing_ = std::move(drawing);
  marks_ = {};
  show_all();
}

void DrawingView::show_marks(DrawingMarks marks) {
  marks_ = std::move(marks);
  if (fitted_) show_all();
  update();
}

void DrawingView::ask_for_place(bool asked) {
  asked_ = asked;
  setCursor(asked ? Qt::CrossCursor : Qt::ArrowCursor);
  if (asked) setFocus(Qt::OtherFocusReason);
  update();
}

QPointF DrawingView::on_view(const Vec2& drawn_m) const {
  const double down = drawing_ && drawing_->y_down ? 1.0 : -1.0;
  return origin_ + scale_ * QPointF(drawn_m.x(), down * drawn_m.y());
}

Vec2 DrawingView::on_page(const QPointF& at) const {
  const double down = drawing_ && drawing_->y_down ? 1.0 : -1.0;
  const QPointF from = (at - origin_) / scale_;
  return {from.x(), down * from.y()};
}

QPainterPath DrawingView::path_of(const DrawnShape& shape) const {
  QPainterPath path;
  path.setFillRule(shape.fill_rule == FillRule::kEvenOdd ? Qt::OddEvenFill : Qt::WindingFill);
  if (is_point(shape)) {
    path.addEllipse(on_view(shape.paths[0].points_m[0]), kInletRadius, kInletRadius);
    return path;
  }
  for (const DrawnPath& drawn : shape.paths) {
    QPolygonF points;
    for (const Vec2& p : drawn.points_m) points << on_view(p);
    path.addPolygon(points);
    if (drawn.closed) path.closeSubpath();
  }
  return path;
}

std::size_t DrawingView::things() const {
  return drawing_ ? drawing_->shapes.size() + marks_.added_inlets_m.size() : 0;
}

// A line or dot that is near goes first, then the smallest of the closed shapes round the place, then the
// nearest rim.
std::optional<std::size_t> DrawingView::shape_at(const QPointF& at) const {
  if (!drawing_) return std::nullopt;
  std::optional<std::size_t> line, inside, rim;
  double line_off = kReach, rim_off = kReach, area = std::numeric_limits<double>::infinity();
  for (std::size_t k = 0; k < marks_.added_inlets_m.size(); ++k)
    if (QLineF(on_view(marks_.added_inlets_m[k]), at).length() < line_off) line = drawing_->shapes.size() + k;
  for (std::size_t i = 0; i < drawing_->shapes.size() && !line; ++i) {
    const DrawnShape& shape = drawing_->shapes[i];
    if (shape.paths.empty()) continue;
    const QPainterPath path = path_of(shape);
    double off = std::numeric_limits<double>::infinity();
    for (const QPolygonF& part : path.toSubpathPolygons()) off = std::min(off, distance_to(part, at));
    const bool small =
        path.boundingRect().width() < 2.0 * kReach && path.boundingRect().height() < 2.0 * kReach;
    const bool closed = all_closed(shape);
    if (small ? path.boundingRect().adjusted(-3, -3, 3, 3).contains(at) : !closed && off < line_off) {
      line_off = small ? 0.0 : off;
      line = i;
      continue;
    }
    const double its_area = path.boundingRect().width() * path.boundingRect().height();
    if (closed && path.contains(at) && its_area < area) area = its_area, inside = i;
    if (off < rim_off) rim_off = off, rim = i;
  }
  return line ? line : inside ? inside : rim;
}

void DrawingView::show_all() {
  fitted_ = true;
  constexpr double kMargin = 18.0;
  if (!drawing_) return;
  QRectF all;
  const QPointF origin = std::exchange(origin_, {});
  const double scale = std::exchange(scale_, 1.0);
  for (const DrawnShape& shape : drawing_->shapes) {
    if (shape.paths.empty()) continue;
    const Bounds2 box = bounds(shape);
    all |= QRectF(on_view(box.low), on_view(box.high)).normalized().adjusted(-1e-6, -1e-6, 1e-6, 1e-6);
  }
  origin_ = origin;
  scale_ = scale;
  if (all.isEmpty()) return;
  const QRectF room = QRectF(rect()).adjusted(kMargin, kMargin, -kMargin, -kMargin - legend_height());
  if (room.width() < 10.0 || room.height() < 10.0) return;
  scale_ = std::min(room.width() / all.width(), room.height() / all.height());
  origin_ = room.center() - scale_ * all.center();
  update();
}

void DrawingView::zoom(double factor, const QPointF& about) {
  fitted_ = false;
  const QPointF from = (about - origin_) / scale_;
  scale_ = std::clamp(scale_ * factor, 20.0, 4e6);
  origin_ = about - scale_ * from;
  update();
}

void DrawingView::step(int by) {
  const auto all = static_cast<int>(things());
  if (all == 0) return;
  const int now = marks_.chosen ? static_cast<int>(*marks_.chosen) : by > 0 ? -1 : 0;
  emit shapeChosen(static_cast<std::size_t>((now + by + all) % all));
}

void DrawingView::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return QWidget::mousePressEvent(event);
  pressed_at_ = last_at_ = event->position();
  moved_ = false;
}

void DrawingView::mouseMoveEvent(QMouseEvent* event) {
  constexpr double kStill = 4.0;
  if (!(event->buttons() & Qt::LeftButton)) return;
  if (QLineF(pressed_at_, event->position()).length() > kStill) moved_ = true;
  if (!moved_) return;
  fitted_ = false;
  origin_ += event->position() - last_at_;
  last_at_ = event->position();
  update();
}

void DrawingView::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton || moved_) return;
  if (asked_) return void(emit placeGiven(on_page(event->position())));
  if (const auto shape = shape_at(event->position())) emit shapeChosen(*shape);
}

void DrawingView::wheelEvent(QWheelEvent* event) {
  if (event->angleDelta().y() == 0) return event->ignore();
  zoom(std::pow(1.2, event->angleDelta().y() / 120.0), event->position());
}

void DrawingView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  if (fitted_) show_all();
}

// Keys of its own: no dialog takes them.
bool DrawingView::event(QEvent* event) {
  if (event->type() == QEvent::ShortcutOverride && asked_) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Escape || key == Qt::Key_Return || key == Qt::Key_Enter) {
      event->accept();
      return true;
    }
  }
  return QWidget::event(event);
}

void DrawingView::keyPressEvent(QKeyEvent* event) {
  const QPointF middle = rect().center();
  switch (event->key()) {
    case Qt::Key_PageDown:
      return step(1);
    case Qt::Key_PageUp:
      return step(-1);
    case Qt::Key_Home:
      return show_all();
    case Qt::Key_Plus:
    case Qt::Key_Equal:
      return zoom(1.25, middle);
    case Qt::Key_Minus:
      return zoom(0.8, middle);
    case Qt::Key_Escape:
      if (asked_) return void(emit placeGivenUp());
      break;
    case Qt::Key_Return:
    case Qt::Key_Enter:
      if (asked_ && marks_.chosen && *marks_.chosen < drawing_->shapes.size() &&
          !drawing_->shapes[*marks_.chosen].paths.empty())
        return void(emit placeGiven(inside_m(drawing_->shapes[*marks_.chosen])));
      break;
    default:
      break;
  }
  QWidget::keyPressEvent(event);
}

QImage DrawingView::picture() {
  return grab().toImage();
}

void DrawingView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
  draw(painter);
}

}  // namespace wrapgauge
