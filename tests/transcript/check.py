#!/usr/bin/env python3
"""Holds what the command line program answers to a long list of commands against what it answered before.

    TAUTEN_PROGRAM=build/bin/tauten tests/transcript/check.py            names the commands that answer otherwise
    TAUTEN_PROGRAM=build/bin/tauten tests/transcript/check.py --update   writes answers.txt anew

The record shows change and proves nothing about correctness: what is right, the published tests say. It keeps what matters
of an answer: the exit code, of JSON its structure, figures and words, of tables their columns and cells, of pages and
messages the figures in their order. Sentences may be put otherwise without touching it.
"""
import concurrent.futures
import csv
import difflib
import json
import math
import os
import pathlib
import re
import shlex
import subprocess
import sys

PLACE = pathlib.Path(__file__).resolve().parent
COMMANDS = PLACE / "commands.txt"
ANSWERS = PLACE / "answers.txt"
DIGITS = 6  # figures of other compilers and libraries differ far behind
NUMBER = re.compile(r"(?<![\w.])[-+]?\d+(?:\.\d+)?(?:[eE][-+]?\d+)?")
WIDTH = 120
MOST_ITEMS = 5  # of a longer list the first, the last and the sum of all figures are kept


def rounded(number):
    return number if isinstance(number, bool | int) else float(f"{number:.{DIGITS}g}")


def numbers_in(value):
    if isinstance(value, dict):
        value = list(value.values())
    if isinstance(value, list):
        for item in value:
            yield from numbers_in(item)
    elif isinstance(value, int | float):
        yield float(value)


def kept(value):
    """JSON without its sentences: figures, and words of which programs read."""
    if isinstance(value, dict):
        return {name: kept(member) for name, member in value.items()}
    if isinstance(value, list):
        if len(value) <= MOST_ITEMS:
            return [kept(item) for item in value]
        return [kept(value[0]), kept(value[-1]), {"items": len(value), "sum": rounded(math.fsum(numbers_in(value)))}]
    if isinstance(value, float):
        return rounded(value)
    if isinstance(value, str) and (" " in value.strip() and len(value) > 24 or len(value) > 60):
        return "..."
    return value


def lines_of_json(value):
    """One line for each member at the top and each item of a list there."""
    def line(name, member):
        return f"  {name}: {json.dumps(member, ensure_ascii=False, separators=(',', ':'))}"
    for name, member in value.items() if isinstance(value, dict) else [("", value)]:
        if isinstance(member, list) and member and isinstance(member[0], dict | list):
            yield from (line(f"{name}[{place}]", item) for place, item in enumerate(member))
        else:
            yield line(name, member)


def figures(text):
    """The numbers of a text in their order, in lines."""
    line = " "
    for number in NUMBER.findall(text):
        word = number if len(number) < 8 else f"{float(number):.{DIGITS}g}"
        if len(line) + len(word) > WIDTH:
            yield line
            line = " "
        line += " " + word
    if line.strip():
        yield line


def lines_of_table(text):
    def cell(one):
        try:
            return f"{float(one):.{DIGITS}g}"
        except ValueError:
            return one if len(one) < 25 else "..."
    for row in csv.reader(text.splitlines()):
        yield "  " + ",".join(cell(one) for one in row)


def answer(program, command):
    done = subprocess.run([program, *shlex.split(command)], capture_output=True, text=True, cwd=PLACE, timeout=60,
                          stdin=subprocess.DEVNULL, env={**os.environ, "LC_ALL": "C.UTF-8", "COLUMNS": "100", "NO_COLOR": "1"})
    lines = [f"$ {command}", f"  exit {done.returncode}"]
    text = done.stdout
    if text.startswith(("{", "[")):
        try:
            lines += lines_of_json(kept(json.loads(text)))
        except json.JSONDecodeError as problem:
            lines.append(f"  no JSON: {problem.msg}")
    elif text and is_table(command, text):
        lines += lines_of_table(text)
    else:
        lines += figures(text)
    lines += [f"  told:{line[1:]}" for line in figures(done.stderr)]
    return lines


def is_table(command, text):
    return ".csv" in command and "--json" not in command or " --csv" in command


def commands():
    lines = (line.strip() for line in COMMANDS.read_text(encoding="utf-8").splitlines())
    return [line for line in lines if line and not line.startswith("#")]


def answers(program):
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
        return [line for lines in pool.map(lambda command: answer(program, command), commands()) for line in lines]


def differences(program):
    """\\return the record against what is answered now, as a diff with the commands in it"""
    recorded = ANSWERS.read_text(encoding="utf-8").splitlines()
    return list(difflib.unified_diff(recorded, answers(program), "recorded", "now", lineterm="", n=3))


def main():
    program = os.environ.get("TAUTEN_PROGRAM")
    if program is None:
        sys.exit("say where the program is: TAUTEN_PROGRAM=build/bin/tauten")
    program = str(pathlib.Path(program).resolve())
    if "--update" in sys.argv[1:]:
        ANSWERS.write_text("\n".join(answers(program)) + "\n", encoding="utf-8")
        return
    lines = differences(program)
    print("\n".join(lines) or f"{len(commands())} commands answer as they did")
    sys.exit(bool(lines))


if __name__ == "__main__":
    main()
