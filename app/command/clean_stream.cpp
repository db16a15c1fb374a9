#include "app/command/clean_stream.hpp"

#include "model/core/clean_text.hpp"

namespace wrapgauge {

CleanStream::CleanStream(std::ostream& sink) : std::ostream(this), sink_(sink) {}

CleanStream::~CleanStream() {
  pass_on();
}

CleanStream::int_type CleanStream::overflow(int_type letter) {
  if (traits_type::eq_int_type(letter, traits_type::eof())) return traits_type::not_eof(letter);
  line_ += traits_type::to_char_type(letter);
  if (line_.back() == '\n') pass_on();
  return letter;
}

void CleanStream::pass_on() {
  sink_ << clean_lines(line_);
  line_.clear();
}

}  // namespace wrapgauge
