"""From where a thing can be seen, by what is asked of it, in Spanish."""

from __future__ import annotations

_OVER_THE_EDGE = (
    "la plataforma bajo el borde, la cubierta junto al cable con línea de vida, o una ventana"
)

SEEN_FROM: dict[str, str] = {
    "rope_ends": (
        "la cubierta junto al soporte, el extremo de arriba; la plataforma o el nivel de abajo, el"
        " extremo de abajo"
    ),
    "lifeline": (
        "la cubierta junto a su anclaje, el extremo de arriba; la plataforma o el nivel de abajo,"
        " el extremo de abajo"
    ),
    "tieback": "la cubierta, siguiéndolo con la mano del soporte a aquello en que termina",
    "end_stop": "la plataforma, o el nivel de abajo",
    "thimble": "la cubierta junto al soporte, o la plataforma donde cuelga debajo de él",
    "termination_kind": "la cubierta junto al soporte",
    "attached": "la cubierta junto al soporte",
    "ends_on": "la cubierta, junto a aquello en que termina",
    "splices": (
        "la cubierta junto a su anclaje y luego la plataforma, pasando toda la línea por el"
        " anticaídas"
    ),
    "line_softener": _OVER_THE_EDGE,
    "tieback_softener": "la cubierta, a lo largo del amarre",
    "lifeline_softener": _OVER_THE_EDGE,
}
