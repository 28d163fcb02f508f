"""Why a drop is not in service, and why an entry had no effect, told with the thing it is about."""

from __future__ import annotations

import pytest

from backspan.core.ledger import bodies
from backspan.core.ledger.drop_states import Refusal
from backspan.core.ledger.reasons_in_words import say_ended, say_reason, say_refused
from backspan.core.ledger.standing import Why
from backspan.core.words import language_of
from tests.unit.core.ledger.histories import DROP, TOMORROW, History, in_service, permit
from tests.unit.core.ledger.writing import FOREMAN

SPANISH = language_of("es")


def told(history: History) -> list[str]:
    """Why the drop is not in service, in English."""
    return [say_reason(why, by) for why, by in history.standing().reasons]


def test_a_stop_names_what_stopped_it() -> None:
    history = in_service()
    history.says(bodies.UseStopped((DROP,), "cracked stirrup."), signer=FOREMAN)
    stopped = "drop D: use stopped - cracked stirrup"
    assert told(history) == [
        (
            f"Use was stopped: {stopped}. Settle the cause, and permit anew; the shift check comes"
            " after."
        ),
    ]
    (ended,) = history.standing().ended
    assert say_ended(ended) == (
        f"Permit ended, use was stopped: {say_permit(history)}. By: {stopped}."
    )
    assert say_ended(ended, SPANISH).startswith("Permiso terminado, se paró el uso: bajada D: ")


def say_permit(history: History) -> str:
    """The line of the permit that was given."""
    says = next(one.body for one in history.entries if isinstance(one.body, bodies.UsePermitted))
    return (
        f"drop D: use permitted, configuration {says.configuration}, basis {says.basis}, review:"
        " pass"
    )


def test_a_concern_and_a_hold_are_named() -> None:
    history = in_service()
    history.says(bodies.HoldBegun((), "gusts"))
    assert told(history)[0] == (
        "Use is on hold: whole site: hold begun - gusts. End the hold; the shift check is made"
        " again."
    )
    history.says(bodies.ConcernNoted("C-1", DROP, "a noise"))
    assert (
        "A concern is open: concern C-1 about D - a noise. A named test settles it; a repair alone"
        " does not."
    ) in told(history)


def test_a_new_day_asks_for_its_shift_check() -> None:
    (reason,) = in_service().standing(TOMORROW).reasons
    assert say_reason(*reason) == (
        "No shift check of the day finds it fit. A competent person looks before anybody rides."
    )
    assert say_reason(*reason, SPANISH).startswith("Ninguna inspección de turno del día")


def test_a_refused_entry_is_told_with_what_it_did_not_know() -> None:
    history = in_service()
    other = history.apart("phone")
    history.says(bodies.UseStopped((DROP,), "crack"))
    other.says(permit(other))
    history.gets(other)
    (refused,) = history.standing().refused
    assert refused.why is Why.UNSEEN
    said = say_refused(refused)
    assert said.startswith("No effect: drop D: use permitted, ")
    assert said.endswith(
        ". Whoever signed did not know of this: drop D: use stopped - crack. Read it, look again,"
        " and sign anew."
    )
    assert say_refused(refused, SPANISH).startswith("Sin efecto: bajada D: uso permitido, ")


@pytest.mark.parametrize("why", [*Why, *Refusal])
def test_no_reason_loses_the_entry_it_came_with(why: Why | Refusal) -> None:
    history = in_service()
    by = history.says(bodies.UseStopped((DROP,), "crack"))
    assert "drop D: use stopped - crack" in say_reason(why, by)
    assert "bajada D: uso parado: «crack»" in say_reason(why, by, SPANISH)
    assert "{" not in say_reason(why)
