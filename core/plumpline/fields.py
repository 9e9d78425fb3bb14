"""Every field of the job document, once: the reader, the JSON Schema and the screens' tests all follow this table."""

from __future__ import annotations

from dataclasses import dataclass, field

FORMAT = "plumpline-job"
VERSION = 1

# The kinds of cover, each with the faces that are asked for.
FACES_OF = {"knife-edge": ("front", "back"), "boxed": ("front", "back", "sides"), "bolster": ("front", "sides")}
# The faces that have to say their cloth: the sides are cut from that of the front unless they say another.
OWN_CLOTH = ("front", "back")


@dataclass(frozen=True)
class Field:
    """One field: its name, the kind of value it holds, and what it means to a maker.

    `kind` is one of: `text`, `id`, `date` (a day as ISO 8601 text: "2026-07-10"),
    `length` (0 or more), `positive` (a length above 0), `signed` (a length that may be
    negative), `by_side` (one length for width and height, or an object of both), `grid` (a length or "0"), `share` (a
    fraction lost, from 0 up to but not including 1, as text), `rate` (a fraction that may reach 10, as text: "0.5" or
    "50 %"), `number` (of minutes or miles, 0 or more, as text), `flag` (true or false), `ratio` (from 1 to 10, as text
    or a number), `run` (a fraction of a side or a length), `reach` (a length above 0, or "all"), `count`
    (a whole number from 1), `choice`, `amount` (money as text), `currency`,
    `object`, `list`, `lengths` (one above 0 after the other, "" where the tape has not been laid yet), `diagonals` (two
    corners and a length each), `corner` (the number of one, from 0), `corners`, `ids`, `apart` (read by a door of its
    own, with a table of its own), `constant`.
    """

    name: str
    kind: str
    doc: str
    required: bool = False
    choices: tuple[str, ...] = ()
    fields: tuple[Field, ...] = field(default=())


OFFSET = (
    Field("across", "signed", "How far right of the centre of the face the motif is to stand."),
    Field("along", "signed", "How far above the centre of the face the motif is to stand."),
)

FACE = (
    Field("cloth", "id", "Which cloth this face is cut from.", required=True),
    Field(
        "pattern",
        "choice",
        "free: cut anywhere; alike: every panel shows the same place of the pattern; centred: a motif in the middle; "
        "stripe-centred: a stripe in the middle, upright, and up and down anywhere in the pattern.",
        choices=("free", "alike", "centred", "stripe-centred"),
    ),
    Field("motif", "id", "Which motif, or which stripe, stands in the middle of a centred face."),
    Field("offset", "object", "How far from the middle the motif is to stand; a stripe only across.", fields=OFFSET),
    Field("turn", "choice", "Narrows how this panel may be turned.", choices=("none", "half", "quarter")),
    Field("group", "id", "Alike panels of several covers that share a group show the same place."),
)

SIDES = (
    Field("cloth", "id", "Which cloth it is cut from, where that is not the cloth of the front."),
    Field(
        "pattern",
        "choice",
        f"{FACE[1].doc[:-1]}; match-front: boxing goes on with the pattern of the front over its top and bottom edge.",
        choices=(*FACE[1].choices, "match-front"),
    ),
    *FACE[2:],
)

JOINED = (
    Field(
        "joined",
        "choice",
        "How a face is joined where the cloth is too narrow for it: an equal piece at each end, or one at a side.",
        choices=("none", "both-ends", "one-side"),
    ),
    Field(
        "join_pattern",
        "choice",
        "Whether the pattern of a centred face is matched at its joins.",
        choices=("matched", "free"),
    ),
)

FILLINGS = ("feather", "down", "polyester", "hollow-fibre", "microbead", "foam-crumb", "firm", "foam", "own")

FIT = tuple(
    Field(filling, "length", f"How much smaller than its pad a cover is made for this filling: {filling}.")
    for filling in FILLINGS
)

