#include "model/io/readers/byte_source.hpp"

#include <algorithm>

#include "model/io/readers/mesh_reader_text.hpp"

namespace wrapgauge {
namespace {

constexpr std::size_t kStretch = std::size_t{1} << 20;

}  // namespace

ByteSource::ByteSource(std::string_view bytes) : rest_(bytes), size_(bytes.size()) {}

ByteSource::ByteSource(InputFile file) : size_(file.size()), file_(std::move(file)) {}

void ByteSource::fetch(std::size_t count) {
  const std::size_t left = rest_.size();
  std::string next(std::max(kStretch, 2 * count), '\0');
  std::copy(rest_.begin(), rest_.end(), next.begin());
  const auto got = file_->read({next.data() + left, next.size() - left});
  if (!got) problem_ = got.problem();
  next.resize(left + (got ? *got : 0));
  if (!got || next.size() < std::max(kStretch, 2 * count)) file_.reset();
  stretch_ = std::move(next);
  rest_ = stretch_;
}

std::string_view ByteSource::word() {
  while (true) {
    std::string_view rest = rest_;
    const std::string_view found = take_word(rest);
    // A word that reaches the end of the stretch may go on in the next one.
    if (!rest.empty() || !file_) {
      rest_ = rest;
      return found;
    }
    rest_.remove_prefix(rest_.size() - found.size());
    fetch(rest_.size() + 1);
  }
}

std::string_view ByteSource::line() {
  while (true) {
    std::string_view rest = rest_;
    const std::string_view found = take_line(rest);
    // So may a line, or the second character of its end.
    if (!rest.empty() || !file_) {
      rest_ = rest;
      return found;
    }
    fetch(rest_.size() + 1);
  }
}

}  // namespace wrapgauge
