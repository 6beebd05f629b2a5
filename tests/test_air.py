"""Air: clearing a room, solvent and dust against values from outside the project."""
import chemicals
import pint
import pytest
from covemix.shared.catalogue import dusts, solvents
from covemix.shared.door import moves
from covemix.shared.equations import ventilation
from covemix.shared.safety import air_lines
from covemix.shared.words.texts import said
from covemix.shared.words.written import reader
from hypothesis import given
from hypothesis import strategies as st

UNIT = pint.UnitRegistry()
PURGE = "CDC/HICPAC (2003), Table B.1"
ACGIH = "ACGIH, Industrial Ventilation (from memory), worked examples in US units"
NPG = "NIOSH Pocket Guide to Chemical Hazards"
CAS = {"acetone": "67-64-1", "isopropanol": "67-63-0", "ethanol": "64-17-5", "butanone": "78-93-3"}


def lines(**typed):
    found = moves.answer("air", typed)
    assert found["errors"] == [], found["errors"]
    return {line["name"]: line for line in found["lines"]}


def errors(**typed):
    return {error["field"]: error["message"] for error in moves.answer("air", typed)["errors"]}


CHANGES = (2, 4, 6, 8, 10, 12, 15, 20, 50)


@pytest.mark.parametrize("left, minutes", [(0.01, (138, 69, 46, 35, 28, 23, 18, 14, 6)),
                                           (0.001, (207, 104, 69, 52, 41, 35, 28, 21, 8))])
def test_clearing_time_against_the_purge_table(outside, left, minutes):
    """CDC/HICPAC (2003), Table B.1, all of it, as printed: whole minutes to 99 % and to 99.9 %."""
    for changes, expected in zip(CHANGES, minutes, strict=True):
        outside.printed(f"air {changes} changes, {left:.1%} left", PURGE, expected,
                        ventilation.clearing_time(changes / 3600, left) / 60, absolute=0.5)


def test_clearing_time_against_the_older_table(outside):
    """CDC MMWR 43 (RR-13) 1994, Table S3-1, as printed: whole minutes to 90 %."""
    minutes = dict(enumerate((138, 69, 46, 35, 28, 23, 20, 17, 15, 14, 13, 12, 11, 10, 9, 9, 8, 8, 7, 7), 1))
    for changes, expected in {**minutes, 25: 6, 30: 5, 35: 4, 40: 3, 45: 3, 50: 3}.items():
        outside.printed(f"air {changes} changes, 90 %", "CDC MMWR 43 (RR-13) 1994, Table S3-1", expected,
                        ventilation.clearing_time(changes / 3600, 0.1) / 60, absolute=0.5)


def test_mixing_factor_multiplies_the_time(outside):
    """The formula under CDC/HICPAC's Table B.1 with effective flow Q/K: 40 m3, 240 m3/h, K 2, 99.9 %: 138.1551 min."""
    changes = ventilation.air_changes(240 / 3600, 40)
    assert changes * 3600 == pytest.approx(6)
    outside.worked("air mixing factor 2", "the formula under CDC/HICPAC (2003), Table B.1, the flow over K", 138.1551,
                   ventilation.clearing_time(changes, 0.001, 2) / 60, rel=1e-6)


def test_molar_volume_against_pint(outside):
    """pint's CODATA gas constant: 24.465 L/mol at 25 degC and 101325 Pa (29 CFR 1910.1000: 24.45)."""
    expected = (1 * UNIT.molar_gas_constant * UNIT.Quantity(298.15, "K") / UNIT.Quantity(1, "atm")).to("m^3/mol")
    outside.library("air molar volume", "pint (library), CODATA gas constant", expected.magnitude,
            ventilation.molar_volume(298.15))


def test_flow_for_health_against_the_classic_example(outside):
    """ACGIH, Industrial Ventilation (from memory): methyl chloroform, 1.5 pints an hour, TLV 350, K 5: 1424 cfm."""
    found = ventilation.flow_for_health_403
    outside.printed("air health, methyl chloroform", ACGIH, 1424, found(1.32, 1.5 / 60, 133.4, 350, 5),
                    absolute=0.5)
    outside.worked("air health, acetone", ACGIH, 456.6408, found(0.79, 0.25 / 60, 58.1, 250, 5), rel=1e-5)


def test_flow_for_fire(outside):
    """ACGIH, Industrial Ventilation (from memory): acetone, 2 pints an hour, a quarter of 2.5 %: 29.225 cfm."""
    outside.worked("air fire, acetone", ACGIH, 29.22501, ventilation.flow_for_fire_403(0.79, 2 / 60, 58.1, 2.5),
            rel=1e-5)


