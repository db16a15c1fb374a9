#include "app/desk/views/body_overlay.hpp"

#include <QPainter>
#include <QPolygonF>
#include <QToolButton>
#include <algorithm>

#include "app/picture/whole_body.hpp"
#include "model/body/place_words.hpp"

namespace wrapgauge {
namespace {

constexpr double kLeastFacing = 0.15;  // cosine to the eye of skin that is seen well enough
constexpr double kInsetRim = 8.0;      // pixels: as the legend keeps off the edge
constexpr double kLineWidth = 4.0;     // pixels, of the boldest line on the skin

bool same_view(const LimbView& a, const LimbView& b) {
  return a.rows == b.rows && a.centre_m == b.centre_m && a.pixels_per_m == b.pixels_per_m &&
         a.width == b.width && a.height == b.height;
}

std::optional<Length> air_line(const BodyScene& scene) {
  for (const auto& part : scene.parts)
    if (part->air_line) return part->air_line;
  return std::nullopt;
}

QStringList names(const BodyScene& scene) {
  QStringList words;
  for (const auto& part : scene.parts)
    for (const SceneLabel& label : part->labels) words += label.words;
  return words;
}

}  // namespace

BodyOverlay::BodyOverlay(const ShownPlan& shown, const Selection& selection, QWidget* parent)
    : QWidget(parent), shown_(shown), selection_(selection) {
  setAttribute(Qt::WA_TransparentForMouseEvents);
  setFocusPolicy(Qt::NoFocus);
}

void BodyOverlay::show_over(std::shared_ptr<const BodyScene> scene, const LimbView& view,
                            const QString& hint) {
  const bool pressed = scene && scene->worn() && scene->worn()->pressure_pa.size() > 0;
  const bool same = scene_ && scene && scene_->skin == scene->skin && same_view(view, view_) &&
                    hint == hint_ && no_body_ == shown_.no_body() && pressed == pressed_ &&
                    names(*scene) == names(*scene_) && air_line(*scene) == air_line(*scene_);
  scene_ = std::move(scene);
  view_ = view;
  hint_ = hint;
  no_body_ = shown_.no_body();
  pressed_ = pressed;
  if (!same || covered(names_at_, seen_hatching()) > 0) update();
}

void BodyOverlay::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  names_at_ = draw(painter).names;
}

OverlayPlaces BodyOverlay::draw(QPainter& painter) const {
  painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
  LegendLook look{view_colours(*this), font(), selection_.unit(), !shown_.stale().isEmpty()};
  if (!scene_ || !scene_->skin) {
    painter.setPen(look.colours.ink);
    painter.drawText(
        rect().adjusted(30, 30, -30, -30), Qt::AlignCenter | Qt::TextWordWrap,
        !no_body_.isEmpty()
            ? no_body_
            : tr("No body yet. Open a mesh file or make a form in the step Body, or drop a file here."));
    return {};
  }
  // A limb that goes on beyond the lower edge fades out under the buttons instead of being cut off.
  constexpr double kFade_pixels = 84.0;
  QColor clear = look.colours.paper;
  clear.setAlpha(0);
  QLinearGradient fade(0.0, height() - kFade_pixels, 0.0, height());
  fade.setColorAt(0.0, clear);
  fade.setColorAt(0.8, look.colours.paper);
  painter.fillRect(QRectF(0.0, height() - kFade_pixels, width(), kFade_pixels), fade);
  std::vector<QRectF> taken = buttons();
  if (pressed_) taken.push_back(draw_pressure_legend(painter, rect(), shown_.scale(), look));
  const QRectF scale = draw_length_scale(painter, rect(), view_.pixels_per_m, look);
  taken.push_back(draw_words_above(painter, look));
  const auto below = draw_words_below(painter, look, scale);
  if (below) taken.push_back(*below);
  if (const auto spot = hottest_spot()) taken.push_back(*spot);
  OverlayPlaces places;
  InsetRoom room{QRectF(rect()).adjusted(kInsetRim, kInsetRim, -kInsetRim, -kInsetRim), taken, {}, {}};
  room.taken.push_back(scale);
  for (const FlatLabel& name : draw_names(painter, look, std::move(taken))) {
    places.names.push_back(name.plate);
    room.taken.push_back(name.plate);
    if (name.points_at) room.lines.emplace_back(*name.points_at, name.plate.center());
  }
  places.whole_body = draw_whole(painter, look, std::move(room));
  return places;
}

