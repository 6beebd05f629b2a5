"""Hazard and precautionary statements of the GHS, and what the usual classes of product carry.

Wordings change from revision to revision and more than one is on the shelves: the product's own sheet decides.
"""
from .marks import COMMON, PUBLISHED

# code, text, pictograms, signal word, mark, source. Where a code has several categories the signs and the
# word of the worst stand here. Letters behind a code are the EU's; of two that differ in size only the worse is first.
HAZARDS = (
    ("H222", "ghs-h222", "flame", "ghs-danger", PUBLISHED, "ghs"),
    ("H223", "ghs-h223", "flame", "ghs-warning", PUBLISHED, "ghs"),
    ("H224", "ghs-h224", "flame", "ghs-danger", PUBLISHED, "ghs"),
    ("H225", "ghs-h225", "flame", "ghs-danger", PUBLISHED, "ghs"),
    ("H226", "ghs-h226", "flame", "ghs-warning", PUBLISHED, "ghs"),
    ("H227", "ghs-h227", "", "ghs-warning", PUBLISHED, "ghs"),
    ("H228", "ghs-h228", "flame", "ghs-danger", PUBLISHED, "ghs"),
    ("H229", "ghs-h229", "", "ghs-warning", PUBLISHED, "ghs"),
    ("H240", "ghs-h240", "bomb", "ghs-danger", PUBLISHED, "ghs"),
    ("H241", "ghs-h241", "bomb flame", "ghs-danger", PUBLISHED, "ghs"),
    ("H242", "ghs-h242", "flame", "ghs-danger", PUBLISHED, "ghs"),
    ("H250", "ghs-h250", "flame", "ghs-danger", PUBLISHED, "ghs"),
    ("H251", "ghs-h251", "flame", "ghs-danger", PUBLISHED, "ghs"),
    ("H252", "ghs-h252", "flame", "ghs-warning", PUBLISHED, "ghs"),
    ("H260", "ghs-h260", "flame", "ghs-danger", PUBLISHED, "ghs"),
    ("H261", "ghs-h261", "flame", "ghs-danger", PUBLISHED, "ghs"),
    ("H270", "ghs-h270", "oxidiser", "ghs-danger", PUBLISHED, "ghs"),
    ("H271", "ghs-h271", "oxidiser", "ghs-danger", PUBLISHED, "ghs"),
    ("H272", "ghs-h272", "oxidiser", "ghs-danger", PUBLISHED, "ghs"),
    ("H280", "ghs-h280", "gas", "ghs-warning", PUBLISHED, "ghs"),
    ("H281", "ghs-h281", "gas", "ghs-warning", PUBLISHED, "ghs"),
    ("H290", "ghs-h290", "corrosion", "ghs-warning", PUBLISHED, "ghs"),
    ("H300", "ghs-h300", "skull", "ghs-danger", PUBLISHED, "ghs"),
    ("H301", "ghs-h301", "skull", "ghs-danger", PUBLISHED, "ghs"),
    ("H302", "ghs-h302", "exclamation", "ghs-warning", PUBLISHED, "ghs"),
    ("H303", "ghs-h303", "", "ghs-warning", PUBLISHED, "ghs"),
    ("H304", "ghs-h304", "health", "ghs-danger", PUBLISHED, "ghs"),
    ("H305", "ghs-h305", "health", "ghs-warning", PUBLISHED, "ghs"),
    ("H310", "ghs-h310", "skull", "ghs-danger", PUBLISHED, "ghs"),
    ("H311", "ghs-h311", "skull", "ghs-danger", PUBLISHED, "ghs"),
    ("H312", "ghs-h312", "exclamation", "ghs-warning", PUBLISHED, "ghs"),
    ("H313", "ghs-h313", "", "ghs-warning", PUBLISHED, "ghs"),
    ("H314", "ghs-h314", "corrosion", "ghs-danger", PUBLISHED, "ghs"),
    ("H315", "ghs-h315", "exclamation", "ghs-warning", PUBLISHED, "ghs"),
    ("H316", "ghs-h316", "", "ghs-warning", PUBLISHED, "ghs"),
    ("H317", "ghs-h317", "exclamation", "ghs-warning", PUBLISHED, "ghs"),
    ("H318", "ghs-h318", "corrosion", "ghs-danger", PUBLISHED, "ghs"),
    ("H319", "ghs-h319", "exclamation", "ghs-warning", PUBLISHED, "ghs"),
    ("H320", "ghs-h320", "", "ghs-warning", PUBLISHED, "ghs"),
    ("H330", "ghs-h330", "skull", "ghs-danger", PUBLISHED, "ghs"),
    ("H331", "ghs-h331", "skull", "ghs-danger", PUBLISHED, "ghs"),
    ("H332", "ghs-h332", "exclamation", "ghs-warning", PUBLISHED, "ghs"),
    ("H333", "ghs-h333", "", "ghs-warning", PUBLISHED, "ghs"),
    ("H334", "ghs-h334", "health", "ghs-danger", PUBLISHED, "ghs"),
    ("H335", "ghs-h335", "exclamation", "ghs-warning", PUBLISHED, "ghs"),
    ("H336", "ghs-h336", "exclamation", "ghs-warning", PUBLISHED, "ghs"),
    ("H340", "ghs-h340", "health", "ghs-danger", PUBLISHED, "ghs"),
    ("H341", "ghs-h341", "health", "ghs-warning", PUBLISHED, "ghs"),
    ("H350", "ghs-h350", "health", "ghs-danger", PUBLISHED, "ghs"),
    ("H350i", "ghs-h350i", "health", "ghs-danger", PUBLISHED, "clp"),
    ("H351", "ghs-h351", "health", "ghs-warning", PUBLISHED, "ghs"),
    ("H360", "ghs-h360", "health", "ghs-danger", PUBLISHED, "ghs"),
    ("H360F", "ghs-h360F", "health", "ghs-danger", PUBLISHED, "clp"),
    ("H360D", "ghs-h360D", "health", "ghs-danger", PUBLISHED, "clp"),
    ("H360FD", "ghs-h360FD", "health", "ghs-danger", PUBLISHED, "clp"),
    ("H360Fd", "ghs-h360Fd", "health", "ghs-danger", PUBLISHED, "clp"),
    ("H360Df", "ghs-h360Df", "health", "ghs-danger", PUBLISHED, "clp"),
    ("H361", "ghs-h361", "health", "ghs-warning", PUBLISHED, "ghs"),
    ("H361f", "ghs-h361f", "health", "ghs-warning", PUBLISHED, "clp"),
    ("H361d", "ghs-h361d", "health", "ghs-warning", PUBLISHED, "clp"),
    ("H361fd", "ghs-h361fd", "health", "ghs-warning", PUBLISHED, "clp"),
    ("H362", "ghs-h362", "", "", PUBLISHED, "ghs"),
    ("H370", "ghs-h370", "health", "ghs-danger", PUBLISHED, "ghs"),
    ("H371", "ghs-h371", "health", "ghs-warning", PUBLISHED, "ghs"),
    ("H372", "ghs-h372", "health", "ghs-danger", PUBLISHED, "ghs"),
    ("H373", "ghs-h373", "health", "ghs-warning", PUBLISHED, "ghs"),
    ("H400", "ghs-h400", "environment", "ghs-warning", PUBLISHED, "ghs"),
    ("H401", "ghs-h401", "", "", PUBLISHED, "ghs"),
    ("H402", "ghs-h402", "", "", PUBLISHED, "ghs"),
    ("H410", "ghs-h410", "environment", "ghs-warning", PUBLISHED, "ghs"),
    ("H411", "ghs-h411", "environment", "", PUBLISHED, "ghs"),
    ("H412", "ghs-h412", "", "", PUBLISHED, "ghs"),
    ("H413", "ghs-h413", "", "", PUBLISHED, "ghs"),
    ("H420", "ghs-h420", "exclamation", "ghs-warning", PUBLISHED, "ghs"),
    ("EUH018", "ghs-euh018", "", "", PUBLISHED, "clp"),
    ("EUH019", "ghs-euh019", "", "", PUBLISHED, "clp"),
    ("EUH066", "ghs-euh066", "", "", PUBLISHED, "clp"),
    ("EUH070", "ghs-euh070", "", "", PUBLISHED, "clp"),
    ("EUH071", "ghs-euh071", "", "", PUBLISHED, "clp"),
    ("EUH204", "ghs-euh204", "", "", PUBLISHED, "clp"),
    ("EUH205", "ghs-euh205", "", "", PUBLISHED, "clp"),
    ("EUH208", "ghs-euh208", "", "", PUBLISHED, "clp"),
    ("EUH209", "ghs-euh209", "", "", PUBLISHED, "clp"),
    ("EUH210", "ghs-euh210", "", "", PUBLISHED, "clp"),
    ("EUH211", "ghs-euh211", "", "", PUBLISHED, "clp"),
    ("EUH212", "ghs-euh212", "", "", PUBLISHED, "clp"),
    ("EUH380", "ghs-euh380", "", "ghs-danger", PUBLISHED, "clp"),
    ("EUH381", "ghs-euh381", "", "ghs-warning", PUBLISHED, "clp"),
    ("EUH430", "ghs-euh430", "", "ghs-danger", PUBLISHED, "clp"),
    ("EUH431", "ghs-euh431", "", "ghs-warning", PUBLISHED, "clp"),
    ("EUH440", "ghs-euh440", "", "ghs-danger", PUBLISHED, "clp"),
    ("EUH441", "ghs-euh441", "", "ghs-danger", PUBLISHED, "clp"),
    ("EUH450", "ghs-euh450", "", "ghs-danger", PUBLISHED, "clp"),
    ("EUH451", "ghs-euh451", "", "ghs-danger", PUBLISHED, "clp"),
)

