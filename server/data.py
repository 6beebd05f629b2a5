"""Data: what a move found, as named SI values and rows beside its lines. Names, units and meanings: `data_names`.

For each move a function of (what its `reckon` found, the values, the reader) and the names that it tells: SHAPES. It is
asked by a program alone: a phone does not have it.
"""
from collections.abc import Callable
from functools import cache
from typing import Any

from covemix.shared.boat import phases
from covemix.shared.boat.hull import epoxy_in
from covemix.shared.clock import cure_stops
from covemix.shared.door import moves
from covemix.shared.files import table_rows as tables
from covemix.shared.mix.label_words import parts_said
from covemix.shared.mix.ratio_doubt import own_error
from covemix.shared.mix.ratio_doubt_lines import stopped
from covemix.shared.plan import run_dates
from covemix.shared.words.languages import Reader
from covemix.shared.words.texts import said

from . import data_surface

Data = dict[str, Any]
ERRORS = "wanted_error ratio_error rounding_error reading_error in_ratio"
MEASURED = "way pours parts_done smallest_mass smallest_volume smallest_strokes too_small too_much_for_scale " + ERRORS
PARTS = "part name mass volume"
OF_TOOL = (" scale_reading strokes fills full_fill last_fill level_volume level_height exact_volume mark_cost "
           "lacking_volume lacking_mass")
