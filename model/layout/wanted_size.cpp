#include "model/layout/wanted_size.hpp"

#include <algorithm>

namespace wrapgauge {
namespace {

constexpr double kGrowth = 0.35;         // wanted edge length may grow by this a metre of distance
constexpr double kShortLineGrace = 1.4;  // edges beside a short drawn line may be this much longer than it
constexpr double kSmallestShare = 1.0 / 30.0;  // of the wanted edge: no place asks for less

}  // namespace

SizeField wanted_size(const Layout& layout, const LayoutLines& lines, const FlatMeshOptions& options) {
  const double edge = options.edge.si(), seam_edge = std::min(edge, options.seam_edge.si());
  std::vector<SizeSource> sources;
  const auto add = [&](const Vec2& a, const Vec2& b, double size, double band) {
    if (size < edge) sources.push_back({a, b, std::max(size, kSmallestShare * edge), band});
  };
  for (std::size_t i = 0; i < lines.graph.segments.size(); ++i) {
    const Vec2& a = lines.graph.points_m[lines.graph.segments[i][0]];
    const Vec2& b = lines.graph.points_m[lines.graph.segments[i][1]];
    const auto& [left, right] = lines.sides[i];
    add(a, b, kShortLineGrace * (b - a).norm(), 0.0);
    if ((left && is_open(*left)) != (right && is_open(*right))) add(a, b, seam_edge, options.seam_band.si());
    for (const auto& side : {left, right})
      if (side && side->kind == RegionKind::kChannel) {
        const double width = layout.channels[side->part].width.si();
        // Two elements across, on a coarse mesh as long as the channel is wide: they open in their middle all
        // the same (filled_lines.hpp).
        add(a, b, std::clamp(0.5 * edge, 0.5 * width, width), 0.5 * width);
      }
  }
  return SizeField(bounds(lines.graph.points_m), edge, kGrowth, sources);
}

}  // namespace wrapgauge
