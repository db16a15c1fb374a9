#include "model/io/readers/byte_source.hpp"

#include <algorithm>

#include "model/io/readers/mesh_reader_text.hpp"

namespace wrapgauge {
namespace {

constexpr std::size_t kStretch = std::size_t{1} << 20;

}  // namespace

ByteSource::ByteSource(std::string_view bytes) : rest_(bytes), size_(bytes.size()) {}

ByteSource::ByteSource(OpenedFile file) : size_(file.size()), file_(std::move(file)) {}

void ByteSource::fetch(std::size_t count) {
  const std::size_t left = rest_.size();
  std::string next(std::max(kStretch, count), '\0');
  std::copy(rest_.begin(), rest_.end(), next.begin());
  const auto got = file_->read({next.data() + left, next.size() - left});
  if (!got) problem_ = got.problem();
  const std::size_t filled = left + (got ? *got : 0);
  if (filled < next.size()) file_.reset();
  next.resize(filled);
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
    fetch(2 * rest_.size());
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
    fetch(2 * rest_.size());
  }
}

}  // namespace wrapgauge
