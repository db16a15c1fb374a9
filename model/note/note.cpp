#include "model/note/note.hpp"

#include <algorithm>
#include <array>
#include <iterator>

#include "model/core/said_problem.hpp"
#include "model/note/note_sections.hpp"

namespace wrapgauge {
namespace {

std::optional<Problem> stale_problem(const std::vector<InputFile>& then, const std::vector<InputFile>& now,
                                     const Phrase& what) {
  for (const InputFile& input : then) {
    const auto same = std::find_if(now.begin(), now.end(), [&](const InputFile& other) {
      return other.role == input.role && other.name == input.name;
    });
    if (same != now.end() && same->sha256 == input.sha256) continue;
    return bad_input(Phrase::worded(
        "The note was not written: %1 '%2' has changed or gone since %3 read it; solve the plan again.",
        {name_of(input.role), name_of(input.name), what}));
  }
  if (then.size() != now.size())
    return bad_input(Phrase::worded(
        "The note was not written: the plan now names %1 input files and %2 read %3; solve the plan again.",
        {figures_of(static_cast<int>(now.size())), what, figures_of(static_cast<int>(then.size()))}));
  return std::nullopt;
}

NoteBlocks sections(const Summary& summary, const NoteExtras& extras) {
  NoteBlocks all;
  for (NoteBlocks& part :
       std::array{note_on_device(summary, extras), note_on_pressures(summary, extras),
                  note_on_hazards(summary), note_on_practice(summary, extras), note_on_record(summary)})
    std::move(part.begin(), part.end(), std::back_inserter(all));
  return all;
}

}  // namespace

Result<Note> study_note(const Summary& summary, const std::vector<InputFile>& inputs_now,
                        const NoteExtras& extras) {
  if (summary.part == BodyPart::kTestObject)
    return bad_input(Phrase::worded(
        "The note was not written: body.part is 'test object', which nobody wears; name the part "
        "of the body that wears the device."));
  if (auto problem = stale_problem(summary.inputs, inputs_now, Phrase::worded("the estimate")))
    return *problem;
  if (extras.bands)
    if (auto problem = stale_problem(extras.bands->inputs, inputs_now, Phrase::worded("the study of spread")))
      return *problem;
  if (extras.ceiling)
    if (auto problem =
            stale_problem(extras.ceiling->inputs, inputs_now, Phrase::worded("the study of the ceiling")))
      return *problem;
  if (extras.people)
    if (auto problem =
            stale_problem(extras.people->inputs, inputs_now, Phrase::worded("the study of people")))
      return *problem;
  if (summary.limit_point)
    return not_converged(Phrase::worded(
        "The note was not written, since the plan's inflation is never reached: %1 Ask for less "
        "first.",
        {name_of(*summary.limit_point)}));
  NoteBlocks blocks = sections(summary, extras);
  blocks.insert(blocks.begin(), note_verdict(summary, cells_to_fill(blocks)));
  return Note{"Study note: " + summary.plan, summary.date, std::move(blocks)};
}

int cells_to_fill(const std::vector<NoteBlock>& blocks) {
  int count = 0;
  for (const NoteBlock& block : blocks)
    if (const auto* table = std::get_if<NoteTable>(&block))
      for (const auto& row : table->rows)
        count += static_cast<int>(std::count(row.begin(), row.end(), std::string()));
  return count;
}

}  // namespace wrapgauge
