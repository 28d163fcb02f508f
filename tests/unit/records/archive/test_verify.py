"""What an archive proves by itself, and what only a head that stood elsewhere proves."""

from __future__ import annotations

import hashlib
import io
from collections.abc import Callable
from dataclasses import replace

import pytest

from backspan.core.ledger.receipts import Receipt, read_receipt
from backspan.records.archive import Damage, Report, layout, verify_stream
from tests.unit.records.archive.content import (
    EVIDENCE,
    KEY,
    OTHER_KEY,
    head_bytes,
    holds,
    in_lines,
    listed_anew,
    members_of,
    receipt_lines,
    receipts_of,
    signed,
    tar_of,
)

Lines = list[bytes]
PHOTO = min(EVIDENCE)


def report_of(members: dict[str, bytes], known: tuple[str, ...] = ()) -> Report:
    """What is found in an archive of these members, in a container that is as it should be."""
    return verify_stream(io.BytesIO(tar_of(members)), holds=holds, known_heads=known)


def places(report: Report) -> set[tuple[str, int | None]]:
    """Where damage was found."""
    return {(one.member, one.number) for one in report.damage}


def says(report: Report, member: str) -> str:
    """All that was told of a member."""
    return "; ".join(one.says for one in report.damage if one.member == member)


def receipts_in(members: dict[str, bytes]) -> list[Receipt]:
    """The receipts of an archive."""
    return [read_receipt(line) for line in members[layout.RECEIPTS].splitlines()]


def entries_in(members: dict[str, bytes]) -> Lines:
    """The entries of an archive."""
    return members[layout.ENTRIES].splitlines()


def written_anew(members: dict[str, bytes], entries: Lines) -> dict[str, bytes]:
    """A forger's archive: other entries, with receipts and a manifest that fit them."""
    receipts = receipt_lines(receipts_of(entries))
    return listed_anew(members | {layout.ENTRIES: in_lines(entries), layout.RECEIPTS: receipts})


def test_a_whole_archive_has_no_damage(whole: bytes) -> None:
    report = verify_stream(io.BytesIO(whole), holds=holds, trusted_key=KEY)
    assert report.whole
    assert (report.site, report.entries, report.signed) == ("invented site", 200, 200)
    heads = [one.head for one in receipts_in(members_of(whole))]
    assert report.head == heads[-1]
    assert verify_stream(io.BytesIO(whole), holds=holds, known_heads=heads).whole


@pytest.mark.parametrize("name", [layout.ENTRIES, layout.RECEIPTS])
@pytest.mark.parametrize(
    ("change", "line"),
    [
        (lambda lines: lines[:40] + lines[41:], 41),
        (lambda lines: [*lines[:40], lines[41], lines[40], *lines[42:]], 41),
        (lambda lines: [*lines[:41], lines[40], *lines[41:]], 42),
        (lambda lines: lines[1:], 1),
        (lambda lines: [*lines, lines[-1]], 201),
        (lambda lines: [*lines[:40], b"", *lines[40:]], 41),
    ],
)
def test_a_line_removed_swapped_doubled_or_added_is_named(
    whole: bytes, name: str, change: Callable[[Lines], Lines], line: int
) -> None:
    members = members_of(whole)
    members[name] = in_lines(change(members[name].splitlines()))
    report = report_of(listed_anew(members))
    assert (name, line) in places(report)
    # The blame stays near: two hundred lines do not all take it.
    assert len(report.damage) < 10


def test_a_last_line_without_its_end_is_named(whole: bytes) -> None:
    members = members_of(whole)
    for name in (layout.ENTRIES, layout.RECEIPTS):
        report = report_of(listed_anew(members | {name: members[name][:-1]}))
        assert (name, 200) in places(report)
        assert "no line feed at its end" in says(report, name)


def test_two_changed_entries_are_both_named_with_device_and_number(whole: bytes) -> None:
    members = members_of(whole)
    lines = entries_in(members)
    for index in (30, 90):
        lines[index] = lines[index].replace(b"the wind is up", b"the wind is at rest")
    report = report_of(listed_anew(members | {layout.ENTRIES: in_lines(lines)}))
    assert places(report) == {(layout.ENTRIES, 31), (layout.ENTRIES, 91)}
    assert "(office 8)" in says(report, layout.ENTRIES)


def test_a_changed_entry_with_a_receipt_made_for_it_breaks_chain_and_head(whole: bytes) -> None:
    members = members_of(whole)
    lines, receipts = entries_in(members), receipts_in(members)
    lines[30] = lines[30].replace(b"the wind is up", b"the wind is at rest")
    receipts[30] = replace(receipts[30], entry=hashlib.sha256(lines[30]).hexdigest())
    changed = {layout.ENTRIES: in_lines(lines), layout.RECEIPTS: receipt_lines(receipts)}
    report = report_of(listed_anew(members | changed))
    assert (layout.RECEIPTS, 31) in places(report)
    assert "follows on another office 8 than is here" in says(report, layout.ENTRIES)


def test_a_changed_entry_with_all_receipts_anew_breaks_its_devices_chain(whole: bytes) -> None:
    members = members_of(whole)
    lines = entries_in(members)
    for index in (30, 90):
        lines[index] = lines[index].replace(b"the wind is up", b"the wind is at rest")
    report = report_of(written_anew(members, lines))
    broken = [one for one in report.damage if one.member == layout.ENTRIES]
    assert [one.number for one in broken] == [33, 93]
    assert all("follows on another" in one.says for one in broken)


