#include "model/study/many_runs.hpp"

#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <atomic>
#include <csignal>
#include <fstream>
#include <thread>

#include "model/core/file.hpp"
#include "model/study/run_lines.hpp"
#include "tests/study/small_band.hpp"

namespace wrapgauge {
namespace {

std::vector<RunOrder> orders(int count) {
  std::vector<RunOrder> all;
  for (int i = 1; i <= count; ++i)
    all.push_back({"run " + std::to_string(i), "{\"value\":" + std::to_string(i) + "}", 1.0});
  return all;
}

// Answers with the square of the run's number and counts how often it was asked.
struct Squares {
  std::atomic<int> solved = 0;
  AnswerRun answer() {
    return [this](std::size_t run, Progress&) -> Result<std::string> {
      ++solved;
      return "{\"square\":" + std::to_string((run + 1) * (run + 1)) + "}";
    };
  }
};

TEST(ManyRuns, EveryRunIsSolvedOnceAndKept) {
  const small_band::Folder folder("runs");
  Squares squares;
  const auto first = solve_runs(orders(20), {folder.path(), {}}, {}, squares.answer());
  ASSERT_TRUE(first.ok()) << first.problem().message;
  EXPECT_EQ(missing_runs(*first), 0);
  EXPECT_EQ(first->at(6), "{\"square\":49}");
  EXPECT_EQ(squares.solved, 20);
  const auto again = solve_runs(orders(25), {folder.path(), {}}, {}, squares.answer());
  ASSERT_TRUE(again.ok());
  EXPECT_EQ(squares.solved, 25);  // the five that were new
  EXPECT_EQ(folder.kept_runs(), 25);
}

TEST(ManyRuns, PartsAreDealtOutInTurnAndMergeToTheSame) {
  const small_band::Folder whole("whole"), one("one"), two("two"), three("three"), all("all");
  Squares squares;
  const auto at_once = solve_runs(orders(20), {whole.path(), {}}, {}, squares.answer());
  const small_band::Folder* parts[] = {&one, &two, &three};
  for (int p = 0; p < 3; ++p) {
    const auto part = solve_runs(orders(20), {parts[p]->path(), {}}, {p + 1, 3}, squares.answer());
    ASSERT_TRUE(part.ok());
    EXPECT_EQ(missing_runs(*part), p < 2 ? 13 : 14);
  }
  EXPECT_EQ(squares.solved, 40);
  const auto merged =
      solve_runs(orders(20), {all.path(), {three.path(), one.path(), two.path()}}, {}, squares.answer());
  ASSERT_TRUE(merged.ok());
  EXPECT_EQ(squares.solved, 40);
  EXPECT_EQ(*merged, *at_once);
}

// Two parts in one folder that end at about the same time: each was begun before the other had kept anything.
TEST(ManyRuns, ThePartThatEndsLastFindsTheRunsOfTheOthers) {
  const small_band::Folder folder("last");
  Squares squares;
  const AnswerRun other_part_ends_first = [&](std::size_t run, Progress&) -> Result<std::string> {
    if (run == 0) {
      EXPECT_TRUE(solve_runs(orders(6), {folder.path(), {}}, {2, 2}, squares.answer()).ok());
    }
    return std::string("{}");
  };
  const auto last = solve_runs(orders(6), {folder.path(), {}}, {1, 2}, other_part_ends_first);
  ASSERT_TRUE(last.ok()) << last.problem().message;
  EXPECT_EQ(missing_runs(*last), 0);
}

TEST(ManyRuns, ALineCutShortIsSolvedAgainAndTheNextStandsByItself) {
  const small_band::Folder folder("cut");
  Squares squares;
  const auto whole = solve_runs(orders(4), {folder.path(), {}}, {}, squares.answer());
  ASSERT_TRUE(whole.ok());
  const auto file = folder.path() / "part-1-of-1.jsonl";
  const std::string bytes = read_file(file).value();
  ASSERT_TRUE(write_file_atomically(file, bytes.substr(0, bytes.size() - 5)).ok());
  const auto again = solve_runs(orders(4), {folder.path(), {}}, {}, squares.answer());
  ASSERT_TRUE(again.ok());
  EXPECT_EQ(*again, *whole);
  EXPECT_EQ(squares.solved, 5);
  const auto third = solve_runs(orders(4), {folder.path(), {}}, {}, squares.answer());
  EXPECT_EQ(*third, *whole);
  EXPECT_EQ(squares.solved, 5);  // the line after the cut one was read
}

// Killed without warning at ten places: what was finished stays, and in the end all answers are there.
TEST(ManyRuns, TenKillsLoseAtMostTheRunsThatWereBeingSolved) {
  const small_band::Folder folder("kills"), whole("unkilled");
  const auto slow = [](std::size_t run, Progress&) -> Result<std::string> {
    std::this_thread::sleep_for(std::chrono::milliseconds(3));
    return "{\"square\":" + std::to_string((run + 1) * (run + 1)) + "}";
  };
  std::ptrdiff_t kept = 0;
  for (int kill_after_ms = 5; kill_after_ms <= 50; kill_after_ms += 5) {
    const pid_t child = fork();
    ASSERT_GE(child, 0);
    if (child == 0) {
      // One thread, without TBB's: a forked child has none of its parent's.
      auto file = RunLineFile::open(folder.path() / "part-1-of-1.jsonl");
      RunLineFile open = std::move(file).value();
      const auto so_far = kept_runs(orders(60), {folder.path(), {}});
      for (std::size_t run = 0; run < 60; ++run)
        if (!so_far->at(run)) {
          const std::string answer = slow(run, silent_progress()).value();
          (void)open.append(run_line("run", orders(60)[run].identity, answer));
        }
      pause();
    }
    std::this_thread::sleep_for(std::chrono::milliseconds(kill_after_ms));
    kill(child, SIGKILL);
    waitpid(child, nullptr, 0);
    EXPECT_GE(folder.kept_runs(), kept);
    kept = folder.kept_runs();
  }
  EXPECT_GT(kept, 0);
  const auto resumed = solve_runs(orders(60), {folder.path(), {}}, {}, slow);
  const auto at_once = solve_runs(orders(60), {whole.path(), {}}, {}, slow);
  ASSERT_TRUE(resumed.ok());
  ASSERT_TRUE(at_once.ok());
  EXPECT_EQ(*resumed, *at_once);
}

TEST(ManyRuns, ARunWithoutAnswerStopsNothingButAnEndOfMemoryDoes) {
  const small_band::Folder folder("ends");
  const auto answer = [](std::size_t run, Progress&) -> Result<std::string> {
    if (run == 3) return std::string("{\"failed\":\"No equilibrium.\"}");
    return std::string("{}");
  };
  const auto all = solve_runs(orders(8), {folder.path(), {}}, {}, answer);
  ASSERT_TRUE(all.ok());
  EXPECT_EQ(missing_runs(*all), 0);

  const small_band::Folder other("memory");
  const auto gives_out = [](std::size_t run, Progress&) -> Result<std::string> {
    if (run == 3) return Problem{ProblemKind::kProgramFailed, "No memory is left.", {}};
    return std::string("{}");
  };
  const auto ended = solve_runs(orders(8), {other.path(), {}}, {}, gives_out);
  ASSERT_FALSE(ended.ok());
  EXPECT_EQ(ended.problem().message, "No memory is left.");
}

// Cancels once a number of runs are done.
class CancelAfter : public Progress {
 public:
  explicit CancelAfter(int runs) : left_(runs) {}
  void report(std::string_view stage, double) override {
    --left_;
    last = std::string(stage);
  }
  bool cancelled() const override { return left_ <= 0; }
  std::string last;

