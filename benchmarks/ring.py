#!/usr/bin/env python3
"""One round over a ring of 1,000 bolts against a dense solution of the same ring in NumPy.

    ./dev python benchmarks/ring.py
"""
import sys
import time

import numpy as np
import tauten

COUNT, LOSS, TARGET = 1000, 0.2, 0.1  # bolts, loss of a neighbour, s


def seconds(work, repeats=3):
    best = float("inf")
    for _ in range(repeats):
        start = time.process_time()
        work()
        best = min(best, time.process_time() - start)
    return best


flexibility = np.eye(COUNT)
for i in range(COUNT):
    flexibility[i, (i + 1) % COUNT] = flexibility[(i + 1) % COUNT, i] = LOSS

# All bolts at one load at once: what a dense solver does once, a round over the joint does for each bolt in turn.
dense = seconds(lambda: np.linalg.solve(flexibility, np.ones(COUNT)))
ours = seconds(lambda: tauten.sequence(COUNT, interaction=LOSS, shares=[1], rounds=0, method="circular").neighbour_loss)
print(f"one dense solution {dense:.3f} s, the whole round with the loads after each of its 1,000 steps {ours:.3f} s: "
      f"{dense * COUNT / ours:.0f} times faster than a dense solution for each step; target {TARGET} s"
      f"{'' if ours < TARGET else '  MISSED'}")
sys.exit(ours >= TARGET)
