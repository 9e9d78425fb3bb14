# How much filling a cushion takes: by weight as makers buy it, and the published geometry of a filled shape behind it.
"""The trade's rule goes by weight. The geometry says what two flat faces can hold at most when they bend but do not
stretch; a real cushion holds less, so it is shown beside the weight and never instead of it.

Sizes are in nm, weights in whole nanograms (1 oz = 28.349523125 g exactly, agreement of 1959), volumes in whole mm³.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from plumpline.geometry import PI, Point, area, power_of_ten
from plumpline.lengths import NM_PER_INCH, UNITS, decimal_text, round_half_even, write_length
from plumpline.measures import Measures

NG_PER_OUNCE = 28_349_523_125
NG_PER_GRAM = 10**9
_NM3_PER_MM3 = 10**18
_MM3_PER_LITRE = 10**6
_MM3_PER_CUBIC_INCH = Fraction(NM_PER_INCH**3, _NM3_PER_MM3)

#: Ounces for each square inch of a decorative insert, whatever the filling (common practice of a pillow workroom).
OUNCES_PER_SQUARE_INCH = Fraction(5, 100)

#: Fillings that are poured in and bought by volume.
BY_VOLUME = ("foam-crumb", "microbead")

# From this size on a pad is a bed pillow, which takes less than the rule says (16 to 20 oz for 20 × 26 in).
_BED_PILLOW = 20 * NM_PER_INCH, 26 * NM_PER_INCH

#: A square of side 1 holds at least the first, since such a shape was constructed, and no more than the second
#: (Andrew Kepert; read in an encyclopaedia that marks both figures as lacking a citation).
_KEPERT = Fraction("0.2055"), Fraction("0.217")

#: Half the lemniscate constant, OEIS A085565: flat radius of the balloon ÷ its filled radius.
_LEMNISCATE = Fraction(131102877714605990523241979494556, 10**32)


def weight_of_filling(width: int, length: int) -> int:
    """What a decorative insert takes by the rule of 5 %: ounces = width × length in inches × 0.05; in ng."""
    return _weight(Fraction(width * length))


def weight_of_round_filling(diameter: int) -> int:
    """The same weight for each square inch of a round face, in ng."""
    return _weight(PI * diameter * diameter / 4)


def _weight(face: Fraction) -> int:
    return round_half_even(face / NM_PER_INCH**2 * OUNCES_PER_SQUARE_INCH * NG_PER_OUNCE)


def is_bed_pillow(width: int, length: int) -> bool:
    """Whether a pad is so large that it is a bed pillow, for which the rule of 5 % asks too much."""
    return min(width, length) >= _BED_PILLOW[0] and max(width, length) >= _BED_PILLOW[1]


def weight_text(weight: int, units: str) -> str:
    """A weight for the scales, both systems, the maker's own first: "20 oz (567 g)"."""
    ounces = decimal_text(Fraction(round_half_even(Fraction(10 * weight, NG_PER_OUNCE)), 10))
    grams = f"{round_half_even(Fraction(weight, NG_PER_GRAM))} g"
    return f"{ounces} oz ({grams})" if units == "in" else f"{grams} ({ounces} oz)"


@dataclass(frozen=True)
class Filled:
    """What two flat faces hold at most, in mm³; and, of a round, how thick and how wide it stands then, in nm."""

    volume: int
    between: tuple[int, int] | None = None
    thickness: int | None = None
    diameter: int | None = None


def filled_rectangle(width: int, length: int) -> Filled:
    """A. C. Robin, "Paper Bag Problem", Mathematics Today, IMA, June 2004, 104–107: an estimate for every oblong.

    V = w³ (h / (πw) − 0.142 (1 − 10^(−h/w))), w the short side. For a square, Kepert's two figures are added.
    """
    short, long = sorted((width, length))
    ratio = Fraction(long, short)
    share = ratio / PI - Fraction("0.142") * (1 - power_of_ten(-ratio))
    band = (_volume(short**3 * _KEPERT[0]), _volume(short**3 * _KEPERT[1])) if short == long else None
    return Filled(_volume(short**3 * share), band)


def filled_round(diameter: int) -> Filled:
    """Two flat discs of this diameter, sewn together and filled to the limit.

    W. H. Paulsen, "What is the shape of a Mylar balloon?", Amer. Math. Monthly 101 (1994) 953–958: with the filled
    radius r, the flat radius is 1.3110288 r, the thickness 1.1981402 r and the volume 2.7458122 r³.
    """
    radius = Fraction(diameter, 2) / _LEMNISCATE
    thickness = radius * PI / (2 * _LEMNISCATE)
    return Filled(
        _volume(2 * PI * _LEMNISCATE * radius**3 / 3),
        None,
        round_half_even(thickness),
        round_half_even(2 * radius),
    )


def _volume(cubic_nm: Fraction) -> int:
    return round_half_even(cubic_nm / _NM3_PER_MM3)


def volume_text(volume: int, units: str) -> str:
    """A volume as loose filling is measured: "18.2 L (1111 cu in)", the maker's own system first."""
    litres = f"{decimal_text(Fraction(round_half_even(Fraction(10 * volume, _MM3_PER_LITRE)), 10))} L"
    inches = f"{round_half_even(volume / _MM3_PER_CUBIC_INCH)} cu in"
    return f"{inches} ({litres})" if units == "in" else f"{litres} ({inches})"


