#include "model/io/readers/dxf_reader.hpp"
#include "tests/fuzz/drawing_harness.hpp"

// libFuzzer calls this with every input it makes up.
extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size) {
  const std::string_view bytes(reinterpret_cast<const char*>(data), size);
  wrapgauge::fuzz::take_drawing(wrapgauge::read_dxf(bytes, "x.dxf"));
  return 0;
}
