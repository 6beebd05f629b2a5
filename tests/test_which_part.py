"""Which part is which: everywhere the engine names a part, that part's own figure stands beside it.

The figures come from the label by plain proportion, worked out here, and never from what the engine says of another
place. Names and ratios are uneven, so that two parts that change places cannot come out alike.
"""
import json
import re

import cases
import pytest
from covemix.shared.door import moves
from covemix.shared.door.call import call
from covemix.shared.pour.measured_out import FIELDS
from covemix.shared.words.units import BY_NAME, BY_SPELLING

SYSTEMS = {  # densities to the second decimal: with one alone the ratio by volume would be 10 % in doubt, and not told
    "two, by weight": {"by_weight": "100:30", "densities": "1.15:0.98"},
    "own names": {"by_weight": "100:44", "densities": "1.12:0.95", "parts": "Amber : Blue can"},
    "hardener the larger": {"by_weight": "40:100", "densities": "1.15:0.98", "parts": "Clear : Dark"},
    "by volume": {"by_volume": "5:2", "densities": "1.18:0.93", "parts": "Jug : Bottle"},
    "three": {"by_weight": "100:30:12", "densities": "1.15:0.98:1.05"},
    "three, own names": {"by_weight": "100:50:25", "densities": "1.10:1.00:0.90", "parts": "Base : Kicker : Flex"},
}
NAMES = {"two, by weight": ("Resin", "Hardener"), "own names": ("Amber", "Blue can"),
         "hardener the larger": ("Clear", "Dark"), "by volume": ("Jug", "Bottle"),
         "three": ("Resin", "Hardener", "Part 3"), "three, own names": ("Base", "Kicker", "Flex")}
KEYS = {"scale": "reading_", "pumps": "strokes_", "syringes": "drawn_", "graduated": "level_", "stick": "mark_"}
TOOLS = {"scale": {"scale": {"step": "0.01 g", "most": "5 kg"}}, "syringes": {"syringes": {"holds": "60 mL", "steps":
         "0.1 mL"}}, "graduated": {"graduated": {"holds": "2 L", "step": "1 mL"}},
         "stick": {"cup": {"name": "Can", "bottom": "60 mm", "top": "60 mm", "height": "200 mm"}}, "pumps": {}}
AREA = 3.141592653589793 * 30 * 30  # mm2 of that can
AMOUNT = 350.0  # g


def by_hand(key):
    """Grams and millilitres of each part of 350 g, by the label alone."""
    label = SYSTEMS[key]
    densities = [float(one) for one in label["densities"].split(":")]
    parts = [float(one) for one in (label.get("by_weight") or label["by_volume"]).split(":")]
    if "by_volume" in label:
        parts = [part * density for part, density in zip(parts, densities, strict=False)]
    grams = [AMOUNT * part / sum(parts) for part in parts]
    return grams, [mass / density for mass, density in zip(grams, densities, strict=False)]


def running(amounts):
    return [sum(amounts[:place + 1]) for place in range(len(amounts))]


def expected(key, way, each=False):
    """What the tool must show for each part: g, strokes of 10 mL, mL drawn, mL at the mark, mm from the bottom."""
    grams, volumes = by_hand(key)
    if way == "scale":
        return grams if each else running(grams)
    if way == "stick":
        return [1000 * level / AREA for level in running(volumes)]
    if way == "pumps":
        return [volume / 10 for volume in volumes]
    return running(volumes) if way == "graduated" else volumes


SLACK = {"scale": 0.011, "pumps": None, "syringes": 0.06, "graduated": 0.6, "stick": 0.06}


def asked(key, way, **more):
    typed = {"amount": "350 g", "way": way, "system": SYSTEMS[key], **TOOLS[way], **more}
    if way == "pumps":
        typed["pumps"] = {"name": "Set", "strokes": ":".join(["10"] * len(NAMES[key])) + " mL"}
    return typed


def figure(text):
    return float(re.match(r"[-+]?[0-9.]+", text)[0])


def told(move, typed):
    found = moves.answer(move, typed)
    assert found["errors"] == []
    return found


def only(text, key, place):
    """A text names its own part, and none of the others."""
    small = text.lower()
    named = [bool(re.search(r"\b" + re.escape(name.lower()) + r"\b", small)) for name in NAMES[key]]
    assert named == [one == place for one in range(len(named))], (text, NAMES[key][place])


