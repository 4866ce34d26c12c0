#!/usr/bin/env python3
"""Makes the source distribution, builds a wheel from it in a fresh virtual environment, and uses what was installed.

Nothing is downloaded: what the build needs comes from the system. Ends with `N passed, M failed`.
"""
import os
import pathlib
import shutil
import subprocess
import sys
import tempfile

ROOT = pathlib.Path(__file__).resolve().parents[2]
USE = """
import pathlib, sys, tauten
assert pathlib.Path(tauten.__file__).is_relative_to(sys.prefix), tauten.__file__
assert (pathlib.Path(tauten.__file__).parent / "py.typed").exists()
assert tauten.clamp(thread="M16", property_class="8.8", torque="130N.m", condition="oiled").candidates[0].verdict == "may be slack"
# F = T/(K d) by hand: 80 N.m over 0.2 x 16 mm are 25 kN.
assert abs(tauten.preload_from_nut_factor("80N.m", "16mm", 0.2) - 25e3) < 1e-9
import importlib.metadata
print("tauten", importlib.metadata.version("tauten"), "with", len(tauten.formulas), "formulas")
"""


def run(*command, **options):
    print("$", *command, flush=True)
    subprocess.run([str(word) for word in command], check=True, **options)


def main():
    with tempfile.TemporaryDirectory() as name:
        work = pathlib.Path(name)
        # A copy of what is under version control or new, so that what a checkout leaves behind takes no part.
        copy = work / "checkout"
        shutil.copytree(ROOT, copy, ignore=shutil.ignore_patterns(".git", "build", "build-*", "__pycache__", "*.egg-info", "docs"))
        run(sys.executable, "-c", f"from setuptools import build_meta; build_meta.build_sdist({str(work / 'dist')!r})",
            cwd=copy, stdout=subprocess.DEVNULL)
        [archive] = (work / "dist").glob("*.tar.gz")
        run(sys.executable, "-m", "venv", "--system-site-packages", work / "venv")
        python = work / "venv/bin/python"
        # As strict as the build of the tests and as near to the sources, so that it shares their compiler cache.
        (work / "near.cfg").write_text("[build_ext]\nbuild_temp = temp\n", encoding="utf-8")
        run(python, "-m", "pip", "wheel", "--quiet", "--no-build-isolation", "--no-index", "--no-deps", archive, "-w", work / "wheel",
            env={**os.environ, "CMAKE_GENERATOR": "Ninja", "CMAKE_ARGS": "-DCMAKE_COMPILE_WARNING_AS_ERROR=ON", "DIST_EXTRA_CONFIG": str(work / "near.cfg")})
        [wheel] = (work / "wheel").glob("*.whl")
        print(f"{archive.name} {archive.stat().st_size} bytes, {wheel.name} {wheel.stat().st_size} bytes")
        run(python, "-m", "pip", "install", "--quiet", "--no-index", "--no-deps", wheel)
        run(python, "-I", "-c", USE, cwd=work)
    print("1 passed, 0 failed")


if __name__ == "__main__":
    main()
