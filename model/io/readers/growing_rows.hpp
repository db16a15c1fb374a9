#pragma once
#include <algorithm>
#include <utility>

#include "model/core/array.hpp"

namespace wrapgauge {

// Rows of three, as many as come. Large arrays grow where they lie or are moved by the system, so that two
// copies are never held.
template <class Array>
class GrowingRows {
 public:
  using Value = typename Array::Scalar;

  void reserve(Eigen::Index rows) {
    if (rows > rows_.rows()) rows_.conservativeResize(rows, 3);
  }
  void add(Value a, Value b, Value c) {
    if (count_ == rows_.rows()) reserve(std::max<Eigen::Index>(1024, count_ + count_ / 2));
    Value* row = rows_.data() + 3 * count_++;
    row[0] = a;
    row[1] = b;
    row[2] = c;
  }
  Eigen::Index count() const { return count_; }
  Array take() {
    rows_.conservativeResize(count_, 3);
    count_ = 0;
    return std::move(rows_);
  }

 private:
  Array rows_ = Array(0, 3);
  Eigen::Index count_ = 0;
};

}  // namespace wrapgauge