AGAIN = (
    Field("width", "positive", "The second reading of the width."),
    Field("length", "positive", "The second reading of the height."),
    Field("diameter", "positive", "The second reading of the diameter."),
    Field("thickness", "positive", "The second reading of the thickness."),
)

LABEL = (
    Field("width", "positive", "The width its label says."),
    Field("length", "positive", "The height its label says."),
    Field("diameter", "positive", "The diameter its label says."),
    Field("thickness", "positive", "The thickness its label says."),
)

MADE = (
    Field(
        "kind",
        "choice",
        "plain: in one piece; border: a frame round a centre; band: a strip from edge to edge; inset: bought flat trim "
        "stitched on, in from the edge.",
        required=True,
        choices=("plain", "border", "band", "inset"),
    ),
    Field("cloth", "id", "Which cloth border or band are cut from, where that is not the cloth of the face."),
    Field("width", "positive", "How wide the border, the band or the trim is when it is finished."),
    Field("corners", "choice", "How the strips of a border meet at its corners.", choices=("mitred", "butted")),
    Field("lies", "choice", "Whether a band runs from side to side, or upwards.", choices=("across", "upright")),
    Field("from_edge", "length", "How far in trim lies all round, or a band from the bottom or the left edge."),
)

# The faces that may be made up of several pieces.
WHOLE = (*FACE, *JOINED, Field("made", "object", "The parts a face is made of.", fields=MADE))

FRONT = (
    FACE[0],
    Field(
        "pattern",
        "choice",
        f"{FACE[1].doc[:-1]}; flow: it goes on where the front before it ends, in the order of the cushions.",
        choices=(*FACE[1].choices, "flow"),
    ),
    *WHOLE[2:],
)

INSERT = (
    Field(
        "shape", "choice", "The shape of the pad.", required=True, choices=("rectangle", "round", "bolster", "polygon")
    ),
    Field("width", "positive", "Side to side, pressed flat, seam to seam."),
    Field("length", "positive", "The height as it stands, seam to seam; from end to end of a bolster."),
    Field("diameter", "positive", "Across the middle of a round, pressed flat, seam to seam; across a bolster's end."),
    Field("thickness", "positive", "How high a boxed pad stands on its plate."),
    Field("sides", "lengths", "The sides of a straight-sided outline, anticlockwise from its front left corner."),
    Field(
        "diagonals", "diagonals", "From corner to corner, each as [corner, corner, length]; 0 is the front left one."
    ),
    Field("notches", "corners", "The corners that turn inwards, counted like those of the diagonals."),
    Field(
        "fill",
        "choice",
        "The filling, which decides the rule of fit.",
        choices=FILLINGS,
    ),
    Field(
        "measured",
        "choice",
        "What the tape was laid on.",
        choices=("insert", "foam", "label", "old-cover", "opening"),
    ),
    Field("clearance", "length", "How much smaller than its opening the finished cover is to be."),
    Field("again", "object", "A second reading of the same measures.", fields=AGAIN),
    Field("label", "object", "The size the pad was sold as, beside the one that was taped.", fields=LABEL),
)