POT = "usable_time thick_time usable_share highest_peak_temperature lowest_peak_temperature"
OF_PHASE = "mixed_mass putty_volume filler_mass glass_mass ply_area added_mass"
# move: (names of single values, {table: names of its columns})
SHAPES: dict[str, tuple[str, dict[str, str]]] = {
    "ratio": ("mass volume density hardener_per_hundred ideal_per_hundred share_of_ideal label_contradicts_itself "
              "label_gap more_hardener_than_resin", {"parts": PARTS + " parts_by_weight parts_by_volume"}),
    "measure": (MEASURED + " wanted_volume whole_volume whole_mass worst_reading_error narrower_width cup_takes "
                "fill_height mass_in_cup scale_error " + POT,
                {"parts": PARTS + OF_TOOL, "tools": "way ratio_error smallest_mass smallest_volume holds_ratio"}),
    "rescue": ("state time_left stir_time usable_time must_add in_ratio ratio_error wanted_error mass volume fits_cup "
               "cup_takes add_filler_mass mass_in_cup",
               {"parts": "part name add_mass add_volume add_least_mass add_least_volume"}),
    "thicken": ("putty_mass putty_volume putty_density dose dose_error first_filler_mass air_share too_dry stands "
                "yield_stress_needed thickest_pass", {"fillers": "name mass loose_volume scoops"}),
    "pouring": ("way pours parts_done mass volume stir_time too_small ratio_error in_ratio first_filler_mass "
                "rest_filler_mass putty_mass "
                "usable_time thick_time", {"parts": PARTS + OF_TOOL}),
    "heat": (POT + " peak_time end_temperature latest_thick_time usable_time_in_tray "
             "usable_time_of_half usable_time_in_shade next_within working_temperature too_cold largest_mass "
             "calm_layer sun_heat heat_of_mix balance_time rule_time label_facts_apart pot_life_from_memory",
             {"curve": "time temperature"}),
    "trial": ("thick_time least_thick_time most_thick_time usable_time least_usable_time most_usable_time sure_enough",
              {"curve": "time temperature"}),
    "cure": ("recoat_may_be_shut never_cures time_too_cold day_counts working_temperature post_cure_needed "
             "least_softening_temperature most_softening_temperature least_conversion most_conversion",
             {"windows": "window from to",
              "suns": "colour sunny_air_temperature least_hull_temperature most_hull_temperature verdict"}),
    "dew": ("dew_point above_dew_point wanted_above_dew_point dew_point_error night_above_dew_point "
            "keep_above_temperature dew_danger", {}),
    "joint": ("putty_mass putty_volume liquid_mass glass_mass added_mass area passes ply_length outer_radius "
              "outer_cover gap_too_wide glass_too_heavy resin_on_mass least_flank useful_flank wanted_flank wanted_lap "
              "laminate_thickness ply_width placed_volume tooled_mass left_in_tools wet_out_mass ply_mass spare_mass "
              "fill_mass neat_mass strong_flank outer_flank panel_strength would_layers would_width would_areal_weight "
              "would_carry_pull",
              {"coves": "side at angle radius decided_by throat leg width arc",
               "tapes": "face width areal_weight count length", "pieces": "face width piece_length",
               "strength": "case carried_share fails_first"}),
    "spreader": ("sheet_width sheet_height", {"templates": "radius x y"}),
    "boat": ("mixed_mass putty_mass putty_volume epoxy_mass filler_mass liquid_mass glass_mass added_mass length "
             "batch_count putty_batches liquid_batches packs_hold packs_over packs_cost cheapest_cost cheapest_over "
             "cloth_saves_mass coat_saves_mass fairing_saves_mass",
             {"parts": "part name mass", "shopping": "item count mass length width areal_weight",
              "packs": "count part name mass", "joints": "joint joint_place count length radius putty_volume",
              "cuts": "material width areal_weight stock stock_place stock_length piece joint face length",
              "phases": "phase " + OF_PHASE + " batch_count cups bags trays brushes abrasive_sheets",
              "surfaces": "surface work " + OF_PHASE, "cheapest_packs": "count part name mass",
              "spreaders": "radius"}),
    "plan": ("possible batch_count crews end cups bags gloves limited_by slack window_share largest_mix "
             "smallest_mass surplus_mass late_by too_cold working_temperature",
             {"batches": "batch crew start end latest_start done length too_late air_temperature surplus_mass",
              "deadlines": "batch window done_by",
              "mixes": "batch mix mass measured_mass filler_mass bag_volume tray_mass surplus_mass",
              "parts": "batch mix part name mass", "steps": "batch crew step who start end done",
              "windows": "window mass temperature usable_time thick_time longer_time",
              "helps": "helps batch_count",
              "layers": "crew surface coat area start end latest_start done pot_count pot_mass sand_first next_from "
                        "next_until sand_from"}),
    "run": ("batch limited_by time_left length run_age cut_length two_lay_all some_tape_lies peel_age coat_from_age "
            "coat_until_age", {"steps": "step step_kind batch_piece length mass volume planned_time done done_age",
                               "windows": "window outlook time_left usable_time begun_age until_age ready_age"}),
    "pot": ("time_left time_passed time_over duration ends_at clock_doubt", {"alarms": "place due_at"}),
    "timer": ("time_left time_passed jumped unseen clock_doubt", {}),
    "kit": ("kind started_from used_up signal_word", {"statements": "code hazard"}),
    "log": ("nothing_to_keep against_label", {}),
    "timings": ("shortest_time against_label count", {}),
    "own_rates": ("", {"rates": "step rate least_rate most_rate count"}),
    "aid": ("rinse_time water_volume", {"statements": "topic code mark source"}),
    "calls": ("", {"numbers": "kind name number"}),
    "safety": ("signal_word", {"statements": "statement topic mark source", "codes": "code hazard", "signs": "sign"}),
    "air": ("room_volume changes_of_air clearing_time fan_passes opening_needed flow_needed vapour_share vapour_limit "
            "explosive_limit may_explode above_limit dust_limit floating_mass", {}),
    "sources": ("", {"facts": "fact table mark source"}),
} | data_surface.SHAPES


def data(name: str, values: dict, who: Reader) -> Data:
    """What a move found, every name of its shape there: null or no rows where nothing is known.

    values: as read, without errors
    """
    asked = moves.module(name)
    found = getattr(asked, "reckoned", asked.reckon)(values)
    told = {} if found is None else FUNCTIONS[name](found, values, who)
    singles, tables = _names(name)
    unknown = told.keys() - singles.keys() - tables.keys()
    unknown.update(key for table, columns in tables.items() for row in told.get(table, ())
                   for key in row.keys() - columns.keys())
    if unknown:
        raise KeyError(f"{name} tells what nothing declares: {sorted(unknown)}")
    return singles | {one: told[one] for one in told if one in singles} | {
        table: [columns | row for row in told.get(table, ())] for table, columns in tables.items()}