def test_ideal_gas_and_403_agree(outside):
    """The two forms at 70 degF (387 ft3/lb-mol) within 0.4 %; pint for the units."""
    old = UNIT.Quantity(ventilation.flow_for_health_403(0.79, 1 / 60, 58.1, 250, 1), "ft^3/min").to("m^3/s").magnitude
    rate = (UNIT.Quantity(1, "US_pint") * UNIT.Quantity(0.79, "g/mL") / UNIT.Quantity(1,
    "h")).to("kg/s").magnitude
    outside.worked("air ideal gas and 403",
            "ACGIH, Industrial Ventilation (from memory), 387 ft3/lb-mol; pint for the units",
            old,
            ventilation.flow_for_share(rate, 0.0581, 250e-6, 294.26), rel=0.004)


def test_flow_of_acetone():
    """Ideal gas at 25 degC, 100 g/h, 250 ppm, K 5: 842.4726 m3/h."""
    flow = ventilation.flow_for_share(0.1 / 3600, 0.05808, 250e-6, 298.15, 5) * 3600
    assert flow == pytest.approx(842.4726, rel=1e-5)


def test_vapour_in_a_closed_room():
    """Ideal gas: 50 g of acetone in 30 m3 at 20 degC: 690.2869 ppm, 2.761147 % of 2.5 %."""
    share = ventilation.vapour_share(0.05, 0.05808, 30, 293.15)
    assert share * 1e6 == pytest.approx(690.2869, rel=1e-5)
    assert 100 * share / 0.025 == pytest.approx(2.761147, rel=1e-5)


@pytest.mark.parametrize("name", [row[0] for row in solvents.SOLVENTS])
def test_solvents_against_the_chemicals_library(outside, name):
    """PyPI `chemicals`: molar masses to the digits kept here; no explosive limit here is above the library's."""
    outside.library("solvent molar mass " + name, "chemicals (library), by CAS number", chemicals.MW(CAS[name]),
            solvents.lowest(name, solvents.MOLAR).value * 1000, rel=2e-4)
    assert solvents.lowest(name, solvents.LOWER).value <= chemicals.LFL(CASRN=CAS[name])


@pytest.mark.parametrize("name", [row[0] for row in solvents.SOLVENTS])
def test_explosive_limits_are_those_of_the_tables_that_they_name(outside, name):
    """PyPI `chemicals` prints IEC 60079-20-1 (2010) and NFPA 497 (2008): each row that names one of them has its
    figure, and of each solvent the lowest of both counts."""
    methods, lowest = {"iec-60079-20-1": "IEC 60079-20-1 (2010)", "nfpa-497": "NFPA 497 (2008)"}, []
    for quantity, printed in ((solvents.LOWER, chemicals.LFL), (solvents.UPPER, chemicals.UFL)):
        for row in solvents.rows(name, quantity):
            if row.source in methods:
                method = methods[row.source]
                outside.library(f"solvent {quantity} {name}, {method}", "chemicals (library), by CAS number",
                                printed(CASRN=CAS[name], method=method), row.value, rel=1e-9)
    for method in methods.values():
        lowest.append(chemicals.LFL(CASRN=CAS[name], method=method))
    assert solvents.lowest(name, solvents.LOWER).value == pytest.approx(min(lowest))


def test_limits_of_hardener_vapour_against_the_chemicals_library(outside):
    """Ontario's list has what NIOSH has, both through the skin too; triethylenetetramine 0.5 ppm, of which NIOSH knows
    none: no known limit is no promise."""
    words = said("do-vapour-amine", reader())
    day, at_once = chemicals.TWA("111-40-0"), chemicals.Ceiling("1477-55-0")
    outside.library("air limit diethylenetriamine, ppm", "Ontario exposure limits, as the library chemicals has them",
            day[0],
            float(words.partition(" ppm for diethylenetriamine")[0].rpartition(" ")[2]))
    told = float(words.partition(" mg/m³ for m-xylylenediamine")[0].rpartition(" ")[2])
    outside.library("air limit m-xylylenediamine, mg/m3", "Ontario exposure limits, as the library chemicals has them",
            at_once[0] * chemicals.MW("1477-55-0") / 24.45, told, rel=1e-3)
    assert (day[1], at_once[1]) == ("ppm", "ppm")  # the list has 0.1 mg/m3, the library turns it at 25 degC
    assert chemicals.Skin("111-40-0") and chemicals.Skin("1477-55-0") and "through skin" in words
    for task in ("open", "mix", "lay", "spill", "leftover"):
        told = moves.answer("safety", {"task": task})["lines"]
        assert [line for line in told if words in line["text"] and "NIOSH" in line["rough"]], task


