#include "app/desk/views/filling_frames.hpp"

#include <algorithm>
#include <string>
#include <system_error>

#include "app/picture/png.hpp"
#include "app/picture/webp_film.hpp"
#include "model/core/file.hpp"
#include "model/core/said_problem.hpp"
#include "model/core/system_words.hpp"

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
    return bad_input(Phrase::worded("folder '%1' is there already: name one that is not.", {name_of(name)}));
  if (!std::filesystem::create_directories(folder, error))
    return bad_input(Phrase::worded("folder '%1' could not be made (%2): choose another place.",
                                    {name_of(name), system_words(error.value())}));
  return std::nullopt;
}

// Takes each picture in turn; afterwards the filling is shown where it was.
Result<int> play(Selection& selection, int state_count, int count, const std::function<bool(int done)>& go_on,
                 const std::function<Result<std::monostate>(int frame)>& take) {
  const double was = selection.filling();
  std::optional<Problem> problem;
  int taken = 0;
  for (; taken < count && go_on(taken) && !problem; ++taken) {
    selection.show_filling((state_count - 1.0) * taken / std::max(1, count - 1));
    if (auto kept = take(taken); !kept) problem = kept.problem();
  }
  selection.show_filling(was);
  if (problem) return *problem;
  if (taken < count)
    return said_problem(ProblemKind::kCancelled, Phrase::worded("The filling was not saved."));
  return taken;
}

}  // namespace

Result<int> write_filling_frames(const std::filesystem::path& folder, Selection& selection, int state_count,
                                 int count, const std::function<QImage()>& picture,
                                 const std::function<bool(int done)>& go_on) {
  if (auto problem = make_new(folder)) return *problem;
  const auto keep = [&](int frame) {
    const auto bytes = png_bytes(picture());
    return bytes ? write_file_atomically(folder / frame_name(frame), *bytes)
                 : Result<std::monostate>(bytes.problem());
  };
  auto written = play(selection, state_count, count, go_on, keep);
  std::error_code none;
  if (!written) std::filesystem::remove_all(folder, none);
  return written;
}

Result<int> write_filling_film(const std::filesystem::path& file, Selection& selection, int state_count,
                               int count, const std::function<QImage()>& picture,
                               const std::function<bool(int done)>& go_on) {
  std::optional<WebpFilm> film;  // as large as its first picture
  const auto keep = [&](int) {
    const QImage frame = picture();
    if (!film) film.emplace(frame.size(), kFrame_ms);
    return film->add(frame);
  };
  auto taken = play(selection, state_count, count, go_on, keep);
  if (!taken) return taken;
  const auto bytes = film->bytes();
  if (!bytes) return bytes.problem();
  if (auto written = write_file_atomically(file, *bytes); !written) return written.problem();
  return taken;
}

}  // namespace wrapgauge
