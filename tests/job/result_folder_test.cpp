#include "app/job/result_folder.hpp"

#include <gtest/gtest.h>
#include <signal.h>
#include <sys/ptrace.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <functional>
#include <map>

#include "app/job/result_placing.hpp"
#include "model/core/file.hpp"

namespace wrapgauge {
namespace {

namespace fs = std::filesystem;

// Invented: two plans and what a command might write of them.
ResultOrigin origin(const std::string& plan) {
  return {
      plan, {{"plan", plan + ".json", sha256_of(plan)}, {"limits", "limits.json", sha256_of("limits")}}, {}};
}

ResultPart part(const std::string& plan, const std::string& command = "estimate") {
  ResultPart made{command, {}};
  for (const char* name : {"summary.json", "summary.md", "body.png"})
    made.files.push_back({command + "-" + name, plan + " " + name + std::string(3000, '.')});
  return made;
}

// Path and bytes of every file; folders as they are.
std::map<std::string, std::string> all_in(const fs::path& folder) {
  std::map<std::string, std::string> all;
  for (const auto& entry : fs::recursive_directory_iterator(folder))
    if (entry.is_regular_file()) all[fs::relative(entry.path(), folder).string()] = *read_file(entry.path());
  return all;
}

class ResultFolderTest : public testing::Test {
 protected:
  void SetUp() override {
    const auto* test = testing::UnitTest::GetInstance()->current_test_info();
    root_ =
        fs::temp_directory_path() / ("wrapgauge-results-" + std::to_string(getpid()) + "-" + test->name());
    fs::remove_all(root_);
    fs::create_directories(root_);
  }
  void TearDown() override { fs::remove_all(root_); }

  fs::path folder() const { return root_ / "cuff"; }
  std::vector<std::string> write(const std::string& plan, const std::vector<ResultPart>& parts) const {
    auto opened = ResultFolder::open(folder(), origin(plan));
    if (!opened) return {"PROBLEM: " + opened.problem().message};
    ResultFolder place = std::move(opened).value();
    if (auto written = place.write(parts); !written) return {"PROBLEM: " + written.problem().message};
    return english(place.said());
  }
  std::vector<std::string> write(const std::string& plan) const { return write(plan, {part(plan)}); }
  void put(const std::string& name, const std::string& bytes) const {
    fs::create_directories((folder() / name).parent_path());
    std::ofstream(folder() / name, std::ios::binary) << bytes;
  }
  bool holds(const std::string& name) const { return fs::exists(folder() / name); }
  std::vector<std::string> beside() const {
    std::vector<std::string> names;
    for (const auto& entry : fs::directory_iterator(root_)) names.push_back(entry.path().filename().string());
    return names;
  }

