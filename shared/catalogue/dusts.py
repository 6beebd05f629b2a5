"""Dusts: what the powders and the sanding raise, and the published limits for each."""
from collections import namedtuple

from .marks import MEMORY, PUBLISHED

TOTAL, FINE = "total dust", "respirable dust"

# value [kg/m3], over a working day; fraction: which part of the dust it counts
Limit = namedtuple("Limit", ("dust", "fraction", "value", "unit", "mark", "source"))
LIMITS = (
    Limit("wood", TOTAL, 1e-6, "kg/m3", PUBLISHED, "npg"),
    Limit("wood", TOTAL, 15e-6, "kg/m3", PUBLISHED, "table-z1"),
    Limit("wood", FINE, 5e-6, "kg/m3", PUBLISHED, "table-z1"),
    Limit("silica", TOTAL, 6e-6, "kg/m3", PUBLISHED, "npg"),
    Limit("silica", TOTAL, 0.8e-6, "kg/m3", PUBLISHED, "table-z3"),
    Limit("other", TOTAL, 15e-6, "kg/m3", PUBLISHED, "table-z1"),
    Limit("other", FINE, 5e-6, "kg/m3", PUBLISHED, "table-z1"),
    Limit("talc", FINE, 2e-6, "kg/m3", PUBLISHED, "npg"),
    Limit("glass", TOTAL, 5e-6, "kg/m3", PUBLISHED, "osha-csi"),
    Limit("glass", TOTAL, 15e-6, "kg/m3", PUBLISHED, "osha-csi"),
)

# key, label, the dusts it raises, what is particular about it, mark, source
POWDERS = (
    ("wood-flour", "Wood flour", ("wood",),
     "Wood dust can burn in the air, and is treated as a cause of cancer when breathed.", PUBLISHED, "npg"),
    ("silica", "Fumed silica", ("silica",),
     "Hangs in the air for long, and dries skin and eyes.",
     MEMORY, ""),
    ("cotton", "Cotton fibre", ("other",), "Fine lint; it irritates the airways.", MEMORY, ""),
    ("milled-glass", "Milled glass", ("glass",), "Splinters prick skin and eyes; rinse, do not rub.", MEMORY, ""),
    ("glass-spheres", "Glass microspheres", ("other",),
     "So light that it flies at a breath; slippery on the floor.", MEMORY, ""),
    ("phenolic-balloons", "Phenolic microballoons", ("other",),
     "So light that it flies at a breath; organic dust can burn in the air.", MEMORY, ""),
    ("talc", "Talc", ("talc",), "Only talc without asbestos: ask for the sheet.", MEMORY, ""),
    ("other", "Another powder", ("other",), "Read its sheet first; a dust limit holds for every powder.", MEMORY, ""),
)

# key, label, the dusts it raises, what is particular about it, mark, source
SANDING = (
    ("sanding-epoxy", "Sanding cured epoxy", ("other", "wood"),
     "Epoxy, filler and wood together: the strictest of them counts.", MEMORY, ""),
    ("sanding-glass", "Sanding cured glass tape", ("other", "glass"), "Glass dust pricks: cover wrists and neck.",
     MEMORY, ""),
    ("sanding-wood", "Sanding plywood", ("wood",), "Wood dust can burn, and is treated as a cause of cancer.",
     PUBLISHED, "npg"),
)

# Share of the outside air that a half mask may let through is 1 / APF: assigned protection factors, mark, source
MASKS = (
    ("half", "Half mask or filtering half mask", 10, PUBLISHED, "npg"),
    ("full", "Full face mask, fit-tested", 50, MEMORY, ""),
)


def strictest(dusts):
    """The strictest published limit of the dusts together.

    >>> strictest(("wood",)).value * 1e6, strictest(("silica",)).source
    (1.0, 'table-z3')
    """
    found = None
    for limit in LIMITS:
        if limit.dust in dusts and (found is None or limit.value < found.value):
            found = limit
    return found


TABLES = (
    ("Dust limits", LIMITS, (0, 1), (2, 3)),
    ("Powders", POWDERS, (1,), (3,)),
    ("Sanding", SANDING, (1,), (3,)),
    ("Mask, assigned protection factor", MASKS, (1,), (2,)),
)