 private:
  std::atomic<int> left_;
};

TEST(ManyRuns, CancelledItSaysWhatIsKeptAndGoesOn) {
  const small_band::Folder folder("cancel");
  Squares squares;
  CancelAfter cancel(3);
  const auto cut = solve_runs(orders(50), {folder.path(), {}}, {}, squares.answer(), cancel);
  ASSERT_FALSE(cut.ok());
  EXPECT_EQ(cut.problem().kind, ProblemKind::kCancelled);
  EXPECT_NE(cut.problem().message.find("of 50 runs are kept"), std::string::npos) << cut.problem().message;
  EXPECT_NE(cancel.last.find(" left"), std::string::npos) << cancel.last;
  const std::ptrdiff_t kept = folder.kept_runs();
  EXPECT_GE(kept, 3);
  ASSERT_LT(kept, 50);
  const auto rest = solve_runs(orders(50), {folder.path(), {}}, {}, squares.answer());
  ASSERT_TRUE(rest.ok());
  EXPECT_EQ(squares.solved, 50);
}

TEST(ManyRuns, TwoProgramsDoNotSolveTheSamePartInOneFolder) {
  const small_band::Folder folder("twice");
  const auto held = RunLineFile::open(folder.path() / "part-1-of-1.jsonl");
  ASSERT_TRUE(held.ok());
  Squares squares;
  const auto refused = solve_runs(orders(2), {folder.path(), {}}, {}, squares.answer());
  ASSERT_FALSE(refused.ok());
  EXPECT_NE(refused.problem().message.find("Another program is solving"), std::string::npos);
  EXPECT_TRUE(solve_runs(orders(2), {folder.path(), {}}, {2, 2}, squares.answer()).ok());
}

TEST(ManyRuns, AFolderThatCannotBeWrittenAndAPartThatDoesNotExistAreSaid) {
  Squares squares;
  const auto gone = solve_runs(orders(2), {"/dev/null/runs", {}}, {}, squares.answer());
  ASSERT_FALSE(gone.ok());
  EXPECT_NE(gone.problem().message.find("Cannot keep runs"), std::string::npos) << gone.problem().message;
  EXPECT_FALSE(solve_runs(orders(2), {"/tmp", {}}, {3, 2}, squares.answer()).ok());
  EXPECT_EQ(squares.solved, 0);
  EXPECT_FALSE(run_part_of("3/2").ok());
  EXPECT_FALSE(run_part_of("2").ok());
  EXPECT_FALSE(run_part_of("0/2").ok());
  EXPECT_EQ(run_part_of("2/4")->part, 2);
  EXPECT_EQ(run_part_of("")->parts, 1);
}

// Twice the same run, as when two people of a list have the same measures: both get the answer.
TEST(ManyRuns, RunsThatAreAlikeShareTheirAnswer) {
  const small_band::Folder folder("alike");
  std::vector<RunOrder> twins = orders(2);
  twins[1].identity = twins[0].identity;
  Squares squares;
  ASSERT_TRUE(solve_runs(twins, {folder.path(), {}}, {}, squares.answer()).ok());
  const auto kept = kept_runs(twins, {folder.path(), {}});
  ASSERT_TRUE(kept.ok());
  EXPECT_EQ(kept->at(0), kept->at(1));
}

}  // namespace
}  // namespace wrapgauge
