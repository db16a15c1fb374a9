#include "model/inflation/closure.hpp"

#include <gtest/gtest.h>

#include <numeric>

#include "tests/inflation/small_devices.hpp"

namespace wrapgauge {
namespace {

constexpr double kStitch_pa = 1e7;

// A near line with vertices at 0, 10 and 30 mm, a far one at 0, 4, 15 and 30 mm.
FlatMesh two_lines() {
  FlatMesh flat;
  flat.vertices_m.resize(7, 2);
  flat.vertices_m << 0, 0, 0, 0.010, 0, 0.030, 0.1, 0, 0.1, 0.004, 0.1, 0.015, 0.1, 0.030;
  flat.closing_from = {0, 1, 2};
  flat.closing_to = {3, 4, 5, 6};
  return flat;
}

// Of a field that is linear along the lines, the far vertex has what the near line has at its height.
TEST(Closure, AStitchTiesAFarVertexToThePlaceAtItsHeightOnTheNearLine) {
  const FlatMesh flat = two_lines();
  std::vector<int> node(7);
  std::iota(node.begin(), node.end(), 0);
  const std::vector<Stitch> stitches = closure_stitches(flat, node, kStitch_pa);
  ASSERT_EQ(stitches.size(), 4u);
  for (std::size_t k = 0; k < stitches.size(); ++k) {
    double sum = 0.0, height = 0.0;
    for (int a = 0; a < 3; ++a) {
      sum += stitches[k].weights(a);
      height +=
          stitches[k].weights(a) * flat.vertices_m(stitches[k].stencil.nodes[static_cast<std::size_t>(a)], 1);
    }
    EXPECT_EQ(stitches[k].stencil.nodes[0], flat.closing_to[k]);
    EXPECT_NEAR(sum, 0.0, 1e-12) << "stitch " << k;
    EXPECT_NEAR(height, 0.0, 1e-12) << "stitch " << k;
  }
}

// Each stands for its share of the line, so that a finer line is no stiffer.
TEST(Closure, TheStitchesTogetherAreAsStiffAsTheLineIsLong) {
  std::vector<int> node(7);
  std::iota(node.begin(), node.end(), 0);
  const std::vector<Stitch> stitches = closure_stitches(two_lines(), node, kStitch_pa);
  double sum = 0.0;
  for (const Stitch& stitch : stitches) sum += stitch.stiffness_n_per_m;
  ASSERT_EQ(stitches.size(), 4u);
  EXPECT_NEAR(sum / stitches[2].stiffness_n_per_m, 0.030 / 0.013, 1e-9);  // its share: from 9.5 to 22.5 mm
}

}  // namespace
}  // namespace wrapgauge