EDGE = (
    Field(
        "kind",
        "choice",
        "plain: a seam; piped: cord in a strip of cloth; flanged: the panels go on flat beyond the pad; "
        "frilled: a strip of cloth in folds; trimmed: bought trim, sewn in with the seam.",
        required=True,
        choices=("plain", "piped", "flanged", "frilled", "trimmed"),
    ),
    Field("rims", "choice", "Which of two rims it is on: the front alone, or both.", choices=("front", "both")),
    Field("join", "length", "What each ring, and each hidden join in it, takes more than it goes round."),
    Field("cord", "positive", "How thick the cord of the piping is."),
    Field("cords", "choice", "One cord in the strip, or two side by side.", choices=("single", "double")),
    Field("cloth", "id", "Which cloth its strips are cut from, where that is not the cloth of the front."),
    Field(
        "strip",
        "choice",
        "How its strips lie: along the threads, or on the bias at 45°.",
        choices=("straight", "bias"),
    ),
    Field("joined", "choice", "How strips are joined: mitred, or straight across.", choices=("mitred", "straight")),
    Field("shortest", "length", "The shortest strip worth joining."),
    Field("thickness", "length", "How thick the cloth around the cord is, where it counts."),
    Field("flange", "positive", "How far a flange reaches beyond the pad on every side."),
    Field("depth", "positive", "How far a frill stands out."),
    Field("gather", "choice", "How a frill is drawn up.", choices=("gathered", "pleated")),
    Field("fullness", "ratio", "How many lengths of strip go into one of the edge."),
    Field("frill", "choice", "A frill of doubled cloth, or single with a hem.", choices=("doubled", "hemmed")),
    Field("hem", "length", "What the hem of a single frill takes."),
    Field("pack", "positive", "The length of one pack, where it is sold in packs."),
    Field("hidden_joins", "choice", "How many hidden joins a ring may have.", choices=("none", "one")),
)

CLOSURE = (
    Field(
        "kind",
        "choice",
        "How the cover is closed.",
        required=True,
        choices=("hand-sewn", "zip", "envelope", "buttons", "ties", "open"),
    ),
    Field(
        "at",
        "choice",
        "Where it is closed: in the bottom seam, across the back or in the boxing.",
        choices=("bottom", "back", "boxing"),
    ),
    Field("side", "corner", "The side of a straight-sided outline that it lies on, named by the corner it starts at."),
    Field("opening", "positive", "The length left open to fill the cover."),
    Field("seam", "positive", "The seam allowance at the closing edge, where it differs."),
    Field("length", "positive", "The length of the zip."),
    Field("zip_seam", "positive", "The seam allowance at the zip."),
    Field("overlap", "positive", "How far the two pieces of a back lie over each other when it is closed."),
    Field("hem", "length", "What the hem of each open edge takes, however often it is folded."),
)

CORNERS = (
    Field("kind", "choice", "The corners of the cover.", required=True, choices=("square", "tapered", "rounded")),
    Field("depth", "positive", "How far the raw corner is moved in, on both edges."),
    Field("radius", "positive", "How far the finished corner is rounded."),
    Field("run", "run", "Where the taper starts, from the raw corner: a fraction of the side or a length."),
)

BOXING = (
    Field(
        "kind",
        "choice",
        "band: in one length as far as the cloth allows; front-and-sides: a piece for each side, joined at corners.",
        choices=("band", "front-and-sides"),
    ),
    Field("returns", "length", "How far a zip band comes round each of the two corners at its ends."),
    Field(
        "run",
        "choice",
        "across: it lies across the cloth, joined where that is too narrow; along: in one length along the roll.",
        choices=("across", "along"),
    ),
)

SMALLER_BY = (
    Field("width", "length", "How much smaller than the pad the cover is over the whole width."),
    Field("length", "length", "How much smaller than the pad the cover is over the whole height."),
    Field("diameter", "length", "How much smaller than the pad the cover is over the whole diameter."),
)

LAYER = (Field("cloth", "id", "Which cloth it is cut from.", required=True), JOINED[0])

LAYERS = (
    Field("lining", "object", "A lining cut like the cover and sewn in with it.", fields=LAYER),
    Field("interlining", "object", "An interlining under the faces, cut to the stitching line.", fields=LAYER),
    Field("protector", "object", "A zipped inner cover that keeps the pad clean.", fields=LAYER),
    Field("wrap", "object", "A slip-cloth round the foam, so that the cover slides over it.", fields=LAYER),
)

