// What a scanner would make of a clean limb, written as a file: make_scan CLEAN OUT NOISE_MM [table].
#include <cstdlib>
#include <iostream>
#include <string>

#include "model/body/vertex_weld.hpp"
#include "model/io/readers/mesh_reader.hpp"
#include "model/io/writers/mesh_writer.hpp"
#include "tests/body/scan_like.hpp"

int main(int count, char** words) {
  using namespace wrapgauge;
  const double noise_mm = count > 3 ? std::atof(words[3]) : 0.0;
  if (count < 4 || count > 5 || !(noise_mm > 0.0) || (count == 5 && std::string(words[4]) != "table")) {
    std::cerr << "usage: make_scan CLEAN OUT NOISE_MM [table]\n";
    return 2;
  }
  auto clean = read_mesh(words[1]);
  if (!clean) {
    std::cerr << clean.problem().message << "\n";
    return 2;
  }
  RawMesh limb = std::move(clean).value();
  weld_vertices(limb.vertices, limb.faces);
  const RawMesh scan = shapes::scan_of_limb(std::move(limb), noise_mm, count == 5);
  const auto written = write_mesh({1e-3 * scan.vertices, scan.faces}, words[2]);
  if (!written) std::cerr << written.problem().message << "\n";
  return written ? 0 : 2;
}
