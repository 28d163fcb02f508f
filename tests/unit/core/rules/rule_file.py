"""A made-up rule file, whole and right, for tests to take apart."""

from __future__ import annotations

import re

import pytest

from backspan.core.rules.loader import load
from backspan.core.rules.shape import RuleError

HEAD = """\
format = 1
id = "made-up"
edition = "2001"
title = "A made-up text"
publisher = "Nobody"
jurisdiction = "Nowhere"
scope = "tests"
"""

PLAIN = """\
[tipping.rated-load]
kind = "factor on load"
description = "Four times the rated load."
factor = 4
load = "hoist rated load"
beam_weight = "no credit"
clause = "1(a)"
mark = "read"
source = "the paper"
"""

READINGS = """\
[tipping.any-load]
kind = "factor on load"
default = "one end"
description = "Two and a half times the load."
factor = 2.5
beam_weight = "no credit"
clause = "2"
mark = "memory"
source = "from memory"
note = "One end asks for more."
[tipping.any-load.readings."one end"]
load = "half the dead load and the full live load"
[tipping.any-load.readings."even"]
load = "half the dead load and half the live load"
beam_weight = "credited"
description = "Shared evenly."
clause = "2, example"
mark = "copy"
source = "a quotation"
"""

LIMIT = """\
[plausible.most-reach]
kind = "limit"
description = "A reach above this is looked at again."
value = "15 ft"
dimension = "length"
clause = "none"
mark = "practice"
source = "common practice, no source"
"""

WORDS = """\
[counterweight.accepted-fastening]
kind = "word list"
description = "How it is held."
words = ["bolted", "pinned"]
clause = "3"
mark = "copy"
source = "a quotation"
"""

REMARK = """\
[hoist.unknown-stall]
kind = "remark"
description = "What if it is not known."
text = "Ask the qualified person."
clause = "4"
mark = "read"
source = "a letter"
"""

SAMPLE = HEAD + PLAIN + READINGS + LIMIT + WORDS + REMARK

SHARED = ("description", "clause", "mark", "source")


def plain(content: str) -> str:
    """A whole file around the tables of one value."""
    return HEAD + content


def without(text: str, key: str) -> str:
    """The text less the line that gives a key; the line must be there."""
    less = re.sub(rf"^{key} = .*\n", "", text, count=1, flags=re.MULTILINE)
    assert less != text
    return less


def replaced(text: str, old: str, new: str) -> str:
    """The text with one part changed; the part must be there."""
    assert old in text
    return text.replace(old, new, 1)


def problems_of(text: str) -> list[str]:
    """What the loader says is wrong, a line each."""
    with pytest.raises(RuleError, match=r"(?s)^made-up\.toml: \d+ problems?:\n") as caught:
        load(text, "made-up.toml")
    return [line.strip() for line in str(caught.value).splitlines()[1:]]
