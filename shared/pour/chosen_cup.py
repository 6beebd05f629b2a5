"""Chosen cup: whether the cup is the builder's own choice, or the one that stands in the form by itself."""
from ..forms.types import Values
from ..things.records import CUP

FIRST_CUP = "medium"


def cup_chosen(values: Values) -> bool:
    """Whether the cup is the builder's own choice: the one that stands in the form by itself warns nobody."""
    return not is_row(values["cup"], CUP.row(FIRST_CUP))


def is_row(cup: Values, row: Values) -> bool:
    """Whether a cup has the very figures of a built-in row."""
    return all([cup["_tree"].get(name) == row[name] for name in ("bottom", "top", "height")])
