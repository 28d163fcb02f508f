# `make help` lists what there is to do.

.DEFAULT_GOAL := help
.DELETE_ON_ERROR:
SHELL := /bin/bash -euo pipefail

# Any Python from 3.11 on: `make PYTHON=/path/to/python3 setup`.
PYTHON ?= python3

BIN := .venv/bin
SETUP_DONE := .venv/.setup-done
NODE_DONE := tests/browser/node_modules/.package-lock.json
# Folders of Python files, those that are there.
CODE := $(wildcard src tools tests benchmarks)
UPGRADE ?=
COMPILE := $(BIN)/uv pip compile --quiet --universal --python-version 3.11 --generate-hashes \
	--no-header --no-emit-index-url $(UPGRADE)

.PHONY: help
help:  ## Show this list
	@awk -F ':.*## ' '/^[a-z-]+:.*## / {printf "  make %-9s %s\n", $$1, $$2}' $(MAKEFILE_LIST)

.PHONY: setup
setup: $(SETUP_DONE)  ## Make .venv with the locked packages and backspan itself

$(SETUP_DONE): requirements/dev.txt pyproject.toml tools/check_environment.py
	@$(PYTHON) tools/check_environment.py
	test -x $(BIN)/python || $(PYTHON) -m venv .venv
	$(BIN)/python -m pip install --quiet --disable-pip-version-check --require-hashes \
		-r requirements/dev.txt
	$(BIN)/python -m pip install --quiet --disable-pip-version-check --no-deps \
		--no-build-isolation -e .
	@touch $@

$(NODE_DONE): tests/browser/package.json tests/browser/package-lock.json tests/browser/.npmrc
	@$(PYTHON) tools/check_environment.py --node
	cd tests/browser && npm ci --no-progress
	@touch $@

.PHONY: demo
demo: setup  ## Review the invented demo project and write its papers and drawings
	$(BIN)/python tools/demo.py

.PHONY: serve
serve: setup  ## Open the invented demo building on the workbench, on this machine alone
	$(BIN)/python tools/serve_demo.py

.PHONY: test
test: setup $(NODE_DONE) check  ## Run all checks and tests; deep searches are in make soak
	@$(PYTHON) tools/check_environment.py --postgres
	@$(PYTHON) tools/check_environment.py --chromium
	$(BIN)/python -m pytest

.PHONY: quick
quick: setup  ## The checks and the tests that find most mistakes, within a minute
	$(MAKE) --no-print-directory check
	$(BIN)/python -m pytest -q -m "not slow" tests/unit tests/published tests/test_cases.py \
		tests/architecture

.PHONY: generate
generate: setup  ## Write every generated page and table anew
	@for tool in tools/write_*.py; do echo $$tool; $(BIN)/python $$tool; done

.PHONY: soak
soak: setup  ## Search deep and go on where a stopped run was: make soak PART=laws
	@test -n "$(PART)" || { echo "say which: make soak PART=name; parts:"; \
		ls tests/soak/*.py | xargs -n1 basename -s .py; exit 2; }
	$(BIN)/python tools/soak.py $(PART)

.PHONY: check
check: setup  ## Run the checks that need no test run: style, types, imports
	$(BIN)/ruff check $(CODE)
	$(BIN)/ruff format --check $(CODE)
	$(BIN)/mypy $(CODE)
	$(BIN)/lint-imports --no-logo

.PHONY: bench
bench: setup  ## Measure how long the main jobs take
	$(BIN)/python -m benchmarks.run

.PHONY: lock
lock: setup  ## Lock the packages anew (UPGRADE=--upgrade takes newer ones)
	$(COMPILE) pyproject.toml -o requirements/run.txt
	$(COMPILE) -c requirements/run.txt pyproject.toml requirements/dev.in -o requirements/dev.txt
	cd tests/browser && npm install --package-lock-only --no-progress

.PHONY: clean
clean:  ## Remove everything that make made, .venv included
	rm -rf .venv build dist out tests/browser/node_modules
	rm -rf .soak .mypy_cache .ruff_cache .pytest_cache .hypothesis .import_linter_cache
	find src tests tools -name __pycache__ -type d -prune -exec rm -rf {} +
