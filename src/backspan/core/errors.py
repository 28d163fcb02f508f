"""The one base exception: whoever catches it catches every error the program means to raise."""

_LONGEST = 80


class BackspanError(Exception):
    """An error the program raises on purpose, with text fit for the person who has to mend it."""


def quoted(value: object) -> str:
    """What was found, in quotes for one line of a message; cut where it would flood the line."""
    text = repr(value)
    return text if len(text) <= _LONGEST else f"{text[:_LONGEST]}..."
