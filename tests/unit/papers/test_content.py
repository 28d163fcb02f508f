"""What the package says: nothing of a review is left out, and the worst comes first."""

from __future__ import annotations

from dataclasses import replace

import pytest

from backspan.papers import PaperError, package_content
from backspan.papers.wording import long_date
from tests.unit.papers.sample import ON, demo, package, paper, part, reviews


def test_findings_that_do_not_pass_come_first() -> None:
    found = part(demo(), "W2")

    verdicts = [finding["verdict"] for finding in found["findings"]]

    assert verdicts[0] == "fail"
    assert verdicts == sorted(verdicts, key=["fail", "missing", "refer", "pass"].index)


def test_equal_findings_of_two_points_are_printed_once_with_both_names() -> None:
    found = part(demo(), "S1")

    subjects = [one["subject"] for one in found["findings"] if one["title"].startswith("Counterw")]

    assert "S1/L, S1/R" in subjects


def test_every_finding_and_every_reason_of_a_review_is_in_its_part() -> None:
    names = ["S1", "T1", "T2", "W1"]
    for review in reviews(demo(), names):
        found = part(demo(), review.drop)
        printed = {name for one in found["findings"] for name in one["subject"].split(", ")}
        reasons = {name for one in found["not_applicable"] for name in one["subject"].split(", ")}

        assert printed == {finding.subject for finding in review.findings}
        assert reasons == {one.subject for one in review.not_applicable}


def test_the_cover_counts_every_drop_under_its_answer() -> None:
    data = package(demo(), ["S1", "W1", "T1", "S5", "T2"]).data
    cover = data["cover"]

    assert {row["answer"]: row["drops"] for row in cover["counts"]} == {
        "✗ fail": "W1",
        "? missing": "T1",
        "→ refer": "S5, T2",
        "✓ pass, 17 topics taken over": "S1",
    }
    assert data["summary"][0]["counted"] == "17 topics taken over"
    assert cover["not_judged"] == [{"topic": "tipping", "who": "licensed engineer", "drops": "T2"}]


def test_a_rule_set_added_for_one_drop_names_it() -> None:
    basis = package(demo(), ["S1", "N1", "S5"]).data["cover"]["basis"]

    assert {row["rule_set"]: row["drops"] for row in basis if row["drops"]} == {
        "eu-en-1808": "N1",
        "uk-bs-5974": "S5",
    }


def test_every_rule_value_cited_stands_once_in_the_list_with_its_source() -> None:
    data = paper(demo(), "N1").data
    cited = {
        (rule["rule_set"], rule["description"])
        for finding in data["drop"]["findings"]
        for rule in finding["rules"]
    }
    listed = [(row["rule_set"], row["description"]) for row in data["sources"]]

    assert sorted(listed) == sorted(cited)
    assert all(row["source"] for row in data["sources"])


def test_the_cover_names_the_configuration_of_each_drop_by_roof() -> None:
    names = ["S1", "T1"]
    codes = {one.drop: one.configuration for one in reviews(demo(), names)}

    assert package(demo(), names).data["cover"]["roofs"] == [
        {"roof": "main roof", "drops": [{"drop": "S1", "configuration": codes["S1"]}]},
        {
            "roof": "terrace, setback at the fifth floor",
            "drops": [{"drop": "T1", "configuration": codes["T1"]}],
        },
    ]


def test_what_a_finding_needs_names_who_must_supply_it() -> None:
    found = part(demo(), "T1")

    needs = {
        need["who"]
        for finding in found["findings"]
        if not finding["taken_over"]
        for need in finding["needs"]
    }

    assert needs == {"the person who measures on the roof", "licensed engineer"}


def test_a_value_without_evidence_is_shown_as_such_where_evidence_is_asked() -> None:
    project = demo()
    hoists = tuple(
        replace(one, rated_load=replace(one.rated_load, evidence=None, by=None))
        for one in project.kit.hoists
    )
    project = replace(project, kit=replace(project.kit, hoists=hoists))

    found = part(project, "S1")

    tipping = next(one for one in found["findings"] if one["title"].startswith("Counterweight ag"))
    shown = [one for one in tipping["inputs"] if one["title"] == "rated load of the hoist"]
    assert tipping["verdict"] == "missing"
    assert [(one["text"], one["evidence"]) for one in shown] == [("1,000 lb", "not stated")]


def test_no_id_a_person_typed_becomes_part_of_a_file_name() -> None:
    project = demo()
    drop = next(one for one in project.drops if one.id == "S1")
    project = replace(project, drops=(replace(drop, id="../S/1"),))

    files = paper(project, "../S/1").drawings

    assert sorted(files) == ["drawing-1.svg", "drawing-2.svg"]


def test_a_drawing_without_a_size_is_refused() -> None:
    with pytest.raises(PaperError, match="Roof plan: the drawing does not say its size"):
        package_content(demo(), [], ["<svg/>"], {})


def test_a_confirmed_value_says_who_confirmed_it() -> None:
    found = part(demo(), "N1")

    cited = [rule for finding in found["findings"] for rule in finding["rules"]]

    assert any(
        rule["mark_text"] == "memory, confirmed" and "J. Marlow" in rule["confirmed"]["text"]
        for rule in cited
    )


def test_dates_are_written_out() -> None:
    assert long_date(ON) == "November 25, 2026"
