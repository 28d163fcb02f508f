"""What the program says of the record, in Spanish."""

from __future__ import annotations

STATES: dict[str, str] = {
    "planned": "prevista",
    "rigged": "montada",
    "connected": "conectada",
    "accepted": "aceptada",
    "in service": "en servicio",
    "stopped": "parada",
    "moving": "en traslado",
}

STATE_MEANINGS: dict[str, str] = {
    "planned": "Aquí no hay nada montado: nadie sube.",
    "rigged": (
        "Hay un montaje declarado, pero no se vieron conectadas todas sus líneas: nadie sube."
    ),
    "connected": (
        "Dos personas vieron conectadas todas las líneas; el uso aún no está permitido: nadie sube."
    ),
    "accepted": (
        "El uso está permitido, pero ninguna inspección de turno vale ahora: nadie sube antes de"
        " que la haya."
    ),
    "in service": (
        "Permitida, y hallada apta hoy: se sube solo como dice el permiso, y solo mientras no se"
        " nombre nada en contra."
    ),
    "stopped": "Nadie sube: hace falta un permiso nuevo y, tras él, la inspección de turno.",
    "moving": "Un montaje viene hacia aquí: nadie sube antes de que esté montado y revisado.",
}

EVENTS: dict[str, str] = {
    "a rig is set up and looked at": "se montó un equipo",
    "all lines are connected": "se conectaron todas las líneas",
    "a line counts as connected no longer": "una línea ya no cuenta como conectada",
    "use is permitted": "se permitió el uso de nuevo",
    "the shift check finds it fit": "la inspección de turno la halló apta",
    "the shift check finds it unfit": "la inspección de turno la halló no apta",
    "the configuration changes, or something it leans on": (
        "cambió el montaje, o algo en que se apoya"
    ),
    "use is stopped": "se paró el uso",
    "a hold begins": "empezó una pausa",
    "a hold ends": "terminó una pausa",
    "its rig is moved to another drop": "su montaje se trasladó a otra bajada",
    "a rig is on its way here": "viene hacia aquí otro montaje",
    "the day ends": "terminó el día",
}

REASONS: dict[str, str] = {
    # the table of states
    "nothing is rigged there": "Allí no hay nada montado. Montar el equipo, y revisarlo.",
    "its lines are not connected, seen by two people": (
        "Dos personas no han visto conectadas todas sus líneas. Conectarlas, y que ambas miren."
    ),
    "it is not accepted": (
        "El uso no está permitido. Primero el permiso; después la inspección de turno."
    ),
    "the rig was moved and has not been looked at again": (
        "El montaje se trasladó y nadie lo revisó desde entonces. Montarlo aquí, y revisarlo."
    ),
    # what stands against it
    "the one who signed it did not know of this entry": (
        "Quien firmó no conocía esto: {by}. Leerlo, mirar otra vez, y firmar de nuevo."
    ),
    "two statements differ and nobody has settled which holds": (
        "Dos declaraciones difieren, y esta es una de ellas: {by}. Quien haya leído ambas declara"
        " lo que es cierto."
    ),
    "this entry states something that has no place in the site": (
        "Esto declara algo que no tiene lugar en la obra: {by}. Corregirlo, y declarar lo cierto"
        " donde corresponde."
    ),
    "a deficiency that forbids use is open": (
        "Hay abierta una deficiencia que prohíbe el uso: {by}. Arreglarla, mirar otra vez, y"
        " cerrarla."
    ),
    "a concern about something of the rig is open": (
        "Hay abierta una duda: {by}. La resuelve una prueba con nombre; una reparación sola, no."
    ),
    "use is on hold": (
        "El uso está en pausa: {by}. Terminar la pausa; la inspección de turno se hace de nuevo."
    ),
    "it names another configuration than is there": (
        "El permiso nombra otra configuración que la que hay. Revisar el montaje como está, y"
        " permitir ese."
    ),
    "it names another basis than is in force": (
        "El permiso nombra otra base que la vigente. Revisar sobre esa, y permitir de nuevo."
    ),
    "the review it names is no pass": (
        "La revisión que nombra el permiso no cumple. Resolver lo que rechaza o deja abierto, y"
        " revisar de nuevo."
    ),
    "nobody accepts the rig of their own employer": (
        "Quien firmó el permiso trabaja para el contratista del montaje. Lo tiene que permitir otra"
        " persona."
    ),
    "there is no such line on the drop's rig": (
        "El montaje de la bajada no tiene esa línea. Nombrar una que cuelgue allí."
    ),
    "the second person is the one who signs": (
        "Para esta línea se nombra a una sola persona. Una segunda la tiene que ver conectada."
    ),
    "it was not written on the day that it is for": (
        "No se escribió el día para el que vale. Hacer la inspección en su propio día."
    ),
    "nobody who looked again found it mended": (
        "Nadie que mirara otra vez lo halló arreglado: {by}. Mirar otra vez, y cerrarla entonces."
    ),
    "there is no such thing": (
        "Habla de algo que no se conocía donde se escribió. Nombrar lo que hay."
    ),
    "no test is named": "No se nombra ninguna prueba. Nombrar la que resuelve la duda.",
    "what stops use, or happened, is not undone by a correction": (
        "Una corrección no deshace lo que para el uso, ni lo que ocurrió: {by}. Mirar otra vez, y"
        " permitir de nuevo."
    ),
    "no shift check of the day finds it fit": (
        "Ninguna inspección de turno del día la halla apta. Una persona competente mira antes de"
        " que nadie suba."
    ),
    "something it leans on has lapsed": (
        "Algo en que se apoya el permiso ha vencido: {by}. Renovarlo, revisar, y permitir de nuevo."
    ),
    "the review of the day refuses it": (
        "La revisión de hoy lo rechaza. Resolver lo que rechaza, y permitir de nuevo."
    ),
    "use was stopped": (
        "Se paró el uso: {by}. Resolver la causa, y permitir de nuevo; después la inspección de"
        " turno."
    ),
    "this entry ended the acceptance": (
        "Esto terminó el permiso: {by}. Revisar el montaje como está ahora, y permitir ese."
    ),
}

