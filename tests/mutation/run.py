"""Do the tests bite? Changes the library one place at a time and prints the changes that no test notices.

    ./dev python tests/mutation/run.py                 all mutants of mutants.csv, then 60 table cells that are moved by 3 %
    ./dev python tests/mutation/run.py heat --cells 0  mutants whose file or test has "heat" in it

A mutant is a row: file, text that stands there once, what takes its place, and the tests that must notice. `unit:heat` is
tests/unit/heat_test.cpp, compiled alone against the headers with the changed one in front of them; `python:turn` is
tests/python/test_turn.py, for which the extension is built in a copy of the tree: minutes for each, so these are left out
unless --python is said. Cells of src/tables are tried against test_tables.py. Not part of ./dev test: run it before a release,
and after tests were changed.
"""
import argparse
import concurrent.futures
import csv
import os
import pathlib
import random
import shutil
import subprocess
import sys
import tempfile
import threading

ROOT = pathlib.Path(__file__).resolve().parents[2]
FLAGS = ["-std=c++20", "-O0", "-w"]


def run(command, **options):
    return subprocess.run([str(word) for word in command], capture_output=True, text=True, errors="replace", **options)


class Unit:
    """Test files of tests/unit, each a program of its own."""

    def __init__(self, folder, compiler):
        self.folder, self.compiler = folder, [*compiler.split(), *FLAGS]
        self.lock, self.unchanged = threading.Lock(), {}
        self.main = folder / "main.o"
        done = run([*self.compiler, "-c", ROOT / "tests/doctest_main.cpp", "-o", self.main])
        assert done.returncode == 0, done.stderr

    def notices(self, number, mutant, text, test):
        """\\return whether the test fails with the changed header, or a word on why that cannot be told"""
        if mutant is not None and self.without_change(test) is not False:
            return f"{test} fails without a change as well"
        over = self.folder / str(number)
        if mutant is not None:
            changed = over / pathlib.Path(mutant["file"]).relative_to("include")
            changed.parent.mkdir(parents=True, exist_ok=True)
            changed.write_text(text, encoding="utf-8")
        program = self.folder / f"{number}_{test}"
        done = run([*self.compiler, f"-I{over}", f"-I{ROOT}/include", f"-I{ROOT}/src", f"-I{ROOT}/tests",
                    ROOT / f"tests/unit/{test}_test.cpp", self.main, "-o", program])
        if done.returncode:
            return "does not compile: " + done.stderr.partition("error")[2][:200]
        try:
            return run([program, "--abort-after=1"], cwd=ROOT / "tests", timeout=900).returncode != 0
        except subprocess.TimeoutExpired:
            return True
        finally:
            program.unlink(missing_ok=True)
            shutil.rmtree(over, ignore_errors=True)

    def without_change(self, test):
        """\\return what `notices` says of the headers as they are; asked once for each test"""
        with self.lock:
            if test not in self.unchanged:
                self.unchanged[test] = self.notices("unchanged", None, "", test)
            return self.unchanged[test]


class Python:
    """Test files of tests/python, on an extension that is built in a copy of the tree."""

    def __init__(self, folder):
        self.tree = ROOT / "build-mutants" / "tree"
        self.build = ROOT / "build-mutants" / "build"
        for name in run(["git", "ls-files"], cwd=ROOT).stdout.splitlines():
            source, copy = ROOT / name, self.tree / name
            if not copy.exists() or copy.read_bytes() != source.read_bytes():
                copy.parent.mkdir(parents=True, exist_ok=True)
                shutil.copy(source, copy)
        done = run(["cmake", "-S", self.tree, "-B", self.build, "-G", "Ninja", "-DCMAKE_BUILD_TYPE=Debug", "-DTAUTEN_PYTHON=ON",
                    "-DTAUTEN_COMMAND=ON"])
        assert done.returncode == 0, done.stderr

    def notices(self, _, mutant, text, test):
        changed = self.tree / mutant["file"] if mutant is not None else None
        before = changed.read_text(encoding="utf-8") if changed else ""
        try:
            if changed:
                changed.write_text(text, encoding="utf-8")
            done = run(["cmake", "--build", self.build, "--target", "_core", "tauten"])
            if done.returncode:
                return "does not compile: " + done.stdout[-200:]
            environment = {**os.environ, "PYTHONPATH": str(self.build / "python"),
                           "TAUTEN_PROGRAM": str(self.build / "bin/tauten")}
            return run([sys.executable, "-m", "pytest", "-q", "-x", self.tree / f"tests/python/test_{test}.py"],
                       env=environment).returncode != 0
        finally:
            if changed:
                changed.write_text(before, encoding="utf-8")


