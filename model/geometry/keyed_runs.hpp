#pragma once
#include <cstdint>
#include <span>
#include <vector>

namespace wrapgauge {

// Items grouped by a small whole number, in the order in which they came within a group: a counting sort,
// which for the vertices and sides of a mesh is several times faster than one that compares.
template <class Item>
class KeyedRuns {
 public:
  // `each(put)` calls put(key, item) for every item, the same ones both times; keys are below `keys`.
  template <class Each>
  KeyedRuns(std::size_t keys, const Each& each) : start_(keys + 1, 0) {
    each([&](int key, const Item&) { ++start_[static_cast<std::size_t>(key) + 1]; });
    for (std::size_t k = 1; k < start_.size(); ++k) start_[k] += start_[k - 1];
    items_.resize(start_.back());
    std::vector<std::uint32_t> next(start_.begin(), start_.end() - 1);
    each([&](int key, const Item& item) { items_[next[static_cast<std::size_t>(key)]++] = item; });
  }

  std::size_t keys() const { return start_.size() - 1; }
  std::span<Item> run(std::size_t key) {
    return {items_.data() + start_[key], items_.data() + start_[key + 1]};
  }
  const std::vector<Item>& items() const { return items_; }

 private:
  std::vector<std::uint32_t> start_;  // of each run, and the end
  std::vector<Item> items_;
};

}  // namespace wrapgauge