@cache
def _names(name: str) -> tuple[Data, dict[str, Data]]:
    """The single values of a shape, and the columns of each of its tables, all of them null."""
    singles, tables = SHAPES[name]
    return dict.fromkeys(singles.split()), {table: dict.fromkeys(columns.split()) for table, columns in tables.items()}


def _parts(system: dict, who: Reader, **columns: Any) -> list[Data]:
    """A row of each part. columns: a sequence each, in the order of the label, empty where nothing is known"""
    rows = []
    for place, name in enumerate(parts_said(system)):
        row = {"part": tables.LETTERS[place], "name": said(name, who)}
        row.update((key, each[place]) for key, each in columns.items() if each and place < len(each))
        rows.append(row)
    return rows


def _off(off: Any) -> Data:
    return {} if off is None else {"ratio_error": off.error, "in_ratio": not off.off}


def _used(usable: Any) -> Data:
    if usable is None:
        return {}
    return {"usable_time": usable.time, "thick_time": usable.end, "usable_share": usable.share}


def _band(peak: Any) -> Data:
    return {} if peak is None else {"highest_peak_temperature": peak.hot, "lowest_peak_temperature": peak.cool}


def ratio(found: Any, values: dict, who: Reader) -> Data:
    mix, by_weight = found.mix, not stopped(found.weighs)
    return {"mass": mix.mass, "volume": mix.volume,
            "density": mix.density, "hardener_per_hundred": found.phr if by_weight else None,
            "ideal_per_hundred": found.ideal, "share_of_ideal": found.of_ideal,
            "label_contradicts_itself": found.apart is not None, "label_gap": found.apart and found.apart.error,
            "more_hardener_than_resin": found.turned,
            "parts": _parts(values["system"], who, mass=mix.masses if by_weight else (),
                            volume=() if stopped(found.fills) else mix.volumes,
                            parts_by_weight=found.by_weight if by_weight else (),
                            parts_by_volume=() if stopped(found.fills) else found.by_volume)}


def _way(found: Any, values: dict, who: Reader) -> Data:
    """What the tool must show, by the module of its way."""
    way, system = values["way"], values["system"]
    told: Data = {"way": way, "pours": 1}
    if way == "scale":
        told |= {"parts_done": found.display.done, "wanted_error": found.most, "reading_error": found.spread,
                 "scale_error": own_error(values["scale"]),
                 "smallest_mass": found.least, "too_small": found.too_small, "too_much_for_scale": found.over,
                 "rounding_error": found.rounding and found.rounding.error,
                 "parts": _parts(system, who, mass=found.display.masses, scale_reading=found.display.readings)}
        return told | _off(found.poured)
    if way == "pumps":
        lacks = [[one and getattr(one, of) for one in found.top_up] for of in ("volume", "mass")]
        told |= {"parts_done": found.done, "rounding_error": found.off.error, "wanted_error": found.off.most,
                 "smallest_strokes": found.least and sum(found.least.counts), "too_small": found.least is None,
                 "whole_volume": sum(found.strokes.volumes), "whole_mass": found.mass, "wanted_volume": found.wanted,
                 "parts": _parts(system, who, strokes=found.strokes.counts, volume=found.strokes.volumes,
                                 lacking_volume=lacks[0], lacking_mass=lacks[1])}
        return told | _off(found.outcome)
    if way == "stick":
        told |= {"parts_done": found.done, "pours": found.times, "wanted_error": found.wanted,
                 "reading_error": found.spread, "smallest_volume": found.least, "cup_takes": found.usable,
                 "worst_reading_error": found.worst, "narrower_width": found.narrower and found.narrower.width,
                 "parts": _parts(system, who, volume=found.volumes, level_height=found.marks,
                                 mark_cost=[one.error for one in found.costs])}
        return told | _off(found.outcome)
    marks = found.marks
    pours = found.times if way == "graduated" else 1
    told["pours"] = pours
    told |= {"too_small": marks is None or marks.too_small}
    if marks is None:
        return told
    more: Data = {"level_volume": found.levels, "exact_volume": found.each} if way == "graduated" else {
        "exact_volume": marks.wanted,
        "fills": [one.times for one in found.fills], "full_fill": [one.full for one in found.fills],
        "last_fill": [one.last for one in found.fills]}
    told |= {"parts_done": marks.done, "rounding_error": marks.off.error, "wanted_error": marks.off.most,
             "reading_error": marks.spread, "smallest_volume": marks.least, "whole_volume": sum(marks.volumes) * pours,
             "wanted_volume": sum(marks.wanted),
             "parts": _parts(system, who, volume=marks.volumes, **more)}
    return told | _off(marks.outcome)


