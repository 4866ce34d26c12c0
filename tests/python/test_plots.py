"""Pictures of answers say what they show, and no text lies on another."""
import itertools
import subprocess
import sys

import pytest

import tauten

matplotlib = pytest.importorskip("matplotlib")
matplotlib.use("Agg")
import matplotlib.pyplot as plt

from tauten import plots

STUCK = dict(thread="M16", property_class="8.8", socket="24mm", trials=20000)
FLANGE = dict(STUCK, rust="heavy_rust", undone=[("freed", "150N.m"), ("not_moved", "120N.m"), ("freed", "170N.m")])
JOINT = dict(property_class="8.8", torque="130N.m", condition="oiled")


@pytest.fixture(autouse=True)
def close():
    yield
    plt.close("all")


def texts(axes):
    """Every text that is drawn, with its box."""
    figure = axes.figure
    figure.canvas.draw()
    drawn = figure.canvas.get_renderer()
    found = [text for text in figure.findobj(matplotlib.text.Text) if text.get_visible() and text.get_text().strip()]
    # Marks outside the axes are kept by matplotlib but not drawn.
    low, high = axes.get_window_extent().x0 - 1, axes.get_window_extent().x1 + 1
    ticks = {label for label in axes.get_xticklabels()
             if not low <= label.get_window_extent(drawn).get_points()[:, 0].mean() <= high}
    bottom, top = axes.get_window_extent().y0 - 1, axes.get_window_extent().y1 + 1
    ticks |= {label for label in axes.get_yticklabels()
              if not bottom <= label.get_window_extent(drawn).get_points()[:, 1].mean() <= top}
    return [(text.get_text(), text.get_window_extent(drawn)) for text in found if text not in ticks]


def check_texts(axes):
    drawn = texts(axes)
    page = axes.figure.bbox
    for words, box in drawn:
        assert box.x0 >= page.x0 and box.y0 >= page.y0 and box.x1 <= page.x1 and box.y1 <= page.y1, words
    for (one, a), (other, b) in itertools.combinations(drawn, 2):
        assert not a.overlaps(b), (one, other)
    return {words for words, _ in drawn}


def test_overlapping_text_would_be_found():
    axes = plt.subplots()[1]
    axes.text(0.5, 0.5, "one")
    axes.text(0.5, 0.5, "other")
    with pytest.raises(AssertionError):
        check_texts(axes)


@pytest.mark.parametrize("changed", [{}, {"limit": "200N.m"}, {"limit": "600N.m"}, {"rust": "clean"},
                                     {"handle_length": "0.6m"}, FLANGE], ids=str)
def test_chances(changed):
    answer = tauten.free_joint(**{**STUCK, **changed})
    axes = plots.plot_chances(answer)
    words = check_texts(axes)
    assert {"torque that is not exceeded in N·m", "chance in %", f"stop at {answer.stop_at:.0f} N·m", "comes free",
            "shears", "corners go", "tool fails", "does not move", "comes free: nine of ten cases"} <= words
    assert any("estimate" in word for word in words)
    assert ("limit" in changed) == any(word.startswith("limit") for word in words)
    lines = {line.get_label(): line for line in axes.get_lines()}
    assert list(lines["shears"].get_ydata()) == [100 * point.shear for point in answer.curve]
    assert lines[f"stop at {answer.stop_at:.0f} N·m"].get_xdata()[0] == answer.stop_at
    drawn = [lines[name] for name in ("comes free", "shears", "corners go", "tool fails", "does not move")]
    assert len({line.get_color() for line in drawn}) == 5
    sums = sum(line.get_ydata()[30] for line in drawn)
    assert sums == pytest.approx(100)


@pytest.mark.parametrize("joint", [dict(thread="M16"), dict(socket="24mm"), dict(socket="13mm", torque="30N.m"),
                                   dict(thread="M6", torque="9N.m", name="cover of the valve bonnet"),
                                   dict(thread="M16", property_class="A4-70")], ids=str)
def test_clamp_band(joint):
    answer = tauten.clamp(**{**JOINT, **joint})
    axes = plots.plot_clamp_band(answer)
    words = check_texts(axes)
    shown = answer.candidates[:6]
    assert {"clamp load of one bolt in kN", "clamp load, low to high", "usual", "proof load",
            answer.name or "Clamp load"} <= words
    for bolt in shown:
        low, usual, high = (load / 1e3 for load in bolt.clamp_load)
        assert f"{low:.3g} to {high:.3g}, usual {usual:.3g} kN" in words
        assert any(word.startswith(f"{bolt.thread} ") and f", {bolt.property_class}" in word and bolt.verdict in word for word in words)


def test_a_picture_goes_where_it_is_told():
    figure, (left, right) = plt.subplots(1, 2)
    assert plots.plot_chances(tauten.free_joint(**STUCK), axes=left) is left
    assert plots.plot_clamp_band(tauten.clamp(thread="M16", **JOINT), axes=right) is right
    assert len(plt.get_fignums()) == 1


def test_matplotlib_is_not_needed_until_something_is_drawn():
    code = "import sys, tauten.plots; assert not any(name.startswith('matplotlib') for name in sys.modules)"
    assert subprocess.run([sys.executable, "-c", code]).returncode == 0


def test_colours_differ_in_lightness_or_hue():
    """Okabe and Ito's palette: no two colours of one picture are alike, also to people who see red and green alike."""
    def seen(colour):
        # A dichromat's view after Machado, Oliveira and Fernandes (2009), deuteranopia, severity 1; linear RGB.
        rgb = [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in matplotlib.colors.to_rgb(colour)]
        rows = ((0.367322, 0.860646, -0.227968), (0.280085, 0.672501, 0.047413), (-0.011820, 0.042940, 0.968881))
        return [sum(f * c for f, c in zip(row, rgb)) for row in rows]
    used = [plots.GREEN, plots.VERMILION, plots.ORANGE, plots.PURPLE, plots.BLUE, plots.BLACK]
    for one, other in itertools.combinations(used, 2):
        assert max(abs(a - b) for a, b in zip(seen(one), seen(other))) > 0.05, (one, other)
