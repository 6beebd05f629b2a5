"""Each statement and limit of safety against tests/safety_table.py, which was typed a second time.

The words are held as they stand, the limits by their figures in the units people read, the marks row by row.
"""
import ast
import re
from pathlib import Path

import pytest
import safety_table as table
from covemix import shared
from covemix.shared.catalogue import (
    airing,
    cautions,
    containers,
    cure_times,
    damp,
    dusts,
    fillers,
    first_aid,
    hazards,
    measuring,
    pot_life,
    ratios,
    softening,
    solvents,
    sunlight,
    systems,
    tasks,
    tasks_cleaning,
    tasks_mixing,
    tasks_shared,
    tasks_trouble,
)
from covemix.shared.door import moves
from covemix.shared.kit import sources
from covemix.shared.pour import rescue_lines
from covemix.shared.safety.cautions import standing
from covemix.shared.safety.powders import powder
from covemix.shared.things.statements import codes, single
from covemix.shared.words.texts import said as as_read
from covemix.shared.words.units import to_si
from covemix.shared.words.written import reader

ROWS = [row for module, name in ((tasks_mixing, "MIXING"), (tasks_cleaning, "CLEANING"), (tasks_shared, "SHARED"),
                                 (tasks_trouble, "TROUBLE")) for row in getattr(module, name)]


def text(key):
    """What stands behind a key of the catalogue, in metric units; a value of it in braces, as the table has it."""
    return as_read(key, reader())


def same(ours, typed):
    """Two tables, row by row: what differs is shown by its key."""
    differs = {key: (ours.get(key), typed.get(key)) for key in {**ours, **typed} if ours.get(key) != typed.get(key)}
    assert differs == {}, "the catalogue says the first, tests/safety_table.py the second"


def test_hazard_statements():
    same({code: (text(words), text(signal), sign, mark) for code, words, sign, signal, mark, _ in hazards.HAZARDS},
         {code: row[:4] for code, row in table.HAZARDS.items()})
    same({code: (text(words), text(older)) for code, words, older, *_ in hazards.PRECAUTIONS},
         {code: row[:2] for code, row in table.PRECAUTIONS.items()})
    assert {row[3] for row in hazards.PRECAUTIONS} == {table.PUBLISHED}


@pytest.mark.parametrize("code", sorted(table.JOINED))
def test_joined_routes_have_the_words_of_the_standard(code):
    assert text(hazards.hazard(code)[1]) == table.JOINED[code]


CODES = list(table.HAZARDS.items()) + [(code, (words, *table.HAZARDS[code[:4]][1:])) for code, words
                                       in table.JOINED.items()]


@pytest.mark.parametrize("code, row", CODES, ids=[code for code, _ in CODES])
def test_each_hazard_code_is_read_in_a_kits_system_said_and_drawn(code, row):
    """As it is typed on a phone: its letter, blanks and capitals vary; the second table has what is said."""
    words, signal, signs, *_ = row
    prefix = code[:3] if code[0] == "E" else code[0]
    figures = code.replace(prefix, "")
    for typed in (code, " " + code.replace("+", " + ") + ",", prefix + " " + figures.replace("+", "/"),
                  prefix.lower() + figures.replace("+", f" + {prefix.lower()} ")):
        assert moves.answer("kit", {"kind": "system", "system": {"name": "Mine", "by_weight": "100:30",
                                                                 "statements": typed}})["errors"] == []
        told = moves.answer("safety", {"system": {"by_weight": "100:30", "statements": typed}})
        lines = {line["name"]: line for line in told["lines"]}
        assert lines["own_0"]["label"] == "Your product, " + code and lines["own_0"]["rank"] == "warn", typed
        assert lines["own_0"]["text"].rstrip(".") == words.rstrip(".") and "own_1" not in lines
        assert (lines["signal"]["text"] if "signal" in lines else "") == signal
        drawn = [drawing["name"].removeprefix("sign_") for drawing in told["figures"]]
        assert drawn == signs.split() and all(len(drawing["shapes"]) > 2 for drawing in told["figures"])
        for drawing in told["figures"]:
            assert table.PICTOGRAMS[drawing["name"].removeprefix("sign_")][0] in drawing["title"]


