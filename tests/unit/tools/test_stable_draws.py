from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[3]

DRAW = """
import sys
sys.path.insert(0, {root!r})
{unrelated}
import tests.conftest
from hypothesis import given, settings, strategies as st
settings.load_profile("few")
drawn = []
@settings(max_examples=200)
@given(st.integers(0, 10**9), st.floats(0.0, 1e6))
def law(whole, real):
    drawn.append((whole, real))
law()
print(drawn)
"""


def draws(unrelated: str) -> str:
    code = DRAW.format(root=str(ROOT), unrelated=unrelated)
    command = [sys.executable, "-c", code]
    return subprocess.run(command, capture_output=True, text=True, check=True, cwd=ROOT).stdout


@pytest.mark.slow
def test_a_law_draws_the_same_whatever_else_is_imported(tmp_path: Path) -> None:
    (tmp_path / "unrelated.py").write_text("ODD = [123456787, 7654.321, 987654323]\n")
    loaded = f"sys.path.insert(0, {str(tmp_path)!r}); import unrelated, tests.test_cases"
    alone = draws("")
    assert draws(loaded) == alone
    assert alone.count("(") > 100
