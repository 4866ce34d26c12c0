#!/usr/bin/env python3
"""Fleets and arrays: what an answer or a formula costs for many rows, as ratios taken in one run; what it costs to begin.

Each figure is the best of several, alternating, so that what else the machine does tells least. Needs the built package on
the path (`./dev python benchmarks/fleet.py`) and a C++ compiler for the bare function that calls are measured against.
"""
import argparse
import itertools
import math
import os
import pathlib
import subprocess
import sys
import sysconfig
import tempfile
import time
import warnings

import numpy as np

import tauten

REST = (2e-3, 14.701e-3, 0.12, 0.12, 20e-3)
BARE = r"""
#include <pybind11/pybind11.h>
#include <cmath>
PYBIND11_MODULE(bare, module) {
  module.def("preload", [](double torque, double pitch, double pitch_diameter, double mu_g, double mu_k, double face) {
    return torque / (pitch / (2 * 3.14159265358979323846) + mu_g * pitch_diameter / std::sqrt(3.0) + mu_k * face / 2);
  });
}
"""


def best(*functions, times=7, warm=False):
    """Least seconds of each function, taken in turns. warm: each is called once before it is timed, or it would find in
    the cache what the function before it has left there."""
    seconds = [math.inf] * len(functions)
    for _ in range(times):
        for place, function in enumerate(functions):
            if warm:
                function()
            start = time.perf_counter()
            function()
            seconds[place] = min(seconds[place], time.perf_counter() - start)
    return seconds


def repeated(function, *arguments, times=20_000):
    def run():
        for _ in range(times):
            function(*arguments)
    run.times = times
    return run


def bare_function(folder):
    """A formula written by hand and bound without anything around it; None where it cannot be compiled."""
    source = folder / "bare.cpp"
    source.write_text(BARE)
    target = folder / f"bare{sysconfig.get_config_var('EXT_SUFFIX')}"
    done = subprocess.run([os.environ.get("CXX", "c++"), "-std=c++20", "-O3", "-shared", "-fPIC",
                           f"-I{sysconfig.get_path('include')}", str(source), "-o", str(target)], capture_output=True)
    if done.returncode != 0:
        return None
    sys.path.insert(0, str(folder))
    import bare
    return bare.preload


def fleet(rows):
    random = np.random.default_rng(1)
    return {"thread": random.choice(np.array(["M8", "M10", "M12", "M16", "M16x1.5", "M20", "M24"], object), rows),
            "class": random.choice(np.array(["8.8", "10.9"], object), rows),
            "condition": random.choice(np.array(["oiled", "dry", "unknown"], object), rows),
            "torque": random.uniform(10, 600, rows)}


def write_fleet(path, table):
    with open(path, "w") as file:
        file.write("place,thread,class,torque,condition\n")
        for row, (thread, name, torque, condition) in enumerate(zip(table["thread"], table["class"], table["torque"],
                                                                    table["condition"])):
            file.write(f"pump {row % 997} bolt {row},{thread},{name},{torque:.1f}N.m,{condition}\n")


class Report:
    def __init__(self):
        self.failed = 0

    def head(self, text):
        print(f"\n{text}")

    def row(self, what, value, unit, wanted="", holds=True):
        self.failed += not holds
        print(f"  {what:<66}{value:>10.3g} {unit:<8}{wanted:<22}{'' if holds else 'MISSED'}".rstrip())


