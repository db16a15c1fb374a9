#pragma once
// Random numbers that are the same with every compiler and library: the distributions of the standard library
// are not. Generator: splitmix64, Steele, Lea & Flood 2014, "Fast splittable pseudorandom number generators".

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

namespace wrapgauge {

class RandomStream {
 public:
  explicit RandomStream(std::uint64_t seed) : state_(seed) {}

  std::uint64_t next();
  double unit();                         // [0, 1), 53 bits
  std::size_t below(std::size_t count);  // 0 .. count-1, each as likely; count > 0

 private:
  std::uint64_t state_;
};

// FNV-1a, 64 bits (Fowler, Noll & Vo): names files and tells streams apart, protects nothing.
std::uint64_t hash_of(std::string_view bytes);
std::string hash_text(std::string_view bytes);  // 16 hexadecimal digits

}  // namespace wrapgauge
