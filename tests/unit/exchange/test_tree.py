import itertools
import time

import pytest
import yaml

from backspan.exchange.parse.nodes import Limits
from backspan.exchange.parse.problems import Place, ProjectError
from backspan.exchange.parse.tree import path_text, read_tree


def only_flaw(text: str) -> str:
    tree = read_tree(text, "a.yaml")
    (flaw,) = tree.flaws
    return str(tree.problem(flaw))


def test_all_scalars_stay_the_text_they_were_written_as() -> None:
    text = "a: 010\nb: 1_000\nc: NO\nd: 2026-11-25\ne: 5:30\nf: 1e3\ng: [true, '5', \"6\"]\n"
    assert read_tree(text, "a.yaml").data == {
        "a": "010",
        "b": "1_000",
        "c": "NO",
        "d": "2026-11-25",
        "e": "5:30",
        "f": "1e3",
        "g": ["true", "5", "6"],
    }


def test_every_value_and_key_has_its_place_counted_from_one() -> None:
    tree = read_tree("a:\n  - b: x\n    é: [1, 22]\n", "a.yaml")
    assert tree.places == {
        (): Place(1, 1),
        ("a",): Place(2, 3),
        ("a", 0): Place(2, 5),
        ("a", 0, "b"): Place(2, 8),
        ("a", 0, "é"): Place(3, 8),
        ("a", 0, "é", 0): Place(3, 9),
        ("a", 0, "é", 1): Place(3, 12),
    }
    assert tree.keys["a", 0, "é"] == Place(3, 5)


@pytest.mark.parametrize("ending", ["\r\n", "\r"])
def test_lines_may_end_as_on_any_system(ending: str) -> None:
    text = "\ufeffa: 1\nb:\n  - c\n".replace("\n", ending)
    tree = read_tree(text, "a.yaml")
    assert tree.data == {"a": "1", "b": ["c"]}
    assert tree.places["b", 0] == Place(3, 5)


def test_an_alias_stands_for_what_its_anchor_names() -> None:
    tree = read_tree("a: &x {b: [1]}\nc: *x\n", "a.yaml")
    assert tree.data == {"a": {"b": ["1"]}, "c": {"b": ["1"]}}
    assert tree.places["c", "b", 0] == Place(1, 12)


@pytest.mark.parametrize(
    ("text", "message"),
    [
        (
            "a: 1\nb: 2\na: 3\n",
            (
                "a.yaml:3:1  a\n    found the key 'a' a second time\n"
                "    expected each key once; the first stands in line 1"
            ),
        ),
        ("a: !!str 3\n", "a.yaml:1:4  a\n    found the tag !!str\n    expected the value alone"),
        ("a: !x [3]\n", "a.yaml:1:4  a\n    found the tag !x\n    expected the value alone"),
        ("a: ! 3\n", "a.yaml:1:4  a\n    found the tag !\n    expected the value alone"),
        (
            "a: &x {b: c}\nd:\n  <<: *x\n",
            (
                "a.yaml:3:3  d\n    found the merge key <<\n"
                "    expected every record written out; << is not read"
            ),
        ),
        ("a: {[1]: 2}\n", "a.yaml:1:5  a\n    found a list as a key\n    expected text as a key"),
        ("? {a: b}\n: 2\n", "a.yaml:1:3\n    found a record as a key\n    expected text as a key"),
    ],
)
def test_what_yaml_can_say_and_a_project_cannot_is_a_flaw(text: str, message: str) -> None:
    assert only_flaw(text) == message


@pytest.mark.parametrize("nothing", ["", "~", "null", "Null", "NULL", "''", '" "'])
def test_a_key_without_a_value_is_a_flaw(nothing: str) -> None:
    assert "a.yaml:2:" in only_flaw(f"a: 1\nb: {nothing}\n")
    assert "found nothing given" in only_flaw(f"b: {nothing}\n")


def test_null_in_quotes_is_text() -> None:
    assert read_tree("a: 'null'\n", "a.yaml").flaws == []


def test_a_merge_key_in_quotes_is_text() -> None:
    assert read_tree("'<<': a\n", "a.yaml").data == {"<<": "a"}


REFUSED = [
    ("", "a.yaml:1:1\n    found nothing: the file is empty"),
    ("# only a remark\n", "a.yaml:1:1\n    found nothing: the file is empty"),
    ("- a\n", "a.yaml:1:1\n    found a list\n    expected `key: value` lines"),
    ("\nhello\n", "a.yaml:2:1\n    found 'hello'\n    expected `key: value` lines"),
    ("a: [1, 2\n\n", "a.yaml:1:9\n.*expected the closing \\]; the file may be cut short"),
    ("a: {b: 2", "a.yaml:1:9\n.*expected the closing }; the file may be cut short"),
    ("a: 'x\n", "a.yaml:1:6\n.*expected the closing quote; the file may be cut short"),
    ("a: 1\nb\n", "a.yaml:2:2\n.*expected `key: value`, with a space after the colon"),
    ("a: 1\n  b: 2\n", "a.yaml:2:4\n.*expected one `key: value` a line"),
    ("a: 1\n\tb: 2\n", "a.yaml:2:1\n    found text that is not YAML: a tab\n.*a tab cannot indent"),
    ("a: @b\n", "a.yaml:1:4\n.*expected quotes round text that starts with @"),
    ("a: '5'-6 1/2\"'\n", "a.yaml:1:7\n.*feet and inches without quotes: 5'-6 1/2\""),
    ("a:\n- b\n c\n- d\n x: 1\n", "a.yaml:5:3\n    found text that is not YAML"),
    ("a: 1\n---\nb: 1\n", "a.yaml:2:1\n    found a second document"),
    ("a: *x\n", "a.yaml:1:4\n    found \\*x\n    expected &x before its first use"),
    ("a: &x [*x]\n", "a.yaml:1:8\n    found \\*x inside itself"),
    ("a: 1\nb: \0\n", "a.yaml:2:4\n    found the character U\\+0000, which no text holds"),
    ("a: \x1b[1m\n", "a.yaml:1:4\n    found the character U\\+001B"),
    ("a: \ud800\n", "a.yaml:1:4\n    found the character U\\+D800"),
    ("%YAML 3.0\n---\na: 1\n", "a.yaml:1:.*\n    found text that is not YAML"),
]


