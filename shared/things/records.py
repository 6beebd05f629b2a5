"""Records: what the kit holds. Each kind of thing is declared once: typed, stored, linked and read like a form.

A record's built-in rows live in the catalogue as typed text, so that a row, a kit entry and a link read the same way.
"""
from ..catalogue import fillers, systems, tools, vessels
from ..catalogue.marks import UNMEASURED
from ..catalogue.measuring import OWN_ERROR
from ..catalogue.ratios import HEAVIEST, LIGHTEST, STOP
from ..equations.shelf import day_number
from ..equations.weighing import furthest_off
from ..forms.declared import alike
from ..forms.errors import InputError
from ..forms.inputs import Choice, Number, Parts, Text
from ..forms.late import late
from ..forms.rows import in_marks
from ..forms.types import Found, Function, Said
from ..words.languages import Reader
from ..words.messages import fact, message, number, quantity, row
from ..words.messages import typed as as_typed
from ..words.numbers import UP, shown
from ..words.texts import said
from . import kept_words, label_cure
from .statements import codes

LABEL_FOLD, SHELF_FOLD = "kind-system-fold", "kind-system-shelf"
UNSAID = "kind-unsaid"
LABEL, ROW, LINK = "label", "row", "link"
AS_TYPED = "kind-origin.typed"  # what is said where nobody said whence
# where the figures of a thing are from; one that says nothing stands as it was typed, also what an earlier build kept
ORIGIN = Choice("origin", "kind-origin", ((LABEL, "kind-origin.label"), (ROW, "kind-origin.row"),
                                          (LINK, "kind-origin.link")), unsaid=AS_TYPED, fold="kind-origin.fold",
                learned=True, stays=True, help="kind-origin.help")

# what a built-in row is called, as it is said; its name as text is what a thing that starts from it keeps
NAMES = {
    "system": {"1-1": "called-system.one", "2-1": "called-system.two", "3-1": "called-system.three",
        "4-1": "called-system.four", "5-1": "called-system.five"},
    "scale": {"1g": "called-scale.kitchen", "0.1g": "called-scale.fine", "5g": "called-scale.old"},
    "pumps": {"equal": "called-pumps.equal"},
    "cup": {"small": "called-cup.small", "medium": "called-cup.medium", "tin": "called-cup.tin",
        "tub": "called-cup.tub"},
    "graduated": {"30mL": "called-graduated.medicine", "400mL": "called-graduated.mixing",
        "1L": "called-graduated.large"},
    "syringes": {"60-20": "called-syringes.unequal", "10-10": "called-syringes.equal"},
    "filler": {"wood-flour": "row-filler.wood-flour", "silica": "row-filler.silica", "cotton": "row-filler.cotton",
        "milled-glass": "row-filler.milled-glass", "glass-spheres": "called-filler.glass-spheres",
        "phenolic-balloons": "row-filler.phenolic-balloons", "talc": "row-filler.talc"},
    "room": {"shed": "called-room.shed", "garage": "called-room.garage", "tent": "called-room.tent"},
    "fan": {"small": "called-fan.small", "box": "called-fan.box"},
    "people": {"1": "kind-people.alone", "2": "kind-people.two", "3": "kind-people.three", "4": "kind-people.four",
        "5": "kind-people.five", "6": "kind-people.six"},
    "roll": {"tape": "called-roll.tape", "cloth": "called-roll.cloth", "ply": "called-roll.ply"},
}


