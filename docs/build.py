"""Builds the documentation site. `./dev docs` calls it with the built package on the path.

Pages that are written by hand stand in site/ and beside this file; all others are made from the library. A broken link, a
missing unit, source or check ends the build with an error.
"""
import argparse
import concurrent.futures
import contextlib
import html
import io
import pathlib
import re
import shlex
import shutil
import subprocess
import sys
import time

import furo
import tauten
from fontTools import subset
from PIL import Image

import handout
import notebook
from pages import bench, checks, cpp, formulas, human, notices, output, python_reference, stop_torques, toctree, verification, words, write

DOCS = pathlib.Path(__file__).resolve().parent
ROOT = DOCS.parent
BUILD = pathlib.Path(tauten.__file__).resolve().parents[2]


def lessons(folder, static):
    """Runs every notebook and writes it as a page; small pictures for the list go into the folder of static files. Returns the handouts,
    which no builder of pages changes any more."""
    folder.mkdir(parents=True)
    (static / "lessons").mkdir()
    caution = " ".join(bench.cautions(BUILD / "bin" / "tauten")[0])

    def run(paths):
        with notebook.kernel() as execute:
            found = {}
            for path in paths:
                ran = execute(path)
                text, pictures = notebook.page(path, ran, folder)
                found[path] = (text, handout.page(path, ran, pictures, caution))
            return found

    with concurrent.futures.ThreadPoolExecutor(2) as pool:
        first, second = pool.map(run, (notebook.NOTEBOOKS[::2], notebook.NOTEBOOKS[1::2]))
    pages = first | second
    doors = {}
    for path in notebook.NOTEBOOKS:
        (folder / f"{path.stem}.md").write_text(pages[path][0], encoding="utf-8")
        with Image.open(folder / f"{path.stem}-1.png") as picture:
            picture.convert("RGB").resize((560, round(560 * picture.height / picture.width)), Image.LANCZOS).quantize(64).save(
                static / "lessons" / f"{path.stem}.png")
        doors[path.stem] = (f'<a href="{path.stem}.html"><img src="../_static/lessons/{path.stem}.png" alt=""><b>'
                            f"{html.escape(notebook.title(path))}</b>{html.escape(human(notebook.goal(path)))}.</a>")
    write(folder / "index.md", "# Lessons",
          "Each lesson has a goal, a little theory, an example that is computed, a picture to print, and exercises with "
          "solutions. All examples are of one invented irrigation pumping station. They are notebooks: download one at the end of its page to "
          "change the figures, or print its handout, two pages without solutions. In each group they build on each other.",
          *(f'## {title}\n\n<div class="doors">' + "\n".join(doors[name] for name in names) + "</div>"
            for title, names in notebook.COURSE.items()),
          toctree([path.stem for path in notebook.NOTEBOOKS], "hidden"))
    return {f"{path.stem}_handout.html": text for path, (_, text) in pages.items()}


# Letters, digits and marks of formulas, with their upright and slanted Greek.
_SIGNS = (*range(0x20, 0x7F), *range(0xA0, 0x100), *range(0x391, 0x3D7), *range(0x2010, 0x2070), *range(0x2190, 0x2194),
          *range(0x2200, 0x2270), 0x22C5, 0x210E, *range(0x1D434, 0x1D468), *range(0x1D6FC, 0x1D71C))


def font(path):
    """Writes the font of formulas: the signs that formulas have, and what a browser needs to lay them out."""
    options = subset.Options(flavor="woff2", layout_features=["ssty"])
    options.drop_tables += ["FFTM"]
    whole = subset.load_font("/usr/share/texmf/fonts/opentype/public/tex-gyre-math/texgyrepagella-math.otf", options)
    chosen = subset.Subsetter(options)
    chosen.populate(unicodes=_SIGNS)
    chosen.subset(whole)
    subset.save_font(whole, path, options)


def theme(static):
    """Script and style of the theme, each in one piece: Debian's look for more in places that only a server has."""
    given = pathlib.Path(furo.__file__).parent / "theme" / "furo" / "static"
    script = (given / "scripts" / "furo.js").read_text(encoding="utf-8")
    if script.startswith("import "):
        script = (given / "scripts" / "gumshoe-patched.js").read_text(encoding="utf-8") + script.partition("\n")[2]
    style = re.sub(r"@import url\((/javascript/.*?)\);", lambda found: pathlib.Path("/usr/share" + found[1]).read_text(encoding="utf-8"),
                   (given / "styles" / "furo.css").read_text(encoding="utf-8"))
    for path, text in ((static / "scripts" / "furo.js", script), (static / "styles" / "furo.css", style)):
        path.parent.mkdir()
        path.write_text(text, encoding="utf-8")


