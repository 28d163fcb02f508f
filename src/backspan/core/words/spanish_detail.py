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
    # the detail sheet: bearings, lines, schedule
    "legend_plate": "Placa, taco, pie",
    "bearing_front": "Apoyo delantero",
    "bearing_rear": "Apoyo trasero",
    "roof_surface": "Cubierta",
    "top_of_parapet": "Coronación del pretil",
    "surface_not_stated": "Superficie no declarada",
    "fulcrum_not_stated": "Fulcro no declarado",
    "stand_behind": "Caballete trasero",
    "pad_of": "Taco debajo: {sides}",
    "plate_of": "Placa: {sides}",
    "carries": "resiste {pressure}",
    "carries_not_stated": "lo que resiste no está declarado",
    "beam_type": "Viga, tipo {beam}",
    "section_shape": "perfil {shape}",
    "depth_not_stated": "canto no declarado",
    "deep": "{depth} de canto",
    "no_bearing": (
        "Ninguna viga de esta bajada apoya en la cubierta como este programa lo dibuja."
    ),
    "tieback_of": "Amarre {tieback}, punto {point}",
    "line_of": "Extremo superior del cable en {point}",
    "run": "recorrido: {run}",
    "softener_is": "cantonera: {found}",
    "ending": "extremo: {kind}",
    "clips": "grapas: {clips}",
    "clips_are": "{count}, separadas {spacing}, retorno {turnback}",
    "hardware_not_stated": "herrajes de unión no declarados",
    "no_hardware": "sin herrajes de unión",
    "line": "Línea",
    "kind": "Clase",
    "diameter": "Diámetro",
    "construction": "Composición",
    "termination": "Terminación",
    "clips_head": "Grapas",
    "length": "Longitud",
    "ends_at": "Termina en",
    "line_short": "Cable {point}",
    "tieback_short": "Amarre {tieback}",
    "lifeline_short": "Línea de vida {line}",
    "hardware_short": "Herraje {point}",
    "point_short": "punto {point}",
    "letters": ("La letra tras un valor dice cómo se sabe: {letters}; un guion: nadie dijo cómo."),
    "details": "Detalles {drop}",
    "details_name": "Detalles: bajada {drop}",
    "details_title": "{site}: detalles de la bajada {drop}",
    "details_told": (
        "Apoyos de la bajada {drop} en {site} a escala, sus líneas de extremo a extremo "
        "y su lista. Respuesta: {answer}."
    ),
    "details_scale": (
        "A escala: placas, tacos, canto de vigas y altura acotada. Lo demás no lo está."
    ),
    "lines_left_out": "Sin dibujar, por falta de sitio: {lines}.",
    # the plan of reactions
    "reaction_front": "{point} delante",
    "reaction_rear": "{point} detrás",
    "reaction_most": "máx. {load}",
    "reaction_factored": "x {factor} = {load}",
    "reactions_name": "Reacciones en la cubierta: {roof}",
    "reactions_sheet": "Reacciones {roof}",
    "reactions_title": "{site}: reacciones en {roof}",
    "reactions_told": "Planta de {roof} en {site}, a escala, con lo que presiona cada apoyo.",
    "reactions_read": (
        "Máx.: la mayor en servicio. Con factor: lo que piden las reglas de la tabla, que rige."
    ),
}
