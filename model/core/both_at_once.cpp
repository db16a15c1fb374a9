#include "model/core/both_at_once.hpp"

#if defined(__linux__)
#include <sched.h>
#endif

#include <algorithm>
#include <atomic>
#include <chrono>
#include <exception>
#include <thread>

namespace wrapgauge {
namespace {

// A thread that sleeps takes tens of microseconds to wake, as long as many a piece of work lasts; one that
// had work a moment ago is likely to get more.
constexpr std::chrono::microseconds kStaysAwake{200};

template <class Condition>
void stay_awake_until(const Condition& condition) {
  const auto end = std::chrono::steady_clock::now() + kStaysAwake;
  while (!condition() && std::chrono::steady_clock::now() < end) std::this_thread::yield();
}

int processors() {
#if defined(__linux__)
  cpu_set_t allowed;
  if (sched_getaffinity(0, sizeof allowed, &allowed) == 0) return CPU_COUNT(&allowed);
#endif
  return static_cast<int>(std::thread::hardware_concurrency());  // 0: not known
}

std::atomic<int> large_works = 0;

bool all_busy() {
  static const int of = processors();
  return of > 0 && large_works.load(std::memory_order_relaxed) >= std::max(2, of);
}

// Nothing that a piece of work throws leaves it before the other one has ended.
std::exception_ptr thrown_by(const std::function<void()>& work) noexcept {
  try {
    work();
    return nullptr;
  } catch (...) {
    return std::current_exception();
  }
}

// Lives on the stack of its caller, who leaves only when it is taken back or done: an offer needs no memory.
struct Task {
  const std::function<void()>& work;
  std::exception_ptr thrown = nullptr;  // read once it is done
  std::atomic<bool> done = false;
};

// A number that threads sleep on until it is no longer what they last saw.
class Bell {
 public:
  unsigned heard() const { return rung_.load(); }
  void ring() {
    ++rung_;
    rung_.notify_all();
  }
  void sleep_since(unsigned heard) const { rung_.wait(heard); }

 private:
  std::atomic<unsigned> rung_ = 0;
};

class Helper {
 public:
  Helper() noexcept {
    if (processors() == 1) return;
    try {
      thread_ = std::thread([this] { run(); });
    } catch (const std::exception&) {
      // No thread or no memory for one: whoever asks does all the work, and hears of what is missing there.
    }
  }
  ~Helper() {
    if (!thread_.joinable()) return;
    leaving_ = true;
    offers_.ring();
    thread_.join();
  }
  Helper(const Helper&) = delete;
  Helper& operator=(const Helper&) = delete;

  // False where another task waits to be begun, or where there is no thread.
  bool offer(Task& task) {
    Task* none = nullptr;
    if (!thread_.joinable() || !offered_.compare_exchange_strong(none, &task)) return false;
    offers_.ring();
    return true;
  }

  // False if it has been begun.
  bool take_back(Task& task) {
    Task* mine = &task;
    return offered_.compare_exchange_strong(mine, nullptr);
  }

  void wait_for(const Task& task) const {
    stay_awake_until([&] { return task.done.load(); });
    for (;;) {
      const unsigned heard = ends_.heard();
      if (task.done) return;
      ends_.sleep_since(heard);
    }
  }

 private:
  void run() {
    for (;;) {
      stay_awake_until([this] { return offered_.load() != nullptr; });
      const unsigned heard = offers_.heard();
      if (Task* task = offered_.exchange(nullptr)) {
        task->thrown = thrown_by(task->work);
        task->done = true;  // from here on its caller may have left
        ends_.ring();
      } else if (leaving_) {
        return;
      } else {
        offers_.sleep_since(heard);
      }
    }
  }

  std::atomic<Task*> offered_ = nullptr;
  std::atomic<bool> leaving_ = false;
  Bell offers_, ends_;
  std::thread thread_;  // last: runs when the rest is there
};

}  // namespace

void both_at_once(const std::function<void()>& one, const std::function<void()>& other) {
  if (all_busy()) {
    const std::exception_ptr of_one = thrown_by(one), of_other = thrown_by(other);
    if (of_one || of_other) std::rethrow_exception(of_one ? of_one : of_other);
    return;
  }
  static Helper helper;
  Task task{other};
  const bool offered = helper.offer(task);
  const std::exception_ptr thrown = thrown_by(one);
  if (!offered || helper.take_back(task))
    task.thrown = thrown_by(other);
  else
    helper.wait_for(task);
  if (thrown) std::rethrow_exception(thrown);
  if (task.thrown) std::rethrow_exception(task.thrown);
}

LargeWork::LargeWork() {
  ++large_works;
}

LargeWork::~LargeWork() {
  --large_works;
}

void in_halves(std::size_t count, const std::function<void(std::size_t from, std::size_t to)>& work) {
  const std::size_t middle = count / 2;
  both_at_once([&] { work(0, middle); }, [&] { work(middle, count); });
}

}  // namespace wrapgauge
