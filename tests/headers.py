#!/usr/bin/env python3
"""Compiles every header alone and included twice, questions in both modes, without exceptions and run-time type information,
warnings as errors.

The first compiler takes every header. They all share one standard library, so that what stands alone for one does for the
others: these take the headers that no other one includes, and see all lines."""
import argparse
import concurrent.futures
import pathlib
import re
import subprocess
import sys

INCLUDE = pathlib.Path(__file__).resolve().parents[1] / "include"
EIGEN = pathlib.Path("/usr/include/eigen3")  # where Debian has it
OPTIONS = "-std=c++20 -fsyntax-only -Werror -Wall -Wextra -Wpedantic -Wconversion -Wshadow -Wdouble-promotion".split()
OPTIONS += ["-isystem", str(EIGEN)]
WITHOUT = ["-fno-exceptions", "-fno-rtti"]
# Headers that cannot do without exceptions or type information, each with its reason.
EXEMPT = {}


def compile_alone(compiler, header, mode):
    options = (OPTIONS if header in EXEMPT else OPTIONS + WITHOUT) + mode
    line = f'#include "{header}"\n'
    return subprocess.run([compiler, "-x", "c++", *options, f"-I{INCLUDE}", "-"], input=line + line,
                          capture_output=True, text=True).stderr


def main():
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("compilers", nargs="*", default=["c++"])
    compilers = parser.parse_args().compilers
    headers = sorted(path.relative_to(INCLUDE).as_posix() for path in INCLUDE.rglob("*.hpp"))
    included = {other for header in headers
                for other in re.findall(r'^#include "(tauten/[^"]+)"', (INCLUDE / header).read_text(encoding="utf-8"), re.M)}
    outermost = [header for header in headers if header not in included]
    jobs = [(compiler, header, []) for compiler in compilers for header in (headers if compiler == compilers[0] else outermost)]
    # Those that the compiled library makes lighter.
    jobs += [(compiler, header, ["-DTAUTEN_COMPILED"]) for compiler in compilers for header in headers
             if header.startswith("tauten/question/") or header == "tauten/tauten.hpp"]
    with concurrent.futures.ThreadPoolExecutor(2) as pool:
        messages = list(pool.map(lambda job: compile_alone(*job), jobs))
    failed = 0
    for (compiler, header, mode), message in zip(jobs, messages):
        if message:
            failed += 1
            print(f"FAIL {header} with {' '.join([compiler, *mode])}:\n{message}")
    print(f"{len(jobs) - failed} passed, {failed} failed")
    return 1 if failed or not jobs else 0


if __name__ == "__main__":
    sys.exit(main())
