from pathlib import Path
from typing import Any, NoReturn

import pytest

from backspan.core.errors import BackspanError
from backspan.exchange import files
from backspan.exchange.files import (
    FileError,
    load,
    load_confirmations,
    load_rule_library,
    write_bytes,
    write_text,
)
from backspan.exchange.parse import ProjectError
from tests.unit.exchange.sample import SAMPLE, changed, line_of


def refuse(*_: Any, **__: Any) -> NoReturn:
    raise PermissionError(13, "Permission denied")


def names(folder: Path) -> list[str]:
    return [path.name for path in folder.iterdir()]


def test_a_project_file_is_read(tmp_path: Path) -> None:
    path = tmp_path / "roof.yaml"
    path.write_text(SAMPLE, encoding="utf-8")
    assert load(path) == load(str(path))
    assert load(path).site.name == "A rig for cases"


def test_a_byte_order_mark_and_other_line_ends_change_nothing(tmp_path: Path) -> None:
    plain, other = tmp_path / "plain.yaml", tmp_path / "other.yaml"
    plain.write_bytes(SAMPLE.encode())
    other.write_bytes(b"\xef\xbb\xbf" + SAMPLE.replace("\n", "\r\n").encode())
    assert load(plain) == load(other)


def test_errors_name_the_file_as_it_was_given(tmp_path: Path) -> None:
    path = tmp_path / "roof.yaml"
    path.write_text(changed(("station: 1 ft", "station: 12")), encoding="utf-8")
    line = line_of("station: 1 ft")
    with pytest.raises(ProjectError, match=rf"roof\.yaml:{line}:20  drops\[D\]") as caught:
        load(path)
    assert str(caught.value).startswith(str(path))


def test_a_missing_file_is_told(tmp_path: Path) -> None:
    with pytest.raises(
        FileError, match=r"none\.yaml: no such file or folder; expected a text file"
    ):
        load(tmp_path / "none.yaml")
    with pytest.raises(FileError, match="no such file or folder"):
        load_confirmations(tmp_path / "gone" / "none.yaml")


def test_a_folder_is_no_file(tmp_path: Path) -> None:
    with pytest.raises(
        FileError, match="a folder; expected a text file that can be read"
    ) as caught:
        load(tmp_path)
    assert caught.value.path == tmp_path


def test_a_file_that_may_not_be_read_is_told(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = tmp_path / "roof.yaml"
    path.write_text(SAMPLE, encoding="utf-8")
    monkeypatch.setattr(Path, "open", refuse)
    with pytest.raises(FileError, match=r"roof\.yaml: permission denied; expected"):
        load(path)


def test_what_is_there_but_no_ordinary_file_is_not_opened(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = tmp_path / "pipe"
    path.touch()
    monkeypatch.setattr(Path, "is_file", lambda _: False)
    monkeypatch.setattr(Path, "open", refuse)
    with pytest.raises(FileError, match="pipe: no ordinary file; expected"):
        load(path)


@pytest.mark.parametrize("name", ["a\0b", "x" * 5000])
def test_a_name_that_no_file_can_have_is_told(name: str) -> None:
    with pytest.raises(FileError, match="expected a text file that can be read"):
        load(name)


def test_a_binary_file_is_refused(tmp_path: Path) -> None:
    path = tmp_path / "photo.yaml"
    path.write_bytes(b"\x89PNG\r\n\x1a\n\0\0\0\rIHDR")
    with pytest.raises(ProjectError, match=r"photo\.yaml:1:1\n    found the byte 0x89"):
        load(path)
    path.write_bytes(b"format: 1\n\0\0\0")
    with pytest.raises(ProjectError, match=r"photo\.yaml:2:1\n    found the character U\+0000"):
        load(path)


def test_a_huge_file_is_refused_without_reading_it_all(tmp_path: Path) -> None:
    path = tmp_path / "huge.yaml"
    with path.open("wb") as file:
        file.truncate(3_000_000_000)
    with pytest.raises(ProjectError, match="a file of more than 2,000,000 bytes"):
        load(path)


def test_an_empty_file_is_refused(tmp_path: Path) -> None:
    path = tmp_path / "empty.yaml"
    path.touch()
    with pytest.raises(ProjectError, match="found nothing: the file is empty"):
        load(path)


def test_confirmations_are_read(tmp_path: Path) -> None:
    path = tmp_path / "office.yaml"
    path.write_text(
        "confirmations:\n"
        "  - {rule_set: a, edition: b, value: c, by: EK, at: 2026-11-01, copy_seen: d}\n",
        encoding="utf-8",
    )
    (confirmation,) = load_confirmations(path)
    assert (confirmation.rule_set, confirmation.by) == ("a", "EK")


def test_the_rule_library_holds_every_rule_set_of_the_program_in_order() -> None:
    library = load_rule_library()
    keys = [(one.id, one.edition) for one in library.rule_sets]
    assert ("us-osha-1926-subpart-l", "1996") in keys
    assert keys == sorted(set(keys))
    shipped = Path(files.__file__).parents[1] / "rulesets"
    assert len(keys) == len(list(shipped.glob("*/*.toml")))


def test_a_file_is_written_whole_and_replaces_the_old_one(tmp_path: Path) -> None:
    path = tmp_path / "out.txt"
    write_text(path, "één\n")
    assert path.read_bytes() == "één\n".encode()
    write_bytes(path, b"\0\r\n")
    assert path.read_bytes() == b"\0\r\n"
    assert names(tmp_path) == ["out.txt"]


@pytest.mark.parametrize("step", ["os.fsync", "pathlib.Path.replace", "pathlib.Path.open"])
def test_a_write_that_fails_at_any_step_leaves_what_was_there(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, step: str
) -> None:
    path = tmp_path / "out.txt"
    path.write_bytes(b"old")
    with monkeypatch.context() as patched:
        patched.setattr(step, refuse)
        with pytest.raises(FileError, match=r"out\.txt: permission denied; expected a file that"):
            write_text(path, "new")
    assert path.read_bytes() == b"old"
    assert names(tmp_path) == ["out.txt"]


def test_a_write_that_is_interrupted_leaves_nothing(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def interrupt(_: int) -> NoReturn:
        raise KeyboardInterrupt

    monkeypatch.setattr("os.fsync", interrupt)
    with pytest.raises(KeyboardInterrupt, match=r"^$"):
        write_text(tmp_path / "out.txt", "new")
    assert names(tmp_path) == []


def test_a_file_is_not_written_over_a_folder_or_into_nowhere(tmp_path: Path) -> None:
    (tmp_path / "folder").mkdir()
    with pytest.raises(FileError, match="expected a file that can be written"):
        write_text(tmp_path / "folder", "x")
    with pytest.raises(FileError, match="no such file or folder"):
        write_text(tmp_path / "gone" / "out.txt", "x")
    assert names(tmp_path) == ["folder"]


def test_the_error_is_one_of_ours_and_a_system_error() -> None:
    assert issubclass(FileError, BackspanError)
    assert issubclass(FileError, OSError)
