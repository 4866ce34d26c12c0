#!/usr/bin/env python3
"""Links two files in the same mode, header-only or compiled, and in both: that must fail, and the linker must say why.

With each linker that is installed, and with link-time optimisation if TAUTEN_WHOLE=1 asks for it. Then files with and without exceptions, and of two
versions: header-only they must work side by side, and the compiled library of the other kind must be missed by name. Ends with
`N passed, M failed`.
"""
import argparse
import itertools
import os
import pathlib
import shutil
import subprocess
import sys
import tempfile

HERE = pathlib.Path(__file__).resolve().parent
NAME = "tauten_header_only_and_compiled_modes_are_mixed"
INCLUDE = HERE.parents[1] / "include"
MODES = {"header-only": [], "compiled": ["-DTAUTEN_COMPILED"]}


def run(*command):
    return subprocess.run([str(word) for word in command], capture_output=True, text=True)


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("library", type=pathlib.Path, help="libtauten_compiled.a")
    parser.add_argument("--compiler", default="c++")
    parser.add_argument("--flags", default="", help="with which the library was compiled, such as sanitizers")
    arguments = parser.parse_args()
    flags = arguments.flags.split()
    passed = failed = 0
    with tempfile.TemporaryDirectory() as folder:
        def link(linker, optimised, first, second):
            """None if two modes that agree run and two that differ are refused by name, else what went wrong."""
            objects = [f"{folder}/{name}-{mode}{optimised}.o" for name, mode in (("one", first), ("another", second))]
            program = pathlib.Path(folder, "program")
            program.unlink(missing_ok=True)
            linked = run(arguments.compiler, *flags, *optimised.split(), f"-fuse-ld={linker}", *objects, arguments.library, "-o",
                         program)
            if first == second:
                return linked.stderr if linked.returncode else run(program).stderr if run(program).returncode else None
            if linked.returncode == 0:
                return "links"
            return None if NAME in linked.stderr else f"does not name {NAME}:\n{linked.stderr}"

        optimisations = ("", "-flto") if os.environ.get("TAUTEN_WHOLE") else ("",)
        for optimised, name, (mode, define) in itertools.product(optimisations, ("one", "another"), MODES.items()):
            made = run(arguments.compiler, "-std=c++20", *flags, *optimised.split(), *define, f"-I{INCLUDE}",
                       "-c", HERE / f"{name}.cpp", "-o", f"{folder}/{name}-{mode}{optimised}.o")
            if made.returncode != 0:
                raise SystemExit(made.stderr)
        # Side by side. Each compiles its own inline functions, of which a linker must not keep one for both.
        newer = pathlib.Path(folder, "newer/tauten/base/version.hpp")
        newer.parent.mkdir(parents=True)
        version = (INCLUDE / "tauten/base/version.hpp").read_text(encoding="utf-8")
        newer.write_text(version.replace("TAUTEN_VERSION_PATCH 0", "TAUTEN_VERSION_PATCH 99"), encoding="utf-8")
        others = {"no_exceptions": ["-fno-exceptions"], "0_1_99": [f"-I{folder}/newer"]}

        def beside(other, mode):
            """None if a file of another kind works beside one of this, or misses the library of its kind by name."""
            made = run(arguments.compiler, "-std=c++20", *flags, *MODES[mode], *others[other], f"-I{INCLUDE}", "-c",
                       HERE / "another.cpp", "-o", f"{folder}/other.o")
            if made.returncode != 0:
                return made.stderr
            program = pathlib.Path(folder, "program")
            program.unlink(missing_ok=True)
            linked = run(arguments.compiler, *flags, f"{folder}/one-{mode}.o", f"{folder}/other.o", arguments.library, "-o", program)
            if mode == "header-only":
                return linked.stderr if linked.returncode else run(program).stderr if run(program).returncode else None
            if linked.returncode == 0:
                return "links"
            return None if other in linked.stderr else f"does not name {other}:\n{linked.stderr}"

        for other, mode in itertools.product(others, MODES):
            fault = beside(other, mode)
            print(f"{'FAIL' if fault else 'ok  '} {mode} beside {other}{': ' + fault if fault else ''}")
            passed, failed = passed + (fault is None), failed + (fault is not None)

        linkers = [name for name in ("bfd", "gold", "lld") if shutil.which(f"ld.{name}")]
        # Only a linker with the plugin of the compiler optimises, and lld has none for GCC.
        cases = [(name, "") for name in linkers] + [("bfd", optimised) for optimised in optimisations[1:] if "bfd" in linkers]
        for (linker, optimised), first, second in itertools.product(cases, MODES, MODES):
            fault = link(linker, optimised, first, second)
            print(f"{'FAIL' if fault else 'ok  '} {linker} {optimised} {first} with {second}{': ' + fault if fault else ''}")
            passed, failed = passed + (fault is None), failed + (fault is not None)
    print(f"{passed} passed, {failed} failed")
    return 1 if failed or not passed else 0


if __name__ == "__main__":
    sys.exit(main())
