"""The beam's web in Spanish: what presses it, what it takes, and what its formulas are called."""

from __future__ import annotations

INPUTS: dict[str, str] = {
    "section_form": "forma de la sección de la viga",
    "section_material": "material de la viga",
    "bearing_length": "longitud de la viga que descansa en el fulcro",
}

FORMULAS: dict[str, str] = {
    "own_weight_outboard": "Peso propio de la viga por fuera del fulcro",
    "shear_outboard": "Cortante justo por fuera del fulcro, con el factor de la norma",
    "shear_inboard": "Mayor cortante por dentro del fulcro",
    "from_tip_end": "Del fulcro al extremo delantero de la viga",
    "from_tail_end": "Del soporte trasero al extremo trasero de la viga",
    "web_height": "Altura libre del alma entre acuerdos, o entre alas",
    "web_height_of_tube": "Parte plana del lado de un tubo",
    "slenderness_of_web": "Altura libre del alma entre su espesor",
    "slenderness_up_to": "Esbeltez hasta la que el alma es lo que dice la norma",
    "shear_of_web": "Cortante con el que fluye el alma de una doble T",
    "shear_of_tube": "Cortante con el que fluyen los dos lados de un tubo",
    "shear_stress_of_pipe": "Tensión cortante con la que fluye o pandea un tubo redondo",
    "shear_of_pipe": "Cortante que resiste un tubo redondo",
    "web_yields": "Fuerza en un ala con la que fluye el alma, lejos del extremo",
    "web_yields_at_end": "Fuerza en un ala con la que fluye el alma, cerca del extremo",
    "web_cripples": "Fuerza en un ala con la que se arruga el alma, lejos del extremo",
    "web_cripples_at_end": "Fuerza en un ala con la que se arruga el alma, cerca del extremo",
    "sideways_slenderness": "Esbeltez del alma entre la de su ala sin sujetar",
    "web_sideways": "Fuerza en un ala con la que el alma pandea de lado",
    "allowed_force": "Fuerza admitida en servicio",
}