std::vector<QRectF> BodyOverlay::buttons() const {
  std::vector<QRectF> taken;
  for (const QToolButton* button : parentWidget()->findChildren<QToolButton*>())
    taken.push_back(button->geometry());
  return taken;
}

bool BodyOverlay::all_of_body_seen() const {
  const Points3& points = scene_->skin->mesh().vertices_m;
  for (Eigen::Index v = 0; v < points.rows(); ++v) {
    const RasterPoint at = view_.project(points.row(v));
    if (!QRectF(rect()).contains(QPointF(at.x, at.y))) return false;
  }
  return true;
}

// In front and behind: what is seen of it is among it.
std::vector<QRectF> BodyOverlay::drawn_on_skin() const {
  std::vector<QRectF> drawn;
  const auto box_round = [&](const Points3& points_m, std::initializer_list<Eigen::Index> rows) {
    QPolygonF seen;
    for (const Eigen::Index row : rows) {
      const RasterPoint at = view_.project(points_m.row(row));
      seen << QPointF(at.x, at.y);
    }
    drawn.push_back(seen.boundingRect().adjusted(-kLineWidth, -kLineWidth, kLineWidth, kLineWidth));
  };
  for (const auto& part : scene_->parts) {
    if (const auto& worn = part->surface)
      for (Eigen::Index t = 0; t < worn->triangles.rows(); ++t)
        box_round(worn->points_m, {worn->triangles(t, 0), worn->triangles(t, 1), worn->triangles(t, 2)});
    for (const SceneLines& lines : part->lines)
      for (Eigen::Index k = 0; k + 1 < lines.ends_m.rows(); k += 2) box_round(lines.ends_m, {k, k + 1});
  }
  return drawn;
}

std::optional<QRectF> BodyOverlay::draw_whole(QPainter& painter, const LegendLook& look,
                                              InsetRoom room) const {
  const auto laid = laid_in_scene();
  if (!laid || all_of_body_seen()) return std::nullopt;
  room.drawn = drawn_on_skin();
  const QString words = tr("whole body");
  const QSizeF size = QFontMetricsF(look.font).size(0, words);
  const auto plate = place_inset(seen_size_m(*scene_->skin, view_.rows), size, room);
  if (!plate) return std::nullopt;
  draw_bare_plate(painter, *plate, look.colours);
  painter.setFont(look.font);
  painter.drawText(QRectF(plate->topLeft() + QPointF(0.0, 3.0), QSizeF(plate->width(), size.height())),
                   Qt::AlignHCenter, words);
  draw_whole_body(*scene_->skin,
                  {laid->points_m, laid->normals, laid->triangles, laid->pressure_pa, laid->rim_m},
                  view_.rows, laid->top_pa, body_in_inset(*plate, size), painter);
  return plate;
}

// As it was solved, as it is put on, or, where it is neither, its lines alone.
std::optional<WornSurface> BodyOverlay::laid_in_scene() const {
  if (const WornSurface* worn = scene_->worn()) {
    WornSurface laid = *worn;
    if (laid.dimmed) laid.pressure_pa.resize(0);
    return laid;
  }
  if (!shown_.rim() || shown_.rim()->ends_m.rows() == 0) return std::nullopt;
  WornSurface lines;
  lines.rim_m = shown_.rim()->ends_m;
  return lines;
}

QRectF BodyOverlay::draw_words_above(QPainter& painter, const LegendLook& look) const {
  QStringList lines;
  if (!hint_.isEmpty()) lines += hint_;
  if (hint_.isEmpty() && !side_words().isEmpty()) lines += side_words();
  if (!shown_.stale().isEmpty()) lines += shown_.stale();
  if (lines.isEmpty()) return {};
  const QFontMetricsF metrics(look.font);
  const double room = width() - 24.0 - (pressed_ ? legend_width(look.font, width()) : 0);
  const QString words = lines.join('\n');
  const QRectF needed = metrics.boundingRect(QRectF(0, 0, room - 20, height()), Qt::TextWordWrap, words);
  QRectF plate(8, 8, needed.width() + 20, needed.height() + 8);
  for (const QRectF& button : buttons())
    if (button.intersects(plate)) plate.moveTop(button.bottom() + 4.0);
  draw_bare_plate(painter, plate, look.colours);
  painter.setFont(look.font);
  painter.drawText(plate.adjusted(10, 4, -10, -4), Qt::TextWordWrap, words);
  return plate;
}

