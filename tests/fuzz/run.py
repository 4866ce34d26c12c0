#!/usr/bin/env python3
"""Runs the fuzz targets, each for a while, several at a time. Ends with `N passed, M failed`.

    run.py FOLDER --seconds 30        FOLDER has the programs tauten_fuzz_NAME; seeds are in seeds/NAME.txt, ---- between them
    run.py FOLDER csv --runs 100000000 --keep corpus   at length, before a release; what was found on the way is kept
    run.py FOLDER csv --length 200 ...   short inputs only, of which several times as many run

An input that fails is printed; put it into the seeds once it is mended.
"""
import argparse
import concurrent.futures
import os
import pathlib
import subprocess
import sys
import tempfile

HERE = pathlib.Path(__file__).resolve().parent


def run(program, options):
    """\\return the name of a target, and what it failed with, "" if it did not"""
    name = program.name.removeprefix("tauten_fuzz_")
    with tempfile.TemporaryDirectory() as folder:
        corpus = pathlib.Path(folder) / "corpus"
        corpus.mkdir()
        for i, seed in enumerate((HERE / "seeds" / f"{name}.txt").read_bytes().split(b"----\n")):
            (corpus / str(i)).write_bytes(seed.removesuffix(b"\n"))
        found = pathlib.Path(options.keep) / name if options.keep else corpus
        found.mkdir(parents=True, exist_ok=True)
        length = [f"-runs={options.runs}"] if options.runs else [f"-max_total_time={options.seconds}"]
        done = subprocess.run([program, found, *([corpus] if options.keep else []), *length, "-timeout=20", "-rss_limit_mb=2048",
                               f"-max_len={options.length}", "-verbosity=1", "-print_final_stats=1", f"-artifact_prefix={folder}/failed-"],
                              capture_output=True, text=True, errors="replace")
        count = [line.split()[-1] for line in done.stderr.splitlines() if "number_of_executed_units" in line]
        print(f"{name}: {count[0] if count else 'no'} runs", flush=True)
        if done.returncode == 0:
            return name, ""
        inputs = [path.read_bytes() for path in sorted(pathlib.Path(folder).glob("failed-*"))]
        return name, "\n".join([done.stderr[-3000:], *map(repr, inputs)])


def main():
    parser = argparse.ArgumentParser(description=__doc__.split("\n\n")[0])
    parser.add_argument("folder", type=pathlib.Path)
    parser.add_argument("names", nargs="*")
    parser.add_argument("--seconds", type=int, default=30)
    parser.add_argument("--runs", type=int)
    parser.add_argument("--length", type=int, default=2048, help="bytes of the longest input")
    parser.add_argument("--keep")
    options = parser.parse_args()
    programs = [path for path in sorted(options.folder.glob("tauten_fuzz_*")) if os.access(path, os.X_OK) and path.is_file()
                and (not options.names or path.name.removeprefix("tauten_fuzz_") in options.names)]
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count() + 1) as pool:
        failed = [(name, why) for name, why in pool.map(lambda program: run(program, options), programs) if why]
    for name, why in failed:
        print(f"== {name}\n{why}")
    print(f"{len(programs) - len(failed)} passed, {len(failed)} failed")
    return 1 if failed or not programs else 0


if __name__ == "__main__":
    sys.exit(main())
