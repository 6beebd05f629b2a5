"""How quick and how light: everything is measured beside something that cannot be quicker, in the same run."""
