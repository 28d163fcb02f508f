"""Sentences on a counterweighted beam in Spanish: the ids and values of beam_sentences.py."""

from __future__ import annotations

BEAM: dict[str, str] = {
    "beam-web.pass": "Posición de la viga: {found}.",
    "beam-web.fail": "Posición de la viga: {found}. De lado resiste poco y puede volcar.",
    "beam-web-contradicts.missing": (
        "Se vio que la viga no tiene alma, pero la sección declarada la tiene: una de las dos cosas"
        " está mal."
    ),
    "beam-channels-contradicts.missing": (
        "Se vio que la viga es un par de perfiles en U, pero hay declarada una sola sección: una de"
        " las dos cosas está mal."
    ),
    "beam-bow-contradicts.missing": (
        "Se vio la viga doblada como permite su fabricante, y ninguna etiqueta dice quién la hizo"
        " ni cuánto es eso."
    ),
    "beam-web.missing": "Nadie declaró cómo está el alma de la viga.",
    "beam-stops.pass": "Pernos de tope o grilletes: {found}.",
    "beam-stops.fail": (
        "Pernos de tope o grilletes: {found}; los dos extremos de la viga deben llevarlos."
    ),
    "beam-stops.missing": "Nadie declaró si los dos extremos de la viga llevan pernos de tope.",
    "beam-square.pass": "Dirección de la viga: {found}.",
    "beam-square.fail": (
        "Dirección de la viga: {found}. Debe estar en escuadra con su apoyo, salvo que se muestre"
        " un obstáculo que no puede moverse."
    ),
    "beam-square.missing": "Nadie declaró si la viga está en escuadra con su apoyo.",
    "need.beam-square": (
        "Juzgar el ángulo de la viga en el punto {point}, el obstáculo que lo causa y sus amarres"
        " en ángulos opuestos, y firmarlo."
    ),
    "beam-shackle.pass": "Posición del grillete de suspensión: {found}.",
    "beam-shackle.fail": (
        "Posición del grillete de suspensión: {found}. El cable tira de lado de la viga o de la"
        " plataforma."
    ),
    "beam-shackle.missing": "Nadie declaró si el grillete está sobre el centro del estribo.",
    "beam-level.pass": "Nivel de la viga: {found}.",
    "beam-level.fail": (
        "Nivel de la viga: {found}. Lo que cuelga o está encima puede deslizarse o volcarla."
    ),
    "beam-level.missing": "Nadie declaró si la viga está nivelada.",
    "beam-bow.pass": "El brazo trasero bajo su carga: {found}.",
    "beam-bow.fail": (
        "El brazo trasero bajo su carga: {found}. La viga está sobrecargada o dañada."
    ),
    "beam-bow.missing": "Nadie declaró cuánto se dobla el brazo trasero bajo su carga.",
    "beam-restrained.pass": "Contra el movimiento lateral de la viga: {found}.",
    "beam-restrained.fail": (
        "Contra el movimiento lateral de la viga: {found}. Puede salirse de sus apoyos."
    ),
    "beam-restrained.missing": "Nadie declaró si la viga está sujeta hacia los lados.",
    "beam-upright.pass": "Contra el vuelco sobre sí misma la viga está: {found}.",
    "beam-upright.fail": (
        "Contra el vuelco sobre sí misma la viga está: {found}. Su resistencia supone que no puede."
    ),
    "beam-upright.missing": (
        "Nadie declaró si la viga está sujeta contra el vuelco en cada apoyo; su resistencia lo"
        " supone."
    ),
    "beam-holes.pass": "Agujeros en la viga: {found}.",
    "beam-holes.fail": "Agujeros en la viga: {found}. La sección declarada no está entera ahí.",
    "beam-holes.missing": "Nadie declaró si la viga tiene agujeros o cortes donde se flexiona.",
    "beam-channels.pass": "Perfiles en U que forman la viga: {found}.",
    "beam-channels.fail": (
        "Perfiles en U que forman la viga: {found}. Deben estar unidos, con las alas hacia fuera."
    ),
    "beam-channels.missing": "Nadie declaró si la viga es un par de perfiles en U ni cómo se unen.",
    "beam-joined.pass": "Composición de la viga: {found}.",
    "beam-joined.missing": (
        "No se sabe si la viga es de una pieza o de tramos, o figuran uniones en una viga de una"
        " pieza."
    ),
    "beam-joint-there.pass": "Se buscó la unión: {found}.",
    "beam-joint-there.missing": (
        "No se sabe si la unión está ahí, o se vio algo de una que no está."
    ),
    "beam-pins.pass": "Pasadores de la unión: {found}.",
    "beam-pins.fail": "Pasadores de la unión: {found}. La viga puede separarse.",
    "beam-pins.missing": "Nadie declaró si los pasadores de la unión están puestos y con cierre.",
    "beam-order.pass": "Tramos en la unión: {found}.",
    "beam-order.fail": (
        "Tramos en la unión: {found}. Puede que el resistente no esté donde debe estar."
    ),
    "beam-order.missing": "No se sabe si los tramos están en el orden de su fabricante.",
    "beam-marks.pass": "Marcas de los tramos en la unión: {found}.",
    "beam-marks.fail": (
        "Marcas de los tramos en la unión: {found}; se mezclan partes de dos vigas."
    ),
    "beam-marks.missing": "No se sabe si los tramos en la unión son de un mismo juego.",
    "splice-clear.pass": (
        "La unión está a {at} de la cola, fuera de la pila, que va de {outer} a {inner}."
    ),
    "splice-clear.fail": (
        "La unión está a {at} de la cola, bajo la pila, que va de {outer} a {inner}: el contrapeso"
        " descansa sobre ella, y nadie ve sus pasadores."
    ),
    "splice-clear.missing": "No se sabe si la unión queda fuera del contrapeso.",
    "splice-reach.pass": (
        "La unión está a {at} de la cola, fuera del fulcro a {outer}, del cable a {inner} y de lo"
        " que hay entre ellos."
    ),
    "splice-reach.refer": (
        "La unión está a {at} de la cola, sobre el fulcro a {outer} o entre él y el cable a"
        " {inner}: solo el fabricante de la viga puede permitirlo."
    ),
    "splice-reach.missing": (
        "No se sabe si la unión queda sobre el fulcro, o entre él y el cable."
    ),
    "splices.not-said": (
        "Nadie declaró dónde se unen los tramos de la viga, ni que sea de una pieza."
    ),
    "need.splice-reach": (
        "Mostrar que el fabricante de la viga permite la unión {splice} sobre el fulcro o por"
        " fuera de él, y firmarlo."
    ),
    "note.splice-sleeve": (
        "Su manguito mide {sleeve}, la mitad a cada lado de la unión: cuenta todo él."
    ),
    "outside.joint": "La unión está más allá del extremo de la viga: medirla de nuevo.",
    "na.one-piece": "La viga es de una pieza.",
}

