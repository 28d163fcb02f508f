"""Files speak of the project alone: no machine's paths, no registry's host, nothing on the making.

The words are put together from pieces here, so that this file can be held to its own rule.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

import pytest

from tests.architecture.source import Offence
from tests.architecture.tracked import TextFile, text_files


def either(*pairs: tuple[str, str]) -> str:
    """A pattern for any of these words, each given in two pieces."""
    return "|".join(first + second for first, second in pairs)


HOSTS = either(
    ("py", r"pi\.org"),
    ("python", r"hosted\.(?:org|com)"),
    ("registry", r"\.npmjs"),
    ("npm", r"js\.(?:org|com)"),
    ("deb", r"\.debian\.org"),
    ("crates", r"\.io"),
    ("conda", r"\.anaconda\.org"),
)
#: At the start of a path: what stands before is no part of one.
MACHINE_PATHS = (
    r"(?<![\w.~/-])/(?:"
    + either(
        ("wo", r"rk(?![\w-])"),
        ("tm", r"p/"),
        ("ro", r"ot(?![\w-])"),
        ("ho", r"me/"),
        ("fa", r"rm/"),
        ("Us", r"ers/"),
        ("op", r"t/"),
    )
    + ")"
)
ON_THE_MAKING = (
    r"\b(?:"
    + either(
        ("trans", r"cripts?"),
        ("seed ", r"documents?"),
        ("CE", "O"),
        ("language ", r"models?"),
        ("LL", r"Ms?"),
        ("Chat", "GPT"),
        ("assis", r"tants?"),
        ("sub-?", r"agents?"),
        ("AI ", "(?:generated|assisted|written|session|agent)"),
        ("prompt ", r"engineering"),
        ("coding ", r"sessions?"),
    )
    + r")\b"
)
ISSUE_NUMBERS = (
    r"\((?:#\d+)\)|\b(?:"
    + either(
        ("issue", r"s?"),
        ("tick", r"ets?"),
        ("pull ", r"requests?"),
        ("fix", r"e[sd]"),
        ("clo", r"se[sd]?"),
    )
    + r")\s+#\d+\b"
)

FORBIDDEN = {
    "host of a package registry": re.compile(HOSTS, re.IGNORECASE),
    "path of a machine": re.compile(MACHINE_PATHS),
    "word on how the project was made": re.compile(ON_THE_MAKING),
    "number of an issue": re.compile(ISSUE_NUMBERS, re.IGNORECASE),
}


def unclean(file: TextFile) -> Iterator[Offence]:
    """Lines that name what no tracked file names."""
    for number, line in enumerate(file.text.splitlines(), start=1):
        for what, pattern in FORBIDDEN.items():
            hit = pattern.search(line)
            if hit:
                yield Offence(file.place, number, f"{what}: {hit.group()!r}")


def said(text: str) -> list[str]:
    """What the rule says about a made-up file."""
    return [offence.what for offence in unclean(TextFile("made-up.md", text))]


@pytest.mark.parametrize(
    ("pieces", "what"),
    [
        (("see https://py", "pi.org/simple"), "host of a package registry"),
        (("https://files.python", "hosted.org/x"), "host of a package registry"),
        (('"resolved": "https://registry', ".np", 'mjs.org/ws"'), "host of a package registry"),
        (("made in /wo", "rk/main"), "path of a machine"),
        (("write to /tm", "p/out"), "path of a machine"),
        (("`/ro", "ot`"), "path of a machine"),
        (('"/ho', 'me/somebody"'), "path of a machine"),
        (("as in the trans", "cript"), "word on how the project was made"),
        (("an assis", "tant wrote"), "word on how the project was made"),
        (("a language ", "model"), "word on how the project was made"),
        (("see issue", " #12"), "number of an issue"),
        (("Fix", "es #3"), "number of an issue"),
        (("the rope is shown (", "#3)"), "number of an issue"),
    ],
)
def test_what_no_file_names_is_seen(pieces: tuple[str, ...], what: str) -> None:
    assert [one.split(":")[0] for one in said("".join(pieces))] == [what]


@pytest.mark.parametrize(
    "text",
    [
        "the framework/roof plan, docs/work, out/tmp/x, a home/away match",
        "#10 AWG and 1000# and a colour #123456",
        "the rope goes to the roof; see 3/4 in",
        "https://www.apache.org/licenses/",
        "the work of a session on the roof; issue 5616 of the standard fixes 2 beams",
    ],
)
def test_what_files_may_say(text: str) -> None:
    assert said(text) == []


def test_the_place_is_told() -> None:
    text = "fine\n" + "/tm" + "p/x"
    assert [str(one) for one in unclean(TextFile("a.md", text))] == [
        "a.md:2: path of a machine: '/tm" + "p/'"
    ]


def test_files_speak_of_the_project_alone() -> None:
    places = [str(offence) for file in text_files() for offence in unclean(file)]
    assert not places, "\n".join(["not for a tracked file:", *places])
