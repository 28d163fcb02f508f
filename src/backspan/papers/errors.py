"""The error of the papers room."""

from __future__ import annotations

from backspan.core.errors import BackspanError


class PaperError(BackspanError, RuntimeError):
    """A package that cannot be set; names the drawing, or says what the typesetter said."""