def near(got, wanted, way):
    if way == "pumps":  # whole strokes, never fewer in all than wanted
        assert abs(got - wanted) <= 0.5 * wanted + 1, (got, wanted)
        return
    on_marks = 0.03 * wanted if way in ("syringes", "graduated") else 0  # never fewer in all, so up to some marks more
    assert abs(got - wanted) <= SLACK[way] + on_marks, (got, wanted)


BOTH = [(key, way) for key in SYSTEMS for way in KEYS]


@pytest.mark.parametrize("key, way", BOTH)
def test_each_figure_of_a_pour_stands_beside_its_own_part(key, way):
    lines = {line["name"]: line for line in told("measure", asked(key, way))["lines"]}
    wanted, start = expected(key, way), 0.0
    _, volumes = by_hand(key)
    grams, _ = by_hand(key)
    share = grams if way == "scale" else volumes
    for place, figure_wanted in enumerate(wanted):
        letter = "abcde"[place]
        line = lines[KEYS[way] + letter]
        only(line["label"], key, place)
        assert line["part"] == letter and line["rank"] == "answer"
        near(figure(line["text"]), figure_wanted, way)
        assert line["span"][0] == pytest.approx(start, abs=0.02)  # its place on the rule under it
        start = line["span"][1]
        if way in ("scale", "stick"):
            assert start == pytest.approx(100 * running(share)[place] / sum(share), abs=0.02)
    ratio = [figure(lines[KEYS[way] + "abcde"[place]]["text"]) for place in range(len(wanted))]
    if way in ("pumps", "syringes"):  # in whole steps the parts still stand in the label's order of size
        assert sorted(ratio) == [ratio[place] for place in sorted(range(len(wanted)), key=wanted.__getitem__)]


@pytest.mark.parametrize("key", SYSTEMS)
def test_the_parts_of_the_batch_by_weight_and_volume(key):
    grams, volumes = by_hand(key)
    lines = {line["name"]: line for line in told("ratio", {"amount": "350 g", "system": SYSTEMS[key]})["lines"]}
    for place in range(len(grams)):
        line = lines["part_" + "abcde"[place]]
        assert line["label"] == NAMES[key][place]
        mass, volume = line["text"].split(" · ")
        assert figure(mass) == pytest.approx(grams[place], rel=0.005) and mass.endswith(" g")
        assert figure(volume) == pytest.approx(volumes[place], rel=0.005) and volume.endswith(" mL")


@pytest.mark.parametrize("key, way", BOTH)
def test_each_step_names_shows_and_says_its_own_part(key, way):
    """On the screen, in the ear, in the field of what was really read, and in the answer that a card prints."""
    found = told("pouring", asked(key, way))
    wanted = expected(key, way)
    group, field, _ = FIELDS[way]
    steps = [one for one in found["steps"] if one["name"].startswith(KEYS[way])]
    assert len(steps) == len(wanted)
    for place, one in enumerate(steps):
        only(one["label"], key, place)
        only(one["said"], key, place)
        assert one["said"].lower().endswith(cases.aloud(one["figure"]))
        near(figure(one["figure"]), wanted[place], way)
        assert one["part"] == "abcde"[place]
        assert one["field"] == f"{group}.{place}.{field}"
    names = [one["name"] for one in found["steps"]]
    assert names.index("stir") > max(place for place, name in enumerate(names) if name.startswith(KEYS[way]))
    printed = [line for line in found["lines"] if line["name"].startswith(KEYS[way])]
    for place, line in enumerate(printed):
        only(line["label"], key, place)
        near(figure(line["text"]), wanted[place], way)


@pytest.mark.parametrize("key", SYSTEMS)
def test_the_scale_is_zeroed_before_a_part_only_where_that_was_chosen(key):
    """Zeroed once, the readings grow and no step may ask for a zero; zeroed each time, each part has its own weight and
    every step but the first asks for it."""
    once = told("pouring", asked(key, "scale"))["steps"]
    zeroed = [one["name"] for one in once if re.search(r"\b(to 0|to zero)\b", one["label"] + " " + one["under"])
              and one["name"] != "cup"]
    assert zeroed == []
    assert [one["name"] for one in once].index("cup") == 0
    parts = [one for one in once if one["name"].startswith("reading_")]
    assert all("not zero again" in one["under"] for one in parts[1:])
    each = [one for one in told("pouring", asked(key, "scale", zeroing="each"))["steps"]
            if one["name"].startswith("reading_")]
    assert ["to 0" in one["under"] for one in each] == [False] + [True] * (len(each) - 1)
    assert not any("not zero again" in one["under"] for one in each)
    for one, wanted in zip(each, expected(key, "scale", each=True), strict=False):
        assert figure(one["figure"]) == pytest.approx(wanted, abs=0.011)


