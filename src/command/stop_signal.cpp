#include "command/stop_signal.hpp"

#include <atomic>

namespace tauten::command {

namespace {

std::atomic<bool> raised = false;
static_assert(std::atomic<bool>::is_always_lock_free);  // else a signal handler may not touch it

void watch(int signal, struct sigaction& before) {
  sigaction(signal, nullptr, &before);
  if (before.sa_handler == SIG_IGN) return;  // somebody wants it ignored: nohup, a shell's job in the background
  struct sigaction now{};
  now.sa_handler = [](int) { raised = true; };
  now.sa_flags = SA_RESTART | SA_RESETHAND;
  sigaction(signal, &now, nullptr);
}

}  // namespace

StopSignal::StopSignal() {
  raised = false;
  watch(SIGINT, interrupt_before_);
  watch(SIGTERM, end_before_);
}

StopSignal::~StopSignal() {
  sigaction(SIGINT, &interrupt_before_, nullptr);
  sigaction(SIGTERM, &end_before_, nullptr);
}

void StopSignal::raise() { raised = true; }

bool StopSignal::is_raised() { return raised; }

}  // namespace tauten::command
