"""Most tests load a drawing where they run: a process of its own for each takes the most time."""

from __future__ import annotations

import json
from typing import Any

import pytest

from backspan.exchange.drawings_in import reading
from backspan.exchange.drawings_in.loading import loaded


@pytest.fixture(autouse=True)
def _loaded_here(monkeypatch: pytest.MonkeyPatch) -> None:
    """Load here, and hand over as a process would; what is asked of `apart` itself goes apart."""

    def here(content: bytes, origin: str, factor: float, *, seconds: int) -> Any:
        assert seconds > 0
        return json.loads(json.dumps(loaded(content, origin, factor)))

    monkeypatch.setattr(reading, "loaded_apart", here)
