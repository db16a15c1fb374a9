#pragma once
// Looking at a body from around: its axis stays upright on the screen, so that proximal is always up.

#include "app/picture/limb_view.hpp"
#include "model/body/body.hpp"

namespace wrapgauge {

enum class ViewSide { kFront, kBack, kProximal, kDistal };

class Turntable {
 public:
  // `front`: what is looked at from the front; made perpendicular to the axis.
  void set_body(const Axis& axis, const Vec3& front);
  // `covered_right`: pixels on the right that other things stand over.
  void set_size(int width, int height, int covered_right = 0);
  // All points in sight from the present side, with a margin. Until the next zoom or pan it stays so when the
  // size changes.
  void fit(const Points3& points_m);

  void look_from(ViewSide side);
  void face(const Vec3& outward);  // the eye comes round to where this points; what is the front stays
  void turn(double right_deg, double up_deg);  // the eye goes right and up; up stops at the ends of the axis
  void pan(double right_pixels, double down_pixels);
  void zoom(double factor);

  const LimbView& view() const { return view_; }
  Vec3 towards_eye() const { return view_.rows.row(2); }
  // The point of the plane through the view's centre that is seen at a pixel.
  Vec3 point_at(double x, double y) const;

 private:
  void aim();
  void refit();

  Vec3 up_ = Vec3::UnitZ(), front_ = Vec3::UnitX();
  double right_deg_ = 0.0, up_deg_ = 0.0;
  Points3 fitted_m_;  // empty: the user has zoomed or panned
  int covered_right_ = 0;
  LimbView view_;
};

}  // namespace wrapgauge
