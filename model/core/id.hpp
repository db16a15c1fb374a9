#pragma once
// Indices that cannot be mixed up. "None" is std::optional, never a negative number.

#include <cstddef>

namespace wrapgauge {

enum class ChamberId : int {};
enum class ChannelId : int {};
enum class InletId : int {};
enum class GroupId : int {};  // chambers and channels that share one pressure

template <class Id>
constexpr std::size_t index_of(Id id) {
  return static_cast<std::size_t>(id);
}

}  // namespace wrapgauge
