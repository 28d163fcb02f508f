"""The page on the project file is true: its example loads and passes, its field list is current."""

from __future__ import annotations

import datetime
import re
from pathlib import Path

from backspan.core.findings import Verdict
from backspan.core.review import review
from backspan.core.words import counterweight
from backspan.exchange.files import load_rule_library
from backspan.exchange.parse import parse_project
from tools.write_project_file_page import page

DOCS = Path(__file__).resolve().parents[2] / "docs"
BLOCKS = re.compile(r"^```yaml\n(.*?)^```$", re.DOTALL | re.MULTILINE)


def test_the_example_on_the_page_loads_and_its_counterweight_holds() -> None:
    text = (DOCS / "project-file.md").read_text(encoding="utf-8")
    example, *others = BLOCKS.findall(text)
    (confirmations,) = (one for one in others if one.startswith("confirmations:"))
    project = parse_project(example + confirmations, "docs/project-file.md")

    found = review(project, "S1", load_rule_library(), on=datetime.date(2026, 11, 25))

    assert counterweight(found) is Verdict.PASS
    assert found.verdict is Verdict.MISSING
    assert any("\ntaken_over:" in one for one in others)
    assert project.confirmations[0].rule_set == "eu-en-1808"


def test_the_list_of_fields_is_what_the_model_says() -> None:
    assert (DOCS / "project-file-fields.md").read_text(encoding="utf-8") == page(), (
        "run: python tools/write_project_file_page.py"
    )
