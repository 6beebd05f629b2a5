"""Memo: what was worked out before and may be asked again, of one question and from question to question.

It is handed in at the door and stands beside the values; nothing of it lives in a declaration or a module. What it
holds follows from what it is kept under alone, so that every question is answered the same with it and without.
"""

from .types import Function, Given

MOST = 12  # of what is kept under one heading and has no places of its own


class Memo:
    """What one asker, a phone or a thread of a server, keeps from question to question. Headings are any hashable."""

    def __init__(self) -> None:
        self.kept = {}

    def under(self, heading: Given) -> dict:
        """A dict to keep things in, the same one whenever it is asked for.

        >>> memo = Memo()
        >>> memo.under("cuts")[3.2] = "two pieces"
        >>> memo.under("cuts"), memo.under("pots")
        ({3.2: 'two pieces'}, {})
        """
        found = self.kept.get(heading)
        if found is None:
            found = self.kept[heading] = {}
        return found

    def once(self, heading: str, key: "float | str | tuple", make: Function, most: int = MOST) -> Given:
        """What `make()` gives, made the first time it is asked for under that key; a heading with `most` starts anew.
        What was made is handed over even where another thread starts the heading anew meanwhile.

        >>> memo, calls = Memo(), []
        >>> memo.once("cuts", 3.2, lambda: calls.append(1) or "made"), memo.once("cuts", 3.2, None), len(calls)
        ('made', 'made', 1)
        """
        kept = self.under(heading)
        made = kept.get(key, kept)
        if made is kept:  # nothing is kept under that key
            if len(kept) >= most:
                kept.clear()
            made = kept[key] = make()
        return made


def memo_of(values: dict) -> Memo:
    """The memo that was handed in with these values; values that were made by hand get one of their own."""
    found = values.get("_memo")
    if found is None:
        found = values["_memo"] = Memo()
    return found


def once(values: dict, name: str, make: Function) -> Given:
    """What `make()` gives, made the first time it is asked for under that name and kept beside the values.

    >>> values, calls = {}, []
    >>> once(values, "seam", lambda: calls.append(1) or "made"), once(values, "seam", None), len(calls)
    ('made', 'made', 1)
    """
    made = values.setdefault("_made", {})
    if name not in made:
        made[name] = make()
    return made[name]
