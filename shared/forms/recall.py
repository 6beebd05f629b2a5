"""Recall: whether what a link or a card was made with is among the recalled builds, and what is said of it."""

from ..catalogue.recalled import RECALLED, RELEASE
from ..words.numbers import digits

NAME = "by"  # of the pair in a link that says what made it
LONGEST = 16  # letters of a build's id
UNMARKED = 1  # the last release whose links do not say what made them


def mark(build=""):
    """What made it, as a link carries it: the release, and the build's own id where the page told it.

    >>> mark("1f3a9c2b77aa").partition(".")[2], mark() == str(RELEASE)
    ('1f3a9c2b77aa', True)
    """
    return str(RELEASE) + ("." + build[:LONGEST] if build else "")


def made_by(text):
    """(release, id of the build) of such a mark; release 0 for one that cannot be read.

    >>> made_by("2.1f3a9c2b77aa"), made_by("2"), made_by("x")
    ((2, '1f3a9c2b77aa'), (2, ''), (0, ''))
    """
    release, _, build = text.partition(".")
    return (int(release) if digits(release, 4) else 0), build[:LONGEST]


def recalled(release, build="", rows=RECALLED):
    """The rows of the list that name a build."""
    return [row for row in rows if row[0] <= release <= row[1] or (build and build in row[2])]


def warning(text, rows=RECALLED):
    """What is said of something that was made with a recalled build; "" where it was not.

    text: its mark; "" where it bears none, because it was made before there were any
    >>> warning(mark()), warning("x").partition(":")[0]
    ('', 'What made this cannot be read')
    """
    release, build = made_by(text) if text else (UNMARKED, "")
    if not release:
        return "What made this cannot be read: check its figures against the label of the resin."
    found = recalled(release, build, rows)
    if not found:
        return ""
    when = "before release " + str(UNMARKED + 1) if not text else "with release " + str(release)
    said = [part for row in found for part in row[3:5]]
    return "Made " + when + " of Covemix, which is recalled. " + " ".join(said)


def told(build=""):
    """What a card says of what made it.

    >>> told("1f3a9c2b77aa").partition("release")[0]
    'Made with '
    """
    return "Made with release " + str(RELEASE) + (", build " + build[:LONGEST] if build else "")


def as_data():
    """The list as it is served: {"release", "recalled": [{"first", "last", "builds", "wrong", "check"}]}."""
    return {"release": RELEASE, "recalled": [
        {"first": row[0], "last": row[1], "builds": list(row[2]), "wrong": row[3], "check": row[4]}
        for row in RECALLED]}