def measure(found: Any, values: dict, who: Reader) -> Data:
    told = _way(found.way, values, who)
    if found.room:
        told |= {"fill_height": found.room.height, "cup_takes": found.room.usable, "pours": found.room.times}
    if found.in_use:
        told |= _used(found.in_use.usable) | _band(found.in_use.peak)
    if found.held:
        told["mass_in_cup"] = found.held.mass
    if found.tools:
        told["tools"] = [{"way": one.way, "ratio_error": one.error, "holds_ratio": one.error <= found.tools.limit,
                          "smallest_mass": one.least if one.unit == "kg" else None,
                          "smallest_volume": one.least if one.unit == "m3" else None}
                         for one in found.tools.standings]
    return told


def rescue(found: Any, values: dict, who: Reader) -> Data:
    kind, clock = ("mass" if found.unit == "kg" else "volume"), found.clock
    return {"state": clock.state, "time_left": clock.left, "stir_time": clock.stir,
            "usable_time": clock.usable and clock.usable.time, "must_add": found.needed, "wanted_error": found.most,
            kind: found.total, "fits_cup": found.fit and found.fit.fits, "cup_takes": found.fit and found.fit.usable,
            "add_filler_mass": found.filler and found.filler.exact, "mass_in_cup": found.held,
            "parts": _parts(values["system"], who, **{f"add_{kind}": found.exact, f"add_least_{kind}": found.least}),
            } | _off(found.off)


def thicken(found: Any, values: dict, who: Reader) -> Data:
    if found.packed:
        return {"too_dry": True}
    fillers = [values["filler"], *[row["filler"] for row in values.get("blend") or ()]]
    names = [one["name"] if one["name"] and not one["id"] else one["id"] or one["name"] for one in fillers]
    return {"too_dry": False, "putty_mass": found.mass, "putty_volume": found.volume, "putty_density": found.density,
            "dose": found.dose, "dose_error": found.spread, "first_filler_mass": found.first, "air_share": found.air,
            "stands": found.stands and found.stands.holds,
            "yield_stress_needed": found.stands and found.stands.needed,
            "thickest_pass": found.stands and found.stands.thickest,
            "fillers": [{"name": name, "mass": one.mass, "loose_volume": one.loose, "scoops": one.scoops}
                        for name, one in zip(names, found.fillers, strict=False)]}


def pouring(found: Any, values: dict, who: Reader) -> Data:
    if found.hopeless:
        return {"way": values["way"], "too_small": True}
    told = {key: value for key, value in _way(found.way, values, who).items() if key in ("way", "parts", "parts_done")}
    used = {key: value for key, value in _used(found.in_use and found.in_use.usable).items() if key != "usable_share"}
    return told | used | _off(found.off) | {
        "too_small": False, "pours": found.times, "mass": found.mix.mass, "volume": found.mix.volume,
        "stir_time": found.stir, "first_filler_mass": found.putty and found.putty.first,
        "rest_filler_mass": found.rest, "putty_mass": found.putty and found.putty.mass}


def heat(found: Any, values: dict, who: Reader) -> Data:
    peak, largest = found.peak, found.largest
    return _used(found.best) | {
        "highest_peak_temperature": peak.temperature, "lowest_peak_temperature": peak.cool, "peak_time": peak.time,
        "end_temperature": found.then, "latest_thick_time": found.latest,
        "usable_time_in_tray": found.tray and found.tray.time, "usable_time_of_half": found.half and found.half.time,
        "usable_time_in_shade": found.sun and found.sun.shade.time, "next_within": found.next_by,
        "working_temperature": found.lowest, "too_cold": found.cold, "largest_mass": largest and largest.mass,
        "calm_layer": found.layer, "sun_heat": found.sun.flux if found.sun else 0.0,
        "heat_of_mix": found.heat, "balance_time": found.best.model, "rule_time": found.best.quick,
        "label_facts_apart": found.apart, "pot_life_from_memory": found.from_memory, "curve": _curve(found.run)}


