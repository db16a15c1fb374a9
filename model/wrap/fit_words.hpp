#pragma once
// A layout's girths in words: one sentence for every surface, so that no two of them can contradict.

#include "model/core/phrase.hpp"
#include "model/wrap/wrap.hpp"

namespace wrapgauge {

// "12.0 % at station 190.0 mm (girth 274.0 mm, closing length 244.6 mm)".
Phrase section_words(const GirthSection& section);

// How a layout that closes is stretched round the body, at both edges and at the anchor. The layout has been
// put on and closes.
Phrase fastened_words(const Fit& fit);

// Of a layout that closes; the most and the least stretched.
const GirthSection& tightest(const Fit& fit);
const GirthSection& loosest(const Fit& fit);

// What cannot be calculated with: it lies on itself, or is wound round more than once. Each says how much,
// where and what to do.
std::optional<Problem> laps_itself(const Fit& fit);

}  // namespace wrapgauge
