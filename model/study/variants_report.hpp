#pragma once
// What variants of a plan came to, as tables, JSON and words. Same answers, same bytes.

#include "model/study/solve_variants.hpp"

namespace wrapgauge {

struct VaryResult {
  std::string plan;  // its name
  Variants variants;
  std::string mesh;                    // in words
  std::vector<VariantAnswer> answers;  // a variant each
};

// "within the limits, as predicted", "above a limit", "not to be worn", "no figures"
std::string verdict_words(const VariantAnswer& answer);
// The words of every limit set and table that is not the program's own, each once.
std::vector<std::string> limits_words(const VaryResult& result);
// The worst of the variants' exit codes 0, 4 and 5; 3 when none has figures.
int worst_exit_code(const VaryResult& result);

std::vector<std::string> vary_words(const VaryResult& result);  // one sentence each, the verdict first
std::string variants_csv(const VaryResult& result);             // a line a variant
std::string curves_csv(const VaryResult& result);  // a line a recorded state of a chamber of a variant
std::string variants_json(const VaryResult& result);
std::string variants_markdown(const VaryResult& result);

}  // namespace wrapgauge
