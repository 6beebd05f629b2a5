"""An invented dinghy to try the boat with: no known design, its seams and their lengths made up for the purpose."""

# typed text of the fields of a joint of the boat move; angles "110 : 150" change along the seam
JOINTS = (
    (("name", "Keel"), ("kind", "both"), ("thickness", "6 mm"), ("angle", "118 : 138 : 152 : 156"),
     ("length", "3.05 m"), ("gap", "1 mm"), ("layers", "2"), ("width", "75 : 100 mm"), ("weight", "300 g/m2")),
    (("name", "Chine"), ("kind", "both"), ("thickness", "6 mm"), ("angle", "142 : 128 : 121"), ("length", "2.9 m"),
     ("copies", "2"), ("width", "75 mm"), ("weight", "300 g/m2")),
    (("name", "Transom to bottom"), ("kind", "inside"), ("thickness", "9 mm"), ("angle", "102"), ("length", "0.46 m"),
     ("copies", "2"), ("width", "75 mm"), ("weight", "300 g/m2")),
    (("name", "Transom to side"), ("kind", "both"), ("thickness", "6 mm"), ("angle", "97"), ("length", "0.38 m"),
     ("copies", "2"), ("width", "75 mm"), ("weight", "300 g/m2")),
    (("name", "Bow transom"), ("kind", "both"), ("thickness", "6 mm"), ("angle", "108"), ("length", "0.9 m"),
     ("width", "75 mm"), ("weight", "300 g/m2")),
    (("name", "Middle bulkhead"), ("kind", "bulkhead"), ("thickness", "6 mm"), ("angle", "90"), ("length", "1.75 m"),
     ("width", "75 mm"), ("weight", "300 g/m2")),
    (("name", "Fore bulkhead"), ("kind", "bulkhead"), ("thickness", "6 mm"), ("angle", "84"), ("length", "1.2 m"),
     ("width", "75 mm"), ("weight", "300 g/m2")),
    (("name", "Side panel butt"), ("kind", "butt"), ("thickness", "6 mm"), ("length", "0.36 m"), ("copies", "2"),
     ("width", "150 mm"), ("weight", "300 g/m2")),
    (("name", "Skeg strip"), ("kind", "strip"), ("thickness", "9 mm"), ("length", "0.8 m"), ("width", "100 mm"),
     ("weight", "200 g/m2")),
)

NAMES = {"Keel": "demo-boat.keel", "Chine": "demo-boat.chine", "Transom to bottom": "demo-boat.transom-bottom",
         "Transom to side": "demo-boat.transom-side", "Bow transom": "demo-boat.bow-transom",
         "Middle bulkhead": "demo-boat.middle-bulkhead", "Fore bulkhead": "demo-boat.fore-bulkhead",
         "Side panel butt": "demo-boat.side-butt", "Skeg strip": "demo-boat.skeg"}  # a name, and how it is said
