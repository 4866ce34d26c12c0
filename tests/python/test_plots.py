"""Pictures of answers say what they show, and no text lies on another."""
import ast
import inspect
import itertools
import math
import pathlib
import re
import subprocess
import sys

import numpy as np
import pytest

import tauten
import tauten.uncertainty

matplotlib = pytest.importorskip("matplotlib")
matplotlib.use("Agg")
import matplotlib.pyplot as plt

from tauten import _core, plots

STUCK = dict(thread="M16", property_class="8.8", socket="24mm", trials=20000)
FLANGE = dict(STUCK, rust="heavy_rust", loosened=[("freed", "150N.m"), ("unmoved", "120N.m"), ("freed", "170N.m")])
JOINT = dict(property_class="8.8", torque="130N.m", condition="oiled")


def test_pictures_are_there_without_an_import_of_their_own():
    lines = ("import sys, tauten; assert 'matplotlib' not in sys.modules and 'tauten.plots' not in sys.modules; "
             "tauten.plots.plot_nut_factor; assert 'matplotlib' not in sys.modules")
    subprocess.run([sys.executable, "-c", lines], check=True)
    with pytest.raises(AttributeError, match="plot"):
        tauten.plot


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
    ticks = set()
    for one in figure.axes:
        low, high = one.get_window_extent().x0 - 1, one.get_window_extent().x1 + 1
        ticks |= {label for label in one.get_xticklabels()
                  if not low <= label.get_window_extent(drawn).get_points()[:, 0].mean() <= high}
        bottom, top = one.get_window_extent().y0 - 1, one.get_window_extent().y1 + 1
        ticks |= {label for label in one.get_yticklabels()
                  if not bottom <= label.get_window_extent(drawn).get_points()[:, 1].mean() <= top}
    return [(text.get_text(), text.get_window_extent(drawn)) for text in found if text not in ticks]


def check_texts(axes):
    drawn = texts(axes)
    page = axes.figure.bbox
    for words, box in drawn:
        assert box.x0 >= page.x0 and box.y0 >= page.y0 and box.x1 <= page.x1 and box.y1 <= page.y1, words
    for (one, a), (other, b) in itertools.combinations(drawn, 2):
        assert not a.overlaps(b), (one, other)
    for one in axes.figure.axes:
        for text in one.get_legend().get_texts() if one.get_legend() else ():
            box = matplotlib.transforms.Bbox.intersection(text.get_window_extent(), one.bbox)  # lines end where the axes do
            for line in one.get_lines() if box else ():
                path = line.get_transform().transform_path(line.get_path())
                path = matplotlib.path.Path(path.vertices[np.isfinite(path.vertices).all(axis=1)])
                assert not path.intersects_bbox(box, filled=False), (text.get_text(), line.get_label())
    return {words for words, _ in drawn}


def test_overlapping_text_would_be_found():
    axes = plt.subplots()[1]
    axes.text(0.5, 0.5, "one")
    axes.text(0.5, 0.5, "other")
    with pytest.raises(AssertionError):
        check_texts(axes)


def test_a_line_through_the_legend_would_be_found():
    axes = plt.subplots()[1]
    axes.plot([0, 1, math.nan, 2, 3], [0, 1, 1, 0, 0], label="through it")
    axes.legend(loc="lower right")
    with pytest.raises(AssertionError, match="through it"):
        check_texts(axes)
    axes.legend(loc="upper right")
    check_texts(axes)


def test_long_words_leave_room_for_the_picture():
    axes = plots.plot_bands([("one", (1e4, 2e4, 3e4))], "load", [(2e4, "a line of which there is far more to say than fits")],
                            unit="N")
    words = check_texts(axes)
    assert any("\n" in word and word.endswith("20 kN") for word in words)
    assert axes.get_window_extent().width > 0.45 * axes.figure.bbox.width


