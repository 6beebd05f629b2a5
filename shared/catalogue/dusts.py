"""Dusts: what the powders and the sanding raise, and the published limits for each."""
from collections import namedtuple

from .marks import COMMON, PUBLISHED

TOTAL, INHALABLE, THORACIC, FINE = "dust-total", "dust-inhalable", "dust-thoracic", "dust-fine"

# value [kg/m3], over a working day; fraction: which part of the dust it counts. The limits of the US, of the EU and of
# Germany, of authorities and of the bodies that advise them: the strictest of them counts here.
Limit = namedtuple("Limit", ("dust", "fraction", "value", "unit", "mark", "source"))
LIMITS = (
    Limit("wood", TOTAL, 1e-6, "kg/m3", PUBLISHED, "npg"),
    Limit("wood", INHALABLE, 1e-6, "kg/m3", PUBLISHED, "tlv"),
    Limit("wood", INHALABLE, 2e-6, "kg/m3", PUBLISHED, "eu-carcinogens"),
    Limit("wood", TOTAL, 15e-6, "kg/m3", PUBLISHED, "table-z1"),
    Limit("wood", FINE, 5e-6, "kg/m3", PUBLISHED, "table-z1"),
    Limit("red cedar", INHALABLE, 0.5e-6, "kg/m3", PUBLISHED, "tlv"),
    Limit("silica", FINE, 0.02e-6, "kg/m3", PUBLISHED, "mak"),
    Limit("silica", TOTAL, 6e-6, "kg/m3", PUBLISHED, "npg"),
    Limit("silica", TOTAL, 0.8e-6, "kg/m3", PUBLISHED, "table-z3"),
    Limit("quartz", FINE, 0.025e-6, "kg/m3", PUBLISHED, "tlv"),
    Limit("quartz", FINE, 0.05e-6, "kg/m3", PUBLISHED, "1910.1053"),
    Limit("quartz", FINE, 0.1e-6, "kg/m3", PUBLISHED, "eu-carcinogens"),
    Limit("cotton", THORACIC, 0.1e-6, "kg/m3", PUBLISHED, "tlv"),
    Limit("cotton", FINE, 0.2e-6, "kg/m3", PUBLISHED, "1910.1043"),
    Limit("cotton", TOTAL, 0.2e-6, "kg/m3", PUBLISHED, "npg"),
    Limit("other", FINE, 1.25e-6, "kg/m3", PUBLISHED, "trgs-900"),
    Limit("other", INHALABLE, 10e-6, "kg/m3", PUBLISHED, "trgs-900"),
    Limit("other", TOTAL, 15e-6, "kg/m3", PUBLISHED, "table-z1"),
    Limit("other", FINE, 5e-6, "kg/m3", PUBLISHED, "table-z1"),
    Limit("talc", FINE, 2e-6, "kg/m3", PUBLISHED, "npg"),
    Limit("glass", TOTAL, 5e-6, "kg/m3", PUBLISHED, "osha-csi"),
    Limit("glass", TOTAL, 15e-6, "kg/m3", PUBLISHED, "osha-csi"),
)
# whose limits they are, by source; what is not here is of the US
REGIONS = (("mak", "region-germany"), ("trgs-900", "region-germany"), ("eu-carcinogens", "region-eu"))

# key, label, the dusts it raises, what is particular about it, mark, source
POWDERS = (
    ("wood-flour", "powder-wood-flour", ("wood",), "powder-wood-flour.about", PUBLISHED, "npg"),
    ("silica", "powder-silica", ("silica", "other"), "powder-silica.about", COMMON, ""),
    ("quartz", "powder-quartz", ("quartz", "other"), "powder-quartz.about", PUBLISHED, "1910.1053"),
    ("cotton", "powder-cotton", ("cotton", "other"), "powder-cotton.about", PUBLISHED, "1910.1043"),
    ("milled-glass", "powder-milled-glass", ("glass", "other"), "powder-milled-glass.about", COMMON, ""),
    ("glass-spheres", "powder-glass-spheres", ("glass", "other"), "powder-glass-spheres.about", COMMON, ""),
    ("phenolic-balloons", "powder-phenolic-balloons", ("other",), "powder-phenolic-balloons.about", COMMON, ""),
    ("talc", "powder-talc", ("talc", "other"), "powder-talc.about", COMMON, ""),
    ("other", "powder-other", ("other",), "powder-other.about", COMMON, ""),
)

