#include "app/desk/views/cut_drawing.hpp"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "app/desk/views/pressure_words.hpp"
#include "app/desk/words/phrase_text.hpp"
#include "app/picture/colour_map.hpp"

namespace wrapgauge {
namespace {

constexpr double kArrowShare = 0.3;     // the longest arrow, of the limb's half width
constexpr double kBetweenArrows = 9.0;  // pixels, at least
constexpr double kMargin = 10.0;        // pixels

struct Words {
  Q_DECLARE_TR_FUNCTIONS(CutDrawing)
};

QColor mixed(const QColor& a, const QColor& b, double share) {
  return QColor::fromRgbF(float(std::lerp(a.redF(), b.redF(), share)),
                          float(std::lerp(a.greenF(), b.greenF(), share)),
                          float(std::lerp(a.blueF(), b.blueF(), share)));
}

class CutDrawer {
 public:
  CutDrawer(QPainter& painter, const QRectF& room, const CutSection& section, const CutStyle& style)
      : painter_(painter), section_(section), style_(style) {
    const double line = QFontMetricsF(painter.font()).height();
    fit(room.adjusted(kMargin, kMargin, -kMargin, -kMargin - line));
    foot_ = QRectF(room.left() + kMargin, room.bottom() - line - 2.0, room.width() - 2.0 * kMargin, line);
  }

  void draw() {
    painter_.setRenderHint(QPainter::Antialiasing);
    draw_tissue();
    draw_air();
    draw_sheets();
    draw_pressed_skin();
    draw_arrows();
    draw_scale();
  }

 private:
  void fit(const QRectF& room) {
    Vec2 least = Vec2::Constant(1e9), most = -least;
    const auto take = [&](const Vec2& at) { least = least.cwiseMin(at), most = most.cwiseMax(at); };
    for (const CutLine& line : section_.skin_m)
      for (const Vec2& at : line) take(at);
    for (const CutSheet& piece : section_.sheets) take(piece.from_m), take(piece.to_m);
    if (most.x() <= least.x()) return;
    const Vec2 size = most - least;
    per_m_ = std::min(room.width() / size.x(), room.height() / size.y());
    middle_ = room.center();
    centre_m_ = 0.5 * (least + most);
    longest_ = kArrowShare * 0.5 * per_m_ * size.minCoeff();
  }

  QPointF on(const Vec2& at_m) const {
    return {middle_.x() + per_m_ * (at_m.x() - centre_m_.x()),
            middle_.y() - per_m_ * (at_m.y() - centre_m_.y())};
  }
  static QPointF across(const Vec2& direction) { return {direction.x(), -direction.y()}; }
  QColor tinted(const QColor& colour, double share) const {
    return mixed(style_.colours.paper, colour, share);
  }

  QPolygonF polygon(const CutLine& line) const {
    QPolygonF points;
    for (const Vec2& at : line) points.push_back(on(at));
    return points;
  }

  void draw_tissue() {
    painter_.setPen(QPen(tinted(style_.colours.ink, 0.5), 1.0, Qt::DotLine));
    painter_.setBrush(tinted(QColor(214, 140, 120), 0.35));
    for (const CutLine& line : section_.skin_m) painter_.drawPolygon(polygon(line));
    // Bone may begin there; only under the device is it asked how deep it lies.
    painter_.setPen(QPen(tinted(style_.colours.ink, 0.75), 1.4, Qt::DashLine));
    for (const CutSkin& piece : section_.pressed)
      painter_.drawLine(on(piece.bone_from_m), on(piece.bone_to_m));
  }

  void draw_air() {
    painter_.setPen(Qt::NoPen);
    painter_.setBrush(tinted(QColor(90, 150, 200), 0.25));
    for (const CutLine& air : section_.air_m) painter_.drawPolygon(polygon(air));
  }

  void draw_sheets() {
    const bool dark = style_.colours.paper.lightness() < 128;
    const QColor silicone =
        tinted(dark ? QColor(190, 178, 225) : QColor(90, 80, 120), style_.out_of_date ? 0.4 : 0.75);
    for (const CutSheet& piece : section_.sheets) {
      QPen pen(piece.layer == SheetLayer::kStrap ? style_.colours.ink : silicone,
               std::max(1.5, per_m_ * piece.thickness_m));
      pen.setCapStyle(Qt::RoundCap);
      painter_.setPen(pen);
      painter_.drawLine(on(piece.from_m), on(piece.to_m));
    }
  }

