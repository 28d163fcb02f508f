"""Write docs/nomenclature.md: the words, symbols and units of the program.

Run it after any change to a formula or symbol: `python tools/write_nomenclature.py`.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from pathlib import Path

from backspan.core.mechanics import FORMULAS
from backspan.core.quantities import SAME, CoherentSet, Dimension, coherent_unit
from backspan.core.worked.symbols import CONSTANTS, SYMBOLS, Symbol
from backspan.core.worked.table import FormulaDescription, describe_all

PAGE = Path(__file__).resolve().parent.parent / "docs" / "nomenclature.md"

OPENING = """\
# Nomenclature

This page is written by `tools/write_nomenclature.py`; change the formulas, the symbols or the
words there, not the page. One name has one meaning and one unit, and code, screens and papers use
it.

Inside the program every value is in SI. Units are given as worked lines print them: metric, then
US. In US lines a mass in lb times an acceleration in g is a force in lb. The symbols are the
project's own choice; common practice, no source.

Words that 29 CFR 1926.450(b) defines (stage, stirrup, hoist, rated load, stall load) are given here
in short; the regulation governs. The others are common practice, no source.
"""

#: The trade's words as this program uses them.
WORDS = (
    ("site", "one building, with all its roofs"),
    ("roof", "one roof level of the building"),
    ("edge", "a side of a roof, where the facade begins"),
    ("parapet", "a wall along an edge"),
    ("anchor", "a fixed point on the roof, with the papers that say what it may carry"),
    ("drop", "a vertical strip of facade as wide as one stage; what is accepted or not"),
    ("rig", "everything set up for one drop: suspension points, stage, lifelines, power"),
    ("suspension point", "a place where a suspension line hangs, with the support that carries it"),
    (
        "support",
        "what holds a line up, such as a counterweighted beam, a parapet clamp or a davit",
    ),
    ("fulcrum", "the front bearing of a beam: pad, stand, scaffold tower or parapet"),
    ("reach", "distance from the fulcrum out to the suspension line"),
    ("backspan", "distance from the fulcrum in to the centroid of the counterweight"),
    ("piece", "one purpose-made counterweight with its mass stamped on it"),
    ("suspension line", "the rope that a hoist climbs"),
    ("support line", "a second rope to the stage that does not depend on the first"),
    ("tieback", "a rope from a support back to the structure"),
    ("lifeline", "a rope for one worker alone, from an anchor of its own"),
    ("softener", "what protects a line where it passes an edge"),
    ("stage", "the platform that hangs and carries people"),
    ("stirrup", "the frame by which a stage hangs on its hoist"),
    ("hoist", "the machine that raises and lowers the stage along the line"),
    ("rated load", "the largest load the maker allows a hoist to lift"),
    ("stall load", "the load at which a hoist stalls or cuts its own power"),
    ("rule set", "one published text in one edition: its clauses, factors and limits"),
    ("basis", "which rule sets, editions and readings a review rests on"),
    (
        "signed",
        "stated by a named person with role and card, chained by hash; no cryptographic signature",
    ),
    ("evidence", "where a value comes from: measured, label, certificate, drawing, told, assumed"),
    ("finding", "the answer of one check about one subject: pass, fail, refer or missing"),
    ("review", "all findings of one rig, with the answer they add up to"),
    ("configuration", "the exact content of a rig, named by a short code made from it"),
    ("entry", "one dated, signed statement"),
    ("ledger", "the list of entries, to which one may only add"),
)


def page() -> str:
    """The whole page."""
    results = describe_all(FORMULAS).values()
    return "\n".join(
        (
            OPENING,
            "## Names in formulas\n",
            *_table(("name", "symbol", "meaning", "unit"), map(_name_row, SYMBOLS.values())),
            "\n## Constants\n",
            *_table(("name", "symbol", "meaning", "unit"), map(_name_row, CONSTANTS.values())),
            "\n## Results of formulas\n",
            *_table(("formula", "symbol", "answer", "unit"), map(_result_row, results)),
            "\n## Words\n",
            *_table(("word", "meaning"), WORDS),
            "",
        )
    )


def _name_row(symbol: Symbol) -> tuple[str, ...]:
    return symbol.name, symbol.symbol, symbol.meaning, _units(symbol.dimension)


def _result_row(formula: FormulaDescription) -> tuple[str, ...]:
    return formula.name, formula.symbol, formula.title, _units(formula.result)


def _units(dimension: Dimension) -> str:
    if dimension == SAME:
        return "that of what is compared"
    sets = (CoherentSet.METRES_NEWTONS, CoherentSet.FEET_POUNDS)
    texts = dict.fromkeys(coherent_unit(dimension, one)[0] for one in sets)
    return ", ".join(text for text in texts if text) or "none"


def _table(head: tuple[str, ...], rows: Iterable[tuple[str, ...]]) -> Iterator[str]:
    yield f"| {' | '.join(head)} |"
    yield "|" + "---|" * len(head)
    for row in rows:
        yield f"| {' | '.join(row)} |"


def main() -> None:
    """Write the page."""
    PAGE.parent.mkdir(exist_ok=True)
    PAGE.write_text(page(), encoding="utf-8", newline="\n")


if __name__ == "__main__":
    main()
