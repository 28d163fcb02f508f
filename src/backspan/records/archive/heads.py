"""Holds signed heads, and heads that somebody kept, against the receipts of an archive."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from backspan.core.ledger.receipts import NO_HEAD, Receipt, SignedHead
from backspan.core.wire import WireError, from_data, read_canonical
from backspan.records.archive.layout import HEADS, RECEIPTS
from backspan.records.archive.report import Damages

_KEY_DIGITS, _SIGNATURE_DIGITS = 64, 128


def read_heads(raw: bytes) -> tuple[SignedHead, ...]:
    """The signed heads that these bytes are. Raises ValueError, saying why, for anything else."""
    try:
        data = read_canonical(raw)
        heads = (
            tuple(from_data(SignedHead, one) for one in data) if isinstance(data, list) else None
        )
    except WireError as error:
        raise ValueError(str(error)) from error
    if heads is None:
        raise ValueError("not a list in canonical JSON")
    return heads


def prove_heads(
    raw: bytes,
    receipts: list[Receipt | None],
    damages: Damages,
    *,
    site: str | None,
    holds: Callable[[SignedHead], bool],
    trusted_key: str | None,
) -> int:
    """Tell of each signed head that does not hold; answers the last place that one holds for."""
    try:
        heads = read_heads(raw)
    except ValueError as error:
        damages.tell(HEADS, f"cannot be read: {error}")
        return 0
    signed = 0
    for number, one in enumerate(heads, start=1):
        problems = list(_problems(one, receipts, site, trusted_key))
        if not (_is_hex(one.key, _KEY_DIGITS) and _is_hex(one.signature, _SIGNATURE_DIGITS)):
            problems.append("its key or signature is not written in hex digits")
        elif not holds(one):
            problems.append("its signature does not hold")
        for says in problems:
            damages.tell(HEADS, f"signed head {number} (place {one.place}): {says}")
        if not problems:
            signed = max(signed, one.place)
    if trusted_key is not None and not signed:
        damages.tell(HEADS, f"no head that the trusted key {trusted_key} signed and that holds")
    return signed


def prove_known(known: Iterable[str], receipts: list[Receipt | None], damages: Damages) -> None:
    """Tell of each head that was kept elsewhere and is not in this archive."""
    here = {NO_HEAD, *(one.head for one in receipts if one is not None)}
    for head in known:
        if head not in here:
            damages.tell(
                RECEIPTS,
                f"the known head {head} is not here: entries were cut off or changed since it was"
                " given out, or it is of another site",
            )


def _problems(
    one: SignedHead, receipts: list[Receipt | None], site: str | None, trusted_key: str | None
) -> Iterable[str]:
    if site is not None and one.site != site:
        yield f"found the site {one.site!r}, expected {site!r}"
    there = receipts[one.place - 1] if 0 < one.place <= len(receipts) else None
    if not 0 <= one.place <= len(receipts):
        yield f"beyond the last receipt, {len(receipts)}: entries were cut off"
    elif one.head != (NO_HEAD if one.place == 0 else None if there is None else there.head):
        yield "not the head that the receipts have there"
    if trusted_key is not None and one.key != trusted_key:
        yield f"found the key {one.key}, expected {trusted_key}"


def _is_hex(text: str, digits: int) -> bool:
    return len(text) == digits and set(text) <= set("0123456789abcdef")
