"""Uploads are counted while they come: what is too large is refused before it fills the disk."""

from __future__ import annotations

from typing import Any

from django.core.exceptions import SuspiciousOperation
from django.core.files.uploadhandler import FileUploadHandler, SkipFile
from django.http import HttpRequest

from backspan.core.errors import BackspanError

#: A photograph of a telephone is a tenth of it; a scanned paper of a hundred pages is less.
MOST_BYTES = 40_000_000


#: Where a request says that a file of it was left out for its size.
TOO_LARGE = "backspan.too-large"


class TooLargeError(BackspanError, SuspiciousOperation):
    """A file, or files together, of more than may be handed in at once."""


class MostBytes(FileUploadHandler):
    """Passes pieces on until they are too many."""

    def __init__(self, request: Any = None) -> None:
        super().__init__(request)
        self._come = 0

    def handle_raw_input(
        self,
        input_data: Any,  # noqa: ARG002 - the framework's own form
        META: dict[str, Any],  # noqa: N803, ARG002 - as above
        content_length: int,
        boundary: str,  # noqa: ARG002 - as above
        encoding: str | None = None,  # noqa: ARG002 - as above
    ) -> None:
        """Refuse by the length that is stated, before a byte is read."""
        if content_length > MOST_BYTES + 1_000_000:
            raise TooLargeError(_told(content_length))

    def receive_data_chunk(self, raw_data: bytes, start: int) -> bytes:  # noqa: ARG002 - as above
        """Count a piece and pass it on."""
        self._come += len(raw_data)
        if self._come > MOST_BYTES:
            if self.request is not None:
                self.request.META[TOO_LARGE] = self._come
            raise SkipFile
        return raw_data

    def file_complete(self, file_size: int) -> None:
        """Leave the file to the next handler."""


def refuse_too_large(request: HttpRequest) -> None:
    """Raise TooLargeError where a file of a form was left out for its size."""
    come = request.META.get(TOO_LARGE)
    if come is not None:
        raise TooLargeError(_told(come))


def _told(size: int) -> str:
    return (
        f"found {size / 1e6:,.0f} MB and more, expected at most {MOST_BYTES / 1e6:,.0f} MB at once:"
        " send files one by one, or smaller ones"
    )
