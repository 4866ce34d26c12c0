// The interrupt key, and a request to end, as a flag that long work looks at.
#pragma once

#include <csignal>

namespace tauten::command {

/// While it lives, the first interrupt only raises a flag, and the second one ends the program at once.
class StopSignal {
 public:
  StopSignal();
  ~StopSignal();
  StopSignal(const StopSignal&) = delete;
  StopSignal& operator=(const StopSignal&) = delete;

  /// Raises the flag as a signal does: all threads are to stop.
  static void raise();
  static bool is_raised();

 private:
  struct sigaction interrupt_before_;
  struct sigaction end_before_;
};

}  // namespace tauten::command
