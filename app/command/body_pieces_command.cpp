#include <CLI/CLI.hpp>
#include <memory>
#include <sstream>

#include "app/command/body_output.hpp"
#include "app/command/commands.hpp"
#include "app/job/study_inputs.hpp"
#include "model/body/check_body.hpp"
#include "model/body/pieces.hpp"
#include "model/core/number_text.hpp"
#include "model/io/readers/mesh_reader.hpp"
#include "model/io/writers/mesh_writer.hpp"

namespace wrapgauge {
namespace {

constexpr const char* kBodyPiecesExamples =
    "A scan of two limbs is two bodies: this tells them apart, so that a plan can\n"
    "name one.\n"
    "Examples:\n"
    "  wrapgauge body pieces both-legs.stl\n"
    "  wrapgauge body pieces both-legs.stl --unit mm --out legs\n";

struct BodyPiecesCommand {
  std::filesystem::path scan, folder;
  std::string unit;
};

std::string file_name(const BodyPiecesCommand& command, std::size_t number) {
  return command.scan.stem().string() + "-" + std::to_string(number) + ".ply";
}

// Of the whole file, so that all pieces are scaled alike.
Result<double> scale_of(const BodyPiecesCommand& command, const RawMesh& raw) {
  const Vec3 extent = raw.vertices.colwise().maxCoeff() - raw.vertices.colwise().minCoeff();
  const BodyOptions options{command.scan.stem().string(), unit_from_name(command.unit), std::nullopt};
  const auto unit = unit_of_mesh(raw, {extent.maxCoeff(), extent.minCoeff()}, options);
  if (!unit) return unit.problem();
  return length_of(unit->unit).si();
}

int run_body_pieces(const BodyPiecesCommand& command, Streams streams) {
  const auto raw = read_mesh(command.scan);
  if (!raw) return say_problem(raw.problem(), streams);
  const std::vector<Piece> pieces = pieces_of(*raw);
  if (pieces.empty()) return say_problem(bad_input("the mesh has no face with any area."), streams);
  const auto scale = scale_of(command, *raw);
  if (!scale) return say_problem(scale.problem(), streams);
  if (!command.folder.empty())
    if (auto made = make_folder(command.folder); !made) return say_problem(made.problem(), streams);
  FilesToWrite files;
  std::ostringstream words;  // said once the files are there
  for (std::size_t p = 0; p < pieces.size(); ++p) {
    const TriangleMesh mesh{*scale * pieces[p].mesh.vertices, pieces[p].mesh.faces};
    const Vec3 low = 1e3 * mesh.vertices_m.colwise().minCoeff(),
               high = 1e3 * mesh.vertices_m.colwise().maxCoeff();
    words << "piece " << p + 1 << ": " << fixed_text(100.0 * pieces[p].share_of_area, 1) << " % of the area, "
          << mesh.faces.rows() << " triangles, from (" << fixed_text(low.x(), 1) << ", "
          << fixed_text(low.y(), 1) << ", " << fixed_text(low.z(), 1) << ") to (" << fixed_text(high.x(), 1)
          << ", " << fixed_text(high.y(), 1) << ", " << fixed_text(high.z(), 1) << ") mm";
    if (!command.folder.empty()) {
      const std::filesystem::path file = command.folder / file_name(command, p + 1);
      files.add(file, mesh_bytes(mesh, file));
      words << ", written to " << file.string();
    }
    words << "\n";
  }
  if (auto written = files.write(); !written) return say_problem(written.problem(), streams);
  streams.out << words.str();
  return kExitDone;
}

}  // namespace

void add_body_pieces(CLI::App& body, Action& action) {
  auto wanted = std::make_shared<BodyPiecesCommand>();
  CLI::App* command = body.add_subcommand("pieces", "Tell the separate pieces of a mesh file apart");
  command->add_option("scan", wanted->scan, "OBJ, STL, PLY, GLB or glTF")->required()->type_name("SCAN");
  command->add_option("--unit", wanted->unit, "Unit of the file; guessed from its size if not given")
      ->check(CLI::IsMember({"mm", "cm", "m", "in"}));
  command->add_option("--out", wanted->folder, "Write each piece into this folder, in mm, as NAME-1.ply ...")
      ->type_name("DIR");
  command->footer(kBodyPiecesExamples);
  command->callback([&action, wanted] {
    action = [wanted](Streams streams) { return run_body_pieces(*wanted, streams); };
  });
}

}  // namespace wrapgauge
