"""Tables of Markdown."""


def table(heads, rows) -> str:
    """A table with a heading line.

    >>> print(table(("", "a"), [("b", "c")]), end="")
    |  | a |
    | --- | --- |
    | b | c |
    """
    return "\n".join("| " + " | ".join(row) + " |" for row in (heads, ["---"] * len(heads), *rows)) + "\n"
