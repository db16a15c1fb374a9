#include "app/command/clean_stream.hpp"

#include "model/core/clean_text.hpp"

namespace wrapgauge {

CleanStream::CleanStream(std::ostream& sink) : std::ostream(this), sink_(sink) {}

CleanStream::~CleanStream() {
  pass_on();
}

int CleanStream::overflow(int letter) {
  using Traits = std::streambuf::traits_type;
  if (Traits::eq_int_type(letter, Traits::eof())) return Traits::not_eof(letter);
  line_ += Traits::to_char_type(letter);
  if (line_.back() == '\n') pass_on();
  return letter;
}

void CleanStream::pass_on() {
  sink_ << clean_lines(line_);
  line_.clear();
}

}  // namespace wrapgauge
