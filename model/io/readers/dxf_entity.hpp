#pragma once
// One DXF entity as a traced shape; dxflib reads the entity.

#include <Eigen/Geometry>

#include "model/io/readers/dxf_groups.hpp"
#include "model/layout/drawing.hpp"

namespace wrapgauge {

// LINE, LWPOLYLINE, POLYLINE, ARC, CIRCLE, ELLIPSE, SPLINE, POINT.
bool is_dxf_shape(std::string_view type);

// `entity`: checked by dxf_number_fault; `vertices`: those that follow a POLYLINE. `to_m`: coordinates
// to metres. z is dropped. Fills paths and circle, or fault.
void trace_dxf_entity(const DxfEntity& entity, const std::vector<DxfEntity>& vertices,
                      const Eigen::Affine2d& to_m, DrawnShape& shape);

// A SPLINE that is given only by points on it (dxf_fit_spline.hpp).
bool is_dxf_fit_spline(const DxfEntity& entity);

}  // namespace wrapgauge
