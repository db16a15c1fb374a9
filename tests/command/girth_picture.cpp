#include "app/picture/girth_picture.hpp"

#include <gtest/gtest.h>

#include "app/picture/picture_program.hpp"
#include "bodyforms/form.hpp"

namespace wrapgauge {
namespace {

bool is_girth_line(QRgb pixel) {
  return std::abs(qRed(pixel) - 92) < 12 && std::abs(qGreen(pixel) - 40) < 12 &&
         std::abs(qBlue(pixel) - 120) < 12;
}

TEST(GirthPicture, DrawsALineAcrossBothViewsAtEachGirth) {
  ASSERT_TRUE(start_picture_program().ok());
  const auto body = make_form("cylinder", {});
  ASSERT_TRUE(body.ok());
  const Length middle = 0.5 * body_length(*body);
  const QImage without = girth_picture(*body, {}, "cylinder", "form");
  const QImage with = girth_picture(*body, {{"waist", girth_at(*body, middle)}}, "cylinder", "form");
  const auto line_pixels = [](const QImage& image, int x) {
    int count = 0;
    for (int y = 120; y < 800; ++y) count += is_girth_line(image.pixel(x, y));
    return count;
  };
  for (const int x : {280, 1120}) {  // middle of each view
    EXPECT_EQ(line_pixels(without, x), 0);
    EXPECT_GE(line_pixels(with, x), 1);
    EXPECT_LE(line_pixels(with, x), 6);
  }
}

TEST(GirthPicture, SameBodySamePicture) {
  ASSERT_TRUE(start_picture_program().ok());
  const auto body = make_form("forearm", {});
  ASSERT_TRUE(body.ok());
  std::vector<GirthMark> marks;
  for (const Girth& girth : girth_profile(*body)) marks.push_back({"", girth});
  EXPECT_EQ(girth_picture(*body, marks, "a", "b"), girth_picture(*body, marks, "a", "b"));
}

}  // namespace
}  // namespace wrapgauge