@pytest.mark.parametrize("code, row", CODES, ids=[code for code, _ in CODES])
def test_each_grave_code_is_a_caution_with_its_sign_on_every_screen_that_knows_the_product(code, row):
    """Pour, Clock, Plan and Joint name it in the foot; Kit and Safety also say all codes: words, sign, signal word."""
    words, signal, sign, *_ = row
    signs = ["sign_" + one for one in sign.split()]
    caution = next((table.BRINGS[one] for one in single([code]) if one in table.BRINGS), None)
    system = {"by_weight": "100:30", "name": "Mine", "statements": "H317, " + code}
    for screen, typed in (("pour", {"amount": "100"}), ("clock", {"batch": "100"}), ("plan", {}), ("boat", {}),
                          ("safety", {}), ("kit", {"kind": "system"})):
        told = moves.screen(screen, dict(typed, system=system))
        if caution:
            assert code in told["caution"] and words.split(". ")[0] in told["caution"], screen
            assert told["caution"].startswith(signal or "Goggles on")
            assert signal in ("Danger", "") and [one["name"] for one in told["signs"]] == signs
        else:
            assert code not in told["caution"] and told["signs"] == []
        if screen in ("safety", "kit"):
            first = dict(told["answers"])[screen]
            lines = {line["name"]: line for line in first["lines"]}
            said = {line["label"]: line["text"] for line in first["lines"] if line["name"].startswith("own_")}
            assert said["Your product, " + code].rstrip(".") == words.rstrip(".")
            assert lines["signal"]["text"] == (signal or "Warning")  # H317 has one of its own
            drawn = [one["name"] for one in first["figures"]]
            assert set(signs) <= set(drawn)


def test_of_several_grave_codes_the_gravest_is_named_and_all_their_signs_stand():
    typed = {"amount": "100", "system": {"by_weight": "100:30", "statements": "H314 H334 H372 H311 H300+H330 H360FD"}}
    told = moves.screen("pour", typed)
    assert told["caution"].startswith("Danger: your product, H300+H330. Fatal if swallowed or if inhaled.")
    assert [one["name"] for one in told["signs"]] == ["sign_skull", "sign_health", "sign_corrosion"]
    big = moves.screen("pour", dict(typed, amount="500", system=dict(typed["system"], statements="H350 H314")))
    assert big["caution"].startswith("A big batch") and len(big["signs"]) == 2


@pytest.mark.parametrize("code", ["H999", "H208", "EUH999", "P999", "H301X"])
def test_an_unknown_code_is_said_to_be_unknown_and_kept(code):
    told = moves.answer("safety", {"system": {"id": "3-1", "statements": "H317 " + code}})
    line = next(line for line in told["lines"] if line["name"] == "own_1")
    assert line["label"] == "Your product, " + code
    assert "not known here" in line["text"] and "sheet" in line["text"]
    kept = moves.answer("kit", {"kind": "system", "system": {"name": "Mine", "id": "3-1", "statements": code}})
    assert kept["errors"] == [] and codes(code) == (code,)


def test_what_products_carry_and_the_signs():
    same({key: (codes.replace(",", ""), text(about), mark) for key, _, codes, about, mark, _ in hazards.CLASSES},
         table.CLASSES)
    same({sign: (cause, " ".join([text(one) for one in replaced]))
          for sign, cause, replaced, *_ in hazards.PRECEDENCE}, table.PRECEDENCE)
    same({key: (text(name).split(", ")[1], text(words)) for key, name, words, *_ in hazards.PICTOGRAMS},
         table.PICTOGRAMS)


def test_dust_limits_and_what_raises_them():
    ours = {}
    for limit in dusts.LIMITS:
        key = (limit.dust, text(limit.fraction).split(" ")[0], limit.source)
        if limit.source == "osha-csi":
            key += (round(limit.value * 1e6),)
        ours[key] = (round(limit.value * 1e6, 6), limit.mark)
    same(ours, {key: (round(row[0], 6), row[1]) for key, row in table.DUST_LIMITS.items()})
    same({key: (" ".join(raised), text(about), mark)
          for key, _, raised, about, mark, _ in dusts.POWDERS + dusts.SANDING}, table.POWDERS)
    same({key: (factor, mark) for key, _, factor, mark, _ in dusts.MASKS}, table.MASKS)


