"""From `name=value` words to typed values, every problem told at once."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import zip_longest

from backspan.core.ask.shape import Given, Kind, Parameter, QuestionError, Topic
from backspan.core.errors import quoted
from backspan.core.model.evidence import Sign
from backspan.core.quantities import Amount, QuantityError, parse
from backspan.core.review.naming import suggested

#: A name stands at the start or after a space and is followed by an equals sign.
_NAME = re.compile(r"(?:^|\s)(?P<name>[A-Za-z][\w-]*)\s*=")
_WHOLE = re.compile(r"\d{1,3}(?:,\d{3})+|\d{1,9}")


def read_values(topic: Topic, words: Sequence[str]) -> dict[str, Given]:
    """The values that `words` give, by parameter: "rated=1000 lb" or "rated=1000", "lb".

    Raises QuestionError with every problem: a name the topic does not take, a value given twice
    or not at all, a value that cannot be read.
    """
    problems: list[str] = []
    values: dict[str, Given] = {}
    for name, text in _pairs(" ".join(words), problems):
        parameter = topic.parameter(name)
        if parameter is None:
            names = [one.name for one in topic.parameters]
            expected = suggested(name, names, what="values it takes")
            problems.append(f"{topic.id} takes no {quoted(name)}; {expected}")
        elif name in values:
            problems.append(f"{name} is given twice; give it once")
        else:
            try:
                values[name] = _read(parameter, text)
            except QuestionError as error:
                problems += error.problems
                values[name] = text
    problems += [
        f"{one.name} is not given ({one.help}); write for example {one.name}={one.typed}"
        for one in topic.parameters
        if one.needed and one.name not in values
    ]
    if problems:
        raise QuestionError(*problems)
    return values


def _pairs(text: str, problems: list[str]) -> Iterator[tuple[str, str]]:
    found = list(_NAME.finditer(text))
    before = text[: found[0].start()] if found else text
    if before.strip():
        problems.append(f"found {quoted(before.strip())}, expected name=value, such as reach=4ft")
    for one, following in zip_longest(found, found[1:]):
        end = len(text) if following is None else following.start()
        yield one["name"].replace("_", "-").lower(), text[one.end() : end].strip()


def _read(parameter: Parameter, text: str) -> Given:
    name = parameter.name
    if not text:
        raise QuestionError(f"{name}= has nothing after it; write {name}={parameter.form}")
    if parameter.kind is Kind.WORD:
        return text
    if parameter.dimension is None:
        return _count(parameter, text)
    try:
        value = parse(text, parameter.dimension)
    except (QuantityError, OverflowError) as error:
        raise QuestionError(f"{name}: {error}") from error
    if not parameter.sign.allows(value):
        raise QuestionError(f"{name}: found {quoted(text)}, expected {parameter.sign}")
    return Amount(value, parameter.dimension)


def _count(parameter: Parameter, text: str) -> int:
    if _WHOLE.fullmatch(text) is None:
        found = f"{parameter.name}: found {quoted(text)}"
        raise QuestionError(f"{found}, expected a whole number such as 26")
    count = int(text.replace(",", ""))
    if count == 0 and parameter.sign is Sign.POSITIVE:
        raise QuestionError(f"{parameter.name}: found {quoted(text)}, expected {parameter.sign}")
    return count
