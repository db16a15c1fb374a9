#pragma once
// Result<T> = a value or a Problem. No exception crosses a stage; a Problem reaches the terminal and the
// window with the same words.

#include <cassert>
#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "model/core/phrase.hpp"

namespace wrapgauge {

enum class ProblemKind {
  kBadInput,      // the user can mend it: exit code 2
  kNotConverged,  // no equilibrium was found: exit code 3, never with numbers of that state
  kCancelled,
  kProgramFailed,  // memory, a library or the program itself gave out: exit code 2
};

// Whether it tells nothing of the plan: it was stopped, or the program could not go on. Such an end is never
// kept or shown as an answer.
inline bool is_no_answer(ProblemKind kind) {
  return kind == ProblemKind::kCancelled || kind == ProblemKind::kProgramFailed;
}

// One thing to mark in a picture or list.
struct ProblemPlace {
  enum class Kind { kVertex, kFace, kChamber, kChannel, kInlet, kOutlinePoint, kStrap, kMendStep };
  Kind kind;
  int index;
};

struct Problem {
  ProblemKind kind = ProblemKind::kBadInput;
  std::string message;  // one sentence: what, where, the number, what to do
  std::vector<ProblemPlace> places = {};
  std::optional<Phrase> phrase = {};  // the same sentence, for windows in other languages
};

inline Problem bad_input(std::string message, std::vector<ProblemPlace> places = {}) {
  return {ProblemKind::kBadInput, std::move(message), std::move(places), {}};
}

inline Problem bad_input(Phrase phrase, std::vector<ProblemPlace> places = {}) {
  return {ProblemKind::kBadInput, english(phrase), std::move(places), std::move(phrase)};
}

// To be quoted in another sentence; one that is no phrase stays as it is in every language.
inline Phrase phrase_of(const Problem& problem) {
  return problem.phrase ? *problem.phrase : name_of(problem.message);
}

template <class T>
class [[nodiscard]] Result {
 public:
  Result(T value) : state_(std::move(value)) {}
  Result(Problem problem) : state_(std::move(problem)) {}

  bool ok() const { return state_.index() == 0; }
  explicit operator bool() const { return ok(); }

  const T& value() const& {
    assert(ok());
    return std::get<0>(state_);
  }
  T&& value() && {
    assert(ok());
    return std::get<0>(std::move(state_));
  }
  const T& operator*() const& { return value(); }
  const T* operator->() const { return &value(); }
  const Problem& problem() const {
    assert(!ok());
    return std::get<1>(state_);
  }

 private:
  std::variant<T, Problem> state_;
};

}  // namespace wrapgauge
