"""The fixed words of the papers of a site's record, in Spanish."""

from __future__ import annotations

SITE_PAPERS: dict[str, str] = {
    # the foot
    "entry_number": "anotación {place} del registro",
    "head_begins": "cabeza {head}",
    "whole_head": "Cabeza del registro en la anotación {place}:",
    "basis_code": "código de la base",
    "whole_site": "Toda la obra",
    "several_drops": "{count} bajadas, códigos en la última página",
    "one_drop": "bajada {drop}",
    "stated_not_sealed": (
        "Un nombre aquí es lo que alguien declaró en el registro, no una firma personal. Vale el"
        " registro; esto es una copia."
    ),
    # the tag
    "tag": "Etiqueta de aceptación",
    "nobody_on": "NADIE SUBE",
    "permitted": "PERMITIDO",
    "restricted": "RESTRINGIDO",
    "permitted_told": "Solo como se indica aquí, y solo tras la inspección de turno de ese día.",
    "nobody_told": "Hay un permiso en el registro, y esto está en contra:",
    "permitted_by": "Permitido por",
    "permitted_on": "Día del permiso",
    "most_riders": "Máximo de personas en la plataforma",
    "review_answered": "La revisión respondió",
    "restrictions": "Restricciones",
    "no_restriction": "ninguna declarada junto al permiso",
    "what_ends_it": "Qué lo termina",
    "ends_told": (
        "Todo cambio del montaje, una parada o una pausa: nadie sube, retirar esta etiqueta. Cada"
        " día vale solo con la inspección de turno de ese día, en el registro y abajo."
    ),
    "shift_checks": "Inspecciones de turno",
    "day": "Día",
    "fit": "Apto: sí / no",
    # the notice of a stop
    "stop_notice": "Aviso de parada",
    "stop_word": "ALTO",
    "why": "Por qué",
    "by_whom": "Por quién",
    "when": "Cuándo",
    "settles": "Qué lo resuelve",
    "who_lifts": "Quién puede levantarlo",
    "lift_permit": (
        "{who}, o quien actúe en su lugar: mira de nuevo y declara un permiso nuevo en el"
        " registro. Nadie de la empresa a la que pertenece el montaje."
    ),
    "lift_hold": (
        "Quien termine la pausa en el registro. Cada bajada necesita después otra inspección de"
        " turno."
    ),
    "lift_deficiency": (
        "Quien mire de nuevo, la encuentre arreglada y cierre la deficiencia en el registro. Si el"
        " permiso terminó, hace falta también uno nuevo."
    ),
    "lift_concern": "Quien nombre, en el registro, la prueba que la resuelve.",
    "who_permits": "Quien permite el uso por el propietario",
    "no_word_of_mouth": "Nadie lo levanta de palabra.",
    "more_reasons": "y {count} más en el registro",
    # the notice of a deficiency
    "deficiency": "Deficiencia",
    "deficiency_notice": "Aviso de deficiencia",
    "where": "Dónde",
    "what_is_wrong": "Qué está mal",
    "raised_by": "Señalada por",
    "mend_until": "A arreglar hasta",
    "use_forbidden": "USO PROHIBIDO hasta su cierre",
    "use_not_forbidden": "No prohíbe el uso",
    "is_closed": "CERRADA",
    "photographs": "Fotografías",
    "photograph": "Fotografía {number}",
    "not_shown": "Evidencia no mostrada aquí, por su SHA-256",
    "said_since": "En el registro desde entonces",
    "contractors_answer": "Respuesta del contratista",
    "done_told": "Qué se hizo, quién y con qué pieza",
    "company": "Empresa",
    "second_look": "El segundo examen",
    "seen_told": "Qué se encontró",
    "mended": "arreglada",
    "not_mended": "no arreglada: sigue abierta",
    # the sheet for the roof
    "roof_sheet": "Hoja de cubierta",
    "sheet_told": (
        "Escriba lo que encuentra, no lo previsto. Lo que no pudo ver queda en blanco: un blanco"
        " nunca vale como conforme. La letra fina es lo previsto, o lo hallado antes. Quien la"
        " pase al registro copia cada valor junto a su número."
    ),
    "sheet_code": "Hoja",
    "found_by": "Hallado por",
    "time": "Hora",
    "planned_value": "previsto {value}",
    "found_before": "hallado {value}, {by}",
    "from_papers": "Lo dicen los documentos del registro; aquí no se escribe nada.",
    "none_stated": "El montaje declarado no tiene nada de esto. Si ve algo, escríbalo abajo.",
    "remarks": "Observaciones, no se pasan como valores",
    "unit_like": "como {like}",
    "how_many": "cuántos",
}
