"""Every limit that a verdict rests on is a row with its mark, and a builder's words find it among the sources."""
import pytest
from covemix.shared.catalogue.marks import COMMON, JUDGED, MEMORY, PUBLISHED
from covemix.shared.door import moves
from covemix.shared.kit.sources import facts
from covemix.shared.kit.sources_lines import worded
from covemix.shared.words.texts import said
from covemix.shared.words.written import reader

# tables that hold limits, and what a builder types who wonders about one of their rows
LIMITS = {
    "Ratio error of the hardener": {"Good up to": "ratio good", "Too much from": "ratio too much"},
    "Label ratio to check again": {
        "More hardener than resin, from": "more hardener",
        "Difference from the equivalent-weight ratio, from": "equivalent difference",
        "Density relative to the first part, from two ratios, least": "density two ratios least",
        "Density relative to the first part, from two ratios, most": "density two ratios most"},
    "Stirring, how long to mix": {
        "A small batch": "how long stir", "A large batch, or a cold one": "stirring cold",
        "Small batch, up to": "batch small", "Cold mix, below": "mix cold",
        "Density where unknown, to be safe": "density unknown"},
    "Cup and stick": {
        "How far a mark on a stick may be off": "mark stick", "Cup too tall to stir in, height to width": "cup tall",
        "Cup filled at most, of its height": "cup filled"},
    "Pumps and scales": {
        "Batch may grow to fit the ratio, at most": "batch grow",
        "Scale's own error, of a step": "scale own error",
        "Two scale steps count as equally near within, of a step": "scale step near",
        "Pump stroke, standard deviation": "pump stroke"},
    "Damp, dew and blush": {
        "Margin of a surface above the dew point, at least": "dew margin",
        "Air too damp above a relative humidity of": "humidity damp",
        "Open night sky cools a surface below the air by": "night sky",
        "A hygrometer may move the dew point by": "hygrometer"},
    "Angle of a joint": {
        "Corner too narrow below": "narrow corner", "Bulkhead too flat on its panel below": "bulkhead flat",
        "Flat tape alone, no cove, from": "flat tape angle"},
    "Outer edge, rounded over": {"Cover too thin below, of the panel": "rounded over thin"},
    "Tape cut in pieces": {"Most pieces of one layer": "tape pieces layer"},
    "Pot that gets hot": {
        "Cup depth to width, checked above": "cup depth width",
        "Hottest peak temperature shown": "pot hottest", "No peak shown within, above the air": "no peak shown"},
    "A pot that gets this hot": {"60 °C": "pot softens cup", "100 °C": "pot smokes"},
    "Clock of a running pot": {
        "Last minutes from": "pot last minutes", "Check again when still usable, after": "pot still usable",
        "Link from the other phone counts as new for": "other phone",
        "Time is up: pot checked after": "pot time up",
        "Page hidden: clock in doubt after": "clock hidden",
        "Two clocks of one phone differ by": "clocks phone"},
    "Pot life, timings that disagree": {
        "Label times checked when apart by": "label times apart",
        "What a bag bears of a cup that was too stiff to use": "bag stiff",
        "A pot may stiffen later than another by": "stiffen later",
        "Doubt of your own timing": "doubt own timing", "Doubt of the label's pot life": "doubt label pot life",
        "Doubt of the label's film time": "doubt film"},
    "How long a mix can be used": {
        "A cove of putty on wood": "cove used", "A thin film": "film used",
        "Pot life goes with the mass to minus this power": "pot life mass",
        "Quicker for each 10 °C warmer": "quicker warmer", "Share of a window that a plan uses": "plan window",
        "Share used of a film's time to the gel": "film gel"},
    "Lowest working temperature": {
        "Fast hardener": "lowest fast", "Medium hardener": "lowest medium", "Slow hardener": "lowest slow"},
    "Cure, temperatures that are typed": {"Gap if two are more hours apart than": "cure hours gap"},
    "Own rates, learned from taps": {
        "Two taps closer together were not timed": "two taps",
        "Tape behind the cove, so that nobody waited": "tape behind cove",
        "Faster or slower than usual, left out from": "slower than usual",
        "Same hands, standard deviation": "same hands"},
    "Putty": {
        "Any dose in the table, give or take": "dose give or take", "Air left by stirring": "air stirring",
        "Hollow spheres touch at, by volume": "spheres touch", "Spheres stirred in pack to, by volume": "spheres pack",
        "Stiffer than needed, to be safe": "putty safe"},
    "Own batches of putty": {
        "Same putty tapped again, standard deviation": "putty tapped",
        "Batches this judgement is worth": "batches worth",
        "Batch stands out from, in standard deviations": "batch stands out",
        "Two batches contradict, one to the other from": "batches contradict",
        "One batch is far from the table, below and above": "batch far"},
    "Filler, how it goes in": {"Share stirred in first": "filler first"},
    "Plan, its limits": {
        "Most pieces of a day": "pieces day", "Most pieces once the long ones are cut": "pieces long cut",
        "Most parts of one piece": "parts piece", "Most batches of a day": "most batches day",
        "Most batches shown step by step": "batches step by step"},
    "Plan, what is checked": {
        "A long day, hours of work": "long day", "Hours between two temperatures": "plan hours temperatures",
        "Opened before its start, nothing late yet": "plan late"},
    "Plan, what might help": {
        "Move to the shade, cooler by": "shade", "Start earlier by": "earlier",
        "Slower hardener, usable time": "slower hardener"},
    "Bonds and passes": {
        "Plywood in bending": "plywood bending", "Butted ends reach, of the wood": "butted ends",
        "Scarf of solid wood, ratio": "scarf solid ratio",
        "Scarf of solid wood, least ratio": "scarf solid least", "Scarf of plywood, ratio": "scarf plywood",
        "Gap too wide for glue, above": "gap glue", "Cold bend of dry wood, radius to thickness": "bend dry wood",
        "Fillet without tape, radius to thickness": "fillet without tape",
        "Fairing, one pass on the level": "fairing level", "Fairing, one pass on a side": "fairing side",
        "A side that leans, from level": "side leans", "Length of a sheet of plywood": "sheet length plywood",
        "Width of a sheet of plywood": "sheet width plywood"},
    "Boat, limits of one list": {
        "Pieces of tape and peel ply": "boat pieces", "Faces to work on": "boat faces",
        "Angles along all seams": "boat angles", "Rolls of one kind": "boat rolls",
        "Largest pack to the smallest": "largest pack",
        "Temperature used if none is typed": "boat temperature"},
    "Limits of the cautions": {
        "Big mass in one cup": "caution cup big", "Big mass in one cup on a warm day": "cup big warm",
        "Peak temperature of a pot that overheats": "peak overheats",
        "Smallest mass with its peak temperature shown": "caution mass peak",
        "Warm air": "caution air warm", "Cold air": "caution air cold",
        "Hot pot": "caution pot hot", "Short usable time": "caution time short",
        "Few air changes": "air changes few", "Small room": "room small",
        "Thick putty": "putty thick"},
    "Rules for air": {
        "Mixing factor, lowest in an ordinary room": "mixing factor lowest",
        "Mixing factor, highest in an ordinary room": "mixing factor highest",
        "Pressure a fan may use at the make-up opening": "fan opening pressure",
        "Discharge coefficient of a plain opening": "discharge opening",
        "Highest share of the lower explosive limit": "explosive share"},
}
FEW = 6  # lines: so many are seen at a glance


