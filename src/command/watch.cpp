#include "command/watch.hpp"

#include <fmt/format.h>
#include <unistd.h>

#include <algorithm>
#include <csignal>
#include <cstdio>

namespace tauten::command {

namespace {

volatile std::sig_atomic_t interrupted = 0;

void note(int) { interrupted = 1; }

}  // namespace

Watch::Watch(bool show) : before_(std::signal(SIGINT, note)), show_(show && isatty(STDERR_FILENO) == 1) {
  interrupted = 0;
}

Watch::~Watch() {
  std::signal(SIGINT, before_);
  if (shown_) std::fputs("\r\033[K", stderr);
}

ProgressCall Watch::call(const char* what) {
  return [this, what](const Progress& progress) {
    if (show_) {
      constexpr int width = 30;
      const double share =
          progress.expected > 0 ? static_cast<double>(progress.done) / static_cast<double>(progress.expected) : 0;
      const int full = static_cast<int>(std::min(1.0, share) * width);
      const std::string bar =
          std::string(static_cast<std::size_t>(full), '#') + std::string(static_cast<std::size_t>(width - full), '.');
      std::fputs(fmt::format("\r{} [{}] {} trials ", what, bar, progress.done).c_str(), stderr);
      std::fflush(stderr);
      shown_ = true;
    }
    return interrupted == 0;
  };
}

}  // namespace tauten::command
