#pragma once
// One DXF entity as a traced shape; dxflib reads the entity.

#include <Eigen/Geometry>

#include "model/io/readers/dxf_groups.hpp"
#include "model/layout/drawing.hpp"

namespace wrapgauge {

// LINE, LWPOLYLINE, POLYLINE, ARC, CIRCLE, ELLIPSE, SPLINE, POINT.
bool is_dxf_shape(std::string_view type);

// `entity`: checked by dxf_number_fault; `vertices`: those that follow a POLYLINE. `to_m`: coordinates
// to metres. z is dropped. Fills paths and circle, or fault; stroke width and remark of a polyline that has a
// width. A filled disc drawn as a wide polyline is the circle of its rim. Counts that are left out are
// counted. Returns the number of points that were traced, those of a shape that is then refused too.
std::size_t trace_dxf_entity(const DxfEntity& entity, const std::vector<DxfEntity>& vertices,
                             const Eigen::Affine2d& to_m, DrawnShape& shape);

// TEXT, MTEXT and ATTRIB: where it begins or is centred, and its plain words.
bool is_dxf_text(std::string_view type);
DrawnWords dxf_words(const DxfEntity& entity, const Eigen::Affine2d& to_m);

// A SPLINE that is given only by points on it (dxf_fit_spline.hpp).
bool is_dxf_fit_spline(const DxfEntity& entity);

}  // namespace wrapgauge
