#include "app/desk/views/flat_view.hpp"

#include <QEvent>
#include <QGraphicsPixmapItem>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <iterator>
#include <utility>

#include "app/desk/views/flat_map.hpp"
#include "app/desk/views/flat_words.hpp"
#include "app/desk/views/save_views.hpp"
#include "app/desk/views/view_colours.hpp"
#include "app/desk/views/view_legend.hpp"
#include "model/body/axis_angle.hpp"
#include "model/core/number_text.hpp"
#include "model/layout/snapping.hpp"

namespace wrapgauge {
namespace {

constexpr double kAxisAbove = 14.0, kAxisBelow = 26.0;  // pixels that the axis round the limb takes

// Of a chamber and of the inset seams in it.
std::optional<ChamberId> chamber_of(const LayoutPart& part) {
  using PartKind = LayoutPart::Kind;
  if (part.kind != PartKind::kChamber && part.kind != PartKind::kInsetSpot &&
      part.kind != PartKind::kInsetLine)
    return std::nullopt;
  return ChamberId(static_cast<int>(part.index));
}

bool is_about(const ProblemPlace& place, const LayoutPart& part) {
  using Place = ProblemPlace::Kind;
  using PartKind = LayoutPart::Kind;
  if (place.kind == Place::kOutlinePoint) return part.kind == PartKind::kOutline;
  const std::pair<Place, PartKind> alike[] = {{Place::kChamber, PartKind::kChamber},
                                              {Place::kChannel, PartKind::kChannel},
                                              {Place::kInlet, PartKind::kInlet},
                                              {Place::kStrap, PartKind::kStrap}};
  return static_cast<std::size_t>(place.index) == part.index &&
         std::find(std::begin(alike), std::end(alike), std::pair(place.kind, part.kind)) != std::end(alike);
}

}  // namespace

FlatView::FlatView(const ShownPlan& shown, Selection& selection, QWidget* parent)
    : QGraphicsView(parent),
      shown_(shown),
      selection_(selection),
      grips_(
          shown, scene_,
          [this](const Bounds2& box_m, const Vec2& by_m) { return snapped(box_m, nullptr, by_m); }, nullptr) {
  setScene(&scene_);
  setAccessibleName(tr("The flat layout"));
  setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform | QPainter::TextAntialiasing);
  setViewportUpdateMode(QGraphicsView::FullViewportUpdate);
  setTransformationAnchor(QGraphicsView::AnchorUnderMouse);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setFrameShape(QFrame::NoFrame);
  setMinimumSize(220, 160);
  offer_picture(this, tr("layout"), [this] { return picture(); });
  connect(&scene_, &QGraphicsScene::selectionChanged, this, &FlatView::scene_selection_changed);
  connect(&shown_, &ShownPlan::layoutChanged, this, &FlatView::rebuild);
  connect(&shown_, &ShownPlan::wornChanged, this, &FlatView::show_grips);
  for (const auto signal : {&ShownPlan::wornChanged, &ShownPlan::estimateChanged, &ShownPlan::bodyChanged})
    connect(&shown_, signal, this, &FlatView::forget_angles);
  connect(&shown_, &ShownPlan::estimateChanged, this, [this] {
    maps_.clear();
    show_map();
  });
  connect(&shown_, &ShownPlan::staleChanged, this, &FlatView::show_map);
  connect(&shown_, &ShownPlan::marksChanged, this, &FlatView::take_marks);
  connect(&shown_, &ShownPlan::stateRead, this, [this](int state) {
    if (state == selection_.state()) show_map();
  });
  connect(&selection_, &Selection::stateChanged, this, &FlatView::show_map);
  connect(&selection_, &Selection::chamberChanged, this, &FlatView::take_chamber);
  connect(&selection_, &Selection::unitChanged, viewport(), qOverload<>(&QWidget::update));
  scaled_.setSingleShot(true);
  scaled_.setInterval(120);
  connect(&scaled_, &QTimer::timeout, this, &FlatView::rescale_maps);
  rebuild();
}

// The scene tells of its selection while it goes.
FlatView::~FlatView() {
  disconnect(&scene_, nullptr, this, nullptr);
}

