#include "model/core/both_at_once.hpp"

#include <atomic>
#include <condition_variable>
#include <memory>
#include <mutex>
#include <thread>

namespace wrapgauge {
namespace {

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
    }
    wake_.notify_one();
  }

 private:
  void run() {
    for (;;) {
      std::unique_lock lock(mutex_);
      wake_.wait(lock, [this] { return leaving_ || offered_; });
      if (leaving_) return;
      const std::shared_ptr<Task> task = std::move(offered_);
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
  bool leaving_ = false;
  std::thread thread_;  // last: runs when the rest is there
};

}  // namespace

void both_at_once(const std::function<void()>& one, const std::function<void()>& other) {
  static Helper helper;
  const auto task = std::make_shared<Task>();
  task->work = &other;
  helper.offer(task);
  one();
  if (task->take())
    other();
  else
    task->done.wait(false);
}

}  // namespace wrapgauge
