"""Safety: tables walked, GHS texts, the product's own statements, and the cautions of the moment."""
import importlib
import pathlib

import pytest
from covemix.shared.catalogue import dusts, hazards, pictograms, tasks
from covemix.shared.catalogue.cautions import MOMENT, OWN_CODES, REMINDER, REMINDER_SHORT
from covemix.shared.catalogue.marks import COMMON, JUDGED, MEMORY, PUBLISHED
from covemix.shared.catalogue.sources import SOURCES
from covemix.shared.door import moves
from covemix.shared.kit import sources
from covemix.shared.kit.sources_lines import worded
from covemix.shared.safety import cautions_lines, safety
from covemix.shared.safety.cautions import standing
from covemix.shared.things import statements
from covemix.shared.words.texts import said
from covemix.shared.words.written import reader

FACTS = [(one.module, *[said(what, reader()) for what in worded(one)], one.mark, one.source)
         for one in sources.facts()]
NOT_FACTS = {"__init__", "marks", "sources", "tasks", "pictograms", "demo_boat", "titles", "recalled"}


def lines(**typed):
    found = moves.answer("safety", typed)
    assert found["errors"] == [], found["errors"]
    return found


@pytest.mark.parametrize("fact", FACTS, ids=lambda fact: f"{fact[0]}: {fact[2]}"[:60])
def test_each_fact_has_its_mark_and_only_a_published_one_a_source(fact):
    _, title, what, text, mark, source = fact
    assert title and what and text
    assert mark in (PUBLISHED, COMMON, MEMORY, JUDGED)
    assert (source in SOURCES) if mark == PUBLISHED else source == ""


def test_every_module_of_the_catalogue_is_in_the_table_of_sources():
    folder = pathlib.Path(importlib.import_module("covemix.shared.catalogue").__file__).parent
    assert {path.stem for path in folder.glob("*.py")} - NOT_FACTS == set(sources.MODULES)


def test_the_sources_move_shows_every_fact_and_filters_by_mark():
    assert len(moves.answer("sources", {})["lines"]) == len(FACTS)
    shown = moves.answer("sources", {"mark": MEMORY})["lines"]
    assert 0 < len(shown) < len(FACTS) and {line["rough"] for line in shown} == {MEMORY}


def test_no_fact_is_called_by_a_key():
    for _, title, what, text, _, _ in FACTS:
        for words in (title, what, text):
            assert "_" not in words and words[:1] == words[:1].strip()
        assert what[0].isupper() or what[0].isdigit() or what[0] == "…", what


@pytest.mark.parametrize("what, text", [
    ("Activation energy", "55 kJ/mol, 45 to 65"), ("Medium hardener", "12 °C"), ("Left in the bag", "20 g, 10 to 35"),
    ("Place putty", "2 m a minute, 1 to 3"), ("Spare on liquids", "10%, 5 to 20"),
    ("Packs of resin", "1000, 5000 g"), ("Wood, total dust", "1 mg/m³"),
    ("Acetone, lower explosive limit", "2.5%"), ("Window fan, 240 m³/h", "Air flow: 240 m³/h"),
])
def test_facts_are_told_in_the_units_a_builder_reads(what, text):
    assert text in [fact[3] for fact in FACTS if fact[2] == what]


def test_a_fact_is_found_by_its_words():
    found = moves.answer("sources", {"find": " Acetone  limit "})["lines"]
    assert found and all("Acetone" in line["label"] and "limit" in line["label"] for line in found)
    assert moves.answer("sources", {"find": "custard"})["lines"][0]["name"] == "none"


@pytest.mark.parametrize("task", [row[0] for row in tasks.TASKS])
def test_each_task_says_something_on_each_topic(task):
    found = lines(task=task)["lines"]
    told = {line["label"] for line in found}
    assert {said(label, reader()) for _, label in tasks.TOPICS} <= told
    names = [line["name"] for line in found]
    assert len(names) == len(set(names))
    assert all(line["rough"] for line in found if line["name"] != "first")