void FlatView::rebuild() {
  const auto chosen = chosen_part();
  rebuilding_ = true;
  scene_.clear();
  items_.clear();
  grips_.forget();
  // Pale in a dark palette too: it is the ground that the map's colours are read on.
  QGraphicsPathItem* material =
      scene_.addPath(shown_.layout() ? material_of(*shown_.layout()) : QPainterPath(), QPen(Qt::NoPen),
                     QColor(226, 223, 232));
  material->setZValue(-1.0);
  map_ = scene_.addPixmap({});
  map_->setTransformationMode(Qt::SmoothTransformation);
  scene_.setBackgroundBrush(view_colours(*this).paper);
  if (shown_.layout()) items_ = make_flat_items(*shown_.layout());
  for (FlatPartItem* item : items_) {
    if (!item->parentItem()) scene_.addItem(item);
    item->set_mover([this](const FlatPartItem& moved, const Vec2& by_m) { return snapped(moved, by_m); });
  }
  set_editable(editable_);
  scene_.setSceneRect(scene_.itemsBoundingRect().adjusted(-400, -400, 400, 400));
  rebuilding_ = false;
  choose_part(chosen);
  show_grips();
  take_marks();
  show_map();
  if (fitted_) show_all();
}

void FlatView::set_editable(bool editable) {
  editable_ = editable;
  for (FlatPartItem* item : items_) {
    const bool movable = editable && item->part().kind != LayoutPart::Kind::kOutline;
    item->setFlag(QGraphicsItem::ItemIsMovable, movable);
    item->setCursor(movable ? Qt::SizeAllCursor : Qt::ArrowCursor);
  }
  show_grips();
}

void FlatView::show_grips() {
  if (editable_ && !rebuilding_) grips_.show_for(chosen_part(), transform().m11());
}

// The map is drawn afresh for the scale at which it has come to rest: pixel on pixel it is sharp and quick.
void FlatView::rescale_maps() {
  const double scale = transform().m11() * devicePixelRatioF();
  if (std::abs(scale / map_scale_ - 1.0) < 1e-6) return;
  map_scale_ = scale;
  maps_.clear();
  show_map();
}

// Each state's map is drawn once a scale; scrubbing then only changes the picture. A map of another shape of
// the layout would mislead: it is left out.
void FlatView::show_map() {
  constexpr double kMostPixels = 1800.0;
  const int state = selection_.state();
  const auto contact = shown_.contact(state);
  const auto& layout = shown_.layout();
  const auto& estimate = shown_.estimate();
  const bool fits = contact && layout && same_shape(*layout, estimate->setup.layout);
  map_->setVisible(fits);
  if (fits) {
    auto& [picture, area] = maps_[state];
    if (picture.isNull()) {
      const Bounds2 box = bounds(layout->outline_m);
      const double longest_mm = std::max(1.0, 1e3 * (box.high - box.low).maxCoeff());
      const FlatMap map = flat_map(*estimate, *contact, shown_.scale().top_pa,
                                   std::min(map_scale_, kMostPixels / longest_mm), devicePixelRatioF());
      picture = QPixmap::fromImage(map.image);
      area = map.area_mm;
    }
    map_->setPixmap(picture);
    map_->setPos(area.topLeft());
    map_->setScale(area.width() / std::max(1, picture.width()));
    map_->setOpacity(shown_.stale().isEmpty() ? 1.0 : 0.35);
  }
  viewport()->update();
}

void FlatView::take_marks() {
  for (FlatPartItem* item : items_)
    item->set_marked(std::any_of(shown_.marks().begin(), shown_.marks().end(),
                                 [&](const ProblemPlace& place) { return is_about(place, item->part()); }));
}

FlatPartItem* FlatView::chosen_item() const {
  for (FlatPartItem* item : items_)
    if (item->isSelected()) return item;
  return nullptr;
}

std::optional<LayoutPart> FlatView::chosen_part() const {
  const FlatPartItem* item = chosen_item();
  return item ? std::optional(item->part()) : std::nullopt;
}

void FlatView::choose_part(std::optional<LayoutPart> part) {
  for (FlatPartItem* item : items_) item->setSelected(part && item->part() == *part);
}

void FlatView::scene_selection_changed() {
  if (rebuilding_) return;
  const auto part = chosen_part();
  selection_.select_chamber(part ? chamber_of(*part) : std::nullopt);
  show_grips();
  setAccessibleDescription(readout());
  emit partChosen(part);
  viewport()->update();
}

void FlatView::take_chamber() {
  const auto chamber = selection_.chamber();
  const auto part = chosen_part();
  if (!chamber) {
    if (part && part->kind == LayoutPart::Kind::kChamber) choose_part(std::nullopt);
    return;
  }
  if (!part || chamber_of(*part) != chamber)
    choose_part(LayoutPart{LayoutPart::Kind::kChamber, index_of(*chamber), 0});
}

