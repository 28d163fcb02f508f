from __future__ import annotations

from tests.browser.spread import spread

NAMES = [f"a.py::test_many[{at}]" for at in range(7)]


def test_of_each_function_the_first_and_every_nth_case_are_chosen() -> None:
    assert spread(NAMES, every=3) == [NAMES[0], NAMES[3], NAMES[6]]


def test_a_function_without_cases_and_one_with_few_are_never_left_out() -> None:
    few = ["a.py::test_one", "b.py::test_many[x]", "b.py::test_many[y]"]
    assert spread([*NAMES, *few], every=20) == [NAMES[0], "a.py::test_one", "b.py::test_many[x]"]


def test_all_are_chosen_where_none_is_passed_over() -> None:
    assert spread(NAMES, every=1) == NAMES