@pytest.mark.parametrize("dust", sorted(table.STRICTEST))
def test_the_strictest_dust_limit_is_the_one_a_person_is_told(dust):
    """In the air of a room, and before the bag of a powder is opened: its figure, its part of the dust, its region."""
    most, part, where = table.STRICTEST[dust]
    screens = [moves.answer("air", {"dust": dust, "room": "shed"})] if dust != "other" else []
    if dust in dict([row[:2] for row in dusts.POWDERS]):
        screens.append(moves.answer("safety", {"task": "powder", "powder": dust}))
    for told in screens:
        assert told["errors"] == []
        line = next(line for line in told["lines"] if line["name"] == "dust_limit")
        assert round(line["value"] * 1e6, 6) == most and line["text"] == f"{most} mg/m³"
        assert f"lowest limit, {part}, {where}, published: " in line["rough"]


def test_each_filler_of_the_catalogue_has_a_dust_of_its_own():
    assert {row[0] for row in dusts.POWDERS} - {"quartz", "other"} == {row[0] for row in fillers.FILLERS}
    assert {row[0] for row in dusts.POWDERS + dusts.SANDING} == set(table.STRICTEST)
    own = {limit.dust: limit.value for limit in sorted(dusts.LIMITS, key=lambda limit: -limit.value)}
    for key, _, raised, *_ in dusts.POWDERS + dusts.SANDING:
        assert dusts.strictest(raised).value == min(own[dust] for dust in raised)
        assert dusts.strictest(raised).value <= own["other"], key


@pytest.mark.parametrize("name", sorted(table.CALLED))
def test_a_builders_own_filler_brings_the_caution_of_its_dust(name):
    typed = {"system": {"id": "3-1"}, "thicken": "yes", "filler": {"name": name, "doses": "5 : 10 : 15 : 20 : 30",
                                                                   "density": "1.5 g/mL", "loose": "0.2 g/mL"}}
    row = powder(name)
    assert (row and row[0]) == table.CALLED[name]
    assert (text(row[1]) if row else name) in moves.screen("pour", typed)["caution"]


QUANTITIES = {solvents.MOLAR: ("molar", 1000, 2), solvents.DENSITY: ("density", 0.001, 6),
              solvents.LOWER: ("lower", 100, 6), solvents.UPPER: ("upper", 100, 6), solvents.DAY: ("day", 1e6, 6),
              solvents.SHORT: ("short", 1e6, 6)}


@pytest.mark.parametrize("name", sorted(table.SOLVENTS))
def test_solvents(name):
    ours = {}
    for fact in solvents.FACTS:
        if fact.name == name:
            key, times, places = QUANTITIES[fact.quantity]
            ours.setdefault(key, []).append((round(fact.value * times, places), fact.mark, fact.source))
    same(ours, {key: [(round(row[0], 2 if key == "molar" else 6), *row[1:3]) for row in rows]
                for key, rows in table.SOLVENTS[name].items()})
    day, short, lower = table.LOWEST_SOLVENT[name]
    assert solvents.lowest(name, solvents.DAY).value * 1e6 == pytest.approx(day)
    assert solvents.lowest(name, solvents.SHORT).value * 1e6 == pytest.approx(short)
    assert solvents.lowest(name, solvents.LOWER).value * 100 == pytest.approx(lower)


def test_all_solvents_are_in_the_table():
    assert {row[0] for row in solvents.SOLVENTS} == {fact.name for fact in solvents.FACTS} == set(table.SOLVENTS)


@pytest.mark.parametrize("name", sorted(table.SOLVENTS))
def test_what_a_person_is_told_of_a_solvent_counts_with_the_lowest_limit(name):
    """The limit that stands beside the vapour is the lower of the day's and the 15 minutes'."""
    typed = {"solvent": name, "solvent_mass": "20 g", "wiping": "10 min", "room": "shed", "air_temperature": "20 °C"}
    lines = {line["name"]: line for line in moves.answer("air", typed)["lines"]}
    day, short, lower = table.LOWEST_SOLVENT[name]
    assert lines["vapour"]["value"] / lines["of_limit"]["value"] * 1e6 == pytest.approx(min(day, short))
    assert f"{min(day, short)} ppm" in lines["of_limit"]["label"]
    assert lines["vapour"]["value"] / lines["of_lower"]["value"] * 100 == pytest.approx(lower)


