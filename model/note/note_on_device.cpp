#include <algorithm>
#include <cmath>

#include "model/core/number_text.hpp"
#include "model/core/pressure_text.hpp"
#include "model/core/time_text.hpp"
#include "model/note/note_sections.hpp"

namespace wrapgauge {
namespace {

// Inlets with steps of their own are told one by one, the others as the session says.
std::string session_text(const Summary& summary) {
  std::string own;
  std::size_t with_steps = 0;
  for (const InflatedInlet& inlet : summary.inlets) {
    if (inlet.steps.empty()) continue;
    ++with_steps;
    own += " Inlet '" + inlet.inlet + "' goes " + programme_text(inlet.steps) + ".";
  }
  if (!summary.session) return "How long and how often it is worn is not in the plan." + own;
  const Session& session = *summary.session;
  const std::string text = "It is worn for " + time_text(session.length);
  if (!session.hold || with_steps == summary.inlets.size()) return text + "." + own;
  const std::string turns = "inflated for " + time_text(*session.hold) + " and vented for " +
                            time_text(session.off.value_or(Time())) + " in turn.";
  return with_steps == 0 ? text + ", " + turns : text + "." + own + " The other inlets: " + turns;
}

std::string worn_text(const Summary& summary) {
  std::string text;
  for (const std::string& sentence : summary.worn) text += sentence + " ";
  return text + session_text(summary);
}

NoteTable inlets_table(const Summary& summary) {
  NoteTable table{{"Inlet", "Planned", "Pressure of the air", "Volume"}, {}, {31, 25, 25, 19}};
  for (const InflatedInlet& inlet : summary.inlets)
    table.rows.push_back({inlet.inlet, inlet.asked.empty() ? "as calculated" : inlet.asked,
                          pressure_text(inlet.gauge), fixed_text(inlet.volume / mL, 0) + " mL"});
  return table;
}

std::string part_text(const Summary& summary) {
  if (!summary.part) return "";
  const std::string part(body_part_name(*summary.part));
  return summary.side ? part + ", " + std::string(side_name(*summary.side)) : part;
}

std::string height_text(const std::optional<Length>& above_heart) {
  if (!above_heart) return "";
  const double up_cm = *above_heart / cm;
  if (std::abs(up_cm) < 0.5) return "level with the heart";
  return fixed_text(std::abs(up_cm), 0) + (up_cm > 0.0 ? " cm above" : " cm below") + " the heart";
}

NoteTable wearers_table(const Summary& summary, const NoteExtras& extras) {
  const Wearers& wearers = summary.wearers;
  NoteTable table{{"About the wearers", "Answer"},
                  {{"Who takes part", wearers.population},
                   {"How many", wearers.number ? std::to_string(*wearers.number) : ""},
                   {"Posture", wearers.posture ? std::string(wearer_posture_name(*wearers.posture)) : ""},
                   {"Limb against the heart", height_text(wearers.above_heart)},
                   {"Part of the body", part_text(summary)}},
                  {34, 66}};
  if (extras.people) table.rows.push_back({"Girths to accept", extras.people->words});
  return table;
}

std::string tissue_text(const Summary& summary) {
  const std::string heart =
      "Posture matters: veins of a limb that hangs bear more than those of one that lies level.";
  return summary.tissue_confirmed
             ? heart
             : heart + " The tissue row was not chosen for this part: it is not confirmed.";
}

std::string_view kind_text(SiteKind kind) {
  switch (kind) {
    case SiteKind::kBone:
      return "bone";
    case SiteKind::kNerve:
      return "nerve";
    case SiteKind::kVessel:
      return "vessel";
    case SiteKind::kTendon:
      break;
  }
  return "tendon";
}

NoteTable sites_table(const Summary& summary) {
  NoteTable table{{"No.", "Site", "Close under the skin", "Skin to bone", "Status"}, {}, {8, 36, 22, 16, 18}};
  for (std::size_t i = 0; i < summary.bony_sites.size(); ++i) {
    const BonySite& site = summary.bony_sites[i];
    table.rows.push_back({std::to_string(i + 1), site.name, std::string(kind_text(site.kind)),
                          fixed_text(site.tissue_depth / mm, 1) + " mm",
                          site.status.empty() ? "not said" : site.status});
  }
  return table;
}

std::string sites_text(const Summary& summary) {
  if (!summary.sites_known)
    return "Nobody has said where the bones and nerves of this body lie. Until the sites are marked, or "
           "someone gives their word that there are none, every place is judged as if it lay over bone.";
  if (summary.bony_sites.empty()) return "No bony or nerve site is marked on this body.";
  return "The numbers in the picture are those of the table. A site on the far side has no number there.";
}

}  // namespace

NoteBlocks note_on_device(const Summary& summary, const NoteExtras& extras) {
  NoteBlocks blocks{
      NoteTable{{"Study name", "Ethics reference", "Responsible person", "Date of making"},
                {{"", "", "", summary.date}},
                {31, 24, 26, 19},
                2},
      NoteHeading{"1. What is worn"},
      NoteText{worn_text(summary)},
      inlets_table(summary),
      NoteHeading{"2. Who wears it"},
      wearers_table(summary, extras),
      NoteText{tissue_text(summary)},
      NoteHeading{"3. Where it sits"},
      NotePicture{kPictureOfPlace,
                  "Both sides of the limb, trunk end up, with the pressure on the skin, and the whole limb. "
                  "Line: here the prediction with the factor meets the limit. Hatched: above it."},
      NoteText{sites_text(summary)}};
  if (!summary.bony_sites.empty()) blocks.push_back(sites_table(summary));
  return blocks;
}

}  // namespace wrapgauge
