"""What the kit holds: each kind of thing declared once, as fields that are typed, stored, linked and read like a form.

A record's built-in rows live in the catalogue as typed text, so that a row, a kit entry and a link read the same way.
"""
from ..catalogue import fillers, systems, tools, vessels
from ..catalogue.limits import HEAVIEST, LIGHTEST, STOP
from ..catalogue.marks import UNMEASURED
from ..equations.weighing import furthest_off
from ..forms.errors import InputError
from ..forms.inputs import Choice, Number, Parts, Text
from ..forms.late import late
from ..words.numbers import UP, shown
from . import label_cure
from .statements import codes

LABEL_FOLD = "More from the label"
UNSAID = "not known"
LABEL, ROW, LINK = "label", "row", "link"
# where the figures of a thing are from; one that says nothing stands as it was typed, also what an earlier build kept
ORIGIN = Choice("origin", "Its figures are", ((LABEL, "compared with its label"), (ROW, "started from a built-in row"),
                                              (LINK, "from a link")), unsaid="as typed", fold="Where they are from",
                learned=True, stays=True, help="Choose the first once you have compared them.")


class Record:
    """A kind of thing in the kit. rows: (id, label, mark, pairs of field and typed text)

    own: fields that make it another thing than a built-in row: with one of them typed, nothing of the row is taken over
    shows: of a tool that shows figures, the field whose unit they are in
    whence: what a thing that came by a link says of it, as text by field
    """

    def __init__(self, name, label, fields, rows=(), check=None, own=(), shows=""):
        self.name, self.label, self.fields, self.rows, self.check = name, label, fields + (ORIGIN,), rows, check
        self.own, self.shows = own, shows
        self.whence = {ORIGIN.name: LINK}

    def started(self, row):
        """The typed text of a thing that starts from a built-in row. row: pairs of field and text"""
        return dict(row, **{ORIGIN.name: ROW})

    def is_another(self, row, typed):
        """Whether what was typed over a built-in row is another thing than the row. row, typed: text by field"""
        return any([name in typed and typed[name] != row.get(name) for name in self.own])

    def row(self, row_id):
        """The typed text of a built-in row, or None."""
        for known, _, _, typed in self.rows:
            if known == row_id:
                return dict(typed)
        return None

    def figure(self, row_id, name):
        """A figure of a built-in row [SI]."""
        field = dict([(one.name, one) for one in self.fields])[name]
        return field.read(self.row(row_id)[name], name, {"units": "metric", "_understood": [], "_tree": {}})

    def from_memory(self, values, *names):
        """Whether these fields still stand word for word as in a row from memory or of our own, also in a thing
        that started from it: what was typed over is the builder's own."""
        tree = values["_tree"]
        for _, _, mark, typed in self.rows:
            row = dict(typed)
            if mark in UNMEASURED and all([name in row and tree.get(name) == row[name] for name in names]):
                return True
        return False


def check_system(values):
    """The label's own figures must fit each other: some ratio, and as many densities as parts."""
    weight, volume = values["by_weight"], values["by_volume"]
    if not weight and not volume:
        raise InputError("by_weight", "Type the ratio from the label, by weight or by volume")
    count = len(weight or volume)
    if weight and volume and len(volume) != count:
        raise InputError("by_volume", "By volume: the same number of parts as by weight, please")
    for field, label in (("densities", "Densities"), ("weighed", "Equal volumes, weighed")):
        if values[field] and len(values[field]) != count:
            raise InputError(field, label + ": one for each part, in the same order")
    check_agrees(values)
    codes(values["statements"])
    rows = late("trials").read_trials(values["trials"]) if values["trials"] else []
    if values["timings"]:
        timed = late("own_timings").read_timings(values["timings"])
        rows += [dict(row, place=row["place"] + len(rows)) for row in timed]
    values["timed"] = tuple(rows)


def relative_densities(system):
    """Densities of the parts to each other [any unit], or (): of equal volumes that were weighed before those typed."""
    return system.get("weighed") or system["densities"]


def label_apart(system):
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


