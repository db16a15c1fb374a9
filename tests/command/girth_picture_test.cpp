#include "app/picture/girth_picture.hpp"

#include <gtest/gtest.h>

#include "app/picture/legend.hpp"
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

int ink_pixels(const QImage& image, const QRect& part) {
  int count = 0;
  for (int y = part.top(); y <= part.bottom(); ++y)
    for (int x = part.left(); x <= part.right(); ++x) count += qGray(image.pixel(x, y)) < 100;
  return count;
}

TEST(GirthPicture, NamesSitesThatNeitherViewShows) {
  ASSERT_TRUE(start_picture_program().ok());
  const auto made = make_form("cylinder", {});
  ASSERT_TRUE(made.ok());
  Body body = *made;
  const Points3& skin = body.surface.vertices_m;
  Eigen::Index between = 0;  // both views
  (skin.col(0) + skin.col(1) - (skin.col(2).array() - 0.1).abs().matrix()).maxCoeff(&between);
  const Vec3 front = skin.row(between);
  const QRect caption(30, kPictureHeight - 70, kPictureWidth - 60, 60);
  body.bony_sites = {{"shown 1", front, 10.0 * mm, 3.0 * mm}};
  const int shown = ink_pixels(girth_picture(body, {}, "a", "b"), caption);
  body.bony_sites.push_back({"shown 2", front.cwiseProduct(Vec3(-1, -1, 1)), 10.0 * mm, 3.0 * mm});
  EXPECT_EQ(ink_pixels(girth_picture(body, {}, "a", "b"), caption), shown);  // of one row
  body.bony_sites.back().name = "turned away";
  EXPECT_GT(ink_pixels(girth_picture(body, {}, "a", "b"), caption), shown + 200);
}

TEST(MapLabels, AtTheSideOfAPictureAreWhole) {
  ASSERT_TRUE(start_picture_program().ok());
  const auto pale_pixels = [](double x) {
    QImage image(300, 60, QImage::Format_RGB32);
    image.fill(Qt::black);
    QPainter painter(&image);
    MapLabels(painter).put_where_free({QPointF(x, 30.0)}, "a long name of a site", 13);
    painter.end();
    return 300 * 60 - ink_pixels(image, image.rect());
  };
  EXPECT_NEAR(pale_pixels(0.0), pale_pixels(150.0), 40);
  EXPECT_NEAR(pale_pixels(300.0), pale_pixels(150.0), 40);
}

}  // namespace
}  // namespace wrapgauge
