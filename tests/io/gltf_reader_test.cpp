#include "model/io/readers/gltf_reader.hpp"

#include <gtest/gtest.h>

#include "model/body/check_body.hpp"
#include "model/io/readers/mesh_reader.hpp"
#include "tests/io/folder.hpp"
#include "tests/io/gltf_sample.hpp"
#include "tests/io/hexagon_tube.hpp"

namespace wrapgauge {
namespace {

// An open tube of six sides, 0.04 m in radius and 0.2 m long, in metres.
RawMesh tube() {
  return hexagon_tube(0.04, 0.05);
}

std::string replaced(std::string text, const std::string& from, const std::string& to) {
  const auto at = text.find(from);
  EXPECT_NE(at, text.npos) << from;
  return text.replace(at, from.size(), to);
}

std::string message(const std::string& text) {
  const auto mesh = read_glb(glb_of(text, gltf_buffer(tube())), "t.glb");
  return mesh ? "" : mesh.problem().message;
}

TEST(GltfReader, ReadsTheTrianglesInMetres) {
  const auto mesh = read_glb(glb_of(gltf_text(tube(), ""), gltf_buffer(tube())), "t.glb");
  ASSERT_TRUE(mesh.ok()) << mesh.problem().message;
  EXPECT_LT((mesh->vertices - tube().vertices).cwiseAbs().maxCoeff(), 1e-8);
  EXPECT_EQ(mesh->faces, tube().faces);
  const auto body = check_body(*mesh, {});
  ASSERT_TRUE(body.ok());
  EXPECT_NEAR(body->report.length / mm, 200.0, 1e-3);
  EXPECT_FALSE(body->report.unit.guessed);
  EXPECT_NE(english(body->report.unit.sentence).find("as the file's format defines it"), std::string::npos);
}

TEST(GltfReader, AStatedUnitHoldsOverTheFormatsOwn) {
  RawMesh in_mm = tube();
  in_mm.vertices *= 1000.0;
  const auto mesh = read_glb(glb_of(gltf_text(in_mm, ""), gltf_buffer(in_mm)), "t.glb");
  ASSERT_TRUE(mesh.ok());
  const auto refused = check_body(*mesh, {});
  ASSERT_FALSE(refused.ok());
  EXPECT_NE(refused.problem().message.find("the likely unit is mm"), std::string::npos);
  EXPECT_TRUE(check_body(*mesh, {"t", LengthUnit::kMillimetre, std::nullopt}).ok());
}

TEST(GltfReader, AppliesNodeTransformsAndKeepsMirroredFacesOutward) {
  // A quarter turn about x, twice as large, moved: (x, y, z) -> (2x + 1, -2z, 2y).
  const std::string turned = R"("rotation":[0.70710678118654752,0,0,0.70710678118654752],"scale":[2,2,2],)"
                             R"("translation":[1,0,0],)";
  const auto mesh = read_glb(glb_of(gltf_text(tube(), turned), gltf_buffer(tube())), "t.glb");
  ASSERT_TRUE(mesh.ok()) << mesh.problem().message;
  const Eigen::RowVector3d last = tube().vertices.bottomRows(1);
  EXPECT_LT(
      (mesh->vertices.bottomRows(1) - Eigen::RowVector3d(2 * last(0) + 1, -2 * last(2), 2 * last(1))).norm(),
      1e-6);
  const auto mirrored =
      read_glb(glb_of(gltf_text(tube(), R"("scale":[-1,1,1],)"), gltf_buffer(tube())), "t.glb");
  ASSERT_TRUE(mirrored.ok());
  const auto body = check_body(*mirrored, {});
  ASSERT_TRUE(body.ok());
  EXPECT_TRUE(body->report.repairs.empty());  // nothing had to be turned
}

TEST(GltfReader, ReadsTextFilesWithCodedAndSeparateBuffers) {
  const ScratchFolder folder("gltf");
  folder.write("tube.bin", gltf_buffer(tube()));
  const auto beside = read_mesh(folder.write("a.gltf", gltf_text(tube(), "", R"("uri":"tube.bin",)")));
  ASSERT_TRUE(beside.ok()) << beside.problem().message;
  EXPECT_EQ(beside->faces, tube().faces);
  // Three points as base64: 36 zero bytes but for one 1.0f.
  const std::string coded =
      R"({"asset":{"version":"2.0"},"meshes":[{"primitives":[{"attributes":{"POSITION":0}}]}],)"
      R"("accessors":[{"bufferView":0,"componentType":5126,"type":"VEC3","count":3}],)"
      R"("bufferViews":[{"buffer":0,"byteLength":36}],"buffers":[{"byteLength":36,)"
      R"("uri":"data:application/octet-stream;base64,AACAPwAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA"}]})";
  const auto data = read_mesh(folder.write("b.gltf", coded));
  ASSERT_TRUE(data.ok()) << data.problem().message;
  EXPECT_EQ(data->vertices(0, 0), 1.0);
  EXPECT_EQ(data->faces.rows(), 1);
}

TEST(GltfReader, RefusesWhatDoesNotFitInOneSentence) {
  const std::string good = gltf_text(tube(), "");
  const auto expect = [&](const std::string& from, const std::string& to, const std::string& part) {
    const std::string said = message(replaced(good, from, to));
    EXPECT_NE(said.find(part), std::string::npos) << to << ": " << said;
    EXPECT_TRUE(said.ends_with('.')) << said;
  };
  expect("\"2.0\"", "\"1.0\"", "not glTF of version 2");
  expect("\"count\":30", "\"count\":31", "reaches beyond its buffer");
  expect("\"count\":30", "\"count\":29", "names vertex 29 of 29");
  expect("\"count\":30", "\"count\":-1", "accessor 1 has a type, count or place");
  expect("\"count\":30", "\"sparse\":{},\"count\":30", "sparse");
  expect("\"byteLength\":360", "\"byteLength\":4294967295", "reaches beyond its buffer");
  expect("5126", "5122", "type (5122) that is not read");
  expect("\"nodes\":[0]", "\"nodes\":[7]", "node is named that is not there");
  expect("\"mesh\":0", "\"mesh\":0,\"children\":[0]", "stands in a ring");
  expect("\"mesh\":0", "\"mesh\":0,\"rotation\":[0,0,0,0]", "transform that is not one");
  expect("\"mesh\":0", "\"mesh\":0,\"scale\":[1e300,1,1]", "Vertex 1 has the coordinate");
  expect("\"indices\":1", "\"indices\":1,\"mode\":1", "shows no triangles");
  expect("\"indices\":1", "\"extensions\":{\"KHR_draco_mesh_compression\":{}}",
         "compressed (\"KHR_draco_mesh_compression\"), which is not read; switch mesh compression off");
  expect("\"byteLength\":360", "\"extensions\":{\"EXT_meshopt_compression\":{}},\"byteLength\":360",
         "compressed (\"EXT_meshopt_compression\")");
  expect("\"nodes\":[0]",
         "\"nodes\":[0]}],\"extensionsRequired\":[\"KHR_mesh_quantization\"],\"other\":[{\"x\":1",
         "without its extension \"KHR_mesh_quantization\"; switch that off");
  expect("\"buffers\":[{", "\"buffers\":[{\"uri\":\"../secret.bin\",", "not in the folder of the scan");
}

TEST(GltfReader, ACutFileIsSaidToBeCut) {
  const std::string whole = glb_of(gltf_text(tube(), ""), gltf_buffer(tube()));
  for (const std::size_t size : {10u, 19u, 40u, 800u}) {
    const auto mesh = read_glb(std::string_view(whole).substr(0, size), "t.glb");
    ASSERT_FALSE(mesh.ok()) << size;
    EXPECT_NE(mesh.problem().message.find("cut short"), std::string::npos) << mesh.problem().message;
  }
}

}  // namespace
}  // namespace wrapgauge