# code, text, the text on other labels (empty: the same), mark, source. P316 and P317 came with the ninth revision of
# the GHS; labels of the EU and the US still carry P310 to P313.
PRECAUTIONS = (
    ("P210", "ghs-p210", "", PUBLISHED, "ghs"),
    ("P260", "ghs-p260", "", PUBLISHED, "ghs"),
    ("P261", "ghs-p261", "", PUBLISHED, "ghs"),
    ("P264", "ghs-p264", "", PUBLISHED, "ghs"),
    ("P271", "ghs-p271", "", PUBLISHED, "ghs"),
    ("P272", "ghs-p272", "", PUBLISHED, "ghs"),
    ("P273", "ghs-p273", "", PUBLISHED, "ghs"),
    ("P280", "ghs-p280", "", PUBLISHED, "ghs"),
    ("P302+P352", "ghs-p302-p352", "ghs-p302-p352.other", PUBLISHED, "ghs"),
    ("P304+P340", "ghs-p304-p340", "ghs-p304-p340.other", PUBLISHED, "ghs"),
    ("P305+P351+P338", "ghs-p305-p351-p338", "", PUBLISHED, "ghs"),
    ("P301+P310", "ghs-p301-p310", "", PUBLISHED, "ghs"),
    ("P301+P330+P331", "ghs-p301-p330-p331", "", PUBLISHED, "ghs"),
    ("P303+P361+P353", "ghs-p303-p361-p353", "", PUBLISHED, "ghs"),
    ("P310", "ghs-p310", "ghs-p310.other", PUBLISHED, "ghs"),
    ("P313", "ghs-p313", "ghs-p313.other", PUBLISHED, "ghs"),
    ("P316", "ghs-p316", "ghs-p316.other", PUBLISHED, "ghs"),
    ("P317", "ghs-p317", "ghs-p317.other", PUBLISHED, "ghs"),
    ("P333+P313", "ghs-p333-p313", "ghs-p333-p313.other", PUBLISHED, "ghs"),
    ("P333+P317", "ghs-p333-p317", "ghs-p333-p317.other", PUBLISHED, "ghs"),
    ("P342+P311", "ghs-p342-p311", "", PUBLISHED, "ghs"),
    ("P362+P364", "ghs-p362-p364", "", PUBLISHED, "ghs"),
    ("P363", "ghs-p363", "", PUBLISHED, "ghs"),
    ("P391", "ghs-p391", "", PUBLISHED, "ghs"),
    ("P501", "ghs-p501", "", PUBLISHED, "ghs"),
)

