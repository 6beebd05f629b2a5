"""Scales and pump sets to start from: steps and strokes as such tools commonly have them; one's own go before."""
from .marks import COMMON, JUDGED

# id, label as a message, mark, typed text of the record's fields; a label is made of them; (4, text): `messages.number`
SCALES = tuple([
    (key, ("row-scale", {"step": (4, step)}), COMMON, (("name", name), ("step", step), ("most", most)))
    for key, name, step, most in (
        ("1g", "Kitchen scale", "1 g", "5 kg"),
        ("0.1g", "Fine scale", "0.1 g", "500 g"),
        ("5g", "Old scale", "5 g", "10 kg"))])
PUMPS = tuple([
    (key, ("row-pumps", {"stroke": "{" + stroke + " mL}"}), JUDGED, (
        ("name", name), ("strokes", stroke + " : " + stroke + " mL")))
    for key, name, stroke in (("equal", "Equal pumps", "10"),)])
