"""The engine on its own: instances as plain JSON, by call and by command."""

import json
import runpy
import sys

import pytest
from layout_checker import check, check_cuts

from plumpline.layout import Motif, Repeat, lay, lay_plan, straight_plan
from plumpline.layout.instances import main, strip_of

SQUARES = {"id": "squares", "usable_width": 54, "panels": [{"id": "front", "w": 18, "h": 18, "qty": 12}]}
TOO_WIDE = {"id": "bench", "usable_width": 54, "panels": [{"id": "top", "w": 60, "h": 20, "qty": 1}]}


def test_an_instance_is_answered_with_its_layout_and_proof():
    answer = lay(SQUARES, work=10_000)
    assert {k: answer[k] for k in ("id", "length", "at_least", "proven", "phase", "alike")} == {
        "id": "squares", "length": 72, "at_least": 72, "proven": True, "phase": 0, "alike": {}
    }
    assert answer["proof"] == {"name": "area", "data": {}}
    assert len(answer["layout"]) == 12
    assert answer["layout"][0] == {"panel": "front", "x": 0, "y": 0, "turn": 0}
    assert answer["work"] > 0
    assert answer["seconds"] >= 0


def test_the_same_work_gives_the_same_answer():
    job = {**SQUARES, "panels": [{"id": str(i), "w": 7 + i, "h": 23 - 2 * i, "qty": 3} for i in range(6)]}
    first, second = lay(job, work=40_000, seed=5), lay(job, work=40_000, seed=5)
    assert {**first, "seconds": 0} == {**second, "seconds": 0}


def test_seconds_end_the_search():
    job = {**SQUARES, "panels": [{"id": str(i), "w": 7 + i, "h": 23 - 2 * i, "qty": 3} for i in range(6)]}
    answer = lay(job, seconds=0.0)
    assert not answer["proven"]
    check(strip_of(job), lay_plan(strip_of(job), 1))
    assert answer["work"] < lay(job, seconds=0.05)["work"]


def test_straight_cuts_can_be_asked_for():
    answer = lay({**SQUARES, "straight": True}, work=10_000)
    assert answer["cuts"][0] == {"number": 1, "kind": "across", "x": 0, "y": 18, "length": 54}


def test_a_given_length_is_answered_by_what_fits_and_the_proof():
    answer = lay({**SQUARES, "fit": 80}, work=10_000)
    assert {k: answer[k] for k in ("fits", "sets", "chosen", "length", "left", "fit_proof")} == {
        "fits": True, "sets": 12, "chosen": list(range(12)), "length": 72, "left": 8,
        "fit_proof": {"sets": 12, "name": "layout", "data": {}},
    }
    answer = lay({**SQUARES, "fit": 71, "sets": 6}, work=10_000)
    assert (answer["fits"], answer["sets"], answer["left"], len(answer["layout"])) == (False, 4, 17, 8)
    assert answer["fit_proof"]["sets"] == 5
    assert answer["fit_proof"]["name"] == "each-choice"
    assert answer["fit_proof"]["data"]["choices"][0]["at_least"] == 72


def test_sets_may_be_listed_and_where_none_fits_nothing_is_laid():
    sets = [{"front": 7}, {"front": 5}]
    answer = lay({**SQUARES, "fit": 40, "sets": sets}, work=10_000)
    assert (answer["fits"], answer["sets"], answer["chosen"], answer["length"]) == (False, 1, [1], 36)
    answer = lay({**SQUARES, "fit": 17, "sets": sets}, work=10_000)
    assert (answer["sets"], answer["length"], answer["left"], answer["layout"]) == (0, 0, 17, [])
    assert answer["fit_proof"]["sets"] == 1


def test_a_strip_packing_family_is_read_by_its_items():
    answer = lay({"name": "C0", "width": 10, "items": [[5, 4, 2], [10, 2, 1]]}, work=1_000)
    assert (answer["id"], answer["length"]) == ("C0", 6)
    assert sorted(spot["panel"] for spot in answer["layout"]) == ["0", "0", "1"]


def test_all_fields_of_an_instance_reach_the_strip():
    panels = [
        {"id": "a", "w": 6, "h": 4, "qty": 1, "rotation": "half", "motif": True, "motif_dx": 3, "motif_dy": 2},
        {"id": "b", "w": 6, "h": 4, "qty": 2, "motif_id": "bird", "shape": "rect"},
        {"id": "c", "w": 5, "h": 4, "qty": 2, "rotation": "quarter", "group": "g", "turn_group": "t"},
    ]
    strip = strip_of({
        "id": "all", "usable_width": 40, "panels": panels, "gap": 1,
        "repeat": {"h": 10, "v": 8, "drop": 4, "ox": 1, "oy": 2}, "motifs": [{"id": "bird", "ox": 5, "oy": 6}],
        "flaws": [{"x": 1, "y": 2, "w": 3, "h": 4}],
    })
    assert [(p.turns, p.motif, p.dx, p.dy, p.group, p.turn_group) for p in strip.panels] == [
        ((0, 180), "motif", 3, 2, None, None), ((0,), "bird", 0, 0, None, None), ((0, 90), None, 0, 0, "g", "t")
    ]
    assert strip.repeat == Repeat(10, 8, 4)
    assert strip.motifs == (Motif("motif", 1, 2), Motif("bird", 5, 6))
    assert (strip.gap, strip.start, strip.flaws[0].h) == (1, "measured", 4)
    check(strip, lay_plan(strip, 20_000))
    check_cuts(strip, straight_plan(strip, 20_000))


def test_a_drop_in_odd_columns_only_becomes_two_motifs_in_a_double_repeat():
    repeat = {"h": 10, "v": 9, "drop": 3, "ox": 1, "oy": 2}
    strip = strip_of({**SQUARES, "repeat": repeat})
    assert strip.repeat == Repeat(20, 9)
    assert strip.motifs == (Motif("motif", 1, 2), Motif("motif", 11, 5))


