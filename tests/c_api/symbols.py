#!/usr/bin/env python3
"""Compares what a shared library shows to the outside with what its header declares; compiles the header as C and C++.
Also looks for variables that a call could change: there are none.
"""
import re
import subprocess
import sys


# Constants made at their first use: the empty error of an outcome that holds a value, and what the rows of a table take; and
# what compilers bring along.
UNCHANGING = re.compile(r"::no_error\(\)::none$|::(?:row_questions|clamp_rows|torque_rows)\(\)::\w+$|^(completed\.\d+|__dso_handle|__TMC_END__|__cpu_\w+|DW\.ref\.\w+)$")


def variables(library):
    """Names of what lies in writable memory."""
    lines = subprocess.run(["objdump", "-t", "-C", library], capture_output=True, text=True, check=True).stdout
    found = re.findall(r" O \.t?(?:data|bss)\t[0-9a-f]+\s+(?:\.hidden )?(.+)$", lines, re.M)
    assert any("none" in name for name in found)  # else the listing has another form
    return set(found)


def main(library, header):
    with open(header, encoding="utf-8") as file:
        text = file.read()
    declared = set(re.findall(r"^TAUTEN_API [^;(]*?(\w+)\(", text, re.M))
    lines = subprocess.run(["nm", "-D", "--defined-only", library], capture_output=True, text=True, check=True).stdout
    # The version of the symbols, TAUTEN_1, is itself listed as an absolute symbol.
    shown = {line.split()[-1].split("@")[0] for line in lines.splitlines() if line.split()[-2] != "A"}
    checks = {
        "declared but not there": declared - shown,
        "shown but not declared": shown - declared,
        "not versioned": {line for line in lines.splitlines() if line.split()[-2] != "A" and "@@TAUTEN_1" not in line},
    }
    checks["variables"] = {name for name in variables(library) if not UNCHANGING.search(name)}
    for language, options in (("c", "-std=c99"), ("c++", "-std=c++98")):
        run = subprocess.run(["cc", "-x", language, options, "-pedantic-errors", "-Wall", "-Wextra", "-Werror",
                              "-fsyntax-only", header], capture_output=True, text=True)
        checks[f"header as {options}"] = {run.stderr} - {""}
    failed = 0
    for title, faults in checks.items():
        failed += bool(faults)
        print(f"{'FAIL' if faults else 'ok'}  {title}", *sorted(faults), sep="\n      ")
    print(len(shown), "symbols:", *sorted(shown))
    print(f"{len(checks) - failed} passed, {failed} failed")
    return 1 if failed or not declared else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