def cells(seed, count):
    """Cells of the tables that hold a figure of a standard, drawn evenly."""
    found = []
    for path in sorted((ROOT / "src/tables").glob("*.csv")):
        with open(path, newline="", encoding="utf-8") as file:
            rows = list(csv.reader(file))
        for place, name in enumerate(rows[0]):
            if name.rsplit("_", 1)[-1] not in ("mm", "MPa", "N", "Nm", "um", "pct", "nominal", "low", "high"):
                continue
            for i, row in enumerate(rows[1:], 1):
                try:
                    if float(row[place]) != 0:
                        found.append((path.name, i, place, name))
                except ValueError:
                    pass
    return random.Random(seed).sample(found, min(count, len(found)))


def cell_is_noticed(cell):
    """\\return whether test_tables.py fails with the cell moved by 3 %, the headers made from it"""
    name, i, place, _ = cell
    with tempfile.TemporaryDirectory() as folder:
        tree = pathlib.Path(folder)
        for part in ("src/tables", "include", "tests/typed"):
            shutil.copytree(ROOT / part, tree / part)
        (tree / "tests/python").mkdir()
        shutil.copy(ROOT / "tests/python/test_tables.py", tree / "tests/python")
        path = tree / "src/tables" / name
        with open(path, newline="", encoding="utf-8") as file:
            rows = list(csv.reader(file))
        old = rows[i][place]
        digits = len(old.partition(".")[2])
        moved = round(float(old) * 1.03, digits)
        rows[i][place] = f"{moved if moved != float(old) else float(old) + 10 ** -digits:.{digits}f}"
        with open(path, "w", newline="", encoding="utf-8") as file:
            csv.writer(file, lineterminator="\n").writerows(rows)
        done = run([sys.executable, tree / "src/tables/generate.py"])
        what = f"{name}, {rows[i][0]}: {rows[0][place]} {old} -> {rows[i][place]}"
        if done.returncode:
            return what, True  # the generator refuses it
        return what, run([sys.executable, "-m", "pytest", "-q", "-x", tree / "tests/python/test_tables.py"]).returncode != 0


def main():
    parser = argparse.ArgumentParser(description=__doc__.split("\n\n")[0])
    parser.add_argument("word", nargs="?", default="", help="only mutants with this in their file or tests")
    parser.add_argument("--cells", type=int, default=60, help="table cells that are moved by 3 %%")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--python", action="store_true", help="also those that need the extension built")
    parser.add_argument("--compiler", default="c++")
    parser.add_argument("--jobs", type=int, default=os.cpu_count())
    options = parser.parse_args()
    with open(ROOT / "tests/mutation/mutants.csv", newline="", encoding="utf-8") as file:
        mutants = [row for row in csv.DictReader(file) if options.word in row["file"] + " " + row["tests"]]
    survivors, killed, unclear = [], 0, []

    def tell(what, noticed):
        nonlocal killed
        if noticed is True:
            killed += 1
        elif noticed:
            unclear.append(f"{what}: {noticed}")
        else:
            survivors.append(what)
        print(".", end="" if noticed is True else f" {what}: {noticed or 'lives'}\n", flush=True)

    with tempfile.TemporaryDirectory() as name, concurrent.futures.ThreadPoolExecutor(options.jobs) as pool:
        folder = pathlib.Path(name)
        unit, python = Unit(folder, options.compiler), None

        def tried(number, mutant):
            nonlocal python
            what = f"{mutant['file']}: {mutant['old']} -> {mutant['new']}"
            text = (ROOT / mutant["file"]).read_text(encoding="utf-8")
            if text.count(mutant["old"]) != 1:
                return what, f"the text stands there {text.count(mutant['old'])} times"
            text = text.replace(mutant["old"], mutant["new"])
            seen = False
            for test in mutant["tests"].split():
                kind, test = test.split(":")
                if kind == "python" and python is None:
                    python = Python(folder)
                seen = (unit if kind == "unit" else python).notices(number, mutant, text, test)
                if seen:
                    break
            return what, seen

        wanted = [(number, mutant) for number, mutant in enumerate(mutants) if "python:" not in mutant["tests"]]
        for done in concurrent.futures.as_completed(pool.submit(tried, *one) for one in wanted):
            tell(*done.result())
        for number, mutant in enumerate(mutants):
            if options.python and "python:" in mutant["tests"]:
                tell(*tried(number, mutant))
        for done in concurrent.futures.as_completed(pool.submit(cell_is_noticed, cell) for cell in cells(options.seed, options.cells)):
            tell(*done.result())
    print(f"\n{killed} of {killed + len(survivors)} mutants were noticed" + (f", {len(unclear)} could not be tried" if unclear else ""))
    for what in survivors:
        print("lives: " + what)
    return 1 if survivors or unclear else 0


if __name__ == "__main__":
    sys.exit(main())
