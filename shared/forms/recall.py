"""Recall: whether what a link or a card was made with is among the recalled builds, and what is said of it."""

from ..catalogue.recalled import RECALLED, RELEASE
from ..words.languages import Reader
from ..words.messages import message, sentences, typed
from ..words.numbers import digits
from ..words.texts import said
from .types import Given, Said

NAME = "by"  # of the pair in a link that says what made it
LONGEST = 16  # letters of a build's id
UNMARKED = 1  # the last release whose links do not say what made them


def mark(build: str = "") -> str:
    """What made it, as a link carries it: the release, and the build's own id where the page told it.

    >>> mark("1f3a9c2b77aa").partition(".")[2], mark() == str(RELEASE)
    ('1f3a9c2b77aa', True)
    """
    return str(RELEASE) + ("." + build[:LONGEST] if build else "")


def made_by(text: Given) -> tuple:
    """(release, id of the build) of such a mark; release 0 for one that cannot be read.

    >>> made_by("2.1f3a9c2b77aa"), made_by("2"), made_by("x")
    ((2, '1f3a9c2b77aa'), (2, ''), (0, ''))
    """
    release, _, build = text.partition(".")
    return (int(release) if digits(release, 4) else 0), build[:LONGEST]


def recalled(release: int, build: str = "", rows: "list | tuple" = RECALLED) -> list:
    """The rows of the list that name a build."""
    return [row for row in rows if row[0] <= release <= row[1] or (build and build in row[2])]


def warning(text: Given, rows: "list | tuple" = RECALLED) -> Said:
    """What is said of something that was made with a recalled build; "" where it was not.

    text: its mark; "" where it bears none, because it was made before there were any
    >>> warning(mark()), warning("x")
    ('', 'recalled-unread')
    """
    release, build = made_by(text) if text else (UNMARKED, "")
    if not release:
        return "recalled-unread"
    found = recalled(release, build, rows)
    if not found:
        return ""
    made = message("recalled-with", release=release) if text else message("recalled-before", release=UNMARKED + 1)
    return sentences([made] + [part for row in found for part in row[3:5]])


def told(build: str = "") -> Said:
    """What a card says of what made it.

    >>> told("1f3a9c2b77aa")[0], told()[0]
    ('made-with.build', 'made-with')
    """
    if build:
        return message("made-with.build", release=RELEASE, build=typed(build[:LONGEST]))
    return message("made-with", release=RELEASE)


def as_data(who: Reader) -> dict:
    """The list as it is served, as `who` reads it: {"release", "recalled": [{"first", "last", "builds", "wrong",
    "check"}]}."""
    return {"release": RELEASE, "recalled": [
        {"first": row[0], "last": row[1], "builds": list(row[2]), "wrong": said(row[3], who),
         "check": said(row[4], who)} for row in RECALLED]}