COVER = (
    Field(
        "smaller_by",
        "by_side",
        "How much smaller than the pad the cover is, once over each whole measure; or each by itself.",
        fields=SMALLER_BY,
    ),
    Field("seam", "positive", "The seam allowance of every edge."),
    Field("side_seam", "positive", "The seam allowance of the two sides, where it differs."),
    Field(
        "seam_finish",
        "choice",
        "The allowances: left; each edge overlocked before it is sewn; trimmed once sewn; or the two then overlocked.",
        choices=("plain", "overlocked", "trimmed", "overlocked-together"),
    ),
    Field("edge", "object", "The edge of the cover.", fields=EDGE),
    Field("closure", "object", "How the cover is closed.", fields=CLOSURE),
    Field("corners", "object", "The corners of the cover.", fields=CORNERS),
    Field("boxing", "object", "What the boxing of a boxed cover is made of.", fields=BOXING),
    Field("ends", "choice", "The ends of a bolster: flat discs, or its body gathered.", choices=("flat", "gathered")),
    Field("front", "object", "The front panel, or the body of a bolster.", required=True, fields=FRONT),
    Field("back", "object", "The back panel, of every cover that has one.", fields=WHOLE),
    Field("sides", "object", "The boxing around a boxed cover, or the ends of a bolster.", fields=SIDES),
    Field("layers", "object", "What lies between the cover and its filling.", fields=LAYERS),
)

CUSHION = (
    Field("id", "id", "A short name that stays the same.", required=True),
    Field("name", "text", "What the maker calls it."),
    Field("quantity", "count", "How many of this cover.", required=True),
    Field("mirrored", "count", "How many of them are made the other way round, as one of a left and right pair is."),
    Field("kind", "choice", "The kind of cover.", required=True, choices=tuple(FACES_OF)),
    Field("size_from", "choice", "Whether the pad or the finished size was given.", choices=("insert", "finished")),
    Field("insert", "object", "The pad, or the finished size wanted.", required=True, fields=INSERT),
    Field("cover", "object", "How the cover is made.", required=True, fields=COVER),
)

REPEAT = (
    Field("across", "length", "To the next column of motifs, even if it stands lower."),
    Field("along", "length", "To the next motif in the same column."),
    Field("drop", "length", "How much further along the next column stands; half the repeat is a half-drop."),
)

MOTIF = (
    Field("id", "id", "A short name that stays the same.", required=True),
    Field("name", "text", "What the maker calls it."),
    Field("across", "length", "From the left edge of the cloth, selvedge included.", required=True),
    Field("along", "length", "From the squared cut end (start measured), else from any line across.", required=True),
)

FLAW = (
    Field("across", "length", "From the left edge of the cloth.", required=True),
    Field("along", "length", "From the cut end.", required=True),
    Field("width", "positive", "How wide it is.", required=True),
    Field("length", "positive", "How long it is.", required=True),
)

SLANT = (
    Field("start", "signed", "How much further along the right edge begins than the left one, at the cut end."),
    Field("end", "signed", "How much further along the right edge ends than the left one, at the other end."),
)

PIECE_FLAW = (
    Field(
        "corner",
        "choice",
        "The corner of the piece it is cut out of, seen from the cut end; left out, it lies anywhere on the piece.",
        choices=("start-left", "start-right", "end-left", "end-right"),
    ),
    Field("cut", "choice", "Whether a corner is cut out square, or off on the slant.", choices=("square", "slanting")),
    Field("across", "length", "From the left edge of the piece."),
    Field("along", "length", "From the squared line at its cut end."),
    Field("width", "positive", "How wide it is."),
    Field("length", "reach", "How long it is; all: a crease, or a fade, down the whole piece."),
)

PIECE = (
    Field("left", "positive", "How long its left edge is, seen from the cut end."),
    Field("right", "positive", "How long its right edge is."),
    Field("length", "positive", "How long its longer edge is, where the two are not measured each."),
    Field("width", "positive", "How wide it is, edge to edge, where that is not the width of the cloth."),
    Field("slant", "object", "How far each end runs out of square over the width.", fields=SLANT),
    Field("flaws", "list", "Places of the piece no panel may touch, and corners cut out of it.", fields=PIECE_FLAW),
    Field("motif_along", "length", "From the squared line at its cut end to the first point of the first motif."),
)

