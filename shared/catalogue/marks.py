"""Where a fact comes from, in the words the screen shows."""

PUBLISHED, COMMON, MEMORY = "published", "common practice", "from memory"
JUDGED, LABEL, OWN = "own judgement", "from the label", "your own figure"
UNMEASURED = (MEMORY, JUDGED)  # a thing that stands so is not the builder's own
