"""What the package says: nothing of a review is left out, and the worst comes first."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from backspan.core.findings import Verdict
from backspan.core.review.asked import Asked
from backspan.core.words import ENGLISH, language_of, say, say_check
from backspan.core.words.drop import settled
from backspan.papers import PaperError, package_content, reactions_content
from backspan.papers.wording import long_date
from tests.unit.papers.sample import ON, demo, documents, package, paper, part, reviews, worked


def test_findings_that_do_not_pass_come_first() -> None:
    verdicts = [finding["verdict"] for finding in worked(demo(), "W2")["findings"]]

    assert verdicts[0] == "fail"
    assert verdicts == sorted(verdicts, key=["fail", "missing", "refer", "pass"].index)


def test_equal_findings_of_two_points_are_printed_once_with_both_names() -> None:
    found = worked(demo(), "S1")["findings"]

    subjects = [one["subject"] for one in found if one["title"].startswith("Counterw")]

    assert "S1/L, S1/R" in subjects


def test_every_finding_and_every_reason_of_a_review_is_in_its_appendix() -> None:
    names = ["S1", "T1", "T2", "W1"]
    for review in reviews(demo(), names):
        found = worked(demo(), review.drop)
        printed = {name for one in found["findings"] for name in one["subject"].split(", ")}
        reasons = {name for one in found["not_applicable"] for name in one["subject"].split(", ")}

        assert printed == {finding.subject for finding in review.findings}
        assert reasons == {one.subject for one in review.not_applicable}


def test_the_appendix_holds_what_was_asked_for_and_no_more() -> None:
    assert all(not rows for rows in paper(demo(), "S1").data["appendix"].values())
    compared = paper(demo(), "S1", Asked(against=("eu-en-1808",))).data["appendix"]
    rows = [row for one in compared["comparison"] for row in one["rows"]]
    assert {row["rule"]["rule_set"] for row in rows} == {"us-osha-1926-subpart-l", "eu-en-1808"}
    assert compared["findings"] == []
    every = [row for one in worked(demo(), "S1")["comparison"] for row in one["rows"]]
    assert len(every) > len(rows)
    assert all(row["required"] is not None for row in every)


def test_an_appendix_with_worked_lines_shows_section_and_details_on_pages_of_their_own() -> None:
    titles = [one["title"] for one in worked(demo(), "S1")["sheets"]]
    assert titles == ["Section S1", "Details S1"]
    compared = paper(demo(), "S1", Asked(against=("eu-en-1808",))).data["appendix"]
    assert compared["sheets"] == []


def titles_of(line: dict[str, Any]) -> list[str]:
    """The checks of a line; those that say the same of the same are one line."""
    return str(line["title"]).split("; ")


def test_every_finding_that_passes_is_told_in_a_line() -> None:
    for review in reviews(demo(), ["S1", "W2"]):
        found = part(demo(), review.drop)
        lines = {title: one["lines"] for one in found["passed"] for title in titles_of(one)}
        shown = found["calculation"]["message"]["text"]
        passing = [one for one in review.findings if one.verdict is Verdict.PASS]
        assert len(passing) > 40
        for one in passing:
            text, of_check = say(one.message, review.units), lines.get(say_check(one.check), [])
            # Of a check that says more than one thing, whom it says them of.
            named = one.subject.removeprefix(review.drop).removeprefix("/")
            told = any(line["text"] == text for line in of_check) or text == shown
            assert told or any(not line["text"] and named in line["where"] for line in of_check)


def test_what_has_a_share_stands_in_a_line_of_its_own() -> None:
    for drop in ("S1", "W2"):
        for one in part(demo(), drop)["passed"]:
            assert len(titles_of(one)) == 1 or not any(line["share"] for line in one["lines"])


@pytest.mark.parametrize("drop", ["S1", "S3", "S5", "N1"])
def test_what_a_letter_answers_for_is_told_with_what_the_review_found(drop: str) -> None:
    (review,) = reviews(demo(), [drop])
    lines = [
        (title, name, line["text"])
        for one in part(demo(), drop)["settled"]
        for title in titles_of(one)
        for line in one["lines"]
        for name in line["where"].split(", ")
    ]
    open_findings = [
        (say_check(one.check), one.subject.partition("/")[2], say(one.message, review.units))
        for one in (review.findings[at] for at in settled(review))
    ]
    assert open_findings
    assert sorted(lines) == sorted(open_findings)


def test_the_calculation_is_the_governing_one_else_the_worst_of_strength() -> None:
    assert part(demo(), "S4")["calculation"]["verdict"] == "fail"
    anchors = part(demo(), "S2")["calculation"]
    assert (anchors["check"], anchors["verdict"]) == ("tipping", "pass")
    assert part(demo(), "T2")["calculation"]["check"] == "rope-strength"


def test_the_front_tells_every_drop_under_its_kind_of_reason() -> None:
    front = package(demo(), ["S1", "W1", "T1", "S5", "T2"]).data["front"]

    told = {group["head"]: [row["subject"] for row in group["rows"]] for group in front["reasons"]}
    assert told == {
        "Refused: nobody rides": ["W1, L, R", "W1, L/J1, R/J1"],
        "Open: nobody rides until it is settled": ["T1, R", "T1, L, R", "S5, L, R", "T2, L, R"],
        "Pass": ["S1"],
    }
    (passed,) = front["reasons"][-1]["rows"]
    assert passed["title"] == "9 topics taken over"


def test_the_contractor_the_designer_and_the_reviewer_are_three() -> None:
    facts = {one["name"]: one["text"] for one in package(demo(), ["S1"]).data["front"]["facts"]}
    assert facts["Contractor"] == "Callow Access (invented)"
    assert facts["Designed by"] == "D. Quill, qualified person"
    assert facts["Drawing"] == "CA-26-07, revision C"
    assert facts["Reviewed by"].startswith("J. Marlow, owner's engineer, Marlow & Tarn")
    assert facts["Reviewed for"] == "Harrier Court Residents' Association"


def test_what_nobody_stated_of_a_rig_is_said_so() -> None:
    bare = replace(demo(), plan=None, prepared_by=None)
    facts = {one["name"]: one["text"] for one in package(bare, ["S1"]).data["front"]["facts"]}
    names = ("Contractor", "Designed by", "Drawing", "Planned days", "Reviewed by")
    assert {facts[name] for name in names} == {"not stated"}


def test_strength_is_compared_with_strength_only() -> None:
    rows = {row["drop"]: row for row in package(demo(), ["S3", "T2"]).data["front"]["summary"]}
    assert rows["S3"]["strength"] == "99 % Counterweight against tipping"
    assert rows["S3"]["limit"] == "97 % Label of the beam"
    assert rows["T2"]["strength"] == "63 % Strength of the suspension rope"


def test_one_drop_needs_no_summary() -> None:
    assert package(demo(), ["S3"]).data["front"]["summary"] == []


def test_dimensions_are_told_as_planned_and_as_built() -> None:
    table = part(demo(), "S3")["dimensions"]
    reach = next(row for row in table["rows"] if row["name"] == "reach")
    assert (reach["planned"], reach["found"]) == ("4'-10\"", "5'-0\"")
    said = {one["mark"]: one["text"] for one in table["statements"]}
    assert said[reach["by"]] == "measured, J. Marlow, 2026-11-25"
    assert len(set(said.values())) == len(said)
    assert table["points"] == "L, R"
    pieces = next(row for row in table["rows"] if row["name"] == "pieces on the beam")
    assert pieces["found"].endswith("of 55 lb")


def test_where_points_differ_each_has_its_own_dimension() -> None:
    rows = {row["name"]: row["found"] for row in part(demo(), "T1")["dimensions"]["rows"]}
    assert rows["backspan, L"] == "11'-0\""
    assert rows["backspan, R"] == "not stated"
    assert "backspan" not in rows
    assert "reach" in rows


def test_a_rule_set_added_for_one_drop_names_it() -> None:
    basis = package(demo(), ["S1", "N1", "S5"]).data["front"]["basis"]

    assert {row["rule_set"]: row["drops"] for row in basis if row["drops"]} == {
        "eu-en-1808": "N1",
        "uk-bs-5974": "S5",
    }


def test_every_rule_value_cited_stands_once_in_the_list_with_its_source() -> None:
    found = worked(demo(), "N1")
    cited = {
        (rule["rule_set"], rule["description"])
        for finding in found["findings"]
        for rule in finding["rules"]
    }
    listed = [(row["rule_set"], row["description"]) for row in found["sources"]]

    assert sorted(listed) == sorted(cited)
    assert all(row["source"] for row in found["sources"])


def test_the_front_names_the_configuration_of_each_drop() -> None:
    names = ["S1", "T1"]
    assert package(demo(), names).data["front"]["configurations"] == [
        {"drop": one.drop, "configuration": one.configuration} for one in reviews(demo(), names)
    ]


def test_what_a_finding_needs_names_who_must_supply_it() -> None:
    found = worked(demo(), "T1")

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

    found = worked(project, "S1")

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
    found = worked(demo(), "N1")

    cited = [rule for finding in found["findings"] for rule in finding["rules"]]

    assert any(
        rule["mark_text"] == "memory, confirmed" and "J. Marlow" in rule["confirmed"]["text"]
        for rule in cited
    )


def test_dates_are_written_out() -> None:
    assert long_date(ON, ENGLISH) == "November 25, 2026"
    assert long_date(ON, language_of("es")) == "25 de noviembre de 2026"


def test_the_sheet_for_the_structural_engineer_has_a_row_for_each_stand() -> None:
    data = reactions_content(demo(), documents(demo(), ["S1", "S5"])).data
    assert [one["drop"] for one in data["reactions"]["drops"]] == ["S1", "S5"]
    rows = data["reactions"]["drops"][0]["rows"]
    assert [row["point"] for row in rows] == ["L", "", "R", ""]
    assert [one["factor"] for one in rows[0]["imposed"]] == ["4 × rated load", "1.5 × stall load"]
    assert [one["factor"] for one in rows[1]["imposed"]] == ["4 × idle", "1.5 × idle"]
    assert len(data["reactions"]["rules"]) == 2


def test_what_nobody_stated_is_a_dash_on_the_engineers_sheet() -> None:
    (document,) = documents(demo(), ["N2"])
    rows = reactions_content(demo(), [document], language_of("es")).data["reactions"]["drops"][0]
    assert rows["rows"][0]["imposed"][1]["load"] == "–"
