#pragma once
#include <optional>
#include <string>
#include <vector>

#include "model/body/body_part.hpp"

namespace wrapgauge {

// What every result says, whatever its numbers. Judgement and common nursing practice, for healthy awake
// adults who can take the device off by themselves; a clinician decides for everyone else.
struct Cautions {
  std::string standing;                 // what this is not
  std::string never;                    // where nothing may press, whoever allows it
  std::vector<std::string> every_time;  // what holds each time it goes on
  std::vector<std::string> of_part;     // what to mind on this part of the body; may be empty
  std::vector<std::string> not_for;     // who must not take part
  std::vector<std::string> stop_signs;  // take it off at once
  std::string ask;
};

// A part that is not known gets the words of every part.
// `calibrated`: on readings of this device.
Cautions cautions(std::optional<BodyPart> part = std::nullopt, bool calibrated = false);

}  // namespace wrapgauge
