"""Pads as they are sold: the sizes that shops keep, and which of them serves for the pad that is wanted."""

from __future__ import annotations

from math import prod

from plumpline.job import NM_PER_CM
from plumpline.lengths import NM_PER_INCH
from plumpline.measures import Measures

Sizes = tuple[tuple[int, ...], ...]

# All sizes are common practice: inches as sold in North America, centimetres in Europe; boxes, thick rounds and
# bolsters from memory.
_SQUARE_IN, _OBLONG_IN = (12, 14, 16, 18, 20, 22, 24, 26), ((12, 20), (14, 22), (20, 26), (20, 30), (20, 36))
_SQUARE_CM, _OBLONG_CM = (40, 45, 50, 60), ((30, 50), (40, 60))
_ROUND_IN, _ROUND_CM = (12, 14, 16, 18, 20, 24), (40, 45, 50, 60)
_BOX_IN, _BOX_OBLONG_IN, _THICK_IN = (16, 18, 20, 22, 24), ((16, 18), (18, 20), (20, 22), (22, 24)), (2, 3, 4)
_BOX_CM, _BOX_OBLONG_CM, _THICK_CM = (40, 45, 50, 60), ((40, 45), (45, 50), (50, 60)), (4, 5, 8, 10)
_THICK_ROUND_IN, _THICK_ROUND_CM = (14, 15, 16, 18), (35, 38, 40, 45)
_BOLSTER_IN = ((5, 14), (6, 14), (6, 16), (6, 18), (6, 20), (7, 20), (8, 20), (8, 24), (9, 36))
_BOLSTER_CM = ((15, 40), (15, 45), (18, 45), (18, 50), (20, 50), (20, 60), (20, 80))


def _either_way_up(square: tuple[int, ...], oblong: Sizes) -> Sizes:
    return tuple((side, side) for side in square) + oblong + tuple((b, a) for a, b in oblong)


def _each_thick(faces: Sizes, thick: tuple[int, ...]) -> Sizes:
    return tuple((*face, high) for face in faces for high in thick)


def _across(diameters: tuple[int, ...]) -> Sizes:
    return tuple((across,) for across in diameters)


_SOLD: dict[str, dict[tuple[str, ...], Sizes]] = {
    "in": {
        ("width", "length"): _either_way_up(_SQUARE_IN, _OBLONG_IN),
        ("diameter",): _across(_ROUND_IN),
        ("width", "length", "thickness"): _each_thick(_either_way_up(_BOX_IN, _BOX_OBLONG_IN), _THICK_IN),
        ("diameter", "thickness"): _each_thick(_across(_THICK_ROUND_IN), _THICK_IN),
        ("diameter", "length"): _BOLSTER_IN,
    },
    "cm": {
        ("width", "length"): _either_way_up(_SQUARE_CM, _OBLONG_CM),
        ("diameter",): _across(_ROUND_CM),
        ("width", "length", "thickness"): _each_thick(_either_way_up(_BOX_CM, _BOX_OBLONG_CM), _THICK_CM),
        ("diameter", "thickness"): _each_thick(_across(_THICK_ROUND_CM), _THICK_CM),
        ("diameter", "length"): _BOLSTER_CM,
    },
}
_SOLD["mm"] = _SOLD["cm"]

_FLAT = (("width", "length"), ("diameter",))


def stocked_pad(wanted: Measures, fill: str | None, units: str) -> Measures | None:
    """The least stocked pad that is no smaller than the wanted one and near enough to it, if there is one.

    A flat pad gives way and may be 2 in (5 cm) larger either way; a box or a bolster 1 in (2.5 cm), but no thicker,
    and one of foam not at all (common practice).
    """
    unit = NM_PER_INCH if units == "in" else NM_PER_CM
    most = [_most_larger(name, wanted.names, fill, units) for name in wanted.names]
    sold = [tuple(unit * measure for measure in size) for size in _SOLD[units][wanted.names]]
    near = [size for size in sold if all(0 <= a - b <= c for a, b, c in zip(size, wanted.lengths, most, strict=True))]
    least = min(near, key=prod, default=None)
    return Measures(tuple(zip(wanted.names, least, strict=True))) if least else None


def _most_larger(name: str, beside: tuple[str, ...], fill: str | None, units: str) -> int:
    flat = 2 * NM_PER_INCH if units == "in" else 5 * NM_PER_CM
    if beside in _FLAT:
        return flat
    return 0 if fill == "foam" or name == "thickness" else flat // 2
