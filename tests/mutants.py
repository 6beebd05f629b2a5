"""Mutants of the engine: `make mutants`. One change at a time in a copy of it, and the tests must see each of them.

A sample of MANY changes of every module below, the same each time for the same program, made and run by cosmic-ray;
prints the score and every change that nothing saw. The tests of a module are those of its own file and its examples:
what another file would see counts as unseen. `python tests/mutants.py FOLDER [MODULE ...]`
"""
import json
import os
import random
import shutil
import sqlite3
import subprocess
import sys
from pathlib import Path

HERE = Path(__file__).resolve().parents[1]
MANY = int(os.environ.get("MANY", "8"))
# module by its room -> its tests, and what is left out of them because it loads for seconds
TESTS = {
    "equations/weighing": "tests/test_measure.py",
    "equations/pumping": "tests/test_measure.py tests/test_measure_ways.py",
    "equations/cups": "tests/test_cups.py",
    "mix/ratio": "tests/test_ratio.py",
    "equations/laminate": "tests/test_laminate.py",
    "equations/fillet": "tests/test_fillet.py",
    "equations/dewpoint": "tests/test_dew.py --deselect tests/test_dew.py::METPY",
    "clock/dew": "tests/test_dew.py --deselect tests/test_dew.py::METPY",
    "equations/ventilation": "tests/test_air.py",
    "safety/air": "tests/test_air.py",
    "equations/cutting": "tests/test_cutting.py",
    "equations/quick_rule": "tests/test_plan.py",
    "pour/measured_out": "tests/test_measure_ways.py tests/test_pouring.py",
}
# changes that fail on the first float whatever is tested: they would only flatter the score
CRUDE = ("Bit", "Shift", "FloorDiv", "Mod", "Pow_", "_Pow")
METPY = "test_dew_points_agree_with_metpy"


def prepared(folder: Path):
    """The engine and its tests once more, found before the installed ones."""
    shutil.rmtree(folder, ignore_errors=True)
    (folder / "covemix").mkdir(parents=True)
    hidden = shutil.ignore_patterns("__pycache__", "browser")
    shutil.copytree(HERE / "shared", folder / "covemix" / "shared", ignore=hidden)
    shutil.copytree(HERE / "tests", folder / "tests", ignore=hidden)
    shutil.copy(HERE / "pyproject.toml", folder)


def asked(folder: Path, module: str):
    """Runs the sample of one module -> (seen, unseen changes as text)."""
    source = f"covemix/shared/{module}.py"
    command = (f"{sys.executable} -m pytest -x -q -p no:cacheprovider -o testpaths= {source} "
               + TESTS[module].replace("METPY", METPY))
    (folder / "cosmic-ray.toml").write_text(
        f'[cosmic-ray]\nmodule-path = "{source}"\ntimeout = 120.0\nexcluded-modules = []\ntest-command = "{command}"\n'
        '[cosmic-ray.distributor]\nname = "local"\n', encoding="utf-8")
    session, tool = folder / f"{Path(module).name}.sqlite", [sys.executable, "-m", "cosmic_ray.cli"]
    env = {**os.environ, "PYTHONPATH": str(folder), "PYTEST_DISABLE_PLUGIN_AUTOLOAD": "1"}

    def run(*words):
        return subprocess.run([*tool, *words], cwd=folder, env=env, check=True, capture_output=True, text=True).stdout

    run("baseline", "cosmic-ray.toml")
    run("init", "cosmic-ray.toml", str(session))
    with sqlite3.connect(session) as rows:
        found = rows.execute("select operator_name, start_pos_row, start_pos_col, occurrence, job_id "
                             "from mutation_specs")
        specs = sorted(found.fetchall())
        jobs = [spec[-1] for spec in specs if not any(word in spec[0] for word in CRUDE)]
        kept = set(random.Random(module).sample(jobs, min(MANY, len(jobs))))
        for *_, job in specs:
            if job not in kept:
                rows.execute("delete from mutation_specs where job_id = ?", (job,))
                rows.execute("delete from work_items where job_id = ?", (job,))
    run("exec", "cosmic-ray.toml", str(session))
    seen, unseen = 0, []
    for row in run("dump", str(session)).splitlines():
        item, result = json.loads(row)
        if result["test_outcome"] == "survived":
            spec = item["mutations"][0]
            unseen.append(f"{module}:{spec['start_pos'][0]} {spec['operator_name']}\n{result['diff']}")
        else:
            seen += 1
    return seen, unseen, len(jobs)


if __name__ == "__main__":
    folder, names = Path(sys.argv[1]).resolve(), sys.argv[2:] or list(TESTS)
    prepared(folder)
    total = [0, 0]
    for name in names:
        seen, unseen, possible = asked(folder, name)
        total = [total[0] + seen, total[1] + seen + len(unseen)]
        print(f"{name}: {seen} of {seen + len(unseen)} seen ({possible} possible)", flush=True)
        print(*unseen, sep="\n", flush=True)
    print(f"score: {total[0]} of {total[1]}, {100 * total[0] / max(1, total[1]):.0f} %")
