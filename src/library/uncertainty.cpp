// Trials and Sobol indices, compiled: their loops are the same for every model.
#if defined(__x86_64__) && defined(__GNUC__)
#define TAUTEN_WIDE_ROWS
#endif
#include "tauten/uncertainty/workings/distribution.hpp"
#include "tauten/uncertainty/workings/joint_distribution.hpp"
#include "tauten/uncertainty/workings/monte_carlo.hpp"
#include "tauten/uncertainty/workings/sobol.hpp"
