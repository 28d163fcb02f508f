"""Papers set by a process of their own are those set here, and its failures are told."""

from __future__ import annotations

from contextlib import closing
from dataclasses import replace

import pytest

from backspan.papers import PaperError, Typesetter, paper_pdf
from tests.unit.papers.sample import ON, demo, package, paper


def test_a_paper_is_the_same_bytes_however_many_were_set_before() -> None:
    content = package(demo(), ["T2"])
    once = paper_pdf(content, issued=ON)
    with closing(Typesetter()) as typesetter:
        for _ in range(8):  # more than one process sets
            typesetter.begin(content, issued=ON)
            assert typesetter.take() == once


def test_a_paper_that_cannot_be_set_says_so_and_the_next_can() -> None:
    good = paper(demo(), "T2")
    broken = replace(good, data={**good.data, "drop": "not a record"})
    with closing(Typesetter()) as typesetter:
        typesetter.begin(broken, issued=ON)
        with pytest.raises(PaperError, match="the paper could not be set: "):
            typesetter.take()
        typesetter.begin(good, issued=ON)
        assert typesetter.take().startswith(b"%PDF-")


def test_a_process_that_ends_is_told() -> None:
    with closing(Typesetter()) as typesetter:
        typesetter.begin(replace(paper(demo(), "T2"), template="gone.typ"), issued=ON)
        with pytest.raises(PaperError, match="could not be set"):
            typesetter.take()
        assert typesetter._running is not None  # noqa: SLF001 - to end it from outside
        typesetter._running.process.kill()  # noqa: SLF001
        typesetter._running.process.wait()  # noqa: SLF001
        with pytest.raises(PaperError, match="the typesetter ended"):  # noqa: PT012 - at either
            typesetter.begin(paper(demo(), "T2"), issued=ON)
            typesetter.take()


def test_nothing_is_taken_that_was_not_begun() -> None:
    with closing(Typesetter()) as typesetter, pytest.raises(ValueError, match="no paper was begun"):
        typesetter.take()
