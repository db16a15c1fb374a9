#pragma once
#include "model/note/estimate.hpp"
#include "model/plan/plan.hpp"

namespace wrapgauge {

// The last stage: an estimate in words and figures, from everything in it but its own summary. `differ`: what
// differs from the tables that the program ships, beside the limits. `inputs`: the files it came from.
Summary summarise(const Plan& plan, const Estimate& estimate, const std::vector<Phrase>& differ,
                  std::vector<InputFile> inputs);

// Name, wearers and date: what the note says off the plan and nothing was calculated from.
void say_note_words(const Plan& plan, Summary& summary);

}  // namespace wrapgauge
