// Help pages: 80 columns each, and the exit codes once.
#include <gtest/gtest.h>

#include <algorithm>
#include <sstream>

#include "app/command/wrapped_text.hpp"
#include "tests/command/command_test.hpp"

namespace wrapgauge {
namespace {

class HelpPages : public CommandTest {
 protected:
  std::string page(std::vector<std::string> words) const {
    words.push_back("--help");
    const Answer answer = run(words);
    EXPECT_EQ(answer.code, 0) << answer.err;
    return answer.out;
  }
  // Those that a page lists under "Subcommands:".
  static std::vector<std::string> commands_on(const std::string& page) {
    std::vector<std::string> names;
    std::istringstream in(page.substr(std::min(page.find("Subcommands:"), page.size())));
    std::string line;
    std::getline(in, line);
    while (std::getline(in, line) && line.starts_with("  "))
      if (line[2] != ' ') names.push_back(line.substr(2, line.find(' ', 2) - 2));
    return names;
  }
  // Every page by the words that lead to it.
  std::vector<std::vector<std::string>> all_pages() const {
    std::vector<std::vector<std::string>> all{{}};
    for (const std::string& name : commands_on(page({}))) {
      all.push_back({name});
      for (const std::string& inner : commands_on(page({name}))) all.push_back({name, inner});
    }
    return all;
  }
};

TEST_F(HelpPages, FitEightyColumns) {
  const auto pages = all_pages();
  EXPECT_GT(pages.size(), 15u);
  for (const auto& words : pages) {
    std::istringstream in(page(words));
    for (std::string line; std::getline(in, line);)
      EXPECT_LE(columns_of(line), kColumns) << (words.empty() ? "" : words.back()) << ": " << line;
  }
}

TEST_F(HelpPages, TellTheExitCodesOnTheMainPageOnly) {
  for (const auto& words : all_pages())
    EXPECT_EQ(page(words).find("Exit codes") != std::string::npos, words.empty())
        << (words.empty() ? "" : words.back());
}

}  // namespace
}  // namespace wrapgauge