@pytest.mark.parametrize("key", SYSTEMS)
def test_too_much_of_a_part_is_said_of_that_part_and_the_others_are_added(key):
    """A third more of one part than belongs: what is off names it, and all other parts grow by a third."""
    grams, _ = by_hand(key)
    for place in range(len(grams)):
        poured = [mass * (4 / 3 if one == place else 1) for one, mass in enumerate(grams)]
        readings = [{"shown": f"{level:.2f}"} for level in running(poured)]
        typed = asked(key, "scale", rescue="yes", readings=readings)
        rescued = {line["name"]: line for line in told("rescue", typed)["lines"]}
        for one in range(len(grams)):
            name = "add_" + "abcde"[one]
            assert (name in rescued) == (one != place), name
            if one != place:
                only(rescued[name]["label"], key, one)
                assert figure(rescued[name]["text"]) == pytest.approx(grams[one] / 3, abs=0.05)
                assert rescued[name]["part"] == "abcde"[one]
                if "least_" + "abcde"[one] in rescued:
                    only(rescued["least_" + "abcde"[one]]["label"], key, one)
        said = "too much " + NAMES[key][place] if place else "too little "
        off = [line for line in told("measure", typed)["lines"] if line["name"] == "poured"]
        off += [one for one in [rescued["off"]] if one]
        for line in off:
            assert line["rank"] == "warn" and said in line["rough"], (line["rough"], said)
            if not place:
                assert NAMES[key][0] not in line["rough"]
        step = [one for one in told("pouring", typed)["steps"] if one["name"] == "off"]
        assert said in step[-1]["under"]


@pytest.mark.parametrize("key", SYSTEMS)
def test_the_next_part_follows_what_was_poured_of_the_first(key):
    """A tenth more of the first: every other part a tenth more, each at its own name."""
    grams, _ = by_hand(key)
    typed = asked(key, "scale", readings=[{"shown": f"{1.1 * grams[0]:.2f}"}])
    lines = {line["name"]: line for line in told("measure", typed)["lines"]}
    assert lines["reading_a"]["rank"] == "beside"
    for place, level in enumerate(running(grams)[1:], 1):
        line = lines["reading_" + "abcde"[place]]
        only(line["label"], key, place)
        assert figure(line["text"]) == pytest.approx(1.1 * level, abs=0.02)


@pytest.mark.parametrize("key", SYSTEMS)
def test_one_part_on_hand_gives_the_others(key):
    """Plain proportion from the first and from the second."""
    grams, _ = by_hand(key)
    for place, letter in enumerate("ab"):
        typed = {"amount": f"{grams[place]} g", "amount_is": f"part_{letter}", "system": SYSTEMS[key]}
        lines = {line["name"]: line for line in told("ratio", typed)["lines"]}
        for one, mass in enumerate(grams):
            assert lines["part_" + "abcde"[one]]["value"] * 1000 == pytest.approx(mass)


@pytest.mark.parametrize("key", SYSTEMS)
def test_the_shopping_list_and_the_packs_have_the_parts_in_their_order(key):
    grams, _ = by_hand(key)
    lines = {line["name"]: line for line in told("boat", {"system": SYSTEMS[key]})["lines"]}
    names = re.split(r" and ", lines["resin"]["label"])
    assert [name.lower() for name in names] == [name.lower() for name in NAMES[key]]
    bought = [weight(text) for text in lines["resin"]["text"].split(" + ")]
    for mass, own in zip(bought, grams, strict=False):
        assert mass == pytest.approx(sum(bought) * own / AMOUNT, rel=0.01)
    for pair in re.findall(r"\(([^)]*)\)", lines["packs"]["text"]):
        sizes = [weight(text) for text in pair.split(" + ")]
        for size, own in zip(sizes, grams, strict=False):
            assert size == pytest.approx(sizes[0] * own / grams[0], rel=0.01)


def weight(text):
    number, _, unit = text.partition(" ")
    return float(number) * {"kg": 1000, "g": 1}[unit]


