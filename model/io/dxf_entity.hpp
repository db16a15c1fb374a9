#pragma once
// One DXF entity as a traced shape; dxflib reads the entity.

#include "model/io/dxf_groups.hpp"
#include "model/layout/drawing.hpp"

namespace wrapgauge {

// LINE, LWPOLYLINE, POLYLINE, ARC, CIRCLE, ELLIPSE, SPLINE, POINT.
bool is_dxf_shape(std::string_view type);

// `entity`: checked by dxf_number_fault; `vertices`: those that follow a POLYLINE. `unit`: of a coordinate. z
// is dropped. Fills paths and circle, or fault.
void trace_dxf_entity(const DxfEntity& entity, const std::vector<DxfEntity>& vertices, Length unit,
                      DrawnShape& shape);

}  // namespace wrapgauge
