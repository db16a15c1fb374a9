#include <filesystem>

#include "model/core/number_text.hpp"
#include "model/note/note_sections.hpp"

namespace wrapgauge {
namespace {

std::string factor_words(const SheetFactors& factors) {
  return "skin sheet's law times " + number_text(factors.skin_law, 3) + ", outer sheet's times " +
         number_text(factors.outer_law, 3) + "; skin sheet " + fixed_text(factors.skin_thicker / mm, 2) +
         " mm and outer sheet " + fixed_text(factors.outer_thicker / mm, 2) +
         " mm thicker than drawn; tissue times " + number_text(factors.tissue, 3);
}

std::string calibration_text(const Summary& summary) {
  if (!summary.calibration)
    return "The model is not calibrated on this device: no reading from a bench was compared with it. So "
           "each "
           "predicted pressure is taken times " +
           number_text(summary.model_factor, 3) + " before it is held against a limit.";
  const Calibration& calibration = *summary.calibration;
  return "The model is " + calibrated_words(calibration) + ". " + calibration.model_factor_why +
         " The readings made: " + factor_words(calibration.factors) +
         ". A calibration holds for this layout, these materials, this part and posture only; it shows no "
         "pressure to be harmless.";
}

std::string readings_words(const Calibration& calibration) {
  const std::string name = std::filesystem::path(calibration.readings_file).filename().string();
  return calibration.date.empty() ? name : name + ", " + calibration.date;
}

NoteTable calibration_table(const Summary& summary) {
  NoteTable table{{"Sensor and its error", "Calibrated on, by", "Readings: file, date", "Model factor"},
                  {{"", "", "", ""}},
                  {26, 24, 26, 24},
                  2};
  if (const auto& calibration = summary.calibration)
    table.rows = {{"", "", readings_words(*calibration), number_text(calibration->model_factor, 3)}};
  else
    table.header.back() = "Highest reading / prediction";
  return table;
}

std::string versions_text(const Summary& summary) {
  return "Wrapgauge " + summary.program_version + ", mesh of " + fixed_text(summary.mesh.edge / mm, 1) +
         " mm, " + std::to_string(summary.mesh.nodes) + " nodes. Made from these files:";
}

NoteTable versions_table(const Summary& summary) {
  NoteTable table{{"Input", "File", "SHA-256"}, {}, {14, 30, 56}};
  for (const InputFile& input : summary.inputs) table.rows.push_back({input.role, input.name, input.sha256});
  return table;
}

NoteTable signatures_table(const Summary& summary) {
  NoteTable table{{"Signs as", "Name", "Date", "Signature"}, {}, {30, 26, 16, 28}, 2};
  table.rows = {{"Responsible for the study", "", "", ""},
                {"Made and tested the device", "", "", ""},
                {"Read this note for the board", "", "", ""}};
  if (summary.cleared_by)
    table.rows.push_back({"Cleared it: " + summary.cleared_by->role, summary.cleared_by->name, "", ""});
  return table;
}

}  // namespace

NoteBlocks note_on_record(const Summary& summary) {
  NoteBlocks blocks{
      NoteHeading{"15. Calibration"},
      NoteText{calibration_text(summary)},
      calibration_table(summary),
      NoteHeading{"16. What was not checked"},
      NoteText{"How the wearer moves, sweats or tenses; clothes; bone shape beyond the sites named; how "
               "tissue heals; any person's own health; how the cast ages; electric parts; what the silicone "
               "gives off. No standard for medical devices is claimed to be met."},
      NoteText{"This is not a medical device and this note is no approval. It neither diagnoses nor treats. "
               "For clinical use ask a clinician and the body that licenses devices."}};
  if (!summary.assumed.empty()) {
    blocks.push_back(NoteText{"What was assumed:"});
    blocks.push_back(NoteList{summary.assumed});
  }
  blocks.insert(blocks.end(),
                {NoteHeading{"17. Versions and input files"}, NoteText{versions_text(summary)},
                 versions_table(summary), NoteHeading{"18. Signatures"}, signatures_table(summary)});
  return blocks;
}

}  // namespace wrapgauge
