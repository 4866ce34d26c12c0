"""A fleet of joints on two worker processes, as docs/site/guides/many-joints.md has it."""
import pathlib
import re

import pytest

import tauten

pandas = pytest.importorskip("pandas")
dataframe = pytest.importorskip("dask.dataframe")
distributed = pytest.importorskip("distributed")

ROOT = pathlib.Path(__file__).resolve().parents[2]


@pytest.fixture(scope="module")
def fleet(tmp_path_factory):
    """Three files as three people would hand them in; one of them has a slip in it."""
    folder = tmp_path_factory.mktemp("fleet")
    for part, thread in enumerate(("M12", "M16", "M20")):
        torques = [20 + 3 * row for row in range(100)]
        frame = pandas.DataFrame({"place": [f"pump {part}.{row}" for row in range(100)], "thread": thread,
                                  "torque": [f"{torque}N.m" for torque in torques], "class": "8.8"})
        if part == 1:
            frame.loc[7, "torque"] = "74"
        frame.to_csv(folder / f"station-{part}.csv", index=False)
    return folder


@pytest.fixture(scope="module")
def client():
    with distributed.LocalCluster(n_workers=2, threads_per_worker=1, processes=True, dashboard_address=None) as cluster:
        with distributed.Client(cluster) as client:
            yield client


def read(folder):
    return dataframe.read_csv(str(folder / "station-*.csv"), dtype={"class": str})


def here(folder):
    frames = [pandas.read_csv(path, dtype={"class": str}) for path in sorted(folder.glob("station-*.csv"))]
    with pytest.warns(tauten.DomainWarning, match="1 of 300 rows"):
        return tauten.clamp(pandas.concat(frames, ignore_index=True), condition="oiled")


def test_two_workers_give_the_same_bits_as_one_machine(client, fleet):
    answers = tauten.clamp(read(fleet), condition="oiled")
    assert answers.npartitions == 3
    there = answers.compute().reset_index(drop=True)
    pandas.testing.assert_frame_equal(there, here(fleet), check_exact=True)
    assert (there.error != "").sum() == 1


def test_both_workers_had_a_part_in_it(client, fleet):
    answers = tauten.clamp(read(fleet), condition="oiled")
    answers = client.persist(answers)
    distributed.wait(answers)
    workers = {worker for holders in client.who_has(answers).values() for worker in holders}
    assert len(workers) == 2


def test_formulas_over_both_workers(client):
    numpy = pytest.importorskip("numpy")
    array = pytest.importorskip("dask.array")
    torque = numpy.linspace(20, 400, 10_001)
    rest = (2e-3, 14.701e-3, 0.12, 0.12, 20e-3)
    lazy = tauten.preload_from_torque(array.from_array(torque, chunks=1000), *rest)
    assert isinstance(lazy, array.Array)
    assert (lazy.compute() == tauten.preload_from_torque(torque, *rest)).all()


def test_the_page_does_what_it_says(client, fleet, tmp_path, monkeypatch):
    page = (ROOT / "docs" / "site" / "guides" / "many-joints.md").read_text(encoding="utf-8")
    blocks = re.findall(r"```python\n(.*?)```", page, re.S)
    distributed_block = next(block for block in blocks if "LocalCluster" in block)
    # The cluster of the test stands in for the one that the page starts.
    lines = [line for line in distributed_block.splitlines() if "LocalCluster" not in line and "Client(" not in line]
    monkeypatch.chdir(fleet)
    exec("\n".join(lines), {"__name__": "__main__"})
    written = sorted(fleet.glob("answers-*.csv"))
    assert len(written) == 3
    whole = pandas.concat([pandas.read_csv(path, float_precision="round_trip") for path in written], ignore_index=True)
    assert whole.clamp_load_low.equals(here(fleet).clamp_load_low)
    assert whole.place.tolist() == [f"pump {part}.{row}" for part in range(3) for row in range(100)]