  void draw_pressed_skin() {
    painter_.setPen(QPen(style_.colours.ink, 1.4));
    for (const CutSkin& piece : section_.pressed) painter_.drawLine(on(piece.from_m), on(piece.to_m));
  }

  // Above a limit an arrow is told by a bar across its tail, not by its colour alone.
  void draw_arrow(const QPointF& tail, const QPointF& direction, double length, bool above) {
    const QPointF head = tail + length * direction, side(-direction.y(), direction.x());
    const QColor colour = style_.out_of_date ? tinted(style_.colours.ink, 0.4)
                          : above            ? severity_colour(Severity::kAboveLimit)
                                             : style_.colours.ink;
    painter_.setPen(QPen(colour, above ? 2.2 : 1.4));
    painter_.drawLine(tail, head);
    const double barb = std::min(4.0, 0.5 * length);
    painter_.drawLine(head, head - barb * direction + 0.6 * barb * side);
    painter_.drawLine(head, head - barb * direction - 0.6 * barb * side);
    const QPointF bar = tail + 5.0 * direction;
    if (above) painter_.drawLine(bar - 3.5 * side, bar + 3.5 * side);
  }

  // Of neighbours that lie too close the one that is pressed hardest has its arrow.
  void draw_arrows() {
    std::vector<const CutSkin*> hardest;
    for (const CutSkin& piece : section_.pressed)
      if (piece.pressure_pa > 0.0) hardest.push_back(&piece);
    std::stable_sort(hardest.begin(), hardest.end(),
                     [](const CutSkin* a, const CutSkin* b) { return a->pressure_pa > b->pressure_pa; });
    std::vector<QPointF> drawn;
    for (const CutSkin* piece : hardest) {
      const QPointF tail = on(0.5 * (piece->from_m + piece->to_m));
      const bool free = std::all_of(drawn.begin(), drawn.end(), [&](const QPointF& other) {
        return QLineF(tail, other).length() >= kBetweenArrows;
      });
      if (!free) continue;
      drawn.push_back(tail);
      draw_arrow(tail, across(piece->inward), longest_ * piece->pressure_pa / style_.top_pa,
                 piece->share_of_limit > 1.0);
    }
  }

  // A length of 10 or 20 mm, and the longest arrow with its pressure.
  void draw_scale() {
    if (!(per_m_ > 0.0)) return;
    const double length_m = per_m_ * 0.02 < 0.3 * foot_.width() ? 0.02 : 0.01, line = foot_.height();
    painter_.setPen(QPen(style_.colours.ink, 1.4));
    const double y = foot_.center().y(), end = foot_.left() + per_m_ * length_m;
    painter_.drawLine(QPointF(foot_.left(), y), QPointF(end, y));
    for (const double x : {foot_.left(), end}) painter_.drawLine(QPointF(x, y - 3.0), QPointF(x, y + 3.0));
    const QString millimetre = fixed_words(1e3 * length_m, 0) + QStringLiteral(" mm");
    painter_.drawText(QPointF(end + 6.0, y + 0.35 * line), millimetre);
    const double x = end + 22.0 + painter_.fontMetrics().horizontalAdvance(millimetre);
    draw_arrow({x, y}, {1.0, 0.0}, longest_, false);
    painter_.setPen(style_.colours.ink);
    painter_.drawText(QPointF(x + longest_ + 6.0, y + 0.35 * line),
                      Words::tr("%1 predicted").arg(pressure_words(Pressure(style_.top_pa), style_.unit)));
  }

  QPainter& painter_;
  const CutSection& section_;
  const CutStyle& style_;
  double per_m_ = 0.0, longest_ = 0.0;  // pixels
  QPointF middle_;
  Vec2 centre_m_ = Vec2::Zero();
  QRectF foot_;
};

}  // namespace

void draw_cut(QPainter& painter, const QRectF& room, const CutSection& section, const CutStyle& style) {
  CutDrawer(painter, room, section, style).draw();
}

}  // namespace wrapgauge