SQUARE = (
    Field("before", "positive", "How far apart its marks were made before the wash, along and, unless said, across."),
    Field("before_across", "positive", "How far apart its marks were made across, where that is another measure."),
    Field("along", "positive", "How far apart its marks lie after the wash, along the cloth."),
    Field("across", "positive", "How far apart its marks lie after the wash, across the cloth."),
)

SHRINKAGE = (
    Field("across", "share", "Fraction of the width lost in the first wash."),
    Field("along", "share", "Fraction of the length lost in the first wash."),
    Field("square", "object", "A test square that was marked, washed and measured again.", fields=SQUARE),
)

BOUGHT = (
    Field("on", "date", "The day it was cut."),
    Field("length", "positive", "How long the shop said it cut it."),
    Field("left", "positive", "How long its left edge is, as measured."),
    Field("right", "positive", "How long its right edge is, as measured."),
    Field("width", "positive", "How wide it is, edge to edge, as measured."),
    Field("paid", "amount", "What was paid for it, in the currency of the cloth's price."),
    Field("batch", "text", "The batch, or dye lot, on its label."),
    Field("roll", "text", "The number of the roll."),
    Field("cut_by", "text", "Who cut it."),
)

PRICE = (
    Field("amount", "amount", "The price of one unit of length.", required=True),
    Field("per", "choice", "The unit of length the price is for.", required=True, choices=("yd", "m")),
    Field("currency", "currency", "An ISO 4217 code.", required=True),
)

CLOTH = (
    Field("id", "id", "A short name that stays the same.", required=True),
    Field("name", "text", "What the maker calls it."),
    Field("width", "positive", "The bolt's true width, edge to edge."),
    Field("selvedge", "length", "What cannot be used at each side."),
    Field(
        "direction",
        "choice",
        "one-way: nothing may be turned; two-way: half turns; any: quarter turns too.",
        choices=("one-way", "two-way", "any"),
    ),
    Field(
        "up",
        "choice",
        "Where the top of the pattern or nap points on the cloth, seen from the cut end.",
        choices=("away", "toward", "left", "right"),
    ),
    Field(
        "weight",
        "choice",
        "How heavy the cloth is, which decides needle, stitch and thread.",
        choices=("sheer", "light", "medium", "heavy", "very-heavy"),
    ),
    Field("repeat", "object", "The repeat of the pattern.", fields=REPEAT),
    Field("motifs", "list", "Points of the pattern that a face can be centred on.", fields=MOTIF),
    Field(
        "start",
        "choice",
        "Where the pattern stands at the cut end: measured, chosen when it is cut, or unknown.",
        choices=("measured", "choose", "unknown"),
    ),
    Field("squaring", "length", "What both ends together lose by being squared."),
    Field("shrinkage", "object", "What the first wash takes.", fields=SHRINKAGE),
    Field(
        "wash",
        "choice",
        "When the cloth is washed.",
        choices=("before-cutting", "after-making"),
    ),
    Field("flaws", "list", "Places no panel may touch; only with start measured.", fields=FLAW),
    Field("sold_by", "positive", "The shop's selling step."),
    Field("price", "object", "What the cloth costs.", fields=PRICE),
    Field("instead_of", "id", "The cloth that it may take the place of: another bolt that was looked at."),
    Field("bought", "list", "What was cut of it in the shop, each length, and paid.", fields=BOUGHT),
    Field("approved", "date", "The day the client approved that it is cut; left out: not yet."),
    Field("piece", "object", "A length in hand, of which is asked whether it is enough.", fields=PIECE),
)

# Where a price is by a length, the length it is for.
BY_LENGTH = ("ft", "yd", "m")

BY_DISTANCE = (
    Field("amount", "amount", "What one of them costs the client.", required=True),
    Field("per", "choice", "The unit of distance it is for.", required=True, choices=("mi", "km")),
)

BY_CLOTH = (
    Field("amount", "amount", "What one of them costs the client.", required=True),
    Field("per", "choice", "The unit of length it is for.", required=True, choices=("yd", "m")),
)

