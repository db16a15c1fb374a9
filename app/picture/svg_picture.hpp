#pragma once
// What a painter draws, as the text of an SVG file: lines and areas as paths, words as words, maps as
// embedded PNG pictures. Same drawing, same bytes.

#include <QPaintDevice>
#include <QSize>
#include <memory>
#include <string>

namespace wrapgauge {

class SvgPaintEngine;

class SvgPicture : public QPaintDevice {
 public:
  explicit SvgPicture(const QSize& pixels);
  ~SvgPicture() override;
  // After the painter has ended.
  std::string bytes() const;

  QPaintEngine* paintEngine() const override;

 protected:
  int metric(PaintDeviceMetric metric) const override;

 private:
  QSize size_;
  std::unique_ptr<SvgPaintEngine> engine_;
};

}  // namespace wrapgauge
