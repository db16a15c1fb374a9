#include "model/body/pieces.hpp"

#include <gtest/gtest.h>

#include "model/body/check_body.hpp"
#include "tests/body/scan_like.hpp"

namespace wrapgauge {
namespace {

RawMesh together(const RawMesh& a, RawMesh b, double scale, const Vec3& by) {
  b.vertices *= scale;
  b.vertices.rowwise() += by.transpose();
  RawMesh both;
  both.vertices.resize(a.vertices.rows() + b.vertices.rows(), 3);
  both.vertices << a.vertices, b.vertices;
  both.faces.resize(a.faces.rows() + b.faces.rows(), 3);
  both.faces << a.faces, (b.faces.array() + static_cast<int>(a.vertices.rows())).matrix();
  return both;
}

TEST(Pieces, AreToldApartLargestFirst) {
  const RawMesh limb = shapes::egg_limb();
  const auto pieces = pieces_of(together(limb, limb, 0.8, Vec3(0, 300, 0)));
  ASSERT_EQ(pieces.size(), 2U);
  EXPECT_NEAR(pieces[0].share_of_area, 1.0 / (1.0 + 0.64), 1e-9);
  EXPECT_EQ(pieces[0].mesh.faces.rows(), limb.faces.rows());
  EXPECT_TRUE(pieces[1].mesh.vertices.colwise().minCoeff().isApprox(
      (0.8 * limb.vertices.colwise().minCoeff()) + Vec3(0, 300, 0).transpose()));
  EXPECT_EQ(pieces_of(together(limb, limb, 0.05, Vec3(0, 300, 0))).size(), 1U) << "a crumb is no piece";
}

TEST(Pieces, TwoOfSimilarSizeAreAskedAboutAndCrumbsAreNot) {
  const RawMesh limb = shapes::egg_limb();
  const BodyOptions options{"legs", LengthUnit::kMillimetre, std::nullopt};
  const auto two = check_body(together(limb, limb, 0.9, Vec3(0, 300, 0)), options);
  ASSERT_FALSE(two.ok());
  EXPECT_NE(two.problem().message.find("55 % and 45 % of the area, so it may be two limbs"),
            std::string::npos)
      << two.problem().message;
  EXPECT_TRUE(check_body(together(limb, limb, 0.3, Vec3(0, 300, 0)), options).ok());
}

}  // namespace
}  // namespace wrapgauge
