"""YAML text to nodes that know their place, with limits on everything that can grow.

The nodes are built from the parser's events by hand, so nothing here calls itself however deep
the text is nested, and a text beyond a limit is refused where it crosses it. Scalars stay text.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import Enum, auto
from typing import Any

import yaml

from backspan.exchange.parse.problems import Place, Problem, ProjectError
from backspan.exchange.parse.text import place_after


@dataclass(frozen=True, slots=True)
class Limits:
    """How far a text may go. `values` counts what it stands for once aliases are followed."""

    depth: int = 40
    aliases: int = 100
    values: int = 200_000


class Kind(Enum):
    """What a node is."""

    SCALAR = auto()
    LIST = auto()
    RECORD = auto()


@dataclass(slots=True)
class Node:
    """One scalar, list or record of the text.

    `items` are the items of a list, or key and value of a record in turns. `plain` marks a
    scalar without quotes; `values` and `depth` count what the node holds, aliases followed.
    """

    place: Place
    kind: Kind
    tag: str | None
    text: str = ""
    plain: bool = False
    items: list[Node] = field(default_factory=list)
    values: int = 1
    depth: int = 0
    open: bool = False


def read_nodes(text: str, origin: str, limits: Limits) -> Node | None:
    """The node of the one document in `text`, or None if it holds nothing.

    Raises ProjectError for text that is not YAML, a second document, and a limit crossed.
    """
    builder = _Builder(origin, limits)
    try:
        for event in yaml.parse(text, Loader=yaml.CBaseLoader):
            builder.take(event)
    except yaml.MarkedYAMLError as error:
        raise _not_yaml(error, text, origin) from error
    return builder.root


@dataclass(slots=True)
class _Builder:
    """The state of the walk over the events."""

    origin: str
    limits: Limits
    root: Node | None = None
    stack: list[Node] = field(default_factory=list)
    anchors: dict[str, Node] = field(default_factory=dict)
    documents: int = 0
    aliases: int = 0

    def take(self, event: Any) -> None:
        """One event of the parser."""
        if isinstance(event, yaml.ScalarEvent):
            self._add(self._scalar(event), event)
        elif isinstance(event, yaml.MappingStartEvent):
            self._open(Kind.RECORD, event)
        elif isinstance(event, yaml.SequenceStartEvent):
            self._open(Kind.LIST, event)
        elif isinstance(event, yaml.CollectionEndEvent):
            node = self.stack.pop()
            node.open = False
            self._add(node, event)
        elif isinstance(event, yaml.AliasEvent):
            self._add(self._alias(event), event)
        elif isinstance(event, yaml.DocumentStartEvent):
            self.documents += 1
            if self.documents > 1:
                raise self._refusal(event, "a second document", "one document in the file")

    def _scalar(self, event: Any) -> Node:
        plain = not event.style
        node = Node(_place(event.start_mark), Kind.SCALAR, event.tag, event.value, plain)
        if event.anchor is not None:
            self.anchors[event.anchor] = node
        return node

    def _open(self, kind: Kind, event: Any) -> None:
        node = Node(_place(event.start_mark), kind, event.tag, depth=1, open=True)
        if event.anchor is not None:
            self.anchors[event.anchor] = node
        self.stack.append(node)
        if len(self.stack) > self.limits.depth:
            raise self._too_deep(event)

    def _add(self, node: Node, event: Any) -> None:
        if not self.stack:
            self.root = node
            return
        parent = self.stack[-1]
        parent.items.append(node)
        parent.values += node.values
        parent.depth = max(parent.depth, node.depth + 1)
        if parent.values > self.limits.values:
            most = f"{self.limits.values:,} values, aliases followed"
            raise self._refusal(event, f"more than {most}", f"at most {most}")

    def _alias(self, event: Any) -> Node:
        self.aliases += 1
        if self.aliases > self.limits.aliases:
            most = f"{self.limits.aliases} aliases"
            raise self._refusal(event, f"more than {most}", f"at most {most}")
        node = self.anchors.get(event.anchor)
        if node is None:
            raise self._refusal(event, f"*{event.anchor}", f"&{event.anchor} before its first use")
        if node.open:
            raise self._refusal(event, f"*{event.anchor} inside itself", "an alias of another part")
        if len(self.stack) + node.depth > self.limits.depth:
            raise self._too_deep(event)
        return node

    def _too_deep(self, event: Any) -> ProjectError:
        depth = self.limits.depth
        return self._refusal(event, f"more than {depth} levels of nesting", f"at most {depth}")

    def _refusal(self, event: Any, found: str, expected: str) -> ProjectError:
        return refusal(_place(event.start_mark), self.origin, found=found, expected=expected)


def refusal(place: Place, origin: str, *, found: str, expected: str) -> ProjectError:
    """The error for one problem that ends the reading."""
    return ProjectError([Problem(origin, place.line, place.column, "", found, expected)])


def _place(mark: Any) -> Place:
    return Place(line=mark.line + 1, column=mark.column + 1)


_YAML = "YAML: `key: value` lines"
#: What usually stands behind the parser's own words.
_HINTS = (
    ("nesting depth", "fewer levels of nesting"),
    ("cannot start any token", "quotes round text that starts with @, ` or %"),
    ("mapping values are not allowed", "one `key: value` a line, keys of a record in one column"),
    ("could not find expected ':'", "`key: value`, with a space after the colon"),
    ("end of stream", "the closing quote; the file may be cut short"),
    ("',' or ']'", "the closing ]; the file may be cut short"),
    ("',' or '}'", "the closing }; the file may be cut short"),
    ("'-' indicator", "every item of the list with its - in one column"),
    ("block mapping", "keys of a record in one column; feet and inches without quotes: 5'-6 1/2\""),
    ("<document start>", "one document of `key: value` lines"),
)


def _not_yaml(error: yaml.MarkedYAMLError, text: str, origin: str) -> ProjectError:
    mark = error.problem_mark or error.context_mark
    if mark is None:
        return refusal(Place(1, 1), origin, found="text that is not YAML", expected=_YAML)
    words = ", ".join(part for part in (error.problem, error.context) if part)
    hint = next((hint for sign, hint in _HINTS if sign in words), _YAML)
    if text[mark.index : mark.index + 1] == "\t":
        words, hint = "a tab", "spaces; a tab cannot indent"
    written = text.rstrip()
    # What is missing at the end is missing where the last line ends, not in the line after it.
    place = place_after(written) if mark.index >= len(written) else _place(mark)
    return refusal(place, origin, found=f"text that is not YAML: {words}", expected=hint)
