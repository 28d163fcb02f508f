"""What an earlier version of the program stored is proven and opened by this one."""

from __future__ import annotations

import shutil
from pathlib import Path

from backspan.core.ledger.drop_states import State
from backspan.core.ledger.fold import fold
from backspan.records.api import restore_record
from backspan.records.archive import verify
from backspan.records.opening import open_ledger
from backspan.records.signing import holds

KEPT = Path(__file__).parent / "kept"
#: As it was printed on 29 November 2026.
HEAD = "1f304faa8e8177459b3c5ac214df8148e2e3feec5568bc63203eacb1ed94158f"


def test_an_archive_of_format_1_is_whole_and_comes_back(tmp_path: Path) -> None:
    report = verify(KEPT / "site-1.tar", holds=holds, known_heads=[HEAD])
    assert report.whole, report.damage
    assert report.signed == report.entries
    with restore_record(KEPT / "site-1.tar", tmp_path / "site") as record:
        assert fold(record.entries()).record("D").state is State.STOPPED
        assert len(record.evidence.all()) == 1


def test_a_ledger_of_format_1_opens(tmp_path: Path) -> None:
    path = tmp_path / "ledger.sqlite"
    shutil.copy(KEPT / "ledger-1.sqlite", path)
    with open_ledger(path) as ledger:
        last = ledger.last()
        assert last is not None
        assert last.head == HEAD
