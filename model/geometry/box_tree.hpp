#pragma once
// Which faces of a mesh have boxes that meet.

#include <algorithm>
#include <array>
#include <vector>

#include "model/geometry/triangle_mesh.hpp"

namespace wrapgauge {

// Boxes of all faces in the order of a curve that keeps near ones together, boxes of eight of these each, of
// eight of those, up to a few. Built in O(n log n); some 32 bytes a face.
class BoxTree {
 public:
  // At most a hundred million faces, at least one.
  explicit BoxTree(const TriangleMesh& mesh);

  // Calls visit(face, other) once for every pair of faces whose boxes may meet, in an order that only the
  // mesh decides, until it returns false. Boxes are a little too large: some pairs come that only nearly
  // meet.
  template <class Visit>
  void meeting_pairs(const Visit& visit) const {
    for (std::size_t group = 0; group < levels_[1].size(); ++group)
      if (!pairs_from(group, visit)) return;
  }

 private:
  static constexpr std::size_t kGroup = 8, kDeepest = 9;  // 8^9 faces: more than are read
  struct Box {
    std::array<float, 3> low, high;
  };
  static bool meet(const Box& a, const Box& b) {
    return a.low[0] <= b.high[0] && b.low[0] <= a.high[0] && a.low[1] <= b.high[1] && b.low[1] <= a.high[1] &&
           a.low[2] <= b.high[2] && b.low[2] <= a.high[2];
  }
  // Pairs of a group of faces with itself and with later groups.
  template <class Visit>
  bool pairs_from(std::size_t group, const Visit& visit) const {
    struct Run {
      std::size_t level, first;
    };
    std::array<Run, kDeepest * kGroup> open;
    std::size_t count = 0;
    open[count++] = {levels_.size() - 1, 0};
    while (count > 0) {
      const Run run = open[--count];
      const std::vector<Box>& boxes = levels_[run.level];
      const std::size_t end = std::min(run.first + kGroup, boxes.size());
      for (std::size_t i = run.first; i < end; ++i) {
        const std::size_t last_group = ((i + 1) << (3 * (run.level - 1))) - 1;
        if (last_group < group || !meet(boxes[i], levels_[1][group])) continue;
        if (run.level > 1)
          open[count++] = {run.level - 1, i * kGroup};
        else if (!pairs_between(group, i, visit))
          return false;
      }
    }
    return true;
  }
  template <class Visit>
  bool pairs_between(std::size_t group, std::size_t other, const Visit& visit) const {
    const std::vector<Box>& boxes = levels_[0];
    const std::size_t end = std::min((group + 1) * kGroup, boxes.size()),
                      other_end = std::min((other + 1) * kGroup, boxes.size());
    for (std::size_t i = group * kGroup; i < end; ++i) {
      if (!meet(boxes[i], levels_[1][other])) continue;
      for (std::size_t j = group == other ? i + 1 : other * kGroup; j < other_end; ++j)
        if (meet(boxes[i], boxes[j]) && !visit(face_[i], face_[j])) return false;
    }
    return true;
  }

  static Box box_of(const TriangleMesh& mesh, int face, const Vec3& near_m);
  static Box around(const std::vector<Box>& boxes, std::size_t first);

  std::vector<int> face_;                 // along the curve
  std::vector<std::vector<Box>> levels_;  // of faces, of groups, ... of at most eight groups
};

}  // namespace wrapgauge