@pytest.mark.parametrize("table", LIMITS)
def test_each_limit_of_a_table_has_its_mark_and_is_found_by_the_words_of_a_builder(table):
    told = [([said(one, reader()) for one in worded(fact)], fact.mark) for fact in facts()]
    rows = {what: mark for (title, what, _), mark in told if title == table}
    assert set(rows) == set(LIMITS[table])
    assert set(rows.values()) <= {COMMON, JUDGED, MEMORY, PUBLISHED}
    for what, words in LIMITS[table].items():
        lines = moves.answer("sources", {"find": words})["lines"]
        label = table + ": " + what
        assert [line for line in lines[:FEW] if line["label"] == label and line["text"] and line["rough"]], (
            words, [line["label"] for line in lines[:FEW]])


@pytest.mark.parametrize(("find", "text"), [
    ("activation energy", "55 kJ/mol, 45 to 65"), ("heat epoxide group", "107 kJ/mol, 100 to 118"),
    ("equivalent weight label none", "187 g/eq, 180 to 210"), ("acetone limit working day", "250 ppm"),
    ("equivalent difference", "25%"), ("rinsing eyes", "15 min"), ("eyewash minute", "1.5 L"), ("scoop", "15 mL"),
    ("stirring small batch", "2 min"),
    ("stirring density unknown", "1.2 g/mL"), ("still air", "9 W/(m² K), 9 to 16"), ("day warmest", "15 h"),
    ("margin dew", "3 °C"), ("cold mix below", "15 °C"),
])
def test_a_fact_is_told_in_the_unit_of_the_trade(find, text):
    """Typed by hand from the catalogue, which is in SI: J/mol, kg/mol, shares."""
    assert text in [line["text"] for line in moves.answer("sources", {"find": find})["lines"]]