def _curve(run: Any) -> list[Data]:
    return [{"time": time, "temperature": temperature} for time, temperature, *_ in run.points]


def trial(found: Any, values: dict, who: Reader) -> Data:
    told: Data = {"thick_time": found.fit.end, "least_thick_time": found.thick[0], "most_thick_time": found.thick[1],
                  "sure_enough": found.sure, "curve": _curve(found.fit.run)}
    if found.usual:
        told |= {"usable_time": found.usual.usable.time, "least_usable_time": found.usual.least,
                 "most_usable_time": found.usual.most}
    return told


VERDICTS = {cure_stops.STAYS: "stays", cure_stops.MAY: "may", cure_stops.SOFTENS: "softens"}


def cure(found: Any, values: dict, who: Reader) -> Data:
    recoat, limit = found.recoat, found.limit
    rows = [{"window": "recoat", "from": recoat.opens, "to": recoat.closes}] if recoat else []
    rows += [{"window": stage.name, "from": stage.time} for stage in found.stages]
    held = limit.after or limit.before
    return {"recoat_may_be_shut": recoat and recoat.shut, "never_cures": found.stops, "time_too_cold": found.lost,
            "day_counts": found.day_counts, "working_temperature": found.lowest,
            "post_cure_needed": limit.post and limit.post.needed,
            "least_softening_temperature": held and held.glass[0],
            "most_softening_temperature": held and held.glass[1], "least_conversion": held and held.conversion[0],
            "most_conversion": held and held.conversion[1], "windows": rows,
            "suns": [{"colour": one.colour, "sunny_air_temperature": one.air, "least_hull_temperature": one.surface[0],
                      "most_hull_temperature": one.surface[1], "verdict": VERDICTS.get(one.verdict)}
                     for one in limit.suns]}


def dew(found: Any, values: dict, who: Reader) -> Data:
    night = found.night
    return {"dew_point": found.dew_point, "above_dew_point": found.margin, "wanted_above_dew_point": found.wanted,
            "dew_point_error": found.unsure, "night_above_dew_point": night and night.margin,
            "keep_above_temperature": night and night.keep_above, "dew_danger": found.in_danger}


def joint(found: Any, values: dict, who: Reader) -> Data:
    sizes = iter(found.sizes)
    coves = []
    for one in found.coves:
        size = next(sizes) if one.radius else None
        coves.append({"side": one.side, "at": one.at, "angle": one.angle, "radius": one.radius, "decided_by": one.why,
                      "throat": size and size.throat, "leg": size and size.leg,
                      "width": size and size.width, "arc": size and size.arc})
    would = found.strength and found.strength.would
    return {"putty_mass": found.mix.putty, "putty_volume": found.mix.volume, "liquid_mass": found.mix.liquid,
            "laminate_thickness": found.seam.laminate or None, "ply_width": found.seam.ply_width or None,
            "placed_volume": found.shares.in_place, "tooled_mass": found.shares.tooled,
            "left_in_tools": found.shares.kept, "wet_out_mass": found.shares.wet_out,
            "ply_mass": found.shares.ply_takes, "spare_mass": found.shares.spare, "fill_mass": found.shares.weave,
            "neat_mass": found.shares.prime, "strong_flank": found.strength and found.strength.flank,
            "outer_flank": found.edge and found.edge.flank,
            "pieces": [{"face": one.face, "width": one.width, "piece_length": piece} for one in found.tapes
                       for piece in one.pieces],
            "panel_strength": found.strength and found.strength.strength, "would_layers": would and would.layers,
            "would_width": would and would.width, "would_areal_weight": would and would.areal,
            "would_carry_pull": would and would.pulls, "glass_mass": found.shares.glass,
            "added_mass": found.shares.added, "area": found.shares.section,
            "passes": found.passes, "ply_length": found.ply_length, "outer_radius": found.edge and found.edge.radius,
            "outer_cover": found.edge and found.edge.cover, "gap_too_wide": bool(found.slips.wide_gap),
            "glass_too_heavy": bool(found.slips.heavy_glass), "coves": coves,
            "resin_on_mass": found.shares.wet_out + found.shares.weave, "least_flank": found.flank,
            "useful_flank": found.strength and found.strength.useful,
            "wanted_flank": found.strength and found.strength.wanted,
            "wanted_lap": found.strength and found.strength.lap,
            "strength": [{"case": one.key, "carried_share": one.share, "fails_first": one.limit}
                         for one in (found.strength.cases if found.strength else ())],
            "tapes": [{"face": one.face, "width": one.width, "areal_weight": one.areal,
                       "count": len(one.pieces) * int(values["copies"]), "length": one.length} for one in found.tapes]}


