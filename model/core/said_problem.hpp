#pragma once
// Problems of any kind whose sentence is a phrase, and a problem that is told in a larger sentence.

#include "model/core/result.hpp"

namespace wrapgauge {

inline Problem said_problem(ProblemKind kind, Phrase phrase, std::vector<ProblemPlace> places = {}) {
  return {kind, english(phrase), std::move(places), std::move(phrase)};
}

inline Problem not_converged(Phrase phrase) {
  return said_problem(ProblemKind::kNotConverged, std::move(phrase));
}

// Of the same kind and at the same places.
inline Problem reworded(const Problem& problem, Phrase phrase) {
  return said_problem(problem.kind, std::move(phrase), problem.places);
}

// "NAME: what it says".
inline Problem told_of(const std::string& name, const Problem& problem) {
  return reworded(problem, in_a_row({name_of(name), phrase_of(problem)}, ": "));
}

}  // namespace wrapgauge
