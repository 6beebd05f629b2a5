"""Piece names: what is kept of the pieces of a batch, in words of no language. What somebody typed stays as typed."""
from ..catalogue.joints import FACES
from ..forms.types import Said
from ..words.messages import cut, listed, message, number, row, typed
from ..words.numbers import digits

CALLED = dict(FACES)
NTH = "nth"  # before the number of a joint that nobody named, and of its copy
WORDS, SPELT = {NTH: "boat-joint"}, {"joint": NTH, "verbindung": NTH}
MOST_PIECES, MOST_LETTERS = 30, 60  # that are kept of a batch; that are said of them


def piece_said(name: str, face: str, part: str) -> Said:
    """A piece by its name, by the joint that it is of, or by its place in the plan; its face, where its seam has
    several; which part of it, where it is cut.

    >>> piece_said("5", "", ""), piece_said("nth 3 2", "", "")
    (('plan-piece', {'number': 5}), ('boat-joint.nth', {'count': (4, '3 2')}))
    >>> piece_said("Keel", "", "1/2")
    ('plan-piece-part', {'name': (0, 'Keel'), 'part': (4, '1'), 'parts': (4, '2')})
    """
    first, _, rest = name.partition(" ")
    said = message("plan-piece", number=int(name)) if digits(name, 3) else typed(name)  # type: Said
    if first == NTH:
        said = message("boat-joint.nth", count=number(rest))
    if face in CALLED:
        said = row([said, CALLED[face]], " ")
    one, _, parts = part.partition("/")
    return message("plan-piece-part", name=said, part=number(one), parts=number(parts)) if parts else said


def kept(pieces: "list[tuple[str, str, str]]") -> str:
    """Pieces as a log or a pot keeps them: (name, face, part) of each.

    >>> kept([("Keel", "inside", ""), ("5", "", "1/2")])
    'Keel|inside||5||1/2'
    """
    return "|".join([word.replace("|", "/") for one in pieces[:MOST_PIECES] for word in one])


def pieces_said(text: str, to: bool = False) -> Said:
    """What `kept` keeps. to: from the first to the last"""
    words = text.split("|")
    said = [piece_said(*words[at:at + 3]) for at in range(0, len(words) - 2, 3)]
    return cut(message("plan-pieces-to", first=said[0], last=said[-1]) if to and len(said) > 1
               else listed(said, "plain"), MOST_LETTERS)