def on_page(words, answer):
    """A torque as the page of an answer writes it after some words: never rounded up."""
    return re.search(rf"{words} ([\d.]+) N\.m", " ".join(answer.page().split()))[1]


@pytest.mark.parametrize("changed", [{}, {"limit": "200N.m"}, {"limit": "600N.m"}, {"rust": "clean"},
                                     {"handle_length": "0.6m"}, FLANGE], ids=str)
def test_chances(changed):
    answer = tauten.free_joint(**{**STUCK, **changed})
    axes = plots.plot_chances(answer)
    words = check_texts(axes)
    first, said = answer.steps[0].stop_at, on_page("top at", answer)
    assert {"torque that is not exceeded in N·m", "chance in %", f"stop at {said} N·m", "comes free",
            "shears", "corners round off", "tool fails", "does not move", "comes free: nine of ten cases"} <= words
    assert any("estimate" in word for word in words)
    assert ("limit" in changed) == any(word.startswith("limit") for word in words)
    lines = {line.get_label(): line for line in axes.get_lines()}
    assert list(lines["shears"].get_ydata()) == [100 * point.shear for point in answer.curve]
    assert lines[f"stop at {said} N·m"].get_xdata()[0] == first
    if first < answer.stop_at:
        single = lines[f"single pull: {on_page('may exceed', answer)} N·m at most"]
        assert single.get_xdata()[0] == answer.stop_at
    drawn = [lines[name] for name in ("comes free", "shears", "corners round off", "tool fails", "does not move")]
    assert len({line.get_color() for line in drawn}) == 5
    sums = sum(line.get_ydata()[30] for line in drawn)
    assert sums == pytest.approx(100)


def label(band, bands):
    """A band as pictures label it: as many decimals for every band in the picture, three figures of the greatest, two of the least."""
    highs = [high for *_, high in bands if math.isfinite(high)]
    places = max(0, 2 - math.floor(math.log10(max(highs))), 1 - math.floor(math.log10(min(highs))))
    low, nominal, high = band
    return f"{low:.{places}f} to {high:.{places}f}, typical {nominal:.{places}f}"


@pytest.mark.parametrize("joint", [dict(thread="M16"), dict(socket="24mm"), dict(socket="13mm", torque="30N.m"),
                                   dict(thread="M6", torque="9N.m", name="cover of the valve bonnet"),
                                   dict(thread="M16", property_class="A4-70")], ids=str)
def test_clamp_band(joint):
    answer = tauten.clamp(**{**JOINT, **joint})
    axes = plots.plot_clamp_band(answer)
    words = check_texts(axes)
    shown = answer.candidates[:6]
    assert {"clamp load of one bolt in kN", "clamp load in 19 of 20 cases", "typical", "proof load",
            answer.name or "Clamp load"} <= words
    bands = [[load / 1e3 for load in bolt.clamp_load] for bolt in shown]
    for bolt, band in zip(shown, bands):
        assert math.isnan(band[1]) == (bolt.verdict == "breaks")
        assert (label(band, bands) + " kN" if band[1] > 0 else "none left") in words
        assert any(word.startswith(f"{bolt.thread} ") and f", {bolt.property_class}" in word and bolt.verdict in word for word in words)


FOOT = dict(thread="M16", property_class="8.8", condition="oiled", snug_torque="60N.m",
            layers=[("20mm", "grey cast iron", "70mm"), ("35mm", "steel", "70mm")])
JOINTS = [FOOT, dict(FOOT, thread="M36", snug_torque="400N.m", property_class="10.9", name="pump foot of the large set"),
          dict(FOOT, thread="M6", snug_torque="3N.m", kind="tapped_hole"),
          dict(FOOT, layers=[("3mm", "aluminium"), ("120mm", "steel")], property_class="A4-70", head="ISO 4017")]


