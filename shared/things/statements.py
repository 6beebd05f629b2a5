"""Statements: the H and P codes a product's own sheet carries, read from what was typed."""
from ..forms.errors import InputError
from ..words.numbers import DIGITS

MOST = 40
HOW = "Type the codes of the sheet's section 2, like H315, H317, H411"


def codes(typed: str):
    """Typed codes -> tuple of codes in capitals, each once, joined ones (P302+P352) as they are.

    Separators: comma, semicolon, line or blank. EU codes carry a letter behind (H360F) or EUH in front.
    >>> codes("h315 H317; P302 + P352, H315")
    ('H315', 'H317', 'P302+P352')
    """
    text = "".join([chr(ord(c) - 32) if "a" <= c <= "z" else c for c in typed]).replace(" +", "+").replace("+ ", "+")
    for mark in ",;:.\n\t/":
        text = text.replace(mark, " ")
    found = []
    for word in [one for one in text.split(" ") if one]:  # a bare split() knows other blanks on each runtime
        for code in word.split("+"):
            if not _is_code(code):
                raise InputError("statements", "'" + word[:20] + "' is not a statement. " + HOW)
        if word[0] == "P":
            pieces = [word]
        else:
            pieces = word.split("+")  # joined hazards are two hazards, joined precautions one sentence
        for piece in pieces:
            if piece not in found:
                found.append(piece)
    if len(found) > MOST:
        raise InputError("statements", "At most " + str(MOST) + " statements, please")
    return tuple(found)


def _is_code(code):
    if code[:3] == "EUH":
        code = "H" + code[3:]
    if len(code) < 4 or code[0] not in "HP":
        return False
    if not all([c in DIGITS for c in code[1:4]]) or (code[1] == "0" and code[0] == "P"):
        return False
    tail = code[4:]
    return len(tail) <= 2 and all(["A" <= c <= "Z" for c in tail])


def base(code: str) -> str:
    """A code without the letters some regions put behind it.

    >>> base("H360FD"), base("P302+P352")
    ('H360', 'P302+P352')
    """
    return code[:4] if code[0] == "H" else code
