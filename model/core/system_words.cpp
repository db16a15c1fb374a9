#include "model/core/system_words.hpp"

#include <cerrno>
#include <system_error>

namespace wrapgauge {

Phrase system_words(int error) {
  switch (error) {
    case ENOENT:
      return Phrase::worded("No such file or directory");
    case EACCES:
      return Phrase::worded("Permission denied");
    case EEXIST:
      return Phrase::worded("File exists");
    case ENOTDIR:
      return Phrase::worded("Not a directory");
    case ENOSPC:
      return Phrase::worded("No space left on device");
    case EROFS:
      return Phrase::worded("Read-only file system");
    default:
      return name_of(std::generic_category().message(error));
  }
}

}  // namespace wrapgauge
