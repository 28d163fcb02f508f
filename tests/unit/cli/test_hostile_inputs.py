"""Inputs made to break the program: each is refused with status 2, in a screen, in little room.

Each runs as a user runs it, in a process of its own that may take five seconds of the processor;
what it took of memory is asked of the system afterwards.
"""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest

from tests.architecture.source import ROOT

RIG = (ROOT / "tests" / "cases" / "rig.yaml").read_text(encoding="utf-8")
NAME = "name: A rig for cases"
REACH = "reach: {value: 2 ft, tolerance: 0 in}"
COUNT = "{piece: LOT, count: 16}"

pytestmark = pytest.mark.slow

SECONDS = 5
LARGEST = 300 * 1024  # kB, as the system counts the memory of a process
LINES, COLUMNS = 24, 80


def to(old: str, new: str) -> bytes:
    """The rig's file with its first `old` replaced."""
    assert old in RIG
    return RIG.replace(old, new, 1).encode()


def many_drops(count: int) -> bytes:
    """The rig's file, its last drop written so many times."""
    head, drop = RIG.split("drops:\n  - id: D\n")
    return (head + "drops:\n" + f"  - id: D\n{drop}\n" * count).encode()


def laughs(depth: int) -> str:
    """Aliases of aliases, each of ten of the one before."""
    lines = ["a0: &a0 [x]"]
    lines += [f"a{n}: &a{n} [{', '.join([f'*a{n - 1}'] * 10)}]" for n in range(1, depth)]
    return "\n".join(lines)


