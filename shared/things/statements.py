"""Statements: the H and P codes a product's own sheet carries, read from what was typed."""
from ..forms.errors import InputError
from ..words.messages import message
from ..words.messages import typed as as_typed
from ..words.numbers import DIGITS

MOST = 40
PREFIXES = ("H", "P", "EUH")
JOINS = "+/"


def codes(typed: str) -> "tuple[str, ...]":
    """Typed codes -> tuple of codes, each once: prefix in capitals, letters behind the figures as typed.

    Between codes: comma, semicolon, hyphen, line or blank. A bare number has the prefix before it. Joined by + or / are
    precautions that make one sentence, and of hazards the routes of one acute toxicity; other joined hazards are taken
    apart.
    >>> codes("h315 H317; P302 + P352, H315"), codes("h 302/312, EUH-208")
    (('H315', 'H317', 'P302+P352'), ('H302+H312', 'EUH208'))
    >>> codes("H332 + H302+312"), codes("H360Fd H315/317"), codes("P301+330+331")
    (('H302+H312+H332',), ('H360Fd', 'H315', 'H317'), ('P301+P330+P331',))
    """
    found: list = []
    for joined in _joined(typed):
        whole = joined[0][0] == "P" or _one_toxicity(joined)
        for code in ["+".join(sorted(joined) if joined[0][0] == "H" else joined)] if whole else joined:
            if code not in found:
                found.append(code)
    if len(found) > MOST:
        raise InputError("statements", message("statements-most", most=MOST))
    return tuple(found)


def _joined(typed: str) -> "list[list[str]]":
    """Codes as they are joined in what was typed."""
    found: list = []
    start, before, join = "", "", False  # a prefix that stands alone; the last one; a + or / is open
    for word in _words(typed):
        if word in JOINS:
            if join or start or not found:
                _refuse(word)
            join = True
        elif _capitals(word) in PREFIXES and not start:
            start = _capitals(word)
        else:
            prefix = start or before
            code = prefix + word if word[0] in DIGITS and prefix else _capitals(word[:-2]) + word[-2:]
            if (start and word[0] not in DIGITS) or not _is_code(code):
                _refuse(word)
            start, before = "", code[:3] if code[0] == "E" else code[0]
            if join:
                found[-1].append(code)
            else:
                found.append([code])
            join = False
    if join or start:
        _refuse(start or "+")
    return found


def _words(typed: str) -> "list[str]":
    text = typed
    for mark in ",;:.\n\t-\u2013\u00a0":
        text = text.replace(mark, " ")
    for mark in JOINS:
        text = text.replace(mark, " " + mark + " ")
    return [one for one in text.split(" ") if one]  # a bare split() knows other blanks on each runtime


def _refuse(word: str) -> None:
    raise InputError("statements", message("statements-none", typed=as_typed(word[:20])))


def _capitals(text: str) -> str:
    return "".join([chr(ord(c) - 32) if "a" <= c <= "z" else c for c in text])


def _one_toxicity(joined: "list[str]") -> bool:
    """Whether joined hazards are routes of one acute toxicity, which the regulation puts into one sentence."""
    return len(set(joined)) > 1 and all([len(code) == 4 and code[:2] == "H3" and code[2] in "013" and code[3] in "012"
                                         and code[3] == joined[0][3] for code in joined])


def _is_code(code: str) -> bool:
    figures = code[3:] if code[:3] == "EUH" else code[1:]
    if code[:1] not in "HPE" or len(figures) < 3 or (code[0] == "E" and code[:3] != "EUH"):
        return False
    if not all([c in DIGITS for c in figures[:3]]) or (figures[0] == "0" and code[0] == "P"):
        return False
    return len(figures) <= 5 and all(["A" <= c <= "Z" for c in _capitals(figures[3:])])


def single(found: "tuple[str, ...] | list[str]") -> "list[str]":
    """Hazards one by one, without the letters that some regions put behind them; precautions as they are.

    >>> single(("H360FD", "P302+P352", "H300+H330", "EUH209A"))
    ['H360', 'P302+P352', 'H300', 'H330', 'EUH209']
    """
    each: list = []
    for code in found:
        each.extend([code] if code[0] == "P" else [one[:6 if one[0] == "E" else 4] for one in code.split("+")])
    return each