@pytest.mark.parametrize("joint", JOINTS, ids=lambda joint: joint["thread"] + joint["property_class"])
@pytest.mark.parametrize("working_load", [None, "4kN", "5000kN"])
def test_load_extension(joint, working_load):
    answer = tauten.turn(working_load=working_load, share=0.7, **joint)
    axes = plots.plot_load_extension(answer)
    words = check_texts(axes)
    preload = answer.residual.clamp_load.nominal  # a working load meets what the losses have left
    assert {"extension in mm", "load in kN", "bolt", "clamped parts", f"preload {preload / 1e3:.3g} kN"} <= words
    lines = {line.get_label(): line for line in axes.get_lines()}
    # Both lines pass through the preload, where the bolt has stretched by its resilience.
    at = 1e3 * preload * answer.joint.bolt_resilience
    for name, place in (("bolt", 1), ("clamped parts", 0)):
        assert list(zip(*lines[name].get_data()))[place] == pytest.approx((at, preload / 1e3))
    end = at + 1e3 * preload * answer.joint.plate_resilience
    assert list(zip(*lines["clamped parts"].get_data()))[-1] == pytest.approx((end, 0))
    assert (working_load is None) == (not any(word.startswith("working load") for word in words))


@pytest.mark.parametrize("joint", JOINTS, ids=lambda joint: joint["thread"] + joint["property_class"])
@pytest.mark.parametrize("end", [None, "10deg", "40deg"])
def test_curve(joint, end):
    drawn = tauten.curve(end_angle=end, **joint)
    turned = tauten.turn(share=0.6, **joint) if end is None else None
    axes = plots.plot_curve(drawn, turned)
    words = check_texts(axes[0])
    assert {"preload in kN", "torque in N·m", "angle from snug in degrees", "typical friction", "elastic",
            "between low and high friction"} <= words
    assert ("yield point" in words) == drawn.nominal.has_yield_point
    assert ("past yield" in words) == any(zone.name == "past_yield" for zone in drawn.zones)
    assert any(word.startswith("turned by") for word in words) == (turned is not None)
    for ax, column, scale in zip(axes, ("preload", "torque"), (1e-3, 1)):
        nominal = next(line for line in ax.get_lines() if line.get_label() == "typical friction")
        assert list(nominal.get_ydata()) == pytest.approx(list(drawn.nominal.columns()[column] * scale))
        assert list(nominal.get_xdata()) == pytest.approx([math.degrees(p.angle) for p in drawn.nominal.points])
        for point, name in ((drawn.nominal.yield_point, "yield point"),):
            if drawn.nominal.has_yield_point:
                mark = next(line for line in ax.get_lines() if line.get_label() == name)
                assert mark.get_ydata()[0] == pytest.approx(getattr(point, column) * scale)


@pytest.mark.parametrize("joint", JOINTS, ids=lambda joint: joint["thread"] + joint["property_class"])
def test_methods(joint):
    answer = tauten.turn(share=0.6, **joint)
    axes = plots.plot_methods(answer)
    words = check_texts(axes)
    assert {"preload in kN", "minimum to maximum preload", "this tightening"} <= words
    for method in answer.methods:
        assert any(word.startswith(method.title) for word in words), method.title
    bands = [line.get_xdata() for line in axes.get_lines() if len(line.get_xdata()) == 2 and line.get_linewidth() == 9]
    for method in answer.methods:
        assert any(list(band) == pytest.approx([method.clamp_load.low / 1e3, method.clamp_load.high / 1e3])
                   for band in bands), method.key


def test_no_method_is_drawn_with_a_load_that_the_bolt_does_not_bear():
    answer = tauten.turn(thread="M16", property_class="8.8", condition="oiled", grip="55mm", snug_torque="60N.m", angle="60deg")
    strength = 125.0  # kN: ISO 898-1, M16 8.8
    assert max(method.clamp_load.high for method in answer.methods) / 1e3 > strength
    axes = plots.plot_methods(answer)
    bands = [line.get_xdata() for line in axes.get_lines() if line.get_linewidth() == 9]
    *methods, own = sorted(bands, key=lambda band: list(band) == pytest.approx([x / 1e3 for x in (answer.clamp_load.low, answer.clamp_load.high)]))
    assert max(max(band) for band in methods) == pytest.approx(strength)
    assert "a bolt that just meets its class may break" in {" ".join(word.split()) for word in check_texts(axes)}


