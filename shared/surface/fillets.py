"""Fillets: how large a fillet without tape has to be, and the putty that it takes."""
from collections import namedtuple
from math import cos, sin

from ..catalogue.pots import SIZES
from ..catalogue.starts import SEAM
from ..catalogue.surfaces import BY_KEY, PLYWOOD
from ..equations import gluing
from ..equations.bulkhead import other_angle
from ..equations.fillet import area as cove_area
from ..forms.inputs import Number
from ..forms.memo import once
from ..forms.remembered import remembered, start
from ..forms.types import Values
from ..words.numbers import ceiling
from ..words.units import from_si
from . import boat_row, faces, fillets_lines, surface_leads
from .faces import FILLET

HERE = faces.only(FILLET)

INPUTS = (
    faces.WORK,
    Number("fillet_panel", "fillets-panel", unit="mm", low=0, high=60, default=start(SIZES["panel"], "mm"), above=True,
           when=HERE),
    Number("fillet_angle", "joint-angle", unit="deg", low=30, high=150, default=90, when=HERE),
    Number("fillet_length", "joint-length", unit="m", low=0, high=200, default=start(SEAM, "m"), above=True,
           when=HERE),
    Number("fillet_strength", "gluing-panel-strength", unit="MPa", low=1, high=200,
           default=start(PLYWOOD[0], "MPa"), fold=faces.AMOUNTS, when=HERE, help=faces.STRENGTH_HELP),
    remembered("face_pull", "face_pull", "fillets-face-pull", "MPa", 0.1, 30, of=BY_KEY, fold=faces.AMOUNTS,
               when=HERE),
    remembered("tooling", "tooling", "joint-tooling", "%", 0, 60, fold=faces.LOSSES, when=HERE),
)
CHECKS = ()

# sides: (angle [rad], radius [m]) of both; volume: placed with what tooling takes off [m3], of both sides
# foot: of the wider side [m]
Filleted = namedtuple("Filleted", ("sides", "volume", "foot"))


def reckon(values: Values) -> "Filleted | None":
    """The fillets; None where another work is asked."""
    return once(values, "filleted", lambda: _reckoned(values)) if values["work"] == FILLET else None


def _reckoned(values: Values) -> Filleted:
    thickness, angle = values["fillet_panel"], values["fillet_angle"]
    sides = [(one, gluing.bare_fillet_radius(thickness, cos(one / 2) / sin(one / 2), values["fillet_strength"],
                                             values["face_pull"])) for one in (angle, other_angle(angle))]
    section = sum([cove_area(radius, one) for one, radius in sides])
    legs = [radius * cos(one / 2) / sin(one / 2) for one, radius in sides]
    return Filleted(sides, section * values["fillet_length"] / (1 - values["tooling"]),
                    max(legs))


def spreaders(found: Filleted) -> "list[int]":
    """The radius of a spreader for each side [mm], rounded up: a smaller fillet is weaker than the panel."""
    return [ceiling(radius * 1000) for _, radius in found.sides]


def answer(values: Values) -> list:
    """The radii first, then the putty."""
    found = reckon(values)
    return fillets_lines.say(found, values) if found else []


def leads(values: Values) -> list:
    """The putty to Pour, and the same as a joint without tape."""
    found = reckon(values)
    if not found:
        return []
    return surface_leads.thickened(found.volume, "stands", "", "joint-to-pour.putty") + (
        boat_row.leads(values, INPUTS)) + surface_leads.as_joint(
        max([radius for _, radius in found.sides]), from_si(values["fillet_angle"], "deg"), values["fillet_panel"],
        values["fillet_length"])
