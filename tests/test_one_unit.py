"""Units at the edge: a number means what stands beside it, in both systems, in every field and every text."""
import json
import re

import cases
import pytest
from covemix.shared.door import card, handover, moves
from covemix.shared.door.call import call
from covemix.shared.forms import inputs, links
from covemix.shared.forms.declared import with_units
from covemix.shared.forms.quantities import Amount, Number, Parts
from covemix.shared.pour.measured_out import FIELDS
from covemix.shared.things.records_shed import RECORDS
from covemix.shared.words.units import BY_NAME, METRIC, US, find, to_si
from covemix.shared.words.written import reader
from house import app
from starlette.testclient import TestClient

WEIGHT, LENGTH = Number("mass", "Mass", unit="g"), Number("length", "Length", unit="m")
TIME = Number("time", "Time", unit="min")
TEN, TEN_AND_A_HALF = 94 * 0.0254, 94.5 * 0.0254
# a figure with a metric sign behind it; g/mL and W/(m² K) are the same in both systems
METRIC_SIGN = re.compile(r"(?<![\w/])[\d.½]+[\s\u00a0]?(g|kg|mL|L|mm|cm|m|°C|g/m²|mm²|m²|m³|m³/h|m/min|g/m)(?![\w/²³])")
# a scale that shows grams and a cup with marks in mL are metric things, whoever uses them; so is a constant of physics
METRIC_THINGS = re.compile("Scale that shows|Medicine cup|Mixing cup|m² K/W")
SAYS = ("label", "text", "rough", "caution", "message", "under", "said", "figure", "asks")


@pytest.mark.parametrize("typed, metres, understood", [
    ("7' 10\"", TEN, "7 ft 10 in"), ("7 ft 10 in", TEN, "7 ft 10 in"),
    ("7'10 1/2\"", TEN_AND_A_HALF, "7 ft 10.5 in"),
    ("7’ 10½”", TEN_AND_A_HALF, "7 ft 10.5 in"),
    ("7'-10-1/2\"", TEN_AND_A_HALF, "7 ft 10.5 in"), ("7' 10''", TEN, "7 ft 10 in"),
    ("7' 10", TEN, "7 ft 10 in"),
    ("7 feet 10 inches", TEN, "7 ft 10 in"), ("0' 4\"", 0.1016, "0 ft 4 in"),
    ("3-1/2 in", 3.5 * 0.0254, "3.5 in"),
])
def test_feet_and_inches_stand_in_one_field(typed, metres, understood):
    """1 ft = 12 in = 0.3048 m: NIST SP 811 (2008), App. B.8."""
    for system in (METRIC, US):
        values, errors = inputs.read((LENGTH,), {"units": system, "length": typed})
        assert errors == [] and values["length"] == pytest.approx(metres, rel=1e-12)
        assert moves.understood(values, reader()) == [["length", understood]] * (typed != understood)


def test_pounds_and_ounces_hours_and_minutes_too():
    """1 lb = 16 oz = 0.45359237 kg: NIST SP 811 (2008), App. B.8."""
    read = {}
    for item, typed in ((WEIGHT, "1 lb 4 oz"), (TIME, "1 h 20 min")):
        values, errors = inputs.read((item,), {item.name: typed})
        assert errors == []
        read[item.name] = values[item.name]
    assert read == {"mass": pytest.approx(1.25 * 0.45359237, rel=1e-12), "time": pytest.approx(4800)}
    amount = Amount("amount", "Amount", (("total", "Mix", ("g", "mL")),))
    assert amount.read("2 lb 8 oz", "amount", {"units": US, "_understood": []})[1] == pytest.approx(2.5 * 0.45359237)
    parts = Parts("length", "Length", unit="m", least=1)
    assert parts.read("7' 6\" : 3' 0\"", "length", {"units": US, "_understood": []}) == pytest.approx((2.286, 0.9144))


@pytest.mark.parametrize("typed", ["7' 14\"", "7.5 ft 3 in", "-7' 10\"", "7' 10 mm", "7' 10' 3",
                                   "1 lb 4 g", "7 in 3 ft", "' 10\""])
def test_two_units_that_do_not_belong_together_are_refused_at_the_field(typed):
    for item in (LENGTH, WEIGHT):
        assert [e.field for e in inputs.read((item,), {item.name: typed})[1]] == [item.name]


def leaves(declared, prefix=""):
    for item in declared:
        inner = item.record.fields if item.kind == "pick" else getattr(item, "fields", ())
        yield from leaves(inner, f"{prefix}{item.name}.")
        yield prefix + item.name, item