MENDS: dict[str, str] = {
    "beam-web.fail": "Poner la viga con el alma vertical, y mirarla de nuevo.",
    "beam-stops.fail": "Poner un perno de tope o un grillete en cada extremo de la viga.",
    "beam-square.fail": "Poner la viga en escuadra con su apoyo, y mirarla de nuevo.",
    "beam-shackle.fail": "Mover la viga hasta que el grillete quede sobre el centro del estribo.",
    "beam-level.fail": "Nivelar la viga como muestra su fabricante, y mirarla de nuevo.",
    "beam-bow.fail": "Descargarla, y usar una viga sana que esté hecha para la carga.",
    "beam-restrained.fail": "Sujetar la viga hacia los dos lados, y mirarla de nuevo.",
    "beam-upright.fail": "Sujetar la viga contra el vuelco en cada apoyo, y mirar de nuevo.",
    "beam-holes.fail": "Hacer juzgar la viga por su fabricante, o usar otra.",
    "beam-channels.fail": "Unir los perfiles con las alas hacia fuera, y mirarlos de nuevo.",
    "beam-pins.fail": "Poner los pasadores del fabricante, cerrarlos todos, y mirar de nuevo.",
    "beam-order.fail": "Montar los tramos en el orden de su fabricante.",
    "beam-marks.fail": "Usar tramos de un mismo juego.",
    "outside.joint": "Medir de nuevo dónde está la unión, o declarar que no está ahí.",
    "splice-clear.fail": "Mover el contrapeso fuera de la unión, y hacerlo revisar.",
}
