"""The reading of console blocks, on made-up pages."""

from __future__ import annotations

import pytest

from tests.docs.console import Command, commands, matches

PAGE = """\
# A page

```console
$ backspan ask reach load="1,000 lb" \\
    mass="50 lb"
reach  5'-0"
...
$ backspan review none.yaml
no such file
[exit 2]
```

```yaml
$ backspan is not typed here
```

1. In a list:

   ```console
   $ make demo
   ```
"""


def test_commands_are_read_with_what_they_print_and_their_status() -> None:
    assert list(commands(PAGE)) == [
        Command(
            4, 'backspan ask reach load="1,000 lb"     mass="50 lb"', ("reach  5'-0\"", "..."), 0
        ),
        Command(8, "backspan review none.yaml", ("no such file",), 2),
        Command(20, "make demo", (), 0),
    ]


@pytest.mark.parametrize(
    ("shown", "printed"),
    [
        (("a", "b"), "a\nb\n"),
        (("a", "b"), "a  \nb\n\n"),
        (("a", "..."), "a\nb\nc\n"),
        (("a", "..."), "a\n"),
        (("...", "c"), "a\nb\nc\n"),
        (("a", "...", "d"), "a\nb\nc\nd\n"),
        (("a", "...", "c", "...", "e"), "a\nb\nc\nd\ne\n"),
        (("...", "b", "..."), "a\nb\nc\n"),
        (("...", "a", "...", "a"), "a\nb\na\n"),
        (("...",), ""),
        ((), ""),
    ],
)
def test_what_is_shown_is_what_was_printed(shown: tuple[str, ...], printed: str) -> None:
    assert matches(shown, printed)


@pytest.mark.parametrize(
    ("shown", "printed"),
    [
        (("a",), "b\n"),
        (("a",), "a\nb\n"),
        (("b",), "a\nb\n"),
        (("a", "b"), "a\n"),
        (("a", "...", "a"), "a\n"),
        (("a", "...", "c"), "a\nb\n"),
        (("...", "c", "...", "b"), "b\nc\n"),
        (("a", " indented"), "a\nindented\n"),
        (("a",), ""),
        ((), "a\n"),
    ],
)
def test_what_is_shown_is_not_what_was_printed(shown: tuple[str, ...], printed: str) -> None:
    assert not matches(shown, printed)
