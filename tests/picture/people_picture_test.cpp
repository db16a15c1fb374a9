#include "app/picture/people_picture.hpp"

#include <gtest/gtest.h>

#include "app/picture/picture_program.hpp"
#include "app/picture/png.hpp"

namespace wrapgauge {
namespace {

PersonRow person_row(const std::string& id, double girth_mm, double share, PersonVerdict verdict) {
  PersonRow row{id, {}, verdict};
  row.answer.girth = girth_mm * mm;
  row.answer.share = share;
  return row;
}

People three_people() {
  People people;
  people.plan = "band";
  people.people = {person_row("a", 240.0, 0.8, PersonVerdict::kWithin),
                   person_row("b", 270.0, 0.9, PersonVerdict::kWithin),
                   person_row("c", 300.0, 1.4, PersonVerdict::kAbove)};
  people.accepted = accepted_girths(people.people);
  return people;
}

int pixels_of(const QImage& image, QRgb colour) {
  int count = 0;
  for (int y = 0; y < image.height(); ++y)
    for (int x = 0; x < image.width(); ++x) count += image.pixel(x, y) == colour;
  return count;
}

TEST(PeoplePicture, ShadesTheGirthsToAcceptAndOnlyThose) {
  ASSERT_TRUE(start_picture_program().ok());
  const QRgb band = qRgb(226, 232, 240);
  People people = three_people();
  ASSERT_TRUE(people.accepted);
  const int shaded = pixels_of(people_picture(people), band);
  EXPECT_GT(shaded, 1000);
  people.accepted.reset();
  EXPECT_EQ(pixels_of(people_picture(people), band), 0);
}

TEST(PeoplePicture, HasTheSameBytesTwiceAndOneForNobodyMeasured) {
  ASSERT_TRUE(start_picture_program().ok());
  const People people = three_people();
  EXPECT_EQ(png_bytes(people_picture(people)).value(), png_bytes(people_picture(people)).value());
  People nobody;
  nobody.people = {PersonRow{"x", {}, PersonVerdict::kNoAnswer}};
  EXPECT_TRUE(png_bytes(people_picture(nobody)).ok());
}

}  // namespace
}  // namespace wrapgauge