class Record:
    """A kind of thing in the kit. rows: (id, label, mark, pairs of field and typed text)

    own: fields that make it another thing than a built-in row: with one of them typed, nothing of the row is taken over
    shows: of a tool that shows figures, the field whose unit they are in
    whence: what a thing that came by a link says of it, as text by field
    before: {id: text} where a phone may know a row by its English label of then: another than its name; None: by none
    """

    def __init__(self, name: str, label: str, fields: tuple, rows: "list | tuple" = (),
                 check: "Function | None" = None, own: "str | tuple" = (), shows: str = "",
                 before: "dict | None" = None) -> None:
        self.name, self.label, self.fields, self.rows, self.check = name, label, fields + (ORIGIN,), rows, check
        self.own, self.shows, self.before = own, shows, before
        self.whence = {ORIGIN.name: LINK}

    def started(self, row_id: str, row: dict, who: Reader) -> dict:
        """The typed text of a thing that starts from a built-in row, as `who` reads and types. row: pairs of field and
        text"""
        typed = in_marks(self.fields, dict(row), who)
        called = NAMES.get(self.name, {}).get(row_id)
        if called:
            typed["name"] = said(called, who)
        return dict(typed, **{ORIGIN.name: ROW})

    def was(self, row_id: str, label: str) -> str:
        """By which label an earlier build kept a row, "" where that is the label it has. label: as it is said"""
        name = "" if self.before is None else self.before.get(row_id) or self.row(row_id)["name"]
        return "" if name == label else name

    def is_another(self, row: dict, typed: dict) -> bool:
        """Whether what was typed over a built-in row is another thing than the row. row, typed: text by field"""
        return any([name in typed and not alike(typed[name], row.get(name)) for name in self.own])

    def row(self, row_id: str) -> Found:
        """The typed text of a built-in row, or None."""
        for known, _, _, typed in self.rows:
            if known == row_id:
                return dict(typed)
        return None

    def called(self, thing: dict) -> Said:
        """What a thing is called, as it is said; "" where it has no name. thing: its values"""
        row = self.row(thing["id"]) if thing.get("id") else None
        if row and row.get("name") and row["name"] == thing["name"]:
            return NAMES[self.name][thing["id"]]
        return as_typed(thing["name"]) if thing["name"] else ""

    def known_as(self, name: str) -> Said:
        """How a kept name is said: that of a built-in row in the reader's language, any other as typed."""
        for known, _, _, typed in self.rows:
            if dict(typed).get("name") == name:
                return NAMES[self.name][known]
        return as_typed(name)

    def figure(self, row_id: str, name: str) -> Found:
        """A figure of a built-in row [SI]."""
        field = dict([(one.name, one) for one in self.fields])[name]
        return field.read(self.row(row_id)[name], name, {"units": "metric", "_understood": [], "_tree": {}})

    def from_memory(self, values: dict, *names: str) -> bool:
        """Whether these fields still stand word for word as in a row from memory or of our own, also in a thing
        that started from it: what was typed over is the builder's own."""
        tree = values["_tree"]
        for _, _, mark, typed in self.rows:
            row = dict(typed)
            if mark in UNMEASURED and all([name in row and alike(tree.get(name), row[name]) for name in names]):
                return True
        return False


def check_system(values: dict) -> None:
    """The label's own figures must fit each other: some ratio, and as many densities as parts."""
    weight, volume = values["by_weight"], values["by_volume"]
    if not weight and not volume:
        raise InputError("by_weight", "kind-system-no-ratio")
    count = len(weight or volume)
    if weight and volume and len(volume) != count:
        raise InputError("by_volume", "kind-system-other-count")
    for field, label in (("densities", "kind-system-densities"), ("weighed", "kind-system-weighed"),
                         ("on_shelf", "kind-system-left")):
        if values[field] and len(values[field]) != count:
            raise InputError(field, message("field-refused", label=label, why="kind-system-each"))
    check_agrees(values)
    codes(values["statements"])
    for name in ("made", "opened"):
        if values[name] and day_number(values[name]) is None:
            raise InputError(name, "kind-system-made.like")
    rows = late("trials").read_trials(values["trials"]) if values["trials"] else []
    if values["timings"]:
        timed = late("own_timings").read_timings(values["timings"])
        rows += [dict(row, place=row["place"] + len(rows)) for row in timed]
    values["timed"] = tuple(rows)


def relative_densities(system: dict) -> tuple:
    """Densities of the parts to each other [any unit], or (): of equal volumes that were weighed before those typed."""
    return system.get("weighed") or system["densities"]


def label_apart(system: dict) -> tuple:
    """How far a label's two ratios are apart by its densities: (place of the part, how far [-]), to the first part.

    system: values of SYSTEM that give parts by weight, by volume and densities; the larger way round counts
    >>> label = {"by_weight": (100, 30), "by_volume": (3, 1), "densities": (1150, 980)}
    >>> place, apart = label_apart(label)  # 30/0.98 to 100/1.15 is 1.0561 to 3
    >>> place, round(apart, 4)
    (1, 0.0561)
    """
    derived = [w / rho for w, rho in zip(system["by_weight"], relative_densities(system))]
    found = []
    for one, other in ((derived, system["by_volume"]), (system["by_volume"], derived)):
        place, off = furthest_off(one, other)
        found.append((abs(off), place))
    apart, place = found[0] if found[0][0] >= found[1][0] else found[1]
    return place, apart


