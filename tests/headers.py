#!/usr/bin/env python3
"""Every header stands alone: it includes what it uses, and compiles, included twice, in both modes, without exceptions and
run-time type information, warnings as errors.

Of the standard library, a header must reach the headers that promise the names it uses: what they happen to include besides
differs between libraries. That is read. Then the first compiler takes every header, and each compiler those that no other header
includes, and so sees all lines; with the standard library precompiled, since it is most of the time. The oldest compilers that the
README names take an example that includes everything, as it is."""
import argparse
import collections
import concurrent.futures
import pathlib
import re
import subprocess
import sys
import tempfile

INCLUDE = pathlib.Path(__file__).resolve().parents[1] / "include"
EIGEN = pathlib.Path("/usr/include/eigen3")  # where Debian has it
OPTIONS = "-std=c++20 -Werror -Wall -Wextra -Wpedantic -Wconversion -Wshadow -Wdouble-promotion".split()
OPTIONS += ["-fno-exceptions", "-fno-rtti", f"-I{INCLUDE}", "-isystem", str(EIGEN)]
EXAMPLE = "../docs/examples/clamp.cpp"

# Which names a header of the standard library promises, ISO/IEC 14882:2020, of those in use.
STANDARD = """
algorithm: all_of any_of clamp copy copy_n count count_if equal fill_n find find_if lower_bound max max_element min min_element
algorithm: minmax minmax_element none_of nth_element replace reverse sort
array: array
atomic: atomic memory_order_relaxed
bit: bit_cast
cctype: toupper
charconv: chars_format errc from_chars from_chars_result to_chars to_chars_result
chrono: chrono
clocale: localeconv
cmath: abs asin atan atan2 ceil cos erfc exp expm1 fabs floor fmin hypot isfinite isnan log log10 log1p lround nan pow remainder round
cmath: sin sqrt tan
complex: abs arg complex conj norm sqrt
cstddef: ptrdiff_t size_t
cstdint: int32_t int8_t uint32_t uint64_t
cstdio: fputc fputs size_t snprintf
cstdlib: abs atoi size_t strtod
cstring: memchr memcpy size_t strchr strcmp strcspn strlen
exception: current_exception exception exception_ptr rethrow_exception terminate
functional: function
initializer_list: initializer_list
iterator: size
limits: numeric_limits
map: map
memory: make_shared shared_ptr
numeric: iota
optional: nullopt optional
span: size span
string: erase_if initializer_list size stoi string to_string
string_view: size string_view
thread: jthread this_thread thread
tuple: get tuple
type_traits: common_type_t conditional_t extent_v is_arithmetic_v is_constructible_v is_convertible_v is_enum_v is_floating_point_v
type_traits: is_integral_v is_invocable_v is_null_pointer_v is_same_v remove_cvref_t type_identity
utility: exchange get index_sequence make_index_sequence move pair swap
variant: get get_if variant
vector: erase_if initializer_list size vector
"""


class Tree:
    """The headers of the library and what they include."""

    def __init__(self):
        self.texts = {path.relative_to(INCLUDE).as_posix(): path.read_text(encoding="utf-8") for path in INCLUDE.rglob("*.hpp")}
        self.includes = {header: re.findall(r'^ *# *include [<"](.+?)[>"]', text, re.M) for header, text in self.texts.items()}
        self.headers = sorted(self.texts)
        self.outermost = sorted(set(self.headers).difference(*self.includes.values()))

    def reached(self, header):
        """Returns what a header includes, and what that includes."""
        found, left = set(), [header]
        while left:
            new = set(self.includes.get(left.pop(), ())) - found
            found |= new
            left += new
        return found

    def standard(self):
        """Returns the headers of the standard library that are included."""
        return sorted({other for included in self.includes.values() for other in included if "/" not in other and "mmintrin" not in other})


def names_without_header(tree):
    """Returns a sentence for each header that uses a name of the standard library without the header that promises it."""
    promised_by = collections.defaultdict(set)
    for line in STANDARD.strip().splitlines():
        header, _, names = line.partition(": ")
        for name in names.split():
            promised_by[name].add(header)
    faults = []
    for header in tree.headers:
        reached = tree.reached(header)
        for name in sorted(set(re.findall(r"\bstd::(\w+)", re.sub("//.*", "", tree.texts[header])))):
            if name not in promised_by:
                faults.append(f"{header}: std::{name} is not in the list of this check")
            elif not promised_by[name] & reached:
                faults.append(f"{header}: std::{name} needs one of {', '.join(sorted(promised_by[name]))}")
    return faults


def compile_alone(compiler, header, options):
    line = f'#include "{header}"\n'
    twice = line if header == EXAMPLE else line + line
    return subprocess.run([compiler, "-x", "c++", "-fsyntax-only", *OPTIONS, *options, "-"], input=twice,
                          capture_output=True, text=True).stderr


def main():
    parser = argparse.ArgumentParser(description=__doc__.partition("\n\n")[0])
    parser.add_argument("compilers", nargs="*", default=["c++"])
    parser.add_argument("--oldest", nargs="*", default=[])
    options = parser.parse_args()
    compilers = options.compilers
    tree = Tree()
    faults = names_without_header(tree)
    # Those that the compiled library makes lighter; without their workings, which it compiles.
    lighter = [header for header in tree.headers
               if "#ifndef TAUTEN_COMPILED" in tree.texts[header] and "/workings/" not in header]
    with tempfile.TemporaryDirectory() as folder:
        standard = {}  # the options of a compiler that bring what it has precompiled
        for number, compiler in enumerate(compilers):
            path = pathlib.Path(folder) / f"standard{number}.hpp"
            path.write_text("".join(f"#include <{header}>\n" for header in tree.standard()), encoding="utf-8")
            made = f"{path}.{'pch' if 'clang' in compiler else 'gch'}"
            subprocess.run([compiler, "-x", "c++-header", *OPTIONS, path, "-o", made], check=True)
            standard[compiler] = ["-include-pch", made] if "clang" in compiler else ["-include", str(path)]
        first = compilers[0]
        jobs = [(first, header, standard[first]) for header in tree.headers if header not in tree.outermost]
        jobs += [(first, header, [*standard[first], "-DTAUTEN_COMPILED"]) for header in lighter]
        jobs += [(compiler, header, standard[compiler]) for compiler in compilers for header in tree.outermost]
        jobs += [(compiler, header, [*standard[compiler], "-DTAUTEN_COMPILED"]) for compiler in compilers[1:] for header in lighter
                 if header in tree.outermost]
        jobs += [(compiler, EXAMPLE, ["-fexceptions"]) for compiler in options.oldest]
        with concurrent.futures.ThreadPoolExecutor(2) as pool:
            faults += [f"{job[1]} with {job[0]} {' '.join(job[2])}:\n{message}"
                       for job, message in zip(jobs, pool.map(lambda job: compile_alone(*job), jobs)) if message]
    for fault in faults:
        print("FAIL", fault)
    print(f"{len(tree.headers) + len(jobs) - len(faults)} passed, {len(faults)} failed")
    return 1 if faults or not jobs else 0


if __name__ == "__main__":
    sys.exit(main())