def check_agrees(system):
    """A label whose two ratios are further apart than any pour may be off gives no figure until one is put right.

    Where the densities are not known, the two ratios give the densities of the parts to the first: liquids of a resin
    system lie between LIGHTEST and HEAVIEST of each other.
    """
    if not (system["by_weight"] and system["by_volume"]):
        return
    if relative_densities(system):
        place, apart = label_apart(system)
        if apart > (system["tolerance"] or STOP) + 1e-9:
            raise InputError("by_volume", "The label does not agree with itself: by weight and densities part {} is {} "
                             "off the ratio by volume, and no pour may be so far off. Look at the label again; clear "
                             "what it does not say.".format(place + 1, shown(apart * 100, 1, UP) + "%"))
        return
    ratios = [w / v for w, v in zip(system["by_weight"], system["by_volume"])]
    for place, ratio in enumerate(ratios):
        if not LIGHTEST <= ratio / ratios[0] <= HEAVIEST:
            raise InputError("by_volume", "The label does not agree with itself: by these two ratios part {} would be "
                             "{} times as dense as the first. Look at the label again; clear what it does not "
                             "say.".format(place + 1, shown(ratio / ratios[0], 2)))


SYSTEM = Record("system", "Resin system", (
    Text("name", "Name", default=""),
    Parts("by_weight", "Parts by weight", optional=True, help="As the label gives them, resin first: 100:30"),
    Parts("by_volume", "Parts by volume", optional=True, help="As the label gives them, resin first: 3:1"),
    Parts("densities", "Densities", unit="g/mL", low=0.3, high=4, optional=True,
          help="Of each part, in the same order: 1.15 : 0.98 or 1.15 0.98"),
    Parts("weighed", "Equal volumes, weighed", unit="g", low=0, high=10000, optional=True,
          help="One syringe to one mark with each part, empty weight taken off, in the same order: {23.1 : 19.4 g}"),
    Text("parts", "Names of the parts", default="Resin : Hardener", fold=LABEL_FOLD,
         help="In the same order, a colon between them"),
    Number("tolerance", "Ratio error the label allows", unit="%", low=0.01, high=20, optional=True,
           fold=LABEL_FOLD),
    Number("eew", "Epoxide equivalent weight, EEW", unit="g/eq", low=50, high=5000, optional=True, fold=LABEL_FOLD,
           help="With the next figure the ratio is checked against the chemistry"),
    Number("ahew", "Amine hydrogen equivalent weight, AHEW", unit="g/eq", low=5, high=2000, optional=True,
           fold=LABEL_FOLD),
    Choice("speed", "Hardener speed", (("fast", "Fast"), ("medium", "Medium"), ("slow", "Slow")), unsaid=UNSAID,
           fold=LABEL_FOLD),
    Number("pot_time", "Pot life", unit="min", low=1, high=1440, optional=True, fold=LABEL_FOLD),
    Number("pot_mass", "at a mass of", unit="g", low=5, high=10000, optional=True, fold=LABEL_FOLD),
    Number("pot_temperature", "at a temperature of", unit="degC", low=0, high=45, optional=True, fold=LABEL_FOLD),
    Choice("pot_meaning", "That pot life is", (("open", "not said on the label: the end"), ("gel", "the time to gel"),
           ("work", "the time it can be worked")), default="open", fold=LABEL_FOLD),
    Number("film_time", "Working time as a thin film", unit="min", low=1, high=2880, optional=True, fold=LABEL_FOLD),
    Number("lowest", "Lowest working temperature", unit="degC", low=-10, high=40, optional=True, fold=LABEL_FOLD),
    Text("timings", "Own timings of its pots", most=400, fold=LABEL_FOLD, learned=True,
         help="Stiffening 31 min {240 g} cup {20 degC}; the next behind a semicolon. They count before the label."),
    Text("trials", "Test cups", most=400, fold=LABEL_FOLD, learned=True, help="What the test cup keeps here."),
    Text("lot", "Lot", fold=LABEL_FOLD),
    Text("statements", "Statements on its data sheet", most=200, fold=LABEL_FOLD, help="H315, H317, H411: these lead"),
) + label_cure.FIELDS, systems.SYSTEMS, check_system, own=("by_weight", "by_volume"))

