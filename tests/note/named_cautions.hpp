#pragma once
// Who must not take part and what stops a session, word by word and apart from the program's own list: a word
// that is dropped or changed there is missed here, in whatever output it is looked for.

#include <cctype>
#include <string>
#include <vector>

namespace wrapgauge {

inline const std::vector<std::string>& named_exclusions() {
  static const std::vector<std::string> all{"reduced feeling",
                                            "nerve damage",
                                            "diabetes",
                                            "cannot say or show that it hurts",
                                            "arterial disease",
                                            "heart failure",
                                            "high blood pressure that is not controlled",
                                            "sickle cell disease",
                                            "a clotting disorder",
                                            "past or suspected thrombosis",
                                            "blood thinners",
                                            "lymphoedema",
                                            "lymph node removal",
                                            "a breast removal",
                                            "a shunt or a line on that limb",
                                            "swelling there",
                                            "broken, fragile or infected skin",
                                            "a fresh injury",
                                            "recent surgery",
                                            "a fracture",
                                            "an implant under the device",
                                            "an allergy to silicone",
                                            "under 18",
                                            "pregnant people",
                                            "people asleep or drunk",
                                            "no clinician can allow it",
                                            "cannot take it off alone"};
  return all;
}

inline const std::vector<std::string>& named_stop_signs() {
  static const std::vector<std::string> all{"pain above 2 of 10",
                                            "throbbing",
                                            "pins and needles",
                                            "numbness",
                                            "weakness",
                                            "turns white, blue or dark",
                                            "feels cold",
                                            "does not come back within 3 s",
                                            "swelling beyond the device",
                                            "veins that stand out",
                                            "short breath",
                                            "dizziness",
                                            "a mark that stays after 30 min",
                                            "a hiss",
                                            "a bulge that grows by itself",
                                            "a pressure reading that is not the one asked for",
                                            "the wearer wants to stop"};
  return all;
}

// What holds each time the device goes on, and where nothing may press.
inline const std::vector<std::string>& named_rules() {
  static const std::vector<std::string> all{"Never on neck, face, eyes or airway",
                                            "awake and sober",
                                            "No one can waive that",
                                            "take it off alone",
                                            "open the closure",
                                            "Look at the skin before"};
  return all;
}

// Runs of spaces and line breaks as one space, so that wrapped text compares.
inline std::string on_one_line(const std::string& text) {
  std::string out;
  for (const char c : text)
    if (std::isspace(static_cast<unsigned char>(c)) == 0)
      out += c;
    else if (!out.empty() && out.back() != ' ')
      out += ' ';
  return out;
}

// Those that `text` does not hold.
inline std::vector<std::string> missing_from(const std::string& text, const std::vector<std::string>& words) {
  const std::string line = on_one_line(text);
  std::vector<std::string> missing;
  for (const std::string& word : words)
    if (line.find(word) == std::string::npos) missing.push_back(word);
  return missing;
}

// What stands between two headings, so that a word elsewhere does not count.
inline std::string between(const std::string& text, const std::string& from, const std::string& to) {
  const std::size_t start = text.find(from);
  if (start == std::string::npos) return "";
  const std::size_t end = text.find(to, start + from.size());
  return end == std::string::npos ? "" : text.substr(start + from.size(), end - start - from.size());
}

}  // namespace wrapgauge
