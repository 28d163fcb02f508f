"""Write the table of formulas, by which a step is printed where no source is shipped.

Run it after any change to a formula: `python tools/write_formula_table.py`.
"""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path

from backspan.core.mechanics import FORMULAS
from backspan.core.worked.expression import from_source
from backspan.core.worked.formula import AnyFormula
from backspan.core.worked.infix import source_text

TABLE = (
    Path(__file__).resolve().parent.parent
    / "src"
    / "backspan"
    / "core"
    / "mechanics"
    / "formula_table.py"
)
LINE_LENGTH = 100

OPENING = '''\
"""The expression of every formula by its name, for where only compiled files are shipped.

Written by `tools/write_formula_table.py` from the formulas; change them, not this file.
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

#: Formula name to the text of its return expression.
FORMULA_TABLE: Mapping[str, str] = MappingProxyType(
    {
'''
CLOSING = """\
    }
)
"""


def table_text(formulas: Mapping[str, AnyFormula]) -> str:
    """The whole file, laid out as the formatter leaves it."""
    rows = (
        _row(name, source_text(from_source(formulas[name].__wrapped__)))
        for name in sorted(formulas)
    )
    return OPENING + "".join(rows) + CLOSING


def _row(name: str, text: str) -> str:
    row = f'        "{name}": "{text}",\n'
    if len(row) <= LINE_LENGTH + 1:
        return row
    return f'        "{name}": (\n            "{text}"\n        ),\n'


def main() -> None:
    """Write the file."""
    TABLE.write_text(table_text(FORMULAS), encoding="utf-8", newline="\n")


if __name__ == "__main__":
    main()
