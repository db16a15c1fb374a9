#include "model/plan/body_label.hpp"

#include <gtest/gtest.h>
#include <unistd.h>

#include "model/core/file.hpp"

namespace wrapgauge {
namespace {

class BodyLabelFile : public testing::Test {
 protected:
  void SetUp() override {
    folder_ = std::filesystem::temp_directory_path() / ("wrapgauge-label-" + std::to_string(getpid()));
    std::filesystem::create_directories(folder_);
  }
  void TearDown() override { std::filesystem::remove_all(folder_); }

  std::string refusal(const std::string& text) const {
    EXPECT_TRUE(write_file_atomically(label_file_of(mesh()), text).ok());
    const auto read = read_label(mesh(), 12);
    return read ? "" : read.problem().message;
  }
  std::filesystem::path mesh() const { return folder_ / "arm.obj"; }

  std::filesystem::path folder_;
};

const BodyLabel kLabel{
    BodyPart::kForearm,
    BodySide::kLeft,
    Vec3(0.6, 0.0, 0.8),
    Vec3(0.0, 1.0, 0.0),
    {{"styloid", {0.0301, -0.02, 0.1}, 12.0 * mm, 4.0 * mm, SiteKind::kNerve, "from memory", "mind it"}},
    12};

TEST_F(BodyLabelFile, ComesBackAsItWasWritten) {
  ASSERT_TRUE(write_label(kLabel, label_file_of(mesh())).ok());
  EXPECT_EQ(label_file_of(mesh()).filename(), "arm.obj.label.json");
  const auto read = read_label(mesh(), 12);
  ASSERT_TRUE(read.ok() && *read) << read.problem().message;
  EXPECT_EQ((*read)->part, kLabel.part);
  EXPECT_EQ((*read)->side, kLabel.side);
  EXPECT_TRUE((*read)->axis_direction->isApprox(*kLabel.axis_direction));
  EXPECT_TRUE((*read)->front->isApprox(*kLabel.front));
  ASSERT_EQ((*read)->sites.size(), 1U);
  EXPECT_TRUE((*read)->sites[0].point_m.isApprox(kLabel.sites[0].point_m));
  EXPECT_EQ((*read)->sites[0].kind, SiteKind::kNerve);
  EXPECT_EQ((*read)->sites[0].words, "mind it");
}

TEST_F(BodyLabelFile, OfNothingIsNoneAndOfAnotherMeshIsRefused) {
  const auto none = read_label(mesh(), 12);
  ASSERT_TRUE(none.ok());
  EXPECT_FALSE(*none);
  ASSERT_TRUE(write_label(kLabel, label_file_of(mesh())).ok());
  const auto other = read_label(mesh(), 14);
  ASSERT_FALSE(other.ok());
  EXPECT_NE(other.problem().message.find("written for a mesh of 12 triangles, but arm.obj has 14"),
            std::string::npos);
}

TEST_F(BodyLabelFile, SaysWhatIsWrongWithIt) {
  const std::string start = R"({"wrapgauge-body-label": 1, "triangles": 12, )";
  EXPECT_NE(refusal(start + R"("part": "tail"})").find("'tail' is not known"), std::string::npos);
  EXPECT_NE(refusal(start + R"("front": [0, 0, 0]})").find("front has no length"), std::string::npos);
  EXPECT_NE(refusal(start + R"("bony_sites": [{"name": "a"}]})").find("point_mm"), std::string::npos);
  EXPECT_NE(refusal(start + R"("colour": "red"})").find("colour"), std::string::npos);
}

TEST_F(BodyLabelFile, AfterStepsThatMoveTheBodyOnlyPartAndSideHold) {
  EXPECT_EQ(label_after(kLabel, {DropCrumbs{}, Smooth{}}).sites.size(), 1U);
  const BodyLabel posed = label_after(kLabel, {Smooth{}, PoseLimb{}});
  EXPECT_EQ(posed.part, BodyPart::kForearm);
  EXPECT_EQ(posed.side, BodySide::kLeft);
  EXPECT_TRUE(posed.sites.empty() && !posed.front && !posed.axis_direction);
  EXPECT_EQ(label_after(kLabel, {MirrorLimb{}}).side, BodySide::kRight);
  EXPECT_TRUE(label_after(kLabel, {CutLimb{10.0 * mm, 50.0 * mm}}).sites.empty());
}

}  // namespace
}  // namespace wrapgauge
