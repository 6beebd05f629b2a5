"""Pictogram drawing: a red diamond with its sign."""
from ..catalogue.hazards import PICTOGRAMS
from ..catalogue.pictograms import DIAMOND, SHAPES, SIZE
from ..drawing import shapes as draw
from ..words.messages import message


def figure(key: str) -> dict:
    """One pictogram. key: of catalogue.hazards.PICTOGRAMS"""
    shapes = [draw.area(role, points) for role, points in DIAMOND + dict(SHAPES)[key]]
    row = dict([(row[0], row) for row in PICTOGRAMS])[key]
    return draw.figure("sign_" + key, row[1], SIZE, SIZE, shapes, message("pictogram-told", picture=row[2]))
