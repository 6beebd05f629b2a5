"""To the clock: a mix that is being poured starts its clock with one tap."""

NOW = "now"  # for `pot.started`: the moment of the tap; the page knows the time, the engine has no clock

