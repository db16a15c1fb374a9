#include "model/note/note.hpp"

#include <algorithm>

#include "model/note/note_pages.hpp"

namespace wrapgauge {
namespace {

std::optional<Problem> stale_problem(const std::vector<InputFile>& then, const std::vector<InputFile>& now,
                                     const char* what) {
  for (const InputFile& input : then) {
    const auto same = std::find_if(now.begin(), now.end(), [&](const InputFile& other) {
      return other.role == input.role && other.name == input.name;
    });
    if (same != now.end() && same->sha256 == input.sha256) continue;
    return bad_input(std::string("The note was not written: ") + input.role + " '" + input.name +
                     "' has changed or gone since " + what + " read it; solve the plan again.");
  }
  if (then.size() != now.size())
    return bad_input(std::string("The note was not written: the plan now names ") +
                     std::to_string(now.size()) + " input files and " + what + " read " +
                     std::to_string(then.size()) + "; solve the plan again.");
  return std::nullopt;
}

}  // namespace

Result<Note> study_note(const Summary& summary, const std::vector<InputFile>& inputs_now,
                        const NoteExtras& extras) {
  if (auto problem = stale_problem(summary.inputs, inputs_now, "the estimate")) return *problem;
  if (extras.bands)
    if (auto problem = stale_problem(extras.bands->inputs, inputs_now, "the study of spread"))
      return *problem;
  if (extras.ceiling)
    if (auto problem = stale_problem(extras.ceiling->inputs, inputs_now, "the study of the ceiling"))
      return *problem;
  if (summary.limit_point)
    return Problem{ProblemKind::kNotConverged,
                   "The note was not written, since the plan's inflation is never reached: " +
                       *summary.limit_point + " Ask for less first.",
                   {}};
  return Note{"Study note: " + summary.plan,
              {note_first_page(summary, extras), note_second_page(summary, extras)}};
}

}  // namespace wrapgauge
