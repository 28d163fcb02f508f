"""Edges of the roofs as forms name them, and lengths as forms give them."""

from __future__ import annotations

from backspan.core.errors import quoted
from backspan.core.model.project import Project
from backspan.core.model.site import Edge, Roof
from backspan.core.model.walked import edge_length
from backspan.core.quantities import LENGTH, Length, QuantityError, display, parse
from backspan.web.pages.common import FormError


def edges_of(project: Project) -> tuple[tuple[str, str], ...]:
    """Every edge of the site as a choice."""
    return tuple(
        (
            f"{of.id}/{one.id}",
            f"{of.name}, edge {one.id}, {display(edge_length(one), LENGTH, project.units)}"
            + (f", over {one.faces}" if one.faces else ""),
        )
        for of in project.site.roofs
        for one in of.edges
    )


def edge_named(project: Project, name: str) -> tuple[Roof, Edge]:
    """The roof and edge of that name. Raises FormError where there is none."""
    for of in project.site.roofs:
        for one in of.edges:
            if f"{of.id}/{one.id}" == name:
                return of, one
    raise FormError(f"found no edge {quoted(name)}, expected one of a roof of the site")


def length_in(text: str, name: str, wrong: list[str]) -> Length | None:
    """The length that was written; None where it cannot be read, and what is wrong is added."""
    try:
        return parse(text, LENGTH)
    except QuantityError as error:
        wrong.append(f"{name}: {error}")
        return None
