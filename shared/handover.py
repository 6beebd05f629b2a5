"""Hand over: what leaves this phone, and what may come in by a link."""
from . import card, inputs, links, moves
from .numbers import digits

VERSION = 1
PRIME = 46649  # the largest below 36 ** 3: the mark is three letters, and one altered letter always changes it
LETTERS = "0123456789abcdefghijklmnopqrstuvwxyz"

UNTOUCHED = " Nothing was changed."
TOO_LONG = "This link is too long to be one of ours." + UNTOUCHED
NEWER = "This link comes from a newer Covemix: update this one first, then open it again." + UNTOUCHED
CUT = "This link was cut short or altered on its way: ask for it again." + UNTOUCHED
FOREIGN = "This link holds nothing for this screen." + UNTOUCHED


def mark(pairs):
    """Three letters that a link ends with; a link cut short ends with others, or none.

    >>> mark([("amount", "200")]) == mark([("amount", "20")])
    False
    """
    total = 7
    for name, text in pairs:
        for letter in name + "=" + text + "&":
            total = (total * 31 + ord(letter)) % PRIME
    return LETTERS[total // 1296] + LETTERS[total // 36 % 36] + LETTERS[total % 36]


def sealed(pairs):
    """The pairs of a link with its version in front and its mark at the end."""
    pairs = [list(pair) for pair in pairs]
    return [["v", str(VERSION)]] + pairs + [["end", mark(pairs)]]


def opened(declared, pairs, length):
    """What a link brings: (pairs under today's names, why not). declared: inputs of its screen; length: characters."""
    if length > links.LONGEST_LINK or len(pairs) > links.MOST_PAIRS:
        return [], TOO_LONG
    plain = [pair for pair in pairs if pair[0] not in ("v", "end", "as")]
    ends = [text for name, text in pairs if name == "end"]
    versions = [text for name, text in pairs if name == "v"]
    if versions:
        if not digits(versions[0], 6):
            return [], CUT
        if int(versions[0]) > VERSION:
            return [], NEWER
        if ends != [mark(plain)]:
            return [], CUT
    known = []
    for name, text in plain:
        found = ("units", "", None) if name == "units" else card.find(declared, name.split("."))
        if found:
            known.append([found[0], text])
    return known, FOREIGN if plain and not known else ""


def brought(screen, pairs, length):
    """A link as the page asks about it: {"pairs", "refused", "words"}."""
    declared = moves.screen_inputs(screen)
    known, refused = opened(declared, pairs, length)
    words = card.told(declared + [inputs.UNITS_INPUT], known)
    return {"pairs": known, "refused": refused, "words": ", ".join([label + ": " + text for label, text in words])}


def handed(screen, pairs):
    """Everything that leaves: {"link": pairs, "card", "text", "short"}."""
    declared = moves.screen_inputs(screen)
    tree = links.tree(pairs)
    values, _ = inputs.read(declared, tree)
    answer = moves.screen(screen, tree)
    pairs = [list(pair) for pair in links.pairs(declared, tree)]
    made = card.card(screen, declared, pairs, values, answer)
    return {"link": sealed(pairs), "card": made, "text": card.text(made), "short": card.short(made)}
