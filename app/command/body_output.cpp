#include "app/command/body_output.hpp"

#include <algorithm>

#include "app/picture/picture_program.hpp"
#include "app/picture/png.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {

std::optional<Vec3> vector_of(const std::vector<double>& numbers) {
  if (numbers.size() != 3) return std::nullopt;
  return Vec3(numbers[0], numbers[1], numbers[2]);
}

std::string section_words(const Girth& girth) {
  switch (girth.kind) {
    case SectionKind::kNone:
      return "no section";
    case SectionKind::kOneLoop:
      return "one loop";
    case SectionKind::kSeveralLoops:
      return std::to_string(girth.loops) + " loops, girth of the longest";
    case SectionKind::kOpen:
      break;
  }
  return "open, " + fixed_text(girth.bridged / mm, 1) + " mm of it bridged";
}

Girth girth_inside(const Body& body, Length station) {
  const Length hair = 0.001 * mm;
  return girth_at(body, std::clamp(station, hair, body_length(body) - hair));
}

Result<std::string> girth_picture_bytes(const Body& body, const std::vector<GirthMark>& marks,
                                        const std::string& title, const std::string& subtitle) {
  if (auto started = start_picture_program(); !started) return started.problem();
  return png_bytes(
      girth_picture(body, marks, QString::fromStdString(title), QString::fromStdString(subtitle)));
}

void FilesToWrite::add(const std::filesystem::path& file, Result<std::string> bytes) {
  if (problem_) return;
  if (bytes)
    files_.push_back({file, std::move(bytes).value()});
  else
    problem_ = bytes.problem();
}

Result<std::monostate> FilesToWrite::write() const {
  if (problem_) return *problem_;
  return write_files_together(files_);
}

}  // namespace wrapgauge
