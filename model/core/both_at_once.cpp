#include "model/core/both_at_once.hpp"

#if defined(__linux__)
#include <sched.h>
#endif

#include <atomic>
#include <chrono>
#include <condition_variable>
#include <memory>
#include <mutex>
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

bool has_one_processor() {
#if defined(__linux__)
  cpu_set_t allowed;
  if (sched_getaffinity(0, sizeof allowed, &allowed) == 0) return CPU_COUNT(&allowed) == 1;
#endif
  return std::thread::hardware_concurrency() == 1;
}

struct Task {
  const std::function<void()>* work;  // lives until the task is done
  std::atomic<bool> taken = false;
  std::atomic<bool> done = false;

  bool take() { return !taken.exchange(true); }
};

class Helper {
 public:
  Helper() : thread_([this] { run(); }) {}
  ~Helper() {
    {
      const std::lock_guard lock(mutex_);
      leaving_ = true;
    }
    wake_.notify_one();
    thread_.join();
  }
  Helper(const Helper&) = delete;
  Helper& operator=(const Helper&) = delete;

  // A task that was offered before and not begun is left to its own caller.
  void offer(std::shared_ptr<Task> task) {
    {
      const std::lock_guard lock(mutex_);
      offered_ = std::move(task);
      has_offer_ = true;
    }
    wake_.notify_one();
  }

 private:
  void run() {
    for (;;) {
      stay_awake_until([this] { return has_offer_.load(); });
      std::unique_lock lock(mutex_);
      wake_.wait(lock, [this] { return leaving_ || offered_; });
      if (leaving_) return;
      const std::shared_ptr<Task> task = std::move(offered_);
      has_offer_ = false;
      lock.unlock();
      if (!task->take()) continue;
      (*task->work)();
      task->done = true;
      task->done.notify_one();
    }
  }

  std::mutex mutex_;
  std::condition_variable wake_;
  std::shared_ptr<Task> offered_;
  std::atomic<bool> has_offer_ = false;
  bool leaving_ = false;
  std::thread thread_;  // last: runs when the rest is there
};

}  // namespace

void both_at_once(const std::function<void()>& one, const std::function<void()>& other) {
  static const bool alone = has_one_processor();
  if (alone) {
    one();
    other();
    return;
  }
  static Helper helper;
  const auto task = std::make_shared<Task>();
  task->work = &other;
  helper.offer(task);
  one();
  if (task->take())
    other();
  else {
    stay_awake_until([&] { return task->done.load(); });
    task->done.wait(false);
  }
}

void in_halves(std::size_t count, const std::function<void(std::size_t from, std::size_t to)>& work) {
  const std::size_t middle = count / 2;
  both_at_once([&] { work(0, middle); }, [&] { work(middle, count); });
}

}  // namespace wrapgauge
