"""Runs the notebooks of the documentation, and turns them into pages. Used by the tests and by build.py.

    ./dev python docs/notebook.py FOLDER    writes the notebooks for students, without solutions, into the folder
"""
import base64
import contextlib
import os
import pathlib
import re
import shutil
import sys
import tempfile

import jupyter_client
import nbclient
import nbformat
from jupyter_client import kernelspec

import tauten

import pages

FOLDER = pathlib.Path(__file__).resolve().parent / "notebooks"
# The lessons in the order in which they build on each other.
COURSE = {
    "From a torque to a clamp load": ("pump_foot", "nut_factor", "oil_on_dry_threads", "crowfoot", "friction_test", "scatter_budget"),
    "The bolt as a spring, and beyond": ("angle_against_torque", "snug_to_yield", "joint_diagram", "what_settles", "fine_against_coarse",
                                         "pressure_and_engagement"),
    "Taking apart": ("self_locking", "rusted_flange"),
    "Several bolts": ("three_hole_cover", "eight_bolt_flange", "eccentric_shear"),
}
NOTEBOOKS = [FOLDER / f"{name}.ipynb" for names in COURSE.values() for name in names]


class ThisInterpreter(jupyter_client.KernelManager):
    """Runs the kernel with this interpreter, whatever kernels are installed."""

    @property
    def kernel_spec(self):
        return kernelspec.KernelSpec(argv=[sys.executable, "-m", "ipykernel_launcher", "-f", "{connection_file}"],
                                     display_name="Python 3", language="python")


@contextlib.contextmanager
def kernel():
    """A function that runs notebooks, one after the other in one process, which imports everything once.

    Each begins with nothing of the ones before. It returns the notebook with its outputs; an error in a cell is raised.
    """
    here = pathlib.Path(tauten.__file__).resolve().parents[1]
    with tempfile.TemporaryDirectory() as empty:
        # Nothing of the user's own settings takes part, and the package is the one that runs here. Pictures have twice the pixels.
        profile = pathlib.Path(empty) / "profile_default"
        profile.mkdir()
        (profile / "ipython_kernel_config.py").write_text('c.InlineBackend.figure_formats = {"retina"}\n', encoding="utf-8")
        settings = {**os.environ, **dict.fromkeys(("IPYTHONDIR", "JUPYTER_CONFIG_DIR", "MPLCONFIGDIR"), empty)}
        settings["PYTHONPATH"] = os.pathsep.join([str(here), os.environ.get("PYTHONPATH", "")])
        settings["PYDEVD_DISABLE_FILE_VALIDATION"] = "1"  # no talk of the debugger
        settings.pop("MPLBACKEND", None)
        manager = ThisInterpreter()
        manager.start_kernel(env=settings, cwd=empty)
        client = manager.client()
        client.start_channels()
        client.wait_for_ready(timeout=120)
        client.allow_stdin = False

        def run(path):
            notebook = nbformat.read(path, as_version=4)
            runner = nbclient.NotebookClient(notebook, timeout=120, km=manager)
            runner.kc = client
            for place, cell in enumerate(notebook.cells):
                runner.execute_cell(cell, place)
            client.execute("%reset -f\nimport matplotlib.pyplot\nmatplotlib.pyplot.close('all')\n%reset -f", silent=True, reply=True,
                           timeout=60)
            for cell in notebook.cells:
                if cell.cell_type == "code":
                    cell.outputs = _joined(cell.outputs)
            return notebook

        try:
            yield run
        finally:
            client.stop_channels()
            manager.shutdown_kernel(now=True)


def execute(path):
    """The notebook with its outputs, run in a process of its own."""
    with kernel() as run:
        return run(path)


def _joined(outputs):
    """Outputs with printed text in one piece: a kernel that has to wait for a processor sends it in several."""
    whole = []
    for output in outputs:
        before = whole[-1] if whole else None
        if before and output.output_type == before.output_type == "stream" and output.name == before.name:
            before.text += output.text
        else:
            whole.append(output)
    return whole


def outputs(notebook):
    """All outputs of all cells."""
    return [output for cell in notebook.cells if cell.cell_type == "code" for output in cell.outputs]


def shown(notebook, kind):
    """What the cells show as this MIME type."""
    return [output["data"][kind] for output in outputs(notebook) if kind in output.get("data", {})]


def title(path):
    """First heading of a notebook."""
    return nbformat.read(path, as_version=4).cells[0].source.partition("\n")[0].removeprefix("# ")


def solutions(notebook):
    """Which cells hold solutions: those that begin with "# Solution", and all below "## Solutions" up to the next heading."""
    places, below = set(), False
    for place, cell in enumerate(notebook.cells):
        heading = cell.cell_type == "markdown" and re.search("^## .*", cell.source, re.M)
        if cell.cell_type == "code" and (below or cell.source.startswith("# Solution")):
            places.add(place)
        elif cell.cell_type == "markdown" and below and not heading:
            places.add(place)
        if heading:
            below = re.findall("^## .*", cell.source, re.M)[-1] == "## Solutions"
    return places