def test_a_drop_of_half_a_repeat_is_the_same_in_every_second_column():
    strip = strip_of({**SQUARES, "repeat": {"h": 10, "v": 8, "drop": 4, "ox": 0, "oy": 0}})
    assert strip.repeat == Repeat(10, 8, 4)


@pytest.mark.parametrize(("across", "along"), [(10, 0), (0, 8)])
def test_a_repeat_in_one_direction_has_no_drop(across, along):
    strip = strip_of({**SQUARES, "repeat": {"h": across, "v": along, "drop": 4, "ox": 0, "oy": 0}})
    assert strip.repeat == Repeat(across, along)


def test_circles_and_outlines_are_read_by_their_shape():
    panels = [
        {"id": "round", "w": 9, "h": 9, "qty": 2, "shape": "circle"},
        {"id": "wedge", "w": 8, "h": 5, "qty": 2, "rotation": "half", "shape": [[10, 0], [18, 0], [16, 5], [12, 5]]},
    ]
    strip = strip_of({"id": "shapes", "usable_width": 40, "panels": panels})
    assert [p.shape for p in strip.panels] == ["circle", ((0, 0), (8, 0), (6, 5), (2, 5))]
    check(strip, lay_plan(strip, 20_000))


def test_an_unknown_start_is_planned_as_a_chosen_one_and_says_what_to_ask_for():
    # A print of 52 cm along and 45 across, 8 panels of 45 cm three across: 149 cm, and 52 more if the start is unknown.
    panel = {"id": "face", "w": 45, "h": 45, "qty": 8, "motif": True, "motif_dx": 22, "motif_dy": 22}
    repeat = {"h": 45, "v": 52, "drop": 0, "ox": 23, "oy": 7}
    cushions = {"id": "centred", "usable_width": 137, "panels": [panel], "repeat": repeat, "start": "unknown"}
    answer = lay(cushions, work=20_000)
    assert (answer["length"], answer["ask"]) == (149, {"length": 149 + 51, "at_least": 149 + 51})
    assert lay({**cushions, "start": "choose"}, work=20_000).get("ask") is None
    assert lay({**SQUARES, "start": "unknown"}, work=20_000)["ask"] == {"length": 72, "at_least": 72}


@pytest.mark.parametrize(
    ("field", "instance"),
    [
        ("fit.*strips", {**SQUARES, "fit": 100, "strips": [{"width": 2, "length": 90}]}),
        ("fit.*straight", {**SQUARES, "fit": 100, "straight": True}),
        ("shape", {**SQUARES, "panels": [{"id": "r", "w": 9, "h": 9, "qty": 1, "shape": "oval"}]}),
    ],
)
def test_a_field_that_is_not_known_yet_is_refused_by_its_name(field, instance):
    with pytest.raises(ValueError, match=field):
        lay(instance)


def test_the_command_writes_an_answer_or_the_problem_of_every_instance(tmp_path, capsys):
    jobs, results = tmp_path / "jobs.json", tmp_path / "results.json"
    jobs.write_text(json.dumps({"instances": [SQUARES, TOO_WIDE]}), encoding="utf-8")
    assert main([str(jobs), "--seconds", "0.1", "--out", str(results)]) == 0
    squares, bench = json.loads(results.read_text(encoding="utf-8"))["results"]
    assert squares["length"] == 72
    assert bench == {
        "id": "bench", "problem": {"panel": "top", "code": "too-wide-unless-turned",
                                   "text": "top fits the cloth only if it is turned"}
    }
    jobs.write_text(json.dumps(SQUARES), encoding="utf-8")
    assert main([str(jobs)]) == 0
    assert json.loads(capsys.readouterr().out)["results"][0]["length"] == 72


def test_the_command_runs_as_a_module(tmp_path, capsys, monkeypatch):
    jobs = tmp_path / "jobs.json"
    jobs.write_text(json.dumps(SQUARES), encoding="utf-8")
    monkeypatch.setattr(sys, "argv", ["plumpline.layout", str(jobs)])
    with pytest.raises(SystemExit) as ended:
        runpy.run_module("plumpline.layout", run_name="__main__")
    assert ended.value.code == 0
    assert json.loads(capsys.readouterr().out)["results"][0]["proven"]


def test_a_stripe_is_asked_for_one_way_alone():
    """Stripes 10 apart, one at 5: a panel 7 wide with its middle on one starts at 5 - 3, and at 10 more.

    Two lie side by side, 20 wide; along the roll nothing keeps them apart, so four are 2 × 9 long. Asked for along
    the roll alone, four lie side by side, first with the middle 4 of one on row 6.
    """
    panel = {"id": "a", "w": 7, "h": 9, "qty": 4, "motif": True, "motif_dx": 3, "motif_dy": 4}
    job = {"id": "stripes", "usable_width": 30, "repeat": {"h": 10, "v": 8, "ox": 5, "oy": 6}}
    across = lay({**job, "usable_width": 20, "panels": [{**panel, "motif_axes": "across"}]}, work=10_000)
    assert (across["length"], across["proven"]) == (18, True)
    assert sorted((spot["x"], spot["y"]) for spot in across["layout"]) == [(2, 0), (2, 9), (12, 0), (12, 9)]
    along = lay({**job, "panels": [{**panel, "motif_axes": "along"}]}, work=10_000)
    assert (along["length"], along["proven"]) == (11, True)
    assert {spot["y"] for spot in along["layout"]} == {2}
    with pytest.raises(ValueError, match="'motif_axes' of a"):
        lay({**job, "panels": [{**panel, "motif_axes": "aslant"}]}, work=10_000)