SCALE = Record("scale", "Scale", (
    Text("name", "Name"),
    Number("step", "Smallest step it shows", unit="g", low=0.001, high=100),
    Number("most", "The most it weighs", unit="g", low=10, high=200000, optional=True),
    Number("own_error", "Its own error beyond the step", unit="g", low=0, high=10, optional=True,
           help="Linearity and drift of zero, at most so much either way, by its data sheet or a check weight. "
                "Left empty, it is not counted."),
), tools.SCALES, own=("step",), shows="step")


def check_pumps(values):
    """A pump set is known by its strokes or by ten of them weighed."""
    if not values["strokes"] and not values["ten_strokes"]:
        raise InputError("strokes", "Type the mL of one stroke of each pump, or weigh ten strokes of each")


PUMPS = Record("pumps", "Pump set", (
    Text("name", "Name"),
    Parts("strokes", "One stroke of each pump", unit="mL", low=0, high=1000, optional=True,
          help="In the order of the parts: {10 : 3.4 mL}"),
    Parts("ten_strokes", "Ten strokes of each, weighed", unit="g", low=0, high=10000, optional=True,
          help="In the order of the parts: {115 : 33 g}. Used instead of the figure above."),
), tools.PUMPS, check_pumps, own=("strokes", "ten_strokes"))

CUP = Record("cup", "Cup", (
    Text("name", "Name"),
    Number("bottom", "Inside diameter at the bottom", unit="mm", low=5, high=1000),
    Number("top", "Inside diameter at the rim", unit="mm", low=5, high=1000),
    Number("height", "Inside height", unit="mm", low=5, high=1000, help="From the bottom inside, upright, to the rim"),
), vessels.CUPS, own=("bottom", "top", "height"))


def check_graduated(values):
    """A mark beyond the rim measures nothing."""
    if values["step"] > values["holds"]:
        raise InputError("step", "From mark to mark: more than the whole cup holds")


GRADUATED = Record("graduated", "Graduated cup", (
    Text("name", "Name"),
    Number("holds", "Highest mark", unit="mL", low=1, high=20000),
    Number("step", "From mark to mark", unit="mL", low=0.05, high=1000),
), vessels.GRADUATED, check_graduated, own=("holds", "step"), shows="step")


def check_syringes(values):
    """As many graduations as syringes, or one for all."""
    if len(values["steps"]) not in (1, len(values["holds"])):
        raise InputError("steps", "From mark to mark: one number for all syringes, or one for each")
    for place, step in enumerate(values["steps"]):
        if step > values["holds"][place]:
            raise InputError("steps", "From mark to mark: more than the syringe holds")


SYRINGES = Record("syringes", "Syringes", (
    Text("name", "Name"),
    Parts("holds", "Each holds", unit="mL", low=0, high=1000, least=1,
          help="In the order of the parts: {60 : 20 mL}. One number stands for all."),
    Parts("steps", "From mark to mark", unit="mL", low=0, high=100, least=1,
          help="In the order of the parts: {1 : 0.5 mL}. One number stands for all."),
), vessels.SYRINGES, check_syringes, own=("holds", "steps"), shows="steps")

FILLER = Record("filler", "Filler", (
    Text("name", "Name"),
    Parts("doses", "Filler for 100 of mix, by weight", low=0, high=500, most=5, least=5,
          help="At the five stiffnesses, from runs to dry-edged: 8 : 15 : 25 : 38 : 50"),
    Number("density", "True density, wetted", unit="g/mL", low=0.05, high=8),
    Number("loose", "Density as it lies loose", unit="g/mL", low=0.01, high=5, help="Weigh a level cup of it"),
    Choice("grain", "Grains", (("other", "Flour, fibre, flakes"), ("sphere", "Hollow spheres")), unsaid=UNSAID,
           fold="What it can do"),
    Choice("carries", "In a structural seam", (("yes", "May carry load"), ("no", "For fairing only")), unsaid=UNSAID,
           fold="What it can do"),
    Choice("alone", "On its own", (("yes", "Stands up"), ("no", "Needs another filler to stand")),
           unsaid=UNSAID, fold="What it can do"),
), fillers.FILLERS)
