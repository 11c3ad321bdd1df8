"""Runs a piece of work as Entrant.java does, and prints the same."""
import os
import sys
import time


def runs(work):
    warm, counted = int(sys.argv[-2]), int(sys.argv[-1])
    begun = time.perf_counter()
    while time.perf_counter() - begun < warm:
        work()
    for _ in range(counted):
        before, start = time.process_time(), time.perf_counter()
        result = work()
        seconds, busy = time.perf_counter() - start, time.process_time() - before
        print("run %.4f %.4f %d" % (seconds, busy, result), flush=True)


def path(name):
    return os.path.join(sys.argv[-3], name)
