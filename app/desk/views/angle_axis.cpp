#include "app/desk/views/angle_axis.hpp"

#include <QCoreApplication>
#include <QPolygonF>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "app/desk/words/phrase_text.hpp"
#include "model/body/axis_angle.hpp"
#include "model/body/place_words.hpp"
#include "model/wrap/station_angle.hpp"

namespace wrapgauge {
namespace {

constexpr int kPlaces = 24;  // of the layout's length that are looked up
constexpr double kTick_deg = 45.0, kQuarter_deg = 90.0;

struct AxisWords {
  Q_DECLARE_TR_FUNCTIONS(AngleAxis)
};

// What lies on the body: the flat mesh and where its vertices are.
struct Laid {
  const FlatMesh* flat = nullptr;
  const Wrap* wrap = nullptr;
};

Laid laid(const ShownPlan& shown) {
  if (shown.worn()) return {&shown.worn()->setup.flat, &shown.worn()->wrap};
  if (shown.estimate()) return {&shown.estimate()->setup.flat, &shown.estimate()->wrap};
  return {};
}

// Vertices nearest to evenly spaced places on the middle line, x rising.
std::vector<Eigen::Index> along_the_middle(const Points2& vertices_m) {
  const Eigen::RowVector2d low = vertices_m.colwise().minCoeff(), high = vertices_m.colwise().maxCoeff();
  std::vector<Eigen::Index> chosen;
  for (int k = 0; k < kPlaces; ++k) {
    const Eigen::RowVector2d place(low.x() + (high.x() - low.x()) * k / (kPlaces - 1),
                                   0.5 * (low.y() + high.y()));
    Eigen::Index nearest = 0;
    (vertices_m.rowwise() - place).rowwise().squaredNorm().minCoeff(&nearest);
    if (chosen.empty() || vertices_m(nearest, 0) > vertices_m(chosen.back(), 0) + 1e-6)
      chosen.push_back(nearest);
  }
  return chosen;
}

// At the middle of each quarter the side of the body that it is, else the angle.
QString words_at(const Body& body, double angle_deg) {
  const double from = body.front ? angle_about_deg(body.axis.direction, *body.front) : 0.0;
  if (std::abs(std::remainder(angle_deg - from, kQuarter_deg)) > 1e-6) return {};
  const auto facing = facing_at(body, angle_deg);
  if (facing) return text(facing_words(*facing));
  return QStringLiteral("%1°").arg(std::fmod(angle_deg + 720.0, 360.0), 0, 'f', 0);
}

// Where ticks stand: from the front on where that is known, else from angle 0.
double first_tick(const Body& body, double least_deg) {
  const double from = body.front ? angle_about_deg(body.axis.direction, *body.front) : 0.0;
  return from + kTick_deg * std::ceil((least_deg - from) / kTick_deg);
}

void draw_eye(QPainter& painter, double x, const AngleAxisLook& how) {
  painter.setBrush(how.look.colours.ink);
  painter.drawPolygon(QPolygonF({{x, how.y - 2.0}, {x - 6.0, how.y - 12.0}, {x + 6.0, how.y - 12.0}}));
  painter.drawText(QPointF(x + 9.0, how.y - 4.0), AxisWords::tr("seen"));
}

}  // namespace

std::vector<AngleAtX> angles_along_layout(const ShownPlan& shown) {
  const auto [flat, wrap] = laid(shown);
  if (!flat || !shown.body() || !shown.sections() || wrap->worn_m.rows() != flat->vertices_m.rows())
    return {};
  std::vector<AngleAtX> angles;
  for (const Eigen::Index vertex : along_the_middle(flat->vertices_m)) {
    const auto at = station_and_angle(*shown.sections(), shown.body()->axis, wrap->worn_m.row(vertex));
    if (!at) return {};
    const double before = angles.empty() ? at->angle_deg : angles.back().angle_deg;
    angles.push_back({flat->vertices_m(vertex, 0), before + std::remainder(at->angle_deg - before, 360.0)});
  }
  const auto falls = [](const AngleAtX& a, const AngleAtX& b) { return b.angle_deg <= a.angle_deg; };
  const auto rises = [](const AngleAtX& a, const AngleAtX& b) { return b.angle_deg >= a.angle_deg; };
  const bool rising = std::adjacent_find(angles.begin(), angles.end(), falls) == angles.end();
  const bool falling = std::adjacent_find(angles.begin(), angles.end(), rises) == angles.end();
  return angles.size() > 1 && (rising || falling) ? angles : std::vector<AngleAtX>{};
}

std::optional<double> angle_at(const std::vector<AngleAtX>& angles, double x_m) {
  for (std::size_t k = 1; k < angles.size(); ++k) {
    const AngleAtX &a = angles[k - 1], &b = angles[k];
    if (x_m >= a.x_m && x_m <= b.x_m)
      return std::lerp(a.angle_deg, b.angle_deg, (x_m - a.x_m) / (b.x_m - a.x_m));
  }
  return std::nullopt;
}

std::optional<double> x_at(const std::vector<AngleAtX>& angles, double angle_deg) {
  for (std::size_t k = 1; k < angles.size(); ++k) {
    const AngleAtX &a = angles[k - 1], &b = angles[k];
    const double low = std::min(a.angle_deg, b.angle_deg), high = std::max(a.angle_deg, b.angle_deg);
    const double there = angle_deg + 360.0 * std::ceil((low - angle_deg) / 360.0);
    if (there <= high) return std::lerp(a.x_m, b.x_m, (there - a.angle_deg) / (b.angle_deg - a.angle_deg));
  }
  return std::nullopt;
}

Vec3 outward_at(const Axis& axis, double angle_deg) {
  const double angle = angle_deg * std::numbers::pi / 180.0;
  const Vec3 zero = zero_angle_direction(axis.direction);
  return std::cos(angle) * zero + std::sin(angle) * axis.direction.cross(zero);
}

void draw_angle_axis(QPainter& painter, const std::vector<AngleAtX>& angles, const Body& body,
                     const AngleAxisLook& how) {
  if (angles.size() < 2) return;
  const QFontMetricsF metrics(how.look.font);
  painter.setFont(how.look.font);
  painter.setPen(how.look.colours.ink);
  painter.drawLine(QPointF(how.at(angles.front().x_m), how.y), QPointF(how.at(angles.back().x_m), how.y));
  const auto [least, most] = std::minmax(angles.front().angle_deg, angles.back().angle_deg);
  for (double angle = first_tick(body, least); angle <= most; angle += kTick_deg) {
    const double x = how.at(*x_at(angles, angle));
    const QString words = words_at(body, angle);
    painter.drawLine(QPointF(x, how.y), QPointF(x, how.y + (words.isEmpty() ? 4.0 : 7.0)));
    painter.drawText(QPointF(x - 0.5 * metrics.horizontalAdvance(words), how.y + 8.0 + metrics.ascent()),
                     words);
  }
  if (!how.eye_deg) return;
  if (const auto x_m = x_at(angles, *how.eye_deg)) draw_eye(painter, how.at(*x_m), how);
}

}  // namespace wrapgauge