TITLES: dict[str, str] = {
    "site described": "descripción de la obra",
    "drop described": "descripción de una bajada",
    "anchor registered": "anclaje y sus documentos",
    "anchor inspected": "inspección de un anclaje",
    "anchor withdrawn": "retirada de un anclaje",
    "plan received": "plan del contratista",
    "unit registered": "elemento con su placa",
    "unit looked at": "examen de un elemento",
    "unit exchanged": "cambio de un elemento",
    "rig set up": "montaje como está",
    "rig moved": "traslado de un montaje",
    "work planned": "pasos del trabajo",
    "number found": "número medido o leído",
    "count found": "recuento",
    "word found": "observación",
    "line connected": "conexión de una línea",
    "topic taken over": "temas asumidos por escrito",
    "limits signed": "límites firmados",
    "deficiency raised": "deficiencia",
    "deficiency answered": "respuesta a una deficiencia",
    "deficiency re-inspected": "segundo examen de una deficiencia",
    "deficiency closed": "cierre de una deficiencia",
    "concern noted": "duda",
    "concern closed by a test": "prueba que cierra una duda",
    "use stopped": "parada del uso",
    "use permitted": "permiso de uso",
    "use restricted": "restricción del uso",
    "shift check": "inspección de turno",
    "hold begun": "pausa",
    "hold ended": "fin de una pausa",
    "paper issued": "documento emitido",
    "underlay laid": "plano bajo la planta",
    "correction": "corrección",
}

