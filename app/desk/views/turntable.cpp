#include "app/desk/views/turntable.hpp"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <numbers>

namespace wrapgauge {
namespace {

constexpr double kDegree = std::numbers::pi / 180.0;

}  // namespace

void Turntable::set_body(const Axis& axis, const Vec3& front) {
  up_ = axis.direction.normalized();
  front_ = limb_view_rows(up_, front).row(2);
  aim();
}

void Turntable::set_size(int width, int height, int covered_right) {
  covered_right_ = covered_right;
  const double factor = std::min(static_cast<double>(std::max(1, width)) / view_.width,
                                 static_cast<double>(std::max(1, height)) / view_.height);
  view_.width = std::max(1, width);
  view_.height = std::max(1, height);
  if (fitted_m_.rows() > 0)
    refit();
  else
    view_.pixels_per_m *= factor;
}

void Turntable::fit(const Points3& points_m) {
  fitted_m_ = points_m;
  refit();
}

void Turntable::refit() {
  constexpr double kShare = 0.86;  // of the view that the points take
  if (fitted_m_.rows() == 0) return;
  const Points3 seen = fitted_m_ * view_.rows.transpose();
  const Vec3 low = seen.colwise().minCoeff(), high = seen.colwise().maxCoeff();
  const Vec3 size = (high - low).cwiseMax(1e-4);
  const double room = std::max(0.4 * view_.width, static_cast<double>(view_.width - covered_right_));
  view_.pixels_per_m = kShare * std::min(room / size.x(), view_.height / size.y());
  const Vec3 aside(0.5 * (view_.width - room) / view_.pixels_per_m, 0.0, 0.0);
  view_.centre_m = view_.rows.transpose() * (0.5 * (low + high) + aside);
}

void Turntable::look_from(ViewSide side) {
  right_deg_ = side == ViewSide::kBack ? 180.0 : 0.0;
  up_deg_ = side == ViewSide::kProximal ? 90.0 : side == ViewSide::kDistal ? -90.0 : 0.0;
  aim();
  refit();
}

void Turntable::face(const Vec3& outward) {
  const Vec3 across = outward - outward.dot(up_) * up_;
  if (across.norm() > 1e-9)
    right_deg_ = std::atan2(up_.dot(front_.cross(across)), front_.dot(across)) / kDegree;
  up_deg_ = 0.0;
  aim();
  refit();
}

void Turntable::turn(double right_deg, double up_deg) {
  right_deg_ = std::remainder(right_deg_ + right_deg, 360.0);
  up_deg_ = std::clamp(up_deg_ + up_deg, -90.0, 90.0);
  aim();
}

void Turntable::aim() {
  const Vec3 eye = Eigen::AngleAxisd(right_deg_ * kDegree, up_) * front_;
  const Vec3 right = up_.cross(eye);
  const Mat3 tilt = Eigen::AngleAxisd(-up_deg_ * kDegree, right).toRotationMatrix();
  view_.rows.row(0) = right;
  view_.rows.row(1) = tilt * up_;
  view_.rows.row(2) = tilt * eye;
}

void Turntable::pan(double right_pixels, double down_pixels) {
  fitted_m_.resize(0, 3);
  view_.centre_m -= view_.rows.transpose() * Vec3(right_pixels, -down_pixels, 0.0) / view_.pixels_per_m;
}

void Turntable::zoom(double factor) {
  constexpr double kFarthest = 50.0, kNearest = 200000.0;  // pixels a metre
  fitted_m_.resize(0, 3);
  view_.pixels_per_m = std::clamp(view_.pixels_per_m * factor, kFarthest, kNearest);
}

Vec3 Turntable::point_at(double x, double y) const {
  return view_.centre_m + view_.rows.transpose() * Vec3(x - 0.5 * view_.width, 0.5 * view_.height - y, 0.0) /
                              view_.pixels_per_m;
}

}  // namespace wrapgauge