Vec2 FlatView::snapped(const FlatPartItem& item, const Vec2& wished_m) {
  return snapped(item.box_m(), &item, wished_m);
}

Vec2 FlatView::snapped(const Bounds2& box_m, const FlatPartItem* except, const Vec2& wished_m) {
  constexpr double kReach_pixels = 7.0, kGrid_m = 0.5e-3;
  std::vector<Bounds2> others;
  for (const FlatPartItem* other : items_)
    if (!except || (other != except && other->parentItem() != except))
      if (other->part().kind != LayoutPart::Kind::kChannel) others.push_back(other->box_m());
  const double reach_m = 1e-3 * kReach_pixels / std::max(0.1, transform().m11());
  const Snapped moved = snapped_move(box_m, others, wished_m, reach_m, kGrid_m);
  guide_x_m_ = moved.line_x_m;
  guide_y_m_ = moved.line_y_m;
  return moved.by_m;
}

void FlatView::zoom(double factor) {
  constexpr double kLeast = 0.2, kMost = 100.0;  // pixels a millimetre
  const double now = transform().m11(), then = std::clamp(now * factor, kLeast, kMost);
  fitted_ = false;
  scale(then / now, then / now);
  show_grips();
  scaled_.start();
}

// All of them, in the scene.
QRectF FlatView::parts_box() const {
  QRectF all;
  for (const FlatPartItem* item : items_) all |= item->mapRectToScene(item->path().boundingRect());
  return all;
}

void FlatView::show_all() {
  fitted_ = true;
  const QRectF all = parts_box();
  if (all.isEmpty()) return;
  // The axis round the limb and the scale stand below.
  constexpr double kBelow_pixels = 100.0, kLeastRoom_pixels = 120.0;
  const double room = std::max(kLeastRoom_pixels, viewport()->height() - 1.5 * kBelow_pixels);
  const double below = std::max(0.16, kBelow_pixels / room) * all.height();
  fitInView(all.adjusted(-0.05 * all.width(), -0.16 * all.height(), 0.05 * all.width(), below),
            Qt::KeepAspectRatio);
  show_grips();
  scaled_.start();
}

void FlatView::resizeEvent(QResizeEvent* event) {
  QGraphicsView::resizeEvent(event);
  if (fitted_) show_all();
}

void FlatView::changeEvent(QEvent* event) {
  QGraphicsView::changeEvent(event);
  if (event->type() == QEvent::PaletteChange && map_) rebuild();
}

QString FlatView::readout() const {
  if (grips_.chosen()) return grips_.words();
  const FlatPartItem* item = chosen_item();
  if (!item) return tr("Nothing is chosen.");
  const Vec2 by = item->moved_by_m();
  const Bounds2& box = item->box_m();
  const Vec2 low = box.low + by, size = box.high - box.low;
  QStringList lines{
      tr("%1: %2 mm wide, %3 mm high")
          .arg(flat_part_name(*shown_.layout(), item->part()), millimetres(size.x()), millimetres(size.y())),
      tr("left edge at x %1 mm, lower edge at y %2 mm").arg(millimetres(low.x()), millimetres(low.y()))};
  if (by.norm() > 0.0) lines += tr("moved by x %1 mm, y %2 mm").arg(millimetres(by.x()), millimetres(by.y()));
  return lines.join('\n');
}

void FlatView::drawForeground(QPainter* painter, const QRectF&) {
  const auto guide = [&](const QPointF& from, const QPointF& to) {
    painter->setPen(on_screen(cosmetic_pen(kChosenBlue, 1.0, Qt::DashLine), *painter));
    painter->drawLine(from, to);
  };
  const QRectF all = sceneRect();
  if (guide_x_m_) guide({1e3 * *guide_x_m_, all.top()}, {1e3 * *guide_x_m_, all.bottom()});
  if (guide_y_m_) guide({all.left(), -1e3 * *guide_y_m_}, {all.right(), -1e3 * *guide_y_m_});
  painter->save();
  painter->resetTransform();
  draw_words(*painter);
  painter->restore();
}

