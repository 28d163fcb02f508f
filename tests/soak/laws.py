"""Every law of tests/properties with other and many more examples than `make test` tries."""

from __future__ import annotations

import re
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]

#: Each round draws from its own seed.
ROUNDS = 4


def one_round(number: int) -> dict[str, int]:
    """Try every law from the seed `number`; AssertionError with what pytest printed on one."""
    command = [
        *(sys.executable, "-m", "pytest", "-q", "-x", "tests/properties"),
        *("--hypothesis-profile=soak", f"--hypothesis-seed={number}"),
    ]
    ran = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=False)
    assert ran.returncode == 0, ran.stdout[-6000:]
    found = re.search(r"(\d+) passed", ran.stdout)
    assert found is not None, ran.stdout[-6000:]
    return {"laws that held": int(found[1])}