  fs::path root_;
};

using Names = std::vector<std::string>;

TEST_F(ResultFolderTest, HoldsTheWholeSetAndAManifestOfItAndNothingLiesBeside) {
  EXPECT_EQ(write("one"), Names{});
  const auto manifest = read_manifest(folder());
  ASSERT_TRUE(manifest);
  ASSERT_EQ(manifest->sets.size(), 1u);
  EXPECT_EQ(manifest->sets[0].files.size(), 3u);
  for (const ManifestFile& file : manifest->sets[0].files) {
    const std::string bytes = *read_file(folder() / file.name);
    EXPECT_EQ(file.bytes, bytes.size());
    EXPECT_EQ(file.sha256, sha256_of(bytes));
  }
  EXPECT_EQ(all_in(folder()).size(), 4u);
  EXPECT_EQ(beside(), Names{"cuff"});
}

TEST_F(ResultFolderTest, HasTheSameManifestForTheSameResults) {
  write("one");
  const auto first = all_in(folder());
  write("two");
  EXPECT_NE(all_in(folder()), first);
  write("one");
  EXPECT_EQ(all_in(folder()), first);
}

TEST_F(ResultFolderTest, KeepsTheUsersOwnFilesAndFolders) {
  write("one");
  put("remarks.txt", "mine");
  put("photos/try/one.jpg", "a picture");
  fs::create_symlink("remarks.txt", folder() / "link");
  EXPECT_EQ(write("two"), Names{});
  EXPECT_EQ(*read_file(folder() / "remarks.txt"), "mine");
  EXPECT_EQ(*read_file(folder() / "photos/try/one.jpg"), "a picture");
  EXPECT_TRUE(fs::is_symlink(folder() / "link"));
  EXPECT_EQ(beside(), Names{"cuff"});
}

TEST_F(ResultFolderTest, KeepsWhatWasEditedUnderAnotherName) {
  write("one");
  put("estimate-summary.md", "filled in by hand");
  const auto said = write("two");
  EXPECT_EQ(*read_file(folder() / "estimate-summary.edited.md"), "filled in by hand");
  EXPECT_EQ(*read_file(folder() / "estimate-summary.md"), part("two").files[1].bytes);
  ASSERT_EQ(said.size(), 1u);
  EXPECT_NE(said[0].find("estimate-summary.edited.md"), std::string::npos);
}

TEST_F(ResultFolderTest, KeepsAnotherCommandsSetOfTheSameInputsOnly) {
  write("one", {part("one"), part("one", "note")});
  EXPECT_EQ(write("one"), Names{});
  EXPECT_TRUE(holds("note-summary.md"));
  EXPECT_EQ(read_manifest(folder())->sets.size(), 2u);
  const auto said = write("two");
  EXPECT_FALSE(holds("note-summary.md"));
  ASSERT_EQ(said.size(), 1u);
  EXPECT_NE(said[0].find("note-summary.md"), std::string::npos);
  EXPECT_EQ(read_manifest(folder())->sets.size(), 1u);
}

TEST_F(ResultFolderTest, OfAnotherPlanIsMarkedAsOutOfDateUntilTheNewSetIsThere) {
  write("one");
  ASSERT_TRUE(ResultFolder::open(folder(), origin("one")).ok());
  EXPECT_FALSE(holds("OUT-OF-DATE.txt"));
  const auto before = all_in(folder());
  ASSERT_TRUE(ResultFolder::open(folder(), origin("two")).ok());
  auto marked = all_in(folder());
  EXPECT_NE(marked["OUT-OF-DATE.txt"].find("plan two.json"), std::string::npos);
  marked.erase("OUT-OF-DATE.txt");
  EXPECT_EQ(marked, before);
  write("two");
  EXPECT_FALSE(holds("OUT-OF-DATE.txt"));
}

TEST_F(ResultFolderTest, ThatHeldOtherThingsIsNotSwappedAndThisIsSaid) {
  put("thesis.txt", "years of work");
  for (const char* plan : {"one", "two"}) {
    const auto said = write(plan);
    ASSERT_EQ(said.size(), 1u);
    EXPECT_NE(said[0].find("one by one"), std::string::npos);
    EXPECT_EQ(*read_file(folder() / "estimate-summary.md"), part(plan).files[1].bytes);
    EXPECT_EQ(all_in(folder()).size(), 5u);
  }
}

TEST_F(ResultFolderTest, FollowsALinkToTheFolder) {
  fs::create_directories(root_ / "elsewhere");
  fs::create_directory_symlink("elsewhere", folder());
  write("one");
  write("two");
  EXPECT_TRUE(fs::is_symlink(folder()));
  EXPECT_EQ(all_in(root_ / "elsewhere").size(), 4u);
}

TEST_F(ResultFolderTest, ThatIsAFileIsRefusedBeforeAnythingLong) {
  std::ofstream(folder()) << "x";
  const auto opened = ResultFolder::open(folder(), origin("one"));
  ASSERT_FALSE(opened.ok());
  EXPECT_NE(opened.problem().message.find("is a file"), std::string::npos);
}

TEST_F(ResultFolderTest, IsNotMadeByARunThatFails) {
  ASSERT_TRUE(ResultFolder::open(root_ / "deep" / "er" / "cuff", origin("one")).ok());
  EXPECT_EQ(beside(), Names{});
}

TEST_F(ResultFolderTest, ManifestThatNamesAFileElsewhereTakesNothingAway) {
  write("one");
  std::ofstream(root_ / "precious") << "x";
  std::string manifest = *read_file(folder() / kManifestName);
  manifest.replace(manifest.find("estimate-body.png"), 17, "../precious");
  put(kManifestName, manifest);
  write("two");
  EXPECT_TRUE(fs::exists(root_ / "precious"));
}

// A child that writes set two over set one.
pid_t start(const std::function<void()>& work) {
  const pid_t child = ::fork();
  if (child != 0) return child;
  work();
  ::_exit(0);
}

// Stops at each system call of the child, and kills it at the `last`. Whether it was still running then.
bool killed_at_call(pid_t child, int last) {
  int status = 0;
  ::waitpid(child, &status, 0);
  for (int call = 0; WIFSTOPPED(status); ++call) {
    if (call == last) {
      ::kill(child, SIGKILL);
      ::waitpid(child, &status, 0);
      return true;
    }
    ::ptrace(PTRACE_SYSCALL, child, nullptr, nullptr);
    ::waitpid(child, &status, 0);
  }
  return false;
}

class KilledResults : public ResultFolderTest {
 protected:
  // With the user's own file and a folder of runs; the mark is told apart.
  void set_up_sets() {
    fs::remove_all(root_);
    fs::create_directories(root_);
    write("one");
    put("runs/part-1-of-1.jsonl", "kept");
    put("remarks.txt", "mine");
    one_ = all_in(folder());
    write("two");
    two_ = all_in(folder());
    write("one");
  }
  void expect_one_set(int call) const {
    auto now = all_in(folder());
    now.erase("OUT-OF-DATE.txt");
    for (auto at = now.begin(); at != now.end();)  // a mark that was being written: swept with the next
      at = at->first.starts_with("OUT-OF-DATE.txt.part-") ? now.erase(at) : std::next(at);
    EXPECT_TRUE(now == one_ || now == two_) << "killed at call " << call;
  }
  std::map<std::string, std::string> one_, two_;
};

TEST_F(KilledResults, AtAnySystemCallAreOneWholeSet) {
  set_up_sets();
  int calls = 0, news = 0;
  for (bool killed = true; killed; ++calls) {
    const pid_t child = start([&] {
      if (::ptrace(PTRACE_TRACEME, 0, nullptr, nullptr) != 0) ::_exit(77);  // not allowed here
      ::raise(SIGSTOP);
      write("two");
    });
    killed = killed_at_call(child, calls);
    expect_one_set(calls);
    auto now = all_in(folder());
    now.erase("OUT-OF-DATE.txt");
    if (now == two_) {
      ++news;
      write("one");
    }
  }
  EXPECT_GT(calls, 100);
  EXPECT_GT(news, 2);  // calls after the swap
  EXPECT_LT(news, calls);
  write("two");  // sweeps
  EXPECT_EQ(all_in(folder()), two_);
  EXPECT_EQ(beside(), Names{"cuff"});
  RecordProperty("calls", calls);
}

TEST_F(KilledResults, PutInPlaceOneByOneSaySoUntilTheNextRun) {
  put("thesis.txt", "years of work");
  write("one");
  const auto one = all_in(folder());
  write("two");
  const auto two = all_in(folder());
  bool killed = true;
  int mixed = 0;
  for (int call = 0; killed; ++call) {
    write("one");
    const pid_t child = start([&] {
      if (::ptrace(PTRACE_TRACEME, 0, nullptr, nullptr) != 0) ::_exit(77);  // not allowed here
      ::raise(SIGSTOP);
      write("two");
    });
    killed = killed_at_call(child, call);
    auto now = all_in(folder());
    const bool said = now.contains("INCOMPLETE.txt");
    std::erase_if(now, [](const auto& file) {
      return file.first.starts_with("OUT-OF-DATE.txt") || file.first.starts_with("INCOMPLETE.txt") ||
             file.first.starts_with(".wrapgauge-new-");
    });
    if (now == one || now == two) continue;
    ++mixed;
    EXPECT_TRUE(said) << "call " << call;
  }
  EXPECT_GT(mixed, 0);
  write("two");
  EXPECT_EQ(all_in(folder()), two);
}

// Files that may grow to so many bytes only: as a disk that fills up.
TEST_F(KilledResults, OfADiskThatFillsUpAreTheOldSetWithASentence) {
  set_up_sets();
  auto opened = ResultFolder::open(folder(), origin("two"));
  ASSERT_TRUE(opened.ok());
  for (const rlim_t most : {0, 1, 500, 2999}) {
    const pid_t child = start([&] {
      ::signal(SIGXFSZ, SIG_IGN);
      const rlimit limit{most, most};
      ::setrlimit(RLIMIT_FSIZE, &limit);
      ResultFolder place = *opened;
      const auto written = place.write({part("two")});
      ::_exit(written.ok() || written.problem().message.find("Cannot write") == std::string::npos ? 1 : 0);
    });
    int status = 0;
    ::waitpid(child, &status, 0);
    EXPECT_EQ(status, 0) << most;
    auto now = all_in(folder());
    EXPECT_TRUE(now.contains("OUT-OF-DATE.txt"));
    now.erase("OUT-OF-DATE.txt");
    EXPECT_EQ(now, one_);
    EXPECT_EQ(beside(), Names{"cuff"});
  }
}

TEST_F(KilledResults, OfADiskWithoutRoomAreRefusedBeforeAnythingLong) {
  set_up_sets();
  const pid_t child = start([&] {
    ::signal(SIGXFSZ, SIG_IGN);
    const rlimit limit{1 << 20, 1 << 20};
    ::setrlimit(RLIMIT_FSIZE, &limit);
    const auto opened = ResultFolder::open(folder(), origin("two"));
    ::_exit(!opened && opened.problem().message.find("no room") != std::string::npos ? 0 : 1);
  });
  int status = 0;
  ::waitpid(child, &status, 0);
  EXPECT_EQ(status, 0);
  EXPECT_EQ(all_in(folder()), one_);
}

}  // namespace
}  // namespace wrapgauge