# key, label, the codes usual for it, what to know, mark, source
CLASSES = (
    ("resin", "usual-resin", "H315, H317, H319, H411", "usual-resin.text", PUBLISHED, "sds-resin"),
    ("hardener", "usual-hardener", "H302, H312, H314, H317, H318, H332, H335, H412", "usual-hardener.text", PUBLISHED,
     "sds-hardener"),
    ("solvent", "usual-solvent", "H225, H319, H336", "usual-solvent.text", PUBLISHED, "clp-vi"),
    ("powder", "usual-powder", "", "usual-powder.text", COMMON, ""),
)

# key, what it is called, the picture in words, mark, source
PICTOGRAMS = (
    ("bomb", "pictogram-bomb", "pictogram-bomb.picture", PUBLISHED, "clp-v"),
    ("flame", "pictogram-flame", "pictogram-flame.picture", PUBLISHED, "clp-v"),
    ("oxidiser", "pictogram-oxidiser", "pictogram-oxidiser.picture", PUBLISHED, "clp-v"),
    ("gas", "pictogram-gas", "pictogram-gas.picture", PUBLISHED, "clp-v"),
    ("corrosion", "pictogram-corrosion", "pictogram-corrosion.picture", PUBLISHED, "clp-v"),
    ("skull", "pictogram-skull", "pictogram-skull.picture", PUBLISHED, "clp-v"),
    ("health", "pictogram-health", "pictogram-health.picture", PUBLISHED, "clp-v"),
    ("exclamation", "pictogram-exclamation", "pictogram-exclamation.picture", PUBLISHED, "clp-v"),
    ("environment", "pictogram-environment", "pictogram-environment.picture", PUBLISHED, "clp-v"),
)

