#include "model/limits/limit_set.hpp"
#include "tests/fuzz/file_harness.hpp"

// A set that is read has its rows in order: each warns before its limit, and sustained use has one.
extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size) {
  using namespace wrapgauge;
  const auto limits = read_limit_set(fuzz::as_file(data, size, "x.json"));
  if (!limits) {
    fuzz::require(!limits.problem().message.empty());
    return 0;
  }
  for (const LimitRow& row : limits->rows) fuzz::require(row.warn <= row.limit && row.limit > 0.0 * kPa);
  for (const SiteClass site : kSiteClasses)
    fuzz::require(find_row(*limits, site, UsePattern::kSustained, 1e-4 * metre * metre) != nullptr);
  return 0;
}