# key, label, the dusts it raises, what is particular about it, mark, source
SANDING = (
    ("sanding-epoxy", "dust-sanding-epoxy", ("other", "wood"), "dust-sanding-epoxy.about", COMMON, ""),
    ("sanding-glass", "dust-sanding-glass", ("other", "glass"), "dust-sanding-glass.about", COMMON, ""),
    ("sanding-wood", "dust-sanding-wood", ("wood",), "dust-sanding-wood.about", PUBLISHED, "npg"),
    ("sanding-cedar", "dust-sanding-cedar", ("red cedar", "wood"), "dust-sanding-cedar.about", PUBLISHED, "tlv"),
)

# what the dusts are called that have limits
NAMED = (("wood", "facts-dust-limits.wood"), ("red cedar", "facts-dust-limits.red-cedar"),
         ("silica", "facts-dust-limits.silica"), ("quartz", "facts-dust-limits.quartz"),
         ("cotton", "facts-dust-limits.cotton"), ("talc", "facts-dust-limits.talc"),
         ("glass", "facts-dust-limits.glass"))

# words by which a builder's own filler is known for one of the powders, in English and German, the stricter first
CALLED = (
    ("quartz", ("quartz", "sand", "stone", "slate", "granite", "quarz", "quarzsand", "quarzmehl", "steinmehl",
                "schiefermehl", "granitmehl")),
    ("silica", ("silica", "kieselsäure")),
    ("cotton", ("cotton", "flock", "flox", "lint", "baumwolle", "baumwollflocken", "baumwollfasern", "flocken")),
    ("wood-flour", ("wood", "sawdust", "hardwood", "holz", "holzmehl", "holzstaub", "hartholzmehl", "sägemehl")),
    ("phenolic-balloons", ("phenolic", "balloon", "microballoon", "phenolharz", "microballon", "mikroballon")),
    ("glass-spheres", ("sphere", "microsphere", "bubble", "hohlkugeln", "glashohlkugeln", "glaskugeln",
                       "mikrohohlkugeln")),
    ("milled-glass", ("glass", "fibreglass", "fiberglass", "glas", "glasmehl", "glasfaser", "glasfasern",
                      "glasschnitzel")),
    ("talc", ("talc", "talcum", "talkum")),
)

# Share of the outside air that a half mask may let through is 1 / APF: assigned protection factors, mark, source
MASKS = (
    ("half", "mask-half", 10, PUBLISHED, "npg"),
    ("full", "mask-full", 50, PUBLISHED, "npg"),
)


def strictest(dusts: tuple) -> Limit:
    """The strictest published limit of the dusts together.

    >>> strictest(("wood",)).value * 1e6, strictest(("silica",)).source, region(strictest(("silica",)))
    (1.0, 'mak', 'region-germany')
    """
    found = None
    for limit in LIMITS:
        if limit.dust in dusts and (found is None or limit.value < found.value):
            found = limit
    return found  # type: ignore[return-value]  # every dust has one


def region(limit: Limit) -> str:
    """Where a limit holds."""
    return dict(REGIONS).get(limit.source, "region-us")


TABLES = (
    ("facts-dust-limits", LIMITS, (0, 1), (2, 3)),
    ("facts-powders", POWDERS, (1,), (3,)),
    ("facts-sanding", SANDING, (1,), (3,)),
    ("facts-masks", MASKS, (1,), (2,)),
)
