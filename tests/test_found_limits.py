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
    "Ratio error, of the hardener": {"Good up to": "ratio good", "Too much from": "ratio too much"},
    "Ratio of a label that is asked back": {
        "More hardener than resin, from": "more hardener",
        "Ratio off that of the equivalent weights, from": "equivalent off",
        "Density of a part to the first, where two ratios give it, least": "density two ratios least",
        "Density of a part to the first, where two ratios give it, most": "density two ratios most"},
    "Stirring, how long to mix": {
        "A small batch": "how long stir", "A large batch, or a cold one": "stirring cold",
        "A batch is small up to": "batch small", "A mix is cold below": "mix cold",
        "Density where none is known, to be safe": "density none known"},
    "Cup and stick": {
        "How far a mark on a stick may be off": "mark stick", "Cup too tall to stir in, height to width": "cup tall",
        "Cup filled at most, of its height": "cup filled"},
    "Pumps and scales": {
        "Batch may grow to come into ratio, at most": "batch grow",
        "Steps of a scale that are as near, of a step": "scale step near",
        "One pump stroke to the next, standard deviation": "pump stroke"},
    "Damp, dew and blush": {
        "Surface above the dew point, margin at the least": "dew margin",
        "Relative humidity of the air that is too damp, above": "humidity damp",
        "What the open night sky cools a surface below the air": "night sky",
        "How far a hygrometer may move the dew point": "hygrometer"},
    "Angle of a joint": {
        "Too narrow a corner below": "narrow corner", "Bulkhead too flat on its panel below": "bulkhead flat",
        "Flat tape alone, no cove, from": "flat tape angle"},
    "Outer edge, rounded over": {"Too thin a cover left below, of the panel": "rounded over thin"},
    "Tape cut in pieces": {"Most pieces of one layer": "tape pieces layer"},
    "Pot that gets hot": {
        "Depth of a cup to its width, asked back above": "cup depth width",
        "Hottest that is given as a figure": "pot hottest", "Hardly above the air, within": "pot hot hardly"},
    "A pot that gets this hot": {"60 °C": "pot softens cup", "100 °C": "pot smokes"},
    "Clock of a running pot": {
        "Last minutes from": "pot last minutes", "Looked at again after it was still good": "pot still good",
        "Link from the other phone, on its way": "other phone",
        "Over for so long that the pot is asked back": "pot over",
        "Page out of sight before its clock is in doubt": "clock out of sight",
        "Two clocks of one phone apart": "clocks phone"},
    "Pot life, timings that do not agree": {
        "Label's times apart from which they are asked back": "label times apart",
        "What a bag bears of a cup that was gone": "bag gone",
        "Stiffening later than another pot was stiffening": "stiffening later",
        "Doubt of an own timing": "doubt own timing", "Doubt of the label's pot life": "doubt label pot life",
        "Doubt of the label's film time": "doubt film"},
    "How long a mix can be used": {
        "A bead of putty on wood": "bead used", "A thin film": "film used",
        "Pot life goes with the mass to minus this power": "pot life mass",
        "Quicker for each 10 °C warmer": "quicker warmer", "What a plan uses of any window": "plan window",
        "What is used of a film's time, where that is one to the gel": "film gel"},
    "Lowest working temperature": {
        "Fast hardener": "lowest fast", "Medium hardener": "lowest medium", "Slow hardener": "lowest slow"},
    "Cure, temperatures that are typed": {"Hours between two of them, more is a gap": "cure hours gap"},
    "Own rates, learned from taps": {
        "Two taps nearer together were not timed": "two taps",
        "Tape behind the cove, so that nobody waited": "tape behind cove",
        "Faster or slower than usual, left out from": "slower than usual",
        "How differently the same hands work, standard deviation": "same hands"},
    "Putty": {
        "Any dose in the table, give or take": "dose give or take", "Air that stirring leaves in it": "air stirring",
        "Hollow spheres touch at, by volume": "spheres touch", "Spheres stirred in pack to, by volume": "spheres pack",
        "Stiffer than it must be, to be safe": "putty safe"},
    "Own batches of putty": {
        "How differently the same putty is tapped, standard deviation": "putty tapped",
        "Batches that this judgement is worth": "batches worth",
        "Batch stands out from, in standard deviations": "batch stands out",
        "Two batches contradict each other, one over the other from": "batches contradict",
        "One batch is far from the table, below and above": "batch far"},
    "Filler, how it goes in": {"Share that is stirred in first": "filler first"},
    "Plan, where it gives up": {
        "Most pieces of a day": "pieces day", "Most pieces once the long ones are cut": "pieces long cut",
        "Most parts of one piece": "parts piece", "Most batches of a day": "most batches day",
        "Most batches shown step by step": "batches step by step"},
    "Plan, what is asked back": {
        "A long day, hours of work": "long day", "Hours between two temperatures": "plan hours temperatures",
        "Looked at before its start, nothing late yet": "plan late"},
    "Plan, what might help": {
        "Move to the shade, cooler by": "shade", "Start earlier by": "earlier",
        "A slower hardener, working times": "slower hardener"},
    "Boat, most that one list takes": {
        "Pieces of tape and peel ply": "boat pieces", "Faces to work on": "boat faces",
        "Angles along all seams": "boat angles", "Rolls of one kind": "boat rolls",
        "Largest pack, of the smallest": "largest pack",
        "Temperature counted with where none is typed": "boat temperature"},
    "Limits of the cautions": {
        "Big mass in one cup": "caution cup big", "Big mass in one cup on a warm day": "cup big warm",
        "Peak temperature of a pot that runs away": "peak runs away",
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
