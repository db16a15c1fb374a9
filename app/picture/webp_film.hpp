#pragma once
// Pictures one after the other as one file: an animated WebP, which browsers and most viewers play.

#include <QImage>
#include <memory>
#include <string>

#include "model/core/result.hpp"

namespace wrapgauge {

class WebpFilm {
 public:
  // All pictures are of this size, in pixels, and seen for as long.
  WebpFilm(const QSize& size, int milliseconds_each);
  ~WebpFilm();
  WebpFilm(const WebpFilm&) = delete;
  WebpFilm& operator=(const WebpFilm&) = delete;

  // Kept as it is, pixel for pixel. Problem: of another size, or the library gave out.
  Result<std::monostate> add(const QImage& picture);
  // The file, which plays over and over. Problem: no picture was added, or the library gave out.
  Result<std::string> bytes();

 private:
  struct Encoder;
  std::unique_ptr<Encoder> encoder_;
  QSize size_;
  int each_ms_, end_ms_ = 0;
};

}  // namespace wrapgauge
