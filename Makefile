# Two commands: `make run` serves the app, `make test` asks whether it is right. Each installs what it needs.
PYTHON ?= python3
HOST ?= 127.0.0.1
PORT ?= 8000
# a browser test waits a third of its time
JOBS ?= $(shell expr 3 \* $$(nproc) / 2)
# what `make test` has time for in a quarter of an hour (tests/by_day.py)
BY := --day
ASKED := COVEMIX_CASES=1000
ROOM ?= /var/tmp/covemix-room
HERE := .venv/bin
# what is compiled is kept, whatever the shell says: a fifth of the time of all tests
export PYTHONDONTWRITEBYTECODE =

.PHONY: run test night lint checks parity fuzz facts mutants broken bench audit lock interpreter pictures clean

# LAN=1: https for the phones in this network
run: .venv/run $(if $(LAN),.venv/lan)
	@echo 'The command line is $(HERE)/covemix: serve, export, check, --version.'
	$(HERE)/covemix serve $(if $(LAN),--lan,--host $(HOST)) --port $(PORT)

# the first time all is compiled by one, and not by each of the tests' processes for itself;
# lint uses one core and much of a minute: it runs beside the tests, and is told behind them (`make` and not its variable:
# a line with that is run even where make only tells what it would do)
test: .venv/test
	.ci/browser
	.ci/engines
	.ci/hosts
	make --no-print-directory lint > .venv/lint.txt 2>&1 & lint=$$!; \
		[ -d tests/__pycache__ ] || $(HERE)/python -m pytest --collect-only > .venv/collected.txt 2>&1; \
		$(ASKED) $(HERE)/python -m pytest $(BY) --numprocesses $(JOBS) --dist worksteal; tests=$$?; \
		wait $$lint; linted=$$?; cat .venv/lint.txt; exit $$((tests + linted))

# every test with every row, which takes an hour
night:
	$(MAKE) --no-print-directory test ASKED= BY=

lint: .venv/test
	$(HERE)/ruff check .
	mkdir -p .venv/types/covemix && ln -sfn ../../../library ../../../shared ../../../server ../../../webui .venv/types/covemix/
	$(HERE)/mypy
	.ci/js

# the two tests that read the page which this writes are left out
checks: .venv/test
	$(HERE)/python -m pytest $$(grep -lE 'outside\.(printed|library|solved|worked|own)\(' tests/test_*.py tests/browser/test_*.py) --outside .venv/outside.json \
		--deselect tests/test_outside.py::test_every_move_that_reckons_has_its_value_on_the_page \
		--deselect tests/test_outside.py::test_the_page_counts_its_values_by_how_they_are_known
	$(HERE)/python tests/checks_page.py .venv/outside.json docs/CHECKS.md

# 20,000 generated questions, answered alike by both runtimes; `make test` asks a twentieth, `make night` a third
parity: .venv/test
	.ci/browser
	COVEMIX_CASES=20000 $(HERE)/python -m pytest --numprocesses $(JOBS) tests/browser/test_both_runtimes.py

# 100,000 questions that nobody would ask, put to the phone's runtime in Node; an hour
fuzz: .venv/test
	.ci/need node nodejs
	nice -n 10 $(HERE)/python tests/fuzz.py 100000

bench: .venv/test
	.ci/browser
	.ci/hosts
	$(HERE)/python -m bench

# changes every figure of the catalogue, one at a time: which question follows it is what the tests ask
facts: .venv/test
	cd tests && ../$(HERE)/python facts.py

# the work of a night: the sample of the month, of engine and scripts
mutants: .venv/test
	.ci/browser
	.ci/stryker
	$(HERE)/pip install --quiet --editable '.[test,mutants]'
	rm -f .venv/mutants.json
	nice -n 19 $(HERE)/python tests/mutants.py .venv/mutants

broken: .venv/test
	.ci/browser
	nice -n 19 $(HERE)/python tests/broken_runs.py .venv/broken

audit: .venv/test
	$(HERE)/pip install --quiet pip-audit
	$(HERE)/pip-audit --local

# the newest releases of all test packages, written down once everything has passed with them
lock:
	rm -rf .venv/lock && $(PYTHON) -m venv .venv/lock && .venv/lock/bin/pip install --quiet '.[test]'
	{ head -1 tests/lock.txt; .venv/lock/bin/pip freeze --exclude covemix; } > .venv/lock.txt && mv .venv/lock.txt tests/lock.txt
	rm -rf .venv/lock

# builds the shipped interpreter anew, in a Debian of its own, and compares every byte; as root
interpreter:
	webui/interpreter/room.sh $(ROOM) --prove

pictures: .venv/test
	.ci/browser
	cd tests && ../$(HERE)/python -m browser.pictures ../docs/pictures

clean:
	rm -rf .venv build dist *.egg-info

.venv/run: pyproject.toml
	@echo 'Installing what Covemix needs into .venv: a minute or two, once.'
	.ci/venv $(PYTHON)
	$(HERE)/pip install --quiet --editable .
	touch $@

.venv/lan: .venv/run
	$(HERE)/pip install --quiet --editable '.[lan]'
	touch $@

# what is never imported need not be compiled: a third of the time
.venv/test: pyproject.toml tests/lock.txt
	.ci/venv $(PYTHON)
	$(HERE)/pip install --quiet --no-compile --constraint tests/lock.txt --editable '.[test]'
	touch $@ .venv/run .venv/lan
