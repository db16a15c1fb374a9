#pragma once
// The bytes of a file from front to back, a stretch at a time: a file of any size takes little memory.

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "model/core/file.hpp"
#include "model/core/result.hpp"

namespace wrapgauge {

// What `ahead`, `word` and `line` return lies in the source until its next call.
class ByteSource {
 public:
  explicit ByteSource(std::string_view bytes);  // bytes in memory, which outlive this
  explicit ByteSource(OpenedFile file);

  std::uintmax_t size() const { return size_; }  // of the whole
  // The bytes that come next: `count` of them or more, fewer only at the end.
  std::string_view ahead(std::size_t count) {
    if (rest_.size() < count && file_) fetch(count);
    return rest_;
  }
  void skip(std::size_t count) { rest_.remove_prefix(count); }  // of those ahead

  // The next word and the rest of the line, as take_word and take_line do.
  std::string_view word();
  std::string_view line();

  // Why the bytes ended before the file did.
  const std::optional<Problem>& problem() const { return problem_; }

 private:
  void fetch(std::size_t count);

  std::string_view rest_;  // in memory and not yet taken
  std::uintmax_t size_ = 0;
  std::optional<OpenedFile> file_;  // until its end
  std::string stretch_;
  std::optional<Problem> problem_;
};

}  // namespace wrapgauge
