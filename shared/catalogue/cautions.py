"""What can hurt, in the words of the open standard where it has words; otherwise common practice.

The product's own safety data sheet decides: these are reminders of what it usually says.
"""
from .losses import BY_KEY
from .marks import COMMON, JUDGED, PUBLISHED

FIRST = "safety-first.text"

# stands on every screen while nothing more pressing does (common practice)
REMINDER, REMINDER_SHORT = "caution-reminder", "caution-reminder.short"

# name, heading, text, mark, source
STANDING = (
    ("gloves", "caution-always-gloves", "caution-always-gloves.text", COMMON, ""),
    ("sensitise", "caution-always-sensitise", "caution-always-sensitise.text", PUBLISHED, "ghs"),
    ("skin_first_aid", "caution-always-skin-first-aid", "ghs-aid-skin", PUBLISHED, "ghs"),
    ("eyes", "caution-always-eyes", "caution-always-eyes.text", PUBLISHED, "ghs"),
    ("eyes_first_aid", "caution-always-eyes-first-aid", "ghs-aid-eyes", PUBLISHED, "ghs"),
    ("air", "caution-always-air", "caution-always-air.text", COMMON, ""),
    ("heat", "caution-always-heat", "caution-always-heat.text", COMMON, ""),
    ("dust", "caution-always-dust", "caution-always-dust.text", COMMON, ""),
    ("waste", "caution-always-waste", "caution-always-waste.text", PUBLISHED, "ghs"),
)

# The cautions of the moment, the more urgent first: which one stands is decided by shared/cautions.py from the inputs.
# name, heading, text, the panel's task it leads to, mark, source, the text where there is room for one sentence only
MOMENT = (
    ("hot_now", "caution-hot-now", "caution-hot-now.text", "hot", COMMON, "", "caution-hot-now.text"),
    ("hull", "caution-hull", "caution-hull.text", "confined", COMMON, "", "caution-hull.text"),
    ("poison", "caution-poison", "caution-poison.text", "open", PUBLISHED, "ghs", "caution-poison.text"),
    ("asthma", "caution-asthma", "caution-asthma.text", "mix", PUBLISHED, "ghs", "caution-asthma.text"),
    ("fire", "caution-poison", "caution-poison.text", "open", PUBLISHED, "ghs", "caution-poison.text"),
    ("vapour", "caution-vapour", "caution-vapour.text", "wipe", COMMON, "", "caution-vapour.short"),
    ("uncured", "caution-uncured", "caution-uncured.text", "sand", COMMON, "", "caution-uncured.text"),
    ("big_pot", "caution-big-pot", "caution-big-pot.text", "hot", COMMON, "", "caution-big-pot.short"),
    ("warm_pot", "caution-warm-pot", "caution-warm-pot.text", "hot", COMMON, "", "caution-warm-pot.short"),
    ("hot_pot", "caution-hot-pot", "caution-hot-pot.text", "hot", COMMON, "", "caution-hot-pot.short"),
    ("in_sun", "caution-in-sun", "caution-in-sun.text", "hot", JUDGED, "", "caution-in-sun.short"),
    ("short_pot", "caution-short-pot", "caution-short-pot.text", "mix", COMMON, "", "caution-short-pot.short"),
    ("powder", "caution-powder", "caution-powder.text", "powder", COMMON, "", "caution-powder.short"),
    ("sanding", "caution-sanding", "caution-sanding.text", "sand", COMMON, "", "caution-sanding.text"),
    ("lasting", "caution-lasting", "caution-lasting.text", "open", PUBLISHED, "ghs", "caution-lasting.text"),
    ("corrosive", "caution-corrosive", "caution-corrosive.text", "open", PUBLISHED, "ghs", "caution-corrosive.text"),
    ("eyes", "caution-eyes", "caution-poison.text", "open", PUBLISHED, "clp", "caution-poison.text"),
    ("small_room", "caution-small-room", "caution-small-room.text", "mix", COMMON, "", "caution-small-room.text"),
    ("thick", "caution-thick", "caution-thick.text", "hot", COMMON, "", "caution-thick.short"),
    ("cold", "caution-cold", "caution-cold.text", "open", COMMON, "", "caution-cold.short"),
    ("blush", "caution-blush", "caution-blush.text", "peel", COMMON, "", "caution-blush.text"),
    ("gloves", "caution-gloves", "caution-gloves.text", "open", COMMON, "", "caution-gloves.short"),
    ("wash", "caution-wash", "caution-wash.text", "open", COMMON, "", "caution-wash.short"),
)

# the codes of a product's own sheet that bring up a caution, the gravest first
OWN_CODES = (
    ("poison", ("H330", "H310", "H300", "H331", "H311", "H301")),
    ("asthma", ("H334",)),
    ("fire", ("H240", "H241", "H271", "H270", "H250", "H260", "H242", "H272", "H222", "H224", "H251", "H225",
              "H228", "H261")),
    ("lasting", ("H350", "H340", "H360", "H370", "H372")),
    ("corrosive", ("H314", "H318")),
    ("eyes", ("EUH070",)),
)

# what a caution says where the sun shines on it: no tray then
IN_SUN = (("big_pot", "caution-big-pot.in-sun"), ("warm_pot", "caution-warm-pot.in-sun"),
          ("hot_pot", "caution-hot-pot.in-sun"))

# what a caution says in short where the mix is in no cup, but in a tray or a roll
LEFT = (("hot_pot", "caution-hot-pot.left"),)

RUNS_AWAY = 373.15  # K
# name, value, unit, mark, source: from where on a caution of the moment stands (SI)
FROM = (
    ("caution-from-big", 0.3, "kg", JUDGED, ""),
    ("caution-from-big-warm", 0.15, "kg", JUDGED, ""),
    ("caution-from-runs-away", RUNS_AWAY, "K", JUDGED, ""),
    ("caution-from-least-peak", 0.01, "kg", JUDGED, ""),
    ("caution-from-warm", 301.15, "K", JUDGED, ""),
    ("caution-from-cold", 285.15, "K", JUDGED, ""),
    ("caution-from-hot", 323.15, "K", JUDGED, ""),
    ("caution-from-short", 600.0, "s", JUDGED, ""),
    ("caution-from-few-changes", 2 / 3600, "1/s", JUDGED, ""),
    ("caution-from-small-room", 30.0, "m3", JUDGED, ""),
    ("caution-from-thick", BY_KEY["one_pass"].value, "m", BY_KEY["one_pass"].mark, ""),
)
TABLES = (
    ("facts-cautions-always", STANDING, (1,), (2,)),
    ("facts-cautions-moment", MOMENT, (1,), (2,)),
    ("facts-caution-from", FROM, (0,), (1, 2)),
)
