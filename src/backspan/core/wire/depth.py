"""How deep JSON is nested, told before a reader that calls itself goes down there.

The browser's Python has a small stack: a reader that runs out of it takes the whole page along.
"""

from __future__ import annotations

import re

#: Deeper than any record of ours, and no danger to any reader.
DEEPEST = 100
_TEXT = re.compile(rb'"(?:[^"\\]|\\.)*+"?', re.DOTALL)
_SIGN = re.compile(rb"[\[\]{}]")


def too_deep(raw: bytes) -> bool:
    """Whether brackets outside of texts are nested deeper than `DEEPEST` anywhere."""
    depth = 0
    for sign in _SIGN.findall(_TEXT.sub(b"", raw)):
        depth += 1 if sign in b"[{" else -1
        if depth > DEEPEST:
            return True
    return False
