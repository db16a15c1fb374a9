#include "model/study/random_stream.hpp"

#include <cassert>

namespace wrapgauge {

std::uint64_t RandomStream::next() {
  state_ += 0x9e3779b97f4a7c15u;
  std::uint64_t z = state_;
  z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9u;
  z = (z ^ (z >> 27)) * 0x94d049bb133111ebu;
  return z ^ (z >> 31);
}

double RandomStream::unit() {
  return static_cast<double>(next() >> 11) * 0x1p-53;
}

std::size_t RandomStream::below(std::size_t count) {
  assert(count > 0);
  // Numbers from an incomplete last round would favour the small remainders: draw again.
  const std::uint64_t n = count, incomplete = (0 - n) % n;
  std::uint64_t drawn = next();
  while (drawn < incomplete) drawn = next();
  return static_cast<std::size_t>(drawn % n);
}

std::uint64_t hash_of(std::string_view bytes) {
  std::uint64_t hash = 0xcbf29ce484222325u;
  for (const char c : bytes) hash = (hash ^ static_cast<unsigned char>(c)) * 0x100000001b3u;
  return hash;
}

std::string hash_text(std::string_view bytes) {
  std::uint64_t hash = hash_of(bytes);
  std::string text(16, '0');
  for (std::size_t i = text.size(); i > 0; --i, hash >>= 4) text[i - 1] = "0123456789abcdef"[hash & 15];
  return text;
}

}  // namespace wrapgauge
