#!/usr/bin/env python3
"""Writes the library as one header: tauten.hpp and everything that it includes, each once.

The glue to Boost.Units takes part only where Boost is found.
"""
import argparse
import pathlib
import re
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]
INCLUDE = ROOT / "include"
OWN = re.compile(r'^[ \t]*#[ \t]*include[ \t]*[<"](tauten/[^>"]+)[>"].*\n', re.M)
ONCE = re.compile(r"^#pragma once\n", re.M)
BOOST = "#include <boost/"


def expand(header, done):
    """Returns the text of `header`, what it needs before it; "" if it was there already."""
    if header in done:
        return ""
    done.add(header)
    text = (INCLUDE / header).read_text(encoding="utf-8")
    before = "".join(expand(other, done) for other in OWN.findall(text))
    body = ONCE.sub("", OWN.sub("", text)).strip() + "\n"
    if BOOST in body:
        body = f"#if __has_include(<boost/units/quantity.hpp>)\n{body}#endif\n"
    return f"{before}\n// ---- {header}\n{body}"


def single_header(headers):
    version = ".".join(re.findall(r"^#define TAUTEN_VERSION_\w+ (\d+)$", (INCLUDE / "tauten/base/version.hpp").read_text("utf-8"), re.M))
    licence = (ROOT / "LICENSE").read_text(encoding="utf-8").strip()
    done = set()
    body = "".join(expand(header, done) for header in headers)
    comment = "".join(f"// {line}".rstrip() + "\n" for line in licence.splitlines())
    return (f"// tauten {version}: torque and tension of threaded fasteners, in one header. Generated, do not edit.\n//\n"
            f"{comment}#pragma once\n{body}")


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("-o", "--output", type=pathlib.Path, help="file to write; without it, standard output")
    parser.add_argument("headers", nargs="*", default=["tauten/tauten.hpp"], help="what to start from")
    arguments = parser.parse_args()
    text = single_header(arguments.headers)
    if arguments.output is None:
        sys.stdout.write(text)
    else:
        arguments.output.parent.mkdir(parents=True, exist_ok=True)
        arguments.output.write_text(text, encoding="utf-8")


if __name__ == "__main__":
    main()