def test_air_of_the_room():
    same({key: per_hour for key, _, per_hour, *_ in airing.DRAUGHTS}, table.DRAUGHTS)
    rules = table.AIR_RULES
    assert [row[1] for row in airing.RULES] == [rules["mixing lowest"], rules["mixing highest"], rules["make-up Pa"],
                                                rules["discharge"], rules["of lower limit %"] / 100]
    assert [row[-2] for row in airing.RULES[:4]] == ["own judgement", table.PUBLISHED, "own judgement", table.COMMON]
    assert [row[-2] for row in airing.DRAUGHTS] == [table.PUBLISHED, "own judgement", "own judgement"]
    assert airing.RULES[4][-2] == table.COMMON


def test_where_the_cautions_of_the_moment_begin():
    typed = {name: to_si(float(value), unit) if unit != "an hour" else value / 3600
             for name, (value, unit) in table.FROM.items()}
    same({text(name): round(value, 9) for name, value, *_ in cautions.FROM},
         {name: round(value, 9) for name, value in typed.items()})
    assert {row[3] for row in cautions.FROM} == {"own judgement"}


def test_a_caution_stands_from_its_limit_on_and_not_below():
    """Asked as a screen asks it, a hair on either side of the figure in the table."""
    limits = {name: value for name, (value, _) in table.FROM.items()}
    big, warm_big = limits["Big mass in one cup"], limits["Big mass in one cup on a warm day"]
    warm, cold = limits["Warm air"] + 273.15, limits["Cold air"] + 273.15
    asked = (
        ("big_pot", {"mass": big / 1000 + 1e-6}, {"mass": big / 1000 - 1e-6}),
        ("warm_pot", {"mass": warm_big / 1000 + 1e-6, "temperature": warm + 0.01}, {"mass": warm_big / 1000 - 1e-6,
                                                                                   "temperature": warm + 0.01}),
        ("warm_pot", {"mass": warm_big / 1000 + 1e-6, "temperature": warm + 0.01}, {"mass": warm_big / 1000 + 1e-6,
                                                                                   "temperature": warm - 0.01}),
        ("cold", {"temperature": cold - 0.01}, {"temperature": cold + 0.01}),
        ("hot_now", {"pot": limits["Hot pot"] + 273.16}, {"pot": limits["Hot pot"] + 273.14}),
        ("short_pot", {"usable": limits["Short usable time"] * 60 - 1}, {"usable": limits[
            "Short usable time"] * 60 + 1}),
        ("small_room", {"room": 29.9, "changes": 1.9 / 3600}, {"room": 30.1, "changes": 1.9 / 3600}),
        ("small_room", {"room": 29.9, "changes": 1.9 / 3600}, {"room": 29.9, "changes": 2.1 / 3600}),
        ("thick", {"depth": limits["Thick putty"] / 1000 + 1e-6}, {"depth": limits["Thick putty"] / 1000
                                                                          - 1e-6}),
    )
    for name, with_it, without in asked:
        assert name in standing(**with_it), (name, with_it)
        assert name not in standing(**without), (name, without)


def test_cautions_and_reminders_in_words():
    assert text(cautions.FIRST) == table.FIRST and text(cautions.REMINDER) == table.REMINDER
    same({name: (text(words), mark) for name, _, words, mark, _ in cautions.STANDING}, table.STANDING)
    assert tuple([(name, text(heading), text(words), *row) for name, heading, words, *row in
                  [row[:5] for row in cautions.MOMENT]]) == table.MOMENT
    assert text(containers.HOT_POT) == table.HOT_POT and text(rescue_lines.SPREAD_OUT) == table.SPREAD_OUT


