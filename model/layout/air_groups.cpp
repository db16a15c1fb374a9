#include "model/layout/air_groups.hpp"

#include <algorithm>
#include <numeric>

#include "model/layout/part_words.hpp"

namespace wrapgauge {
namespace {

constexpr double kInletReach = 1e-3;  // an inlet drawn on a chamber's edge still feeds it

// Open regions as numbers: chambers first, then channels.
class OpenRegions {
 public:
  explicit OpenRegions(const LayoutShapes& shapes)
      : chambers_(static_cast<int>(shapes.chambers.size())),
        parent_(shapes.chambers.size() + shapes.channels_m.size()) {
    std::iota(parent_.begin(), parent_.end(), 0);
  }
  int number(const FlatRegion& region) const {
    return region.kind == RegionKind::kChamber ? region.part : chambers_ + region.part;
  }
  int root(int i) const {
    while (parent_[i] != i) i = parent_[i];
    return i;
  }
  void join(int a, int b) {
    const int ra = root(a), rb = root(b);
    parent_[std::max(ra, rb)] = std::min(ra, rb);
  }
  int count() const { return static_cast<int>(parent_.size()); }

 private:
  int chambers_;
  std::vector<int> parent_;
};

// Channels that border nothing open may lie wholly inside a chamber.
void join_covered_channels(const Layout& layout, const LayoutShapes& shapes, OpenRegions& open) {
  for (std::size_t i = 0; i < layout.channels.size(); ++i)
    for (const Vec2& p : layout.channels[i].path_m)
      if (const auto region = region_at(shapes, p); region && region->kind == RegionKind::kChamber)
        if (contains(shapes.channels_m[i], p) ||
            distance_to_loop_m(shapes.channels_m[i], p) < kDrawingTolerance)
          open.join(open.number({RegionKind::kChannel, static_cast<int>(i)}), open.number(*region));
}

GroupId group_of(const AirGroups& groups, const FlatRegion& region) {
  return (region.kind == RegionKind::kChamber ? groups.chamber_group : groups.channel_group)[region.part];
}

Problem feeds_nothing(const Inlet& inlet, int index) {
  return bad_input(
      Phrase::worded(
          "Inlet '%1' at %2 feeds nothing: move it into a chamber or channel, or within 1 mm of one.",
          {name_of(inlet.name), at_mm(inlet.point_m)}),
      {{ProblemPlace::Kind::kInlet, index}});
}

Problem feeds_no_chamber(const Inlet& inlet, int index) {
  return bad_input(
      Phrase::worded(
          "Inlet '%1' at %2 feeds no chamber, only a channel: lengthen the channel into a chamber, "
          "or move the inlet into one.",
          {name_of(inlet.name), at_mm(inlet.point_m)}),
      {{ProblemPlace::Kind::kInlet, index}});
}

Problem feeds_too(const Inlet& first, const Inlet& second, int index, const Phrase& part) {
  return bad_input(Phrase::worded("Inlets '%1' and '%2' both feed %3; keep one of them.",
                                  {name_of(first.name), name_of(second.name), part}),
                   {{ProblemPlace::Kind::kInlet, index}});
}

Phrase unreached(const std::string& chamber) {
  return Phrase::worded(
      "No inlet reaches chamber '%1'; add an inlet, or a channel from a chamber that has one.",
      {name_of(chamber)});
}

}  // namespace

std::optional<FlatRegion> region_fed_by(const LayoutShapes& shapes, const Vec2& point) {
  if (const auto region = region_at(shapes, point); region && is_open(*region)) return region;
  std::optional<FlatRegion> nearest;
  double best = kInletReach;
  for (const auto& [loop, region, place] : open_loops(shapes)) {
    const double distance = contains(*loop, point) ? 0.0 : distance_to_loop_m(*loop, point);
    if (distance > best || (nearest && distance == best)) continue;
    best = distance;
    nearest = region;
  }
  return nearest;
}

AirGroups air_groups(const Layout& layout, const LayoutShapes& shapes,
                     const std::vector<RegionSides>& neighbours) {
  OpenRegions open(shapes);
  for (const auto& [a, b] : neighbours)
    if (a && b && is_open(*a) && is_open(*b)) open.join(open.number(*a), open.number(*b));
  join_covered_channels(layout, shapes, open);
  std::vector<int> group_of_root(open.count(), -1);
  AirGroups groups;
  for (int i = 0; i < open.count(); ++i) {
    int& group = group_of_root[open.root(i)];
    if (group < 0) group = groups.count++;
    auto& list = i < static_cast<int>(layout.chambers.size()) ? groups.chamber_group : groups.channel_group;
    list.push_back(GroupId{group});
  }
  return groups;
}

bool has_chamber(const AirGroups& groups, GroupId group) {
  return std::ranges::find(groups.chamber_group, group) != groups.chamber_group.end();
}

FedGroups feed_groups(const Layout& layout, const LayoutShapes& shapes, const AirGroups& groups) {
  FedGroups out;
  out.fed_by.resize(groups.count);
  for (int i = 0; i < static_cast<int>(layout.inlets.size()); ++i) {
    const Inlet& inlet = layout.inlets[i];
    const auto region = region_fed_by(shapes, inlet.point_m);
    if (!region) {
      out.problems.push_back(feeds_nothing(inlet, i));
      continue;
    }
    const GroupId group = group_of(groups, *region);
    if (!has_chamber(groups, group)) out.problems.push_back(feeds_no_chamber(inlet, i));
    auto& feeder = out.fed_by[index_of(group)];
    if (feeder)
      out.problems.push_back(
          feeds_too(layout.inlets[index_of(*feeder)], inlet, i, part_name(layout, *region)));
    else
      feeder = InletId{i};
  }
  for (int i = 0; i < static_cast<int>(layout.chambers.size()); ++i)
    if (!out.fed_by[index_of(groups.chamber_group[i])])
      out.problems.push_back(
          bad_input(unreached(layout.chambers[i].name), {{ProblemPlace::Kind::kChamber, i}}));
  return out;
}

bool says_unreached(const Problem& problem) {
  return problem.phrase && problem.phrase->text == unreached({}).text;
}

std::optional<Problem> assign_groups(const Layout& layout, const LayoutShapes& shapes,
                                     const std::vector<RegionSides>& neighbours, FlatMesh& mesh) {
  const AirGroups groups = air_groups(layout, shapes, neighbours);
  const FedGroups fed = feed_groups(layout, shapes, groups);
  if (!fed.problems.empty()) return fed.problems.front();
  for (int i = 0; i < static_cast<int>(layout.channels.size()); ++i)
    if (!fed.fed_by[index_of(groups.channel_group[i])])
      return bad_input(Phrase::worded("Channel '%1' joins no chamber and no inlet; lengthen it or remove it.",
                                      {name_of(layout.channels[i].name)}),
                       {{ProblemPlace::Kind::kChannel, i}});
  mesh.chamber_group = groups.chamber_group;
  mesh.channel_group = groups.channel_group;
  for (const auto& inlet : fed.fed_by) mesh.group_inlet.push_back(*inlet);
  return std::nullopt;
}

}  // namespace wrapgauge
