#!/usr/bin/env python3
"""Checks that wrong programs are refused, and refused with the sentence a user can act on.

Each *.cpp beside this script holds one mistake inside `#ifdef MISTAKE` and a line

    // expect: text that the compiler's first error line must contain

Without MISTAKE the file must compile. That shows that the mistake, and nothing else, is what the compiler refuses.
"""
import argparse
import concurrent.futures
import pathlib
import re
import subprocess
import sys

HERE = pathlib.Path(__file__).resolve().parent
INCLUDE = HERE.parents[1] / "include"


def compile_it(compiler, file, *options):
    command = [compiler, "-std=c++20", "-fsyntax-only", f"-I{INCLUDE}", *options, str(file)]
    return subprocess.run(command, capture_output=True, text=True)


def fault_of(compiler, file):
    """Returns what is wrong with the behaviour of one file, or None."""
    text = file.read_text(encoding="utf-8")
    expected = re.search(r"^// expect: (.+)$", text, re.M)
    if not expected or "MISTAKE" not in text:
        return "needs a line `// expect: text` and the mistake inside `#ifdef MISTAKE`"
    control = compile_it(compiler, file)
    if control.returncode != 0:
        return "does not compile even without the mistake:\n" + control.stderr
    wrong = compile_it(compiler, file, "-DMISTAKE")
    if wrong.returncode == 0:
        return "compiles, mistake and all"
    first = next((line for line in wrong.stderr.splitlines() if "error:" in line), "")
    if expected[1].strip() not in first:
        return f"expected {expected[1].strip()!r} in the first error line, got:\n{first}"
    return None


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--compiler", default="c++")
    compiler = parser.parse_args().compiler
    files = sorted(HERE.glob("*.cpp"))
    with concurrent.futures.ThreadPoolExecutor(2) as pool:
        faults = list(pool.map(lambda file: fault_of(compiler, file), files))
    for file, fault in zip(files, faults):
        print(f"{'FAIL' if fault else 'ok  '} {file.name}" + (f": {fault}" if fault else ""))
    failed = sum(fault is not None for fault in faults)
    print(f"{len(files) - failed} passed, {failed} failed")
    return 1 if failed or not files else 0


if __name__ == "__main__":
    sys.exit(main())
