#include "app/picture/girth_picture.hpp"

#include <QPolygonF>
#include <algorithm>
#include <cmath>
#include <set>

#include "app/picture/legend.hpp"
#include "app/picture/seen_surface.hpp"
#include "model/core/number_text.hpp"
#include "model/geometry/mesh_topology.hpp"

namespace wrapgauge {
namespace {

constexpr int kGirthPanelWidth = 500, kGirthPanelHeight = 690, kGirthPanelTop = 116;
constexpr int kLeftPanel = 30, kWords = 545, kWordsWidth = 310, kRightPanel = 870;
constexpr double kLineStep = 21.0;  // pixels between two lines of words
const QColor kGirthLine(92, 40, 120), kSiteLine(20, 60, 90);

struct Shown {
  const Body& body;
  const std::vector<GirthMark>& girths;
  std::vector<std::vector<SectionLine>> sections;  // a girth each
  Points3 normals;                                 // a vertex each
  LimbView front, side;
};

// +x where it is not along the axis, as for the angles of a plan.
Vec3 zero_angle(const Vec3& axis) {
  return std::abs(axis.x()) < 0.99 ? Vec3::UnitX() : Vec3::UnitY();
}

// Both views at one scale and one height, so that a girth's two lines and its words stand level.
void place_views(Shown& shown) {
  const Vec3& up = shown.body.axis.direction;
  shown.front.rows = limb_view_rows(up, zero_angle(up));
  const Vec3 across = shown.front.rows.row(0);
  shown.side.rows = limb_view_rows(up, across);
  const Points3& points = shown.body.surface.vertices_m;
  const Points3 seen = points * shown.front.rows.transpose();
  const Vec3 low = seen.colwise().minCoeff(), high = seen.colwise().maxCoeff();
  const Vec3 size = (high - low).cwiseMax(1e-3);
  for (LimbView* view : {&shown.front, &shown.side}) {
    view->width = kGirthPanelWidth;
    view->height = kGirthPanelHeight;
    view->centre_m = shown.front.rows.transpose() * (0.5 * (low + high));
    view->pixels_per_m = std::min({(kGirthPanelHeight - 30) / size.y(), (kGirthPanelWidth - 60) / size.x(),
                                   (kGirthPanelWidth - 60) / size.z()});
  }
}

Shown shown_body(const Body& body, const std::vector<GirthMark>& girths) {
  Shown shown{body, girths, {}, vertex_normals(body.surface), {}, {}};
  const PlaneSections sections(body.surface);
  for (const GirthMark& mark : girths)
    shown.sections.push_back(
        sections.at(body.axis.origin_m + mark.girth.station.si() * body.axis.direction, body.axis.direction));
  place_views(shown);
  return shown;
}

void draw_section(const SectionLine& line, const LimbView& view, Raster& raster) {
  for (std::size_t i = line.closed ? 0 : 1; i < line.points_m.size(); ++i) {
    const std::size_t before = i > 0 ? i - 1 : line.points_m.size() - 1;
    raster.line(view.project(line.points_m[before]), view.project(line.points_m[i]), 2.2, kGirthLine,
                kLineLift);
  }
}

// "tibial crest and face 3" is one of a row: "tibial crest and face".
std::string row_name(const std::string& site) {
  const std::size_t end = site.find_last_not_of("0123456789");
  return end + 1 < site.size() && site[end] == ' ' ? site.substr(0, end) : site;
}

// A ring of the site's radius, flat on the picture, where its point faces the eye. Adds what is seen to
// `seen`.
void draw_sites(const Shown& shown, const LimbView& view, Raster& raster, QPainter& painter, int left,
                std::set<std::string>& seen) {
  MapLabels labels(painter);
  for (const BonySite& site : shown.body.bony_sites) {
    const RasterPoint at = view.project(site.point_m);
    if (!raster.visible(at, 4.0 * kLineLift)) continue;
    seen.insert(row_name(site.name));
    const QPointF centre(left + at.x, kGirthPanelTop + at.y);
    const double radius = std::max(4.0, site.radius.si() * view.pixels_per_m);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(kSiteLine, 1.6, Qt::DashLine));
    painter.drawEllipse(centre, radius, radius);
    std::vector<QPointF> places;
    for (double down = 0.0; down <= 80.0; down += 8.0) {
      places.push_back(centre + QPointF(0.0, down));
      places.push_back(centre - QPointF(0.0, down));
    }
    labels.put_where_free(places, QString::fromStdString(site.name), 13);
  }
}

void draw_panel(const Shown& shown, const LimbView& view, int left, const QString& heading, QPainter& painter,
                std::set<std::string>& seen) {
  Raster raster(kGirthPanelWidth, kGirthPanelHeight, 1.0);
  draw_skin(shown.body.surface, shown.normals, view, raster);
  for (const auto& section : shown.sections)
    for (const SectionLine& line : section) draw_section(line, view, raster);
  painter.drawImage(QPointF(left, kGirthPanelTop), raster.image());
  draw_sites(shown, view, raster, painter, left, seen);
  painter.setPen(kInk);
  painter.setFont(picture_font(16, true));
  painter.drawText(QRectF(left, kGirthPanelTop - 28, kGirthPanelWidth, 24), Qt::AlignHCenter, heading);
}

// Sites that neither view shows, so that nobody takes the picture for all of them.
QString hidden_sites(const Body& body, std::set<std::string> seen) {
  QString words;
  for (const BonySite& site : body.bony_sites)
    if (seen.insert(row_name(site.name)).second)
      words += (words.isEmpty() ? "" : ", ") + QString::fromStdString(row_name(site.name));
  return words;
}

QStringList caption_of(const Body& body, const std::set<std::string>& seen) {
  QStringList caption{
      "Lines: girths by a plane across the axis, stations from the distal end; proximal is up."};
  if (!body.bony_sites.empty()) caption[0] += " Dashed: bony or nerve sites.";
  if (const QString hidden = hidden_sites(body, seen); !hidden.isEmpty())
    caption << "On the sides turned away: " + hidden + ".";
  return caption;
}

QString words_of(const GirthMark& mark) {
  const std::string name = mark.name.empty() ? "" : mark.name + ": ";
  const std::string at = " at " + fixed_text(mark.girth.station / mm, 1) + " mm";
  if (mark.girth.kind == SectionKind::kNone) return QString::fromStdString(name + "no section" + at);
  const std::string open = mark.girth.kind == SectionKind::kOpen ? " (open)" : "";
  return QString::fromStdString(name + fixed_text(mark.girth.girth / mm, 1) + " mm" + open + at);
}

// Heights of the words: as near to their lines as room allows, in the same order, top first.
std::vector<double> spread(std::vector<double> heights) {
  for (std::size_t i = 1; i < heights.size(); ++i)
    heights[i] = std::max(heights[i], heights[i - 1] + kLineStep);
  double limit = kGirthPanelTop + kGirthPanelHeight - 10.0;
  for (std::size_t i = heights.size(); i-- > 0; limit -= kLineStep) heights[i] = std::min(heights[i], limit);
  return heights;
}

// From the line on each view to its words.
void draw_leaders(const Shown& shown, std::size_t girth, double line, double words, QPainter& painter) {
  double left = 0.0, right = kGirthPanelWidth;
  for (const SectionLine& section : shown.sections[girth])
    for (const Vec3& point : section.points_m) {
      left = std::max(left, shown.front.project(point).x);
      right = std::min(right, shown.side.project(point).x);
    }
  const int words_end = kWords + kWordsWidth;
  painter.setPen(QPen(QColor(180, 160, 195), 1.0));
  for (const auto& leader : {QPolygonF{QPointF(kLeftPanel + left + 6, line), QPointF(kWords - 40, line),
                                       QPointF(kWords - 4, words)},
                             QPolygonF{QPointF(kRightPanel + right - 6, line), QPointF(words_end + 40, line),
                                       QPointF(words_end + 4, words)}})
    painter.drawPolyline(leader);
}

void draw_words(const Shown& shown, QPainter& painter) {
  std::vector<std::pair<double, std::size_t>> order;  // height of the line on the picture, girth
  for (std::size_t i = 0; i < shown.girths.size(); ++i) {
    const Vec3 on_axis =
        shown.body.axis.origin_m + shown.girths[i].girth.station.si() * shown.body.axis.direction;
    order.emplace_back(kGirthPanelTop + shown.front.project(on_axis).y, i);
  }
  std::sort(order.begin(), order.end());
  std::vector<double> lines;
  for (const auto& [height, i] : order) lines.push_back(height);
  const std::vector<double> words = spread(lines);
  for (std::size_t k = 0; k < order.size(); ++k) {
    draw_leaders(shown, order[k].second, lines[k], words[k], painter);
    painter.setPen(kInk);
    painter.setFont(picture_font(14));
    const QFontMetricsF metrics(painter.font());
    painter.drawText(
        QRectF(kWords, words[k] - 10, kWordsWidth, 20), Qt::AlignCenter,
        metrics.elidedText(words_of(shown.girths[order[k].second]), Qt::ElideMiddle, kWordsWidth));
  }
}

}  // namespace

QImage girth_picture(const Body& body, const std::vector<GirthMark>& girths, const QString& title,
                     const QString& subtitle) {
  QImage image(kPictureWidth, kPictureHeight, QImage::Format_RGB32);
  image.fill(QColor(252, 252, 253));
  QPainter painter(&image);
  painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
  const Shown shown = shown_body(body, girths);
  draw_title(painter, title, subtitle);
  std::set<std::string> seen;
  draw_panel(shown, shown.front, kLeftPanel, "from angle 0°", painter, seen);
  draw_panel(shown, shown.side, kRightPanel, "from angle 90°", painter, seen);
  draw_words(shown, painter);
  draw_scale_bar(painter, QPointF(kLeftPanel + 4, kGirthPanelTop + kGirthPanelHeight + 12),
                 shown.front.pixels_per_m);
  draw_caption(painter, caption_of(body, seen));
  painter.end();
  return image;
}

}  // namespace wrapgauge
