"""Checks what fits a given length, and the proof that no more does; imports nothing of the core."""

from dataclasses import replace
from fractions import Fraction
from itertools import combinations, product

from brute_force import fits
from layout_checker import check
from proof_checker import Case
from shape_checker import shape_area
from shape_proofs import accepts_shape_proof


def check_fit(strip, length, sets, found):
    """Assert that the sets said to fit are laid within the length, and that the proof that no more do holds."""
    assert (found.length, found.wanted) == (length, len(sets))
    assert found.fits == (len(found.sets) == len(sets))
    assert len(set(found.sets)) == len(found.sets)
    if found.sets:
        check(with_sets(strip, [sets[number] for number in found.sets]), found.plan)
        assert found.plan.length + found.left == length
        assert found.left >= 0
    else:
        assert found.plan is None
    if found.too_many is not None:
        assert found.too_many.sets > len(found.sets)
        assert refutes(strip, length, sets, found.too_many)
    assert found.proven == (found.fits or (found.too_many is not None and found.too_many.sets == len(found.sets) + 1))


def refutes(strip, length, sets, proof):
    """Whether the certificate proves that so many sets do not fit, whichever they are."""
    return {"each-choice": _each_choice, "least-sets": _least_sets}[proof.name](strip, length, sets, proof)


def most_sets(strip, length, sets):
    """The most sets that fit, by trying every choice of sets and every place of every panel."""
    for count in range(len(sets), 0, -1):
        if any(fits(with_sets(strip, chosen), length) for chosen in combinations(sets, count)):
            return count
    return 0


def with_sets(strip, sets):
    """The strip with the panels of some sets alone."""
    counted = [(panel, sum(one.get(panel.id, 0) for one in sets)) for panel in strip.panels]
    return replace(strip, panels=tuple(replace(panel, qty=qty) for panel, qty in counted if qty))


def _each_choice(strip, length, sets, proof):
    kinds = []
    for one in sets:
        panels = [one.get(panel.id, 0) for panel in strip.panels]
        kinds += [] if panels in kinds else [panels]
    limits = [sum([one.get(panel.id, 0) for panel in strip.panels] == kind for one in sets) for kind in kinds]
    for choice in proof.data["choices"]:
        chosen = [
            dict(zip((p.id for p in strip.panels), kind, strict=True))
            for kind, count in zip(kinds, choice["sets"], strict=True) for _ in range(count)
        ]
        assert choice["at_least"] > length
        assert accepts_shape_proof(with_sets(strip, chosen), choice["at_least"], choice["name"], choice["data"])
    return all(
        any(all(a <= b for a, b in zip(c["sets"], taken, strict=True)) for c in proof.data["choices"])
        for taken in product(*(range(limit + 1) for limit in limits)) if sum(taken) == proof.sets
    )


def _least_sets(strip, length, sets, proof):
    if proof.data["name"] == "true-area":
        values = sorted(sum(_true_share(strip, p) * one.get(p.id, 0) for p in strip.panels) for one in sets)
        return sum(values[: proof.sets]) > length
    case = Case(strip, {}, {})
    if proof.data["name"] == "area":
        shares = {p: min(Fraction(w[0] * w[1], case.room) for w in ways) for p, ways in case.ways.items()}
    else:
        weights = case.weights(proof.data["data"])
        assert case.fits_one(weights, proof.data["data"])
        shares = {
            p: min(x * w[1] for w, x in zip(ways, weights[p], strict=True)) for p, ways in case.ways.items()
        }
    values = sorted(sum(copies * shares[panel] for panel, copies in one.items()) for one in sets)
    return sum(values[: proof.sets]) > length + strip.gap


def _true_share(strip, panel):
    if panel.shape == "circle":
        return Fraction(3141592, 10**6) * panel.w**2 / 4 / strip.width
    area = panel.w * panel.h if panel.shape == "rect" else shape_area(panel.shape)
    return Fraction(area) / strip.width
