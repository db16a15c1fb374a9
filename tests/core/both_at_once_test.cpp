#include "model/core/both_at_once.hpp"

#include <gtest/gtest.h>
#include <pthread.h>

#include <algorithm>
#include <atomic>
#include <chrono>
#include <cstdlib>
#include <memory>
#include <new>
#include <stdexcept>
#include <string>
#include <system_error>
#include <thread>
#include <vector>

namespace wrapgauge {
namespace {

using namespace std::chrono_literals;

// What came out, in words.
template <class Work>
std::string what_is_thrown_by(const Work& work) {
  try {
    work();
    return "nothing";
  } catch (const std::bad_alloc&) {
    return "no memory";
  } catch (const std::exception& error) {
    return error.what();
  } catch (int number) {
    return "the number " + std::to_string(number);
  }
}

TEST(BothAtOnce, HasDoneBothWhenItReturns) {
  int one = 0, other = 0;
  both_at_once([&] { one = 1; },
               [&] {
                 std::this_thread::sleep_for(2ms);
                 other = 2;
               });
  EXPECT_EQ(one, 1);
  EXPECT_EQ(other, 2);
}

TEST(BothAtOnce, StaysOnItsThreadWhereLargerWorkKeepsAllBusy) {
  std::vector<std::unique_ptr<LargeWork>> busy;
  for (unsigned k = 0; k < std::max(2u, std::thread::hardware_concurrency()); ++k)
    busy.push_back(std::make_unique<LargeWork>());
  std::thread::id other;
  both_at_once([] { std::this_thread::sleep_for(20ms); },  // long enough for a helper to begin
               [&] { other = std::this_thread::get_id(); });
  EXPECT_EQ(other, std::this_thread::get_id());
  EXPECT_EQ(what_is_thrown_by([] { both_at_once([] { throw 1; }, [] { throw std::bad_alloc(); }); }),
            "the number 1");
}

TEST(BothAtOnce, HandsOnWhatOneSideThrowsOnceTheOtherHasEnded) {
  bool ended = false;
  const auto work = [&] {
    both_at_once([] { throw std::runtime_error("one"); },
                 [&] {
                   std::this_thread::sleep_for(20ms);
                   ended = true;
                 });
  };
  EXPECT_EQ(what_is_thrown_by(work), "one");
  EXPECT_TRUE(ended);
}

TEST(BothAtOnce, HandsOnWhatTheOtherSideThrowsOnceOneHasEnded) {
  bool ended = false;
  const auto work = [&] {
    both_at_once(
        [&] {
          std::this_thread::sleep_for(20ms);  // long enough for the helper to begin
          ended = true;
        },
        [] { throw std::runtime_error("other"); });
  };
  EXPECT_EQ(what_is_thrown_by(work), "other");
  EXPECT_TRUE(ended);
}

TEST(BothAtOnce, HandsOnTheSameOfTwoExceptionsWhicheverComesFirst) {
  for (const auto late : {0ms, 5ms}) {
    const auto work = [&] {
      both_at_once(
          [&] {
            std::this_thread::sleep_for(late);
            throw std::runtime_error("one");
          },
          [&] {
            std::this_thread::sleep_for(5ms - late);
            throw std::runtime_error("other");
          });
    };
    EXPECT_EQ(what_is_thrown_by(work), "one");
  }
}

TEST(BothAtOnce, HandsOnThatThereIsNoMemoryAndWhatIsNoException) {
  const auto no_memory = [] { throw std::bad_alloc(); };
  const auto nothing = [] { std::this_thread::sleep_for(2ms); };
  EXPECT_EQ(what_is_thrown_by([&] { both_at_once(no_memory, nothing); }), "no memory");
  EXPECT_EQ(what_is_thrown_by([&] { both_at_once(nothing, no_memory); }), "no memory");
  EXPECT_EQ(what_is_thrown_by([&] { both_at_once(no_memory, no_memory); }), "no memory");
  EXPECT_EQ(what_is_thrown_by([&] { both_at_once(nothing, [] { throw 7; }); }), "the number 7");
  EXPECT_EQ(what_is_thrown_by([&] {
              in_halves(2, [](std::size_t from, std::size_t) {
                if (from == 1) throw std::bad_alloc();
              });
            }),
            "no memory");
}

TEST(BothAtOnce, GoesOnAfterAnException) {
  for (int i = 0; i < 1000; ++i) {
    int done = 0;
    EXPECT_EQ(what_is_thrown_by([] { both_at_once([] { throw 1; }, [] { throw 2; }); }), "the number 1");
    both_at_once([] {}, [&] { ++done; });
    ASSERT_EQ(done, 1);
  }
}

// Leaves of a tree of calls, each of which may be on either thread.
int leaves(int depth) {
  if (depth == 0) return 1;
  int one = 0, other = 0;
  both_at_once([&] { one = leaves(depth - 1); }, [&] { other = leaves(depth - 1); });
  return one + other;
}

TEST(BothAtOnce, DoesCallsInsideCalls) {
  EXPECT_EQ(leaves(10), 1024);
}

TEST(BothAtOnce, DoesEachPieceOnceInTenThousandCalls) {
  std::vector<int> one(10000), other(10000);
  for (std::size_t i = 0; i < one.size(); ++i) both_at_once([&] { ++one[i]; }, [&] { ++other[i]; });
  EXPECT_EQ(one, std::vector<int>(10000, 1));
  EXPECT_EQ(other, std::vector<int>(10000, 1));
}

TEST(BothAtOnce, ServesSeveralThreadsAtATime) {
  std::atomic<int> done = 0;
  std::vector<std::thread> callers;
  for (int c = 0; c < 4; ++c)
    callers.emplace_back([&] {
      for (int i = 0; i < 2500; ++i) both_at_once([&] { ++done; }, [&] { ++done; });
    });
  for (std::thread& caller : callers) caller.join();
  EXPECT_EQ(done, 20000);
}

TEST(InHalves, CoversARowOnceWhateverItsLength) {
  for (std::size_t count : {0u, 1u, 2u, 7u, 1000u}) {
    std::vector<int> visits(count);
    in_halves(count, [&](std::size_t from, std::size_t to) {
      for (std::size_t i = from; i < to; ++i) ++visits[i];
    });
    EXPECT_EQ(visits, std::vector<int>(count, 1));
  }
}

// Stacks larger than any machine has room for, so that every thread is refused.
void refuse_threads() {
  pthread_attr_t attributes;
  pthread_attr_init(&attributes);
  pthread_attr_setstacksize(&attributes, std::size_t{1} << 50);
  pthread_setattr_default_np(&attributes);
  pthread_attr_destroy(&attributes);
}

// In a process of its own, which has no helper yet; ends as a program does, so that the helper's end is
// tried.
[[noreturn]] void do_both_without_threads() {
  refuse_threads();
  if (what_is_thrown_by([] { std::thread([] {}).join(); }) == "nothing") std::exit(3);
  const std::thread::id here = std::this_thread::get_id();
  int done = 0;
  const auto work = [&] { done += std::this_thread::get_id() == here; };
  both_at_once(work, work);
  const auto bad = [] { throw std::bad_alloc(); };
  if (what_is_thrown_by([&] { both_at_once(bad, work); }) != "no memory") std::exit(4);
  if (what_is_thrown_by([&] { both_at_once(work, bad); }) != "no memory") std::exit(5);
  std::exit(done == 4 ? 0 : 6);
}

TEST(BothAtOnceDeathTest, DoesBothHereWhereNoThreadCanBeStarted) {
  GTEST_FLAG_SET(death_test_style, "threadsafe");
  EXPECT_EXIT(do_both_without_threads(), testing::ExitedWithCode(0), "");
}

// The helper is asleep or awake when the program ends, and an exception has passed.
[[noreturn]] void end_soon_after_work(std::chrono::milliseconds pause) {
  what_is_thrown_by([] { both_at_once([] { throw 1; }, [] { std::this_thread::sleep_for(1ms); }); });
  std::this_thread::sleep_for(pause);
  std::exit(0);
}

TEST(BothAtOnceDeathTest, LetsTheProgramEnd) {
  GTEST_FLAG_SET(death_test_style, "threadsafe");
  EXPECT_EXIT(end_soon_after_work(0ms), testing::ExitedWithCode(0), "");
  EXPECT_EXIT(end_soon_after_work(10ms), testing::ExitedWithCode(0), "");
}

}  // namespace
}  // namespace wrapgauge
