"""Current caution, lines: the caution that matters now in a sentence or two."""
from ..catalogue.cautions import REMINDER, REMINDER_SHORT
from ..forms.types import Found, Said
from ..words.messages import message, sentences
from .cautions_lines import label, short

ALWAYS = "gloves"  # what always stands is told in the reminder's own words


def say(found: Found, narrow: bool = False) -> Said:
    """found: `current_caution.CurrentResult`. A pot that can run away is told beside the most urgent.

    narrow: for two rows of a phone, where the name of a powder beside a pot does not fit
    """
    if narrow and found.first == "powder" and found.heats:
        first = short(found.first, found.known)
    elif found.first != ALWAYS:
        first = message("caution-in-place", label=label(found.first, found.known), text=short(found.first, found.known))
    else:
        first = REMINDER_SHORT if found.heats else REMINDER
    # what must be on before a pot is opened is not kept back by what the pot does once it is mixed: both are told.
    # Of that what it can do says it all; room is scarce
    return sentences([first, short(found.heats, found.known) if found.heats else ""])
