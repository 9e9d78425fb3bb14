"""Random jobs of a few panels under every rule there is, from a seed; some cannot be laid."""

from random import Random

from plumpline.layout import Flaw, Motif, Panel, Repeat, Strip

TURNS = [(0,), (0,), (0, 90), (0, 180), (0, 90, 180, 270)]
BOUND = [["free"], ["free"], ["motif"], ["motif", "free"], ["group"], ["group", "free"], ["motif", "group", "free"]]


def random_strip(seed, width=24, most=5):
    """One job: `most` kinds of up to three panels at most, on a cloth about `width` wide."""
    random = Random(seed)
    wide = random.randint(width // 2, width)
    bound = random.choice(BOUND)
    panels = tuple(_panel(random, number, wide, random.choice(bound)) for number in range(random.randint(1, most)))
    repeat = None
    if bound != ["free"]:
        along = random.choice([0, 3, random.randint(2, wide)])
        repeat = Repeat(random.choice([0, random.randint(2, wide)]), along, random.choice([0, along // 2, along // 3]))
    motifs = tuple(Motif(name, random.randint(-9, wide), random.randint(-9, wide)) for name in ("m", "m", "n"))
    start = random.choice(["measured", "measured", "choose"])
    flaws = ()
    if start == "measured" and random.random() < 0.3:
        flaws = tuple(
            Flaw(random.randint(-1, wide), random.randint(-1, 20), random.randint(1, 5), random.randint(1, 5))
            for _ in range(random.randint(1, 2))
        )
    return Strip(wide, panels, repeat, motifs, start, flaws, random.choice([0, 0, 0, 1]))


def _panel(random, number, wide, bound):
    w, h = random.randint(wide // 5, wide * 3 // 4), random.randint(wide // 5, wide * 3 // 4)
    return Panel(
        f"p{number}", w, h, random.randint(1, 3), random.choice(TURNS),
        random.choice(["m", "n"]) if bound == "motif" else None, random.randint(0, w), random.randint(0, h),
        random.choice(["g", "k"]) if bound == "group" else None, random.choice([*[None] * 8, "t", "u"]),
    )