def test_lowest_published_limits(outside):
    """The strictest of the US, the EU and Germany: acetone 250 ppm though Table Z-1 allows 1000; cotton 0.1 mg/m3
    though the general dust limit allows 1.25; amorphous silica 0.02 though Table Z-3 allows 0.8."""
    outside.printed("solvent limit acetone", NPG + ", acetone, TWA", 250e-6,
            solvents.lowest("acetone", solvents.DAY).value)
    outside.printed("dust limit wood", NPG + ", wood dust, TWA", 1e-6, dusts.strictest(("wood",)).value)
    outside.printed("dust limit talc", NPG + ", talc, respirable", 2e-6, dusts.strictest(("talc",)).value)
    outside.printed("dust limit western red cedar", "OSHA, wood dust: ACGIH TLV, inhalable", 0.5e-6,
            dusts.strictest(("red cedar",)).value)
    outside.printed("dust limit fumed silica", "MAK Commission, synthetic amorphous silica (2023), respirable", 0.02e-6,
            dusts.strictest(("silica",)).value)
    outside.printed("dust limit quartz", "ACGIH TLV as a public list quotes it, respirable", 0.025e-6,
            dusts.strictest(("quartz",)).value)
    outside.printed("dust limit cotton", "ACGIH TLV as a public list quotes it, thoracic; 29 CFR 1910.1043 has 0.2",
            0.1e-6,
            dusts.strictest(("cotton",)).value)
    outside.printed("dust limit general", "TRGS 900, as DGUV gives it: 1.25 mg/m3 respirable", 1.25e-6,
            dusts.strictest(("other",)).value)


def test_half_mask_and_silica(outside):
    """NIOSH Pocket Guide, amorphous silica: APF 10 is good up to 60 mg/m3, ten times its limit of 6."""
    niosh = [limit for limit in dusts.LIMITS if limit.dust == "silica" and limit.source == "npg"][0]  # noqa: RUF015
    outside.printed("dust half mask silica", NPG + ", silica, amorphous: up to 60 mg/m3 at APF 10", 60e-6,
            niosh.value * dusts.MASKS[0][2])


@given(st.floats(0.1, 60), st.floats(0.0001, 0.9), st.floats(1, 10))
def test_minutes_are_never_rounded_below_the_exact(changes, left, mixing):
    """Rounding to the safe side: whole minutes at or above -ln(left) K / N, and less than one above."""
    time = ventilation.clearing_time(changes / 3600, left, mixing)
    minutes = int(said(air_lines._minutes(time), reader()).partition(" ")[0])
    assert time / 60 - 1e-5 <= minutes < time / 60 + 1
    hours, found, rest = said(air_lines._cleared(time, 3), reader()).partition(" h ")
    assert bool(found) == (minutes > 120)
    assert not found or 60 * int(hours) + int(rest.partition(" ")[0]) == minutes


def test_the_time_to_clear_is_said_as_it_is_meant():
    found = {line["name"]: line for line in moves.answer("air", {})["lines"]}
    assert found["clear"]["label"] == "Time to clear 99%" and found["clear"]["text"].endswith(" min")
    assert "rounded up to the minute" in found["clear"]["rough"] and "mixing factor 5," in found["clear"]["rough"]


@given(st.floats(1, 5000), st.floats(1, 5000))
def test_more_flow_is_never_slower_nor_leaves_more(one, other):
    """Limits of the mass balance: time and vapour fall with flow; none gives the closed room."""
    less, more = sorted((one, other))
    slow, fast = (ventilation.air_changes(flow / 3600, 50) for flow in (less, more))
    assert ventilation.clearing_time(fast, 0.01) <= ventilation.clearing_time(slow, 0.01)
    left = [ventilation.aired_share(0.05, 600, 0.058, 50, n, 293, 3) for n in (0, slow, fast)]
    assert left[0] == ventilation.vapour_share(0.05, 0.058, 50, 293)
    assert left[0] >= left[1] * (1 - 1e-12) >= left[2] * (1 - 1e-9)


def test_opening_there_and_back():
    """The orifice equation and its inverse."""
    assert ventilation.opening_flow(ventilation.opening_area(0.3, 5, 0.6), 5, 0.6) == pytest.approx(0.3)


ROOM = {"length": "5", "width": "4", "height": "2"}