@pytest.mark.parametrize("cured", [row[0] for row in tasks.CURED])
def test_sanding_tells_of_gloves_and_sleeves_in_sight(cured):
    told = lines(task="sand", cured=cured)["lines"]
    found = [(line["label"], line["text"]) for line in told if line["rank"] == "say"]
    assert any(label == "Hands" and "Wear nitrile gloves" in text for label, text in found)
    assert any(label == "Skin" and text.startswith("Sleeves down") for label, text in found)


@pytest.mark.parametrize("code, text", [
    ("H314", "Causes severe skin burns and eye damage"),
    ("H315", "Causes skin irritation"),
    ("H317", "May cause an allergic skin reaction"),
    ("H318", "Causes serious eye damage"),
    ("H319", "Causes serious eye irritation"),
    ("H334", "May cause allergy or asthma symptoms or breathing difficulties if inhaled"),
    ("H335", "May cause respiratory irritation"),
    ("H411", "Toxic to aquatic life with long lasting effects"),
])
def test_hazard_texts(code, text):
    """UN GHS, Annex 3, section 1."""
    assert said({row[0]: row[1] for row in hazards.HAZARDS}[code], reader()) == text


def test_both_wordings_of_getting_help():
    """UN GHS: P333+P313 "advice/attention" became P333+P317 "Get medical help"."""
    rows = {row[0]: [said(cell, reader()) for cell in row] for row in hazards.PRECAUTIONS}
    assert rows["P333+P317"][1] == "If skin irritation or rash occurs: Get medical help."
    assert "advice/attention" in rows["P333+P313"][2]
    assert "soap" in rows["P302+P352"][2] and "soap" not in rows["P302+P352"][1]


def test_precedence_of_pictograms():
    """UN GHS 1.4.10.5.3.1: skull, corrosion and H334 each make the exclamation mark needless for what they cover."""
    assert safety.signs(("H315", "H317", "H319", "H411")) == ["exclamation", "environment"]
    assert safety.signs(("H314", "H319")) == ["corrosion"]
    assert safety.signs(("H314", "H302")) == ["corrosion", "exclamation"]
    assert safety.signs(("H334", "H317")) == ["health"]
    assert safety.signs(("H351", "H317")) == ["health", "exclamation"]
    assert safety.signs(("H331", "H302")) == ["skull"]
    assert safety.signs(("H330", "H302", "H312", "H314", "H318", "H317", "H335")) == ["corrosion", "skull"]
    assert safety.signs(("H300+H310+H330", "H420", "H350i")) == ["skull", "health"]
    assert safety.signs(("H242", "H361fd", "H302+H332")) == ["flame", "health", "exclamation"]
    assert safety.signs(("H241", "H272", "H280")) == ["bomb", "flame", "oxidiser", "gas"]


@pytest.mark.parametrize("typed, read", [
    ("H330", ("H330",)), ("h 302/312", ("H302+H312",)), ("H302 + H312 + H332", ("H302+H312+H332",)),
    ("h300+310+330", ("H300+H310+H330",)), ("H332/H302", ("H302+H332",)), ("H302, 312; 314", ("H302", "H312", "H314")),
    ("EUH 208\nEUH-066", ("EUH208", "EUH066")), ("H302+H315", ("H302", "H315")), ("H302+H302", ("H302",)),
    ("P301+330+331", ("P301+P330+P331",)), ("H360Fd h361fd", ("H360Fd", "H361fd")),
    ("H314\u00a0H317", ("H314", "H317")), ("H303+H313+H333", ("H303", "H313", "H333")),
])
def test_codes_are_read_as_builders_type_them(typed, read):
    assert statements.codes(typed) == read


@pytest.mark.parametrize("code", ["H240", "H241", "H270", "H271", "H272", "H280", "H281", "EUH070", "H222", "H229",
                                  "H261", "H303", "H305", "H313", "H316", "H320", "H333", "EUH211", "EUH212",
                                  "EUH430", "EUH431", "H303+H333", "H223", "H250", "H252", "H260", "EUH210", "EUH440",
                                  "EUH441", "EUH450", "EUH451"])
