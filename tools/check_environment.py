"""Says what this machine lacks before make builds on it; run by the machine's own Python.

Written so that a Python too old for the project (3.7 on) can still say that it is too old.
"""

from __future__ import annotations

import argparse
import glob
import importlib.util
import os
import shutil
import subprocess
import sys

OLDEST_PYTHON = (3, 11)
OLDEST_NODE = 18


def python_problem(*, version: tuple[int, ...], modules: set[str]) -> str | None:
    """What is wrong with a Python of this version that has these modules, or None."""
    if version[:2] < OLDEST_PYTHON:
        found = ".".join(map(str, version))
        wanted = ".".join(map(str, OLDEST_PYTHON))
        return (
            f"found Python {found}, need {wanted} or newer: "
            "name one with `make PYTHON=/path/to/python3 ...`"
        )
    absent = sorted({"venv", "ensurepip"} - modules)
    if absent:
        return (
            f"this Python has no {' and no '.join(absent)}: "
            "install the package that brings it (on Debian: python3-venv)"
        )
    return None


def node_problem(*, node: str | None, npm: bool) -> str | None:
    """What is wrong with the version that node printed (None: no node) and npm, or None."""
    needed = (
        f"need Node.js {OLDEST_NODE} or newer with npm, to run the core in the browser's Python"
    )
    absent = [name for name, there in (("node", node is not None), ("npm", npm)) if not there]
    if node is None or absent:
        return f"found no {' and no '.join(absent)}, {needed}"
    if int(node.strip().lstrip("v").split(".")[0]) < OLDEST_NODE:
        return f"found Node.js {node.strip()}, {needed}"
    return None


def postgres_folder(*, on_path: str | None, installed: list[str]) -> str | None:
    """The folder of a PostgreSQL server's programs: the search path's, else the newest; or None.

    `installed` are folders such as Debian's /usr/lib/postgresql/15/bin, which stand on no path.
    """
    if on_path is not None:
        return os.path.dirname(os.path.realpath(on_path))  # noqa: PTH120 - as old a Python as any

    def version(folder: str) -> float:
        name = os.path.basename(os.path.dirname(folder))  # noqa: PTH119, PTH120 - as above
        return float(name) if name.replace(".", "", 1).isdigit() else 0.0

    return max(installed, key=version) if installed else None


def found_postgres_folder() -> str | None:
    """Where `initdb` and `postgres` are on this machine, or None."""
    found = glob.glob("/usr/lib/postgresql/*/bin/initdb")  # noqa: PTH207 - as above
    folders = [os.path.dirname(one) for one in found]  # noqa: PTH120 - as above
    return postgres_folder(on_path=shutil.which("initdb"), installed=folders)


def postgres_problem(folder: str | None) -> str | None:
    """What is wrong where the server's programs are in this folder (None: nowhere), or None."""
    if folder is not None:
        return None
    return (
        "found no PostgreSQL server, need one to test the ledger in it: install the package that"
        " brings initdb (on Debian: postgresql)"
    )


def found_chromium() -> str | None:
    """The Chromium on this machine, or None."""
    for name in ("chromium", "chromium-browser", "google-chrome"):
        found = shutil.which(name)
        if found is not None:
            return found
    return None


def chromium_problem(chromium: str | None) -> str | None:
    """What is wrong where Chromium is this program (None: none), or None."""
    if chromium is not None:
        return None
    return (
        "found no Chromium, need one to test the workbench's pages: install the package that"
        " brings it (on Debian: chromium)"
    )


def found_python_problem() -> str | None:
    """What is wrong with the Python that runs this, or None."""
    modules = {name for name in ("venv", "ensurepip") if importlib.util.find_spec(name)}
    return python_problem(version=sys.version_info[:3], modules=modules)


def found_node_problem() -> str | None:
    """What is wrong with the node and npm on the search path, or None."""
    node = shutil.which("node")
    version = None
    if node is not None:
        version = subprocess.check_output([node, "--version"], universal_newlines=True)
    return node_problem(node=version, npm=shutil.which("npm") is not None)


def main() -> int:
    """Print what is wrong; status 1 if something is."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--node", action="store_true", help="look at node and npm, not at Python")
    parser.add_argument("--postgres", action="store_true", help="look for PostgreSQL alone")
    parser.add_argument("--chromium", action="store_true", help="look for Chromium alone")
    asked = parser.parse_args()
    if asked.chromium:
        problem = chromium_problem(found_chromium())
    elif asked.postgres:
        problem = postgres_problem(found_postgres_folder())
    else:
        problem = found_node_problem() if asked.node else found_python_problem()
    if problem is None:
        return 0
    sys.stderr.write(problem + "\n")
    return 1


if __name__ == "__main__":
    sys.exit(main())
