#pragma once
#include <string>
#include <vector>

namespace wrapgauge {

// What every result says, whatever its numbers. Judgement, for healthy awake adults who can take the device
// off by themselves; a clinician decides for everyone else.
struct Cautions {
  std::string standing;                 // what this is not
  std::vector<std::string> not_for;     // who must not take part
  std::vector<std::string> stop_signs;  // take it off at once
  std::string ask;
};

const Cautions& cautions();

}  // namespace wrapgauge
