#pragma once
// The sparse library's memory, which gives out after so many pieces while one of these lives.
#include <SuiteSparse_config.h>

#include <atomic>
#include <cstdlib>

namespace wrapgauge {

class FailingMemory {
 public:
  explicit FailingMemory(int pieces) : usual_(SuiteSparse_config) {
    left() = pieces;
    SuiteSparse_config.malloc_func = [](std::size_t size) { return gives() ? std::malloc(size) : nullptr; };
    SuiteSparse_config.calloc_func = [](std::size_t count, std::size_t size) {
      return gives() ? std::calloc(count, size) : nullptr;
    };
    SuiteSparse_config.realloc_func = [](void* piece, std::size_t size) {
      return gives() ? std::realloc(piece, size) : nullptr;
    };
  }
  ~FailingMemory() { SuiteSparse_config = usual_; }
  FailingMemory(const FailingMemory&) = delete;
  FailingMemory& operator=(const FailingMemory&) = delete;

 private:
  static std::atomic<int>& left() {
    static std::atomic<int> pieces = 0;
    return pieces;
  }
  static bool gives() { return left()-- > 0; }

  SuiteSparse_config_struct usual_;
};

}  // namespace wrapgauge
