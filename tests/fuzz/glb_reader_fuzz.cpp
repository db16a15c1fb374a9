#include "model/io/readers/gltf_reader.hpp"
#include "tests/fuzz/mesh_harness.hpp"

// libFuzzer calls this with every input it makes up.
extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size) {
  const std::string_view bytes(reinterpret_cast<const char*>(data), size);
  wrapgauge::fuzz::take_mesh(wrapgauge::read_glb(bytes, "x.glb"));
  return 0;
}
