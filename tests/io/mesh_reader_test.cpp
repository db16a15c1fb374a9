#include "model/io/readers/mesh_reader.hpp"

#include <gtest/gtest.h>

#include <array>
#include <bit>
#include <cstdint>
#include <cstring>
#include <string>
#include <vector>

#include "folder.hpp"

namespace wrapgauge {
namespace {

// A tetrahedron in each format.
const std::string kObj = "v 0 0 0\nv 1 0 0\nv 0 1 0\nv 0 0 1\nf 1 3 2\nf 1 2 4\nf 2 3 4\nf 3 1 4\n";
constexpr std::array<std::array<float, 3>, 4> kPoints = {{{0, 0, 0}, {1, 0, 0}, {0, 1, 0}, {0, 0, 1}}};
constexpr std::array<std::array<int, 3>, 4> kFaces = {{{0, 2, 1}, {0, 1, 3}, {1, 2, 3}, {2, 0, 3}}};

std::string binary_stl(std::uint32_t count = 4, const std::string& header = "") {
  std::string bytes = header;
  bytes.resize(80, ' ');
  bytes.append(reinterpret_cast<const char*>(&count), 4);
  for (const auto& face : kFaces) {
    bytes.append(12, '\0');
    for (const int v : face) bytes.append(reinterpret_cast<const char*>(kPoints[v].data()), 12);
    bytes.append(2, '\0');
  }
  return bytes;
}

std::string ascii_stl(const std::string& end_of_line = "\n") {
  std::string text = "solid any words" + end_of_line;
  for (const auto& face : kFaces) {
    text += " facet normal 0 0 0" + end_of_line + "  outer loop" + end_of_line;
    for (const int v : face) {
      text += "   vertex";
      for (const float x : kPoints[v]) text.append(" ").append(std::to_string(x));
      text += end_of_line;
    }
    text += "  endloop" + end_of_line + " endfacet" + end_of_line;
  }
  return text + "endsolid any words" + end_of_line;
}

void append_big_endian(std::string& bytes, double value) {
  auto bits = std::bit_cast<std::uint64_t>(value);
  for (int shift = 56; shift >= 0; shift -= 8) bytes += static_cast<char>(bits >> shift & 0xFF);
}

std::string big_endian_ply() {
  std::string bytes =
      "ply\nformat binary_big_endian 1.0\ncomment any\nelement vertex 4\nproperty double x\nproperty double "
      "y\n"
      "property double z\nproperty uchar red\nelement face 4\nproperty list uchar uint "
      "vertex_indices\nend_header\n";
  for (const auto& point : kPoints) {
    for (const float x : point) append_big_endian(bytes, 1e6 + static_cast<double>(x));
    bytes += '\x7F';
  }
  for (const auto& face : kFaces) {
    bytes += '\3';
    for (const int v : face) bytes += std::string(3, '\0') + static_cast<char>(v);
  }
  return bytes;
}

std::string ascii_ply(const std::string& faces = "4\nproperty list uchar int vertex_index\nend_header\n") {
  std::string text =
      "ply\nformat ascii 1.0\nelement vertex 4\nproperty float x\nproperty float y\nproperty float "
      "z\nelement "
      "face " +
      faces + "0 0 0\n1 0 0\n0 1 0\n0 0 1\n";
  return text;
}
const std::string kPlyFaces = "3 0 2 1\n3 0 1 3\n3 1 2 3\n3 2 0 3\n";

RawMesh must_read(const std::filesystem::path& file) {
  auto mesh = read_mesh(file);
  if (!mesh) throw std::runtime_error(mesh.problem().message);
  return std::move(mesh).value();
}

// The corner coordinates of every face in order, whatever vertices they share.
void expect_tetrahedron(const RawMesh& mesh, double shift = 0.0) {
  ASSERT_EQ(mesh.faces.rows(), 4);
  for (int f = 0; f < 4; ++f)
    for (int k = 0; k < 3; ++k)
      for (int i = 0; i < 3; ++i)
        EXPECT_EQ(mesh.vertices(mesh.faces(f, k), i), shift + static_cast<double>(kPoints[kFaces[f][k]][i]));
}

TEST(MeshReader, ReadsTheSameTetrahedronFromEveryFormat) {
  const ScratchFolder folder("formats");
  expect_tetrahedron(must_read(folder.write("a.obj", kObj)));
  expect_tetrahedron(must_read(folder.write("a.stl", binary_stl())));
  expect_tetrahedron(must_read(folder.write("b.stl", ascii_stl())));
  expect_tetrahedron(must_read(folder.write("a.ply", ascii_ply() + kPlyFaces)));
  expect_tetrahedron(must_read(folder.write("b.ply", big_endian_ply())), 1e6);
}

TEST(MeshReader, DoesNotMindLineEndsCapitalsAndNames) {
  const ScratchFolder folder("line ends");
  expect_tetrahedron(must_read(folder.write("crlf.stl", ascii_stl("\r\n"))));
  std::string capitals = ascii_stl();
  for (char& c : capitals)
    if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
  expect_tetrahedron(must_read(folder.write("capitals.STL", capitals)));
  std::string crlf;
  for (const char c : kObj) crlf.append(c == '\n' ? "\r" : "").append(1, c);
  expect_tetrahedron(must_read(folder.write("crlf.obj", crlf)));
  expect_tetrahedron(must_read(folder.write("bom.obj", "\xEF\xBB\xBF" + kObj)));
  expect_tetrahedron(must_read(folder.write("näme with spaces 腕.Obj", "# caf\xE9\no \xFF\xFE\n" + kObj)));
  expect_tetrahedron(must_read(folder.write("solid.stl", binary_stl(4, "solid but binary"))));
}

TEST(MeshReader, ReadsObjStatementsItHasNoUseFor) {
  const ScratchFolder folder("statements");
  const std::string rich =
      "mtllib missing.mtl\nvt 0 0\nvn 0 0 1\nv 0 0 0 0.5 0.5 0.5\nv +1 0. 0 1\nv 0 1e0 0\nv 0 0 "
      "\\\n1\nusemtl x\ns "
      "off\ng a b\nf 1/1/1 3//1 2\nf 1/1 2 4 # note\nf -3 -2 -1\nf 3 1 4\n";
  expect_tetrahedron(must_read(folder.write("rich.obj", rich)));
}

TEST(MeshReader, CutsPolygonsIntoTriangles) {
  const ScratchFolder folder("polygons");
  const std::string points = "v 0 0 0\nv 2 0 0\nv 2 1 0\nv 1 1 0\nv 1 2 0\nv 0 2 0\n";  // an L
  const auto area = [](const RawMesh& mesh) {
    double twice = 0.0;
    for (int f = 0; f < mesh.faces.rows(); ++f) {
      const auto a = mesh.vertices.row(mesh.faces(f, 0)), b = mesh.vertices.row(mesh.faces(f, 1)),
                 c = mesh.vertices.row(mesh.faces(f, 2));
      const double cross = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
      EXPECT_GT(cross, 0.0);
      twice += cross;
    }
    return 0.5 * twice;
  };
  const RawMesh obj = must_read(folder.write("l.obj", points + "f 1 2 3 4 5 6\n"));
  EXPECT_EQ(obj.faces.rows(), 4);
  EXPECT_NEAR(area(obj), 3.0, 1e-12);
  const std::string ply =
      "ply\nformat ascii 1.0\nelement vertex 6\nproperty float x\nproperty float y\nproperty float "
      "z\nelement face "
      "1\nproperty list uchar int vertex_indices\nend_header\n0 0 0\n2 0 0\n2 1 0\n1 1 0\n1 2 0\n0 2 0\n6 0 "
      "1 2 3 4 "
      "5\n";
  const RawMesh from_ply = must_read(folder.write("l.ply", ply));
  EXPECT_EQ(from_ply.faces.rows(), 4);
  EXPECT_NEAR(area(from_ply), 3.0, 1e-6);
  EXPECT_NEAR(area(must_read(folder.write("quad.obj", points + "f 1 2 3 4\n"))), 1.5, 1e-12);
}

TEST(MeshReader, SaysThatTrailingBytesWereIgnored) {
  const ScratchFolder folder("trailing");
  for (const int more : {1, 37, 50, 130}) {
    const RawMesh mesh = must_read(folder.write("a.stl", binary_stl() + std::string(more, 'x')));
    expect_tetrahedron(mesh);
    ASSERT_EQ(mesh.notes.size(), 1u);
    EXPECT_NE(english(mesh.notes[0]).find(std::to_string(more) + " more bytes"), std::string::npos);
  }
  EXPECT_EQ(must_read(folder.write("a.ply", big_endian_ply() + "xyz")).notes.size(), 1u);
}

TEST(MeshReader, KeepsTheDigitsOfBodiesFarFromTheOrigin) {
  const ScratchFolder folder("far");
  const RawMesh mesh =
      must_read(folder.write("far.obj", "v 2000000.0625 0 0\nv 2000001 0 0\nv 2000000 1 0\nf 1 2 3\n"));
  EXPECT_NEAR(mesh.vertices(0, 0), 2000000.0625, 1e-8);
  EXPECT_EQ(mesh.coordinate_step, 0.0);
  std::string stl = binary_stl();
  const float far = 2e6F;
  std::memcpy(stl.data() + 84 + 12, &far, 4);
  EXPECT_NEAR(must_read(folder.write("far.stl", stl)).coordinate_step, 0.24, 0.01);
}

struct BadFile {
  const char* name;
  const char* said;  // part of the sentence
};

TEST(MeshReader, RefusesEachBadFileInOneSentenceThatSaysWhereAndWhat) {
  const std::filesystem::path folder = std::filesystem::path(WRAPGAUGE_SOURCE_DIR) / "tests/data/mesh";
  const std::vector<BadFile> table = {
      {"nan_vertex.obj", "vertex 3 (line 3) has the coordinate \"nan\""},
      {"inf_vertex.obj", "vertex 3 (line 3) has the coordinate \"inf\""},
      {"huge_vertex.obj", "vertex 3 (line 3) has the coordinate \"1e300\""},
      {"decimal_comma.obj", "write decimal points"},
      {"two_coordinates.obj", "vertex 3 (line 3) has fewer than three coordinates"},
      {"index_out_of_range.obj", "line 4 names vertex 4, but the file has 3"},
      {"index_zero.obj", "line 4 has a face corner with index 0"},
      {"negative_before_start.obj", "line 4 has the face corner \"-4\""},
      {"short_face.obj", "line 4 has a face of 2 corners"},
      {"malformed_face.obj", "line 4 has \"x\""},
      {"overflowing_index.obj", "line 4 has \"99999999999999999999\""},
      {"comments_only.obj", "no vertices"},
      {"points_only.obj", "no faces"},
      {"lines_only.obj", "no faces"},
      {"words.obj", "line 1 starts with \"hello\""},
      {"empty.obj", "empty (0 bytes)"},
      {"empty.stl", "empty (0 bytes)"},
      {"empty.ply", "empty (0 bytes)"},
      {"picture.stl", "a PNG picture"},
      {"obj_text.stl", "is an OBJ mesh, not what its ending says; rename it to end in .obj."},
      {"no_facets.stl", "no facets"},
      {"cut_short.stl", "cut short"},
      {"four_corners.stl", "\"vertex\" where \"endloop\" belongs"},
      {"header_cut_short.ply", "without \"end_header\""},
      {"index_out_of_range.ply", "face 1 names vertex 3"},
      {"count_too_big.ply", "at most 10 million"},
      {"nan_vertex.ply", "vertex 3 has the coordinate \"nan\""},
      {"points_only.ply", "no faces"},
      {"unknown_type.ply", "header line 4 has the unknown property type \"quux\""},
      {"missing.obj", "No such file"},
      {"scene.dae", "save the surface as OBJ, STL, PLY, GLB or glTF"},
  };
  for (const BadFile& bad : table) {
    const auto mesh = read_mesh(folder / bad.name);
    ASSERT_FALSE(mesh.ok()) << bad.name;
    EXPECT_NE(mesh.problem().message.find(bad.said), std::string::npos)
        << bad.name << ": " << mesh.problem().message;
    EXPECT_TRUE(mesh.problem().message.ends_with('.')) << mesh.problem().message;
  }
}

TEST(MeshReader, RefusesACountTheFileCannotHold) {
  const ScratchFolder folder("count");
  const auto mesh = read_mesh(folder.write("a.stl", binary_stl(0xFFFFFFFFU)));
  ASSERT_FALSE(mesh.ok());
  EXPECT_NE(
      mesh.problem().message.find("is damaged: its count of facets is 4294967295, but there is room for 4"),
      std::string::npos)
      << mesh.problem().message;
  EXPECT_FALSE(read_mesh(folder.write("b.stl", binary_stl(0))).ok());
}

TEST(MeshReader, TellsACutFileFromADamagedOne) {
  const ScratchFolder folder("cut_or_damaged");
  const auto cut = read_mesh(folder.write("a.stl", binary_stl().substr(0, 84 + 50 * 2 + 10)));
  ASSERT_FALSE(cut.ok());
  EXPECT_NE(cut.problem().message.find("is cut short: 2 of its 4 facets are there"), std::string::npos)
      << cut.problem().message;
}

TEST(MeshReader, NamesTheFormatOfAMeshUnderAnotherEnding) {
  const ScratchFolder folder("endings");
  for (const auto& [name, bytes, said] : {std::array<std::string, 3>{"a.ply", binary_stl(), "is an STL mesh"},
                                          {"b.ply", ascii_stl(), "is an STL mesh"},
                                          {"c.obj", binary_stl(), "is an STL mesh"},
                                          {"d.ply", kObj, "is an OBJ mesh"},
                                          {"e.stl", kObj, "is an OBJ mesh"},
                                          {"f.stl", big_endian_ply(), "is a PLY mesh"}}) {
    const auto mesh = read_mesh(folder.write(name, bytes));
    ASSERT_FALSE(mesh.ok()) << name;
    EXPECT_NE(mesh.problem().message.find(said + ", not what its ending says; rename it to end in ."),
              std::string::npos)
        << mesh.problem().message;
  }
}

TEST(MeshReader, NamesTheFacetOfABadNumber) {
  const ScratchFolder folder("facet");
  std::string stl = binary_stl();
  const float bad = std::bit_cast<float>(0x7FC00000U);
  std::memcpy(stl.data() + 84 + 50 * 2 + 12, &bad, 4);
  const auto mesh = read_mesh(folder.write("a.stl", stl));
  ASSERT_FALSE(mesh.ok());
  EXPECT_NE(mesh.problem().message.find("facet 3"), std::string::npos) << mesh.problem().message;
}

TEST(MeshReader, RefusesABinaryFileCutAnywhere) {
  const ScratchFolder folder("cut");
  for (const auto& [name, bytes] :
       {std::pair<std::string, std::string>{"a.stl", binary_stl()}, {"a.ply", big_endian_ply()}})
    for (std::size_t size = 0; size < bytes.size(); size += 3)
      EXPECT_FALSE(read_mesh(folder.write(name, bytes.substr(0, size))).ok()) << name << " cut at " << size;
}

}  // namespace
}  // namespace wrapgauge
