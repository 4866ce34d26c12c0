#!/usr/bin/env python3
"""Sums up a ctest JUnit file: counts the single cases inside each program, not the programs.

Usage: summary.py FILE [--whole]. A case that is skipped because something is not installed counts as failed with --whole.
"""
import re
import sys
import xml.etree.ElementTree as ElementTree


def count(output):
    """Returns (passed, failed, skipped) as a test program printed them, or None if it printed no counts."""
    own = re.findall(r"^(\d+) passed, (\d+) failed$", output, re.M)
    if own:
        return int(own[-1][0]), int(own[-1][1]), 0
    doctest = re.findall(r"test cases: *\d+ \| *(\d+) passed \| *(\d+) failed \| *(\d+) skipped", output)
    if doctest:
        return tuple(map(int, doctest[-1]))
    pytest = [line for line in output.splitlines() if re.search(r"\d+ (passed|failed|error).* in [\d.]+s", line)]
    if pytest:
        number = lambda word: sum(int(n) for n in re.findall(rf"(\d+) {word}", pytest[-1]))
        return number("passed"), number("failed") + number("errors?"), number("skipped")
    return None


def main(path, whole=False):
    total_passed = total_failed = 0
    for case in ElementTree.parse(path).getroot().iter("testcase"):
        ran_well = case.get("status") == "run"
        printed = case.findtext("system-out") or ""
        passed, failed, skipped = count(printed) or (int(ran_well), 0, 0)
        if not ran_well and failed == 0:
            failed = 1  # it crashed, ran out of time or was not run
        print(f"{case.get('name'):32} {passed:5} passed  {failed:3} failed" + (f"  {skipped:3} skipped" if skipped else ""))
        print(*re.findall(r"^SKIPPED .*\n", printed, re.M), sep="", end="")
        failed += skipped if whole else 0
        total_passed += passed
        total_failed += failed
    print(f"{total_passed} passed, {total_failed} failed")
    return 0 if total_passed and not total_failed else 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1], "--whole" in sys.argv[2:]))