// In the viewport's own pixels, so that words stay the same size.
void FlatView::draw_words(QPainter& painter) {
  const LegendLook look{view_colours(*this), font(), selection_.unit(), !shown_.stale().isEmpty()};
  const QRectF area = viewport()->rect();
  painter.setPen(look.colours.ink);
  painter.setFont(look.font);
  if (!shown_.layout() || shown_.layout()->outline_m.empty()) {
    painter.drawText(area.adjusted(30, 30, -30, -30), Qt::AlignCenter | Qt::TextWordWrap,
                     tr("No layout yet. Read a drawing or make a layout in the step Layout."));
    return;
  }
  const QFontMetricsF metrics(look.font);
  const QString words =
      chosen_item() || grips_.chosen() ? readout() : tr("Proximal is up; x runs round the limb.");
  const QString lines = broken_lines(words, metrics, area.width() - 32.0).join('\n');
  const QSizeF size = plate_size(lines, metrics);
  const QRectF above =
      draw_plate(painter, {8.0 + 0.5 * size.width(), 8.0 + 0.5 * size.height()}, lines, look);
  const QRectF below = draw_length_scale(painter, area, 1e3 * transform().m11(), look);
  QRectF axis;
  if (!angles().empty()) {
    painter.setPen(look.colours.ink);
    draw_angle_axis(painter, angles(), *shown_.body(),
                    {axis_y(), [this](double x_m) { return pixel_at(x_m); }, eye_deg_, look});
    axis = QRectF(area.left(), axis_y() - kAxisAbove, area.width(), kAxisAbove + kAxisBelow);
  }
  draw_labels(painter, labels({above, below, axis}), look);
}

void FlatView::forget_angles() {
  angles_.reset();
  viewport()->update();
}

// Found when they are first wanted: body, device and result mostly come one right after the other.
const std::vector<AngleAtX>& FlatView::angles() const {
  if (!angles_) angles_ = angles_along_layout(shown_);
  return *angles_;
}

// Below the layout where there is room, and never on the scale.
double FlatView::axis_y() const {
  constexpr double kBelowLayout = 34.0, kScale = 44.0;
  return std::min(on_view(parts_box()).bottom() + kBelowLayout, viewport()->height() - kScale - kAxisBelow);
}

double FlatView::pixel_at(double x_m) const {
  return viewportTransform().map(QPointF(1e3 * x_m, 0.0)).x();
}

void FlatView::show_eye(const Vec3& towards_eye) {
  const Axis& axis = shown_.body()->axis;
  const double angle = angle_about_deg(axis.direction, towards_eye);
  if (eye_deg_ && std::abs(*eye_deg_ - angle) < 0.05) return;
  eye_deg_ = angle;
  viewport()->update();
}

bool FlatView::ask_for_look(const QPointF& at) {
  const double x_m = 1e-3 * mapToScene(at.toPoint()).x();
  const auto angle = angle_at(angles(), x_m);
  if (angle) emit lookAsked(outward_at(shown_.body()->axis, *angle));
  return angle.has_value();
}

std::vector<FlatLabel> FlatView::labels(std::vector<QRectF> taken) const {
  for (const QRectF& line : grips_.line_boxes()) taken.push_back(on_view(line));
  LabelRoom room{viewport()->rect(), on_view(parts_box()), QFontMetricsF(font()), std::move(taken)};
  std::vector<FlatLabel> labels;
  for (const FlatPartItem* item : items_)
    if (item->part().kind == LayoutPart::Kind::kChamber)
      if (auto label = place_label(labelled(*item), room)) labels.push_back(*std::move(label));
  return labels;
}

LabelledShape FlatView::labelled(const FlatPartItem& item) const {
  const std::size_t chamber = item.part().index;
  const Chamber& drawn = shown_.layout()->chambers[chamber];
  const auto contact = map_->isVisible() ? shown_.contact(selection_.state()) : nullptr;
  std::optional<Pressure> peak;
  if (contact && chamber < contact->figures.chambers.size()) peak = contact->figures.chambers[chamber].peak;
  const QTransform on_view = item.sceneTransform() * viewportTransform();
  return {on_view.map(item.path()), on_view.map(item.label_at()),
          [&drawn, peak, unit = selection_.unit(), metrics = QFontMetricsF(font())](double width) {
            return chamber_lines(QString::fromStdString(drawn.name), peak, unit, metrics, width);
          }};
}

QRectF FlatView::on_view(const QRectF& scene) const {
  return viewportTransform().mapRect(scene);
}

QImage FlatView::picture() {
  return viewport()->grab().toImage();
}

}  // namespace wrapgauge
