"""The question about a thread: figures that standards print, and the same answer however it is asked."""
import numpy as np
import pytest

import tauten


def test_figures_of_the_standards():
    bolt = tauten.thread("M16")
    by_class = {one.property_class: one for one in bolt.classes}
    # ISO 898-1:2013, Tables 4 to 7: proof and minimum tensile loads of M16, coarse.
    for name, proof, tensile in (("4.6", 35300, 62800), ("5.8", 59700, 81600), ("8.8", 91000, 125000),
                                 ("10.9", 130000, 163000), ("12.9", 152000, 192000)):
        assert by_class[name].proof_load == pytest.approx(proof, rel=5e-3)
        assert by_class[name].tensile_load == pytest.approx(tensile, rel=5e-3)
    # ISO 965-2, limits of M16-6g: d 15.962 and 15.682, d_2 14.663 and 14.503.
    assert (bolt.bolt.diameter.maximum, bolt.bolt.diameter.minimum) == pytest.approx((15.962e-3, 15.682e-3), abs=5e-7)
    assert (bolt.bolt.pitch_diameter.maximum, bolt.bolt.pitch_diameter.minimum) == pytest.approx((14.663e-3, 14.503e-3),
                                                                                                abs=5e-7)
    # ISO 4014 and ISO 4762; ISO 273.
    assert (bolt.socket, bolt.key) == (0.024, 0.014)
    assert (bolt.fine_hole, bolt.medium_hole, bolt.coarse_hole) == (0.017, 0.0175, 0.0185)
    # ISO 898-7:1992, Table 1: minimum breaking torques of M8.
    torques = {one.property_class: one.breaking_torque for one in tauten.thread("M8").classes}
    assert (torques["8.8"], torques["10.9"]) == (33, 40)


def test_a_class_by_itself():
    only = tauten.thread("M16x1.5-6g", property_class="10.9")
    assert [one.property_class for one in only.classes] == ["10.9"] and only.classes[0].nut_class == "10"
    assert only.designation == "M16x1.5-6g" and not only.coarse
    assert only.headline.startswith("M16x1.5-6g 10.9: proof load ")
    assert "tauten torque --thread M16x1.5 --class 10.9" in only.page()


def test_the_weaker_nut_thread_is_not_made_up():
    """Limits whose figures were not seen in print are left out, and it is said."""
    for name in ("M16", "M30x2", "M1.6", "M64"):
        found = tauten.thread(name)
        left_out = sum(note.code == "limits_left_out" for note in found.notices)
        assert left_out == (found.bolt is None) + (found.nut is None)


def test_tables_and_refusals():
    with pytest.warns(tauten.DomainWarning, match="1 of 3 rows"):
        rows = tauten.thread({"thread": ["M8", "M10x1.25", "M9.5"]})
    assert rows["stress_area"][:2] == pytest.approx([tauten.thread(name).stress_area for name in ("M8", "M10x1.25")])
    assert np.isnan(rows["stress_area"][2]) and "nearest" in rows["error"][2]
    with pytest.raises(tauten.Error, match="thread is missing"):
        tauten.thread()
    with pytest.raises(tauten.Error) as refused:
        tauten.thread("M16", property_class="7.7")
    assert refused.value.argument == "property_class"
    assert tauten.thread(tauten.thread("M16")).as_dict() == tauten.thread(thread="M16").as_dict()
