#!/usr/bin/env python3
"""Checks that wrong programs are refused, and refused with a sentence that a user can act on.

Each *.cpp beside this script holds one mistake and begins with the line

    // error: the sentence that the compiler's first error line must say, and nothing else; a regular expression where
              compilers word it each in their way

With FIXED defined the same file must compile, which TAUTEN_WHOLE=1 tries. That shows that the mistake, and nothing else, is
what is refused. Where the mistake is an option of the compiler, the second line names it, and the file must compile without it:

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
import tempfile

HERE = pathlib.Path(__file__).resolve().parent
INCLUDE = HERE.parents[1] / "include"
WHOLE = os.environ.get("TAUTEN_WHOLE")
# What compilers put before the sentence of a static_assert or an #error, and the quotes that some put around it.
PREFIX = re.compile(r"^(static[_ ]assert(ion)? failed( due to requirement '.*?')?:?|#error) ")


def run(compiler, *options):
    command = [compiler, "-std=c++20", f"-I{INCLUDE}", *map(str, options)]
    return subprocess.run(command, capture_output=True, text=True, env={**os.environ, "LC_ALL": "C"})


def precompiled(compiler, files, folder):
    """Returns a header with all that the files include, which is compiled once: it is most of their time."""
    included = sorted({line for file in files for line in re.findall(r"^#include .+", file.read_text(encoding="utf-8"), re.M)})
    header = folder / "included.hpp"
    header.write_text("".join(f"{line}\n" for line in included), encoding="utf-8")
    made = run(compiler, "-x", "c++-header", header, "-o", f"{header}.gch")
    if made.returncode != 0:
        raise SystemExit(f"what the files include does not compile with {compiler}:\n{made.stderr}")
    return header


def first_sentence(stderr):
    """Returns what the first line with an error says, without the compiler's own words around it."""
    line = next((line for line in stderr.splitlines() if "error:" in line), "")
    return PREFIX.sub("", line.partition("error: ")[2]).strip().strip('"')


def fault_of(compiler, file, header):
    """Returns what is wrong with the behaviour of one file, or None."""
    text = file.read_text(encoding="utf-8")
    expected = re.match(r"// error: (.+)\n", text)
    with_option = re.match(r"// .+\n// with: (.+)\n", text)
    if not expected or ("FIXED" in text) == bool(with_option):
        return "needs a first line `// error: sentence`, and a corrected branch under FIXED or a line `// with: OPTION`"
    # An option of the compiler is about the headers themselves.
    common = [] if with_option else ["-include", header]
    if WHOLE:
        fixed = run(compiler, "-fsyntax-only", *common, "-DFIXED", file)
        if fixed.returncode != 0:
            return "does not compile even without the mistake:\n" + fixed.stderr
    wrong = run(compiler, "-fsyntax-only", *common, *([with_option[1]] if with_option else []), file)
    if wrong.returncode == 0:
        return "compiles, mistake and all"
    said = first_sentence(wrong.stderr)
    if said != expected[1] and not re.fullmatch(expected[1], said):
        return f"expected {expected[1]!r}, the compiler says {said!r}"
    return None


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--compiler", default="c++",
                        help="with TAUTEN_WHOLE=1 the other of g++ and clang++-19 is tried too if installed")
    others = ("g++", "clang++-19") if WHOLE else ()
    compilers = {}
    for compiler in (parser.parse_args().compiler, *others):
        if found := shutil.which(compiler):
            compilers.setdefault(os.path.realpath(found), compiler)  # c++ may be another name of g++
    files = sorted(HERE.glob("*.cpp"))
    jobs = [(compiler, file) for compiler in compilers.values() for file in files]
    with tempfile.TemporaryDirectory() as folder, concurrent.futures.ThreadPoolExecutor(2) as pool:
        headers = {}
        for n, compiler in enumerate(compilers.values()):
            (place := pathlib.Path(folder) / str(n)).mkdir()
            headers[compiler] = pool.submit(precompiled, compiler, files, place)
        faults = list(pool.map(lambda job: fault_of(*job, headers[job[0]].result()), jobs))
    for (compiler, file), fault in zip(jobs, faults):
        print(f"{'FAIL' if fault else 'ok  '} {file.name} ({compiler})" + (f": {fault}" if fault else ""))
    failed = sum(fault is not None for fault in faults)
    print(f"{len(jobs) - failed} passed, {failed} failed")
    return 1 if failed or not jobs else 0


if __name__ == "__main__":
    sys.exit(main())
