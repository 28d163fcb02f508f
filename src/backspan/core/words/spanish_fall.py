"""Spanish sentences on what arrests a fall: lifeline, grab, lanyard, clearance."""

from __future__ import annotations

FALL: dict[str, str] = {
    "lifeline-way.pass": "Según el plano nada estorba el paso de la línea de vida {line}.",
    "lifeline-way.in-the-way": (
        "Según el plano la línea de vida {line} pasa sobre o alrededor de: {obstacles}."
    ),
    "need.lifeline-way": (
        "Mirar cómo pasa la línea de vida {line} por {obstacles}: llevarla por otro lado o"
        " protegerla ahí, y firmarlo."
    ),
    "na.line-not-placed": "No está declarado por dónde pasa el borde la línea de vida.",
    "roof-below.pass": (
        "El techo {roof} está {there} más abajo; el descenso llega a {down} con lo que queda libre."
    ),
    "roof-below.fail": (
        "El techo {roof} está solo {there} más abajo; el descenso y lo que se dijo libre debajo son"
        " {down}: una caída puede terminar en ese techo."
    ),
    "roof-below.missing": "No se sabe si el descenso termina por encima del techo {roof}.",
    "na.no-roof-below": "El plano no muestra ningún techo más bajo bajo el descenso.",
    "lifeline-strength.pass": (
        "La línea de vida resiste {strength} en su extremo; se piden {least}."
    ),
    "lifeline-strength.fail": (
        "La línea de vida solo resiste {strength} en su extremo; se piden {least}."
    ),
    "lifeline-strength.missing": "No se sabe cuánto resiste la línea de vida en su extremo.",
    "lifeline-rope.pass": "Cuerda de la línea de vida: {found}.",
    "lifeline-rope.fail": "Cuerda de la línea de vida: {found}, que no sostiene ninguna vida.",
    "lifeline-rope.refer": (
        "Cuerda de la línea de vida: {found}; si freno y absorbedor están hechos para ella no lo"
        " dice ninguna palabra."
    ),
    "need.lifeline-of-wire": (
        "Una línea de vida de cable: una persona cualificada dice que línea, freno y absorbedor de"
        " {line} están hechos unos para otros."
    ),
    "lifeline-rope.missing": "Nadie declaró de qué cuerda es la línea de vida.",
    "life-end-kind.pass": "La línea de vida acaba en: {found}.",
    "life-end-kind.fail": "La línea de vida acaba en: {found}; lo que sujeta esa cuerda: {listed}.",
    "life-end-kind.missing": "Nadie declaró con qué está hecho el extremo de la línea de vida.",
    "life-end-maker.pass": "El extremo de la línea de vida lo hizo: {found}.",
    "life-end-maker.fail": (
        "El extremo de la línea de vida lo hizo: {found}; quién puede: {listed}."
    ),
    "life-end-maker.missing": "Nadie declaró quién hizo el extremo de la línea de vida.",
    "life-end-fits.pass": (
        "El extremo de la línea de vida está hecho para {made_for}; la cuerda es de {diameter}."
    ),
    "life-end-fits.fail": (
        "El extremo de la línea de vida está hecho para {made_for}; la cuerda es de {diameter}: no"
        " sostiene esa cuerda."
    ),
    "life-end-fits.missing": (
        "No se declara para qué diámetro está hecho el extremo de la línea de vida, o el de su"
        " cuerda."
    ),
    "lifeline-grab.pass": "Encontrado: {found}.",
    "lifeline-grab.fail": "Freno en la línea de vida: {found}; puede no sujetar.",
    "lifeline-grab.missing": "Nadie declaró cómo está puesto el freno en la línea de vida.",
    "grab-height.pass": "El ocupante lleva el freno {found}.",
    "grab-height.fail": "El ocupante lleva el freno {found}: la caída libre crece con ello.",
    "grab-height.missing": "Nadie declaró a qué altura lleva el ocupante el freno.",
    "lifeline-swing.pass": "Encontrado: {found}.",
    "lifeline-swing.fail": "Encontrado: {found}. Una caída oscila y acaba más abajo.",
    "lifeline-swing.aside": (
        "Encontrado: {found}. La línea pasa el borde en {station}, al lado de la bajada: quien cae"
        " oscila."
    ),
    "lifeline-swing.far": (
        "Encontrado: {found}. En el paso {step}, en {stage}, no todos los que tienen su lugar"
        " quedan a {most} o menos de una línea propia: quien cae oscila."
    ),
    "lifeline-swing.missing": "Nadie declaró a qué distancia lateral de la línea se trabaja.",
    "rider-harness.pass": "Encontrado: {found}.",
    "rider-harness.fail": "Arnés o cabo: {found}. Queda fuera de uso.",
    "rider-harness.missing": "Nadie declaró si se miraron arnés y cabo.",
    "rider-hooks.pass": "Encontrado: {found}.",
    "rider-hooks.fail": "Ganchos y eslabones: {found}. Puede soltarse en una caída.",
    "rider-hooks.missing": "Nadie declaró cómo cierran los ganchos entre arnés y línea de vida.",
    "lifeline-low-end.pass": "Encontrado: {found}.",
    "lifeline-low-end.fail": "La línea de vida termina {found}: ahí el freno se sale.",
    "lifeline-low-end.missing": "Nadie declaró dónde termina abajo la línea de vida.",
    "lanyard-strength.pass": "Resiste {strength}; se pide {least}.",
    "lanyard-strength.fail": "El cabo resiste solo {strength}; se pide {least}.",
    "lanyard-strength.missing": "No se sabe cuánto resiste el cabo con sus ganchos.",
    "lifeline-splices.pass": "Encontrado: {found}.",
    "lifeline-splices.fail": ("Línea de vida bajo su extremo: {found}; el freno se detiene ahí."),
    "lifeline-splices.missing": "Nadie declaró si hay un nudo o un empalme en la línea de vida.",
    "lifeline-tied.pass": "El cabo del ocupante está unido {found}.",
    "lifeline-tied.fail": "El cabo del ocupante está unido {found}: cae con la plataforma.",
    "lifeline-tied.refer": (
        "El cabo del ocupante está unido {found}; si son tantas y tan resistentes como los cables"
        " de suspensión y se bloquean solas no lo dice ninguna palabra."
    ),
    "lifeline-tied.missing": "Nadie declaró a qué está unido el cabo del ocupante.",
    "need.tied-to-stage": (
        "Juzgar las líneas de soporte independientes y los bloqueos que sustituyen la línea de"
        " vida {line}, y firmarlo."
    ),
    "lifeline-overhead.pass": "Encima de los ocupantes de {stage}: {found}.",
    "lifeline-overhead.fail": (
        "Encima de los ocupantes de {stage}: {found}. Ahí una línea vertical no sujeta a nadie."
    ),
    "lifeline-overhead.refer": (
        "Encima de los ocupantes de {stage}: {found}. Ahí una línea vertical no cuenta."
    ),
    "lifeline-overhead.missing": "Nadie declaró qué hay encima de los ocupantes de {stage}.",
    "need.held-under": (
        "Cómo están sujetos los ocupantes bajo el segundo nivel de {stage} en lugar de {line}: ahí"
        " las líneas verticales no cuentan."
    ),
    "lifeline-ledge.pass": "En el recorrido de {stage}: {found}.",
    "lifeline-ledge.fail": "En el recorrido de {stage}: {found}. Se puede caer sobre ello.",
    "lifeline-ledge.refer": (
        "En el recorrido de {stage}: {found}. Sobre lo que hay ahí se puede caer, por encima de lo"
        " que queda libre abajo."
    ),
    "lifeline-ledge.missing": "Nadie declaró junto a qué pasa {stage}, sobre lo que se puede caer.",
    "need.past-ledge": (
        "Que una caída desde {stage} con {line} acaba por encima de todo lo que pasa, o cómo se"
        " sujeta ahí de otra manera a los ocupantes."
    ),
    "free-fall.pass": "El ocupante cae libremente {found} como mucho; se permiten {most}.",
    "free-fall.fail": "El ocupante cae libremente {found}; solo se permiten {most}.",
    "free-fall.missing": "No se sabe cuánto caería libremente el ocupante.",
    "deceleration.pass": "El absorbedor del cabo se abre {found}; se permiten {most}.",
    "deceleration.fail": "El absorbedor del cabo se abre {found}; solo se permiten {most}.",
    "deceleration.missing": "No se declara cuánto se abre el absorbedor del cabo.",
    "arrest-force.pass": "El cabo detiene con {found} como mucho; se permiten {most}.",
    "arrest-force.fail": "El cabo detiene con {found}; solo se permiten {most}.",
    "arrest-force.missing": "No se declara con qué fuerza detiene el cabo una caída.",
    "absorber.pass": (
        "Para detener a un ocupante de {rider} el absorbedor tiene que abrirse {needed}; se abre"
        " {found}."
    ),
    "absorber.fail": (
        "Para detener a un ocupante de {rider} el absorbedor tiene que abrirse {needed}; solo se"
        " abre {found}."
    ),
    "absorber.missing": "No se sabe si el absorbedor se abre bastante para detener a su ocupante.",
    "outside.force_left": (
        "El absorbedor se abre con no más que el peso del ocupante: no detiene a nadie. Mirar de"
        " nuevo su etiqueta."
    ),
    "line-angle.pass": (
        "De su anclaje al borde la línea de vida se desvía {off} de la perpendicular; se permiten"
        " {most}."
    ),
    "line-angle.fail": (
        "De su anclaje al borde la línea de vida se desvía {off} de la perpendicular, y se permiten"
        " {most}: se desliza por el borde, y quien cae oscila."
    ),
    "line-angle.missing": "Nadie declaró dónde pasa el borde la línea de vida.",
    "fall-clearance.pass": (
        "Una caída toma {needed} bajo los pies; el piso está a {there} sobre el nivel de abajo."
        " Una caída se detiene a tiempo desde {lowest}."
    ),
    "fall-clearance.fail": (
        "Una caída toma {needed} bajo los pies, y el piso baja hasta {there} sobre el nivel de"
        " abajo. Una caída solo se detiene a tiempo desde {lowest}."
    ),
    "fall-clearance.missing": (
        "No se puede calcular con lo declarado si una caída se detiene sobre el nivel de abajo."
    ),
}

