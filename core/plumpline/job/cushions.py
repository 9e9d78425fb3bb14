"""The entries of the covers to make: frozen, exact, and read from the values of the document."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from fractions import Fraction

from plumpline.document import Values
from plumpline.fields import FACES_OF, LAYERS
from plumpline.job.habits import Habits
from plumpline.lengths import NM_PER_INCH
from plumpline.measures import Measures


@dataclass(frozen=True)
class Insert:
    """The pad, or the finished size wanted: what was taped of it, a second time too, its label, and its filling.

    A straight-sided outline has its `sides` anticlockwise from the front left corner (corner 0), `diagonals` from
    corner to corner, and `notches`, the corners that turn inwards; None for a length not measured yet.
    """

    shape: str
    size: Measures
    sides: tuple[int | None, ...]
    diagonals: tuple[tuple[int, int, int | None], ...]
    notches: tuple[int, ...]
    again: Measures
    label: Measures
    fill: str | None
    measured: str
    clearance: int


@dataclass(frozen=True)
class FaceParts:
    """What a face is made of: a border, a band or a trim so wide, and how far from the edge it lies (None: the usual).

    Lengths in nm; `corners` are those of a border, and `lies` tells which way a band runs.
    """

    kind: str = "plain"
    width: int = 0
    corners: str = "mitred"
    lies: str = "across"
    from_edge: int | None = None


@dataclass(frozen=True)
class Face:
    """What is asked of one face: its cloth, how the pattern is to fall on it, how it may be turned, and its parts."""

    cloth: str
    pattern: str = "free"
    motif: str | None = None
    offset_across: int = 0
    offset_along: int = 0
    turn: str = "quarter"
    group: str | None = None
    joined: str = "none"
    join_pattern: str = "free"
    parts: FaceParts = FaceParts()

    @property
    def has_motif(self) -> bool:
        """Whether a motif or a stripe is to stand in the middle of it, or so far from there."""
        return self.pattern in ("centred", "stripe-centred")

    @property
    def has_group(self) -> bool:
        """Whether it shares a place of the pattern with others, wherever that is: alike, or in a row."""
        return self.pattern in ("alike", "flow")

    @property
    def goes_on(self) -> bool:
        """Whether it goes on with the pattern of the front, over the seam between them."""
        return self.pattern == "match-front"


@dataclass(frozen=True)
class Corners:
    """Square corners, tapered ones (`depth` in nm, `run` in nm or as a fraction of the side) or rounded ones."""

    kind: str
    depth: int
    run: int | Fraction
    radius: int


@dataclass(frozen=True)
class Closure:
    """How the cover is closed, in nm; None where it is not said and the usual is taken.

    `side` is the side of a straight-sided outline that it lies on, named by the corner it starts at. `seam` is the
    allowance at the closing edge, `zip_seam` that at a zip, `hem` what the hem of an open edge takes.
    """

    kind: str
    at: str | None
    side: int | None
    seam: int | None
    opening: int | None
    zip_length: int | None
    zip_seam: int
    overlap: int | None
    hem: int


@dataclass(frozen=True)
class Boxing:
    """What the boxing is made of: in one band or a piece for each side, and how far a zip band returns, in nm.

    `run` says whether its bands lie across the cloth or along the roll; `returns` is None where it was not said.
    """

    kind: str
    returns: int | None
    run: str


@dataclass(frozen=True)
class Edge:
    """The edge of a cover, and what is on it: on which rims, trim in packs of what length (None: not in packs).

    `join` is what each ring and each of its `hidden_joins` takes more than it goes round, in nm. Piping has so many
    `cords` of a thickness `cord` in strips of `cloth`, which lie as `strip` says and are joined as `joined` does, none
    below the `shortest`;
    `thickness` is that of the cloth. A `flange` and the `depth` of a frill are how far they stand out; a frill is drawn
    up as `gather` says, by its `fullness`, and has a `hem` unless it is doubled (None). What else is None was not said.
    """

    kind: str
    rims: str
    join: int
    pack: int | None
    hidden_joins: int
    cord: int
    cords: int
    cloth: str
    strip: str | None
    joined: str
    shortest: int
    thickness: int | None
    flange: int
    depth: int
    gather: str
    fullness: Fraction | None
    hem: int | None

    @property
    def is_of_strips(self) -> bool:
        """Whether strips of cloth are cut for it."""
        return self.kind in ("piped", "frilled")

    @property
    def beyond(self) -> int:
        """How far the panels go on beyond the pad on every side."""
        return self.flange if self.kind == "flanged" else 0


@dataclass(frozen=True)
class Cover:
    """How the cover is made: allowances in nm, its faces by part, and what it is smaller by as far as that is said.

    A face is named by its place below the cover: "front", "layers/lining". `layers` are those that the cover has.
    """

    smaller_by: Measures
    seam: int
    side_seam: int
    seam_finish: str
    edge: Edge
    closure: Closure
    corners: Corners
    boxing: Boxing
    ends: str
    faces: tuple[tuple[str, Face], ...]
    layers: tuple[str, ...] = ()

    def face(self, part: str) -> Face:
        """The face of that part; the reader has made sure that a cover has those of its kind."""
        return dict(self.faces)[part]


@dataclass(frozen=True)
class Cushion:
    """One entry of the job: so many covers of one make, some of them mirrored."""

    index: int
    id: str
    name: str
    quantity: int
    mirrored: int
    kind: str
    size_from: str
    insert: Insert
    cover: Cover

    @property
    def at(self) -> str:
        """Where the entry stands in the document."""
        return f"/cushions/{self.index}"

    @property
    def cloths(self) -> tuple[str, ...]:
        """The ids of all cloths that the cover is cut from."""
        faces = tuple(face.cloth for _, face in self.cover.faces)
        return (*faces, self.cover.edge.cloth) if self.cover.edge.is_of_strips else faces


def read_cushion(index: int, values: Values, habits: Habits) -> Cushion:
    """The entry that these values of the document describe."""
    return Cushion(
        index=index,
        id=values["id"],
        name=values.get("name", ""),
        quantity=values["quantity"],
        mirrored=values.get("mirrored", 0),
        kind=values["kind"],
        size_from=values.get("size_from", "insert"),
        insert=_insert(values["insert"]),
        cover=_cover(values["kind"], values["cover"], habits),
    )


def _insert(values: Values) -> Insert:
    return Insert(
        shape=values["shape"],
        size=_measures(values),
        sides=tuple(values.get("sides", ())),
        diagonals=tuple(values.get("diagonals", ())),
        notches=tuple(values.get("notches", ())),
        again=_measures(values.get("again", {})),
        label=_measures(values.get("label", {})),
        fill=values.get("fill"),
        measured=values.get("measured", "insert"),
        clearance=values.get("clearance", 0),
    )


# What a pad is measured by, in the order it is told.
_MEASURES = ("width", "length", "diameter", "thickness")


def _measures(values: Values) -> Measures:
    return Measures(tuple((name, values[name]) for name in _MEASURES if name in values))


def _cover(kind: str, values: Values, habits: Habits) -> Cover:
    seam: int = values.get("seam", habits.seam)
    cloth = values["front"]["cloth"]
    faces = {part: _face({"cloth": cloth, **values.get(part, {})}, habits) for part in _faces_of(kind, values)}
    if "sides" in faces and faces["sides"].goes_on:
        # What goes on from it lies the same way round.
        faces["front"] = replace(faces["front"], turn="none")
    return Cover(
        smaller_by=_measures(values.get("smaller_by", {})),
        seam=seam,
        side_seam=values.get("side_seam", seam),
        seam_finish=values.get("seam_finish", "plain"),
        edge=_edge({"cloth": cloth, "rims": _rims(kind), **values.get("edge", {"kind": "plain"})}, habits),
        closure=_closure(values.get("closure", {"kind": "hand-sewn"}), habits),
        corners=_corners(values.get("corners", {"kind": "square"}), habits),
        boxing=_boxing(values.get("boxing", {})),
        ends=values.get("ends", "flat"),
        faces=(
            *faces.items(),
            *_parts_of(kind, values),
            *((f"layers/{layer}", _face(named, habits)) for layer, named in values.get("layers", {}).items()),
        ),
        layers=tuple(entry.name for entry in LAYERS if entry.name in values.get("layers", {})),
    )


def _faces_of(kind: str, values: Values) -> tuple[str, ...]:
    """The faces of this very cover: a bolster whose body is gathered over its ends has no other."""
    return ("front",) if kind == "bolster" and values.get("ends") == "gathered" else FACES_OF[kind]


def _parts_of(kind: str, values: Values) -> Iterator[tuple[str, Face]]:
    """The border or band of each face that has one, as a face of its own."""
    for part in _faces_of(kind, values):
        face = values.get(part, {})
        made = face.get("made", {})
        if made.get("kind") in ("border", "band"):
            yield f"{part}/made", Face(made.get("cloth", face["cloth"]))


def _boxing(values: Values) -> Boxing:
    return Boxing(
        kind=values.get("kind", "band"),
        returns=values.get("returns"),
        run=values.get("run", "across"),
    )


def _rims(kind: str) -> str:
    """Where an edge is made that does not say so: on both ends of a bolster, else at the front."""
    return "both" if kind == "bolster" else "front"


def _edge(values: Values, habits: Habits) -> Edge:
    return Edge(
        kind=values["kind"],
        rims=values["rims"],
        join=values.get("join", habits.trim_join if values["kind"] == "trimmed" else habits.piping_join),
        pack=values.get("pack"),
        hidden_joins={"none": 0, "one": 1}[values.get("hidden_joins", "none")],
        cord=values.get("cord", habits.cord),
        cords={"single": 1, "double": 2}[values.get("cords", "single")],
        cloth=values["cloth"],
        strip=values.get("strip"),
        joined=values.get("joined", "mitred"),
        shortest=values.get("shortest", habits.frill_strip if values["kind"] == "frilled" else habits.narrowest),
        thickness=values.get("thickness"),
        flange=values.get("flange", habits.flange),
        depth=values.get("depth", habits.frill_depth),
        gather=values.get("gather", "gathered"),
        fullness=values.get("fullness"),
        hem=values.get("hem", habits.frill_hem) if values.get("frill") == "hemmed" else None,
    )


def _closure(values: Values, habits: Habits) -> Closure:
    return Closure(
        kind=values["kind"],
        at=values.get("at"),
        side=values.get("side"),
        seam=values.get("seam"),
        opening=values.get("opening"),
        zip_length=values.get("length"),
        zip_seam=values.get("zip_seam", habits.zip_seam),
        overlap=values.get("overlap"),
        hem=values.get("hem", habits.hem),
    )


def _corners(values: Values, habits: Habits) -> Corners:
    # 1/2 in deep, starting at a quarter of the side: common practice, no standard exists.
    return Corners(
        kind=values["kind"],
        depth=values.get("depth", NM_PER_INCH // 2),
        run=values.get("run", Fraction(1, 4)),
        radius=values.get("radius", habits.radius),
    )


def _face(values: Values, habits: Habits) -> Face:
    offset, pattern = values.get("offset", {}), values.get("pattern", "free")
    return Face(
        cloth=values["cloth"],
        pattern=pattern,
        motif=values.get("motif"),
        offset_across=offset.get("across", 0),
        # A stripe runs up and down the face, so there is nothing to set off that way.
        offset_along=0 if pattern == "stripe-centred" else offset.get("along", 0),
        turn=values.get("turn", "quarter"),
        group=values.get("group"),
        joined=values.get("joined", "none"),
        join_pattern=values.get("join_pattern", "matched" if pattern in ("centred", "stripe-centred") else "free"),
        parts=_face_parts(values.get("made", {}), habits),
    )


def _face_parts(values: Values, habits: Habits) -> FaceParts:
    kind = values.get("kind", "plain")
    return FaceParts(
        kind=kind,
        width=values.get("width", habits.part_width),
        corners=values.get("corners", "mitred"),
        lies=values.get("lies", "across"),
        from_edge=values.get("from_edge", habits.part_width if kind == "inset" else None),
    )
