"""The beam's section and strength in Spanish: its numbers, and what its formulas are called."""

from __future__ import annotations

INPUTS: dict[str, str] = {
    "label_load": "mayor carga nominal de aparejo que admite la etiqueta",
    "label_reach": "mayor voladizo que admite la etiqueta con esa carga",
    "label_backspan": "menor brazo trasero que admite la etiqueta con esa carga, 0 si no lo dice",
    "section_depth": "canto de la sección de la viga",
    "flange_width": "ancho de sus alas, o de un tubo",
    "web_thickness": "espesor de su alma",
    "flange_thickness": "espesor de sus alas",
    "wall": "pared de un tubo, la de cálculo",
    "yield_strength": "límite elástico del acero de la viga",
    "unbraced_length": "mayor longitud de viga entre lugares que la sujetan de lado y derecha",
}

FORMULAS: dict[str, str] = {
    "area_of_i": "Área de dos alas y un alma",
    "second_moment_of_i": "Momento de inercia de dos alas y un alma",
    "weak_second_moment_of_channel": (
        "Momento de inercia de un perfil en U, por el eje del alma, de alas más delgadas al borde"
    ),
    "torsion_of_channel": "Constante de torsión de un perfil en U",
    "warping_distance_of_channel": (
        "Distancia entre las alas de una doble T que se alabea como el perfil en U"
    ),
    "turning_radius_of_channel": "Radio con el que vuelca de lado un perfil en U",
    "slenderness_of_channel_flange": "Todo el ancho del ala de un perfil en U entre su espesor",
    "share_of_torsion_of_channel": (
        "Parte de la resistencia al vuelco de un perfil en U que viene de la torsión sola"
    ),
    "plastic_modulus_of_i": "Módulo plástico de dos alas y un alma",
    "weak_second_moment_of_i": "Momento de inercia de dos alas y un alma, por el eje del alma",
    "torsion_of_i": "Constante de torsión de placas delgadas en sección abierta",
    "area_of_tube": "Área de un tubo rectangular de esquinas redondas",
    "second_moment_of_tube": "Momento de inercia de un tubo rectangular de esquinas redondas",
    "plastic_modulus_of_tube": "Módulo plástico de un tubo rectangular de esquinas redondas",
    "torsion_of_tube": "Constante de torsión de un tubo rectangular delgado",
    "area_of_pipe": "Área de un tubo redondo",
    "second_moment_of_pipe": "Momento de inercia de un tubo redondo",
    "plastic_modulus_of_pipe": "Módulo plástico de un tubo redondo",
    "elastic_modulus": "Módulo elástico de una sección cuyo eje está a medio canto",
    "radius_of_gyration": "Radio de giro por el eje del alma",
    "weak_second_moment_by_radius": "Momento de inercia por el eje del alma, del radio de la tabla",
    "turning_radius": "Radio con el que vuelca de lado una viga doble T simétrica",
    "flanges_apart": "Distancia entre los medios de las alas",
    "slenderness_of_flange": "Medio ancho de un ala entre su espesor",
    "moment_of_plastic_section": "Momento con el que toda la sección fluye",
    "moment_at_the_edge": "Momento con el que la fibra extrema llega a una tensión",
    "length_still_plastic": "Mayor longitud sin sujeción con la que una doble T aún es plástica",
    "share_of_torsion": "Parte de la resistencia al vuelco que viene de la torsión sola",
    "length_elastic": "Longitud sin sujeción desde la que una doble T vuelca aún elástica",
    "inelastic_moment": "Momento de una viga entre las dos longitudes, no más que el plástico",
    "buckling_moment": "Momento con el que vuelca una doble T larga, no más que el plástico",
    "slenderness_compact": "Esbeltez hasta la que el ala deja que su sección sea plástica",
    "slenderness_noncompact_of_plates": (
        "Esbeltez desde la que pandea aún elástica un ala de placas, la que menos sujeta su alma"
    ),
    "slenderness_noncompact": "Esbeltez desde la que un ala pandea aún elástica",
    "flange_moment": "Momento con el que pandea un ala esbelta, no más que el plástico",
    "plastic_length_of_tube": "Mayor longitud sin sujeción con la que un tubo aún es plástico",
    "elastic_length_of_tube": "Longitud sin sujeción desde la que un tubo vuelca aún elástico",
    "buckling_moment_of_tube": "Momento con el que vuelca un tubo largo, no más que el plástico",
    "own_moment_outboard": "Momento sobre el apoyo de lo que pesa la viga por fuera de él",
    "own_moment_uneven": "Ese momento, con el centro de gravedad más cerca de la punta",
    "own_moment_between": "Lo que más pandea la viga por su peso entre apoyo y soporte trasero",
    "own_moment_behind": "Momento sobre el soporte trasero de lo que pesa la viga por detrás",
    "hogging_moment": "Momento sobre el apoyo, con el factor de la norma",
    "sagging_moment": "Momento bajo un contrapeso entre apoyo y soporte trasero, sin carga",
    "sagging_halfway": "Lo más que es ese momento: con el contrapeso a la mitad",
    "tail_moment": "Momento sobre el soporte trasero, con el contrapeso detrás, sin carga",
    "tip_deflection": "Cuánto baja la viga donde cuelga el cable, con la carga",
    "backspan_bow": "Cuánto se arquea la viga entre apoyo y contrapeso, con la carga",
    "allowed_moment": "Momento admitido en servicio",
}