EVERY = "facts-precedence.every"
# which sign makes an exclamation mark unnecessary: sign, the statement it must come from ("": any), the statements
# whose mark it replaces, mark, source
PRECEDENCE = (
    ("skull", "", (EVERY,), PUBLISHED, "ghs-label"),
    ("corrosion", "", ("H315", "H319"), PUBLISHED, "ghs-label"),
    ("health", "H334", ("H315", "H317", "H319"), PUBLISHED, "ghs-label"),
)
# the stronger first: a label bears one
SIGNAL_WORDS = ("ghs-danger", "ghs-warning")

# routes of acute toxicity with the same last figure are joined into one statement of the standard (CLP, Annex III)
JOINED = (
    ("H300+H310", "ghs-h300-h310"), ("H300+H330", "ghs-h300-h330"), ("H310+H330", "ghs-h310-h330"),
    ("H300+H310+H330", "ghs-h300-h310-h330"),
    ("H301+H311", "ghs-h301-h311"), ("H301+H331", "ghs-h301-h331"), ("H311+H331", "ghs-h311-h331"),
    ("H301+H311+H331", "ghs-h301-h311-h331"),
    ("H302+H312", "ghs-h302-h312"), ("H302+H332", "ghs-h302-h332"), ("H312+H332", "ghs-h312-h332"),
    ("H302+H312+H332", "ghs-h302-h312-h332"),
)
# of a statement in two sentences the code whose words are the first: where there is room for one
FIRST_SENTENCE = (("H360FD", "H360F"), ("H360Fd", "H360F"), ("H360Df", "H360D"))
# precautions whose words end without a point
NO_POINT = ("P313", "P333+P313")


def _small(code: str) -> str:
    return "".join([chr(ord(c) + 32) if "A" <= c <= "Z" else c for c in code])


def hazard(code: str) -> "tuple | None":
    """(code as the standard writes it, words, signs, signal word, mark, source) of a hazard statement, None where it is
    not held here. A joined code, H302+H312, has the words that the standard gives for the routes together.

    Letters are looked for as typed, then whatever their size; of a code with unknown letters the plain one stands.
    >>> hazard("H300+H310+H330")[1], hazard("H360fd")[0], hazard("H999")
    ('ghs-h300-h310-h330', 'H360FD', None)
    """
    parts = code.split("+")
    if len(parts) > 1:
        rows = [hazard(one) for one in parts]
        if rows[0] is None or None in rows:
            return None
        return (code, dict(JOINED)[code]) + rows[0][2:4] + (PUBLISHED, "clp")
    exact = [row for row in HAZARDS if row[0] == code]
    if exact:
        return exact[0]
    small = _small(code)
    near = [row for row in HAZARDS if _small(row[0]) == small] or [row for row in HAZARDS if row[0] == code[:4]]
    return near[0] if near else None


def signs_of(row: tuple) -> "list[str]":
    """The pictograms of a row of HAZARDS: keys."""
    return row[2].split(" ") if row[2] else []


TABLES = (
    ("facts-hazard-statements", HAZARDS, (0,), (1, 3)),
    ("facts-precautions", PRECAUTIONS, (0,), (1, 2)),
    ("facts-usual-products", CLASSES, (1,), (2, 3)),
    ("facts-pictograms", PICTOGRAMS, (1,), (2,)),
    ("facts-precedence", PRECEDENCE, (0,), (2,)),
)
