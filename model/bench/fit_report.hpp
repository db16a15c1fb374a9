#pragma once
// What a fit came to, in sentences and as a page.

#include <string>
#include <vector>

#include "model/bench/calibrate.hpp"
#include "model/note/note.hpp"

namespace wrapgauge {

// Whole sentences, the model factor first, then each parameter with its band, what cannot be told, outliers
// by name, and what seams hold.
std::vector<Phrase> fit_words(const BenchResult& result);

// A row a reading: id, kind, read, predicted, fitted, how many standard errors it lies off.
std::string fitted_readings_csv(const BenchResult& result);

// The page, its two pictures named as a note's are: kPictureOfPlace shows predicted against read,
// kPictureOfPressure what is left, by kind.
Note fit_note(const BenchResult& result, const std::string& plan);

}  // namespace wrapgauge