def test_codes_of_sprays_of_metal_powders_and_of_other_regions_have_words(code):
    """Old main: "This code is not known here"."""
    told = moves.answer("safety", {"task": "mix", "system": {"by_weight": "100:30", "statements": code}})
    assert not told["errors"]
    rows = [row for row in told["lines"] if row["name"].startswith("own_")]
    assert rows and not any("not known" in row["text"] for row in rows)


def test_each_sign_is_drawn_and_inside_its_diamond():
    assert {key for key, _ in pictograms.SHAPES} == {row[0] for row in hazards.PICTOGRAMS}
    assert {sign for row in hazards.HAZARDS for sign in row[2].split()} == {row[0] for row in hazards.PICTOGRAMS}
    for _, shapes in pictograms.SHAPES:
        for _, corners in shapes:
            assert all(abs(x - 50) + abs(y - 50) <= 41 for x, y in corners)


def test_own_statements_lead_and_unknown_ones_are_named():
    system = {"id": "3-1", "statements": "H314, h334; H999 P302+P352"}
    found = lines(system=system)
    own = [line for line in found["lines"] if line["name"].startswith("own_")]
    assert [line["label"] for line in own] == ["Your product, H314", "Your product, H334", "Your product, H999",
                                               "Your product, P302+P352"]
    assert found["lines"].index(own[0]) == 1
    assert "not known here" in own[2]["text"] and "soap" in own[3]["text"]
    assert [figure["name"] for figure in found["figures"]] == ["sign_corrosion", "sign_health"]
    assert not [line for line in found["lines"] if line["name"].startswith("usual_")]


@pytest.mark.parametrize("system", [
    {"statements": "H330"}, {"name": "Old can", "statements": "H330"},
    {"by_weight": "100:30", "by_volume": "9:1", "densities": "1.1:1", "statements": "H330"}])
def test_codes_of_a_product_need_no_ratio_to_be_told_on_safety(system):
    """Old main: "Type the ratio from the label", no words, no sign, and the caution said gloves and goggles."""
    found = moves.screen("safety", {"system": system})
    assert [answer["errors"] for _, answer in found["answers"]] == [[], [], [], []]
    answer = dict(found["answers"])["safety"]
    assert [row["text"] for row in answer["lines"] if row["name"] == "own_0"] == ["Fatal if inhaled."]
    assert [figure["name"] for figure in answer["figures"]] == ["sign_skull"]
    assert found["caution"] == "Danger: your product, H330. Fatal if inhaled."


@pytest.mark.parametrize("screen", ["pour", "clock", "plan", "safety"])
def test_a_caution_of_codes_stands_while_the_ratio_cannot_be_read(screen):
    """Old main: one wrong key in the ratio, and the caution was gloves and goggles."""
    found = moves.screen(screen, {"system": {"by_weight": "100:", "statements": "H330"}})
    assert found["caution"] == "Danger: your product, H330. Fatal if inhaled."
    assert [figure["name"] for figure in found["signs"]] == ["sign_skull"]


NO_CODES = ({"statements": "H33O"}, {"statements": ["H330"]}, {"statements": {"0": "H330"}}, [1])


@pytest.mark.parametrize("system", NO_CODES)
def test_codes_that_cannot_be_read_are_told_at_their_field(system):
    found = moves.screen("safety", {"system": system})
    assert dict(found["answers"])["safety"]["errors"]
    assert found["caution"].startswith("Gloves and goggles")


@pytest.mark.parametrize("typed", ["H31", "X315", "irritant", "H315+", "P", "H3155"])
def test_what_is_no_statement_is_told_at_the_field(typed):
    found = moves.answer("ratio", {"system": {"id": "3-1", "statements": typed}})
    assert [error["field"] for error in found["errors"]] == ["system.statements"]


def test_statements_there_and_back():
    found = statements.codes("H315 H317,P302 + P352;H315\nH360FD")
    assert statements.codes(", ".join(found)) == found == ("H315", "H317", "P302+P352", "H360FD")


