"""An invented dinghy to try the boat with: no known design, its seams and their lengths made up for the purpose."""

# typed text of the fields of a joint of the boat move; angles "110 : 150" change along the seam; a name is a key
JOINTS = (
    (("name", "demo-boat.keel"), ("kind", "both"), ("thickness", "6 mm"), ("angle", "118 : 138 : 152 : 156"),
     ("length", "3.05 m"), ("gap", "1 mm"), ("layers", "2"), ("width", "75 : 100 mm"), ("weight", "300 g/m2")),
    (("name", "demo-boat.chine"), ("kind", "both"), ("thickness", "6 mm"), ("angle", "142 : 128 : 121"), ("length", "2.9 m"),
     ("copies", "2"), ("width", "75 mm"), ("weight", "300 g/m2")),
    (("name", "demo-boat.transom-bottom"), ("kind", "inside"), ("thickness", "9 mm"), ("angle", "102"), ("length", "0.46 m"),
     ("copies", "2"), ("width", "75 mm"), ("weight", "300 g/m2")),
    (("name", "demo-boat.transom-side"), ("kind", "both"), ("thickness", "6 mm"), ("angle", "97"), ("length", "0.38 m"),
     ("copies", "2"), ("width", "75 mm"), ("weight", "300 g/m2")),
    (("name", "demo-boat.bow-transom"), ("kind", "both"), ("thickness", "6 mm"), ("angle", "108"), ("length", "0.9 m"),
     ("width", "75 mm"), ("weight", "300 g/m2")),
    (("name", "demo-boat.middle-bulkhead"), ("kind", "bulkhead"), ("thickness", "6 mm"), ("angle", "90"), ("length", "1.75 m"),
     ("width", "75 mm"), ("weight", "300 g/m2")),
    (("name", "demo-boat.fore-bulkhead"), ("kind", "bulkhead"), ("thickness", "6 mm"), ("angle", "84"), ("length", "1.2 m"),
     ("width", "75 mm"), ("weight", "300 g/m2")),
    (("name", "demo-boat.side-butt"), ("kind", "butt"), ("thickness", "6 mm"), ("length", "0.36 m"), ("copies", "2"),
     ("width", "150 mm"), ("weight", "300 g/m2")),
    (("name", "demo-boat.skeg"), ("kind", "strip"), ("thickness", "9 mm"), ("length", "0.8 m"), ("width", "100 mm"),
     ("weight", "200 g/m2")),
)
NAMES = tuple([row[0][1] for row in JOINTS])