def test_the_defaults_mean_the_same_in_both_systems():
    """Also those of rows, and the built-in things of the kit: their numbers say their units."""
    for name in moves.names():
        for path, item in leaves(moves.module(name).INPUTS):
            if item.kind in ("pick", "group"):
                for typed in [dict(row[3]) for row in item.record.rows] if item.kind == "pick" else item.default:
                    fields = item.record.fields if item.kind == "pick" else item.fields
                    assert with_units(fields, typed, METRIC) == with_units(fields, typed, US), (name, path, typed)
            elif item.kind in ("number", "amount") and item.default is not None:
                first, second = (item.read(None, "", {"units": system, "_understood": []}) for system in (METRIC, US))
                first, second = (one[1] if item.kind == "amount" else one for one in (first, second))
                assert first == pytest.approx(second, rel=5e-3), (name, path)


def test_built_in_things_are_all_looked_at():
    assert len(RECORDS) > 8


@pytest.mark.parametrize("name", moves.names())
def test_no_text_of_a_form_keeps_a_metric_figure_in_us_units(name):
    found = []

    def walk(facts):
        for key, value in facts.items() if isinstance(facts, dict) else enumerate(facts):
            if isinstance(value, str) and key in ("label", "help"):
                found.extend([value] if METRIC_SIGN.search(value) or "{" in value else [])
            elif isinstance(value, (dict, list)) and key != "typed":
                walk(value)

    walk(moves.about(name, reader(US)))
    assert [text for text in found if not METRIC_THINGS.search(text)] == []


# what is made in metric, and shows it to everybody: a built-in scale that shows grams, marks in mL
OWN_TOOLS = {"scale": {"step": "0.1 oz", "most": "20 lb"},
             "graduated": {"holds": "16 US fl oz", "step": "0.5 US fl oz"},
             "syringes": {"holds": "2 US fl oz", "steps": "0.05 US fl oz"}}
COUNTS = {"plan": 25, "clock": 25, "boat": 50, "heat": 50, "sources": 3}


@pytest.mark.parametrize("name", moves.names())
def test_no_answer_keeps_a_metric_figure_in_us_units(name):
    """Over generated cases whose numbers are typed bare; words that somebody typed are his own."""
    answered = 0
    for request in cases.different(name, COUNTS.get(name, 150), seed=12):
        typed = without_units(request["typed"] if "typed" in request else links.tree(request["pairs"]))
        typed["units"] = US
        typed.update({item.name: OWN_TOOLS[item.name] for item in moves.module(name).INPUTS if item.name in OWN_TOOLS})
        answer = json.loads(call(json.dumps({"move": name, "typed": typed})))
        answered += not answer["errors"]
        for text in texts([answer["lines"], answer["errors"], answer.get("steps", []), answer["figures"]]):
            if name == "kit" or METRIC_THINGS.search(text):
                continue  # the kit tells a thing as it was typed
            assert not METRIC_SIGN.search(text) and "{" not in text, (text, typed)
    assert answered > 0


def without_units(typed):
    """Bare numbers only, so that every unit in the answer is ours."""
    if isinstance(typed, dict):
        return {key: without_units(value) for key, value in typed.items() if key not in ("timings", "learned")}
    if isinstance(typed, list):
        return [without_units(value) for value in typed]
    if isinstance(typed, str) and re.search(r"\d", typed) and re.search(r"[^\d.:, ]", typed):
        return None if METRIC_SIGN.search(typed) or "{" in typed else typed
    return typed


def texts(found):
    if isinstance(found, dict):
        for key, value in found.items():
            if isinstance(value, str) and key in SAYS:
                yield value
            elif key not in ("shapes", "keeps", "logs", "lead"):
                yield from texts(value)
    elif isinstance(found, (list, tuple)):
        for one in found:
            yield from texts(one)


@pytest.mark.parametrize("screen", [name for name, _ in moves.SCREENS])
def test_what_was_typed_before_a_switch_means_what_it_meant(screen):
    """A plain form without scripts says in which units its numbers were typed."""
    declared = moves.screen_inputs(screen)
    for request in cases.different(screen, 25, seed=5):
        pairs = [pair for pair in request["pairs"] if pair[0] != "units"]
        before = inputs.read(declared, links.tree([["units", METRIC], *pairs]))
        after = inputs.read(declared, links.tree([["units", US], ["units_typed", METRIC], *pairs]))
        assert [e.field for e in before[1]] == [e.field for e in after[1]]
        if not before[1]:
            assert known(after[0], declared) == known(before[0], declared), pairs


FIGURES = ("number", "amount", "parts")


def known(values, declared):
    found = {}
    for item in declared:
        value = values.get(item.name)
        if item.kind == "pick" and value is not None:
            value = known(value, item.record.fields)
        elif item.kind == "group" and value is not None:
            value = [row and known(row, item.fields) for row in value]
        elif item.kind in FIGURES and item.default not in (None, "") and not typed_text(values, item):
            continue  # a default is the same to three figures
        found[item.name] = near(value)
    return found