MIXES = (
    ({"mass": 0.12, "temperature": 291.15}, ["gloves", "wash"]),
    ({"mass": 0.5, "filler": "silica", "temperature": 293.15}, ["big_pot", "powder"]),
    ({"mass": 0.2, "filler": "Wood flour", "temperature": 304.15, "usable": 480.0}, ["warm_pot", "short_pot"]),
    ({"mass": 0.1, "temperature": 280.15, "codes": ("H314", "H334"), "room": 20.0, "changes": 0.2 / 3600},
     ["asthma", "corrosive"]),
    ({"task": "sand", "cured": "soft"}, ["uncured", "sanding"]),
    ({"task": "confined", "solvent": True}, ["hull", "vapour"]),
    ({"pot": 335.0, "mass": 0.6}, ["hot_now", "big_pot"]),
)


def cautions(units="metric", **known):
    """The two that matter, in words."""
    return [line._replace(label=said(line.label, reader(units)), text=said(line.text, reader(units)))
            for line in cautions_lines.say(standing(**known)[:2], known)]


@pytest.mark.parametrize("known, expected", MIXES)
def test_the_two_cautions_that_matter(known, expected):
    found = cautions(**known)
    assert [line.name for line in found] == ["caution_" + name for name in expected]
    assert all(line.rank == "warn" and line.rough and "{" not in line.text + line.label for line in found)


IN_PLACE = (
    ("pour", {"amount": "240"}, "Gloves and goggles"), ("pour", {"amount": "500"}, "A big batch. 500 g"),
    ("pour", {"amount": "100", "thicken": "yes", "filler": "milled-glass"}, "Milled glass. Particle mask"),
    ("pour", {"amount": "100", "system": {"id": "3-1", "statements": "H314"}}, "Danger, goggles on: H314"),
    ("pour", {"amount": "500", "system": {"id": "3-1", "statements": "H334"}}, "Danger: your product, H334"),
    ("clock", {"air": "30", "batch": "200"}, "Warm today. At 30 °C"), ("clock", {"air": "8", "batch": "100"}, "Cold."),
    ("clock", {"air": "20", "batch": "500"}, "A big batch. 500 g"),
    ("clock", {"air": "20", "batch": "100", "container": "tray"}, "Gloves and goggles on before you open a can. The"),
    ("clock", {"air": "20", "batch": "500", "container": "tray"},
     "Gloves and goggles on before you open a can. 500 g left together can smoke and burn."),
    ("joint", {}, "Gloves and goggles"), ("joint", {"sized": "radius", "radius": "45"}, "Thick layer"),
    ("plan", {"temperature": "8"}, "Cold."), ("boat", {}, "Gloves and goggles"),
    ("safety", {"task": "sand", "cured": "soft"}, "Not cured."), ("safety", {"place": "hull"}, "Inside the hull"),
    ("safety", {"solvent": "acetone"}, "Solvent vapour"),
    ("safety", {"task": "powder", "powder": "cotton"}, "Cotton fibre. Particle mask"),
)


@pytest.mark.parametrize("screen, typed, said", IN_PLACE)
def test_the_caution_on_a_screen_follows_its_real_inputs(screen, typed, said):
    assert moves.screen(screen, typed)["caution"].startswith(said)


@pytest.mark.parametrize("kind", ["cup", "bag", "roll", "tray"])
def test_a_caution_stands_wherever_the_band_of_the_clock_reaches_a_hundred_degrees(kind):
    """Old main: a tray of 700 g at 32 degC was told "This pot would run away" above "gloves and goggles" alone."""
    seen = set()
    for air in ("15", "25", "32"):
        for grams in ("30", "100", "250", "700"):
            found = moves.screen("clock", {"air": air, "batch": grams, "container": kind, "sun": "shade"})
            peak = next(row["value"] for row in dict(found["answers"])["heat"]["lines"] if row["name"] == "peak")
            hot = "can smoke" in found["caution"] or "overheats" in found["caution"]
            assert hot == (peak >= 373.15 or (float(grams) >= 300 and kind in ("cup", "bag"))), (air, grams, peak)
            seen.add(hot)
    assert True in seen and (kind != "tray" or False in seen)


