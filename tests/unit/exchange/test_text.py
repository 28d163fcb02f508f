import pytest

from backspan.exchange.parse.problems import ProjectError
from backspan.exchange.parse.text import MOST_BYTES, checked, decoded


def test_text_is_decoded_and_loses_its_byte_order_mark() -> None:
    assert checked(decoded(b"\xef\xbb\xbfa: \xc3\xa9\n", "a.yaml"), "a.yaml") == "a: é\n"


@pytest.mark.parametrize(
    ("content", "message"),
    [
        (b"a: 1\r\nb: \xff\n", "a.yaml:2:4\n    found the byte 0xFF, which is not UTF-8"),
        (b"\x89PNG\r\n\x1a\n", "a.yaml:1:1\n    found the byte 0x89, which is not UTF-8"),
        ("a: é\n".encode("latin-1"), "a.yaml:1:4\n    found the byte 0xE9"),
        ("a: 1\n".encode("utf-16"), "a.yaml:1:1\n    found the byte 0xFF"),
        (b"\xef\xbb\xbfa\xff", "a.yaml:1:2\n    found the byte 0xFF"),
    ],
)
def test_bytes_that_are_no_text_are_refused_with_their_place(content: bytes, message: str) -> None:
    with pytest.raises(ProjectError, match=message):
        decoded(content, "a.yaml")


def test_a_character_that_no_person_types_is_refused_with_its_place() -> None:
    with pytest.raises(ProjectError, match=r"a.yaml:2:3\n    found the character U\+FEFF"):
        checked("a: b\nc:\ufeff d\n", "a.yaml")


@pytest.mark.parametrize("text", ["a: 🏗\tb\x85\n", "a: 日本語\u2028\n", "ht: kòd\n"])
def test_text_of_any_language_is_text(text: str) -> None:
    assert checked(text, "a.yaml") == text


def test_the_size_is_counted_in_bytes() -> None:
    assert checked("x" * MOST_BYTES, "a.yaml")
    with pytest.raises(ProjectError, match="at most 2,000,000 bytes"):
        decoded(b"x" * (MOST_BYTES + 1), "a.yaml")
