#!/usr/bin/env python3
"""Counts instructions: what the library adds to the same function written by hand. Counted, not timed, so the figures
do not depend on what else the machine does.

Builds kernels.cpp, runs it under callgrind and prints instructions for each call or row with their ratios. Fails if one
way of calling, over both formulas, costs more than 2 % above or below the functions by hand that make the same promise,
or if a column loop holds no packed instructions. One formula alone is too small a sample: a loop of 39 instructions
differs by 2.6 % as soon as the compiler loads one register twice.
"""
import argparse
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile

HERE = pathlib.Path(__file__).resolve().parent
ROWS = 4096
LIMITS = (0.98, 1.02)
PACKED = re.compile(r"\bv?(mulpd|divpd|addpd|sqrtpd|cmp\w*pd|andpd|blendvpd)\b")


def run(*command):
    done = subprocess.run(command, capture_output=True, text=True)
    if done.returncode != 0:
        sys.exit(f"{' '.join(command)} failed:\n{done.stdout}{done.stderr}")
    return done.stdout


def count(program, folder):
    """Returns {function: instructions for each call or row, with all that it calls}."""
    out = folder / "callgrind.out"
    run("valgrind", "--tool=callgrind", f"--callgrind-out-file={out}", str(program), "1")
    listing = run("callgrind_annotate", "--inclusive=yes", "--threshold=100", str(out))
    found = re.findall(r"^\s*([\d,]+) \(.*?\)\s+\S*?:((?:typed|kernel|column)_\w+)", listing, re.M)
    return {name: int(number.replace(",", "")) / ROWS for number, name in found}


def packed(program, function):
    """Returns the different packed instructions in one function."""
    text = run("objdump", "-d", "--no-show-raw-insn", f"--disassemble={function}", str(program))
    return sorted({match[0].strip() for match in PACKED.finditer(text)})


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--compiler", default="c++")
    parser.add_argument("--options", default="-O3 -fno-math-errno", help="how a release is compiled")
    arguments = parser.parse_args()
    for tool in ("valgrind", "callgrind_annotate", "objdump"):
        if not shutil.which(tool):
            sys.exit(f"{tool} is missing; install valgrind and binutils")

    faults = 0
    checks = 0
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        program = folder / "kernels"
        run(arguments.compiler, "-std=c++20", *arguments.options.split(), f"-I{HERE.parent / 'include'}",
            str(HERE / "kernels.cpp"), "-o", str(program))
        costs = count(program, folder)
        print(f"{'':16}{'library':>9}{'by hand':>9}{'bare':>9}   library/by hand   library/bare")
        for kind in ("typed", "kernel", "column"):
            total = [0.0, 0.0]
            for form in ("linear", "exact"):
                library, by_hand = costs[f"{kind}_library_{form}"], costs[f"{kind}_by_hand_{form}"]
                bare = costs[f"{'column' if kind == 'column' else 'kernel'}_bare_{form}"]
                total = [total[0] + library, total[1] + by_hand]
                print(f"{kind + ' ' + form:16}{library:9.2f}{by_hand:9.2f}{bare:9.2f}{library / by_hand:18.4f}"
                      f"{library / bare:15.2f}")
            ratio = total[0] / total[1]
            good = LIMITS[0] <= ratio <= LIMITS[1]
            checks += 1
            faults += not good
            print(f"{kind + ', both':16}{total[0]:9.2f}{total[1]:9.2f}{'':9}{ratio:18.4f}{'':15}   {'ok' if good else 'FAIL'}")
        for form in ("linear", "exact"):
            instructions = packed(program, f"column_library_{form}")
            good = any("divpd" in word for word in instructions)
            checks += 1
            faults += not good
            print(f"packed in the {form} column: {' '.join(instructions) or 'none'}   {'ok' if good else 'FAIL'}")
    print(f"{checks - faults} passed, {faults} failed")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
