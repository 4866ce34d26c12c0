#!/usr/bin/env python3
"""Holds the headers to their budgets: size, include depth, what the preprocessor makes of them, and the floors.

Everything here is counted, nothing is timed, so the result is the same on every machine with the same standard library.
"""
import argparse
import concurrent.futures
import functools
import pathlib
import re
import statistics
import subprocess
import sys

INCLUDE = pathlib.Path(__file__).resolve().parents[1] / "include"
EIGEN = "/usr/include/eigen3"  # where Debian has it

MEDIAN_LINES = 150
MOST_LINES = 400
# A formula header is opened by people who embed one formula: five steps to the last header behind it.
MOST_DEPTH = 5
# A whole answer stands on look-ups, one concept and one header each; its steps are counted above the room base. The header
# of a question is the door to it and is not counted. What defines its functions hangs at its end, and not between it and
# those who include it; the steps of that are counted from there.
MOST_DEPTH_OF_ANSWERS = 8
MOST_PREPROCESSED = 20_000
NOT_IN_FORMULA_HEADERS = {"string", "vector", "iostream", "functional"}
# Headers longer than MOST_LINES, each with its reason. Generated tables (*_table.hpp) are data and need none.
LONG_WITH_REASON = {}
# A room may include rooms on lower floors and neighbours on its own, never one above.
FLOORS = {"base": 0, "thread": 1, "friction": 1, "part": 2, "tightening": 3, "method": 3, "tool": 3, "joint": 3, "turning": 3,
          "drawing": 4, "group": 4, "loosening": 4, "uncertainty": 5}
# What does not stand on a floor: the rooms that it may include. None: it collects all of them, at any depth.
OUTSIDE = {"explain": {"base", "explain"}, "units.hpp": {"base"}, "eigen.hpp": {"base"}, "formulas.hpp": None,
           # Questions stand above all floors, and their pages above the layout as well.
           "question": None,
           "tauten.hpp": None}


def room(header):
    return header.split("/")[1]


def may_include(header, other):
    here, there = room(header), room(other)
    if here in FLOORS:
        return there in FLOORS and FLOORS[there] <= FLOORS[here]
    if here not in OUTSIDE:
        return False  # a new room needs a floor first
    return OUTSIDE[here] is None or there in OUTSIDE[here]


def first_circle(graph):
    """Returns the nodes of one circle in {node: set of nodes}, or []."""
    finished = set()

    def visit(node, path):
        if node in path:
            return path[path.index(node):] + [node]
        if node in finished:
            return []
        for other in sorted(graph.get(node, ())):
            circle = visit(other, path + [node])
            if circle:
                return circle
        finished.add(node)
        return []

    for node in sorted(graph):
        circle = visit(node, [])
        if circle:
            return circle
    return []


