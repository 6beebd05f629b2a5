"""Cure stops, lines: what is said of a cure that stops, of where a seam softens, of a post-cure and of the sun."""
from ..catalogue.softening import COLOURS, POST
from ..forms.types import Found, Values
from ..words.lines import ASK, BESIDE, MORE, SAY, WARN, Line, line, words
from ..words.numbers import DOWN, UP, shown, small
from ..words.units import braces, told
from .cure_stops import FULL_FROM, MAY, POST_AT, POST_FOR, SOFTENS, STAYS

CLIMB, BELOW = [row[1] for row in POST][3:5]
SOFT = "where it softens is from memory"
COLOUR = dict([(row[0], small(row[1])) for row in COLOURS])
HOW = ("Climb " + braces("K", CLIMB) + " an hour at most, the hull supported in its shape: on the way the seam is "
       "soft. The data sheet's own goes first.")


def say(limit: Found, values: Values, said: bool) -> list[Line]:
    """limit: `cure_stops.Stops`; said: `hard_but` stands already in place of the full strength"""
    lines, units = [], values["units"]
    if limit.after:
        lines.append(line("softens", "Softens above", limit.after.glass[0], "K",
                          _degrees(limit.after.glass[0], units, DOWN),
                          rough="at best " + _degrees(limit.after.glass[1], units, DOWN) + ", from memory; held at "
                          + _degrees(limit.after.held, units, DOWN) + " for long"))
        lines.append(line("stops", "Cure stops near", limit.after.conversion[0], "", share(limit.after),
                          rough="of its whole cure, from memory; until it is warmer than "
                          + _degrees(limit.after.held, units, DOWN), rank=MORE if said else BESIDE))
    lines.append(_post(limit, units))
    lines.extend(_sun(limit, units))
    return lines


def share(one: Found) -> str:
    """How far a cure comes where it stops, its least first. one: `cure_stops.Stopped`"""
    return " to ".join([shown(100 * one.conversion[0], 0, DOWN), shown(100 * one.conversion[1], 0, UP)]) + "%"


def hard_but(limit: Found, units: str) -> "tuple[str, str]":
    """What is told in place of the full strength where the warmth for it lacks: (text, what to add)."""
    warm = " to " + _degrees(FULL_FROM, units, UP) if limit.after.held < FULL_FROM else " for longer"
    return ("hard, but stops near " + share(limit.after) + " until warmed" + warm + "; softens above "
            + _degrees(limit.after.glass[0], units, DOWN),
            "full strength counts only hours at " + _degrees(FULL_FROM, units, UP) + " or more")


def _degrees(kelvin: float, units: str, toward: str) -> str:
    return told(kelvin, "degC", units, toward, places=0)


def _hours(seconds: float, toward: str) -> str:
    return shown(seconds / 3600, 0 if seconds > 10 * 3600 else 1, toward) + " h"


def _post(limit: Found, units: str) -> Line:
    post = limit.post
    if post is None:
        return words("post", "To stand more heat", "Post-cure it: hold the seam " + braces("K", BELOW) + " below that, "
                     + _hours(POST_FOR, UP) + " at " + braces("degC", POST_AT) + ", longer where cooler. " + HOW,
                     rough="common practice", rank=MORE)
    label = "Warmed to " + _degrees(post.to, units, DOWN) + " for " + _hours(post.lasting, DOWN)
    if not post.counts:
        return words("post", label, "Too short to count on: it takes " + _hours(post.needed, UP) + " there.", rank=ASK,
                     rough="as " + _hours(POST_FOR, UP) + " at " + braces("degC", POST_AT) + ", common practice")
    if not post.raises:
        return words("post", label, "It brings nothing: the seam was held as warm before.", rank=ASK)
    before = "" if limit.before is None else ", before it above " + _degrees(limit.before.glass[0], units, DOWN)
    return words("post", label, "It softens only above " + _degrees(limit.after.glass[0], units, DOWN) + before + ". "
                 + HOW, rough="from memory", rank=SAY)


def _sun(limit: Found, units: str) -> list[Line]:
    if len(limit.suns) > 1:
        light, dark = limit.suns[0], limit.suns[-1]
        text = "In full sun, air at {}, a dark one gets up to {}, a white one up to {}.".format(*[
            _degrees(one, units, UP) for one in (dark.air, dark.surface[1], light.surface[1])])
        if dark.verdict not in (None, STAYS):
            text += " Say its colour: this seam may soften there."
        return [words("sun", "Hull in the sun", text, rank=SAY)]
    sun, = limit.suns
    text = "Up to {}, in a breeze {}, with air at {}.".format(*[
        _degrees(one, units, UP) for one in (sun.surface[1], sun.surface[0], sun.air)])
    if sun.verdict is None:
        return [words("sun", "Hull in the sun", text, rank=SAY)]
    text += " The seam {} above {}.".format({STAYS: "softens only", MAY: "may soften", SOFTENS: "softens"}[sun.verdict],
                                            _degrees(limit.after.glass[0], units, DOWN))
    if sun.verdict == STAYS:
        return [words("sun", "Hull in the sun", text, rough=SOFT, rank=SAY)]
    first = [] if sun.colour == COLOURS[0][0] else ["paint it white"]
    first += [] if limit.post else ["post-cure it first"]
    text += " Shade it, hold it in its shape, and put no load on it while it is hot" + "".join([
        "; or " + one for one in first]) + "."
    return [words("sun", "Sun on this hull", text, rough=SOFT, rank=WARN)]
