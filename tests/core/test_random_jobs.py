"""Random small jobs of every make: each answer keeps every rule of the contract."""

from answer_checker import check
from hypothesis import given, settings
from hypothesis import strategies as st
from test_outlined import ELL, TEE, inches, mm

from plumpline import JobError, plan

EIGHTHS = st.integers(min_value=40, max_value=240).map(lambda n: f"{n // 8} {n % 8}/8 in" if n % 8 else f"{n // 8} in")


@st.composite
def faces(draw, patterned):
    pattern = draw(st.sampled_from(["free", "alike", "centred", "stripe-centred"] if patterned else ["free"]))
    face = {"cloth": "k1", "pattern": pattern}
    if pattern.endswith("centred"):
        face["motif"] = draw(st.sampled_from(["m1", "m2"]))
        if draw(st.booleans()):
            face["offset"] = {"across": draw(st.sampled_from(["1 in", "-1 1/2 in"])), "along": "3/4 in"}
    if draw(st.booleans()):
        face["turn"] = draw(st.sampled_from(["none", "half", "quarter"]))
    if pattern == "alike" and draw(st.booleans()):
        face["group"] = "together"
    return face


CLOSURES = [
    {"kind": "hand-sewn", "seam": "3/4 in", "opening": "3 in"},
    {"kind": "zip", "length": "3 in"},
    {"kind": "zip", "at": "back", "zip_seam": "5/8 in", "length": "3 in"},
    {"kind": "envelope", "overlap": "3 in", "hem": "2 in"},
]


EDGES = [
    {"kind": "piped"},
    {"kind": "piped", "rims": "both", "strip": "bias", "joined": "straight", "cord": "1/4 in"},
    {"kind": "piped", "cords": "double", "thickness": "1/32 in", "join": "1 in"},
    {"kind": "frilled", "gather": "pleated", "depth": "2 in"},
    {"kind": "frilled", "frill": "hemmed", "fullness": "1.5", "rims": "both"},
]


@st.composite
def jobs(draw):
    patterned = draw(st.booleans())
    cushions = []
    for number in range(1, draw(st.integers(1, 3)) + 1):
        cover = {"smaller_by": "1 in", "front": draw(faces(patterned)), "back": draw(faces(patterned))}
        quantity = draw(st.integers(1, 3))
        if quantity == 1 and cover["front"]["pattern"] == "alike" and draw(st.booleans()):
            cover["front"] = {"cloth": "k1", "pattern": "flow"}
        if draw(st.booleans()):
            cover["closure"] = dict(draw(st.sampled_from(CLOSURES)))
        if draw(st.integers(0, 3)) == 3:
            cover["edge"] = dict(draw(st.sampled_from(EDGES)))
        insert = {"shape": "rectangle", "width": draw(EIGHTHS), "length": draw(EIGHTHS)}
        if draw(st.integers(0, 5)) == 5:
            insert = {"shape": "round", "diameter": draw(EIGHTHS)}
        kind = "knife-edge" if insert["shape"] == "round" else draw(st.sampled_from(["knife-edge", "boxed"]))
        if kind == "boxed":
            insert["thickness"] = draw(st.sampled_from(["1 1/2 in", "3 1/8 in"]))
            going_on = patterned and cover["front"]["pattern"] != "free" and draw(st.booleans())
            sides = {"pattern": "match-front"} if going_on else draw(faces(patterned))
            cover |= {"sides": sides, "boxing": {"kind": "front-and-sides", "returns": "2 in"}}
            if cover.get("closure") == {"kind": "zip", "length": "3 in"}:
                cover["closure"]["at"] = "boxing"
        cushions.append(
            {
                "id": f"c{number}",
                "quantity": quantity,
                "kind": kind,
                "insert": insert,
                "cover": cover,
            }
        )
    return {
        "format": "plumpline-job",
        "version": 1,
        "id": "abcdef",
        "units": "in",
        "cushions": cushions,
        "cloths": [draw(cloths(patterned))],
    }


PIECES = [
    {"length": "1.2 m"},
    {"left": "50 in", "right": "47 in", "width": "40 in", "motif_along": "5 in"},
    {"left": "80 in", "slant": {"start": "2 in", "end": "-1 in"}, "flaws": [
        {"corner": "end-left", "cut": "slanting", "width": "9 in", "length": "12 in"},
        {"across": "22 in", "width": "1 in", "length": "all"},
    ]},
    {"length": "60 in", "motif_along": "0 in", "flaws": [
        {"corner": "start-right", "width": "6 in", "length": "9 in"},
        {"across": "10 in", "along": "30 in", "width": "2 in", "length": "1 in"},
    ]},
]  # fmt: skip


