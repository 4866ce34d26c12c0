// A long run on a terminal: how far it has come, and how it is stopped.
#pragma once

#include "tauten/uncertainty/monte_carlo_options.hpp"

namespace tauten::command {

/// While it lives, the interrupt key stops the run and not the program. On a terminal a bar on standard error shows how
/// far the run has come.
class Watch {
 public:
  explicit Watch(bool show);
  ~Watch();
  Watch(const Watch&) = delete;
  Watch& operator=(const Watch&) = delete;

  /// \return the call for the options of the run
  ProgressCall call(const char* what);

 private:
  void (*before_)(int);
  bool show_;
  bool shown_ = false;
};

}  // namespace tauten::command