def preprocess(compiler, header):
    """Returns (lines that reach the compiler, names of all files opened)."""
    run = subprocess.run([compiler, "-std=c++20", "-E", "-x", "c++", f"-I{INCLUDE}", "-isystem", EIGEN, "-"],
                         input=f'#include "{header}"\n', capture_output=True, text=True)
    if run.returncode != 0:
        raise SystemExit(f"{header} cannot be preprocessed:\n{run.stderr}")
    lines = [line for line in run.stdout.splitlines() if line.strip()]
    markers = [line for line in lines if line.startswith("#")]
    opened = {match[1] for line in markers if (match := re.match(r'# \d+ "([^"]+)"', line))}
    return len(lines) - len(markers), opened


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--compiler", default="c++")
    compiler = parser.parse_args().compiler

    texts = {path.relative_to(INCLUDE).as_posix(): path.read_text(encoding="utf-8")
             for path in sorted(INCLUDE.rglob("*.hpp"))}
    includes = {header: set(re.findall(r'^\s*#\s*include\s*["<](tauten/[^">]+)[">]', text, re.M))
                for header, text in texts.items()}
    # Without what the definitions of a header include, and what small machines take instead of the standard library.
    in_both_modes = {header: set(re.findall(r'^\s*#\s*include\s*["<](tauten/[^">]+)[">]',
                                            re.sub(r"^#if(ndef TAUTEN_COMPILED|def TAUTEN_C_NUMBERS)\n.*?^#(endif|else)$", "", text, flags=re.M | re.S), re.M))
                     for header, text in texts.items()}
    length = {header: text.count("\n") for header, text in texts.items()}
    # A formula is an `eval` templated on the scalar; only the rooms hold formulas.
    formulas = {header for header, text in texts.items()
                if room(header) in FLOORS and room(header) != "base" and re.search(r"\bconstexpr\b[^;{]*\beval\(", text)}
    # What a header defines stands at its end, where nothing comes back to it.
    circle = first_circle(in_both_modes)

    @functools.cache
    def reached(header):
        """The header, and all that stand behind it."""
        return {header}.union(*(reached(other) for other in in_both_modes.get(header, ())))

    # A formula header has all lines of those behind it, so the outermost are enough.
    behind = set().union(*(reached(header) - {header} for header in formulas)) if not circle else set()
    outermost = sorted(formulas - behind)
    with concurrent.futures.ThreadPoolExecutor(2) as pool:
        preprocessed = dict(zip(outermost, pool.map(lambda header: preprocess(compiler, header), outermost)))

    @functools.cache
    def deepest(header):
        """The longest chain of headers that starts here."""
        return (header, *max((deepest(other) for other in sorted(in_both_modes.get(header, ()))), key=len, default=()))

    def is_door(header):
        return header.replace("question/", "question/workings/") in includes[header]

    chains = {header: (header,) if circle else deepest(header) for header in texts}
    depths = {header: len(chain) - 1 for header, chain in chains.items()}
    heavy = {header: {pathlib.PurePath(file).name for file in preprocessed[header][1]
                      if pathlib.PurePath(file).parent.name.isdigit()} & NOT_IN_FORMULA_HEADERS for header in outermost}

    print(f"{'header':52} lines depth preprocessed")
    for header in texts:
        kind = "formulas" if header in formulas else ""
        made = preprocessed[header][0] if header in preprocessed else ""
        print(f"{header:52} {length[header]:5} {depths[header]:5} {made:12} {kind}")
    counted = [n for header, n in length.items() if not header.endswith("_table.hpp")]
    median = statistics.median(counted or [0])
    print(f"{len(texts)} headers, {len(formulas)} of them with formulas, median {median:g} lines\n")

    version = ".".join(re.findall(r"^#define TAUTEN_VERSION_[A-Z]+ (\d+)$", texts["tauten/base/version.hpp"], re.M))
    printed = {path.relative_to(INCLUDE.parent).as_posix(): path.read_text(encoding="utf-8")
               for folder in (INCLUDE, INCLUDE.parent / "src") for path in sorted(folder.rglob("*.[hc]pp"))}
    rooms = {}
    for header, others in includes.items():
        if room(header) in FLOORS:
            rooms.setdefault(room(header), set()).update({room(other) for other in others} - {room(header)})
    checks = {
        f"median of lines at most {MEDIAN_LINES}": [f"{median:g}"] if median > MEDIAN_LINES else [],
        f"no header above {MOST_LINES} lines without a stated reason": [
            f"{header}: {n}" for header, n in length.items()
            if n > MOST_LINES and not header.endswith("_table.hpp") and header not in LONG_WITH_REASON],
        "every stated reason is needed": [
            header for header in LONG_WITH_REASON if length.get(header, 0) <= MOST_LINES],
        f"include depth of a formula header at most {MOST_DEPTH}": [
            f"{depths[header]}: {' -> '.join(chains[header])}" for header in sorted(formulas)
            if depths[header] > MOST_DEPTH],
        f"include depth of other headers at most {MOST_DEPTH_OF_ANSWERS} above base": [
            f"{' -> '.join(chain)}" for header, chain in chains.items()
            if sum(room(h) != "base" and not is_door(h) for h in chain) - 1 > MOST_DEPTH_OF_ANSWERS
            and (OUTSIDE.get(room(header), 1) or room(header) == "question")],
        f"formula headers at most {MOST_PREPROCESSED} lines after preprocessing": [
            f"{header}: {preprocessed[header][0]}" for header in outermost
            if preprocessed[header][0] > MOST_PREPROCESSED],
        "no heavy standard header behind a formula header": [
            f"{header}: {', '.join(sorted(heavy[header]))}" for header in outermost if heavy[header]],
        "no include of a missing header": [
            f"{header} -> {other}" for header, others in includes.items() for other in sorted(others - set(texts))],
        "no arrow up between rooms": [
            f"{header} -> {other}" for header, others in includes.items() for other in sorted(others)
            if not may_include(header, other)],
        # printf writes the decimal comma of the program that embeds the library; in one place that is asked for.
        "no floating number through printf": [
            f"{file}: {literal}" for file, text in printed.items() if file != "include/tauten/base/c_number_chars.hpp" for literal in re.findall(r'"(?:[^"\\\n]|\\.)*"', text)
            if re.search(r"%[-+#0-9.*]*[aefgAEFG]", literal.replace("%%", ""))],
        # Two files of the compiled library would define them.
        "what a question defines is included by its header alone": [
            f"{header} -> {other}" for header, others in includes.items() for other in sorted(others)
            if re.search(r"^TAUTEN_FUNCTION", texts[other], re.M) and header.count("/") > 2],
        # A linker tells versions and modes apart by it.
        "everything stands in namespace tauten::TAUTEN_ABI, which base/version.hpp defines": [
            f"{header}: {opened}" for header, text in texts.items()
            for opened in re.findall(r"^namespace tauten\b(?!::TAUTEN_ABI\b).*", text, re.M)] + [
            f"{header} does not include it" for header, text in texts.items()
            if "TAUTEN_ABI" in text and not circle and "tauten/base/version.hpp" not in reached(header)],
        "one version": [
            f"{file}: not {version}" for file in ("pyproject.toml", "src/wasm/package.json", "packaging/vcpkg/tauten/vcpkg.json")
            if not re.search(rf'^\s*"?version"?\s*[:=]\s*"{re.escape(version)}"', (INCLUDE.parent / file).read_text("utf-8"), re.M)],
        "no circle of headers": [" -> ".join(circle)] if circle else [],
        "no circle of rooms": [" -> ".join(found)] if (found := first_circle(rooms)) else [],
    }
    for title, faults in checks.items():
        print(f"{'FAIL' if faults else 'ok  '} {title}")
        for fault in faults:
            print(f"       {fault}")
    failed = sum(bool(faults) for faults in checks.values())
    print(f"{len(checks) - failed} passed, {failed} failed")
    return 1 if failed or not texts else 0


if __name__ == "__main__":
    sys.exit(main())