FILES: dict[str, Callable[[], bytes]] = {
    "nothing": lambda: b"",
    "a comment alone": lambda: b"# nothing\n",
    "bytes that are no text": lambda: bytes(range(256)) * 100,
    "zero bytes": lambda: b"\0" * 100_000,
    "text of another encoding": lambda: RIG.encode("utf-16"),
    "a PDF": lambda: b"%PDF-1.7\n%\xe2\xe3\xcf\xd3\n",
    "a JSON list": lambda: b"[1, 2, 3]",
    "one word": lambda: b"help",
    "half a file": lambda: RIG.encode()[: len(RIG) // 2] + b" {",
    "a file and another one": lambda: RIG.encode() + b"\n---\n" + RIG.encode(),
    "two gigabytes in three lines": lambda: laughs(12).encode(),
    "a record within itself": lambda: b"a: &a [*a]",
    "lists ten thousand deep": lambda: b"a: " + b"[" * 10_000,
    "records ten thousand deep": lambda: b"{a: " * 10_000,
    "a million empty lists": lambda: b"a: [" + b"[]," * 1_000_000 + b"]",
    "a key a million times": lambda: b"a: 1\n" * 1_000_000,
    "a key of a megabyte": lambda: b"x" * 1_000_000 + b": 1",
    "fifty megabytes": lambda: b"# " + b"x" * 50_000_000,
    "a name of a megabyte": lambda: to(NAME, f"name: {'x' * 1_000_000}"),
    "a name of 201 letters": lambda: to(NAME, f"name: {'x' * 201}"),
    "a note of a megabyte": lambda: to("invented: Made up", f"invented: {'x ' * 500_000}"),
    "an id of a megabyte": lambda: to("edge: S", f"edge: {'S' * 1_000_000}"),
    "a sign that clears the screen": lambda: to(NAME, 'name: "\\e[2J"'),
    "a sign that turns the writing": lambda: to(NAME, 'name: "\\u202Egnitset"'),
    "a raw control character": lambda: to(NAME, "name: a\x1b[2Jb"),
    "a surrogate": lambda: to(NAME, 'name: "\\uD800"'),
    "a tag of another language": lambda: to(NAME, "name: !!python/object:os.system [true]"),
    "a merge key": lambda: b"x: &x {format: 1}\n<<: *x\n" + RIG.encode(),
    "a number of 400 digits": lambda: to(REACH, f"reach: {'9' * 400} ft"),
    "a count of 400 digits": lambda: to(COUNT, f"{{piece: LOT, count: {'9' * 400}}}"),
    "a count of a million digits": lambda: to(COUNT, f"{{piece: LOT, count: {'9' * 1_000_000}}}"),
    "a power of ten": lambda: to(REACH, "reach: 1e400 ft"),
    "not a number": lambda: to(REACH, "reach: nan ft"),
    "infinite": lambda: to(REACH, "reach: .inf"),
    "a fraction of nothing": lambda: to(REACH, "reach: 1/0 ft"),
    "a negative reach": lambda: to(REACH, "reach: -2 ft"),
    "a reach of nothing": lambda: to(REACH, "reach: 0 ft"),
    "digits of another writing": lambda: to(REACH, "reach: \u0662 ft"),
    "a tolerance of a mile": lambda: to(REACH, "reach: {value: 2 ft, tolerance: 1 mi}"),
    "a day that is none": lambda: to("certified: 2022-06-01", "certified: 2022-13-45"),
    "a year to come": lambda: to("certified: 2022-06-01", "certified: 9999-12-31"),
    "a rule set in another folder": lambda: to("us-osha-1926-subpart-l", "../../../etc/passwd"),
    "a basis of nothing": lambda: to("tipping: [{", "tipping: []\n  tippping: [{"),
    "a drop two thousand times": lambda: many_drops(2000),
    "a format to come": lambda: to("format: 1", "format: 2"),
}

LINES_TYPED: dict[str, list[str]] = {
    "a file that is a folder": ["review", str(ROOT)],
    "a file that never ends": ["review", "/dev/zero"],
    "a drop that is not there": ["review", "examples/demo/site.yaml", "--drop", "\x1b[2J" * 1000],
    "a day that is none": ["review", "examples/demo/site.yaml", "--on", "2026-02-30"],
    "a set where no set can be": ["review", "examples/demo/site.yaml", "--out", "/dev/null/x"],
    "a rule set that is none": ["review", "examples/demo/site.yaml", "--rules", "../../etc/passwd"],
    "a question with endless numbers": ["ask", "reach", f"backspan={'9' * 400}ft"],
    "a question of a thousand values": ["ask", "reach", *[f"v{n}={n}ft" for n in range(1000)]],
    "a question of one long value": ["ask", "reach", "backspan=" + "1 ft " * 10_000],
    "a question of a topic that is none": ["ask", "\u202e" * 500],
}


#: Runs a command and tells what it took of memory. The system counts for a process also what the
#: one before it in its place held, so that a small one must start it.
MEASURED = """
import resource, subprocess, sys
status = subprocess.run(sys.argv[2:]).returncode
with open(sys.argv[1], "w") as told:
    told.write(str(resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss))
sys.exit(status)
"""


def refused(arguments: list[str], told: Path) -> None:
    """Run it: status 2 in time, in little room, one screen that is no traceback."""
    limited = ["sh", "-c", f'ulimit -t {SECONDS}; exec "$@"', "sh"]
    command = [sys.executable, "-m", "backspan.cli", *arguments]
    ran = subprocess.run(
        [*limited, sys.executable, "-S", "-c", MEASURED, str(told), *command],
        cwd=ROOT,
        env={**os.environ, "COLUMNS": str(COLUMNS)},
        capture_output=True,
        check=False,
    )
    said = ran.stderr.decode()
    assert ran.returncode == 2, said[-2000:]
    assert ran.stdout == b""
    shown = sum(-(-len(line) // COLUMNS) or 1 for line in said.splitlines())
    assert 0 < shown <= LINES, said
    assert "Traceback" not in said
    assert not any(ord(sign) < 32 and sign != "\n" for sign in said)
    assert int(told.read_text("utf-8")) < LARGEST


@pytest.mark.parametrize("kind", FILES)
def test_a_hostile_file_is_refused(kind: str, tmp_path: Path) -> None:
    path = tmp_path / "x.yaml"
    path.write_bytes(FILES[kind]())
    refused(["review", str(path), "--on", "2026-11-25"], tmp_path / "told")


@pytest.mark.parametrize("kind", LINES_TYPED)
def test_a_hostile_line_is_refused(kind: str, tmp_path: Path) -> None:
    refused(LINES_TYPED[kind], tmp_path / "told")


def test_the_file_they_are_made_of_is_sound(tmp_path: Path) -> None:
    path = tmp_path / "x.yaml"
    path.write_text(RIG, encoding="utf-8")
    with pytest.raises(AssertionError, match="== 2"):
        refused(["review", str(path), "--on", "2026-11-25"], tmp_path / "told")
