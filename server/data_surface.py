"""Data of surfaces: what coats, cloth, fairing, glue and bare fillets come to, as named SI values; asked by `data`."""
from typing import Any

from covemix.shared.things.lowest_temperature import lowest
from covemix.shared.words.languages import Reader

Data = dict[str, Any]
POTS = "pot_reach pot_count pot_mass film_time too_big_for_cup"
SHAPES: dict[str, tuple[str, dict[str, str]]] = {
    "coats": ("area edge_area added_mass mass first_coat_mass later_coat_mass left_in_tools film_thickness runs "
              "coats_thickness heaviest_coat laying_time recoat_opens recoat_closes too_cold working_temperature "
              "coats_today " + POTS,
              {"coats": "coat coat_from coat_until"}),
    "sheathing": ("area cloth_length lapped_area glass_mass wet_out_mass soaked_mass fill_mass ply_mass mass "
                  "added_mass laminate_thickness weave_depth fill_coat fill_coats glass_fraction " + POTS,
                  {"cloths": "face across strips each_length lapped_area count", "joins": "face join_at",
                   "pieces": "face piece_length"}),
    "fairing": ("area mean_gap deepest_gap putty_volume kept_volume putty_mass sanded_mass added_mass liquid_mass "
                "filler_mass mass putty_density passes thickest_pass batch_count batch_putty_mass hard_to_sand "
                "softens_in_sun", {}),
    "gluing": ("bond_area primed_area neat_mass putty_volume liquid_mass mass stiffness gap_too_wide added_mass bevel "
               "joined_length bond_shear bond_pull too_steep wanted_scarf glue_lines former_radius bend_strain "
               "bends_too_tight clamp_count needed_time usable_time too_big_for_cup one_pot_enough", {}),
    "fillets": ("putty_volume thickness_ratio leg", {"coves": "angle radius"}),
}


def _pots(pots: Any) -> Data:
    return {} if pots is None else {"pot_reach": pots.reach, "pot_count": pots.count, "pot_mass": pots.mass,
                                    "film_time": pots.window, "too_big_for_cup": bool(pots.big)}


def coats(found: Any, values: dict, who: Reader) -> Data:
    return _pots(found.pots) | {
        "area": found.area, "edge_area": found.edge, "added_mass": found.on_wood, "mass": found.mix,
        "first_coat_mass": found.first, "later_coat_mass": found.later, "left_in_tools": found.left,
        "film_thickness": found.film, "coats_thickness": found.whole, "heaviest_coat": found.heaviest,
        "runs": found.runs, "laying_time": found.lasts, "recoat_opens": found.opens, "recoat_closes": found.closes,
        "too_cold": found.cold, "working_temperature": lowest(values["system"]), "coats_today": found.today,
        "coats": [{"coat": place + 1, "coat_from": start, "coat_until": until}
                  for place, (start, until) in enumerate(found.starts)]}


def sheathing(found: Any, values: dict, who: Reader) -> Data:
    return _pots(found.pots) | {
        "area": found.area, "cloth_length": found.cloth, "lapped_area": found.lapped, "glass_mass": found.glass,
        "wet_out_mass": found.wet, "soaked_mass": found.drinks, "fill_mass": found.fill, "ply_mass": found.ply,
        "mass": found.mix, "added_mass": found.stays, "laminate_thickness": found.thick, "weave_depth": found.depth,
        "fill_coat": found.fill_areal / found.fills if found.fills else None, "fill_coats": found.fills,
        "glass_fraction": found.fraction,
        "cloths": [{"face": str(one.place + 1), "across": one.across, "strips": len(one.lengths),
                    "each_length": max(one.lengths), "lapped_area": one.lapped, "count": one.faces}
                   for one in found.cuts],
        "joins": [{"face": str(one.place + 1), "join_at": at} for one in found.cuts for at in one.joins],
        "pieces": [{"face": str(one.place + 1), "piece_length": long} for one in found.cuts for long in one.lengths]}


def fairing(found: Any, values: dict, who: Reader) -> Data:
    return {"area": found.area, "mean_gap": found.mean, "deepest_gap": found.deepest, "putty_volume": found.placed,
            "kept_volume": found.kept, "putty_mass": found.compound, "sanded_mass": found.sanded,
            "added_mass": found.stays, "liquid_mass": found.resin, "filler_mass": found.filler, "mass": found.mix,
            "putty_density": found.density, "passes": found.passes, "thickest_pass": found.each,
            "batch_count": found.batches, "batch_putty_mass": found.pot,
            "hard_to_sand": found.heavy, "softens_in_sun": found.dark}


def gluing(found: Any, values: dict, who: Reader) -> Data:
    told: Data = {"bond_area": found.bond, "primed_area": found.primed, "neat_mass": found.neat,
                  "putty_volume": found.glue, "liquid_mass": found.resin, "mass": found.mix,
                  "stiffness": found.stiffness, "gap_too_wide": found.wide, "added_mass": found.stays}
    if found.scarf:
        one = found.scarf
        told |= {"bevel": one.bevel, "joined_length": one.joined, "bond_shear": one.shear, "bond_pull": one.pull,
                 "too_steep": one.steep, "wanted_scarf": one.wanted}
    if found.bent:
        one = found.bent
        told |= {"glue_lines": one.lines, "former_radius": one.former, "bend_strain": one.strain,
                 "bends_too_tight": one.tight, "clamp_count": one.clamps}
    if found.pot:
        one = found.pot
        told |= {"needed_time": one.needed, "usable_time": one.lasts, "too_big_for_cup": bool(one.big),
                 "one_pot_enough": one.enough}
    return told


def fillets(found: Any, values: dict, who: Reader) -> Data:
    return {"putty_volume": found.volume, "leg": found.foot,
            "thickness_ratio": max(radius for _, radius in found.sides) / values["fillet_panel"],
            "coves": [{"angle": angle, "radius": radius} for angle, radius in found.sides]}
