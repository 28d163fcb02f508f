"""Write tests/unit/core/rig.json: the rig of the tests as the browser's Python reads it.

The rig stands in tests/cases/rig.yaml; the browser has no reader of YAML. Run it after any change
of that file or of the model: `python tools/write_rig.py`.
"""

from __future__ import annotations

import json
from pathlib import Path

from backspan.core.wire import to_data
from backspan.exchange.files import load

TESTS = Path(__file__).resolve().parent.parent / "tests"
RIG = TESTS / "unit" / "core" / "rig.json"


def text() -> str:
    """What the file should hold."""
    project = load(TESTS / "cases" / "rig.yaml")
    return json.dumps(to_data(project), indent=1, ensure_ascii=False) + "\n"


if __name__ == "__main__":
    RIG.write_text(text(), encoding="utf-8", newline="\n")
