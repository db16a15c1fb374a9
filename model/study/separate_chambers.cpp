#include "model/study/separate_chambers.hpp"

#include <algorithm>

#include "model/layout/layout_shapes.hpp"

namespace wrapgauge {
namespace {

// The point of a grid over the chamber that lies farthest from its walls and inset seams.
Result<Vec2> place_for_inlet(const LayoutShapes::OpenChamber& chamber, const std::string& name) {
  constexpr int kGrid = 24;
  const Bounds2 box = bounds(chamber.boundary_m);
  double best = 0.0;
  Vec2 place = Vec2::Zero();
  for (int row = 1; row < kGrid; ++row)
    for (int column = 1; column < kGrid; ++column) {
      const Vec2 share(static_cast<double>(column) / kGrid, static_cast<double>(row) / kGrid);
      const Vec2 point = box.low + share.cwiseProduct(box.high - box.low);
      if (!contains(chamber.boundary_m, point)) continue;
      double room = distance_to_loop_m(chamber.boundary_m, point);
      for (const Polygon& inset : chamber.insets_m)
        room = contains(inset, point) ? 0.0 : std::min(room, distance_to_loop_m(inset, point));
      if (room > best) best = room, place = point;
    }
  if (best > 0.0) return place;
  return bad_input(Phrase::worded("chamber '%1' has no room for an inlet of its own.", {name_of(name)}));
}

bool among(const std::vector<GroupId>& groups, GroupId group) {
  return std::find(groups.begin(), groups.end(), group) != groups.end();
}

}  // namespace

Result<SeparateChambers> separate_chambers(const Plan& plan, const FlatMesh& flat,
                                           const std::vector<GroupId>& groups) {
  SeparateChambers out{plan, {}};
  Layout& layout = out.plan.layout;
  layout.channels.clear();
  for (std::size_t c = 0; c < plan.layout.channels.size(); ++c) {
    if (among(groups, flat.channel_group[c]))
      out.closed_channels.push_back(plan.layout.channels[c].name);
    else
      layout.channels.push_back(plan.layout.channels[c]);
  }
  for (const GroupId group : groups) {
    const std::string& inlet = plan.layout.inlets[index_of(flat.group_inlet[index_of(group)])].name;
    std::erase_if(layout.inlets, [&](const Inlet& each) { return each.name == inlet; });
    std::erase_if(out.plan.inflation, [&](const InletProgram& each) { return each.inlet == inlet; });
  }
  const LayoutShapes shapes = layout_shapes(plan.layout, 1e-3);
  for (std::size_t c = 0; c < plan.layout.chambers.size(); ++c) {
    if (!among(groups, flat.chamber_group[c])) continue;
    const std::string& chamber = plan.layout.chambers[c].name;
    const auto place = place_for_inlet(shapes.chambers[c], chamber);
    if (!place) return place.problem();
    layout.inlets.push_back({"inlet of " + chamber, *place});
    InletProgram program;
    program.inlet = layout.inlets.back().name;
    program.target = Pressure();
    out.plan.inflation.push_back(program);
  }
  return out;
}

}  // namespace wrapgauge
