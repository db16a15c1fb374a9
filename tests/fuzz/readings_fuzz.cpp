#include <cmath>

#include "model/bench/readings_sheet.hpp"
#include "model/layout/layout_json.hpp"
#include "tests/fuzz/file_harness.hpp"

namespace {

const wrapgauge::Layout& cuff() {
  static const auto layout =
      wrapgauge::read_layout(WRAPGAUGE_SOURCE_DIR "/resources/layouts/forearm-cuff.json");
  return *layout;
}

}  // namespace

// Readings of the demo's cuff. What is read is typed into: confirmed, and read once more.
extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size) {
  using namespace wrapgauge;
  const std::string bytes(reinterpret_cast<const char*>(data), size);
  const auto sheet = ReadingsSheet::of(bytes, "x.csv", cuff());
  if (!sheet) {
    fuzz::require(!sheet.problem().message.empty());
    return 0;
  }
  const Readings& readings = sheet->readings();
  for (const Reading& reading : readings.rows)
    fuzz::require(!reading.is_read() || (std::isfinite(read_si(reading)) && read_si(reading) > 0.0));
  if (readings.rows.empty()) return 0;
  const auto confirmed = sheet->with_confirmed(0, true, cuff());
  fuzz::require(confirmed.ok() && confirmed->readings().rows.size() == readings.rows.size());
  return 0;
}
