"""Builds the documentation site. `./dev docs` calls it with the built package on the path.

Pages that are written by hand stand in site/ and beside this file; all others are made from the library. A broken link, a
missing unit, source or check ends the build with an error.
"""
import argparse
import concurrent.futures
import contextlib
import io
import pathlib
import re
import shlex
import shutil
import subprocess
import sys
import time

import tauten

import notebook
from pages import checks, cpp, formulas, notices, output, python_reference, stop_torques, toctree, verification, words, write

DOCS = pathlib.Path(__file__).resolve().parent
ROOT = DOCS.parent
BUILD = pathlib.Path(tauten.__file__).resolve().parents[2]


def lessons(folder):
    """Runs every notebook and writes it as a page."""
    folder.mkdir(parents=True)
    with concurrent.futures.ThreadPoolExecutor(2) as pool:
        pages = list(pool.map(lambda path: notebook.page(path, notebook.execute(path), folder), notebook.NOTEBOOKS))
    for path, text in zip(notebook.NOTEBOOKS, pages):
        (folder / f"{path.stem}.md").write_text(text, encoding="utf-8")
    write(folder / "index.md", "# Lessons",
          "Each lesson has a goal, a little theory, an example that is computed, a picture to print, and exercises with "
          "solutions. All play in one invented irrigation pumping station. They are notebooks: open them in `docs/notebooks/` to "
          "change the figures.", toctree([path.stem for path in notebook.NOTEBOOKS]))
    return f"{len(pages)} lessons"


def run_examples(text):
    """Fills in what examples print: each `$ tauten` line of a console block, and each block of python-run."""

    def console(block):
        lines = []
        for line in block[1].strip().splitlines():
            run = subprocess.run([BUILD / "bin" / "tauten", *shlex.split(line.removeprefix("$ tauten"))], text=True, cwd=ROOT,
                                 capture_output=True)
            if run.returncode:
                raise RuntimeError(f"{line}: {run.stderr}")
            lines += [line, "", *run.stdout.rstrip().splitlines()]
        return output("\n".join(lines))

    def python(block):
        printed = io.StringIO()
        with contextlib.redirect_stdout(printed):
            exec(compile(block[1], "example", "exec"), {})
        return f"```python\n{block[1].strip()}\n```\n\n{output(printed.getvalue())}"

    text = re.sub(r"```console\n(.*?)```", console, text, flags=re.S)
    return re.sub(r"```python-run\n(.*?)```", python, text, flags=re.S)


def main():
    """Writes the source of the site, builds it, and says where it is."""
    parser = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    parser.add_argument("--output", type=pathlib.Path, default=BUILD / "docs", help="folder to build in")
    arguments = parser.parse_args()
    start = time.monotonic()
    arguments.output.mkdir(parents=True, exist_ok=True)
    source, html = arguments.output / "source", arguments.output / "html"
    for folder in (source, html, arguments.output / "doctrees", arguments.output / "xml"):
        shutil.rmtree(folder, ignore_errors=True)
    shutil.copytree(DOCS / "site", source)
    shutil.copytree(DOCS / "examples", source / "examples")
    shutil.copytree(DOCS / "demo", source / "demo")
    for project in ("installed", "c_program"):
        shutil.copytree(ROOT / "tests" / "consumers" / project, source / "examples" / project)
    for page in source.rglob("*.md"):
        page.write_text(run_examples(page.read_text(encoding="utf-8")), encoding="utf-8")
    (source / "reference").mkdir()
    for page in DOCS.glob("*.md"):
        # In the repository these pages stand above the site.
        text = page.read_text(encoding="utf-8").replace("](site/", "](../").replace("](demo/", "](../demo/")
        (source / "reference" / page.name).write_text(text, encoding="utf-8")

    compared = checks.Checks(BUILD / "tests" / "tauten_published_tests", arguments.output)
    reference = cpp.Reference(arguments.output)
    counts = [formulas.pages(compared, reference, source / "reference" / "formulas"),
              verification.pages(compared, list(tauten.formulas), source / "reference" / "verification")]
    reference.pages(tauten.formulas, source / "reference" / "cpp")
    python_reference.pages(source / "reference" / "python")
    counts.append(stop_torques.pages(source / "reference"))
    counts.append(notices.pages(source / "reference"))
    words.nomenclature(source / "background")
    words.bibliography(compared, source / "background")
    counts.append(lessons(source / "lessons"))

    if subprocess.run([sys.executable, "-m", "sphinx", "-b", "html", "-W", "--keep-going", "-n", "-q", "-j", "2",
                       "-d", str(arguments.output / "doctrees"), str(source), str(html)]).returncode:
        sys.exit("The documentation has mistakes; see above.")
    print("\n".join(counts))
    print(f"Built in {time.monotonic() - start:.0f} s. Open {html / 'index.html'}")


if __name__ == "__main__":
    main()