def check_agrees(system: dict) -> None:
    """A label whose two ratios are further apart than any pour may be off gives no figure until one is put right.

    Where the densities are not known, the two ratios give the densities of the parts to the first: liquids of a resin
    system lie between LIGHTEST and HEAVIEST of each other.
    """
    if not (system["by_weight"] and system["by_volume"]):
        return
    if relative_densities(system):
        place, apart = label_apart(system)
        if apart > (system["tolerance"] or STOP) + 1e-9:
            raise InputError("by_volume", message("kind-system-apart", part=place + 1, off=quantity(apart, "%", UP, 1)))
        return
    ratios = [w / v for w, v in zip(system["by_weight"], system["by_volume"])]
    for place, ratio in enumerate(ratios):
        if not LIGHTEST <= ratio / ratios[0] <= HEAVIEST:
            raise InputError("by_volume", message("kind-system-too-dense", part=place + 1,
                                                  times=number(shown(ratio / ratios[0], 2))))


# what stands on one's own shelf makes no other system, and goes with no link
OWN_SHELF: dict = {"fold": SHELF_FOLD, "learned": True, "private": True}
SYSTEM = Record("system", "kind-system", (
    Text("name", "kind-name", default=""),
    Parts("by_weight", "kind-system-by-weight", optional=True, help="kind-system-by-weight.help"),
    Parts("by_volume", "kind-system-by-volume", optional=True, help="kind-system-by-volume.help"),
    Parts("densities", "kind-system-densities", unit="g/mL", low=0.3, high=4, optional=True,
          help="kind-system-densities.help"),
    Parts("weighed", "kind-system-weighed", unit="g", low=0, high=10000, optional=True,
          help="kind-system-weighed.help"),
    Text("parts", "kind-system-parts", stands=row(["part-resin", "part-hardener"], " : "), fold=LABEL_FOLD,
         help="kind-system-parts.help"),
    Number("tolerance", "kind-system-tolerance", unit="%", low=0.01, high=20, optional=True,
           fold=LABEL_FOLD),
    Number("eew", "kind-system-eew", unit="g/eq", low=50, high=5000, optional=True, fold=LABEL_FOLD,
           help="kind-system-eew.help"),
    Number("ahew", "kind-system-ahew", unit="g/eq", low=5, high=2000, optional=True,
           fold=LABEL_FOLD),
    Choice("speed", "kind-system-speed", (
        ("fast", "kind-system-speed.fast"), ("medium", "kind-system-speed.medium"), ("slow", "kind-system-speed.slow")),
        unsaid=UNSAID, fold=LABEL_FOLD),
    Number("pot_time", "kind-system-pot-time", unit="min", low=1, high=1440, optional=True, fold=LABEL_FOLD),
    Number("pot_mass", "kind-system-pot-mass", unit="g", low=5, high=10000, optional=True, fold=LABEL_FOLD),
    Number("pot_temperature", "kind-system-pot-temperature", unit="degC", low=0, high=45, optional=True,
           fold=LABEL_FOLD),
    Choice("pot_meaning", "kind-system-pot-meaning", (
        ("open", "kind-system-pot-meaning.open"), ("gel", "kind-system-pot-meaning.gel"),
        ("work", "kind-system-pot-meaning.work")), default="open", fold=LABEL_FOLD),
    Number("film_time", "kind-system-film-time", unit="min", low=1, high=2880, optional=True, fold=LABEL_FOLD),
    Number("lowest", "kind-system-lowest", unit="degC", low=-10, high=40, optional=True, fold=LABEL_FOLD),
    Text("timings", "kind-system-timings", most=500, keys=kept_words.TIMINGS, spelt=kept_words.SPELT,
         fold=LABEL_FOLD, learned=True,
         help="kind-system-timings.help"),
    Text("trials", "kind-system-trials", most=400, keys=kept_words.TRIALS, spelt=kept_words.SPELT,
         fold=LABEL_FOLD, learned=True,
         help="kind-system-trials.help"),
    Text("lot", "kind-system-lot", fold=LABEL_FOLD),
    Text("statements", "kind-system-statements", most=200, fold=LABEL_FOLD, help="kind-system-statements.help"),
    Parts("on_shelf", "kind-system-left", unit="g", low=0, high=1000000, optional=True, help="kind-system-left.help",
          **OWN_SHELF),
    Text("made", "kind-system-made", most=10, help="kind-system-made.like", **OWN_SHELF),
    Number("shelf_life", "kind-system-shelf-life", low=1, high=120, whole=True, optional=True, **OWN_SHELF),
    Text("opened", "kind-system-opened", most=10, **OWN_SHELF),
    Number("open_life", "kind-system-open-life", low=1, high=120, whole=True, optional=True, **OWN_SHELF),
) + label_cure.FIELDS, systems.SYSTEMS, check_system, own=("by_weight", "by_volume"))

