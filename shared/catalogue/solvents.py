"""Solvents for wiping: molar mass, density, flammable limits and published limits in the breathing air.

Sources differ: each value they give has its own row, and the engine takes the lowest limit (`lowest`).
Limits in the air are for a working day, or for 15 minutes where the row says so; a share of volume is 0..1.
"""
from collections import namedtuple

from .marks import PUBLISHED

# key, label
SOLVENTS = (
    ("acetone", "solvent-acetone"),
    ("isopropanol", "solvent-isopropanol"),
    ("ethanol", "solvent-ethanol"),
    ("butanone", "solvent-butanone"),
)

Fact = namedtuple("Fact", ("name", "quantity", "value", "unit", "mark", "source"))
MOLAR, DENSITY, LOWER, UPPER = "solvent-molar", "solvent-density", "solvent-lower", "solvent-upper"
DAY, SHORT = "solvent-day", "solvent-short"

FACTS = (
    Fact("acetone", MOLAR, 0.05808, "kg/mol", PUBLISHED, "iupac"),
    Fact("acetone", DENSITY, 790, "kg/m3", PUBLISHED, "osha-csi"),
    Fact("acetone", LOWER, 0.025, "share", PUBLISHED, "nfpa-497"),
    Fact("acetone", UPPER, 0.128, "share", PUBLISHED, "nfpa-497"),
    Fact("acetone", DAY, 250e-6, "share", PUBLISHED, "npg"),
    Fact("acetone", DAY, 1000e-6, "share", PUBLISHED, "table-z1"),
    Fact("acetone", DAY, 250e-6, "share", PUBLISHED, "tlv"),
    Fact("acetone", SHORT, 500e-6, "share", PUBLISHED, "tlv"),
    Fact("isopropanol", MOLAR, 0.0601, "kg/mol", PUBLISHED, "iupac"),
    Fact("isopropanol", DENSITY, 790, "kg/m3", PUBLISHED, "npg"),
    Fact("isopropanol", LOWER, 0.020, "share", PUBLISHED, "nfpa-497"),
    Fact("isopropanol", UPPER, 0.127, "share", PUBLISHED, "nfpa-497"),
    Fact("isopropanol", DAY, 400e-6, "share", PUBLISHED, "npg"),
    Fact("isopropanol", SHORT, 500e-6, "share", PUBLISHED, "npg"),
    Fact("isopropanol", DAY, 400e-6, "share", PUBLISHED, "table-z1"),
    Fact("isopropanol", DAY, 200e-6, "share", PUBLISHED, "trgs-900"),
    Fact("isopropanol", SHORT, 400e-6, "share", PUBLISHED, "trgs-900"),
    Fact("ethanol", MOLAR, 0.04607, "kg/mol", PUBLISHED, "iupac"),
    Fact("ethanol", DENSITY, 790, "kg/m3", PUBLISHED, "npg"),
    Fact("ethanol", LOWER, 0.033, "share", PUBLISHED, "npg"),
    Fact("ethanol", LOWER, 0.031, "share", PUBLISHED, "iec-60079-20-1"),
    Fact("ethanol", UPPER, 0.19, "share", PUBLISHED, "npg"),
    Fact("ethanol", DAY, 1000e-6, "share", PUBLISHED, "npg"),
    Fact("ethanol", DAY, 1000e-6, "share", PUBLISHED, "table-z1"),
    Fact("ethanol", SHORT, 1000e-6, "share", PUBLISHED, "tlv"),
    Fact("ethanol", DAY, 200e-6, "share", PUBLISHED, "trgs-900"),
    Fact("butanone", MOLAR, 0.07211, "kg/mol", PUBLISHED, "iupac"),
    Fact("butanone", DENSITY, 810, "kg/m3", PUBLISHED, "npg"),
    Fact("butanone", LOWER, 0.014, "share", PUBLISHED, "nfpa-497"),
    Fact("butanone", LOWER, 0.015, "share", PUBLISHED, "iec-60079-20-1"),
    Fact("butanone", UPPER, 0.114, "share", PUBLISHED, "nfpa-497"),
    Fact("butanone", DAY, 200e-6, "share", PUBLISHED, "osha-16"),
    Fact("butanone", DAY, 200e-6, "share", PUBLISHED, "npg"),
    Fact("butanone", SHORT, 300e-6, "share", PUBLISHED, "npg"),
    Fact("butanone", DAY, 200e-6, "share", PUBLISHED, "r4412-149"),
    Fact("butanone", SHORT, 300e-6, "share", PUBLISHED, "r4412-149"),
    Fact("butanone", DAY, 200e-6, "share", PUBLISHED, "gischem-butanone"),
    Fact("butanone", SHORT, 200e-6, "share", PUBLISHED, "gischem-butanone"),
    Fact("butanone", DAY, 75e-6, "share", PUBLISHED, "tlv-2023"),
    Fact("butanone", SHORT, 150e-6, "share", PUBLISHED, "tlv-2023"),
)


def rows(name: str, quantity: str) -> list:
    """The rows of one solvent and one quantity, in the order of the table."""
    return [fact for fact in FACTS if fact.name == name and fact.quantity == quantity]


def lowest(name: str, quantity: str) -> "Fact | None":
    """The row with the lowest value any source gives: the safe one for a limit and for an explosive limit.

    >>> lowest("acetone", DAY).value, lowest("ethanol", LOWER).value
    (0.00025, 0.031)
    """
    found = None
    for fact in rows(name, quantity):
        if found is None or fact.value < found.value:
            found = fact
    return found


TABLES = (("facts-solvents", FACTS, (0, 1), (2, 3)),)
