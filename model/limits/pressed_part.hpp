#pragma once
// The part of a layout that presses on a place, and its names in sentences.

#include <array>
#include <string>

#include "model/core/phrase.hpp"
#include "model/inflation/load_path.hpp"

namespace wrapgauge {

enum class PressedKind { kChamber, kStrap, kChannel, kSeam };
inline constexpr std::array kPressedKinds = {PressedKind::kChamber, PressedKind::kStrap,
                                             PressedKind::kChannel, PressedKind::kSeam};

struct PressedPart {
  PressedKind kind = PressedKind::kSeam;
  std::string name;  // of the layout; "seam" for a seam, which has none
  bool operator==(const PressedPart&) const = default;
};

// Where several parts meet at a flat vertex: a chamber before a strap, a strap before a channel, then seams.
PressedPart part_under(const InflationSetup& setup, int vertex);

// What ContactFigures::peak_part names.
PressedPart part_called(const Layout& layout, const Phrase& peak_part);

Phrase as_place(const PressedPart& part);    // how a card names it: "left", "closing strap", "seam"
Phrase as_subject(const PressedPart& part);  // begins a sentence: "Chamber 'left'", "A seam"
Phrase amid(const PressedPart& part);        // "chamber 'left'", "a seam"
Phrase to_move(PressedKind kind);            // "the chamber", after "move"

}  // namespace wrapgauge
