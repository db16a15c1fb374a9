#pragma once
// One row of docs/verification.md: printed while the test runs, failed when beyond its tolerance.
// tests/verification.sh picks the lines that start with "  | ".

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <iostream>
#include <string>
#include <vector>

#include "model/core/file.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge::published {

struct Source {
  std::string section;            // heading of the table in docs/verification.md
  std::string words;              // where the reference comes from
  std::string status;             // confirmed, from memory, judgement or derived
  std::vector<std::string> keys;  // in docs/sources.bib
  std::string made_by;            // file of tests/published that calculates the reference figures
};

// A row that names no source, or one that is not there, fails.
inline std::string source_words(const Source& source) {
  const std::filesystem::path root(WRAPGAUGE_SOURCE_DIR);
  const auto bibliography = read_file(root / "docs/sources.bib");
  std::string words = source.words + " (" + source.status;
  for (const std::string& key : source.keys) {
    EXPECT_TRUE(bibliography && bibliography->find("{" + key + ",") != std::string::npos)
        << "docs/sources.bib has no entry " << key;
    words += "; " + key;
  }
  if (!source.made_by.empty()) {
    EXPECT_TRUE(std::filesystem::exists(root / "tests/published" / source.made_by)) << source.made_by;
    words += "; " + source.made_by;
  }
  EXPECT_FALSE(source.keys.empty() && source.made_by.empty()) << "no source: " << source.words;
  const std::vector<std::string> known{"confirmed", "from memory", "judgement", "derived"};
  EXPECT_TRUE(std::find(known.begin(), known.end(), source.status) != known.end()) << source.status;
  return words + ")";
}

// A figure as it stands in a table is what its generator gives, to the digits that are written.
inline void expect_derived(double figure, double generated, double digits = 5e-6) {
  EXPECT_NEAR(figure, generated, digits * std::max(1.0, std::abs(figure)))
      << "the table is not its generator's";
}

inline void print_row(const Source& source, const std::string& what, const std::string& reference,
                      const std::string& ours, const std::string& difference, const std::string& accepted) {
  std::cout << "  | " << source.section << " | " << what << " | " << source_words(source) << " | "
            << reference << " | " << ours << " | " << difference << " | " << accepted << " |\n";
}

// Relative difference, accepted up to `tolerance` (0.01 = 1 %).
inline void expect_within(const Source& source, const std::string& what, double ours, double reference,
                          double tolerance) {
  const double difference = ours / reference - 1.0;
  const int decimals = tolerance < 1e-3 ? 5 : 2;
  print_row(source, what, number_text(reference), number_text(ours),
            fixed_text(100.0 * difference, decimals) + " %", number_text(100.0 * tolerance) + " %");
  EXPECT_LE(std::abs(difference), tolerance) << what << ": " << ours << " instead of " << reference;
}

// Difference in the unit of the value, accepted up to `tolerance`.
inline void expect_near(const Source& source, const std::string& what, double ours, double reference,
                        double tolerance, const std::string& unit) {
  print_row(source, what, number_text(reference) + " " + unit, number_text(ours) + " " + unit,
            fixed_text(ours - reference, 2) + " " + unit, number_text(tolerance) + " " + unit);
  EXPECT_LE(std::abs(ours - reference), tolerance) << what << ": " << ours << " instead of " << reference;
}

// A value in a range: a trend, an order of convergence.
inline void expect_between(const Source& source, const std::string& what, double ours, double low,
                           double high) {
  print_row(source, what, number_text(low) + " to " + number_text(high), number_text(ours), "-", "in range");
  EXPECT_GE(ours, low) << what;
  EXPECT_LE(ours, high) << what;
}

// Something that is so or is not.
inline void expect_claim(const Source& source, const std::string& what, bool so) {
  print_row(source, what, "yes", so ? "yes" : "no", "-", "yes");
  EXPECT_TRUE(so) << what;
}

// Measured and told; nothing outside to hold it against.
inline void tell(const Source& source, const std::string& what, const std::string& ours) {
  print_row(source, what, "-", ours, "-", "-");
}

}  // namespace wrapgauge::published