// How far apart the lines on the outer sheet are.
std::optional<QRectF> BodyOverlay::draw_words_below(QPainter& painter, const LegendLook& look,
                                                    const QRectF& scale) const {
  const auto step = air_line(*scene_);
  if (!step) return std::nullopt;
  const QString words = tr("one line for every %1 mm of air").arg(*step / mm);
  const QSizeF size = plate_size(words, QFontMetricsF(look.font));
  const QPointF centre(scale.right() + 8.0 + 0.5 * size.width(), scale.center().y());
  return draw_plate(painter, centre, words, look);
}

// No name is to stand on it.
std::optional<QRectF> BodyOverlay::hottest_spot() const {
  constexpr double kAcross = 26.0;  // pixels
  for (const auto& part : scene_->parts) {
    if (!part->hottest || part->hottest->normal.dot(view_.rows.row(2)) < kLeastFacing) continue;
    const RasterPoint at = view_.project(part->hottest->point_m);
    return QRectF(at.x - 0.5 * kAcross, at.y - 0.5 * kAcross, kAcross, kAcross);
  }
  return std::nullopt;
}

// By the person's body; empty where the plan does not say how it lies.
QString BodyOverlay::side_words() const {
  const auto facing = shown_.body() ? facing_of(*shown_.body(), view_.rows.row(2)) : std::nullopt;
  if (!facing) return {};
  const QString words[] = {tr("Seen: the front"),      tr("Seen: the back"),       tr("Seen: the inner side"),
                           tr("Seen: the outer side"), tr("Seen: the right side"), tr("Seen: the left side")};
  return words[static_cast<std::size_t>(*facing)];
}

bool BodyOverlay::is_in_sight(const SceneLabel& label) const {
  const auto points = static_cast<std::size_t>(label.area.points_m.rows());
  return 2 * seen_points(label.area).size() > points;
}

std::vector<QPointF> BodyOverlay::seen_points(const SkinPoints& area) const {
  std::vector<QPointF> seen;
  for (Eigen::Index k = 0; k < area.points_m.rows(); ++k) {
    if (area.normals.row(k).dot(view_.rows.row(2)) < kLeastFacing) continue;
    const RasterPoint at = view_.project(area.points_m.row(k));
    if (rect().contains(QPointF(at.x, at.y).toPoint())) seen.emplace_back(at.x, at.y);
  }
  return seen;
}

std::vector<QPointF> BodyOverlay::seen_hatching() const {
  std::vector<QPointF> seen;
  if (scene_)
    for (const auto& part : scene_->parts) {
      const auto more = seen_points(part->hatched);
      seen.insert(seen.end(), more.begin(), more.end());
    }
  return seen;
}

std::vector<NamedPlace> BodyOverlay::named_places() const {
  std::vector<NamedPlace> places;
  for (const auto& part : scene_->parts)
    for (const SceneLabel& label : part->labels) {
      if (label.normal.dot(view_.rows.row(2)) < kLeastFacing) continue;
      if (!is_seen(*scene_->skin, view_, label.point_m)) continue;
      const RasterPoint at = view_.project(label.point_m);
      if (rect().contains(QPointF(at.x, at.y).toPoint()))
        places.push_back({label.words, {at.x, at.y}, seen_points(label.area)});
    }
  return places;
}

std::vector<FlatLabel> BodyOverlay::draw_names(QPainter& painter, const LegendLook& look,
                                               std::vector<QRectF> taken) const {
  constexpr double kRim = 3.0;
  NameRoom room{QRectF(rect()).adjusted(kRim, kRim, -kRim, -kRim),
                QFontMetricsF(look.font),
                seen_hatching(),
                {},
                std::move(taken)};
  const std::vector<NamedPlace> places = named_places();
  for (const NamedPlace& place : places)
    room.areas.insert(room.areas.end(), place.area.begin(), place.area.end());
  std::vector<FlatLabel> labels;
  for (const NamedPlace& place : places)
    if (auto label = place_name(place, room)) labels.push_back(std::move(*label));
  draw_labels(painter, labels, look);
  return labels;
}

}  // namespace wrapgauge
