#pragma once
// The wanted edge length at each place of a layout's flat mesh.

#include "model/geometry/size_field.hpp"
#include "model/layout/layout_lines.hpp"

namespace wrapgauge {

// `options.edge`, less beside seams (as the options say), beside channels (two edges across) and beside short
// lines; it grows by 0.35 a metre from there and is nowhere below a thirtieth of `options.edge`.
SizeField wanted_size(const Layout& layout, const LayoutLines& lines, const FlatMeshOptions& options);

}  // namespace wrapgauge
