"""What inputs of the stage and its hoists are called in Spanish, and the words of the model."""

from __future__ import annotations

STAGE_INPUTS: dict[str, str] = {
    "tested_by": "si un laboratorio ensayó el aparejo",
    "secondary_brake": "freno del aparejo para exceso de velocidad",
    "control": "mando de los aparejos",
    "joints": "uniones y pasadores de la plataforma",
    "fixed": "fijación de la plataforma a sus estribos",
    "guardrail": "barandillas en todos los lados abiertos",
    "toeboard": "rodapiés en todos los lados abiertos",
    "face_side": "qué impide caer del lado de la fachada",
    "along": "en qué puede engancharse la plataforma",
    "sway": "qué impide que la plataforma se balancee",
    "first_lift": "primera subida desde el montaje",
    "hot_work": "soldadura o corte desde la plataforma",
    "overhead": "qué hay por encima de quienes suben",
    "listed": "homologación de la plataforma",
    "most_load": "personas y material como máximo según la placa de la plataforma",
    "rail_height": "altura del pasamanos sobre el piso",
    "to_face": "borde interior de la plataforma a la fachada",
}

STAGE_WORDS: dict[str, str] = {
    "tested by a qualified laboratory": "ensayado por un laboratorio cualificado",
    "not tested": "sin ensayar",
    "acts by itself on overspeed": "actúa solo con exceso de velocidad",
    "no second brake": "sin segundo freno",
    "tested and listed": "ensayada e inscrita",
    "not listed": "sin inscribir",
    "not of light metal": "no es de metal ligero",
    "each hoist its own": "cada aparejo el suyo",
    "both on one control, tested so": "los dos con un solo mando, ensayados así",
    "both on one control": "los dos con un solo mando",
    "nothing overhead": "nada por encima",
    "a second level or canopy, with support lines of its own": (
        "un segundo nivel o una marquesina, con cables de apoyo propios"
    ),
    "a second level or canopy": "un segundo nivel o una marquesina",
    "a rail on that side too": "una barandilla también de ese lado",
    "every rider tied": "cada persona amarrada",
    "neither rail nor tie": "ni barandilla ni amarre",
    "nothing along its way": "nada en su recorrido",
    "kept clear by guides": "apartada por guías",
    "something it has to be held off": "algo de lo que hay que apartarla",
    "tied against sway": "amarrada contra el balanceo",
    "not needed, evaluated": "no hace falta, evaluado",
    "tied to window cleaners' anchors": "amarrada a anclajes de limpiacristales",
    "held by suction cups": "sujeta con ventosas",
    "not tied": "sin amarrar",
    "lifted and held, both brakes": "subida y sostenida, los dos frenos",
    "not yet": "todavía no",
    "no hot work": "ni soldadura ni corte",
    "insulated and grounded": "aislada y puesta a tierra",
    "not insulated or not grounded": "sin aislar o sin poner a tierra",
}
