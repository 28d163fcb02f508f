"""The library at work: bytes of a DXF to plain data. It runs in a process of its own."""

from __future__ import annotations

import io
from collections import Counter
from typing import TYPE_CHECKING, Any

from backspan.core.errors import quoted
from backspan.exchange.drawings_in.errors import DrawingError, refused
from backspan.exchange.drawings_in.gathering import Gathered
from backspan.exchange.drawings_in.nesting import refuse_deep, refuse_references
from backspan.exchange.wrong import Wrong

if TYPE_CHECKING:
    from ezdxf.audit import Auditor
    from ezdxf.document import Drawing


def loaded(content: bytes, origin: str, factor: float) -> dict[str, Any]:
    """Lines, blocks, texts and what was noted, as data; `factor` is metres in a drawing's unit.

    Raises DrawingError with what makes it none that can be taken.
    """
    document, mended = _document(content, origin)
    refuse_references(document)
    refuse_deep(document, origin)
    hidden = frozenset(
        one.dxf.name.casefold() for one in document.layers if one.is_off() or one.is_frozen()
    )
    found = Gathered(factor, hidden=hidden)
    found.gather(document.modelspace())
    if found.wrong:
        raise DrawingError(found.wrong)
    on_sheets = sum(len(one) for one in document.layouts if not one.is_modelspace)
    if on_sheets:
        found.noted["in paper space: not read, left out"] = on_sheets
    return {
        "lines": found.lines,
        "blocks": found.blocks,
        "texts": found.texts,
        "noted": sorted((mended + found.noted).items()),
    }


def _document(content: bytes, origin: str) -> tuple[Drawing, Counter[str]]:
    """The document, and what was mended in it."""
    from ezdxf import recover
    from ezdxf.lldxf.const import DXFError

    try:
        document, auditor = recover.read(io.BytesIO(content))
    except DXFError as error:
        found = f"something that is no DXF ({quoted(str(error))})"
        raise refused(origin, found, "a DXF file as it was saved") from error
    _refuse_damaged(auditor)
    return document, Counter(f"mended: {_told(one.code)}" for one in auditor.fixes)


def _refuse_damaged(auditor: Auditor) -> None:
    wrong = [
        Wrong(
            "the drawing" if one.entity is None else str(one.entity),
            f"{_told(one.code)} ({one.message})",
            "a drawing that can be mended: audit it where it was drawn, and save it again",
        )
        for one in auditor.errors
    ]
    if wrong:
        raise DrawingError(wrong)


def _told(code: int) -> str:
    from ezdxf.audit import AuditError

    return AuditError(code).name.lower().replace("_", " ")