LINES: dict[str, str] = {
    "site described": "obra {name}, {place}: descritos edificio, personas, equipo y base",
    "drop described": "{where}: descrita, cubierta {roof}, borde {edge}",
    "anchor registered": "anclaje {anchor}, cubierta {roof}: registrado, {standing}",
    "anchor inspected": "anclaje {anchor}, cubierta {roof}: inspeccionado {inspected}, {standing}",
    "anchor inspected/certified": (
        "anclaje {anchor}, cubierta {roof}: inspeccionado {inspected}, {standing}, certificado del"
        " {certified}"
    ),
    "anchor withdrawn": "anclaje {anchor}, cubierta {roof}: retirado, nadie lo usa",
    "plan received": "{where}: recibido el plan de {contractor}",
    "plan received/drawing": "{where}: recibido el plan de {contractor}, plano {drawing}",
    "unit registered": "{kind} {unit}, tipo {of}: registro",
    "unit looked at": "{kind} {unit}, tipo {of}: examen, estado: {condition}",
    "unit exchanged": "{where}: {put_in} en lugar de {taken_out} ({path})",
    "rig set up": "{where}: montaje hecho y revisado, puntos de suspensión: {points}",
    "rig moved": "{where}: montaje trasladado a la bajada {to}",
    "work planned": "{where}: trabajo en la plataforma {stage}, paso a paso: {steps}",
    "number found": "{where}: {path}: {value}; {evidence}",
    "number found/named": "{where}: {input}: {value}; {evidence} ({path})",
    "count found": "{where}: {path}: {value}; {evidence}",
    "count found/named": "{where}: {input}: {value}; {evidence} ({path})",
    "word found": "{where}: {path}: {value}; {evidence}",
    "word found/named": "{where}: {input}: {value}; {evidence} ({path})",
    "line connected": "{where}: línea {line} conectada, vista por {signer} y {second}",
    "topic taken over": "{where}: {topics}; lo asume {person}, {document}, hasta el {until}",
    "limits signed": "{where}: límites con firma de {person}, {document}, hasta el {until}",
    "deficiency raised": "{where}: deficiencia {id} en {about}",
    "deficiency raised/forbids": "{where}: deficiencia {id} en {about}, uso prohibido",
    "deficiency answered": "deficiencia {id}: respondida",
    "deficiency re-inspected": "deficiencia {id}: examinada otra vez, no arreglada",
    "deficiency re-inspected/mended": "deficiencia {id}: examinada otra vez, arreglada",
    "deficiency closed": "deficiencia {id}: cerrada",
    "concern noted": "duda {id} sobre {about}",
    "concern closed by a test": "duda {id}: cerrada con una prueba, {test}",
    "concern closed by a test/none": "duda {id}: por cerrar, sin prueba nombrada",
    "use stopped": "{where}: uso parado",
    "use permitted": (
        "{where}: uso permitido, configuración {configuration}, base {basis}, revisión: {answer}"
    ),
    "use permitted/leaning": (
        "{where}: uso permitido, configuración {configuration}, base {basis}, revisión: {answer};"
        " se apoya en {documents}"
    ),
    "use restricted": "{where}: uso restringido",
    "shift check": "{where}: inspección de turno del {day}, no apta",
    "shift check/fit": "{where}: inspección de turno del {day}, apta",
    "hold begun": "{where}: pausa empezada",
    "hold ended": "{where}: pausa terminada, repetir la inspección de turno",
    "paper issued": "{where}: documento {name} emitido",
    "underlay laid": (
        "cubierta {roof}: plano {name} puesto bajo la planta por {places}; una tercera medida,"
        " {taped} con cinta, difiere en él {off}"
    ),
    "underlay laid/picture": (
        "cubierta {roof}: imagen {name} puesta bajo la planta por {places}; una tercera medida,"
        " {taped} con cinta, difiere en ella {off}"
    ),
    "correction": "anotación {entry}: no es así, ya no cuenta",
}

PHRASES: dict[str, str] = {
    "record-drop": "bajada {drops}",
    "record-drops": "bajadas {drops}",
    "record-site": "toda la obra",
    "record-said": "{line}: «{says}»",
    "record-until": "{line}, hasta el {until}",
    "record-written": "{number}, escrito como {text}",
    "record-si": "{value} en unidades SI",
    "record-revision": "{drawing}, revisión {revision}",
    "record-by-unknown": "sin nombrar",
    "record-beside": "{reason} Anotación: {by}.",
    "record-refused": "Sin efecto: {entry}. {reason}",
    "record-ended": "Permiso terminado, {event}: {permit}. Por: {by}.",
    "record-in-service": "{site}, {on}: {count} de {all} bajadas en servicio según el registro",
    "record-restricted": "Restringido: {line}.",
    "record-clock-ahead": "El reloj de {device} iba adelantado {by}: {entry}.",
    "record-clock-back": "El reloj de {device} retrocedió {by}: {entry}.",
}