def test_what_is_told_of_each_task_in_words():
    same({key: (" ".join(about), topic, text(words), (mark + " " + source).strip())
          for key, about, topic, words, mark, source in ROWS}, table.STATEMENTS)
    same({key: leads for key, _, leads in tasks.CURED}, table.CURED)


def test_what_stands_on_the_screen_of_a_task_is_what_the_table_says():
    """Asked as the safety screen asks it: all words of all statements of the task, and none of another task's own."""
    for task, _, _ in tasks.TASKS:
        shown = " ".join(line["text"] for line in moves.answer("safety", {"task": task, "cured": "hard"})["lines"])
        for key, (about, _, words, _) in table.STATEMENTS.items():
            if task in about.split(" ") and key not in ("sand_unsure", "sand_soft"):
                assert words in shown, (task, key)


def everything_said():
    """Every text of safety in the catalogue and in the engine."""
    said = [row[3] for row in ROWS] + [row[2] for row in cautions.STANDING + cautions.MOMENT]
    said += [row[1] for row in first_aid.HOT_STEPS + first_aid.ADDED]
    said += [row[3] for row in dusts.POWDERS + dusts.SANDING] + [one for row in containers.HOT for one in row[1:3]]
    said += [cautions.FIRST, cautions.REMINDER, containers.HOT_POT, rescue_lines.SPREAD_OUT]
    said += [row[4] for row in cure_times.STAGES]
    return [text(one) for one in said]


def test_no_sentence_advises_what_hurts():
    """However both tables are worded: a text that speaks of a danger has the word that forbids it."""
    met = set()
    for told in everything_said():
        small = told.lower()
        for words, one_of in table.NEVER:
            if all(re.search(r"\b" + word, small) for word in words):
                met.add(words)
                assert any(word in small for word in one_of), (told, words)
    assert {words for words, _ in table.NEVER} == met  # a rule that meets no sentence holds nothing


def test_the_densities_that_are_counted_with_where_nobody_read_them():
    rows = {row[0]: row for _, rows, *_ in ratios.TABLES for row in rows}
    same({name: (low / 1000, high / 1000, *rows["facts-part-density." + name][-2:]) for name, (low, high) in (
        ("resin", ratios.RESIN_DENSITY), ("hardener", ratios.HARDENER_DENSITY))}, table.PART_DENSITIES)


def test_ratio_stirring_cup_and_dew():
    assert (table.RATIO["aim %"] / 100, table.RATIO["too much %"] / 100) == (ratios.AIM, ratios.STOP)
    stir = table.STIR
    assert (stir["short min"] * 60, stir["long min"] * 60) == (measuring.STIR_SHORT, measuring.STIR_LONG)
    assert (stir["from g"] / 1000, stir["densest g/mL"] * 1000) == (measuring.SMALL, measuring.DENSEST)
    assert pytest.approx(stir["cold degC"] + 273.15) == measuring.COLD
    assert (table.CUP["filled %"] / 100, table.CUP["mark off mm"] / 1000) == (measuring.ROOM, measuring.MARK_ERROR)
    assert (table.DEW["margin K"], table.DEW["damp %"] / 100) == (damp.MARGIN, damp.DAMP)
    assert (table.DEW["clear sky K"], table.DEW["meter K"]) == (damp.SKY[0], damp.METER_OFF)


def test_how_long_a_mix_and_a_cure_take():
    same({row[0]: row[1:5] for row in pot_life.WINDOWS}, table.WINDOWS)
    same({speed: (round(least - 273.15, 6), mark) for speed, least, mark in pot_life.LOWEST},
         {speed: (float(least), table.MEMORY) for speed, least in table.COLDEST_WORK.items()})
    same({key: (*hours, text(look), mark, closes) for key, _, hours, closes, look, mark in cure_times.STAGES},
         {key: (*row, table.COMMON if key == "full" else table.MEMORY, key in table.CLOSES)
          for key, row in table.CURE.items()})
    assert pytest.approx(table.CURE_COUNTED_AT["opens degC"] + 273.15) == cure_times.OPENS_AT
    assert pytest.approx(table.CURE_COUNTED_AT["closes degC"] + 273.15) == cure_times.CLOSES_AT
    assert table.ENERGY == cure_times.ENERGY