def folded(notebook):
    """The cells, those with solutions between two that fold them away on a page."""
    solved = solutions(notebook)
    for place, cell in enumerate(notebook.cells):
        if place in solved and place - 1 not in solved:
            yield nbformat.v4.new_markdown_cell("<details><summary>Show the solution</summary>")
        yield cell
        if place in solved and place + 1 not in solved:
            yield nbformat.v4.new_markdown_cell("</details>")


def for_students(path):
    """The notebook without solutions: each has an empty cell in its place."""
    notebook = nbformat.read(path, as_version=4)
    for place in solutions(notebook):
        cell = notebook.cells[place]
        cell.source = "# Your solution" if cell.cell_type == "code" else ""
    notebook.cells = [cell for cell in notebook.cells if cell.source]
    return notebook


def _fence(kind, text):
    return f"```{kind}\n{text.rstrip()}\n```"


def _one_row_each(text):
    """Aligned formulas as one formula for each row: the writer of MathML behind these pages knows no alignment."""
    def rows(match):
        lines = match[1].strip().split("\\\\\n")
        return "\n\n".join(f"$$\n{line.replace('&', '').strip()}\n$$" for line in lines)
    return re.sub(r"\$\$\\begin\{aligned\}(.*?)\\end\{aligned\}\$\$", rows, text, flags=re.S)


def _told(text):
    """What a picture is about, for those who cannot see it: the heading before it, and of the last paragraph before it the sentences
    that are whole without formulas, as far as they go into 250 letters."""
    heading = next(iter(re.findall(r"^#+ (.*)", text, re.M)[::-1]), "")
    paragraph = " ".join(text.strip().rpartition("\n\n")[2].split())
    told, length = [heading.rstrip(".")] if heading else [], len(heading)
    for sentence in re.split(r"(?<=[.?!]) ", paragraph) if not paragraph.startswith(("#", "|", "$$")) else ():
        length += len(sentence)
        if length > 250:
            break
        if "$" not in sentence:
            told.append(re.sub(r"[*`#]|\[(.*?)\]\(.*?\)", r"\1", sentence).rstrip("."))
    return ". ".join(told) + "." if told else "what the code above draws"


def _quoted(text):
    return "'" + text.replace("'", "''") + "'"


def page(path, notebook, folder):
    """The executed notebook as Markdown, and names and descriptions of its pictures. These, and the notebook to download, are written
    into the folder."""
    parts, pictures, before = [], [], ""
    for cell in folded(notebook):
        if cell.cell_type == "markdown":
            before = before if cell.source.startswith("<") else cell.source
            parts.append(cell.source)
            continue
        # A page needs no word to the notebook on where pictures go.
        if source := re.sub(r"^%matplotlib inline\n?", "", cell.source, flags=re.M):
            parts.append(_fence("python", source))
        for output in cell.outputs:
            data = output.get("data", {})
            if output.output_type == "stream":
                parts.append(pages.output(re.sub("\x1b\\[[0-9;]*m", "", output.text)))
            elif "image/png" in data:
                name = f"{path.stem}-{len(pictures) + 1}.png"
                pictures.append((name, f"Picture {len(pictures) + 1}: {_told(before)}"))
                (folder / name).write_bytes(base64.b64decode(data["image/png"]))
                width = output.metadata.get("image/png", {}).get("width", 640)
                parts.append(f"```{{image}} {name}\n:alt: {_quoted(pictures[-1][1])}\n:width: {width}px\n```")
            elif "text/html" in data:
                parts.append(f'<div class="answer">\n{data["text/html"]}\n</div>'.replace("\n\n", "\n"))
            elif "text/markdown" in data:
                parts.append(_one_row_each(data["text/markdown"]))
            elif "text/latex" in data:
                parts.append("$$" + data["text/latex"].strip("$") + "$$")
            elif "text/plain" in data:
                parts.append(pages.output(data["text/plain"]))
    shutil.copy(path, folder)
    exercises = f"{path.stem}_exercises.ipynb"
    nbformat.write(for_students(path), folder / exercises)
    parts.append(f"{{download}}`Download this lesson as a notebook <{path.name}>`, to change its figures and run it again, or "
                 f"{{download}}`for students, without the solutions <{exercises}>`. "
                 f'<a href="{path.stem}_handout.html">The handout</a> has goal, theory, picture and exercises on two pages to print.')
    return "\n\n".join(parts) + "\n", pictures


def goal(path):
    """What a lesson is for: its goal in one sentence."""
    found = re.search(r"\*\*Goal:\*\* (.*?)(?:\n\n|\Z)", nbformat.read(path, as_version=4).cells[0].source, re.S)
    return found and " ".join(found[1].split()).partition(". ")[0].rstrip(".")


if __name__ == "__main__":
    target = pathlib.Path(sys.argv[1])
    target.mkdir(parents=True, exist_ok=True)
    for each in NOTEBOOKS:
        nbformat.write(for_students(each), target / each.name)