SENTENCES: dict[str, str] = {
    "beam-four-times.pass": (
        "Cuatro veces la carga hace {moment} sobre el fulcro; la viga resiste {takes} antes de"
        " fluir o volcar."
    ),
    "beam-four-times.fail": (
        "Cuatro veces la carga hace {moment} sobre el fulcro; la viga fluye o vuelca con {takes}."
    ),
    "beam-service.pass": "La carga hace {moment} sobre el fulcro; se admite {takes}.",
    "beam-service.fail": "La carga hace {moment} sobre el fulcro; solo se admite {takes}.",
    "beam-idle.pass": "Sin carga, la pila dobla la viga con {moment}; se admite {takes}.",
    "beam-idle.fail": "Sin carga, la pila dobla la viga con {moment}; solo se admite {takes}.",
    "beam-moment.missing": "No se sabe qué dobla la viga, o qué resiste.",
    "beam-spliced.refer": "La viga no tiene carga asignada y es de tramos: deciden sus uniones.",
    "need.beam-spliced": "Calcular la viga {beam} con sus uniones para su cable, y firmarlo.",
    "beam-silent.refer": (
        "Ningún conjunto de reglas en vigor dice cómo se calcula una viga de acero."
    ),
    "need.beam-silent": (
        "Calcular la viga {beam} para su cable y firmarlo, o nombrar un texto para ello en la base."
    ),
    "beam-twists.refer": (
        "Solo a flexión, {takes} resiste {moment}. Pero la viga es un solo perfil en U: una carga"
        " al lado de su centro de cortante la tuerce sobre su propia longitud, y eso aquí no se"
        " juzga."
    ),
    "need.beam-twists": (
        "Calcular la viga {beam} para su cable, con la torsión de un solo perfil en U, y firmarlo."
    ),
    "note.held-upright": (
        "Se toma como sujeta contra el vuelco sobre su apoyo y donde se la retiene, lo que se"
        " pregunta de la viga como se encontró; entre ambos no se cuenta nada."
    ),
    "note.whole-beam": "Toda la viga se toma sin sujeción: nadie dijo qué la sujeta de lado.",
    "beam-aluminium.refer": (
        "La viga es de aluminio: si vuelca de lado, sus placas delgadas y su alma aquí no se"
        " juzgan."
    ),
    "need.beam-aluminium": (
        "Calcular la viga de aluminio {beam} con sus soldaduras para su cable, y firmarlo."
    ),
    "aluminium-holds.refer": (
        "Antes de fluir o romper, {takes} resiste {moment}. Pero si una viga de aluminio vuelca de"
        " lado o pandean sus placas delgadas aquí no se juzga."
    ),
    "note.maybe-welded": (
        "Se cuenta la resistencia junto a una soldadura: nadie dijo que no la hay sobre el fulcro."
    ),
    "na.no-aluminium": "La viga no se calcula como de aluminio.",
    "na.sections-joined": "La viga es de tramos unidos: deciden sus uniones.",
    "note.beam-bends": (
        "Ninguna regla limita cuánto se dobla la viga: por su sección sola, la carga nominal del"
        " aparejo baja {tip_down} el extremo del cable y la arquea {bow_up} hacia arriba por"
        " dentro del fulcro."
    ),
    "outside.other_shape": (
        "Las medidas de la viga no son las del perfil nombrado: averiguar cuál es."
    ),
    "outside.thin_plates": (
        "Las placas de la viga son tan delgadas que pandean antes de fluir: usar otra, o que un"
        " ingeniero le asigne carga."
    ),
    "section-under-label.refer": (
        "Por su sección la viga {beam} no aguantaría y por su etiqueta sí: puede que no sean de la"
        " misma viga."
    ),
    "need.section-under-label": (
        "Comparar la etiqueta y la sección de la viga {beam} con los papeles del fabricante, decir"
        " cuál vale y firmarlo."
    ),
    "na.rated-by-label": "La etiqueta del fabricante asigna carga a esta viga.",
    "section-unsaid.missing": (
        "De la sección de la viga solo hay medidas: no de qué es, o si es una doble T o una U."
    ),
    "no-rating.refer": (
        "La viga no tiene etiqueta ni sección declarada: lo que puede llevar no se juzga aquí."
    ),
    "need.no-rating": (
        "Decir qué puede llevar la viga {beam} con su voladizo y su brazo trasero, y firmarlo."
    ),
    "na.no-section": "No hay sección de la viga declarada.",
    "na.by-its-section": "Sin etiqueta de fabricante: la viga se calcula por su sección.",
    "label-load.pass": "El aparejo sube {load}; la etiqueta de la viga admite {most_load}.",
    "label-load.fail": "El aparejo sube {load}; la etiqueta de la viga solo admite {most_load}.",
    "label-load.missing": (
        "No consta qué carga nominal admite la etiqueta de la viga, o cuál tiene el aparejo."
    ),
    "label-reach.pass": (
        "Voladizo {reach}; la etiqueta de la viga admite {most_reach} con su carga."
    ),
    "label-reach.fail": (
        "Voladizo {reach}; la etiqueta de la viga solo vale hasta {most_reach}. Más allá no vale."
    ),
    "label-reach.missing": "No consta hasta qué voladizo admite la etiqueta su carga.",
    "label-backspan.pass": (
        "Brazo trasero {backspan}; la etiqueta de la viga pide {least_backspan}."
    ),
    "label-backspan.fail": (
        "Brazo trasero {backspan}; la etiqueta de la viga solo vale con {least_backspan} o más."
    ),
    "label-backspan.missing": "No se conoce el brazo trasero que pide la etiqueta, o el que hay.",
    "ask.beam-holds": (
        "Sobre el fulcro la carga hace {moment}, cuatro veces eso es {factored}; la viga resiste"
        " {nominal} antes de fluir o volcar, {allowed} en servicio."
    ),
    "ask.beam-over": (
        "Demasiado para la viga: la carga hace {moment} sobre el fulcro, cuatro veces eso es"
        " {factored}; resiste {nominal} antes de fluir o volcar, {allowed} en servicio."
    ),
    "ask.beam-thin": (
        "Sus placas son tan delgadas que pueden pandear antes de {nominal}: decide un ingeniero."
    ),
    "ask.beam-aluminium": (
        "Sobre el fulcro la carga hace {moment}, cuatro veces eso es {factored}; la aleación"
        " resiste {nominal} antes de fluir o romper, {allowed} en servicio. El vuelco de lado no se"
        " pregunta."
    ),
    "ask.need-of-aluminium": (
        "la viga de aluminio calculada por un ingeniero: vuelco, placas delgadas, soldaduras, alma"
    ),
    "note.aluminium-alone": (
        "Solo flexión en el borde de la sección de una aleación; si la viga vuelca de lado o"
        " pandean sus placas delgadas aquí no se calcula: nada pasa."
    ),
    "ask.need-of-channel": "la viga calculada con la torsión de un solo perfil en U, y firmada",
    "note.channel-twists": (
        "Un solo perfil en U además se tuerce sobre su propia longitud: aquí nada pasa."
    ),
    "note.label-first": (
        "La etiqueta o la tabla del fabricante va antes que esto; un equipo de tubos o de dos"
        " canales sin ella es cosa de un ingeniero."
    ),
    "note.one-section": (
        "Una sola sección de acero en toda la viga, alma vertical, sin agujeros, empalmes,"
        " soldaduras ni daños."
    ),
    "note.own-weight-left-out": (
        "Sin beam=... y beam-mass=... no se cuenta el peso propio por fuera, y nada pasa."
    ),
    "note.web-by-itself": (
        "Solo flexión: el alma sobre el fulcro, el cortante y los empalmes no se preguntan aquí."
    ),
    "note.whole-beam-unbraced": (
        "Nada sujeta la viga de lado entre su cable y su contrapeso, pues no se ha dicho."
    ),
    "note.without-fillets": "Por sus placas solas, sin los acuerdos de un perfil laminado.",
}