INPUTS: dict[str, str] = {
    "grab": "cómo está puesto el freno en la línea de vida",
    "grab_height": "a qué altura lleva el ocupante el freno",
    "worker": "de quién es la línea de vida",
    "swing": "a qué distancia lateral de la línea de vida se trabaja",
    "harness": "estado de arnés y cabo",
    "hooks": "cómo cierran los ganchos entre arnés y línea de vida",
    "low_end": "dónde termina abajo la línea de vida",
    "lanyard_breaking_force": "fuerza de rotura del cabo con sus ganchos",
    "splices": "nudos y empalmes en la línea de vida",
    "tied_to": "a qué está unido el cabo del ocupante",
    "rope_kind": "de qué es la cuerda",
    "elongation": "alargamiento de la línea de vida por su longitud al detener una caída",
    "lanyard_length": "longitud del cabo",
    "deceleration": "cuánto se abre el absorbedor del cabo",
    "grab_slide": "cuánto desliza el freno antes de sujetar",
    "harness_shift": "cuánto ceden arnés y argolla D",
    "most_force": "mayor fuerza con que el cabo detiene el cuerpo",
    "clear_below": "del piso en el punto más bajo de la bajada al nivel de abajo",
}

WORDS: dict[str, str] = {
    "matched to the rope, right way up": "hecho para la cuerda, con el lado correcto arriba",
    "upside down": "al revés",
    "made for another rope": "hecho para otra cuerda",
    "no grab on it": "sin freno",
    "above the D-ring": "por encima de la argolla D",
    "level with the D-ring": "a la altura de la argolla D",
    "below the D-ring": "por debajo de la argolla D",
    "none below its end": "ninguno bajo su extremo",
    "worked close below it": "se trabaja cerca debajo de ella",
    "worked far to its side": "se trabaja lejos a un lado",
    "a swing would strike something": "una oscilación golpearía algo",
    "all lock by themselves, closed": "todos con traba propia, cerrados",
    "one does not lock by itself": "uno sin traba propia",
    "one open, bent or cracked": "uno abierto, doblado o agrietado",
    "below the lowest place": "por debajo del punto más bajo de la plataforma",
    "above the lowest place": "por encima del punto más bajo de la plataforma",
    "looked at and sound": "mirados y en buen estado",
    "worn or damaged": "gastados o dañados",
    "has arrested a fall": "han detenido una caída",
    "knotted": "con un nudo",
    "spliced": "con un empalme",
    "to this lifeline": "a esta línea de vida",
    "to the stage, with independent support lines": (
        "a la plataforma, con líneas de soporte independientes"
    ),
    "to the stage": "a la plataforma",
    "to a suspension rope": "a un cable de suspensión",
}

CHECKS: dict[str, str] = {
    "lifeline-strength": "Resistencia de la línea de vida",
    "lifeline-end": "Extremo de la línea de vida",
    "lifeline-ledge": "Sobre qué puede caer quien cuelga de la línea de vida",
    "lifeline-overhead": "Lo que hay encima de quien cuelga de la línea de vida",
    "lifeline-rope": "Cuerda de la línea de vida",
    "lifeline-grab": "Freno en la línea de vida",
    "grab-height": "Altura del freno",
    "lifeline-swing": "Oscilación al lado de la línea de vida",
    "rider-harness": "Arnés y cabo",
    "rider-hooks": "Ganchos del ocupante",
    "lifeline-low-end": "Extremo de abajo de la línea de vida",
    "lanyard-strength": "Resistencia del cabo",
    "lifeline-splices": "Nudos y empalmes en la línea de vida",
    "lifeline-tied": "A qué está unido el cabo",
    "deck-clear": "Franja de la fachada",
    "lifeline-way": "Paso de la línea de vida",
    "roof-below": "Un techo más bajo bajo el descenso",
    "lifeline-unit": "La cuerda misma de la línea de vida",
    "fall-clearance": "Caída libre, detención y altura libre",
}