def typed_text(values, item):
    text = item.typed_in(values["_tree"])
    return text is not None and str(text).strip(" \t\r\n") != ""


def near(value):
    if isinstance(value, float):
        return pytest.approx(value, rel=1e-9)
    if isinstance(value, tuple):
        return tuple(near(one) for one in value)
    return value


def test_a_page_without_scripts_keeps_what_was_typed_before_the_switch():
    client = TestClient(app())
    page = client.get("/", params={"units": US, "units_typed": METRIC, "amount": "240", "amount_is": "total"}).text
    assert 'value="240 g"' in page and 'name="units_typed" value="us"' in page
    assert "8.47 oz" in page or "6.35 oz" in page or "oz" in page
    assert "6,804" not in page and "6804 g" not in page
    plain = client.get("/", params={"units": US, "units_typed": US, "amount": "8", "amount_is": "total"}).text
    assert 'value="8"' in plain and '>oz</span>' in plain


@pytest.mark.parametrize("name", ["thicken", "heat", "plan"])
def test_where_an_answer_leads_its_numbers_mean_what_they_were(name):
    """An address that is opened by itself says no units: what was typed in ounces is no gram there."""
    own = {"by_weight": "100:44", "pot_time": "25", "pot_mass": "4", "pot_temperature": "72", "speed": "medium",
           "densities": "1.1 : 1.0"}
    typed = {"units": US, "system": own, "air": "72", "batch": "7", "amount": "8", "thicken": "yes",
             "temperature_is": "constant", "temperature": "70", "pieces": [{"length": "6", "putty": "2", "wet": "2"}]}
    declared = {item.name for item in moves.module(name).INPUTS} | {"units", "amount_is"}
    answer = moves.answer(name, {key: value for key, value in typed.items() if key in declared})
    assert answer["errors"] == []
    systems = [one for one in (dict(lead["pairs"]) for lead in answer["leads"]) if "system.by_weight" in one]
    assert systems
    for system in systems:
        for pair, unit in (("system.pot_mass", "4 oz"), ("system.pot_temperature", "72 °F")):
            assert system[pair] == unit


# every field that takes what an instrument of the kit shows, by the pick of that instrument
SHOWN = {"scale": {"readings.shown", "in_cup.mass", "filler_in", "batches.mixed", "batches.before", "batches.after"},
         "syringes": {"drawn.volume"}, "graduated": {"levels.volume"}}
BY_WAY = {"scale": "scale", "syringes": "syringes", "graduated": "graduated"}
IN_OZ = {"scale": {"step": "0.05 oz"}, "syringes": {"holds": "2 US fl oz", "steps": "0.1 US fl oz"},
         "graduated": {"holds": "16 US fl oz", "step": "1 US fl oz"}}


def of_tools(declared):
    return [(path, item) for path, item in leaves(declared) if item.tool]


def test_what_an_instrument_shows_is_declared_once_and_everywhere():
    """A field of a screen that has the instrument; and each instrument of the kit that has a unit has such fields."""
    found = {}
    for screen, _ in moves.SCREENS:
        declared = moves.screen_inputs(screen)
        picks = {item.name: item.record for item in declared if item.kind == "pick"}
        for path, item in of_tools(declared):
            shows = next(one for one in picks[item.tool].fields if one.name == picks[item.tool].shows)
            assert BY_NAME[shows.unit].quantity == BY_NAME[item.unit].quantity, path
            found.setdefault(item.tool, set()).add(path)
    assert found == SHOWN
    for name in moves.names():  # a move alone reads it as its screen does
        declared = moves.module(name).INPUTS
        assert {item.tool for _, item in of_tools(declared)} <= {item.name for item in declared}, name
    assert {record.name for record in RECORDS if record.shows} == set(SHOWN)


