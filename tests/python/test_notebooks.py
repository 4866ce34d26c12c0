"""Every notebook of the documentation runs from top to bottom, and is kept without its outputs."""
import base64
import functools
import io
import os
import pathlib
import re
import sys
import tempfile

import pytest

import tauten

nbformat = pytest.importorskip("nbformat")
nbclient = pytest.importorskip("nbclient")
kernelspec = pytest.importorskip("jupyter_client.kernelspec")
jupyter_client = pytest.importorskip("jupyter_client")
pytest.importorskip("ipykernel")
plt = pytest.importorskip("matplotlib.pyplot")

FOLDER = pathlib.Path(__file__).resolve().parents[2] / "docs" / "notebooks"
NOTEBOOKS = sorted(FOLDER.glob("*.ipynb"))


class ThisInterpreter(jupyter_client.KernelManager):
    """Runs the kernel with the interpreter of the tests, whatever kernels are installed."""

    @property
    def kernel_spec(self):
        return kernelspec.KernelSpec(argv=[sys.executable, "-m", "ipykernel_launcher", "-f", "{connection_file}"],
                                     display_name="Python 3", language="python")


@functools.cache
def executed(path):
    """The notebook with its outputs. An error in a cell is raised."""
    notebook = nbformat.read(path, as_version=4)
    with tempfile.TemporaryDirectory() as empty, pytest.MonkeyPatch.context() as patch:
        # Nothing of the user's own settings takes part, and the package is the one under test.
        for name in ("IPYTHONDIR", "JUPYTER_CONFIG_DIR", "MPLCONFIGDIR"):
            patch.setenv(name, empty)
        patch.delenv("MPLBACKEND", raising=False)
        here = pathlib.Path(tauten.__file__).resolve().parents[1]
        patch.setenv("PYTHONPATH", os.pathsep.join([str(here), os.environ.get("PYTHONPATH", "")]))
        nbclient.NotebookClient(notebook, timeout=120, km=ThisInterpreter(),
                                resources={"metadata": {"path": empty}}).execute()
    return notebook


def outputs(notebook):
    return [output for cell in notebook.cells if cell.cell_type == "code" for output in cell.outputs]


def shown(notebook, kind):
    return [output["data"][kind] for output in outputs(notebook) if kind in output.get("data", {})]


def test_there_are_notebooks():
    assert NOTEBOOKS


@pytest.mark.parametrize("path", NOTEBOOKS, ids=lambda path: path.stem)
def test_is_kept_without_outputs(path):
    notebook = nbformat.read(path, as_version=4)
    nbformat.validate(notebook)
    for cell in notebook.cells:
        if cell.cell_type == "code":
            assert not cell.outputs and cell.execution_count is None, "clear all outputs before saving"
    assert "invented" in notebook.cells[0].source, "data must be marked as invented"


@pytest.mark.parametrize("path", NOTEBOOKS, ids=lambda path: path.stem)
def test_runs(path):
    notebook = executed(path)
    complaints = [output for output in outputs(notebook) if output.get("name") == "stderr"]
    assert not complaints
    for picture in shown(notebook, "image/png"):
        pixels = plt.imread(io.BytesIO(base64.b64decode(picture)))
        assert pixels.shape[0] > 200 and pixels[..., :3].std() > 0.05, "an empty picture"


def test_pump_foot_says_what_it_promises():
    notebook = executed(FOLDER / "pump_foot.ipynb")
    printed = "".join(output.text for output in outputs(notebook) if output.output_type == "stream")
    assert "M16" in printed and "verdict: yields" in printed
    assert len(shown(notebook, "image/png")) == 1
    assert len(shown(notebook, "text/html")) == 2
    assert any("\\mu_{G}" in text for text in shown(notebook, "text/markdown"))


def test_rusted_flange_says_what_it_promises():
    notebook = executed(FOLDER / "rusted_flange.ipynb")
    printed = "".join(output.text for output in outputs(notebook) if output.output_type == "stream")
    assert len(shown(notebook, "image/png")) == 3
    width = re.search(r"high over low: ([\d.]+) before, ([\d.]+) after four", printed)
    assert float(width[2]) < float(width[1])  # what was learned narrows the band
    free = [float(number) for number in re.findall(r"up to \d+ N·m: ([\d.]+) of 8 come free", printed)]
    assert len(free) == 4 and free == sorted(free) and 0 < free[0] < free[-1] <= 8
    assert re.search(r"^> ", printed, re.M) and "stop at" in printed
    assert "(Estimate.)" in printed and "no release for service" in printed
