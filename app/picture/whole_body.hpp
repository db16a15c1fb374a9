#pragma once
// The whole body as small as it must be, with the layout where it sits.

#include <QPainter>

#include "app/picture/skin_surface.hpp"

namespace wrapgauge {

// The layout laid onto the skin. What it refers to outlives it.
struct LaidLayout {
  const Points3 &points_m, &normals;  // a vertex each
  const Triangles& triangles;
  const Eigen::VectorXd& pressure_pa;  // a vertex each; empty: none
  Points3 rim_m;                       // from point to point: rows 2k and 2k + 1
};

// How wide and high a body is in a view with these rows (limb_view.hpp), in metres.
QSizeF seen_size_m(const SkinSurface& skin, const Mat3& rows);

// Fills `area` one way. `top_pa`: the pressure of the darkest colour. As sharp as the painter's device is.
void draw_whole_body(const SkinSurface& skin, const LaidLayout& worn, const Mat3& rows, double top_pa,
                     const QRectF& area, QPainter& painter);

}  // namespace wrapgauge