def calls(report, folder):
    report.head("One call with six numbers")
    quantities = None
    functions = [repeated(tauten.preload_from_torque, 130.0, *REST)]
    names = ["tauten by position"]
    keywords = dict(zip((arg.name for arg in tauten.preload_from_torque.inputs), (130.0, *REST)))
    functions.append(lambda: [tauten.preload_from_torque(**keywords) for _ in range(20_000)])
    names.append("tauten by name")
    if (bare := bare_function(folder)) is not None:
        functions.append(repeated(bare, 130.0, *REST))
        names.append("bare pybind11 function")
    try:
        import pint
        unit = pint.UnitRegistry()
        torque, pitch, diameter, face = 130.0 * unit.N * unit.m, 2e-3 * unit.m, 14.701e-3 * unit.m, 20e-3 * unit.m
        quantities = repeated(lambda: torque / (pitch / (2 * math.pi) + 0.12 * diameter / math.sqrt(3) + 0.12 * face / 2),
                              times=1_000)
        functions.append(quantities)
        names.append("the same expression in Pint")
    except ImportError:
        pass
    each = {name: seconds / (1_000 if function is quantities else 20_000)
            for name, function, seconds in zip(names, functions, best(*functions))}
    for name, seconds in each.items():
        report.row(name, seconds * 1e9, "ns")
    own = each["tauten by position"]
    if bare is not None:
        ratio = own / each["bare pybind11 function"]
        report.row("tauten / bare pybind11 function", ratio, "", "at most 2", ratio <= 2)
    if quantities is not None:
        ratio = each["the same expression in Pint"] / own
        report.row("Pint / tauten", ratio, "", "at least 50", ratio >= 50)


