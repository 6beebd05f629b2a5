"""A table in LibreOffice, in two countries: numbers are numbers there, and no cell is a formula.

It is asked where it is installed (Debian: libreoffice-calc-nogui); it is large, and `make test` fetches it for nobody.
"""
import shutil
import subprocess
import xml.etree.ElementTree as ElementTree

import pytest
from covemix.shared.files import tables

OFFICE = shutil.which("soffice") or shutil.which("libreoffice")
CELLS = {"en-US": (",", 44), "de-DE": (";", 59)}  # what parts the cells, and its code
TYPE = "{urn:oasis:names:tc:opendocument:xmlns:office:1.0}value-type"
VALUE = "{urn:oasis:names:tc:opendocument:xmlns:office:1.0}value"
FORMULA = "{urn:oasis:names:tc:opendocument:xmlns:table:1.0}formula"
LANGUAGES = {"en-US": 1033, "de-DE": 1031}


@pytest.mark.skipif(not OFFICE, reason="LibreOffice is not installed")
@pytest.mark.parametrize("country", CELLS)
def test_a_table_opens_with_its_numbers_in_either_country(country, tmp_path):
    between, code = CELLS[country]
    text = tables.csv(["name", "mass [kg]"], [["=1+1", 1234.5], ["+2", 0.000409], ["a;b, c", -3]],
                      "," if between == ";" else ".")
    (tmp_path / "table.csv").write_bytes(text.encode())
    # 44 or 59: what parts cells; 34: quotes; 76: UTF-8; the language by which its numbers are read
    taken = f"CSV:{code},34,76,1,,{LANGUAGES[country]}"
    subprocess.run([OFFICE, f"-env:UserInstallation={(tmp_path / 'office').as_uri()}", "--headless",
                    f"--infilter={taken}", "--convert-to", "fods", "--outdir", tmp_path, tmp_path / "table.csv"],
                   check=True, capture_output=True, timeout=300)
    cells = list(ElementTree.parse(tmp_path / "table.fods").iter(
        "{urn:oasis:names:tc:opendocument:xmlns:table:1.0}table-cell"))
    numbers = [float(one.get(VALUE)) for one in cells if one.get(TYPE) == "float"]
    assert numbers == [1234.5, 0.000409, -3] and not [one for one in cells if one.get(FORMULA)]
    texts = ["".join(one.itertext()).strip() for one in cells if one.get(TYPE) == "string"]
    assert texts[2:] == ["'=1+1", "'+2", "a;b, c"]
