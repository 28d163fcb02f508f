"""The joints of a drop's beams: each looked at, one more stated, one that is not there told so."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from django.http import HttpRequest, HttpResponse
from django.views.decorators.http import require_POST

from backspan.core.errors import quoted
from backspan.core.ledger import bodies
from backspan.core.ledger.document import Path
from backspan.core.ledger.entry_lines import drops_of
from backspan.core.ledger.fields import Stateable, rig_fields
from backspan.core.ledger.kinds import Body
from backspan.core.ledger.stop_list import known, wanted
from backspan.core.model.beams import BeamSplice
from backspan.core.model.project import Project
from backspan.core.model.rigs import CounterweightedBeam, Drop
from backspan.core.numbers import surely_above
from backspan.core.quantities import LENGTH, QuantityError, Style, display, parse
from backspan.web.pages.common import FormError, filled, go_on, state_of, the_drop
from backspan.web.pages.saying import found_now, refuse_since, say_placed
from backspan.web.shown import Shown, shown_value


@dataclass(frozen=True, slots=True)
class OneJoint:
    """A joint with what may be stated of it; `gone` where somebody looked for it in vain."""

    id: str
    gone: bool
    values: tuple[Shown, ...]


@dataclass(frozen=True, slots=True)
class BeamJoints:
    """The beam of a suspension point: whether it is of one piece, and its joints."""

    point: str
    beam: str
    like: str
    joined: tuple[Shown, ...]
    joints: tuple[OneJoint, ...]


def page(request: HttpRequest, name: str) -> HttpResponse:
    """How the beams of a drop are joined, beam by beam."""
    state = state_of(request)
    drop, project, review = the_drop(state, name), state.described, state.review(name)
    standing = next(one for one in state.day["drops"] if one["drop"] == name)
    shown = {
        one.path: shown_value(one, project, known(one, wanted(review)))
        for one in rig_fields(project, name)
        if _is_of_joints(one)
    }
    return filled(
        request,
        "joints.html",
        drop=drop,
        front=state.front(name),
        standing=standing,
        left=sum(item.open for item in state.stop_list(name)),
        beams=list(_beams(project, drop, shown)),
    )


@require_POST
def more(request: HttpRequest, name: str) -> HttpResponse:
    """State a joint that nobody knew of: how far from the tail it was found now."""
    state = state_of(request)
    drop, project = the_drop(state, name), state.described
    point, text = request.POST.get("point", ""), request.POST.get("from_tail", "").strip()
    support = dict(_supports(drop)).get(point)
    if support is None:
        there = ", ".join(one for one, _ in _supports(drop)) or "none"
        raise FormError(f"found no beam at {quoted(point)}, expected one of: {there}")
    at = (*_beam_at(name, point), "splices")
    refuse_since(request, state, lambda body: _is_about(body, at, name))
    away = _on_the_beam(text, support, project)
    joint = _next_id(support)
    body = bodies.NumberFound((*at, joint, "from_tail"), found_now(request, away, text))
    say_placed(request, state, body)
    return go_on("joints", name, at=f"{point}-{joint}")


def _on_the_beam(text: str, support: CounterweightedBeam, project: Project) -> float:
    try:
        away = parse(text, LENGTH)
    except QuantityError as error:
        raise FormError(f"The joint from the tail: {error}") from error
    beam = project.kit.beam(support.beam)
    long = None if beam is None or beam.length is None else beam.length.value
    if long is not None and surely_above(away, limit=long):
        raise FormError(
            f"The joint from the tail: found {display(away, LENGTH, project.units)}, expected less"
            f" than the beam is long, {display(long, LENGTH, project.units)}"
        )
    return away


def _next_id(support: CounterweightedBeam) -> str:
    """The mark of a further joint: none that one has, also of those that are not there."""
    taken, number = {one.id for one in support.splices}, len(support.splices) + 1
    while f"J{number}" in taken:
        number += 1
    return f"J{number}"


def _supports(drop: Drop) -> Iterator[tuple[str, CounterweightedBeam]]:
    for one in () if drop.rig is None else drop.rig.suspension_points:
        if one.counterweighted_beam is not None:
            yield one.id, one.counterweighted_beam


def _beam_at(drop: str, point: str) -> Path:
    return ("drops", drop, "rig", "suspension_points", point, "counterweighted_beam")


def _beams(project: Project, drop: Drop, shown: dict[Path, Shown]) -> Iterator[BeamJoints]:
    for point, support in _supports(drop):
        at = _beam_at(drop.id, point)
        of = {path[len(at) :]: one for path, one in shown.items() if path[: len(at)] == at}
        joints = tuple(
            OneJoint(
                one.id,
                one.absent,
                tuple(of[path] for path in of if _is_asked(path, one)),
            )
            for one in support.splices
        )
        joined = tuple(value for path, value in of.items() if path == ("joined",))
        yield BeamJoints(point, support.beam, _like(project), joined, joints)


def _is_asked(path: Path, joint: BeamSplice) -> bool:
    """Whether a value is of a joint; of one that is not there only whether it is."""
    return path[:2] == ("splices", joint.id) and (path[-1] == "there" or not joint.absent)


def _like(project: Project) -> str:
    return LENGTH.forms[0] if project.units is Style.US else LENGTH.forms[-1]


def _is_of_joints(one: Stateable) -> bool:
    return one.record == "beam_splice" or one.field == "joined"


def _is_about(body: Body, at: Path, drop: str) -> bool:
    """Whether an entry says something of the joints of a beam, or puts another in its place."""
    path = getattr(body, "path", ())
    anew = isinstance(body, bodies.RigSetUp | bodies.RigMoved | bodies.UnitExchanged)
    return path[: len(at)] == at or (anew and drop in drops_of(body))
