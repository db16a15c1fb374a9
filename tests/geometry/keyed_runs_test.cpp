#include "model/geometry/keyed_runs.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <utility>

namespace wrapgauge {
namespace {

TEST(KeyedRuns, OrderItemsAsAStableSortByTheirKey) {
  std::mt19937 random(20);
  std::vector<std::pair<int, int>> items;  // key, when it came
  for (int i = 0; i < 1000; ++i) items.emplace_back(static_cast<int>(random() % 40), i);
  KeyedRuns<int> runs(41, [&](const auto& put) {
    for (const auto& [key, item] : items) put(key, item);
  });
  std::stable_sort(items.begin(), items.end(),
                   [](const auto& a, const auto& b) { return a.first < b.first; });
  ASSERT_EQ(runs.keys(), 41u);
  std::size_t i = 0;
  for (std::size_t key = 0; key < runs.keys(); ++key)
    for (const int item : runs.run(key)) {
      ASSERT_LT(i, items.size());
      EXPECT_EQ(std::pair(static_cast<int>(key), item), items[i++]);
    }
  EXPECT_EQ(i, items.size());
  EXPECT_TRUE(runs.run(40).empty());
}

TEST(KeyedRuns, MayBeEmpty) {
  const KeyedRuns<int> none(0, [](const auto&) {});
  EXPECT_EQ(none.keys(), 0u);
  EXPECT_TRUE(none.items().empty());
}

}  // namespace
}  // namespace wrapgauge
