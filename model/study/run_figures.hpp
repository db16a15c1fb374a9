#pragma once
// The figures of one solved state as plain numbers with names, so that a study can go over them all alike.

#include <string>
#include <vector>

#include "model/study/study_case.hpp"

namespace wrapgauge {

struct FigureName {
  const char* key;   // with its unit: "mean_kPa"
  const char* text;  // "mean contact pressure"
  const char* unit;  // "kPa"
  int decimals;
};
const std::vector<FigureName>& chamber_figure_names();
const std::vector<FigureName>& whole_figure_names();

struct RunFigures {
  std::vector<std::vector<double>> chambers;  // a chamber each, a figure each, in the order of the names
  std::vector<double> whole;
};
RunFigures run_figures(const StateReading& reading);

}  // namespace wrapgauge