def geometry_lines(filled: Filled, units: str) -> list[str]:
    """What the geometry says and how far it may be trusted, for a maker who asks."""
    whole = volume_text(filled.volume, units)
    limit = "That is the fully inflated limit: a real cushion holds less."
    if filled.diameter is not None:
        return [f"Two flat discs hold at most {whole} (Paulsen 1994). {limit}"]
    lines = [f"Two flat panels hold about {whole} (Robin 2004). {limit}"]
    if filled.between is not None:
        low, high = (volume_text(volume, units) for volume in filled.between)
        lines.append(
            f"For a square alone another study gives more, {low} to {high} (Kepert): a shape that holds the first was "
            "constructed, and nothing holds more than the second. Robin's formula serves every oblong and leaves out "
            "the folds at the edge, so it says less."
        )
    return lines


@dataclass(frozen=True)
class Filling:
    """What fills one cushion: its weight in ng, None where it is bought by volume, and how that comes about.

    `geometry` says what two flat faces could hold at most, for a maker who asks.
    """

    weight: int | None
    text: str
    working: tuple[str, ...]
    geometry: tuple[str, ...]


def filling_of(pad: Measures, fill: str | None, units: str, outline: Sequence[Point] = ()) -> Filling | None:
    """What a maker fills a pad of this size with; None for a block of foam, or a shape that no rule is known for.

    Of a pad with a straight-sided `outline` the face counts as it is, not the box around it; no published geometry
    tells what two such faces hold.
    """
    names = tuple(name for name, _ in pad)
    if fill != "foam" and names in _SOLID:
        return _filling_of_a_solid(_held_by(pad, outline), fill, units)
    if fill == "foam" or names not in (("width", "length"), ("diameter",)) or (outline and fill in BY_VOLUME):
        return None
    if outline:
        weight = _weight(area(outline))
        text = weight_text(weight, units)
        return Filling(weight, text, (f"{_face_by_weight(weight, units)} = {text}.",), ())
    filled = filled_rectangle(*pad.lengths) if len(names) == 2 else filled_round(*pad.lengths)
    geometry = tuple(geometry_lines(filled, units))
    if fill in BY_VOLUME:
        text = f"up to {volume_text(filled.volume, units)}"
        return Filling(None, text, (f"It is poured in and bought by volume: {text}.",), geometry)
    weight = weight_of_filling(*pad.lengths) if len(names) == 2 else weight_of_round_filling(*pad.lengths)
    return Filling(weight, weight_text(weight, units), tuple(_weight_lines(pad, weight, units)), geometry)


# Pads that have a thickness of their own: boxes, straight or round, and bolsters.
_SOLID = (("width", "length", "thickness"), ("diameter", "thickness"), ("diameter", "length"))

# How closely a pad is filled where no rule by weight is known for its shape: as the rule fills an 18 in square.
_SQUARE = 18 * NM_PER_INCH


def _held_by(pad: Measures, outline: Sequence[Point]) -> int:
    """The volume of a pad with upright sides, or of a bolster, in mm³."""
    *_, (_, high) = pad
    across = pad.get("diameter")
    if across is not None:
        return _volume(PI * across * across / 4 * high)
    return _volume(high * (area(outline) if outline else Fraction(pad["width"] * pad["length"])))


def _filling_of_a_solid(volume: int, fill: str | None, units: str) -> Filling:
    """By volume, or by the weight that the rule of 5 % gives as much of an 18 in square, filled as Robin says."""
    whole = volume_text(volume, units)
    holds = f"The pad holds {whole}."
    if fill in BY_VOLUME:
        return Filling(None, whole, (holds, "It is poured in and bought by volume; what it settles comes on top."), ())
    square, room = weight_of_filling(_SQUARE, _SQUARE), filled_rectangle(_SQUARE, _SQUARE).volume
    weight = round_half_even(Fraction(volume * square, room))
    text, rule, in_it = weight_text(weight, units), weight_text(square, units), volume_text(room, units)
    side = write_length(_SQUARE, units)
    line = f"Filled as closely as a square of {side} by the rule of 5 %, {rule} in {in_it}: {text}. "
    return Filling(weight, text, (holds, f"{line}No rule of its own is known for this shape: weigh the first."), ())


def _weight_lines(pad: Measures, weight: int, units: str) -> list[str]:
    lines = [f"{_face_by_weight(weight, units)} = {weight_text(weight, units)}."]
    if len(pad.lengths) == 2 and is_bed_pillow(*pad.lengths):
        lines.append("That is the rule for decorative cushions; a bed pillow of this size takes less, 16 to 20 oz.")
    return lines


def _face_by_weight(weight: int, units: str) -> str:
    """The size of the face times what each part of it takes: 0.05 oz a square inch is 0.2197 g a square centimetre."""
    square_inches = Fraction(weight) / NG_PER_OUNCE / OUNCES_PER_SQUARE_INCH
    if units == "in":
        return f"{round_half_even(square_inches)} square inches × 5 %"
    return f"{round_half_even(square_inches * NM_PER_INCH**2 / UNITS['cm'] ** 2)} square centimetres × 0.2197 g"