def test_no_load_is_drawn_of_a_bolt_that_may_break():
    broken = tauten.turn(angle="450deg", **FOOT)
    for plot in (plots.plot_load_extension, plots.plot_methods):
        with pytest.raises(tauten.Error, match="may break"):
            plot(broken)
    axes = plots.plot_curve(tauten.curve(**FOOT), broken)
    assert not any(word.startswith("turned by") for word in check_texts(axes[0]))


def test_a_picture_goes_where_it_is_told():
    figure, (left, right) = plt.subplots(1, 2)
    assert plots.plot_chances(tauten.free_joint(**STUCK), axes=left) is left
    assert plots.plot_clamp_band(tauten.clamp(thread="M16", **JOINT), axes=right) is right
    pair = plt.subplots(2, 1)[1]
    assert plots.plot_curve(tauten.curve(**FOOT), axes=pair) is pair
    answer = tauten.turn(angle="30deg", **FOOT)
    assert plots.plot_methods(answer, axes=pair[0]) is pair[0]
    assert plots.plot_load_extension(answer, axes=pair[1]) is pair[1]
    assert len(plt.get_fignums()) == 2


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


OILED = dict(thread="M16", property_class="8.8", condition="oiled")
CONDITIONS = ("dry", "oiled", "moly-paste", "stainless")


def bars(axes):
    """Left and right end of each bar, in the order of the picture from top to bottom."""
    return sorted((bar.get_y(), min(bar.get_x(), bar.get_x() + bar.get_width()),
                   max(bar.get_x(), bar.get_x() + bar.get_width())) for bar in axes.patches)


@pytest.mark.parametrize("key", ["clamp_load", "nut_factor", "yield_utilisation"])
def test_bands(key):
    rows = [(name, getattr(tauten.clamp(torque="130N.m", **{**OILED, "condition": name}).candidates[0], key))
            for name in CONDITIONS]
    marks = [(91e3, "proof load"), (45.5e3, "half of it")] if key == "clamp_load" else []
    axes = plots.plot_bands(rows, "what is drawn", marks)
    words = check_texts(axes)
    factor, unit = (1e3, " kN") if key == "clamp_load" else (1, "")
    assert (f"what is drawn in{unit}" if unit else "what is drawn") in words
    drawn = [tuple(line.get_xdata()) for line in axes.get_lines() if len(set(line.get_ydata())) == 1]
    bands = [[value / factor for value in band] for _, band in rows]
    for (name, _), band in zip(rows, bands):
        assert name in words
        low, nominal, high = band
        if math.isfinite(nominal):
            assert label(band, bands) + unit in words
            assert any(line == pytest.approx((low, high)) for line in drawn if len(line) == 2)
        else:
            assert key == "clamp_load" and any("none" in word for word in words)
    if marks:
        assert {"proof load, 91 kN", "half of it, 45.5 kN"} <= words


def test_bands_of_different_units_are_refused():
    bolt = tauten.clamp(torque="130N.m", **OILED).candidates[0]
    for rows in ([], [("one", bolt.clamp_load), ("other", bolt.nut_factor)], [("one", (1.0, 2.0, 3.0))]):
        with pytest.raises(ValueError, match="one unit"):
            plots.plot_bands(rows, "mixed")
    axes = plots.plot_bands([("one", (1e4, 2e4, 3e4))], "load", unit="N")
    assert {"load in kN", "10.0 to 30.0, typical 20.0 kN"} <= check_texts(axes)