@pytest.mark.parametrize("system", [METRIC, US])
@pytest.mark.parametrize("tool", SHOWN)
def test_a_bare_number_is_in_the_unit_of_the_instrument(tool, system):
    """Old main: with a scale that shows grams "187" was read as 187 oz in US units, and Pour said "187 g" above it."""
    declared = moves.screen_inputs("pour")
    picked = next(item for item in declared if item.name == tool)
    for chosen in [row[0] for row in picked.record.rows] + [IN_OZ[tool], None]:
        typed = chosen if isinstance(chosen, dict) else picked.record.row(chosen or picked.default)
        unit = re.search(r"[A-Za-z].*", typed[picked.record.shows])[0]
        for path, item in of_tools(declared):
            if item.tool != tool:
                continue
            group, _, field = path.partition(".")
            tree = {"units": system, "way": BY_WAY[tool], "thicken": "yes", "rescue": "yes"}
            tree |= {} if chosen is None else {tool: chosen}
            row = {"mixed": "9", "before": "9", "after": "8"} if group == "batches" else {}
            for text in ("7", "7 " + unit):
                tree[group] = [row | {field: text}] if field else text
                values, errors = inputs.read(declared, tree)
                assert [one for one in errors if one.field.startswith(group)] == []
                read = values[group][0][field] if field else values[group]
                assert read == pytest.approx(to_si(7.0, find(unit, BY_NAME[item.unit].quantity)[0].name), rel=1e-12)
            spelled = with_units(declared, {**tree, group: [{field: "7"}] if field else "7"}, system)[group]
            assert (spelled[0][field] if field else spelled) == "7 " + unit, path


WEIGHED = {"by_weight": "345:98", "densities": "1.150:0.980"}


@pytest.mark.parametrize("way, line", [("scale", "reading_a"), ("syringes", "drawn_a"), ("graduated", "level_a")])
def test_what_is_told_of_an_instrument_is_in_its_unit_and_taken_when_typed_back(way, line):
    """The figure on Pour, the one in the step, and the number alone typed below it: one unit."""
    group, field, _ = FIELDS[way]
    for tool in (None, IN_OZ[way]):
        typed = {"units": US, "way": way, "system": WEIGHED} | ({} if tool is None else {way: tool})
        told = {one["name"]: one for one in moves.answer("measure", typed)["lines"]}[line]
        unit = "g" if way == "scale" else "mL"
        figure, _, behind = told["text"].partition(" ")
        assert behind == (unit if tool is None else {"g": "oz", "mL": "US fl oz"}[unit])
        again = moves.answer("pouring", {**typed, group: [{field: figure}]})
        assert again["errors"] == []
        assert {one["name"]: one for one in again["steps"]}[line]["figure"] == told["text"]


def test_with_a_scale_that_shows_grams_the_filler_is_weighed_in_grams():
    putty = {"units": US, "thicken": "yes", "system": WEIGHED}
    typed = putty | {"rescue": "yes", "in_cup": [{"mass": "187"}, {"mass": "40"}], "filler_in": "20"}
    for move, name in (("thicken", "filler"), ("thicken", "first_filler"), ("rescue", "add_b"),
                       ("rescue", "add_filler")):
        asked = typed if move == "rescue" else putty
        lines = {one["name"]: one for one in moves.answer(move, asked)["lines"]}
        assert lines[name]["text"].endswith(" g"), name
    steps = moves.answer("pouring", putty)["steps"]
    weighed = [one["figure"] for one in steps if one["part"] == "filler" and one["figure"]]
    assert len(weighed) == 2 and all(one.endswith(" g") for one in weighed)


def test_where_no_scale_is_asked_its_fields_are_in_the_users_units():
    values, _ = inputs.read(moves.screen_inputs("pour"), {"units": US, "way": "stick", "rescue": "yes",
                                                          "in_cup": [{"mass": "7"}]})
    assert values["in_cup"][0]["mass"] == pytest.approx(7 * 0.45359237 / 16, rel=1e-12)


def test_a_limit_and_a_card_say_the_unit_of_the_scale():
    typed = {"units": US, "way": "scale", "readings": [{"shown": "900000"}]}
    assert "200000 g" in moves.answer("measure", typed)["errors"][0]["message"]
    declared = moves.screen_inputs("pour")
    assert card.told(declared, [["units", US], ["way", "scale"], ["readings.0.shown", "187"]])[-1][1] == "187 g"
    page = TestClient(app()).get("/", params={"units": US, "way": "scale", "readings.0.shown": "187"}).text
    assert re.search(r'name="readings.0.shown".*?<span class="unit"[^>]*>g</span>', page, re.S)


def test_a_link_says_the_unit_of_what_a_scale_shows_and_an_old_one_means_what_it_meant():
    """Build 0.1.0 read the bare 187 of a link as ounces; a link of today is read alike by both."""
    pairs = [["units", US], ["readings.0.shown", "187"]]
    made = handover.handed("pour", [*pairs, ["way", "scale"]])["link"]
    assert ["readings.0.shown", "187 g"] in made
    for link, wanted in ((made, "187 g"), (handover.sealed(pairs), "187 oz"), (pairs, "187")):
        known, refused = handover.opened(moves.screen_inputs("pour"), link, 60)
        assert refused == "" and dict(known)["readings.0.shown"] == wanted
    metric = [["readings.0.shown", "187"]]
    assert dict(handover.handed("pour", [*metric, ["way", "scale"]])["link"])["readings.0.shown"] == "187"
