"""Examples: what a program could send, for the description of the API. Invented, and each of them is read."""
from typing import Any

from covemix.shared.forms.choices import Choice, Phone, Text
from covemix.shared.forms.clock_times import Clock
from covemix.shared.forms.declared import Input, plain
from covemix.shared.forms.quantities import Amount, Measured, Parts
from covemix.shared.forms.rows import Group, Pick
from covemix.shared.words.numbers import reading
from covemix.shared.words.units import BY_NAME, from_si, to_si

# of numbers without a default, in their own unit, by name; "name unit" where one name stands for several
NUMBERS: dict[str, float] = {
    "tolerance": 2, "eew": 190, "ahew": 50, "pot_time": 30, "pot_mass": 100, "pot_temperature": 25, "film_time": 60,
    "lowest": 12, "cure_recoat": 4, "cure_until": 24, "cure_peel": 12, "cure_handle": 8, "cure_sand": 24,
    "cure_full": 168, "cure_temperature": 20, "step g": 1, "step mL": 5, "most g": 2000, "own_error": 1, "density": 2.2,
    "loose": 0.05, "share": 50, "mixed": 100, "before": 40, "after g": 30, "after min": 25, "shown": 75, "strokes": 10,
    "volume mL": 80, "volume m3": 40, "height mm": 80, "height m": 2.3, "holds": 400, "bottom": 70, "top": 90,
    "air": 20, "temperature": 20, "mass g": 120, "filler_in": 10, "first_contact": 600, "now min": 610,
    "resin_temperature": 21, "filler %": 20, "grain": 2.2, "wanted": 30, "cup_width": 70, "at degC": 20, "at m": 1.2,
    "resin": 21, "width mm": 75, "width m": 4, "stirred": 21, "minute": 5, "strings_at": 30, "hottest_at": 45,
    "spreads_at": 20, "stiff_at": 40, "high": 24, "low": 12, "hours": 6, "post_to": 50, "post_for": 8, "hull_air": 25,
    "weave_depth": 0.2, "glass_volume": 30, "bend": 1.5, "printed": 97,
    "humidity": 65, "surface": 14, "night": 8, "angle": 110, "gap": 1, "throat": 5, "clear": 100, "bevel": 10,
    "round_over": 5, "radius": 12, "length m": 3, "putty": 90, "wet g/m": 60, "hands": 2, "smallest": 30, "soft": 20,
    "film": 60, "exponent": 0.5, "batch": 1, "started": 1_700_000_000, "duration": 25, "zone": 60, "zone_then": 120,
    "zone_next": 1_710_000_000, "sent": 1_700_000_100, "usable": 20, "now s": 1_700_000_300, "elapsed": 300,
    "seen": 280, "seen_at": 1_700_000_290, "jumped": 0, "unseen": 0, "lasts": 30, "flow": 300, "weight": 200,
    "planned": 1, "used": 22, "own_time": 24, "label_time": 30, "laid": 6, "solvent_mass": 50, "wiping": 10,
    "solvent_molar": 58.08, "solvent_limit": 500, "solvent_lower": 2.5, "shelf_life": 24, "open_life": 12,
    "off_shelf": 240,
}
RATE, STEP = 0.5, 6.0  # of an own rate [m/min] and of how long a step took [min]
PARTS = {"by_weight": "100 : 30", "by_volume": "3 : 1", "densities": "1.12 : 0.98 g/mL", "weighed": "112 : 98 g",
         "strokes": "30 : 10 mL", "ten_strokes": "336 : 98 g", "doses": "2 : 4 : 7 : 10 : 14", "holds": "60 : 20 mL",
         "steps": "1 : 0.5 mL", "packs": "1 : 5 kg", "prices": "30 : 110", "radii": "10 : 15 : 20 mm",
         "widths": "0.9 : 1.2 : 0.8 m", "depths": "0.5 : 1.5 : 1 mm", "gaps": "0.5 : 2 mm",
         "on_shelf": "1200 : 430 g"}
TEXTS = {"name": "Keel", "lot": "A-17", "timings": "stiffening 31 min 240 g cup 20 °C", "parts": "resin, hardener",
         "trials": "thick 1500 s, doubt 9 %, mass 100 g, air 20 °C, loss 110 %, heat 90 %",
         "learned": "roll 0.5, 0.41 to 0.6, from 3", "statements": "H317, H319", "find": "dew", "faces": "",
         "where": "Keel", "who": "Neighbour", "made": "2026-03-15", "opened": "2026-06", "day": "2026-11-29"}
CLOCK = "14:30"


def example(item: Input) -> Any:
    """What could stand under the plain name of an input: its default, else something sensible.

    >>> from covemix.shared.forms.inputs import Number
    >>> example(Number("air", "", unit="degC")), example(Number("thickness", "", unit="mm", default=6))
    ('20 degC', '6 mm')
    """
    return item.exemplified(Examples())