@pytest.mark.parametrize("torques", [range(20, 340, 20), (130, 10)], ids=str)
def test_scatter(torques):
    answers = [tauten.clamp(torque=torque, **OILED) for torque in torques]
    axes = plots.plot_scatter(answers)
    words = check_texts(axes)
    bolts = sorted((answer.candidates[0] for answer in answers), key=lambda bolt: bolt.torque)
    assert {"setting of the wrench in N·m", "clamp load of one bolt in kN", "typical", "proof load", "M16, 8.8",
            f"suggested torque, {on_page('Suggested torque for M16, class 8.8:', tauten.torque_for(**OILED))} N·m"} <= words
    lines = {line.get_label(): line for line in axes.get_lines()}
    assert list(lines["typical"].get_xdata()) == sorted(torques)
    nominal = [bolt.clamp_load.nominal / 1e3 for bolt in bolts]
    assert list(lines["typical"].get_ydata()) == pytest.approx(nominal, nan_ok=True)
    assert any(map(math.isnan, nominal)) == ("breaks: no clamp load" in words) == (max(torques) > 300)
    assert lines["proof load"].get_ydata()[0] == bolts[0].proof_load / 1e3
    corners = {tuple(point) for point in axes.collections[0].get_paths()[0].vertices}
    for bolt in (bolt for bolt in bolts if math.isfinite(bolt.clamp_load.nominal)):
        assert {(bolt.torque, bolt.clamp_load.low / 1e3), (bolt.torque, bolt.clamp_load.high / 1e3)} <= corners
    with pytest.raises(ValueError, match="two torques"):
        plots.plot_scatter(answers[:1])


@pytest.mark.parametrize("lines", [[("thread_friction", 0.62), ("bearing_friction", 0.379), ("wrench", 0.001)],
                                   [("torque", 1.05), ("friction", -0.05)], [("one", 1.0)],
                                   [(f"cause_{n}", 1 / 12) for n in range(12)]], ids=len)
def test_budget(lines):
    axes = plots.plot_budget(lines)
    words = check_texts(axes)
    assert {"share of the variance in %"} | {name.replace("_", " ") for name, _ in lines} <= words
    drawn = [right if right > 0 else left for _, left, right in bars(axes)]
    assert drawn == pytest.approx([100 * share for _, share in sorted(lines, key=lambda line: -line[1])])


def test_budget_of_a_wrench():
    way = tauten.reach(torque="130N.m", wrench_length="400mm", extensions=[("100mm", "45deg")])
    axes = plots.plot_budget(way)
    words = check_texts(axes)
    assert "What makes torque at the fastener uncertain" in words and "pull angle" in words
    squares = sorted((cause.range**2 for cause in way.contributions), reverse=True)
    assert [right for _, _, right in bars(axes)] == pytest.approx([100 * square / sum(squares) for square in squares])
    with pytest.raises(ValueError, match="without lines"):
        plots.plot_budget([])


def test_budget_of_a_question():
    budget = tauten.uncertainty.budget("preload_from_nut_factor", dict(torque=("46N.m", "48N.m", "50N.m"), diameter="10mm",
                                                                       nut_factor=(0.12, 0.16, 0.22)))
    axes = plots.plot_budget(budget)
    words = check_texts(axes)
    assert {"What makes preload uncertain", "nut factor", "torque"} <= words and "diameter" not in words
    shares = {line.name: 100 * line.share for line in budget.contributions}
    assert [bar.get_width() for bar in axes.patches] == pytest.approx([shares["nut_factor"], shares["torque"]])