def test_where_a_cure_stops_and_how_hot_a_hull_gets():
    assert [row[1:] for row in softening.GLASS] == table.GLASS
    assert [row[1:] for row in softening.POST] == table.POST_CURE
    same({row[0]: row[2:] for row in softening.COLOURS}, table.HULL_COLOURS)
    assert [row[1] for row in softening.SUNLIT] == table.E1980
    assert {row[3:] for row in softening.SUNLIT} == {(table.PUBLISHED, "e1980")}


def test_a_pot_and_its_heat():
    same({row[0]: row[3:] for row in containers.CONTAINERS}, table.VESSELS)
    ours = {row[0]: row[1:] for row in containers.MATTER + containers.CURE}
    ours.update({row[0]: row[2:] for row in containers.AIR})
    same(ours, table.HEAT)
    same({round(row[0] - 273.15): tuple(map(text, row[1:3])) for row in containers.HOT}, table.HOT)
    assert {row[3] for row in containers.HOT} == {table.COMMON}


def test_the_sun_and_what_takes_it_up():
    same({row[0]: row[2:] for row in sunlight.SUN}, table.SUNLIGHT)
    same({row[0]: row[2:] for row in sunlight.LOOKS}, table.TAKEN_UP)
    same({row[0]: row[2:] for row in sunlight.COVER}, table.COVERS)
    assert (sunlight.TRAY_UP_TO, sunlight.BEAM) == (100, 900)


def test_fillers():
    """Densities decide how deep a cup stands and how much putty there is; doses how stiff it is."""
    ours, unfit, alone = {}, [], []
    for key, _, mark, fields in fillers.FILLERS:
        typed = dict(fields)
        assert mark == table.MEMORY
        ours[key] = (float(typed["density"].split(" ")[0]), float(typed["loose"].split(" ")[0]),
                     tuple(float(dose) for dose in typed["doses"].split(" : ")))
        assert typed["density"].endswith(" g/mL") and typed["loose"].endswith(" g/mL")
        unfit += [key] if typed["carries"] == "no" else []
        alone += [key] if typed["alone"] == "no" else []
    same(ours, table.FILLERS)
    assert (tuple(unfit), tuple(alone)) == (table.NOT_FOR_SEAMS, table.NOT_ALONE)
    assert [100 * share for share in (fillers.DOSE_SPREAD, fillers.AIR, fillers.PACKING)] == [
        table.HAND[name] for name in ("dose spread %", "air %", "packing %")]


@pytest.mark.parametrize("filler", sorted(table.FILLERS))
def test_a_fillers_density_reaches_the_putty(filler):
    """Plain sums: 100 g of mix at 1.1 g/mL with the dose of a cove, and 5 % of air: volume = (m/d + f/df) / 0.95."""
    true, _, doses = table.FILLERS[filler]
    typed = {"amount": "100 g", "thicken": "yes", "filler": filler, "stiffness": "stands", "purpose": "fairing",
             "system": {"by_weight": "1:1", "densities": "1.1:1.1"}}
    lines = {line["name"]: line for line in moves.answer("thicken", typed)["lines"]}
    assert lines["filler"]["value"] == pytest.approx(doses[3] / 1000)
    assert lines["putty"]["value"] * 1e6 == pytest.approx((100 / 1.1 + doses[3] / true) / 0.95)


def test_systems_to_start_from():
    same({key: (dict(fields)["by_volume"].replace(" ", ""), dict(fields)["speed"],
                float(dict(fields)["pot_time"].split(" ")[0])) for key, _, _, fields in systems.SYSTEMS},
         {key: (parts, speed, float(minutes)) for key, (parts, speed, minutes) in table.SYSTEMS.items()})
    assert "{} : {} g/mL".format(*table.SYSTEM_DENSITIES) == systems.DENSITIES
    for _, _, mark, fields in systems.SYSTEMS:
        assert mark == table.MEMORY
        assert (dict(fields)["pot_mass"], dict(fields)["pot_temperature"]) == ("100 g", "25 °C")