def spreader(found: Any, values: dict, who: Reader) -> Data:
    return {"sheet_width": found.width / 1000, "sheet_height": found.height / 1000,
            "templates": [{"radius": one.radius / 1000, "x": one.centre[0] / 1000, "y": one.centre[1] / 1000}
                          for one in found.templates or ()]}


def boat(found: Any, values: dict, who: Reader) -> Data:
    sums, mixed = found.sums, found.mixed
    names = parts_said(values["system"])
    packs, cheapest = [[{"count": count, "part": tables.LETTERS[place], "name": said(names[place], who), "mass": mass}
                        for count, masses in (one.rows if one else ()) for place, mass in enumerate(masses)]
                       for one in (found.packs, found.cheapest)]
    return {"mixed_mass": mixed.all, "putty_mass": mixed.putty, "putty_volume": found.putty,
            "epoxy_mass": epoxy_in(mixed.putty, values),
            "filler_mass": mixed.filler, "liquid_mass": mixed.liquid,
            "glass_mass": sums.glass + sum(one.glass for one in found.phases if one.name == phases.SHEATHING),
            "added_mass": found.added, "length": sums.length, "batch_count": mixed.batches,
            "putty_batches": mixed.putty_batches, "liquid_batches": mixed.liquid_batches,
            "packs_hold": found.packs and found.packs.held, "packs_over": found.packs and found.packs.over,
            "parts": _parts(values["system"], who, mass=found.parts or ()), "packs": packs,
            "packs_cost": found.packs and found.packs.cost, "cheapest_packs": cheapest,
            "cheapest_cost": found.cheapest and found.cheapest.cost,
            "cheapest_over": found.cheapest and found.cheapest.over, "cloth_saves_mass": found.saved.cloth,
            "coat_saves_mass": found.saved.coat, "fairing_saves_mass": found.saved.fairing,
            "spreaders": [{"radius": radius / 1000} for radius in found.radii],
            "surfaces": [{"surface": tables.called(one.row), "work": one.row["work"],
                          **_phase(phases.together(phases.of_surface(one, values)))} for one in found.surfaces],
            "shopping": tables.shopping(found),
            "joints": [_joint(one) for one in found.joints], "cuts": tables.cuts(found),
            "phases": [{"phase": one.name, **_phase(one), "batch_count": int(one.batches), "cups": int(one.cups),
                        "bags": int(one.bags), "trays": int(one.trays), "brushes": int(one.brushes),
                        "abrasive_sheets": int(one.sheets)} for one in found.phases]}


def _phase(one: Any) -> Data:
    return {"mixed_mass": one.resin, "putty_volume": one.putty, "filler_mass": one.filler + one.light,
            "glass_mass": one.glass, "ply_area": one.ply, "added_mass": one.stays}


def _joint(one: Any) -> Data:
    copies = int(one.row["copies"])
    return {"joint": tables.called(one.row), "joint_place": one.row["place"], "count": copies,
            "length": one.seam.length * copies, "putty_volume": one.seam.putty * copies,
            "radius": max((cove.radius for cove in one.coves), default=0.0)}


WHO = ("first", "second", "mixer")