@pytest.mark.parametrize("output, unit", [("clamp_load", " in kN"), ("yield_utilisation", "")])
def test_trials(output, unit):
    run = tauten.uncertainty.monte_carlo(tauten.uncertainty.clamp(thread="M16", **JOINT), output=output, trials=20_000)
    axes = plots.plot_trials(run, [(run.values[0], "least"), (run.values[-1], "most")])
    words = check_texts(axes)
    assert {output.replace("_", " ") + unit, "trials", "20,000 trials"} <= words
    factor = 1e3 if unit else 1
    bars = axes.containers[0]
    assert sum(bar.get_height() for bar in bars) == 20_000
    assert bars[0].get_x() == pytest.approx(run.values[0] / factor)
    lines = [line.get_xdata()[0] * factor for line in axes.get_lines()]
    assert lines == pytest.approx([run.mean, run.values[0], run.values[-1]])
    held = [bar.get_height() for bar in bars
            if run.symmetric.low <= factor * (bar.get_x() + bar.get_width() / 2) <= run.symmetric.high]
    assert sum(held) == pytest.approx(0.95 * 20_000, rel=0.02)
    assert any(word.startswith("95 % of them") for word in words)
    fixed = tauten.uncertainty.monte_carlo("stress_area", dict(diameter="16mm", pitch="2mm"), trials=5_000)
    with pytest.raises(ValueError, match="same value"):
        plots.plot_trials(fixed)


def test_sensitivity():
    friction = tauten.thread_condition("oiled").thread_friction
    axes = plots.plot_sensitivity(tauten.preload_from_torque, torque=("125N.m", "130N.m", "135N.m"), pitch="2mm",
                                  pitch_diameter="14.7mm", thread_friction=friction, bearing_friction=friction,
                                  bearing_diameter=(19e-3, 20e-3, 21e-3))
    words = check_texts(axes)
    assert {"preload in kN", "thread friction", "bearing friction", "torque", "bearing diameter", "input low",
            "input high", "125 N·m", "135 N·m", "0.08", "0.16", "19 mm", "21 mm"} <= words

    def by_hand(torque=130, thread=0.12, bearing=0.12, face=20):  # ISO 16047, linear form, in kN and mm
        return torque / (2 / (2 * math.pi) + thread * 14.7 / math.sqrt(3) + bearing * face / 2)
    expected = sorted(([by_hand(**{name: low}), by_hand(**{name: high})] for name, low, high in (
        ("torque", 125, 135), ("thread", 0.08, 0.16), ("bearing", 0.08, 0.16), ("face", 19, 21))),
        key=lambda ends: -abs(ends[1] - ends[0]))
    drawn = bars(axes)
    for place, ends in enumerate(expected):
        pair = [bar for bar in drawn if abs(bar[0] + 0.3 - place) < 0.01]
        assert (min(bar[1] for bar in pair), max(bar[2] for bar in pair)) == pytest.approx((min(ends), max(ends)))
    with pytest.raises(ValueError, match="low, typical, high"):
        plots.plot_sensitivity(tauten.stress_area, diameter=0.016, pitch=0.002)


@pytest.mark.parametrize("thread, face", [("M16", "20mm"), ("M10x1.25", 12.8e-3)], ids=str)
def test_nut_factor(thread, face):
    axes = plots.plot_nut_factor(thread, face)
    words = check_texts(axes)
    assert {"coefficient of friction (no unit)", "nut factor K (no unit)", "moly-paste", "oiled", "dry"} <= words
    size, diameter = tauten.thread(thread), tauten.quantity(face) if isinstance(face, str) else face
    line = axes.get_lines()[0]
    for mu, K in zip(line.get_xdata(), line.get_ydata()):  # ISO 16047, linear form
        lever = size.pitch / (2 * math.pi) + mu * (size.pitch_diameter / math.sqrt(3) + diameter / 2)
        assert K == pytest.approx(lever / size.diameter, rel=1e-12)
    bands = {tuple(line.get_xdata()) for line in axes.get_lines()}
    assert {(0.08, 0.16), (0.12,)} <= bands  # of the condition "oiled"