class Examples:
    """What could stand there, by kind of input; each kind chooses (`Input.exemplified`)."""

    def untouched(self, item: Input) -> str:
        """What stands there while nobody says anything."""
        return item.default_in("metric")

    def words(self, item: Text) -> str:
        return item.default or TEXTS.get(item.name, "Keel")

    def phone(self, item: Phone) -> str:
        return "112"

    def clock(self, item: Clock) -> str:
        return item.default or CLOCK

    def option(self, item: Choice) -> str:
        return item.default or next(option[0] for option in item.options if option[0])

    def quantity(self, item: Measured) -> str:
        text = plain(number(item))
        return text if BY_NAME[item.unit].quantity == "count" else f"{text} {item.unit}"

    def quantities(self, item: Parts) -> str:
        return item.default + " " + item.unit if item.default and item.unit else item.default or PARTS[item.name]

    def amount(self, item: Amount) -> str:
        return plain(item.default or 240) + " " + item.options[0][2][0]

    def row(self, item: Pick) -> str:
        return item.default or (item.record.rows[0][0] if item.record.rows else "")

    def rows(self, item: Group) -> list[dict]:
        return [{field.name: example(field) for field in item.fields if field.must_be_sent()}]


def number(item: Input, unit: str = "") -> float:
    """An example of a number, in its own unit or in another of its quantity.

    >>> from covemix.shared.forms.inputs import Number
    >>> number(Number("air", "", unit="degC"), "K")
    293.15
    """
    own = getattr(item, "unit", "")
    value = getattr(item, "default", None)
    if value is None:
        value = NUMBERS.get(item.name, NUMBERS.get(f"{item.name} {own}"))
    if value is None:
        value = RATE if own == "m/min" else STEP
    return value if not unit or unit == own else round(from_si(to_si(value, own), unit), 9)


def numbers(item: Parts, unit: str) -> list[float]:
    """An example of a list of numbers, in a unit."""
    pieces = (item.default or PARTS[item.name]).split(":")
    read = [reading(piece)[0] or 0.0 for piece in pieces]
    return read if unit == item.unit else [round(from_si(to_si(one, item.unit), unit), 9) for one in read]


# of each move a whole question
BODIES: dict[str, dict[str, Any]] = {
    "ratio": {"system": {"by_weight": [100, 30]}, "amount_g": 240},
    "measure": {"system": {"by_weight": "100:30"}, "way": "scale", "amount_g": 200, "readings": [{"shown_g": 150}]},
    "rescue": {"system": {"by_weight": "100:30"}, "way": "scale", "in_cup": [{"mass_g": 120}, {"mass_g": 40}]},
    "thicken": {"system": {"by_weight": [100, 30], "densities_g_per_mL": [1.12, 0.98]}, "amount_g": 200,
                "filler": "silica", "stiffness": "stands"},
    "pouring": {"system": {"by_weight": [100, 30]}, "way": "scale", "amount_g": 200},
    "heat": {"air_degC": 25, "batch_g": 240, "container": "cup"},
    "trial": {"system": "3-1", "mass_g": 100, "air_degC": 21, "strings_at_min": 30},
    "cure": {"system": "3-1", "air_degC": 18, "mixed_at": "14:30"},
    "dew": {"air_degC": 18, "humidity_percent": 70, "surface_degC": 14},
    "joint": {"kind": "inside", "thickness_mm": 6, "angle_deg": 110, "length_m": 2.4},
    "coats": {"work": "coat", "faces": [{"length_m": 2.4, "widths_m": [1.2], "count": 2}], "coats": 3, "air_degC": 18},
    "sheathing": {"work": "sheathe", "faces": [{"length_m": 4, "widths_m": [0.9, 1.2, 0.8]}],
                  "cloth_weight_g_per_m2": 200},
    "fairing": {"work": "fair", "faces": [{"area_m2": 6}], "fair_depth_mm": 1.5, "filler": "glass-spheres"},
    "gluing": {"work": "scarf", "glued_thickness_mm": 6, "scarf_width_mm": 1220, "scarf_ratio": 8},
    "fillets": {"work": "fillet", "fillet_panel_mm": 9, "fillet_angle_deg": 90, "fillet_length_m": 3},
    "spreader": {"radii_mm": [10, 15, 20], "paper": "a4"},
    "boat": {"joints": [{"name": "Keel", "kind": "both", "thickness_mm": 6, "length_m": 3.05}], "people": 2},
    "plan": {"pieces": [{"name": "Keel", "length_m": 3, "putty_g_per_m": 90, "wet_g_per_m": 60}],
             "temperature_degC": 20, "start": "8:00"},
    "run": {"pieces": [{"name": "Keel", "length_m": 2.4, "putty_g_per_m": 57, "wet_g_per_m": 39}],
            "temperature_degC": 20, "ran": [{"step": "pour_mix", "at_min": 1}], "ran_age_min": 5},
    "pot": {"started_s": 1_700_000_000, "duration_min": 25, "zone_min": 60, "zone_then_min": 60,
            "now_s": 1_700_000_300, "jumped_s": 0, "unseen_s": 0},
    "timer": {"lasts_min": 30, "now_s": 1_700_000_300, "jumped_s": 0, "unseen_s": 0},
    "kit": {"kind": "scale", "scale": {"name": "Bench", "step_g": 1, "most_g": 2000}},
    "log": {"what": "Keel", "mass_g": 240, "own_time_min": 24, "label_time_min": 30},
    "timings": {"rows": [{"own_time_min": 24, "label_time_min": 30}, {"own_time_min": 26, "label_time_min": 30},
                         {"own_time_min": 25, "label_time_min": 30}]},
    "own_rates": {"rows": [{"laid_m": 5, "roll_min": 10}, {"laid_m": 6, "roll_min": 12}]},
    "aid": {}, "calls": {"numbers": {"ambulance": "112"}},
    "safety": {"task": "mix"}, "air": {"place": "room", "room": "shed", "solvent": "none"},
    "sources": {"mark": "published", "find": "dew"},
}
