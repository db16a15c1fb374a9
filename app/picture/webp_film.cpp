#include "app/picture/webp_film.hpp"

#include <webp/encode.h>
#include <webp/mux.h>

#include "model/core/said_problem.hpp"

namespace wrapgauge {
namespace {

Problem gave_out(const char* why) {
  return said_problem(ProblemKind::kProgramFailed,
                      Phrase::worded("the film could not be made (%1).", {name_of(why)}));
}

// Freed whichever way the work ends.
struct Picture : WebPPicture {
  Picture() { WebPPictureInit(this); }
  ~Picture() { WebPPictureFree(this); }
};

WebPConfig without_loss() {
  constexpr int kQuick = 1;  // of 9: drawn pictures hardly get smaller with more effort
  WebPConfig config;
  WebPConfigInit(&config);
  WebPConfigLosslessPreset(&config, kQuick);
  return config;
}

}  // namespace

struct WebpFilm::Encoder {
  explicit Encoder(const QSize& size) {
    WebPAnimEncoderOptions options;
    WebPAnimEncoderOptionsInit(&options);
    options.anim_params.loop_count = 0;  // for ever
    made = WebPAnimEncoderNew(size.width(), size.height(), &options);
  }
  ~Encoder() { WebPAnimEncoderDelete(made); }
  WebPAnimEncoder* made = nullptr;
};

WebpFilm::WebpFilm(const QSize& size, int milliseconds_each)
    : encoder_(std::make_unique<Encoder>(size)), size_(size), each_ms_(milliseconds_each) {}

WebpFilm::~WebpFilm() = default;

Result<std::monostate> WebpFilm::add(const QImage& picture) {
  if (!encoder_->made) return gave_out("no memory");
  if (picture.size() != size_) return gave_out("its pictures differ in size");
  const QImage pixels = picture.convertToFormat(QImage::Format_RGB32);
  Picture frame;
  frame.use_argb = 1;
  frame.width = size_.width();
  frame.height = size_.height();
  const WebPConfig config = without_loss();
  if (!WebPPictureImportBGRX(&frame, pixels.constBits(), static_cast<int>(pixels.bytesPerLine())) ||
      !WebPAnimEncoderAdd(encoder_->made, &frame, end_ms_, &config))
    return gave_out(WebPAnimEncoderGetError(encoder_->made));
  end_ms_ += each_ms_;
  return std::monostate{};
}

Result<std::string> WebpFilm::bytes() {
  if (end_ms_ == 0) return gave_out("it has no pictures");
  WebPData data;
  WebPDataInit(&data);
  const bool whole = WebPAnimEncoderAdd(encoder_->made, nullptr, end_ms_, nullptr) &&
                     WebPAnimEncoderAssemble(encoder_->made, &data);
  std::string bytes = whole ? std::string(reinterpret_cast<const char*>(data.bytes), data.size) : "";
  WebPDataClear(&data);
  if (!whole) return gave_out(WebPAnimEncoderGetError(encoder_->made));
  return bytes;
}

}  // namespace wrapgauge
