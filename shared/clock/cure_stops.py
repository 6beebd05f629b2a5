"""Cure stops: how far a seam cures at the warmth it is held at, from where it softens, and a hull in the sun."""
from collections import namedtuple

from ..catalogue.cure_times import ENERGY
from ..catalogue.softening import COLOURS, GLASS, POST, SUNLIT
from ..equations.kinetics import rate_factor
from ..equations.maturity import warmest_held
from ..equations.softening import conversion_at, expanded, sunlit_surface
from ..forms.errors import InputError
from ..forms.inputs import Choice, Number
from ..forms.types import Values
from ..words.messages import fact, message
from ..words.numbers import shown
from ..words.units import from_si, to_si

CURED, BEYOND = [GLASS[place][1:3] for place in (1, 3)]
TAKEN_UP = dict([(row[0], row[2:4]) for row in COLOURS])
FULL_FROM, POST_AT, POST_FOR, _, WITHIN, LONG = [row[1] for row in POST]
SUNLIGHT, HOT_AIR, SKY, CALM, BREEZE, EMITTANCE = [row[1] for row in SUNLIT]
SLOWEST = (ENERGY[1], ENERGY[2])  # the ends of the band: one is the slowest where it is warmer, the other where colder
STAYS, MAY, SOFTENS = 0, 1, 2
WHOLE = to_si(float(shown(from_si(HOT_AIR, "degC"), 0)), "degC")  # K, the same in whole degrees
FOLD = "cure-post-fold"
INPUTS = (
    Number("post_to", "cure-post-to", unit="degC", low=25, high=120, optional=True, fold=FOLD),
    Number("post_for", "cure-post-for", unit="h", low=0.5, high=200, optional=True, fold=FOLD),
    Choice("hull_colour", "cure-hull-colour", tuple([row[:2] for row in COLOURS]),
           unsaid="cure-hull-colour.unsaid", fold=FOLD),
    Number("hull_air", "cure-hull-air", unit="degC", low=0, high=55, optional=True, fold=FOLD,
           help=message("cure-hull-air.help", air=fact("degC", WHOLE))),
)


def check(values: Values) -> None:
    """A post-cure is a temperature and how long it is held."""
    if (values["post_to"] is None) != (values["post_for"] is None):
        field = "post_to" if values["post_to"] is None else "post_for"
        raise InputError(field, "cure-post-to.half")


# held: the warmest temperature that counts [K]; conversion: where the cure stops there (least, most) [-]; glass: from
# where it softens (least, most) [K]
Stopped = namedtuple("Stopped", ("held", "conversion", "glass"))
# to: [K]; lasting: [s]; needed: how long it takes to count [s]; counts: it lasts as long; raises: it is warmer than
# where the seam softened before
Post = namedtuple("Post", ("to", "lasting", "needed", "counts", "raises"))
# colour: key of COLOURS; air: [K]; surface: (least, most) [K]; verdict: STAYS, MAY or SOFTENS, None where nothing is
# known of the seam
Sun = namedtuple("Sun", ("colour", "air", "surface", "verdict"))
# before: `Stopped` without the post-cure, None where too little cures; after: with it; post: `Post` or None; suns: a
# `Sun` for the colour that is said, for each of them where none is
Stops = namedtuple("Stops", ("before", "after", "post", "suns"))


def stopped(held: float, long: "float | None" = None) -> Stopped:
    """Where a cure stops at a temperature that is held [K]; no further above the wholly cured.

    long: the warmest that is held nine times as long [K], or None. The warmer it is, the less above it do hours that
    just suffice bring a slow hardener (own runs in tests/test_softening.py).
    >>> at = stopped(279.15)
    >>> [round(one, 2) for one in at.conversion], [round(one - 273.15) for one in at.glass]
    ([0.57, 0.87], [16, 31])
    """
    middle, ends = [(row[1] + row[2]) / 2 for row in GLASS], []

    def found(uncured: float, cured: float, bend: float, beyond: float) -> float:
        return conversion_at(held + beyond, uncured, cured, bend)

    for place, row in enumerate(GLASS):
        low, high = [found(*(middle[:place] + [end] + middle[place + 1:])) for end in row[1:3]]
        ends.append((low, high))
    low, high = expanded(found(*middle), ends)
    surely = min(held + BEYOND[0], POST_AT + (held - POST_AT) * (1 - BEYOND[0] / (POST_AT - FULL_FROM)))
    if long:
        surely = max(surely, long + BEYOND[0])
    glass = [min(surely, POST_AT, CURED[0]), min(held + BEYOND[1], CURED[1])]
    return Stopped(held, (max(0.0, low), min(1.0, high)), glass)


def post_of(to: float, lasting: float, held: "float | None") -> Post:
    """What a post-cure counts: as long as a usual one where the slowest of the band sets the pace.

    to: [K]; lasting: [s]; held: the warmest that was held before [K], or None
    >>> round(post_of(313.15, 36000.0, 293.15).needed / 3600, 1)
    17.3
    """
    pace = min([rate_factor(energy, to, POST_AT) for energy in SLOWEST])
    needed = POST_FOR / pace
    raises = held is None or min(to, POST_AT) > held + BEYOND[0]
    return Post(to, lasting, needed, lasting >= needed * (1 - 1e-9), raises)


def sun_on(colour: str, air: float, seam: "Stopped | None") -> Sun:
    """A hull of a colour in full sun, from a breeze and little taken up to hardly any and much, against its seam.

    colour: key of COLOURS; air: [K]
    >>> [round(one - 273.15) for one in sun_on("dark", 310.0, None).surface]
    [75, 104]
    """
    least, most = TAKEN_UP[colour]
    surface = (sunlit_surface(SUNLIGHT, least, air, air - SKY, BREEZE, EMITTANCE),
               sunlit_surface(SUNLIGHT, most, air, air - SKY, CALM, EMITTANCE))
    if seam is None:
        return Sun(colour, air, surface, None)
    verdict = SOFTENS if surface[0] > seam.glass[1] else MAY if surface[1] > seam.glass[0] else STAYS
    return Sun(colour, air, surface, verdict)


def stops(values: Values, steps: list) -> Stops:
    """steps: (temperature [K], duration [s]) of the coming weeks, as far as cure is counted in them"""
    held = warmest_held(steps, POST_FOR, SLOWEST, POST_AT)
    before = after = None
    if held is not None:
        before = after = stopped(held, warmest_held(steps, LONG, SLOWEST, POST_AT))
    post = None
    if values["post_to"] is not None:
        post = post_of(values["post_to"], values["post_for"], held)
        if post.counts and post.raises:
            after = stopped(post.to)
            # its hours bring a slow hardener as far as the usual post-cure and no further; a room has weeks
            after = Stopped(after.held, after.conversion, [min(post.to, POST_AT), after.glass[1]])
    colours = [values["hull_colour"]] if values["hull_colour"] else [row[0] for row in COLOURS]
    air = HOT_AIR if values["hull_air"] is None else values["hull_air"]
    return Stops(before, after, post, tuple([sun_on(colour, air, after) for colour in colours]))