LABELS: dict[str, str] = {
    "beam-moment": "momento sobre el fulcro",
    "beam-takes": "momento que resiste antes de fluir o volcar",
    "beam-allowed": "momento admitido en servicio",
    "beam-longest-reach": "mayor voladizo con el que lleva cuatro veces la carga",
    "beam-tip-down": "el extremo del cable baja",
    "beam-bows-up": "la viga se arquea hacia arriba por dentro",
}

MENDS: dict[str, str] = {
    "beam-four-times.fail": "Acercar el cable, sujetar la viga de lado, o usar una más fuerte.",
    "beam-service.fail": "Acercar el cable, sujetar la viga de lado, o usar una más fuerte.",
    "beam-idle.fail": "Poner el soporte trasero bajo la pila, o usar una viga más fuerte.",
    "outside.other_shape": "Medir otra vez la viga y declarar el perfil que es.",
    "outside.thin_plates": "Usar otra viga.",
    "label-load.fail": (
        "Usar una viga que valga para el aparejo, o un aparejo menor; hacerlo revisar."
    ),
    "label-reach.fail": "Acercar el cable, o usar una viga que valga para este voladizo.",
    "label-backspan.fail": "Correr la pila atrás, o usar una viga que valga para este brazo.",
}

CHECKS: dict[str, str] = {
    "beam-strength": "Resistencia de la viga",
    "beam-aluminium": "Aluminio de la viga",
}
