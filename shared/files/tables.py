"""Tables: rows as CSV, for a spreadsheet in any country."""
from math import floor, log

LEADING = "=+-@\t\r"  # what a spreadsheet takes for a formula (OWASP, CSV Injection)
FIGURES = 9  # of a number: more than any spreadsheet shows


def csv(heads: list, rows: list, decimal: str = ".") -> str:
    """Rows as CSV (RFC 4180). Its first sign is the mark of UTF-8.

    decimal: mark of the country; where it is a comma, a semicolon parts the cells
    rows: of text, numbers, True and False, None for what is not known, a cell for each head

    >>> csv(["name", "mass [kg]"], [["=1+1", 0.15]], ",")[1:]
    "name;mass [kg]\\r\\n'=1+1;0,15\\r\\n"
    """
    between = ";" if decimal == "," else ","
    lines = [between.join([_quoted(_cell(one, decimal), between) for one in row]) for row in [heads] + rows]
    return "\ufeff" + "\r\n".join(lines) + "\r\n"


def _cell(value: "str | float | bool | None", decimal: str) -> str:
    if value is None:
        return ""
    if value is True or value is False:
        return "1" if value else "0"
    if isinstance(value, str):
        return "'" + value if value and value[0] in LEADING else value
    return figure(value).replace(".", decimal)


def _quoted(cell: str, between: str) -> str:
    if '"' in cell or between in cell or "\n" in cell or "\r" in cell:
        return '"' + cell.replace('"', '""') + '"'
    return cell


def figure(value: float) -> str:
    """A number in plain digits, without an exponent.

    >>> figure(0.000137336869), figure(3), figure(28800.0), figure(-0.2)
    ('0.000137336869', '3', '28800', '-0.2')
    """
    if not value:
        return "0"
    size = floor(log(abs(value)) / log(10.0) + 1e-12)
    digits = str(floor(abs(value) * 10.0 ** (FIGURES - 1 - size) + 0.5))
    point = len(digits) - FIGURES + size + 1  # of these digits, how many stand before it
    if point < 1:
        digits, point = "0" * (1 - point) + digits, 1
    digits += "0" * (point - len(digits))
    rest = digits[point:].rstrip("0")
    return ("-" if value < 0 else "") + digits[:point] + ("." + rest if rest else "")
