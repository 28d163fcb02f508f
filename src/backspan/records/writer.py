"""One thread that commits what others hand in: those that wait together share one commit.

A commit waits for the disk, and many small ones wait one after another. Here each submission is
still kept or refused by itself: where a commit of several is refused, they are tried one by one.
"""

from __future__ import annotations

import queue
import threading
from collections.abc import Callable, Sequence
from concurrent.futures import Future
from dataclasses import dataclass, field
from types import TracebackType
from typing import Self

from backspan.core.errors import BackspanError
from backspan.core.ledger.receipts import Receipt
from backspan.records.errors import WriterClosedError
from backspan.records.store import Ledger

Receipts = tuple[Receipt, ...]
#: So many submissions share a commit at most: the first of them waits for the last.
MOST_TOGETHER = 200


@dataclass(frozen=True, slots=True)
class _Submission:
    raws: tuple[bytes, ...]
    result: Future[Receipts] = field(default_factory=Future)


class Writer:
    """Keeps entries in a ledger for many threads; `clock` says when they came, with the offset.

    The ledger stays the caller's to close, after the writer.
    """

    def __init__(self, ledger: Ledger, clock: Callable[[], str]) -> None:
        self._ledger = ledger
        self._clock = clock
        self._waiting: queue.SimpleQueue[_Submission | None] = queue.SimpleQueue()
        self._closing = threading.Lock()
        self._closed = False
        self._thread = threading.Thread(target=self._work, name="ledger writer", daemon=True)
        self._thread.start()

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        self.close()

    def submit(self, raws: Sequence[bytes]) -> Receipts:
        """Keep entries; returns once they are committed. Raises as `Ledger.append` does."""
        return self.hand_in(raws).result()

    def hand_in(self, raws: Sequence[bytes]) -> Future[Receipts]:
        """Hand entries in and go on; the result is there once they are committed or refused.

        Raises WriterClosedError after `close`.
        """
        submission = _Submission(tuple(raws))
        with self._closing:
            if self._closed:
                raise WriterClosedError("found entries for a writer that is closed")
            self._waiting.put(submission)
        return submission.result

    def close(self) -> None:
        """Commit what waits, then stop. May be called twice."""
        with self._closing:
            if not self._closed:
                self._closed = True
                self._waiting.put(None)
        self._thread.join()

    def _work(self) -> None:
        going_on = True
        while going_on:
            together, going_on = self._next()
            # One that was cancelled while it waited is not kept.
            together = [one for one in together if one.result.set_running_or_notify_cancel()]
            if together:
                self._commit(together)

    def _next(self) -> tuple[list[_Submission], bool]:
        """Those that wait, once there is one; and whether more may come."""
        together: list[_Submission] = []
        one = self._waiting.get()
        while one is not None:
            together.append(one)
            if len(together) == MOST_TOGETHER or self._waiting.empty():
                return together, True
            one = self._waiting.get()
        return together, False

    def _commit(self, together: Sequence[_Submission]) -> None:
        raws = [raw for one in together for raw in one.raws]
        try:
            receipts = self._ledger.append(raws, received=self._clock())
        except BackspanError as error:
            if len(together) == 1:
                together[0].result.set_exception(error)
                return
            for one in together:
                self._commit([one])
        except BaseException as error:  # noqa: BLE001 - whoever waits for it raises it
            for one in together:
                one.result.set_exception(error)
        else:
            start = 0
            for one in together:
                end = start + len(one.raws)
                one.result.set_result(receipts[start:end])
                start = end