@pytest.mark.parametrize("key", SYSTEMS)
def test_each_batch_of_a_plan_names_its_parts_with_their_grams(key):
    """On the plan and on its sheets, whose links pour the very same parts."""
    grams, _ = by_hand(key)
    typed = {"system": dict(SYSTEMS[key], pot_time="40", pot_mass="100", pot_temperature="25"), "temperature": "18",
             "people": "1", "long": "cut", "pieces": [{"name": "Keel", "length": "2", "putty": "150", "wet": "90"},
                                                      {"name": "Chine", "length": "3", "putty": "120", "wet": "90"}]}
    plan = told("plan", typed)
    mixes = [line for line in plan["lines"] if line["name"].startswith("amount_")]
    assert mixes
    for line in mixes:
        _, _, parts = line["text"].partition(": ")
        pieces = [piece.split(" ", 2) for piece in parts.split(" + ")]
        assert [name.lower() for _, _, name in pieces] == [name.lower() for name in NAMES[key]], line["text"]
        masses = [weight(f"{number} {unit}") for number, unit, _ in pieces]
        for mass, own in zip(masses, grams, strict=False):
            assert mass == pytest.approx(sum(masses) * own / AMOUNT, rel=0.02, abs=0.6)


def pairs_of(typed, before=""):
    found = []
    for name, one in typed.items():
        if isinstance(one, dict):
            found += pairs_of(one, before + name + ".")
        elif isinstance(one, list):
            found += [pair for place, row in enumerate(one) for pair in pairs_of(row, f"{before}{name}.{place}.")]
        else:
            found.append([before + name, one])
    return found


@pytest.mark.parametrize("key, way", [(key, way) for key in ("own names", "three, own names") for way in KEYS])
def test_card_link_and_clock_carry_the_parts_as_they_were_typed(key, way):
    pairs = pairs_of(asked(key, way))
    card = json.loads(call(json.dumps({"hand": "pour", "pairs": pairs})))["card"]
    names = {KEYS[way] + letter for letter in "abc"}
    rows = [line for line in card["lines"] if line.get("name") in names]
    assert len(rows) == len(NAMES[key])
    for place, (line, wanted) in enumerate(zip(rows, expected(key, way), strict=False)):
        only(line["label"], key, place)
        near(figure(line["text"]), wanted, way)
    screen = json.loads(call(json.dumps({"screen": "pour", "pairs": pairs})))
    leads = [lead for _, answer in screen["answers"] for lead in answer["leads"]]
    own = [["system.parts", SYSTEMS[key]["parts"]], ["system.by_weight", SYSTEMS[key]["by_weight"]]]
    assert leads
    for lead in leads:
        carried = [pair for pair in map(list, lead["pairs"]) if pair[0].startswith("system")]
        if carried:  # the clock, the pot and the log go on with the label as it was typed
            assert all(pair in carried for pair in own), (lead["label"], carried)
    step = next(one for one in told("pouring", asked(key, way))["steps"] if one["logs"])
    assert step["logs"]


@pytest.mark.parametrize("key", SYSTEMS)
def test_the_log_keeps_the_readings_in_the_order_of_the_parts(key):
    levels = running(by_hand(key)[0])
    typed = asked(key, "scale", readings=[{"shown": f"{level:.2f}"} for level in levels])
    logs = dict(map(tuple, told("pouring", typed)["steps"][-1]["logs"]))
    assert [figure(one) for one in logs["readings"].split(", ")] == pytest.approx(levels, abs=0.011)


def test_two_labels_that_disagree_name_the_part_that_is_off():
    """By hand, 100 : 30 by weight at 1.15 and 0.98 is 2.84 : 1; a label that also says 2.75 : 1 is 3.3 % off that."""
    typed = {"amount": "350 g", "system": {"by_weight": "100:30", "by_volume": "2.75:1", "densities": "1.15:0.98",
                                           "parts": "Amber : Blue"}}
    apart = next(line for line in told("ratio", typed)["lines"] if line["name"] == "label_apart")
    assert "Blue to Amber" in apart["text"]


def test_the_units_this_file_reads_are_those_of_the_engine():
    assert {BY_SPELLING[name][0].name for name in ("g", "kg", "ml", "mm")} == {"g", "kg", "mL", "mm"}
    assert BY_NAME["kg"].times / BY_NAME["kg"].over == 1