def plan(found: Any, values: dict, who: Reader) -> Data:
    if found.none:
        return {"possible": False, "too_cold": found.cold is not None,
                "working_temperature": found.cold and found.cold.least, "late_by": getattr(found.none, "over", None),
                "limited_by": getattr(found.none, "limit", None), "smallest_mass": getattr(found.none, "least", None),
                "largest_mix": getattr(found.none, "most", None),
                "helps": [{"helps": one.name} for one in getattr(found.none, "helps", None) or ()]}
    summary = found.summary
    coats = [row | {"surface": str(row["surface"]), "area": one.row["area"], "sand_first": one.latest is None,
                    "next_from": one.opens, "next_until": one.closes, "sand_from": one.sands}
             for row, one in zip(tables.layers(found), found.layers, strict=True)]
    told: Data = {"possible": True, "too_cold": found.cold is not None,
                  "working_temperature": found.cold and found.cold.least, "layers": coats}
    if summary is None:
        return told
    told |= {
        "batch_count": summary.count, "crews": summary.crews,
        "end": summary.end, "limited_by": summary.binding.limit, "slack": summary.slack,
        "window_share": summary.share, "cups": summary.ready.cups, "bags": summary.ready.bags,
        "gloves": summary.ready.gloves, "deadlines": [
            {"batch": one.batch.number, "window": limit, "done_by": by} for one in found.batches
            for limit, by in [*one.batch.deadlines, *([("tape", one.details.tape)]
                                                      if one.details and one.details.tape is not None else [])]],
        "largest_mix": summary.largest, "smallest_mass": summary.least, "surplus_mass": summary.over,
        "late_by": found.asked.late, "batches": [
            row | {"surplus_mass": one.details and one.details.over}
            for row, one in zip(tables.batches(found), found.batches, strict=True)],
        "mixes": [], "parts": [], "steps": [],
        "windows": [{"window": one.limit, "mass": one.mass, "temperature": one.at, "usable_time": one.span,
                     "thick_time": one.end, "longer_time": one.longer} for one in summary.windows],
        "helps": [{"helps": one.name, "batch_count": one.batches} for one in summary.helps or ()]}
    for one in found.batches:
        batch, details = one.batch, one.details
        told["steps"] += [{"batch": batch.number, "crew": batch.crew, "step": step.key, "who": WHO[step.who],
                           "start": step.start, "end": step.end, "done": step.done} for step in batch.steps]
        for mix in details.mixes if details else ():
            told["mixes"].append({"batch": batch.number, "mix": mix.name, "mass": mix.whole,
                                  "measured_mass": mix.mass, "filler_mass": mix.filler,
                                  "bag_volume": mix.bag, "tray_mass": mix.tray,
                                  "surplus_mass": mix.over})
            told["parts"] += [{"batch": batch.number, "mix": mix.name, **row}
                              for row in (_parts(values["system"], who, mass=mix.parts) if mix.parts else ())]
    return told


def run(found: Any, values: dict, who: Reader) -> Data:
    tightest, tape = found.window, found.tape
    return _dates(found) | {
        "batch": found.batch.number, "limited_by": tightest and tightest.limit,
        "time_left": tightest and tightest.left, "length": tape and tape.length, "run_age": found.age,
        "cut_length": found.cut, "two_lay_all": tape and tape.two, "some_tape_lies": tape and tape.laying,
        "steps": [{"step": one.name, "step_kind": one.key, "batch_piece": one.piece + 1 or None,
                   "length": one.length or None, "mass": one.mass or None, "volume": one.volume or None,
                   "planned_time": one.lasts or None, "done": one.done is not None, "done_age": one.done}
                  for one in found.steps],
        "windows": [{"window": one.limit, "outlook": one.state, "time_left": one.left,
                     "usable_time": one.by - one.begun, "begun_age": one.begun, "until_age": one.by,
                     "ready_age": one.end} for one in found.windows]}


def _dates(found: Any) -> Data:
    """When the peel ply may come off, and from when until when a coat may follow."""
    told = run_dates.ages(found)
    dates: Data = {} if told.off is None else {"peel_age": told.off}
    if told.opens is not None and told.opens < told.closes:
        dates |= {"coat_from_age": told.opens, "coat_until_age": told.closes}
    return dates


