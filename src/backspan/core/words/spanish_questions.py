"""What is said of a question of the roof and its answer, in Spanish, by id."""

from __future__ import annotations

SENTENCES: dict[str, str] = {
    "ask.not-known": "Según {rule_set}, esto no puede calcularse con lo que se da.",
    "ask.no-number": "{rule_set} no da ningún factor que pueda calcularse aquí.",
    "ask.most": "{input}: como máximo {value} ({factor} x {load}).",
    "ask.least": "{input}: como mínimo {value} ({factor} x {load}).",
    "ask.by-what-is-known": "{input}: {value} según lo que se conoce ({factor} x {load}).",
    "ask.open": (
        "{input}: {value} solo por la carga nominal, {there} si el aparejo se bloquea en lo máximo"
        " permitido, {stall}."
    ),
    "ask.open-ratio": (
        "{input}: {value} solo por la carga nominal, {there} si se bloquea en lo máximo permitido,"
        " {stall} x la nominal."
    ),
    "ask.open-none": (
        "{input}: {value} solo por la carga nominal, ninguno basta si el aparejo se bloquea en lo"
        " máximo permitido, {stall}."
    ),
    "ask.none": "{input}: ningún valor basta ({factor} x {load}).",
    "ask.any": "{input}: cualquiera de los probados basta, mirar de nuevo los números.",
    "ask.too-short": (
        "Viga demasiado corta: las {most} piezas que caben dan {held}; se exigen {required}."
    ),
    "ask.clips": (
        "Grapas: {least}, separadas al menos {apart}, con al menos {turned} de cable devuelto, cada"
        " una apretada con {makers}."
    ),
    "ask.share-only": "El aparejo izquierdo lleva {left}, el derecho {right}.",
    "ask.share-holds": (
        "El aparejo izquierdo lleva {left}, el derecho {right}; cada uno eleva {rated}."
    ),
    "ask.share-over": (
        "El aparejo izquierdo lleva {left}, el derecho {right}; ninguno eleva más de {rated}."
    ),
    "ask.share-slack": (
        "El aparejo izquierdo lleva {left}, el derecho {right}: el cable {side} queda flojo y la"
        " plataforma vuelca."
    ),
    "ask.lifeline": "Del anclaje al lugar más bajo la línea de vida mide {value}.",
    "ask.clearance-only": "Una caída ocupa {needed} bajo los pies.",
    "ask.clearance-too-far": "La caída libre es de {free}; solo se admiten {most}.",
    "ask.clearance-too-slow": "La frenada ocupa {slowed}; solo se admiten {most}.",
    "ask.clearance-in-time": (
        "Una caída ocupa {needed} bajo los pies; con la plataforma a {there} acaba a tiempo."
    ),
    "ask.clearance-too-late": (
        "Una caída ocupa {needed} bajo los pies; la plataforma está solo {there} sobre lo de abajo."
    ),
    "ask.sling-leg": "Cada uno de dos ramales a {angle} sobre la horizontal tira {value}.",
    "ask.sling-flat": (
        "Cada uno de dos ramales a {angle} sobre la horizontal tira {value}: más tendido de lo que"
        " se usa una eslinga."
    ),
    "ask.stretch": "El cable se alarga {value} como máximo.",
    "ask.out-of-level": ("Un extremo del andamio cuelga hasta {value} más abajo que el otro."),
    "ask.cord-enough": (
        "El cable eléctrico pierde {drop}, {lost} de la tensión, y deja {left} al subir todos y"
        " {start} al arrancar; el fabricante pide {least}."
    ),
    "ask.cord-low": (
        "El cable eléctrico deja {left} al subir todos; el fabricante pide {least} en el aparejo."
    ),
    "ask.cord-low-start": (
        "El cable eléctrico deja {start} al arrancar; el fabricante pide {least} en el aparejo."
    ),
    "ask.cord-nothing-left": "El cable eléctrico perdería {drop}, toda la tensión que hay.",
    "ask.cord-over": (
        "El cable eléctrico pierde {drop}, {lost} de la tensión; se admite {most_lost} como máximo."
    ),
    "ask.cord-over-practice": (
        "El cable eléctrico pierde {drop}, {lost} de la tensión, y deja {left} al subir todos; la"
        " práctica del oficio no pasa de {most_lost}."
    ),
    "ask.cord-drop": (
        "El cable eléctrico pierde {drop}, {lost} de la tensión, y deja {left} al subir todos."
    ),
    "ask.cord-longest": ("El cable eléctrico puede medir {value} como máximo, según lo que se da."),
    "ask.cord-no-length": (
        "Ningún cable eléctrico sirve: el fabricante pide {least} y hay {volts}."
    ),
    "ask.generator-enough": (
        "Los aparejos toman {running} al subir todos y {start} al arrancar; el generador da"
        " {given}, y {given_start} para un arranque."
    ),
    "ask.generator-low": ("Los aparejos toman {running} al subir todos; el generador da {given}."),
    "ask.generator-low-start": (
        "Los aparejos toman {start} al arrancar; el generador da {given_start} para un arranque."
    ),
    "ask.generator-open": (
        "Los aparejos toman {running} al subir todos; cuánto al arrancar no se da."
    ),
    "ask.formula": "{title}: {value}.",
    "stall.cap": (
        "Un aparejo de carga nominal {rated} puede tener una carga de bloqueo de {cap} como máximo."
    ),
    "stall.no-cap": "{rule_set} no pone tope a la carga de bloqueo.",
    "compare.range": "De {least} a {most} piezas, según la regla que rija.",
    "compare.none": "Ningún conjunto de reglas da un número con lo que se da.",
    # what is still needed
    "ask.need": "{input}, como {parameter}=...",
    # notes
    "ask.need-of-drop": (
        "la palabra del fabricante del aparejo de que funciona con un cable que pierde {lost}, o"
        " un cable más grueso"
    ),
    "note.resistance-alone": (
        "Solo la resistencia, con factor de potencia 1: la reactancia de un cable grueso queda"
        " fuera. Cables de cobre a 75 C."
    ),
    "note.table-of-gages": (
        "La resistencia del calibre se recuerda de una tabla; la medida o la del fabricante va"
        " antes."
    ),
    "note.same-least-at-start": (
        "Al arrancar se pide la misma tensión mínima; la corriente de arranque es la de la tensión"
        " plena."
    ),
    "note.all-start": (
        "Se supone que todos los aparejos arrancan a la vez; starting=... dice cuántos."
    ),
    "note.single-phase": "Monofásico: ida y vuelta por dos conductores.",
    "note.three-phase": (
        "Trifásico: tensión entre líneas, corriente en cada línea, con carga equilibrada."
    ),
    "note.cord-itself": (
        "Qué corriente admiten cable, enchufes e interruptor, y su protección, no se pregunta aquí."
    ),
    "note.cord-hangs": (
        "El peso del cable también cuelga: lo sujeta una mordaza arriba y en la plataforma, no el"
        " enchufe."
    ),
    "note.generator-rating": (
        "Todo lo demás conectado al generador se suma; la altitud y el calor le restan potencia."
    ),
    "note.generator-in-kw": "Una potencia en kW se toma como otros tantos kVA: menos no hay.",
    "note.start-by-rating": (
        "No se da su potencia de arranque: el arranque se compara con la que da sin límite."
    ),
    "note.asker-vouches": (
        "Aquí no se midió nada: quien pregunta responde de los valores. Una revisión juzga la"
        " evidencia."
    ),
    "note.one-beam": "Cada viga por sí sola; una plataforma de dos puntos tiene dos.",
    "note.one-line": "Cada línea por sí sola; del resto del herraje pregunta una revisión.",
    "note.pair-opposite": (
        "Un par va a lados opuestos de la viga: a un mismo lado nada se equilibra."
    ),
    "note.taut": (
        "Cada amarre se toma como tenso, tan resistente como el cable y en un anclaje sano: eso lo"
        " pregunta una revisión."
    ),
    "note.two-lines": (
        "Solo dos cables; se toma la mitad de lo que cuelga en cada uno. Quien camina se pregunta"
        " en ambos extremos."
    ),
    "note.from-the-feet": (
        "Desde los pies de quien sube; una caída al lado de la línea además oscila."
    ),
    "note.line-and-end": (
        "Hasta el lugar más bajo; su extremo sigue hasta donde alguien lo ve apoyado."
    ),
    "note.two-legs": (
        "Se toma que cargan dos ramales, por muchos que haya; práctica común, sin fuente."
    ),
    "note.new-rope": (
        "Un cable nuevo se alarga además una vez, de 0.5 a 1 % de su longitud, y así queda;"
        " práctica común, sin fuente."
    ),
    "note.as-stretched": ("Solo la carga: lo que pesa el cable lo alarga más, en ambos extremos."),
    "note.stall-besides": (
        "Un aparejo que se bloquea con más de lo que el cable resiste es también demasiado grande."
    ),
    "note.label": (
        "La etiqueta de la viga fija el máximo de piezas: sin etiqueta legible, no se usa."
    ),
    "note.moment-practice": "Práctica común, sin fuente: antes de cualquier factor.",
    "note.rounded-down": "Redondeado hacia abajo al último paso que basta.",
    "note.rounded-up": "Redondeado hacia arriba al primer paso que basta.",
    "note.stall-ratio": "La carga de bloqueo se toma como {stall_ratio} x la carga nominal.",
    "note.by-what-is-known": ("Según lo que se conoce: lo que aún falta puede cambiar el número."),
    "note.shift": (
        "Las piezas se quedan donde están: el voladizo crece y el brazo trasero mengua lo que se"
        " desplaza."
    ),
}

