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

# the same of a surface of the boat move
SURFACES = (
    (("name", "Gunwale scarf"), ("work", "scarf"), ("glued_thickness", "18 mm"), ("scarf_width", "40 mm"),
     ("scarf_ratio", "12"), ("glued_copies", "2")),
    (("name", "Seat fillets"), ("work", "fillet"), ("fillet_panel", "6 mm"), ("fillet_angle", "90"),
     ("fillet_length", "4.2 m")),
    (("name", "Bottom cloth"), ("work", "sheathe"), ("length", "3.05 m"), ("widths", "0.5 : 1.1 : 1.3 : 0.9 m"),
     ("lie", "leans"), ("cloth_weight", "160 g/m2")),
    (("name", "Bottom fairing"), ("work", "fair"), ("length", "3.05 m"), ("widths", "0.5 : 1.1 : 1.3 : 0.9 m"),
     ("lie", "leans"), ("fair_depth", "0.3 mm")),
    (("name", "Inside coats"), ("work", "coat"), ("area", "6.5 m2"), ("coats", "3"), ("edge_length", "8 m"),
     ("edge_thickness", "6 mm")),
)

NAMES = {"Keel": "demo-boat.keel", "Chine": "demo-boat.chine", "Transom to bottom": "demo-boat.transom-bottom",
         "Transom to side": "demo-boat.transom-side", "Bow transom": "demo-boat.bow-transom",
         "Middle bulkhead": "demo-boat.middle-bulkhead", "Fore bulkhead": "demo-boat.fore-bulkhead",
         "Side panel butt": "demo-boat.side-butt", "Skeg strip": "demo-boat.skeg",
         "Gunwale scarf": "demo-boat.gunwale", "Seat fillets": "demo-boat.seats", "Bottom cloth": "demo-boat.cloth",
         "Bottom fairing": "demo-boat.fairing", "Inside coats": "demo-boat.coats"}  # a name, and how it is said
