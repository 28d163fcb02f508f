"""YAML text to plain dicts, lists and text, with the place of everything in it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Any

from backspan.core.errors import quoted
from backspan.core.model.identifiers import Path
from backspan.exchange.parse.nodes import Kind, Limits, Node, read_nodes, refusal
from backspan.exchange.parse.problems import Place, Problem
from backspan.exchange.parse.text import checked, stranger_in

_NOTHING = ("", "~", "null", "Null", "NULL")
_LIMITS = Limits()
_LONGEST_KEY = 40
_YAML_TAG = "tag:yaml.org,2002:"


@dataclass(frozen=True, slots=True)
class Flaw:
    """A problem by the path of what it is about; its place is looked up when it is told.

    `at_key` points to the key in place of its value.
    """

    path: Path
    found: str
    expected: str
    place: Place | None = None
    at_key: bool = False


@dataclass(slots=True)
class Tree:
    """What a text holds: `data` of dict, list and str, and the place of each value and key."""

    origin: str
    data: dict[str, Any]
    places: dict[Path, Place] = field(default_factory=dict)
    keys: dict[Path, Place] = field(default_factory=dict)
    flaws: list[Flaw] = field(default_factory=list)

    def problem(self, flaw: Flaw) -> Problem:
        """`flaw` with its place: of the path itself, else of the nearest thing around it."""
        path = self.nearest(flaw.path)
        place = flaw.place or (self.keys[path] if flaw.at_key else self.places[path])
        text = path_text(path, self.data)
        return Problem(self.origin, place.line, place.column, text, flaw.found, flaw.expected)

    def nearest(self, path: Path) -> Path:
        """The longest part of `path` that is in the text."""
        while path and path not in self.places:
            path = path[:-1]
        return path

    def value(self, path: Path) -> Any:
        """What stands at `path`, which must be in the text."""
        value: Any = self.data
        for step in path:
            value = value[step]
        return value


def read_tree(text: str, origin: str, limits: Limits = _LIMITS) -> Tree:
    """The content of a YAML text whose scalars are all taken as text.

    Doubled keys, tags, merge keys, keys that are no text, and keys without a value are flaws of
    the tree. Raises ProjectError where the text cannot be read at all or crosses a limit.
    """
    root = read_nodes(checked(text, origin), origin, limits)
    if root is None:
        found = "nothing: the file is empty"
        raise refusal(Place(1, 1), origin, found=found, expected="`key: value` lines")
    if root.kind is not Kind.RECORD:
        kind = "a list" if root.kind is Kind.LIST else repr(root.text[:40])
        raise refusal(root.place, origin, found=kind, expected="`key: value` lines")
    tree = Tree(origin, {})
    tree.data = _data(root, (), tree)
    return tree


def path_text(path: Path, data: Any) -> str:
    """`path` as people read it: `drops[D3].rig`; by its id where an item of a list has one."""
    text = ""
    for step in path:
        data = _step(data, step)
        if isinstance(step, str):
            key = step if len(step) <= _LONGEST_KEY else f"{step[:_LONGEST_KEY]}..."
            text += f".{key}" if text else key
        else:
            name = data.get("id") if isinstance(data, dict) else None
            text += f"[{name}]" if isinstance(name, str) else f"[#{step + 1}]"
    return text


def _step(data: Any, step: str | int) -> Any:
    if isinstance(data, dict):
        return data.get(str(step))
    if isinstance(data, list) and isinstance(step, int) and step < len(data):
        return data[step]
    return None


def _data(node: Node, path: Path, tree: Tree) -> Any:
    tree.places[path] = node.place
    if node.tag is not None:
        tag = node.tag.replace(_YAML_TAG, "!!")
        tree.flaws.append(Flaw(path, f"the tag {tag}", "the value alone", node.place))
    if node.kind is Kind.LIST:
        return [_data(item, (*path, index), tree) for index, item in enumerate(node.items)]
    if node.kind is Kind.RECORD:
        return {name: _data(value, (*path, name), tree) for name, value in _pairs(node, path, tree)}
    stranger = stranger_in(node.text)
    if stranger is not None:
        expected = "characters that a person types and reads"
        tree.flaws.append(Flaw(path, f"the character {stranger}", expected, node.place))
    if not node.text.strip() or (node.plain and node.text in _NOTHING):
        expected = "a value; leave the key out where there is none"
        tree.flaws.append(Flaw(path, "nothing given", expected, node.place))
    return node.text


def _pairs(node: Node, path: Path, tree: Tree) -> Iterator[tuple[str, Node]]:
    """The keys and values of a record that can be kept; the others become flaws."""
    seen: set[str] = set()
    for key, value in zip(node.items[::2], node.items[1::2], strict=True):
        if key.kind is not Kind.SCALAR:
            kind = "a list" if key.kind is Kind.LIST else "a record"
            tree.flaws.append(Flaw((*path, ""), f"{kind} as a key", "text as a key", key.place))
        elif stranger_in(key.text) is not None:
            found = f"the character {stranger_in(key.text)} in a key"
            tree.flaws.append(Flaw((*path, ""), found, "text as a key", key.place))
        elif key.plain and key.text == "<<":
            expected = "every record written out; << is not read"
            tree.flaws.append(Flaw((*path, "<<"), "the merge key <<", expected, key.place))
        elif key.text in seen:
            own = (*path, key.text)
            first = tree.keys[own].line
            found = f"the key {quoted(key.text)} a second time"
            expected = f"each key once; the first stands in line {first}"
            tree.flaws.append(Flaw(own, found, expected, key.place))
        else:
            seen.add(key.text)
            tree.keys[*path, key.text] = key.place
            yield key.text, value