def test_torque_share():
    answers = [(name, tauten.clamp(torque="130N.m", **{**OILED, "condition": name})) for name in CONDITIONS]
    axes = plots.plot_torque_share(answers)
    words = check_texts(axes)
    assert {"share of the torque in %", "stretches the bolt (pitch)", "friction in the thread", "friction under the head",
            *CONDITIONS} <= words
    size = tauten.thread("M16")
    for place, (name, answer) in enumerate(answers):
        row = [bar for bar in bars(axes) if abs(bar[0] + 0.31 - place) < 0.01]
        assert [bar[1] for bar in row] == pytest.approx([0, row[0][2], row[1][2]]) and row[-1][2] == pytest.approx(100)
        bolt = answer.candidates[0]
        # Of T = K F d the pitch takes F P/(2 pi), and the thread what pushes a wedge up its slope beside that.
        whole = bolt.nut_factor.nominal * size.diameter
        slope = math.atan(size.pitch / (math.pi * size.pitch_diameter))
        flank = math.atan(math.tan(math.pi / 6) * math.cos(slope))
        friction = math.atan(tauten.thread_condition(name).thread_friction.nominal / math.cos(flank))
        thread = size.pitch_diameter / 2 * math.tan(slope + friction) - size.pitch / (2 * math.pi)
        assert row[0][2] == pytest.approx(100 * size.pitch / (2 * math.pi) / whole)
        assert row[1][2] - row[1][1] == pytest.approx(100 * thread / whole)
    with pytest.raises(ValueError, match="no row"):
        plots.plot_torque_share([])


@pytest.mark.parametrize("asked", [
    dict(positions="rectangle:150mm:120mm", load=(0, "-16kN"), at=("425mm", 0)),
    dict(positions="circle:8:180mm", moment=(0, "2kN.m"), force="10kN"),
    dict(positions="grid:2x4:140mm:70mm", load=("5kN", "-16kN"), moment=("1kN.m", "2kN.m"), preload="40kN")])
def test_bolt_loads(asked):
    group = tauten.group(**asked)
    words = check_texts(plots.plot_bolt_loads(group))
    for number, load in enumerate(group.loads, 1):
        assert f"{number}: {load / 1e3:.3g} kN" in words
    assert f"bolt {group.worst} carries most, {group.largest / 1e3:.3g} kN" in {" ".join(word.split()) for word in words}


def test_tightening():
    """Lines are the loads: the lowest one at the end is the one that is named so."""
    sequence = tauten.sequence("circle:8:180mm", interaction=0.2, load="40kN")
    axes = plots.plot_tightening(sequence)
    words = {" ".join(word.split()) for word in check_texts(axes)}
    ends = {line.get_label(): line.get_ydata()[-1] for line in axes.get_lines() if len(line.get_ydata()) == 33}
    lowest = min(sequence.history[-1]) / 1e3
    assert f"bolt {sequence.history[-1].index(lowest * 1e3) + 1} ends lowest, {lowest:.3g} kN" in words
    assert min(ends.values()) == pytest.approx(lowest)
    with pytest.raises(tauten.Error, match="has no loads"):
        plots.plot_tightening(tauten.sequence(8))


def test_pictures_are_written(tmp_path):
    answer = tauten.clamp(torque="130N.m", **OILED)
    for axes in (plots.plot_torque_share([("oiled", answer)]), plots.plot_nut_factor("M16", "20mm")):
        axes.figure.savefig(tmp_path / "picture.png", dpi=100)
        pixels = plt.imread(tmp_path / "picture.png")
        assert pixels.shape[0] > 150 and pixels.shape[1] >= 790 and pixels[..., :3].std() > 0.05
    sizes = [text.get_fontsize() for text in axes.figure.findobj(matplotlib.text.Text) if text.get_text()]
    assert min(sizes) >= 9  # on a picture 8 inches wide


