"""The sample project of these tests, whole or with some of its text replaced."""

from pathlib import Path

SAMPLE = Path(__file__).with_name("sample.yaml").read_text(encoding="utf-8")


def changed(*replacements: tuple[str, str]) -> str:
    """The sample with each first text replaced, once, by the second."""
    text = SAMPLE
    for old, new in replacements:
        assert old in text, f"{old!r} is not in the sample"
        text = text.replace(old, new, 1)
    return text


def line_of(fragment: str, text: str = SAMPLE) -> int:
    """The line in which `fragment` first stands."""
    return text[: text.index(fragment)].count("\n") + 1