RATES = (
    Field("hour", "amount", "What an hour of the maker's work costs."),
    Field("overhead", "amount", "What the workroom costs in each hour of work: rent, power, machines."),
    Field("handling", "object", "What cloth the client brings costs, for its length.", fields=BY_CLOTH),
    Field("travel", "object", "What a mile or a kilometre on the road costs.", fields=BY_DISTANCE),
)

MINUTES = (Field("minutes", "number", "How many minutes one takes.", required=True),)

MINUTES_BY_LENGTH = (
    *MINUTES,
    Field("per", "choice", "The length that the minutes are for.", required=True, choices=BY_LENGTH),
)

# The work there is to price, in the order of the bench; what is counted by its length has its minutes by it.
OPERATIONS = (
    Field("consult", "object", "Talking the job through and measuring: once.", fields=MINUTES),
    Field("order", "object", "Ordering and checking a cloth: each.", fields=MINUTES),
    Field("press_cloth", "object", "Pressing the cloth before it is cut, by its length.", fields=MINUTES_BY_LENGTH),
    Field("square", "object", "Squaring the ends of a cloth: each cloth.", fields=MINUTES),
    Field("place", "object", "Placing a panel by its pattern: each such panel.", fields=MINUTES),
    Field("cut", "object", "Cutting out: each panel.", fields=MINUTES),
    Field("overlock", "object", "Overlocking, by the length of the edges.", fields=MINUTES_BY_LENGTH),
    Field("make_piping", "object", "Making piping, by its length.", fields=MINUTES_BY_LENGTH),
    Field("attach_piping", "object", "Attaching piping or trim, by the edge.", fields=MINUTES_BY_LENGTH),
    Field("frill", "object", "Hemming, gathering and attaching a frill, by the edge.", fields=MINUTES_BY_LENGTH),
    Field("zip", "object", "Putting in a zip: each.", fields=MINUTES),
    Field("close", "object", "Making any other closure: each.", fields=MINUTES),
    Field("make_up", "object", "Making up, by the length of the seams.", fields=MINUTES_BY_LENGTH),
    Field("corners", "object", "Trimming and turning corners: each.", fields=MINUTES),
    Field("fill", "object", "Filling: each cover.", fields=MINUTES),
    Field("press", "object", "Pressing what is made: each cover.", fields=MINUTES),
    Field("label", "object", "Sewing in the label: each cover.", fields=MINUTES),
    Field("pack", "object", "Packing: each cover.", fields=MINUTES),
    Field("deliver", "object", "Delivering: once.", fields=MINUTES),
    Field("fit", "object", "Fitting at the client's: each cover.", fields=MINUTES),
)

EACH = (Field("amount", "amount", "What one costs the maker.", required=True),)

EACH_OR_BY_LENGTH = (
    *EACH,
    Field("per", "choice", "Whether that is for one of them, or for a length.", choices=("each", *BY_LENGTH)),
)

# What is bought beside the cloth, by the kind that the list of materials gives it.
PRICES = (
    Field("thread", "object", "A spool of thread.", fields=EACH),
    Field("needle", "object", "A machine needle.", fields=EACH),
    Field("zip", "object", "A zip, or zip chain by the length.", fields=EACH_OR_BY_LENGTH),
    Field("trim", "object", "A pack of trim, or trim by the length.", fields=EACH_OR_BY_LENGTH),
    Field("cord", "object", "Piping cord by the length, or for each ring.", fields=EACH_OR_BY_LENGTH),
    Field("buttons", "object", "A button.", fields=EACH),
    Field("ties", "object", "Tape for ties by the length, or for each tie.", fields=EACH_OR_BY_LENGTH),
    Field("label", "object", "A label to sew in.", fields=EACH),
    Field("pad", "object", "A pad.", fields=EACH),
    Field("filling", "object", "The filling of one pad.", fields=EACH),
)