@pytest.mark.parametrize(("text", "message"), REFUSED)
def test_a_text_that_cannot_be_read_is_refused_with_its_place(text: str, message: str) -> None:
    with pytest.raises(ProjectError, match=f"(?s)^{message}"):
        read_tree(text, "a.yaml")


LETTERS = "abcdefghij"
MULTIPLYING = "a: &a [x, x, x, x, x, x, x, x, x, x]\n" + "".join(
    f"{own}: &{own} [{', '.join([f'*{earlier}'] * 9)}]\n"
    for earlier, own in itertools.pairwise(LETTERS)
)
#: Each step goes one level into the one before: short text, deep meaning.
DEEPENING = "a1: &a1 [x]\n" + "".join(f"a{n}: &a{n} [*a{n - 1}]\n" for n in range(2, 60))

LIMITED = [
    (MULTIPLYING, "a.yaml:6:16\n    found more than 200,000 values, aliases followed"),
    (DEEPENING, "a.yaml:40:12\n    found more than 40 levels of nesting"),
    ("a: &x 1\nb: [" + "*x, " * 101 + "]\n", "found more than 100 aliases"),
    ("".join(" " * n + "a:\n" for n in range(1500)), "a.yaml:41:41\n    found more than 40 levels"),
    ("a: " + "[" * 40 + "]" * 40, "a.yaml:1:43\n    found more than 40 levels of nesting"),
    ("a: " + "[" * 1_900_000, "nesting depth.*\n    expected fewer levels of nesting"),
    ("a: " + "[" * 10_000_000, "a.yaml:1:1\n    found a file of more than 2,000,000 bytes"),
    ("a: " + "é" * 1_100_000, "a.yaml:1:1\n    found a file of more than 2,000,000 bytes"),
    ("- " * 900_000, "a.yaml:1:81\n    found more than 40 levels of nesting"),
    ("a: [" + "x," * 200_000 + "]", "found more than 200,000 values"),
]


@pytest.mark.parametrize(("text", "message"), LIMITED, ids=range(len(LIMITED)))
def test_a_text_beyond_a_limit_is_refused_soon(text: str, message: str) -> None:
    started = time.perf_counter()
    with pytest.raises(ProjectError, match=message):
        read_tree(text, "a.yaml")
    # What grows with every alias or level would take hours; a busy machine takes seconds.
    assert time.perf_counter() - started < 60


def test_a_text_at_its_limits_is_read() -> None:
    limits = Limits(depth=3, aliases=1, values=12)
    tree = read_tree("a: &x [[1, 2]]\nb: *x\n", "a.yaml", limits)
    assert tree.data == {"a": [["1", "2"]], "b": [["1", "2"]]}
    with pytest.raises(ProjectError, match="found more than 10 values"):
        read_tree("a: &x [[1, 2]]\nb: *x\n", "a.yaml", Limits(values=10))
    with pytest.raises(ProjectError, match="found more than 2 levels"):
        read_tree("a: &x [[1, 2]]\n", "a.yaml", Limits(depth=2))
    with pytest.raises(ProjectError, match="found more than 3 levels"):
        read_tree("a: &x [[1, 2]]\nb: [*x]\n", "a.yaml", Limits(depth=3))
    with pytest.raises(ProjectError, match="found more than 0 aliases"):
        read_tree("a: &x 1\nb: *x\n", "a.yaml", Limits(aliases=0))


def test_a_path_is_told_by_ids_where_there_are_any() -> None:
    data = {"drops": [{"id": "D3", "rig": {"lines": ["a", "b"]}}, {"x": "y"}]}
    assert path_text(("drops", 0, "rig", "lines", 1), data) == "drops[D3].rig.lines[#2]"
    assert path_text(("drops", 1, "x"), data) == "drops[#2].x"
    assert path_text(("k" * 500,), data) == "k" * 40 + "..."
    assert path_text((), data) == ""
    assert path_text(("a", 0, "b"), {"a": "x"}) == "a[#1].b"


def test_a_parser_that_cannot_say_where_still_gives_our_error(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    def lost(*_: object, **__: object) -> None:
        raise yaml.MarkedYAMLError

    monkeypatch.setattr("yaml.parse", lost)
    with pytest.raises(ProjectError, match=r"^a\.yaml:1:1\n    found text that is not YAML\n"):
        read_tree("a: 1", "a.yaml")