def cut(whole: bytes) -> dict[str, bytes]:
    """An archive without its last twenty entries, in which everything else fits again."""
    members = members_of(whole)
    return written_anew(members, entries_in(members)[:180])


def test_a_tail_cut_off_is_found_by_a_signed_head(whole: bytes) -> None:
    report = report_of(cut(whole))
    assert places(report) == {(layout.HEADS, None)}
    assert "signed head 2 (place 200): beyond the last receipt, 180" in says(report, layout.HEADS)
    assert report.signed == 100


def test_a_tail_cut_off_with_its_signed_head_is_found_by_a_known_head_only(whole: bytes) -> None:
    receipts = receipts_in(members_of(whole))
    forged = cut(whole)
    forged = listed_anew(forged | {layout.HEADS: head_bytes([signed(receipts[99])])})
    assert report_of(forged).whole
    assert report_of(forged, (receipts[179].head,)).whole
    report = report_of(forged, (receipts[199].head,))
    assert places(report) == {(layout.RECEIPTS, None)}
    assert f"the known head {receipts[199].head} is not here" in says(report, layout.RECEIPTS)


def test_signed_heads_that_do_not_hold_or_are_of_another_chain_are_named(whole: bytes) -> None:
    members = members_of(whole)
    receipts = receipts_in(members)
    good = signed(receipts[99])
    elsewhere = replace(good, site="elsewhere")
    heads = [
        good,
        replace(good, at="2026-11-29T10:00:00+00:00"),
        signed(replace(receipts[99], head=receipts[98].head)),
        replace(elsewhere, signature="00"),
        replace(good, key=good.key.upper()),
    ]
    report = report_of(listed_anew(members | {layout.HEADS: head_bytes(heads)}))
    assert [one.says.split(": ", 1) for one in report.damage] == [
        ["signed head 2 (place 100)", "its signature does not hold"],
        ["signed head 3 (place 100)", "not the head that the receipts have there"],
        ["signed head 4 (place 100)", "found the site 'elsewhere', expected 'invented site'"],
        ["signed head 4 (place 100)", "its key or signature is not written in hex digits"],
        ["signed head 5 (place 100)", "its key or signature is not written in hex digits"],
    ]
    assert report.signed == 100


def test_a_head_of_another_key_is_none_of_the_trusted_one(whole: bytes) -> None:
    members = members_of(whole)
    heads = head_bytes([signed(receipts_in(members)[199], OTHER_KEY)])
    forged = tar_of(listed_anew(members | {layout.HEADS: heads}))
    assert verify_stream(io.BytesIO(forged), holds=holds).whole
    report = verify_stream(io.BytesIO(forged), holds=holds, trusted_key=KEY)
    assert f"found the key {OTHER_KEY}, expected {KEY}" in says(report, layout.HEADS)
    assert "no head that the trusted key" in says(report, layout.HEADS)


@pytest.mark.parametrize("raw", [b"", b"{}", b"[1]", b"[ ]", b"\xff", b"[" * 100_000])
def test_heads_that_are_none_are_told(whole: bytes, raw: bytes) -> None:
    report = report_of(listed_anew(members_of(whole) | {layout.HEADS: raw}))
    assert "cannot be read" in says(report, layout.HEADS)


def test_evidence_that_is_missing_changed_or_that_nobody_names(whole: bytes) -> None:
    members = members_of(whole)
    name = layout.EVIDENCE + PHOTO
    changed = report_of(listed_anew(members | {name: b"another photograph"}))
    assert places(changed) == {(name, None)}
    assert "its content has the hash" in says(changed, name)
    content = members.pop(name)
    missing = report_of(listed_anew(members))
    assert places(missing) == {(name, None)}
    assert says(missing, name) == "is not there; pad 3 (line 8) names it"
    other = layout.EVIDENCE + hashlib.sha256(b"x").hexdigest()
    evidence = dict(sorted((members | {name: content, other: b"x"}).items()))
    order = [one for one in members if not one.startswith(layout.EVIDENCE)][:-1]
    order += [one for one in evidence if one.startswith(layout.EVIDENCE)]
    unnamed = report_of(
        listed_anew(
            {one: evidence[one] for one in order} | {layout.MANIFEST: members[layout.MANIFEST]}
        )
    )
    assert unnamed.damage == (Damage(other, None, "no entry names it"),)


def test_a_changed_member_with_the_old_manifest_is_named(whole: bytes) -> None:
    report = report_of(members_of(whole) | {layout.PROJECT: b'{"folded":"something else"}'})
    assert (layout.PROJECT, None) in places(report)
    assert "by the manifest" in says(report, layout.PROJECT)


def test_a_readme_of_other_words_is_another_format(whole: bytes) -> None:
    report = report_of(listed_anew(members_of(whole) | {layout.README: b"trust me\n"}))
    assert places(report) == {(layout.README, None)}


def test_a_damaged_line_that_is_no_unicode_can_be_reported(whole: bytes) -> None:
    members = members_of(whole)
    lines = entries_in(members)
    lines[30] = b'{"device":"\\ud800","sequence":1}'
    report = report_of(listed_anew(members | {layout.ENTRIES: in_lines(lines)}))
    assert (layout.ENTRIES, 31) in places(report)
    assert "\\ud800 1" in says(report, layout.ENTRIES).encode("utf-8").decode("utf-8")