MARKUP = (
    Field("cloth", "rate", "What is put on the price of cloth."),
    Field("materials", "rate", "What is put on the price of all else that is bought."),
    Field("work", "rate", "What is put on the hours and the overhead."),
)

EXTRA = (
    Field("on", "flag", "Whether it is charged in this job."),
    Field("amount", "amount", "What it adds for each cover that it is for."),
    Field("rate", "rate", "What it adds, as a part of the work on those covers."),
)

EXTRAS = (
    Field("piping", "object", "Covers with piping.", fields=EXTRA),
    Field("matching", "object", "Covers whose pattern is matched or centred.", fields=EXTRA),
    Field("velvet", "object", "Covers in velvet, or any cloth that is slow to sew.", fields=EXTRA),
    Field("contrast", "object", "Covers cut from more than one cloth that shows.", fields=EXTRA),
    Field("rush", "object", "All covers, wanted sooner.", fields=EXTRA),
)

ITEM = (
    Field("text", "text", "What it is."),
    Field("amount", "amount", "What one costs: the maker if it is bought, the client if it is made.", required=True),
    Field("count", "count", "How many."),
    Field("kind", "choice", "Something bought, with the mark-up of materials, or work.", choices=("bought", "work")),
)

TRAVEL = (
    Field("distance", "number", "How far one way there and back is."),
    Field("trips", "count", "How often it is driven."),
)

DISCOUNT = (
    Field("rate", "rate", "As a part of all lines."),
    Field("amount", "amount", "As an amount."),
)

TAX = (
    Field("rate", "rate", "The rate of the tax."),
    Field("included", "flag", "Whether the prices entered here have the tax in them."),
    Field("rounding", "choice", "Whether it is rounded line by line or once.", choices=("line", "document")),
)

DEPOSIT = (
    Field("materials", "rate", "Which part of the materials is paid beforehand."),
    Field("making", "rate", "Which part of all else is paid beforehand."),
)

# The price of a job, read by `price` alone: no plan looks at it.
QUOTE = (
    Field("currency", "currency", "The currency of the price; left out, that of the cloths."),
    Field("rates", "object", "What the maker's hours and ways cost.", fields=RATES),
    Field("operations", "object", "The maker's own minutes for each piece of work.", fields=OPERATIONS),
    Field("prices", "object", "What is paid for all that is bought beside the cloth.", fields=PRICES),
    Field("markup", "object", "What is put on top of what things cost.", fields=MARKUP),
    Field("client_cloths", "ids", "The cloths that the client brings."),
    Field("extras", "object", "What is charged beside, switched on for this job.", fields=EXTRAS),
    Field("items", "list", "Anything else on the bill.", fields=ITEM),
    Field("travel", "object", "The way to the client.", fields=TRAVEL),
    Field("minimum", "amount", "The least that a job is charged."),
    Field("discount", "object", "What is taken off.", fields=DISCOUNT),
    Field("tax", "object", "The tax on the price.", fields=TAX),
    Field("deposit", "object", "What is paid before the work begins.", fields=DEPOSIT),
)

JOB = (
    Field("format", "constant", "Always plumpline-job.", required=True, choices=(FORMAT,)),
    Field("version", "constant", "The version of this document.", required=True, choices=(str(VERSION),)),
    Field("id", "id", "A short name that stays the same.", required=True),
    Field("name", "text", "What the maker calls the job."),
    Field("client", "text", "Whom the job is for."),
    Field("notes", "text", "Anything worth remembering."),
    Field("units", "choice", "The units answers are written in.", required=True, choices=("in", "cm", "mm")),
    Field("fit", "object", "The workroom's own rule of fit, by filling.", fields=FIT),
    Field("grid", "grid", "Cut sizes are rounded up to this; 0 for none."),
    Field("cushions", "list", "The covers to make.", required=True, fields=CUSHION),
    Field("cloths", "list", "The cloths they are cut from.", required=True, fields=CLOTH),
    Field("quote", "apart", "Rates and extras of the price.", fields=QUOTE),
)
