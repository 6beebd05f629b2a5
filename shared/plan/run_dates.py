"""Run dates: when the peel ply of a run may come off, and from when until when a coat may follow."""
from collections import namedtuple

from ..forms.types import Found

# peel: after the latest contact [s], None where it is never reached or not known; recoat: `cure.Recoat` counted from
# its contacts, or None; first, last: contacts, ages [s]
Dates = namedtuple("Dates", ("peel", "recoat", "first", "last"))
# ages [s]. off: the peel ply may come off, None where there is none or it is not known; opens, closes: a coat may
# follow, None where it is not known or never; where it opens no sooner than it closes, it is too late
Ages = namedtuple("Ages", ("off", "opens", "closes"))


def ages(found: Found) -> Ages:
    """What its contacts and its cure make of a run's dates; no coat goes on through the peel ply.

    found: `run.RunResult`. An opening counts from the latest contact, a closing from the first
    """
    dates = found.dates
    if dates is None:
        return Ages(None, None, None)
    covered = [1 for one in found.steps if one.key == "peel"]
    off = dates.last + dates.peel if dates.peel is not None and covered else None
    coat = dates.recoat
    if coat is None or coat.cold or coat.shut:
        return Ages(off, None, None)
    return Ages(off, max(off or 0.0, dates.last + coat.opens), dates.first + coat.closes)
