#!/usr/bin/env python3
"""Checks that wrong programs are refused, and refused with a sentence that a user can act on.

Each *.cpp beside this script holds one mistake and begins with the line

    // error: the sentence that the compiler's first error line must say, and nothing else; a regular expression where
              compilers word it each in their way

With FIXED defined the same file must compile. That shows that the mistake, and nothing else, is what is refused. Where
the mistake is an option of the compiler, the second line names it, and the file must compile without it:

    // with: -ffast-math
"""
import argparse
import concurrent.futures
import os
import pathlib
import re
import shutil
import subprocess
import sys

HERE = pathlib.Path(__file__).resolve().parent
INCLUDE = HERE.parents[1] / "include"
# What compilers put before the sentence of a static_assert or an #error, and the quotes that some put around it.
PREFIX = re.compile(r"^(static[_ ]assert(ion)? failed( due to requirement '.*?')?:?|#error) ")


def compile_it(compiler, file, *options):
    command = [compiler, "-std=c++20", "-fsyntax-only", f"-I{INCLUDE}", *options, str(file)]
    return subprocess.run(command, capture_output=True, text=True, env={**os.environ, "LC_ALL": "C"})


def first_sentence(stderr):
    """Returns what the first line with an error says, without the compiler's own words around it."""
    line = next((line for line in stderr.splitlines() if "error:" in line), "")
    return PREFIX.sub("", line.partition("error: ")[2]).strip().strip('"')


def fault_of(compiler, file):
    """Returns what is wrong with the behaviour of one file, or None."""
    text = file.read_text(encoding="utf-8")
    expected = re.match(r"// error: (.+)\n", text)
    with_option = re.match(r"// .+\n// with: (.+)\n", text)
    if not expected or ("FIXED" in text) == bool(with_option):
        return "needs a first line `// error: sentence`, and a corrected branch under FIXED or a line `// with: OPTION`"
    fixed = compile_it(compiler, file, "-DFIXED")
    if fixed.returncode != 0:
        return "does not compile even without the mistake:\n" + fixed.stderr
    wrong = compile_it(compiler, file, *([with_option[1]] if with_option else []))
    if wrong.returncode == 0:
        return "compiles, mistake and all"
    said = first_sentence(wrong.stderr)
    if said != expected[1] and not re.fullmatch(expected[1], said):
        return f"expected {expected[1]!r}, the compiler says {said!r}"
    return None


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--compiler", default="c++", help="the other of g++ and clang++-19 is tried too if installed")
    compilers = {}
    for compiler in (parser.parse_args().compiler, "g++", "clang++-19"):
        if found := shutil.which(compiler):
            compilers.setdefault(os.path.realpath(found), compiler)  # c++ may be another name of g++
    jobs = [(compiler, file) for compiler in compilers.values() for file in sorted(HERE.glob("*.cpp"))]
    with concurrent.futures.ThreadPoolExecutor(2) as pool:
        faults = list(pool.map(lambda job: fault_of(*job), jobs))
    for (compiler, file), fault in zip(jobs, faults):
        print(f"{'FAIL' if fault else 'ok  '} {file.name} ({compiler})" + (f": {fault}" if fault else ""))
    failed = sum(fault is not None for fault in faults)
    print(f"{len(jobs) - failed} passed, {failed} failed")
    return 1 if failed or not jobs else 0


if __name__ == "__main__":
    sys.exit(main())
