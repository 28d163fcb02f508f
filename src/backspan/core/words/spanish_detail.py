"""The fixed words of drawings for joints, softeners and details, in Spanish, by id."""

from __future__ import annotations

DETAILS: dict[str, str] = {
    # joints between the sections of a beam, softeners where a line passes an edge
    "joint": "Unión {joint}",
    "joint_from_tail": "Unión {joint} desde la cola",
    "joint_of": "Unión {joint} de {points}",
    "from_tail": "a {length} de la cola",
    "distance_not_measured": "distancia a la cola sin medir",
    "joint_pins": "pasadores: {pins}",
    "joint_marks": "marcas: {marks}",
    "joint_order": "tramos: {order}",
    "joints_not_stated": "De tramos: uniones no declaradas",
    "seen_by": "visto por {who}",
    "seen_by_nobody": "quién lo vio: no declarado",
    "legend_joint": "Unión de tramos",
    "softener": "Cantonera de {lines}: {found}.",
    "legend_softener": "Cantonera",
}