def test_nothing_is_called_published_that_nobody_looked_up():
    """Whole catalogues are of the trade or remembered; in the others the marks are held row by row above."""
    called = {one.module for one in sources.facts() if one.mark == table.PUBLISHED}
    assert called & set(table.NEVER_PUBLISHED) == set()
    assert called <= {"hazards", "first_aid", "dusts", "solvents", "cautions", "tasks_mixing", "tasks_cleaning",
                      "tasks_shared", "tasks_trouble", "sunlight", "airing", "containers",
                      "softening",  # the conditions of ASTM E1980 and the colours, above
                      "damp",  # the night sky, 8 K at the most, READ; sensors' data sheets, READ
                      "ratios",  # the densities of the parts, above
                      "fillers",  # the packing of spheres, 0.64 +- 0.02, READ
                      "cure_times",  # the activation energy, above
                      "glass",  # the density of the fibre, READ
                      "surfaces"}  # what butts and scarfs reach, by the handbook of wood
    assert {text(one.row[0]) for one in sources.facts() if one.mark == table.PUBLISHED and one.module in (
        "damp", "fillers", "cure_times", "glass", "ratios")} == {"Density of the fibre", "Resin", "Hardener",
                                              "A hygrometer may move the dew point by",
                                              "Open night sky cools a surface below the air by", "energy",
                                              "Hollow spheres touch at, by volume",
                                              "Spheres stirred in pack to, by volume"}


def test_each_row_says_how_it_is_known():
    rows = list(table.HAZARDS.values()) + list(table.PRECAUTIONS.values()) + list(table.DUST_LIMITS.values())
    rows += [row for facts in table.SOLVENTS.values() for one in facts.values() for row in one]
    assert {row[-1] for row in rows} == {table.READ, table.KNOWN}


@pytest.mark.parametrize("move, typed, name, said", table.SAID, ids=[f"{row[0]} {row[2]}" for row in table.SAID])
def test_what_an_answer_warns_of_stays_a_warning_in_these_words(move, typed, name, said):
    found = moves.answer(move, typed)
    assert found["errors"] == []
    line = next(line for line in found["lines"] if line["name"] == name)
    assert line["rank"] == "warn"
    assert re.fullmatch(re.escape(said).replace(re.escape("..."), ".*"), line["text"]), line["text"]


@pytest.mark.parametrize("move, typed, name, said", table.CAUTIONS)
def test_what_is_said_under_a_figure(move, typed, name, said):
    assert next(line for line in moves.answer(move, typed)["lines"] if line["name"] == name)["caution"] == said


def ranks(path):
    """What a module gives the rank of a warning: [(name of the line, or what it is made of, the expression)]."""
    tree, found = ast.parse(path.read_text(encoding="utf-8")), []
    for node in ast.walk(tree):
        if isinstance(node, ast.Call):
            found += [(named(node.args[0]), one.value) for one in node.keywords if one.arg == "rank" and node.args]
        elif isinstance(node, ast.Assign) and named(node.targets[0]) == "rank":
            test = getattr(node.value, "test", node.value)
            found.append((named(getattr(test, "left", test)), node.value))
    return [(name, rank) for name, rank in found if any(named(one) == "WARN" for one in ast.walk(rank))]


def named(node):
    """The text a name begins with, or the variable that it is."""
    while isinstance(node, (ast.BinOp, ast.Subscript, ast.Attribute)):
        node = node.left if isinstance(node, ast.BinOp) else node.value
    return node.value if isinstance(node, ast.Constant) else getattr(node, "id", "")


def test_what_warns_is_what_the_table_says():
    """In the whole engine: a line that no longer warns, or warns where it did not, is to be typed there too."""
    always, at_times = {}, {}
    for path in sorted(Path(shared.__file__).parent.rglob("*.py")):
        for name, rank in ranks(path):
            if isinstance(rank, ast.IfExp):
                first = named(rank.body) == "WARN"
                at_times[path.stem, name] = (ast.unparse(rank.test), first)
            else:
                always.setdefault(path.stem, []).append(name)
    same({module: sorted(names) for module, names in always.items()},
         {module: sorted(names.split()) for module, names in table.WARNINGS.items()})
    same(at_times, table.WARN_AT_TIMES)
