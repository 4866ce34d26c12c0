#!/usr/bin/env python3
"""Figures that do not depend on what else the machine does: lines after the preprocessor and sizes of what is shipped.

Compares them with baseline.csv, where every row has the reason for its figure. A figure that has moved further than its row
allows fails, up or down: look for the cause, then write the new figure with its reason. With --write prints the rows anew.
The figures are those of one compiler; with another they are printed and not judged.
"""
import argparse
import csv
import gzip
import os
import pathlib
import subprocess
import sys
import tempfile
import zipfile

HERE = pathlib.Path(__file__).resolve().parent
BASELINE = HERE / "baseline.csv"


def lines(include, compiler, *options):
    done = subprocess.run([compiler, "-std=c++20", "-E", f"-I{HERE.parent / 'include'}", *options, "-x", "c++", "-"],
                          input=f"#include <{include}>\n", capture_output=True, text=True, check=True)
    return sum(1 for line in done.stdout.splitlines() if line.strip() and not line.startswith("#"))


def stripped(path):
    with tempfile.NamedTemporaryFile() as file:
        subprocess.run(["strip", "-o", file.name, str(path)], check=True)
        return os.path.getsize(file.name)


def zipped(package):
    """Bytes of the Python package as a wheel holds it, the compiled module stripped."""
    with tempfile.TemporaryDirectory() as folder:
        archive = pathlib.Path(folder, "wheel.zip")
        with zipfile.ZipFile(archive, "w", zipfile.ZIP_DEFLATED) as file:
            for path in sorted(package.iterdir()):
                if path.suffix == ".so":
                    subprocess.run(["strip", "-o", f"{folder}/{path.name}", str(path)], check=True)
                    file.write(f"{folder}/{path.name}", path.name)
                elif path.is_file():
                    file.write(path, path.name)
        return archive.stat().st_size


def figures(build, compiler):
    """{name: figure} of what is built."""
    found = {f"lines {name}": lines(name, compiler) for name in
             ("cmath", "boost/units/quantity.hpp", "tauten/tightening/torque.hpp", "tauten/units.hpp", "tauten/tauten.hpp")}
    # What a question costs those who include it and link the compiled library; strings, vectors and optionals are most of it.
    found |= {f"lines {name} compiled": lines(name, compiler, "-DTAUTEN_COMPILED") for name in
              (*(f"tauten/question/{question}.hpp" for question in ("clamp", "free", "identify", "reach", "turn")),
               "tauten/tauten.hpp")}
    for name, pattern in (("libtauten.so", "src/c_api/libtauten.so"), ("_core", "python/tauten/_core*.so"),
                          ("tauten", "bin/tauten")):
        for path in build.glob(pattern):
            found[f"bytes {name}"] = stripped(path)
    if any(build.glob("python/tauten/_core*.so")):
        found["bytes wheel"] = zipped(build / "python/tauten")
    for path in sorted(build.glob("wasm/tauten/*.wasm")):
        found[f"bytes {path.name}"] = path.stat().st_size
        found[f"bytes {path.name}.gz"] = len(gzip.compress(path.read_bytes(), 9))
    return found


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("build", type=pathlib.Path)
    parser.add_argument("--compiler", default="c++")
    parser.add_argument("--write", action="store_true")
    arguments = parser.parse_args()
    version = subprocess.run([arguments.compiler, "--version"], capture_output=True, text=True).stdout.split("\n")[0]
    found = figures(arguments.build, arguments.compiler)
    if arguments.write:
        print("\n".join(f"{name},{figure}" for name, figure in found.items()))
        return 0
    with BASELINE.open(encoding="utf-8") as file:
        baseline = {row["figure"]: row for row in csv.DictReader(file)}
    judged = all(row["compiler"] in version for row in baseline.values())
    print(version if judged else f"{version}: the baseline is that of another compiler, nothing is judged")
    failed = 0
    for name, figure in found.items():
        row = baseline.get(name)
        ratio = figure / float(row["value"]) if row else float("nan")
        good = not judged or (row is not None and abs(ratio - 1) <= float(row["percent"]) / 100)
        failed += not good
        print(f"{name:40}{figure:10}{ratio:8.3f} of the baseline   {'ok' if good else 'FAIL'}")
    print(f"include cost of one formula: {found['lines tauten/tightening/torque.hpp'] / found['lines cmath']:.2f} of <cmath>; "
          f"of units.hpp: {found['lines tauten/units.hpp'] / found['lines boost/units/quantity.hpp']:.2f} of Boost.Units alone")
    print(f"{len(found) - failed} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
