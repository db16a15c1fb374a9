#include "app/desk/views/filling_frames.hpp"

#include <algorithm>
#include <string>
#include <system_error>

#include "app/picture/png.hpp"
#include "model/core/file.hpp"

namespace wrapgauge {
namespace {

std::string frame_name(int frame) {
  const std::string number = std::to_string(frame);
  return "frame-" + std::string(3 - std::min<std::size_t>(3, number.size()), '0') + number + ".png";
}

std::optional<Problem> make_new(const std::filesystem::path& folder) {
  std::error_code error;
  const std::string name = folder.filename().string();
  if (std::filesystem::exists(folder, error))
    return bad_input("folder '" + name + "' is there already: name one that is not.");
  if (!std::filesystem::create_directories(folder, error))
    return bad_input("folder '" + name + "' could not be made (" + error.message() +
                     "): choose another place.");
  return std::nullopt;
}

}  // namespace

Result<int> write_filling_frames(const std::filesystem::path& folder, Selection& selection, int state_count,
                                 int count, const std::function<QImage()>& picture,
                                 const std::function<bool(int done)>& go_on) {
  if (auto problem = make_new(folder)) return *problem;
  const double was = selection.filling();
  std::optional<Problem> problem;
  int written = 0;
  for (; written < count && go_on(written) && !problem; ++written) {
    selection.show_filling((state_count - 1.0) * written / std::max(1, count - 1));
    const auto bytes = png_bytes(picture());
    const auto kept = bytes ? write_file_atomically(folder / frame_name(written), *bytes)
                            : Result<std::monostate>(bytes.problem());
    if (!kept) problem = kept.problem();
  }
  selection.show_filling(was);
  if (!problem && written == count) return written;
  std::error_code none;
  std::filesystem::remove_all(folder, none);
  if (problem) return *problem;
  return Problem{ProblemKind::kCancelled, "The pictures were not saved.", {}};
}

}  // namespace wrapgauge
