#pragma once
// The filling as pictures, one after the other: to look through, or to make a film of.

#include <QImage>
#include <filesystem>
#include <functional>

#include "app/desk/views/selection.hpp"
#include "model/core/result.hpp"

namespace wrapgauge {

inline constexpr int kFillingFrames = 72;  // three seconds at 24 a second

inline constexpr int kFrame_ms = 42;  // of a film

// frame-000.png, frame-001.png, ... in a folder of their own, made here: from the first recorded state to the
// last one in even steps, `count` of them, at least two. Afterwards the filling is shown where it was.
// `go_on`: asked before each with how many are written; false: that is enough, and the folder goes again.
// Problems: the folder is there already or cannot be made, a picture cannot be written; then too it goes
// again.
Result<int> write_filling_frames(const std::filesystem::path& folder, Selection& selection, int state_count,
                                 int count, const std::function<QImage()>& picture,
                                 const std::function<bool(int done)>& go_on);

// The same as one film that plays over and over (an animated WebP), written when its last picture is made.
// Problems: a picture cannot be made, the file cannot be written; nothing is left of it then.
Result<int> write_filling_film(const std::filesystem::path& file, Selection& selection, int state_count,
                               int count, const std::function<QImage()>& picture,
                               const std::function<bool(int done)>& go_on);

}  // namespace wrapgauge
