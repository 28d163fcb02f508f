"""Anchors and drops of a roof out of a table: plain text or a workbook, all problems at once."""

from backspan.exchange.tables.anchors import Told
from backspan.exchange.tables.cells import MOST_BYTES, Table, TableError, brought, carried
from backspan.exchange.tables.opening import is_table, read_table
from backspan.exchange.tables.stated import EVIDENCE, HEADINGS, What, entries_for, shown, stated

__all__ = [
    "EVIDENCE",
    "HEADINGS",
    "MOST_BYTES",
    "Table",
    "TableError",
    "Told",
    "What",
    "brought",
    "carried",
    "entries_for",
    "is_table",
    "read_table",
    "shown",
    "stated",
]