def arrays(report, rows):
    report.head(f"A formula on {rows} rows, five arrays")
    random = np.random.default_rng(2)
    torque = random.uniform(50, 200, rows)
    pitch, diameter, mu_g, mu_k, face = (value * random.uniform(0.9, 1.1, rows) for value in REST)
    out = np.empty(rows)
    columns = (torque, pitch, diameter, mu_g, mu_k)
    third = math.sqrt(3)

    def expression():
        return torque / (pitch / (2 * math.pi) + mu_g * diameter / third + mu_k * REST[4] / 2)

    functions = {"tauten": lambda: tauten.preload_from_torque(*columns, REST[4], out=out),
                 "tauten's bare ufunc": lambda: tauten.preload_from_torque.ufunc(*columns, REST[4], out),
                 "NumPy expression": expression}
    try:
        import numexpr
        numexpr.set_num_threads(1)
        functions["numexpr, one thread"] = lambda: numexpr.evaluate(
            "torque / (pitch / 6.283185307179586 + mu_g * diameter / 1.7320508075688772 + mu_k * 0.01)",
            local_dict=dict(torque=torque, pitch=pitch, diameter=diameter, mu_g=mu_g, mu_k=mu_k))
    except ImportError:
        pass
    try:
        import pint
        unit = pint.UnitRegistry()
        t, p, d, f = torque * unit.N * unit.m, pitch * unit.m, diameter * unit.m, REST[4] * unit.m
        functions["Pint"] = lambda: t / (p / (2 * math.pi) + mu_g * d / third + mu_k * f / 2)
    except ImportError:
        pass
    np.testing.assert_allclose(functions["tauten"](), expression(), rtol=1e-13)
    seconds = dict(zip(functions, best(*functions.values(), times=max(7, 1_000_000 // rows), warm=True)))
    for name, value in seconds.items():
        report.row(name, value / rows * 1e9, "ns/row")
    for name, value in seconds.items():
        if name != "tauten":
            # While all columns fit into the cache, NumPy spends its time in the same divisions, and in calls.
            wanted = "at least 3" if name == "NumPy expression" and rows >= 1_000_000 else ""
            report.row(f"{name} / tauten", value / seconds["tauten"], "", wanted,
                       not wanted or value / seconds["tauten"] >= 3)


def trials(report, count):
    """The same distributions through the same formula, down to the same figures: mean, uncertainty, quantiles."""
    report.head(f"Monte Carlo, {count} trials of a formula with five uncertain inputs")
    from tauten import uncertainty
    inputs = dict(torque=uncertainty.normal(130.0, 4.0), pitch=REST[0], pitch_diameter=uncertainty.uniform(14.6e-3, 14.8e-3),
                  thread_friction=uncertainty.triangular(0.08, 0.12, 0.18),
                  bearing_friction=uncertainty.triangular(0.08, 0.12, 0.18),
                  bearing_diameter=uncertainty.uniform(19.5e-3, 20.5e-3))
    seeds = itertools.count(1)

    def own(threads):
        return uncertainty.monte_carlo("preload_from_torque", inputs, trials=count, seed=next(seeds), jobs=threads)

    def numpy(order):
        random = np.random.default_rng(next(seeds))
        torque, diameter = random.normal(130.0, 4.0, count), random.uniform(14.6e-3, 14.8e-3, count)
        mu_g, mu_k = random.triangular(0.08, 0.12, 0.18, count), random.triangular(0.08, 0.12, 0.18, count)
        face = random.uniform(19.5e-3, 20.5e-3, count)
        load = order(torque / (REST[0] / (2 * math.pi) + mu_g * diameter / math.sqrt(3) + mu_k * face / 2))
        return load.mean(), load.std(ddof=1), load[low], load[high]

    low, high = round(0.025 * count), round(0.975 * count)
    run, found = own(1), numpy(np.sort)
    np.testing.assert_allclose((run.mean, run.standard_uncertainty, run.symmetric.low, run.symmetric.high), found, rtol=1e-2)
    one, two, sort, partition = best(lambda: own(1), lambda: own(2), lambda: numpy(np.sort),
                                     lambda: numpy(lambda load: np.partition(load, (low, high))), times=3)
    report.row("tauten, one thread", one, "s")
    report.row("tauten, two threads", two, "s")
    report.row("NumPy with a sort", sort, "s")
    report.row("NumPy with a partition", partition, "s")
    report.row("NumPy with a sort / tauten, one thread", sort / one, "", "at least 2.5", sort / one >= 2.5)
    report.row("NumPy with a partition / tauten, one thread", partition / one, "", "at least 1", partition / one >= 1)
    report.row("NumPy with a sort / tauten, two threads", sort / two, "")


def imports(report):
    report.head("Import, beyond the start of the interpreter")

    def python(code):
        return lambda: subprocess.run([sys.executable, "-c", code], check=True)

    bare, numpy, own = best(python(""), python("import numpy"), python("import tauten"), times=9)
    report.row("numpy", (numpy - bare) * 1e3, "ms")
    report.row("tauten, which imports numpy", (own - bare) * 1e3, "ms")
    report.row("tauten / numpy", (own - bare) / (numpy - bare), "")


def includes(report):
    """What a file that includes a header and does nothing costs the compiler, beyond an empty file."""
    compiler = os.environ.get("CXX", "c++")
    include = pathlib.Path(__file__).resolve().parents[1] / "include"
    headers = ("cmath", "boost/units/systems/si.hpp", "tauten/tightening/torque.hpp", "tauten/units.hpp", "tauten/tauten.hpp")

    def compiled(text):
        return lambda: subprocess.run([compiler, "-std=c++20", "-O2", f"-I{include}", "-c", "-x", "c++", "-", "-o", os.devnull],
                                      input=text.encode(), check=True)

    try:
        empty, *seconds = best(compiled(""), *(compiled(f"#include <{name}>\n") for name in headers), times=5)
    except (OSError, subprocess.CalledProcessError):
        print("  there is no compiler: no includes")
        return
    report.head("Include, beyond an empty file")
    for name, value in zip(headers, seconds):
        report.row(f"<{name}>", (value - empty) * 1e3, "ms")
    cmath, boost, formula, units, _ = (value - empty for value in seconds)
    report.row("one formula / <cmath>", formula / cmath, "")
    report.row("tauten/units.hpp / Boost.Units", units / boost, "")


def loop(table):
    """What somebody without the library would write: plain Python, row by row, on numbers that are looked up already."""
    sizes = {"M8": (1.25e-3, 7.188e-3), "M10": (1.5e-3, 9.026e-3), "M12": (1.75e-3, 10.863e-3), "M16": (2e-3, 14.701e-3),
             "M16x1.5": (1.5e-3, 15.026e-3), "M20": (2.5e-3, 18.376e-3), "M24": (3e-3, 22.051e-3)}
    frictions = {"oiled": (0.08, 0.12, 0.16), "dry": (0.12, 0.16, 0.24), "unknown": (0.08, 0.14, 0.24)}
    loads = []
    for thread, condition, torque in zip(table["thread"], table["condition"], table["torque"]):
        pitch, diameter = sizes[thread]
        face = 1.25 * diameter
        loads.append([torque * part / (pitch / (2 * math.pi) + mu * diameter / math.sqrt(3) + mu * face / 2)
                      for part, mu in zip((1.04, 1, 0.96), frictions[condition])])
    return loads


def fleets(report, rows, program, folder):
    report.head(f"clamp on {rows} rows")
    table = fleet(rows)
    some = {name: values[:2_000] for name, values in table.items()}

    def one_by_one():
        for thread, name, condition, torque in zip(*some.values()):
            tauten.clamp(thread=thread, property_class=name, condition=condition, torque=float(torque))

    with warnings.catch_warnings():
        warnings.simplefilter("error")
        whole, two, plain = best(lambda: tauten.clamp(table), lambda: tauten.clamp(table, jobs=2), lambda: loop(table),
                                 times=3)
        single, = best(one_by_one, times=3)
    report.row("tauten.clamp(table), one thread", whole, "s")
    report.row("tauten.clamp(table), two threads", two, "s")
    report.row("plain loop for the clamp load band alone", plain, "s")
    report.row("calls of tauten.clamp, one for each row", single / 2_000 * rows, "s")
    report.row("plain loop / table", plain / whole, "")
    report.row("one call for each row / table", single / 2_000 * rows / whole, "")
    if not program:
        return
    source, target = folder / "fleet.csv", folder / "answers.csv"
    write_fleet(source, table)

    def command(threads):
        subprocess.run([program, "clamp", "--file", source, "--output", target, "--jobs", str(threads)], check=True)

    one, two = best(lambda: command(1), lambda: command(2), times=3)
    report.row("CSV to CSV, one thread", one, "s")
    report.row("CSV to CSV, two threads", two, "s", "at most 1.5 for 1e6", two <= 1.5 * max(1, rows / 1e6))
    # Of a process that was small before: a fork counts what its parent held.
    code = ("import resource, subprocess, sys; subprocess.run(sys.argv[1:], check=True, stdout=subprocess.DEVNULL); "
            "print(resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss)")
    memory = int(subprocess.run([sys.executable, "-c", code, program, "clamp", "--file", source, "--jobs", "2"],
                                capture_output=True, check=True).stdout) / 1000
    report.row("most memory, two threads", memory, "MB", "at most 200", memory <= 200)


def workers(report, rows):
    try:
        import dask.dataframe
        import distributed
        import pandas
    except ImportError:
        print("  dask and distributed are not there: no workers")
        return
    report.head(f"clamp on {rows} rows over worker processes")
    frame = pandas.DataFrame(fleet(rows))
    seconds = {}
    runs = itertools.count()
    for count in (1, 2):
        with distributed.LocalCluster(n_workers=count, threads_per_worker=1, dashboard_address=None) as cluster, \
                distributed.Client(cluster) as client:
            # Parts enough for the scheduler to share them out evenly: of eight, one worker got five.
            lazy = client.persist(dask.dataframe.from_pandas(frame, npartitions=16))
            distributed.wait(lazy)

            def run():
                # Columns of the answer are counted where they are made: what is sent about is not what is measured.
                # The share differs from run to run, else the scheduler would remember the answer.
                tauten.clamp(lazy, share=0.5 + 1e-3 * next(runs)).error.str.len().sum().compute()

            run()
            seconds[count], = best(run, times=3)
            report.row(f"{count} worker{'s' if count > 1 else ''}", seconds[count], "s")
    ratio = seconds[1] / seconds[2]
    report.row("one worker / two workers", ratio, "", "at least 1.7", ratio >= 1.7)


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--rows", type=int, default=1_000_000)
    parser.add_argument("--program", default=os.environ.get("TAUTEN_PROGRAM"), help="the command line program")
    parser.add_argument("--no-workers", action="store_true", help="leave the worker processes out")
    options = parser.parse_args()
    program = options.program
    if not program:
        beside = pathlib.Path(tauten.__file__).resolve().parents[2] / "bin" / "tauten"
        program = str(beside) if beside.exists() else None
    report = Report()
    with tempfile.TemporaryDirectory() as folder:
        folder = pathlib.Path(folder)
        calls(report, folder)
        arrays(report, 10_000)
        arrays(report, options.rows)
        trials(report, options.rows)
        fleets(report, options.rows, program, folder)
        if not options.no_workers:
            workers(report, 2 * options.rows)
        imports(report)
        includes(report)
    print(f"\n{report.failed} missed" if report.failed else "\nall met")
    return 1 if report.failed else 0


if __name__ == "__main__":
    sys.exit(main())