def test_stub_names_what_there_is():
    stub = ast.parse((pathlib.Path(__file__).resolve().parents[2] / "python" / "tauten" / "plots.pyi").read_text())
    functions = {item.name: [arg.arg for arg in item.args.args + [item.args.kwarg] if arg] for item in stub.body
                 if isinstance(item, ast.FunctionDef)}
    assert sorted(functions) == sorted(plots.__all__)
    for name, arguments in functions.items():
        assert arguments == list(inspect.signature(getattr(plots, name)).parameters)
    constants = {item.target.id for item in stub.body if isinstance(item, ast.AnnAssign)}
    assert constants == {name for name in vars(plots) if name.isupper() and not name.startswith("_")}


def test_shares_add_up_and_bands_have_like_digits():
    for parts in ([8.6, 42.7, 48.7], [33.4, 33.3, 33.3], [12.5, 12.5, 75.0], [0.04, 99.96]):
        for places in (0, 1):
            texts = plots._whole(parts, places)
            assert sum(map(float, texts)) == pytest.approx(100) and all(abs(float(t) - p) < 10.0**-places for t, p in zip(texts, parts))
    # Bands of one picture, with the decimals for all of them.
    for bands, decimals in (([[47.78, 58.95, 76.5]], 1), ([[8.1, 59, 104.4]], 0), ([[0.08, 0.12, 0.2]], 3), ([[44.4, 57.5, 66.2], [63.7, 78.6, 102.1]], 0),
                            ([[0.543, 0.695, 0.822], [0.96, 1.17, 1.96]], 2), ([[0.4, 0.5, 0.6], [150, 200, 300]], 2),
                            ([[math.nan] * 3, [10, 20, 30]], 1), ([[math.nan] * 3], 0)):
        assert plots._places(bands) == decimals


def test_scatter_has_no_gap_before_the_bolt_breaks():
    answers = [tauten.clamp(torque=torque, **OILED) for torque in range(20, 420, 40)]
    axes = plots.plot_scatter(answers)
    check_texts(axes)
    last = max(a.candidates[0].torque for a in answers if math.isfinite(a.candidates[0].clamp_load.nominal))
    hatched = next(patch for patch in axes.patches if patch.get_hatch())
    assert hatched.get_xy()[:, 0].min() == last


def test_torque_chart_has_the_torques_of_the_question():
    axes = plots.plot_torque_chart("oiled", ["8.8", "10.9"], ["M8", "M16x1.5"])
    words = check_texts(axes)
    for name, marks in (("M8", ("8.8", "10.9")), ("M16x1.5", ("8.8", "10.9"))):
        torques = [tauten.torque_for(thread=name, property_class=mark, condition="oiled").candidates[0].torque for mark in marks]
        shown = next(word for word in words if word.startswith(f"{name}:"))
        for torque, text in zip(torques, shown.partition(":")[2].split("/")):
            assert 0 <= torque - float(text) < 0.01 * torque  # never rounded up
    assert [_core.settable_text(t) for t in (5.019, 1289, 173.9, 100.0)] == ["5.01", "1280", "173", "100"]
    with pytest.raises(tauten.Error, match="M99"):
        plots.plot_torque_chart("oiled", threads=["M99"])


def test_settings_follow_the_lever():
    axes = plots.plot_settings("130N.m", "400mm", ["100mm"])
    check_texts(axes)
    line = axes.get_lines()[0]
    for angle, setting in zip(*line.get_data()):
        assert setting == pytest.approx(130 * 400 / (400 + 100 * math.cos(math.radians(angle))))


def test_load_by_friction_ends_at_yield():
    axes = plots.plot_load_by_friction("M16", "8.8", [0.10, 0.16])
    check_texts(axes)
    for line, friction in zip(axes.get_lines(), (0.10, 0.16)):
        torque, load = (data[-1] for data in line.get_data())
        at_end = tauten.clamp(thread="M16", property_class="8.8", torque=torque, thread_friction=friction, bearing_friction=friction,
                              wrench_accuracy=0).candidates[0]
        assert at_end.worst_case.nominal / 1e3 == pytest.approx(load, rel=1e-9) and at_end.yield_utilisation.nominal == pytest.approx(1)