def test_a_room_of_zero_height_is_told_in_words():
    assert "more than 0" in errors(room=dict(ROOM, height="0"))["room.height"]
    assert "volume" in errors(room={"length": "5"})["room.width"]
    assert errors(room={"volume": "40"}) == {}


def test_an_unknown_solvent_is_told_in_words():
    assert "choose “" in errors(solvent="petrol")["solvent"]
    assert "molar mass" in errors(solvent="other")["solvent_molar"]


def test_a_fan_without_air_to_replace_it_does_not_count():
    without = lines(room=ROOM, fan_runs="out", opening="0", draught="shut")
    assert without["no_make_up"]["rank"] == "warn"
    assert without["clear"]["value"] == lines(room=ROOM, draught="shut")["clear"]["value"]


def test_the_screen_gives_the_purge_table_rounded_up():
    """CDC/HICPAC (2003), Table B.1: 6 air changes, 99 %: 46 in the table, 46.05 exactly, so 47 here."""
    found = lines(room=ROOM, fan_runs="in", fan={"flow": "240"}, mixing="1", draught="shut")
    assert found["clear"]["text"] == "47 min"
    assert found["changes"]["text"] == "6.0 an hour"


def test_solvent_asks_for_grams_then_warns():
    assert lines(solvent="acetone")["solvent_asked"]["rank"] == "ask"
    closed = {"room": ROOM, "solvent": "acetone", "wiping": "1", "draught": "shut"}
    assert "over_limit" in lines(solvent_mass="50", **closed)
    assert "explosive" in lines(solvent_mass="400", **closed)
    assert "over_limit" not in lines(solvent_mass="1", **closed)


def test_inside_a_hull_there_are_no_figures():
    found = moves.answer("air", {"place": "hull", "solvent": "acetone"})
    assert [line for line in found["lines"] if line["value"] is not None] == [] and found["figures"] == []
    assert any("licensed practice" in line["text"] for line in found["lines"])


def test_dust_in_this_room():
    """NIOSH: wood 1 mg/m3; 40 m3 hold 40 mg at the limit."""
    assert lines(room=ROOM, dust="wood-flour")["dust_room"]["text"] == "40 mg in the air"


def test_a_flow_that_is_needed_claims_two_figures_and_is_rounded_up():
    typed = {"task": "wipe", "solvent": "acetone", "solvent_mass": "30 g", "wiping": "7 min"}
    told = {line["name"]: line for line in moves.answer("air", typed)["lines"]}["needed_flow"]
    number = float(told["text"].split()[0])
    assert number >= told["value"] * 3600 * (1 - 1e-9)
    assert number < told["value"] * 3600 * 1.1 and len(told["text"].split()[0].rstrip("0")) <= 2


def test_vapour_is_told_beside_the_lower_explosive_limit_by_the_chemicals_library():
    found = lines(room=ROOM, solvent="acetone", solvent_mass="400", wiping="1", draught="shut")
    share, of_lower = found["vapour"]["value"], found["of_lower"]["value"]
    assert share / of_lower == pytest.approx(chemicals.LFL(CASRN="67-64-1"))
    assert float(found["of_lower"]["text"].rstrip("%")) == pytest.approx(100 * of_lower, abs=0.1)
    assert "explosive" in found and of_lower >= 0.1


@pytest.mark.parametrize("runs, spark", [("out", True), ("in", False), ("off", False)])
def test_vapour_that_passes_a_motor_is_warned_of(runs, spark):
    found = lines(room=ROOM, solvent="acetone", solvent_mass="5", wiping="5", fan_runs=runs, fan={"flow": "240"})
    assert ("fan_spark" in found) == spark


def test_an_opening_just_large_enough_is_not_called_too_small():
    fan = {"room": ROOM, "fan_runs": "in", "fan": {"flow": "240"}}
    need = lines(**fan)["make_up"]["value"]
    assert "small_make_up" in lines(opening=f"{need * 0.99:.6f} m2", **fan)
    assert "small_make_up" not in lines(opening=f"{need * 1.001:.6f} m2", **fan)


@pytest.mark.parametrize("grams", ["20", "60", "150", "400"])
def test_vapour_beside_its_limit_is_told_in_percent_rounded_up(grams):
    found = lines(room=ROOM, solvent="acetone", solvent_mass=grams, wiping="5")["of_limit"]
    told = float(found["text"].rstrip("%").replace(",", ""))
    assert 100 * found["value"] <= told * (1 + 1e-9) and told < 100 * found["value"] + 1
