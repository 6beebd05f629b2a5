"""Kept words: what is kept in a few English words ("gone 31 min 240 g cup") is keys and figures. A form shows them in
the words of its page, and all languages are read back: see SPELT."""

TIMINGS = {"stiffening": "kept-word.stiffening", "good": "kept-word.good", "gone": "kept-word.gone",
           "cup": "kept-word.cup", "bag": "kept-word.bag", "tray": "kept-word.tray", "bead": "kept-word.bead",
           "roll": "kept-word.roll", "film": "kept-word.film", "filler": "kept-word.filler",
           "resin": "kept-word.resin", "sun": "kept-word.sun", "some": "kept-word.some", "full": "kept-word.full",
           "white": "kept-word.white", "bare": "kept-word.bare", "wet": "kept-word.wet", "putty": "kept-word.putty",
           "dark": "kept-word.dark", "black": "kept-word.black", "glass": "kept-word.glass"}
TRIALS = {"thick": "kept-word.thick", "doubt": "kept-word.doubt", "mass": "kept-word.mass", "air": "kept-word.air",
          "loss": "kept-word.loss", "heat": "kept-word.heat", "width": "kept-word.width", "mix": "kept-word.mix"}
RATES = {"place": "kept-word.place", "tool": "kept-word.tool", "clean": "kept-word.clean", "wet": "kept-word.soak",
         "lay": "kept-word.lay", "roll": "kept-word.press", "peel": "kept-word.peel", "to": "kept-word.to",
         "from": "kept-word.from"}
FACES = {"each": "kept-word.each", "in": "kept-word.in", "out": "kept-word.out"}

# by spelling, in small letters, the key that is meant: the words of all languages, and what else people type
SPELT = {
    # English
    "usable": "good", "stiff": "gone",
    # German
    "anziehend": "stiffening", "gut": "good", "brauchbar": "good", "fest": "gone", "steif": "gone", "becher": "cup",
    "beutel": "bag", "spritzbeutel": "bag", "schale": "tray", "hohlkehle": "bead", "rolle": "roll",
    "füllstoff": "filler", "harz": "resin", "sonne": "sun", "schatten": "shade", "etwas": "some", "voll": "full",
    "voller": "full", "weiß": "white", "roh": "bare", "nass": "wet", "spachtelmasse": "putty", "dunkel": "dark",
    "schwarz": "black", "glas": "glass", "noch": "still", "nach": "after", "im": "in", "bei": "at", "mit": "with",
    "von": "of", "der": "the",
    "dick": "thick", "zweifel": "doubt", "masse": "mass", "luft": "air", "verlust": "loss", "wärme": "heat",
    "breite": "width", "mischung": "mix",
    "auftragen": "place", "abziehen": "tool", "säubern": "clean", "tränken": "wet", "auflegen": "lay",
    "entlüften": "roll", "abreißgewebe": "peel", "bis": "to", "aus": "from",
    "beide": "each", "jede": "each", "innen": "in", "außen": "out", "aussen": "out",
}
