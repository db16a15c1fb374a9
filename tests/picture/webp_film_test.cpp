#include "app/picture/webp_film.hpp"

#include <gtest/gtest.h>
#include <webp/demux.h>

#include <QColor>

namespace wrapgauge {
namespace {

QImage picture(int number) {
  QImage image(31, 17, QImage::Format_RGB32);
  image.fill(QColor(10 * number, 255 - 20 * number, 77));
  image.setPixelColor(number, 3, Qt::white);
  return image;
}

// Read back with the library's own decoder: the container is its open format.
TEST(WebpFilm, PlaysItsPicturesPixelForPixelEachAsLong) {
  WebpFilm film({31, 17}, 42);
  constexpr int kPictures = 5;
  for (int k = 0; k < kPictures; ++k) ASSERT_TRUE(film.add(picture(k)).ok());
  const auto bytes = film.bytes();
  ASSERT_TRUE(bytes.ok());
  const WebPData data{reinterpret_cast<const uint8_t*>(bytes->data()), bytes->size()};
  WebPAnimDecoder* decoder = WebPAnimDecoderNew(&data, nullptr);
  ASSERT_TRUE(decoder);
  WebPAnimInfo info;
  ASSERT_TRUE(WebPAnimDecoderGetInfo(decoder, &info));
  EXPECT_EQ(info.frame_count, static_cast<uint32_t>(kPictures));
  EXPECT_EQ(info.loop_count, 0u) << "it plays once only";
  for (int k = 0; k < kPictures; ++k) {
    uint8_t* pixels = nullptr;
    int end_ms = 0;
    ASSERT_TRUE(WebPAnimDecoderGetNext(decoder, &pixels, &end_ms));
    EXPECT_EQ(end_ms, 42 * (k + 1));
    const QImage shown(pixels, 31, 17, QImage::Format_RGBA8888);
    EXPECT_EQ(shown.convertToFormat(QImage::Format_RGB32), picture(k)) << "picture " << k;
  }
  WebPAnimDecoderDelete(decoder);
}

TEST(WebpFilm, TakesPicturesOfOneSizeAndSomethingHasToBeAdded) {
  WebpFilm film({31, 17}, 42);
  EXPECT_FALSE(film.bytes().ok());
  EXPECT_FALSE(film.add(QImage(30, 17, QImage::Format_RGB32)).ok());
}

TEST(WebpFilm, OfTheSamePicturesIsTheSameFile) {
  const auto made = [] {
    WebpFilm film({31, 17}, 42);
    for (int k = 0; k < 3; ++k) EXPECT_TRUE(film.add(picture(k)).ok());
    return film.bytes().value();
  };
  EXPECT_EQ(made(), made());
}

}  // namespace
}  // namespace wrapgauge
