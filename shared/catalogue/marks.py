"""Where a fact comes from, in the words the screen shows."""

PUBLISHED, COMMON, MEMORY = "published", "common practice", "from memory"
LABEL, OWN = "from the label", "your own figure"