SENTENCES: dict[str, str] = {
    "web-shear-four.pass": (
        "Cuatro veces la carga hace un cortante de {force} por fuera del fulcro; el alma resiste"
        " {takes} antes de fluir."
    ),
    "web-shear-four.fail": (
        "Cuatro veces la carga hace un cortante de {force} por fuera del fulcro; el alma fluye con"
        " {takes}."
    ),
    "web-shear.pass": (
        "La carga hace un cortante de {force} por fuera del fulcro; se admite {takes}."
    ),
    "web-shear.fail": (
        "La carga hace un cortante de {force} por fuera del fulcro; solo se admite {takes}."
    ),
    "web-inboard.pass": (
        "Contrapeso y viga hacen a lo más un cortante de {force} por dentro del fulcro; se admite"
        " {takes}."
    ),
    "web-inboard.fail": (
        "Contrapeso y viga pueden hacer un cortante de {force} por dentro del fulcro; solo se"
        " admite {takes}."
    ),
    "web-bears-four.pass": (
        "Cuatro veces lo que lleva el fulcro aprieta el alma con {force}; ahí resiste {takes} antes"
        " de ceder."
    ),
    "web-bears-four.fail": (
        "Cuatro veces lo que lleva el fulcro aprieta el alma con {force}; ahí cede con {takes}."
    ),
    "web-bears.pass": "El fulcro aprieta el alma con {force}; se admite {takes}.",
    "web-bears.fail": "El fulcro aprieta el alma con {force}; solo se admite {takes}.",
    "web-rear.pass": (
        "Sin carga, el soporte trasero aprieta el alma con {force}; se admite {takes}."
    ),
    "web-rear.fail": (
        "Sin carga, el soporte trasero aprieta el alma con {force}; solo se admite {takes}."
    ),
    "web-twists-held.refer": (
        "Está sujeta de lado tan cerca que su alma queda derecha. Pero la viga es un solo perfil en"
        " U, cuyas alas apoyan a un lado del alma, y eso no se juzga aquí."
    ),
    "web-twists.refer": (
        "De pie, el alma resiste {takes} frente a {force}. Pero la viga es un solo perfil en U,"
        " cuyas alas apoyan a un lado del alma, y eso aquí no se juzga."
    ),
    "web-force.missing": "No se sabe qué aprieta el alma de la viga, o qué resiste.",
    "web-wall.refer": (
        "Aquí no se juzga si la pared de un tubo resiste lo que la aprieta sobre sus apoyos."
    ),
    "need.web-wall": (
        "Calcular la pared de la viga {beam} donde descansa en el fulcro y en el soporte trasero y"
        " donde cuelga su cable, y firmarlo."
    ),
    "note.no-bearing-length": (
        "No se cuenta ninguna longitud de apoyo en el fulcro: nadie dijo cuánto de la viga descansa"
        " en él."
    ),
    "note.web-not-asked": ("No se pregunta: el alma donde cuelga el cable y donde está la pila."),
    "sideways-four.pass": (
        "Cuatro veces lo que lleva el fulcro aprieta el alma con {force}; pandea de lado con"
        " {takes}."
    ),
    "sideways-four.refer": (
        "Cuatro veces lo que lleva el fulcro aprieta el alma con {force}; entre alas que nada"
        " sujeta puede pandear de lado con {takes}."
    ),
    "sideways-service.pass": (
        "El fulcro aprieta el alma con {force}; se admite {takes} antes de que pandee de lado."
    ),
    "sideways-service.refer": (
        "El fulcro aprieta el alma con {force}; entre alas que nada sujeta solo se admite {takes}"
        " antes de que pueda pandear de lado."
    ),
    "sideways-held.pass": (
        "La viga está sujeta de lado tan cerca que su alma no pandea sobre el fulcro."
    ),
    "sideways.missing": "No se sabe si el alma de la viga pandea de lado sobre su fulcro.",
    "need.sideways": (
        "Decir cómo se sujetan las dos alas de la viga {beam} sobre su fulcro, o que su alma está"
        " rigidizada ahí, y firmarlo."
    ),
    "na.no-open-web": "No hay alma entre dos alas.",
    "outside.unbraced": (
        "Entre lo que la sujeta la viga no puede ser más corta que su voladizo, pues su punta está"
        " libre: medirla otra vez."
    ),
    "outside.thin_web": (
        "El alma de la viga es tan delgada que pandea por cortante antes de fluir: usar otra, o que"
        " un ingeniero le asigne carga."
    ),
    "outside.no_flange": "Las medidas no dejan ala al lado del alma de la viga: medirlas otra vez.",
    "outside.no_web": "Las medidas no dejan alma entre las alas de la viga: medirlas otra vez.",
}

MENDS: dict[str, str] = {
    "web-shear-four.fail": "Usar una viga de alma más gruesa, o un aparejo menor.",
    "web-shear.fail": "Usar una viga de alma más gruesa, o un aparejo menor.",
    "web-inboard.fail": "Usar una viga de alma más gruesa.",
    "web-bears-four.fail": "Declarar cuánto de la viga descansa en el fulcro, o usar otra viga.",
    "web-bears.fail": "Declarar cuánto de la viga descansa en el fulcro, o usar otra viga.",
    "web-rear.fail": "Alejar el soporte trasero del extremo de la viga, o usar otra viga.",
    "outside.thin_web": "Usar otra viga.",
    "outside.no_flange": "Medir otra vez la viga.",
    "outside.no_web": "Medir otra vez la viga.",
    "outside.unbraced": "Medir otra vez entre qué está sujeta la viga; su punta está libre.",
}

CHECKS: dict[str, str] = {
    "beam-web": "Alma de la viga",
    "beam-sideways": "Pandeo lateral del alma",
}
