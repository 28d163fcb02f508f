"""The rig of the cases with more ways to write it, whole or with some of its text replaced."""

from tests.architecture.source import ROOT

RIG = (ROOT / "tests" / "cases" / "rig.yaml").read_text(encoding="utf-8")
ANCHOR = """\
        - id: A5
          at: [5 ft, 30 ft]
          kind: cast-in
          uses: [tieback, fall arrest]
          rating: {value: 5000 lb, evidence: certificate, document: Pull test 7}
"""
BARE_DROP = """\
  - id: E
    roof: ROOF
    edge: S
    start: 30 ft
    width: 24 ft
"""
LONG = """\
            reach: {value: 2 ft, tolerance: 0 in}
            backspan: {value: 10 ft, tolerance: 0 in}
"""
SHORT = """\
            reach: 2'-0"
            backspan: {value: 10 ft, checked_by: PE}
"""
#: Ways to write that the rig does without: a part of it and what stands in its place here.
MORE_WAYS = (
    ("units: us\n", "number: T-100\nunits: us\nprepared_by: PE\n"),
    ("  place: nowhere\n", "  place: nowhere\n  north: 20 deg\n"),
    ("edges: [{id: S, ", "edges: [{id: S, faces: Invented Street, "),
    ("      anchors:\n", f"      anchors:\n{ANCHOR}"),
    ("\ndrops:\n", f"\ndrops:\n{BARE_DROP}"),
    ("at: 2026-11-25}\n    rig:", "at: 2026-11-25 07:30}\n    rig:"),
    ("anchor: A3, station: 8 ft, worker: RA, ", "anchor: A3, worker: MT, station: 5 ft, "),
    ("reach: {value: 2 ft, tolerance: 0 in}", "reach: {value: 18 in, tolerance: 1/4 in}"),
    ("count: 16}]\n", "count: 16, per_row: 2}]\n              tail_gap: 3 ft 6 in\n"),
    ("hoist: H-2\n", "hoist: H\n"),
    (f"beam: B-2\n{LONG}", f"beam: B-2\n{SHORT}"),
)


def replaced(text: str, *replacements: tuple[str, str]) -> str:
    """The text with each first part replaced, once, by the second."""
    for old, new in replacements:
        assert old in text, f"{old!r} is not in the text"
        text = text.replace(old, new, 1)
    return text


SAMPLE = replaced(RIG, *MORE_WAYS)


def changed(*replacements: tuple[str, str]) -> str:
    """The sample with each first part replaced, once, by the second."""
    return replaced(SAMPLE, *replacements)


def line_of(fragment: str, text: str = SAMPLE) -> int:
    """The line in which `fragment` first stands."""
    return text[: text.index(fragment)].count("\n") + 1