def pot(found: Any, values: dict, who: Reader) -> Data:
    now = found.state
    return {"time_left": now.left, "time_passed": now.passed, "time_over": now.over, "duration": found.duration,
            "ends_at": now.end, "clock_doubt": bool(found.doubts.clock or found.doubts.unfit or found.doubts.lost),
            "alarms": [{"place": one.place, "due_at": one.due} for one in found.alarms]}


def timer(found: Any, values: dict, who: Reader) -> Data:
    now = found.passed
    return {"time_left": found.left, "time_passed": now.seconds, "jumped": now.jumped, "unseen": now.unseen,
            "clock_doubt": bool(now.lost)}


def _statements(own: Any) -> list[Data]:
    return [{"code": one.code, "hazard": one.hazard} for one in own]


def kit(found: Any, values: dict, who: Reader) -> Data:
    return {"kind": found.record.name, "started_from": found.started_from or None, "used_up": found.used_up,
            "signal_word": found.signal or None, "statements": _statements(found.own)}


def log(found: Any, values: dict, who: Reader) -> Data:
    return {"nothing_to_keep": found.empty, "against_label": found.share}


def timings(found: Any, values: dict, who: Reader) -> Data:
    return {"shortest_time": found.shortest, "against_label": found.share, "count": found.count}


def own_rates(found: Any, values: dict, who: Reader) -> Data:
    return {"rates": [{"step": one.name, "rate": one.learned.rate, "least_rate": one.learned.low,
                       "most_rate": one.learned.high, "count": one.learned.count} for one in found]}


def aid(found: Any, values: dict, who: Reader) -> Data:
    return {"rinse_time": found.minutes, "water_volume": found.water,
            "statements": [{"topic": step[0], "code": step[1], "mark": step[4], "source": step[5] or None}
                           for step, _ in found.steps]}


def calls(found: Any, values: dict, who: Reader) -> Data:
    return {"numbers": [{"kind": key, "number": number, "name": found.who if key == "person" else None}
                        for key, number in found.calls]}


def safety(found: Any, values: dict, who: Reader) -> Data:
    return {"signal_word": found.signal or None, "codes": _statements(found.own),
            "signs": [{"sign": one} for one in found.signs],
            "statements": [{"statement": name, "topic": topic, "mark": mark, "source": source or None}
                           for name, topic, _, mark, source in found.rows or ()]}


def air(found: Any, values: dict, who: Reader) -> Data:
    fan, solvent, dust = found.fan, found.solvent, found.dust
    return {"room_volume": found.volume, "changes_of_air": found.changes, "clearing_time": found.clearing,
            "fan_passes": fan and fan.passes, "opening_needed": fan and fan.opening,
            "flow_needed": solvent and solvent.needed, "vapour_share": solvent and solvent.vapour,
            "vapour_limit": solvent and solvent.limit, "explosive_limit": solvent and solvent.lower,
            "may_explode": solvent and solvent.explosive, "above_limit": solvent and solvent.over,
            "dust_limit": dust and dust.limit.value, "floating_mass": dust and dust.floating}


def sources(found: Any, values: dict, who: Reader) -> Data:
    return {"facts": [{"fact": str(one.row[one.labels[0]]) if one.labels else None, "table": one.table,
                       "mark": one.mark, "source": one.source or None} for one in found]}


FUNCTIONS: dict[str, Callable[[Any, dict, Reader], Data]] = {
    "ratio": ratio, "measure": measure, "rescue": rescue, "thicken": thicken, "pouring": pouring, "heat": heat,
    "trial": trial, "cure": cure, "dew": dew, "joint": joint, "spreader": spreader, "boat": boat, "plan": plan,
    "run": run, "pot": pot, "timer": timer, "kit": kit, "log": log, "timings": timings, "own_rates": own_rates,
    "aid": aid,
    "calls": calls, "safety": safety, "air": air, "sources": sources, "coats": data_surface.coats,
    "sheathing": data_surface.sheathing, "fairing": data_surface.fairing, "gluing": data_surface.gluing,
    "fillets": data_surface.fillets}