@st.composite
def cloths(draw, patterned):
    entry = {"id": "k1", "width": draw(st.sampled_from(["45 in", "54 in", "137 cm"])), "sold_by": "1/8 yd"}
    entry["direction"] = draw(st.sampled_from(["one-way", "two-way", "any"]))
    entry["up"] = draw(st.sampled_from(["away", "toward", "left", "right"]))
    start = draw(st.sampled_from(["measured", "choose", "unknown"]))
    if patterned:
        entry["repeat"] = {
            "across": draw(st.sampled_from(["0 in", "9 in", "13 1/2 in", "27 in"])),
            "along": draw(st.sampled_from(["12 in", "25 1/4 in"])),
            "drop": draw(st.sampled_from(["0 in", "6 in"])),
        }
        entry["motifs"] = [
            {"id": "m1", "across": "13 1/2 in", "along": "2 in"},
            {"id": "m2", "across": "20 in", "along": "5 in"},
        ]
        entry["start"] = start
    if draw(st.booleans()):
        entry["shrinkage"] = {"along": "0.03", "across": "0.02"}
        entry["wash"] = draw(st.sampled_from(["before-cutting", "after-making"]))
    if entry.get("start") == "measured" and draw(st.booleans()):
        entry["flaws"] = [{"across": "20 in", "along": "15 in", "width": "1 in", "length": "2 in"}]
    if draw(st.integers(0, 2)) == 2:
        entry["piece"] = dict(draw(st.sampled_from(PIECES if patterned else PIECES[::2])))
    return entry


@settings(max_examples=150, deadline=None, derandomize=True)
@given(jobs())
def test_every_answer_keeps_every_rule(job):
    try:
        answer = plan(job, "quick")
    except JobError as error:
        reasons = {problem["code"] for problem in error.problems}
        possible = {
            "too-wide",
            "too-wide-unless-turned",
            "motif-cannot-be-centred",
            "rules-contradict",
            "opening-too-long",
        }
        assert reasons <= possible
        return
    assert check(job, answer) > 0


#: Seats by their corners, with those that turn inwards and what is taped across.
SEATS = [
    (inches((0, 0), (40, 0), (30, 20), (10, 20)), [], [(0, 2), (1, 3)]),
    (inches((0, 0), (30, 0), (12, 22)), [], []),
    (inches((0, 0), (30, 0), (30, 18), (0, 18)), [], [(0, 2)]),
    (ELL, [3], [(0, 2), (0, 3), (0, 4), (3, 5)]),
    (TEE, [3, 6], [(0, 2), (0, 3), (1, 6), (1, 7), (3, 5), (4, 6)]),
]


@st.composite
def outlined_jobs(draw):
    """Seats of straight sides, their corners square or rounded, on a cloth that is wide enough for every band."""
    corners, notches, across = draw(st.sampled_from(SEATS))
    sides = [mm(*ends) for ends in zip(corners, [*corners[1:], corners[0]], strict=True)]
    diagonals = [[one, other, mm(corners[one], corners[other])] for one, other in across]
    insert = {"shape": "polygon", "sides": sides, "diagonals": diagonals, "notches": notches, "fill": "foam"}
    kind, face = draw(st.sampled_from(["knife-edge", "boxed"])), {"cloth": "k1"}
    cover = {"smaller_by": "0 in", "seam": "1/2 in", "front": face, "back": face}
    closure = {"kind": "zip", "side": draw(st.integers(0, len(sides) - 1)), "zip_seam": "3/4 in"}
    if kind == "boxed":
        insert["thickness"] = "3 in"
        returns = draw(st.sampled_from(["0 in", "1 in"]))
        cover |= {"sides": face, "boxing": {"kind": "front-and-sides", "returns": returns}}
    else:
        closure |= {"length": "1 in"}
    radius = draw(st.sampled_from([None, "1/4 in", "1 in", "2 in", "2 1/2 in"]))
    if radius:
        cover["corners"] = {"kind": "rounded", "radius": radius}
    if draw(st.booleans()):
        cover["edge"] = dict(draw(st.sampled_from(EDGES[:3])))
    quantity = draw(st.integers(1, 2))
    cushion = {"id": "c1", "quantity": quantity, "kind": kind, "insert": insert, "cover": {**cover, "closure": closure}}
    if draw(st.booleans()) and corners is ELL:  # the others are their own mirror images, or nearly so
        cushion["mirrored"] = 1
    bolt = {"id": "k1", "width": "110 in", "sold_by": "1/8 yd", "direction": draw(st.sampled_from(["one-way", "any"]))}
    job = {"format": "plumpline-job", "version": 1, "id": "abcdef", "units": "in"}
    return {**job, "cushions": [cushion], "cloths": [bolt]}


@settings(max_examples=25, deadline=None, derandomize=True)
@given(outlined_jobs())
def test_every_answer_about_a_straight_sided_seat_keeps_every_rule(job):
    try:
        answer = plan(job, "quick")
    except JobError as error:
        reasons = {problem["code"] for problem in error.problems}
        assert reasons == {"corner-too-large"}
        return
    assert check(job, answer) > 0
