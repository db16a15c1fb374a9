#include "model/io/writers/mesh_writer.hpp"

#include <gtest/gtest.h>

#include "model/core/file.hpp"
#include "model/io/readers/mesh_reader.hpp"
#include "tests/io/folder.hpp"

namespace wrapgauge {
namespace {

// Four corners in metres, far from round numbers.
TriangleMesh corner_mesh() {
  TriangleMesh mesh;
  mesh.vertices_m.resize(4, 3);
  mesh.vertices_m << 0.0, 0.0, 0.0, 0.1234567, 0.0, 0.0, 0.0, 0.2, -0.0300001, 0.0, 0.05, 0.4;
  mesh.faces.resize(4, 3);
  mesh.faces << 0, 2, 1, 0, 1, 3, 1, 2, 3, 2, 0, 3;
  return mesh;
}

TEST(MeshWriter, EveryFormatThatIsReadComesBackInMillimetres) {
  const ScratchFolder folder("mesh-writer");
  const TriangleMesh mesh = corner_mesh();
  for (const char* name : {"a.obj", "a.STL", "a.ply"}) {
    ASSERT_TRUE(write_mesh(mesh, folder.write(name, "")).ok());
    const auto read = read_mesh(folder.write("other", "").parent_path() / name);
    ASSERT_TRUE(read.ok()) << name << ": " << read.problem().message;
    ASSERT_EQ(read->faces.rows(), 4) << name;
    // Corner by corner, since STL shares no vertices; 4-byte numbers hold 400 mm to 0.00002 mm.
    for (int f = 0; f < 4; ++f)
      for (int k = 0; k < 3; ++k)
        EXPECT_LT(
            (read->vertices.row(read->faces(f, k)) - 1e3 * mesh.vertices_m.row(mesh.faces(f, k))).norm(),
            5e-5)
            << name;
  }
}

TEST(MeshWriter, EveryFormatSaysItsUnit) {
  for (const MeshFormat format : {MeshFormat::kObj, MeshFormat::kStl, MeshFormat::kPly}) {
    const auto bytes = mesh_bytes(corner_mesh(), format, "limb\n\xFF");
    ASSERT_TRUE(bytes.ok());
    EXPECT_LT(bytes->find("unit: mm"), 60u);
    EXPECT_NE(bytes->find("limb__"), std::string::npos);
  }
  const auto vtp = mesh_bytes(corner_mesh(), MeshFormat::kVtp, "limb");
  ASSERT_TRUE(vtp.ok());
  EXPECT_NE(vtp->find("length_unit"), std::string::npos);
}

TEST(MeshWriter, SameSurfaceSameBytes) {
  for (const MeshFormat format : {MeshFormat::kObj, MeshFormat::kStl, MeshFormat::kPly, MeshFormat::kVtp})
    EXPECT_EQ(*mesh_bytes(corner_mesh(), format, "a"), *mesh_bytes(corner_mesh(), format, "a"));
}

TEST(MeshWriter, RefusesOtherEndingsAndBrokenSurfaces) {
  const auto format = mesh_format_of("arm.dae");
  ASSERT_FALSE(format.ok());
  EXPECT_NE(format.problem().message.find(".obj, .stl, .ply or .vtp"), std::string::npos);
  EXPECT_FALSE(mesh_bytes({}, MeshFormat::kObj, "a").ok());
  TriangleMesh broken = corner_mesh();
  broken.vertices_m(1, 1) = std::nan("");
  EXPECT_FALSE(mesh_bytes(broken, MeshFormat::kStl, "a").ok());
}

}  // namespace
}  // namespace wrapgauge