SCALE = Record("scale", "kind-scale", (
    Text("name", "kind-name"),
    Number("step", "kind-scale-step", unit="g", low=0.001, high=100),
    Number("most", "kind-scale-most", unit="g", low=10, high=200000, optional=True),
    # three of the coarsest steps: what a scale may be off in service
    Number("own_error", "kind-scale-own-error", unit="g", low=0, high=300, optional=True,
           help=message("kind-scale-own-error.help", share=fact("%", OWN_ERROR))),
), tools.SCALES, own=("step",), shows="step")


def check_pumps(values: dict) -> None:
    """A pump set is known by its strokes or by ten of them weighed."""
    if not values["strokes"] and not values["ten_strokes"]:
        raise InputError("strokes", "kind-pumps-no-strokes")


PUMPS = Record("pumps", "kind-pumps", (
    Text("name", "kind-name"),
    Parts("strokes", "kind-pumps-strokes", unit="mL", low=0, high=1000, optional=True,
          help="kind-pumps-strokes.help"),
    Parts("ten_strokes", "kind-pumps-ten-strokes", unit="g", low=0, high=10000, optional=True,
          help="kind-pumps-ten-strokes.help"),
), tools.PUMPS, check_pumps, own=("strokes", "ten_strokes"))

CUP = Record("cup", "kind-cup", (
    Text("name", "kind-name"),
    Number("bottom", "kind-cup-bottom", unit="mm", low=5, high=1000),
    Number("top", "kind-cup-top", unit="mm", low=5, high=1000),
    Number("height", "kind-cup-height", unit="mm", low=5, high=1000, help="kind-cup-height.help"),
), vessels.CUPS, own=("bottom", "top", "height"))


def check_graduated(values: dict) -> None:
    """A mark beyond the rim measures nothing."""
    if values["step"] > values["holds"]:
        raise InputError("step", "kind-graduated-step.too-far")


GRADUATED = Record("graduated", "kind-graduated", (
    Text("name", "kind-name"),
    Number("holds", "kind-graduated-holds", unit="mL", low=1, high=20000),
    Number("step", "kind-graduated-step", unit="mL", low=0.05, high=1000),
), vessels.GRADUATED, check_graduated, own=("holds", "step"), shows="step")


def check_syringes(values: dict) -> None:
    """As many graduations as syringes, or one for all."""
    if len(values["steps"]) not in (1, len(values["holds"])):
        raise InputError("steps", "kind-syringes-steps.count")
    for place, step in enumerate(values["steps"]):
        if step > values["holds"][place]:
            raise InputError("steps", "kind-syringes-steps.too-far")


SYRINGES = Record("syringes", "kind-syringes", (
    Text("name", "kind-name"),
    Parts("holds", "kind-syringes-holds", unit="mL", low=0, high=1000, least=1,
          help="kind-syringes-holds.help"),
    Parts("steps", "kind-syringes-steps", unit="mL", low=0, high=100, least=1,
          help="kind-syringes-steps.help"),
), vessels.SYRINGES, check_syringes, own=("holds", "steps"), shows="steps")

FILLER = Record("filler", "kind-filler", (
    Text("name", "kind-name"),
    Parts("doses", "kind-filler-doses", low=0, high=500, most=5, least=5,
          help="kind-filler-doses.help"),
    Number("density", "kind-filler-density", unit="g/mL", low=0.05, high=8),
    Number("loose", "kind-filler-loose", unit="g/mL", low=0.01, high=5, help="kind-filler-loose.help"),
    Choice("grain", "kind-filler-grain", (("other", "kind-filler-grain.other"), ("sphere", "kind-filler-grain.sphere")),
           unsaid=UNSAID, fold="kind-filler-fold"),
    Choice("carries", "kind-filler-carries", (("yes", "kind-filler-carries.yes"), ("no", "kind-filler-carries.no")),
           unsaid=UNSAID, fold="kind-filler-fold"),
    Choice("alone", "kind-filler-alone", (("yes", "kind-filler-alone.yes"), ("no", "kind-filler-alone.no")),
           unsaid=UNSAID, fold="kind-filler-fold"),
), fillers.FILLERS, before={"glass-spheres": "Glass microspheres, hollow"})
