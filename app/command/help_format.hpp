#pragma once
// Help pages in words: "MM", "mm|cm|m|in", "NUMBER, 0 to 500; 60 if not given", "(needed)", "(not with
// --own-mesh)".

#include <CLI/CLI.hpp>
#include <string>

namespace wrapgauge {

class HelpFormat : public CLI::Formatter {
 public:
  std::string make_option_name(const CLI::Option* option, bool positional) const override;
  std::string make_option_opts(const CLI::Option* option) const override;
};

}  // namespace wrapgauge
