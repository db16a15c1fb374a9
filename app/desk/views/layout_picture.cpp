#include "app/desk/views/layout_picture.hpp"

#include <QPainter>
#include <algorithm>
#include <cmath>
#include <numeric>

#include "app/desk/views/flat_items.hpp"
#include "app/desk/views/save_views.hpp"
#include "app/desk/views/view_legend.hpp"

namespace wrapgauge {
namespace {

constexpr double kRim = 14.0, kBeside = 12.0, kHead = 6.0, kLabelGap = 8.0;  // pixels

bool is_upright(const PictureArrow& arrow) {
  return arrow.whole &&
         std::abs(arrow.to_m.y() - arrow.from_m.y()) > std::abs(arrow.to_m.x() - arrow.from_m.x());
}

void draw_head(QPainter& painter, const QPointF& tip, const QPointF& from) {
  const QLineF along(tip, from);
  if (along.length() < 1e-6) return;
  const double size = std::min(kHead, std::max(3.0, 0.5 * along.length()));
  for (const double turn : {24.0, -24.0}) {
    QLineF wing = along;
    wing.setLength(size);
    wing.setAngle(along.angle() + turn);
    painter.drawLine(wing);
  }
}

}  // namespace

LayoutPicture::LayoutPicture(QWidget* parent) : QWidget(parent) {
  setAccessibleName(tr("The layout as it will be made"));
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
  offer_picture(this, tr("layout"), [this] { return grab().toImage(); });
}

void LayoutPicture::show_layout(Layout layout, std::vector<PictureArrow> arrows) {
  layout_ = std::move(layout);
  arrows_ = std::move(arrows);
  outdated_ = false;
  QStringList said;
  for (const PictureArrow& arrow : arrows_) said += arrow.name + u' ' + arrow.size;
  setAccessibleDescription(said.join(QStringLiteral("; ")));
  update();
}

void LayoutPicture::show_outdated(bool outdated) {
  outdated_ = outdated;
  update();
}

void LayoutPicture::show_chosen(const QString& name) {
  chosen_ = name;
  update();
}

QString LayoutPicture::words(const PictureArrow& arrow) const {
  return arrow.name + QChar(is_upright(arrow) ? u'\n' : u' ') + arrow.size;
}

QSizeF LayoutPicture::label_size(const PictureArrow& arrow) const {
  const QSizeF text = QFontMetricsF(font()).size(0, words(arrow));
  return {text.width() + kPlateRim, text.height() + 4.0};
}

Bounds2 LayoutPicture::box_m() const {
  Bounds2 box = bounds(layout_.outline_m);
  for (const Strap& strap : layout_.straps) {
    const Bounds2 its = bounds(strap.boundary_m);
    box.low = box.low.cwiseMin(its.low);
    box.high = box.high.cwiseMax(its.high);
  }
  return box;
}

// Words of arrows within the layout stand above it, in as many rows as they need.
int LayoutPicture::label_rows() const {
  double wide = 0.0;
  for (const PictureArrow& arrow : arrows_)
    if (!arrow.whole) wide += label_size(arrow).width() + kLabelGap;
  return std::max(1, static_cast<int>(std::ceil(wide / std::max(1.0, width() - 2.0 * kRim))));
}

double LayoutPicture::row_height() const {
  return QFontMetricsF(font()).height() + 8.0;
}

QRectF LayoutPicture::material() const {
  double right = 0.0;
  for (const PictureArrow& arrow : arrows_)
    if (is_upright(arrow)) right = std::max(right, label_size(arrow).width());
  const double below = fontMetrics().height() + 2.0 * kBeside + 8.0;
  const QRectF room = QRectF(rect()).adjusted(kRim, kRim + label_rows() * row_height() + kBeside,
                                              -kRim - right - 2.0 * kBeside, -kRim - below);
  const Bounds2 box = box_m();
  const Vec2 size_mm = 1e3 * (box.high - box.low);
  if (!(size_mm.minCoeff() > 0.0) || room.width() < 10.0 || room.height() < 10.0) return room;
  const double pixels = std::min(room.width() / size_mm.x(), room.height() / size_mm.y());
  QRectF drawn(QPointF(), QSizeF(pixels * size_mm.x(), pixels * size_mm.y()));
  drawn.moveCenter(room.center());
  return drawn;
}

double LayoutPicture::scale() const {
  const Bounds2 box = box_m();
  return material().width() / std::max(1e-9, 1e3 * (box.high.x() - box.low.x()));
}

QPointF LayoutPicture::on_view(const Vec2& point_m) const {
  const Bounds2 box = box_m();
  const double pixels = 1e3 * scale();
  const QRectF drawn = material();
  return {drawn.left() + pixels * (point_m.x() - box.low.x()),
          drawn.top() + pixels * (box.high.y() - point_m.y())};
}

std::vector<LayoutPicture::Placed> LayoutPicture::placed() const {
  std::vector<Placed> all(arrows_.size());
  const QRectF drawn = material();
  std::vector<std::size_t> above;
  for (std::size_t i = 0; i < arrows_.size(); ++i) {
    const PictureArrow& arrow = arrows_[i];
    Placed& at = all[i];
    at.from = on_view(arrow.from_m);
    at.to = on_view(arrow.to_m);
    if (!arrow.whole) {
      above.push_back(i);
      continue;
    }
    const QSizeF size = label_size(arrow);
    if (is_upright(arrow)) {
      at.from.setX(drawn.right() + kBeside);
      at.to.setX(drawn.right() + kBeside);
      at.label = QRectF({drawn.right() + 1.5 * kBeside, drawn.center().y() - 0.5 * size.height()}, size);
    } else {
      at.from.setY(drawn.bottom() + kBeside);
      at.to.setY(drawn.bottom() + kBeside);
      at.label = QRectF(
          {0.5 * (at.from.x() + at.to.x()) - 0.5 * size.width(), drawn.bottom() + 1.5 * kBeside}, size);
    }
  }
  std::stable_sort(above.begin(), above.end(),
                   [&](std::size_t a, std::size_t b) { return all[a].from.x() < all[b].from.x(); });
  place_above(above, drawn.top(), all);
  return all;
}

// From the left, each in the row where it comes nearest to standing over its arrow.
void LayoutPicture::place_above(const std::vector<std::size_t>& order, double bottom,
                                std::vector<Placed>& all) const {
  const int rows = label_rows();
  std::vector<double> used(static_cast<std::size_t>(rows), kRim);
  for (const std::size_t i : order) {
    const QSizeF size = label_size(arrows_[i]);
    const double most = std::max(kRim, width() - kRim - size.width());
    const double wished = std::clamp(0.5 * (all[i].from.x() + all[i].to.x() - size.width()), kRim, most);
    std::size_t row = 0;
    for (std::size_t k = 1; k < used.size(); ++k)
      if (std::max(used[k], wished) < std::max(used[row], wished)) row = k;
    const double y = bottom - kBeside - (static_cast<double>(row) + 1.0) * row_height();
    all[i].label = QRectF({std::max(used[row], wished), y}, size);
    used[row] = all[i].label.right() + kLabelGap;
  }
}

std::vector<QRectF> LayoutPicture::label_places() const {
  std::vector<QRectF> places;
  for (const Placed& one : placed()) places.push_back(one.label);
  return places;
}

void LayoutPicture::draw_layout(QPainter& painter) const {
  const Bounds2 box = box_m();
  painter.save();
  painter.translate(material().topLeft());
  painter.scale(scale(), scale());
  painter.translate(-1e3 * box.low.x(), 1e3 * box.high.y());
  painter.fillPath(material_of(layout_), QColor(226, 223, 232));
  for (const LayoutPart& part : layout_parts(layout_)) {
    using Kind = LayoutPart::Kind;
    const bool open = part.kind == Kind::kChamber || part.kind == Kind::kChannel;
    const bool dark =
        part.kind == Kind::kInsetSpot || part.kind == Kind::kInsetLine || part.kind == Kind::kInlet;
    painter.setPen(cosmetic_pen(QColor(70, 66, 80), part.kind == Kind::kOutline ? 2.0 : 1.2));
    painter.setBrush(open ? QBrush(QColor(196, 186, 232)) : dark ? QBrush(QColor(70, 66, 80)) : Qt::NoBrush);
    painter.drawPath(flat_path(layout_, part));
  }
  painter.restore();
}

void LayoutPicture::draw_arrow(QPainter& painter, const PictureArrow& arrow, const Placed& at) const {
  const bool chosen = !chosen_.isEmpty() && arrow.name == chosen_;
  const ViewColours colours = view_colours(*this);
  const QColor ink = chosen ? kChosenBlue : arrow.whole ? colours.ink : QColor(28, 26, 34);
  if (!arrow.whole) {
    painter.setPen(QPen(chosen ? kChosenBlue : QColor(128, 124, 138), chosen ? 1.6 : 1.0, Qt::DotLine));
    painter.drawLine(QPointF(at.label.center().x(), at.label.bottom()), 0.5 * (at.from + at.to));
  }
  painter.setPen(QPen(ink, chosen ? 2.6 : 1.4));
  painter.drawLine(at.from, at.to);
  draw_head(painter, at.from, at.to);
  draw_head(painter, at.to, at.from);
}

void LayoutPicture::draw_label(QPainter& painter, const PictureArrow& arrow, const QRectF& place) const {
  const ViewColours colours = view_colours(*this);
  draw_bare_plate(painter, place, colours);
  painter.setFont(font());
  painter.setPen(!chosen_.isEmpty() && arrow.name == chosen_ ? kChosenBlue : colours.ink);
  painter.drawText(place, Qt::AlignCenter, words(arrow));
}

void LayoutPicture::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
  painter.fillRect(rect(), view_colours(*this).paper);
  if (layout_.outline_m.size() < 3) return;
  painter.setOpacity(outdated_ ? 0.35 : 1.0);
  draw_layout(painter);
  const std::vector<Placed> all = placed();
  for (std::size_t i = 0; i < arrows_.size(); ++i) draw_arrow(painter, arrows_[i], all[i]);
  for (std::size_t i = 0; i < arrows_.size(); ++i) draw_label(painter, arrows_[i], all[i].label);
}

}  // namespace wrapgauge
