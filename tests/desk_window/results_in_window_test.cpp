#include "tests/desk_window/job_fixture.hpp"

namespace wrapgauge {
namespace {

class SavedResults : public JobTest {
 protected:
  void save_into(const std::filesystem::path& folder) {
    hand::with_answers(
        [&] {
          hand::choose_in_menu(window_, {QStringLiteral("Plan"), QStringLiteral("Save results…")});
        },
        {hand::give_file(folder)});
  }
  bool says(const char* words) { return window_.message().words().contains(QString::fromUtf8(words)); }
};

// What the command line says of the folder, the window says too.
TEST_F(SavedResults, KeepWhatWasEditedAndSaySo) {
  window_.start({});
  ASSERT_TRUE(wait_for_result());
  const auto folder = root() / "results";
  std::filesystem::create_directories(folder);
  save_into(folder);
  EXPECT_TRUE(says("Results were written to")) << window_.message().words().toStdString();
  EXPECT_FALSE(says("was edited"));
  ASSERT_TRUE(write_file_atomically(folder / "summary.md", "my own words").ok());
  save_into(folder);
  EXPECT_TRUE(says("summary.md was edited after it was written: it is kept as summary.edited.md."))
      << window_.message().words().toStdString();
  EXPECT_EQ(*read_file(folder / "summary.edited.md"), "my own words");
}

}  // namespace
}  // namespace wrapgauge
