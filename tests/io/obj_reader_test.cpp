#include "model/io/readers/obj_reader.hpp"

#include <gtest/gtest.h>

#include <string>

namespace wrapgauge {
namespace {

RawMesh read(const std::string& text) {
  const auto mesh = read_obj(text, "t.obj");
  EXPECT_TRUE(mesh.ok()) << mesh.problem().message;
  return mesh.ok() ? *mesh : RawMesh{};
}

std::string refusal(const std::string& text) {
  const auto mesh = read_obj(text, "t.obj");
  EXPECT_FALSE(mesh.ok()) << text;
  return mesh.ok() ? "" : mesh.problem().message;
}

const std::string kCorners = "v 0 0 0\nv 1 0 0\nv 0 1 0\n";

TEST(ObjReader, ReadsNumbersHoweverTheyAreWritten) {
  const RawMesh mesh = read(
      "v +1.5 -.25 7.\nv 1e3 2.5E-1 -0\nv 1e-0004\t0e999\v12345678901234567890e-19\n"
      "v 1 2 3 0.5 # w is left out\nf 1 2 3\n");
  ASSERT_EQ(mesh.vertices.rows(), 4);
  Points3 wanted(4, 3);
  wanted << 1.5, -0.25, 7.0, 1000.0, 0.25, 0.0, 1e-4, 0.0, 1.2345678901234567890, 1.0, 2.0, 3.0;
  EXPECT_LT((mesh.vertices - wanted).cwiseAbs().maxCoeff(), 1e-15) << mesh.vertices;
}

TEST(ObjReader, ReadsCornersHoweverTheyAreWritten) {
  for (const std::string face : {"f 1 2 3", "f\t1/4 2/5 3/6", "  f 1//1 2//2 3//3", "f 1/1/1 2/2/2 3/3/3",
                                 "f -3 -2 -1", "fo 1 2 3", "f 1/2/3/4 2/x 3", "f 1 \\\n2 3", "f 1 2 3 # end",
                                 "f 1\v2\f3", "f +1 2 3", "f 1/ 2/ 3/", "f 0001 2 3"}) {
    const RawMesh mesh = read(kCorners + face);
    ASSERT_EQ(mesh.faces.rows(), 1) << face;
    EXPECT_EQ(mesh.faces(0, 0), 0) << face;
    EXPECT_EQ(mesh.faces(0, 1), 1) << face;
    EXPECT_EQ(mesh.faces(0, 2), 2) << face;
  }
}

TEST(ObjReader, KeepsTheOrderOfFacesAmongPolygonsThatNameLaterVertices) {
  const RawMesh mesh = read("f 1 2 3\nf 1 2 3 4\nf 4 2 1\nv 0 0 0\nv 2 0 0\nv 2 1 0\nv 0 1.5 0\n");
  ASSERT_EQ(mesh.faces.rows(), 4);
  EXPECT_EQ(mesh.faces.row(0), Eigen::RowVector3i(0, 1, 2));
  EXPECT_EQ(mesh.faces.row(3), Eigen::RowVector3i(3, 1, 0));
}

// Every fault stands in line 7 after a continued statement, whatever ends the lines.
TEST(ObjReader, NamesTheLineOfAFault) {
  for (const std::string end : {"\n", "\r\n", "\r"}) {
    std::string start = "v 0 0 0|v 1 0 0|# words|v 0 \\|1 0|f 1 2 3|";
    for (std::size_t at = start.find('|'); at != start.npos; at = start.find('|', at))
      start.replace(at, 1, end);
    EXPECT_EQ(refusal(start + "f 1 2 0"),
              "t.obj: line 7 has a face corner with index 0; OBJ counts vertices from 1.");
    EXPECT_EQ(refusal(start + "f 1 2 -4"),
              "t.obj: line 7 has the face corner \"-4\", which reaches before the first vertex.");
    EXPECT_EQ(refusal(start + "f 1 2 x"), "t.obj: line 7 has \"x\" where a face corner belongs.");
    EXPECT_EQ(refusal(start + "f 1 2"), "t.obj: line 7 has a face of 2 corners; a face needs at least 3.");
    EXPECT_EQ(refusal(start + "q 1 2"), "t.obj: line 7 starts with \"q\", which is no OBJ statement.");
    EXPECT_EQ(refusal(start + "f 1 2 77" + end + "f 1 3 5"),
              "t.obj: line 7 names vertex 77, but the file has 3; it is damaged or cut short.");
    EXPECT_EQ(refusal(start + "f 1 2 12345678901" + end),
              "t.obj: line 7 names vertex 12345678901, but the file has 3; it is damaged or cut short.");
    EXPECT_EQ(
        refusal(start + "v 1 2,5 3" + end + "v x"),
        "t.obj: vertex 4 (line 7) has \"2,5\" where a number belongs; write decimal points, not commas; "
        "export the mesh again.");
    EXPECT_EQ(refusal(start + "v 1 2"),
              "t.obj: vertex 4 (line 7) has fewer than three coordinates; export the mesh again.");
    EXPECT_EQ(
        refusal(start + "v 1 1e999 3"),
        "t.obj: vertex 4 (line 7) has the coordinate \"1e999\", which is not a finite number; export the "
        "mesh again.");
    EXPECT_EQ(
        refusal(start + "v 1 -2e12 3"),
        "t.obj: vertex 4 (line 7) has the coordinate \"-2e12\", beyond the largest that is read (1e12); "
        "export the mesh again.");
  }
}

TEST(ObjReader, SaysTheFirstFaultOfALine) {
  EXPECT_EQ(refusal(kCorners + "f 0 2 x"),
            "t.obj: line 4 has a face corner with index 0; OBJ counts vertices from 1.");
  EXPECT_EQ(refusal(kCorners + "f x 2 0"), "t.obj: line 4 has \"x\" where a face corner belongs.");
}

}  // namespace
}  // namespace wrapgauge