CAUTIONS: tuple[str, ...] = (
    "Esto apoya el juicio de una persona calificada o con licencia; no lo sustituye.",
    "Primero van los códigos locales, el manual del fabricante y el ingeniero del proyecto.",
    "Responde a una pregunta sobre una viga; no revisa el montaje.",
    "Parar, y hacer revisar el montaje, si algo en la cubierta difiere de lo que se dio.",
)

LABELS: dict[str, str] = {
    "required": "contrapeso necesario",
    "pieces-needed": "piezas necesarias",
    "pieces": "piezas dadas",
    "counterweight": "contrapeso dado",
    "factor-reached": "factor alcanzado",
    "governing": "rige",
    "most-stall": "carga de bloqueo máxima permitida",
    "stall-governs-above": "la carga de bloqueo rige por encima de",
    "most-reach": "voladizo máximo",
    "least-backspan": "brazo trasero mínimo",
    "most-rated": "carga nominal máxima",
    "most-stall-ratio": "relación de bloqueo máxima permitida",
    "inboard": "viga hacia dentro del fulcro",
    "stack-length": "longitud que ocupa la pila",
    "stack-centroid": "centro de la pila desde el extremo de la cola",
    "backspan": "brazo trasero",
    "reach": "voladizo",
    "backspan-after": "brazo trasero después",
    "reach-after": "voladizo después",
    "factor-before": "factor alcanzado antes",
    "factor-after": "factor alcanzado después",
    "most-that-fit": "máximo de piezas que caben",
    "moment": "momento de vuelco antes de cualquier factor",
    "stall-ratio": "carga de bloqueo entre carga nominal",
    "strength-at-end": "resistencia en el extremo del cable",
    "most-stall-held": "carga de bloqueo máxima que el cable resiste",
    "least-clips": "mínimo de grapas",
    "least-spacing": "separación mínima de las grapas",
    "least-turnback": "mínimo de cable devuelto",
    "least-torque": "par que pide el fabricante",
    "most-torque": "par máximo",
    "pull": "tiro del amarre",
    "pull-aside": "su tiro a través de la viga",
    "pull-down": "su tiro hacia abajo en la viga",
    "pull-other": "tiro del otro amarre",
    "pull-aside-other": "su tiro a través de la viga, al otro lado",
    "pull-down-other": "tiro del otro hacia abajo en la viga",
    "share-left": "aparejo izquierdo",
    "share-right": "aparejo derecho",
    "take-off-left": "lo que hay que quitar al menos del aparejo izquierdo, parte de una carga",
    "take-off-right": "lo que hay que quitar al menos del aparejo derecho, parte de una carga",
    "fall-takes": "una caída ocupa, bajo los pies",
    "in-time-from": "a tiempo desde una plataforma a",
    "lifeline-length": "línea de vida desde el anclaje hasta el lugar más bajo",
    "cord-drop": "tensión perdida al subir todos",
    "cord-left": "tensión que queda al subir todos",
    "cord-drop-start": "tensión perdida al arrancar",
    "cord-left-start": "tensión que queda al arrancar",
    "cord-drop-before": "tensión perdida al subir todos, sin lo añadido",
    "cord-length": "longitud del cable eléctrico",
    "cord-longest": "mayor longitud del cable según lo que se da",
    "cord-weight": "peso del cable eléctrico",
    "cord-current": "corriente al subir todos",
    "cord-current-start": "corriente al arrancar",
    "power-running": "toman al subir todos",
    "power-starting": "toman al arrancar",
    "leg-pull": "tiro en cada ramal",
    "leg-from-horizontal": "ángulo sobre la horizontal",
    "leg-from-vertical": "ángulo desde la vertical",
    "stretch": "alargamiento",
    "stretch-of-other": "alargamiento del otro cable",
    "out-of-level": "desnivel solo por alargamiento",
    "room-left": "espacio que queda en la viga",
}
