#include "model/geometry/box_tree.hpp"

#include <gtest/gtest.h>

#include <random>
#include <set>
#include <utility>

namespace wrapgauge {
namespace {

// Triangles anywhere, of sizes from a hundredth of the room to all of it.
TriangleMesh scattered_faces(int faces, const Vec3& around_m) {
  std::mt19937 random(4711);
  std::uniform_real_distribution<double> share(0.0, 1.0);
  TriangleMesh mesh;
  mesh.vertices_m.resize(3 * faces, 3);
  mesh.faces.resize(faces, 3);
  for (int f = 0; f < faces; ++f) {
    const double size = std::pow(10.0, -2.0 * share(random));
    const Vec3 middle = around_m + Vec3(share(random), share(random), share(random));
    for (int k = 0; k < 3; ++k) {
      mesh.vertices_m.row(3 * f + k) = middle + size * Vec3(share(random), share(random), share(random));
      mesh.faces(f, k) = 3 * f + k;
    }
  }
  return mesh;
}

bool boxes_meet(const TriangleMesh& mesh, int f, int g) {
  for (int k = 0; k < 3; ++k) {
    const auto of = [&](int face) {
      const auto corner = [&](int c) { return mesh.vertices_m(mesh.faces(face, c), k); };
      return std::minmax({corner(0), corner(1), corner(2)});
    };
    const auto [f_low, f_high] = of(f);
    const auto [g_low, g_high] = of(g);
    if (f_high < g_low || g_high < f_low) return false;
  }
  return true;
}

using Pairs = std::multiset<std::pair<int, int>>;

Pairs pairs_of(const TriangleMesh& mesh) {
  Pairs found;
  BoxTree(mesh).meeting_pairs([&](int f, int g) {
    found.emplace(std::min(f, g), std::max(f, g));
    return true;
  });
  return found;
}

TEST(BoxTree, GivesEveryPairOfMeetingBoxesOnceAndFewOthers) {
  for (const int faces : {1, 2, 8, 9, 64, 65, 700})
    for (const Vec3& around_m : {Vec3(0, 0, 0), Vec3(-3e5, 7e5, 1e6)}) {
      const TriangleMesh mesh = scattered_faces(faces, around_m);
      const Pairs found = pairs_of(mesh);
      std::size_t meeting = 0;
      for (int f = 0; f < faces; ++f)
        for (int g = f + 1; g < faces; ++g) {
          meeting += boxes_meet(mesh, f, g);
          ASSERT_LE(found.count({f, g}), 1u) << f << " " << g;
          EXPECT_TRUE(!boxes_meet(mesh, f, g) || found.count({f, g}) == 1)
              << f << " " << g << " of " << faces;
        }
      EXPECT_LE(found.size(), meeting + meeting / 100);
      for (const auto& [f, g] : found) EXPECT_LT(f, g);
    }
}

TEST(BoxTree, StopsWhenItIsTold) {
  const TriangleMesh mesh = scattered_faces(700, Vec3::Zero());
  int visits = 0;
  BoxTree(mesh).meeting_pairs([&](int, int) { return ++visits < 5; });
  EXPECT_EQ(visits, 5);
}

}  // namespace
}  // namespace wrapgauge