def run_examples(text, static):
    """Fills in what examples print: each `$ tauten` line of a console block, each block of python-run, and each chart, whose picture goes
    into the folder of static files."""

    def console(block):
        lines = []
        for line in block[1].strip().splitlines():
            run = subprocess.run([BUILD / "bin" / "tauten", *shlex.split(line.removeprefix("$ tauten"))], text=True, cwd=ROOT,
                                 capture_output=True)
            if run.returncode:
                raise RuntimeError(f"{line}: {run.stderr}")
            lines += [line, "", *run.stdout.rstrip().splitlines()]
        return output("\n".join(lines), unbroken=True)

    def python(block):
        printed = io.StringIO()
        with contextlib.redirect_stdout(printed):
            exec(compile(block[1], "example", "exec"), {})
        return f"```python\n{block[1].strip()}\n```\n\n{output(printed.getvalue())}"

    def chart(block):
        drawing = subprocess.run([BUILD / "bin" / "tauten", *shlex.split(block[2])[1:], "--format", "svg"], text=True, check=True, cwd=ROOT,
                                 capture_output=True).stdout
        (static / "charts").mkdir(exist_ok=True)
        (static / "charts" / f"{block[1]}.svg").write_text(drawing, encoding="utf-8")
        told = html.escape(re.search("<title>(.*?)</title>", drawing)[1])
        return f'```sh\n{block[2].strip()}\n```\n\n<img src="../_static/charts/{block[1]}.svg" alt="{told}" width="480">'

    text = re.sub(r"```{chart} (\w+)\n(.*?)```", chart, text, flags=re.S)
    text = re.sub(r"```console\n(.*?)```", console, text, flags=re.S)
    return re.sub(r"```python-run\n(.*?)```", python, text, flags=re.S)


def main():
    """Writes the source of the site, builds it, and says where it is."""
    parser = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    parser.add_argument("--output", type=pathlib.Path, default=BUILD / "docs", help="folder to build in")
    arguments = parser.parse_args()
    start = time.monotonic()
    arguments.output.mkdir(parents=True, exist_ok=True)
    source, site = arguments.output / "source", arguments.output / "html"
    for folder in (source, site, arguments.output / "doctrees", arguments.output / "xml"):
        shutil.rmtree(folder, ignore_errors=True)
    shutil.copytree(DOCS / "site", source)
    shutil.copytree(DOCS / "examples", source / "examples")
    shutil.copytree(DOCS / "demo", source / "demo")
    for project in ("installed", "c_program"):
        shutil.copytree(ROOT / "tests" / "consumers" / project, source / "examples" / project)
    for page in source.rglob("*.md"):
        page.write_text(run_examples(page.read_text(encoding="utf-8"), source / "_static"), encoding="utf-8")
    shutil.copy(ROOT / "CHANGELOG.md", source / "changelog.md")
    font(source / "_static" / "math.woff2")
    theme(source / "_static")
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
    handouts = lessons(source / "lessons", source / "_static")
    counts.append(f"{len(handouts)} lessons, each with a handout")

    settings = {"release": tauten.__version__, "html_title": f"tauten {tauten.__version__}"}
    if subprocess.run([sys.executable, "-m", "sphinx", "-b", "html", "-W", "--keep-going", "-n", "-q", "-j", "2",
                       *(word for name, value in settings.items() for word in ("-D", f"{name}={value}")),
                       "-d", str(arguments.output / "doctrees"), str(source), str(site)]).returncode:
        sys.exit("The documentation has mistakes; see above.")
    for name, text in handouts.items():
        (site / "lessons" / name).write_text(text, encoding="utf-8")
    # Within the site, and as a folder to copy to a phone.
    for folder, is_within in ((site / "bench", True), (arguments.output / "bench", False)):
        shutil.rmtree(folder, ignore_errors=True)
        bench.pages(BUILD / "wasm" / "tauten", BUILD / "bin" / "tauten", source / "_static", folder, is_within)
    print("\n".join(counts))
    print(f"The pages that compute, as one folder to copy to a phone: {arguments.output / 'bench'}")
    print(f"Built in {time.monotonic() - start:.0f} s. Open {site / 'index.html'}")


if __name__ == "__main__":
    main()