@pytest.mark.parametrize("said, typed", [
    ("240 g", {"amount": "240"}), ("500 g in one cup", {"amount": "500"}),
    ("100 g with milled glass", {"amount": "100", "thicken": "yes", "filler": "milled-glass"}),
    ("100 g, its sheet says H334", {"amount": "100", "system": {"id": "3-1", "statements": "H334"}}),
])
def test_the_readme_shows_the_cautions_that_stand(said, typed):
    readme = (pathlib.Path(__file__).parent.parent / "README.md").read_text(encoding="utf-8")
    assert f"| {said} | {moves.screen('pour', typed)['caution']} |" in readme


def test_the_short_form_of_a_caution_is_its_first_sentence():
    """In English; another language says in its own words what there is room for."""
    filled = {name: "x" for name in ("signal", "code", "official", "filler", "about", "amount", "temperature",
                                     "minutes", "room", "changes", "depth")}
    for name, _, text, _, _, _, short in MOMENT:
        whole, first = said((text, filled), reader()), said((short, filled), reader())
        assert whole.startswith(first) and first == whole.partition(". ")[0].rstrip(".") + ".", name
    assert said(REMINDER, reader()).startswith(said(REMINDER_SHORT, reader()) + " ")
    for code, first in hazards.FIRST_SENTENCE:
        assert said(hazards.hazard(code)[1], reader()).startswith(said(hazards.hazard(first)[1], reader()) + ". ")
    two = [row[0] for row in hazards.HAZARDS if ". " in said(row[1], reader()) and gravest_of(row[0])]
    assert two == [code for code, _ in hazards.FIRST_SENTENCE]


def gravest_of(code):
    """Whether a code brings up a caution."""
    return [grave for _, grave in OWN_CODES if code[:4] in grave]


def test_each_precaution_ends_with_a_point_or_is_given_one():
    without = [row[0] for row in hazards.PRECAUTIONS if said(row[1], reader())[-1] not in "./"]
    assert tuple(without) == hazards.NO_POINT
    assert not [row[0] for row in hazards.HAZARDS if said(row[1], reader())[-1] in "./"]


def test_cautions_stand_in_the_order_of_the_table():
    order = [row[0] for row in MOMENT]
    assert standing() == ["gloves", "wash"]
    everything = standing(mass=1.0, filler="talc", temperature=310.0, pot=340.0, usable=60.0, depth=0.05, room=10.0,
                          changes=0.0, task="wipe", solvent=True, codes=("H334", "H314"))
    assert everything == [name for name in order if name in everything] and len(everything) > 9
    assert {row[3] for row in MOMENT} <= {row[0] for row in tasks.TASKS}


def test_cautions_name_their_figures():
    assert cautions(mass=0.5)[0].text.startswith("500 g in one cup")
    assert "oz" in cautions(units="us", mass=0.5)[0].text
    assert cautions(depth=0.02)[0].text.startswith("Putty 20 mm deep")
    assert "8 min" in cautions(usable=539.0)[0].text


@pytest.mark.parametrize("row", dusts.POWDERS, ids=lambda row: row[0])
def test_the_caution_of_a_powder_names_it_and_says_what_its_dust_does(row):
    """In whole, and short without what it does; a powder that nobody knows is called by its own word."""
    [line] = cautions_lines.say(["powder"], {"filler": row[0]})
    assert said(line.label, reader()) == said(row[1], reader())
    assert said(line.text, reader()).endswith(" " + said(row[3], reader()))
    assert said(row[3], reader()) not in said(cautions_lines.short("powder", {"filler": row[0]}), reader())
    [unknown] = cautions_lines.say(["powder"], {"filler": "flour"})
    assert said(unknown.label, reader()) == "flour"
