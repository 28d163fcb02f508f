"""Sentences on the load path from the rope to the roof, in Spanish, by message id."""

from __future__ import annotations

LOAD_PATH: dict[str, str] = {
    "rope.pass": (
        "El cable de suspensión resiste {strength} en su extremo; se exigen {required}"
        " ({factor} x {load})."
    ),
    "rope.fail": (
        "El cable de suspensión resiste solo {strength} en su extremo; se exigen {required}"
        " ({factor} x {load})."
    ),
    "rope.missing": (
        "No se sabe lo que el cable de suspensión resiste en su extremo, o lo que debe resistir."
    ),
    "anchor-use.pass": (
        "El anclaje {anchor} sirve para esto: {use}; nada consta que lo ponga fuera de servicio."
    ),
    "anchor-use.out": "El anclaje {anchor} está fuera de servicio.",
    "anchor-use.barred": (
        "El anclaje {anchor} es: {called}; ahí no puede acabar ninguna línea de una plataforma."
    ),
    "anchor-use.not-for-it": (
        "El anclaje {anchor} no es para {use}; sus documentos permiten: {uses}."
    ),
    "anchor-use.missing": "No está declarado para qué puede usarse el anclaje {anchor}.",
    "anchor-use.conditional": "El anclaje {anchor} está en servicio con una condición.",
    "anchor-use.off-roof": "Según el plano el anclaje {anchor} no está sobre su techo.",
    "need.anchor-off-roof": (
        "Medir otra vez dónde está el anclaje {anchor}, y el contorno de su techo."
    ),
    "anchor-use.two-tiebacks": (
        "El anclaje {anchor} sujeta {lines}: la carga nominal de sus aparejos suma {load}."
    ),
    "alone.pass": "Nada más va al anclaje {anchor}.",
    "alone.near": "Los anclajes {anchor} y {others} están a {apart}: ¿una cosa o dos?",
    "need.anchors-apart": (
        "Medir otra vez los anclajes {anchor} y {others}, que están a {apart}, y distinguirlos."
    ),
    "alone.shared": (
        "El anclaje {anchor} sujeta también {others}: la línea de vida no es independiente."
    ),
    "tieback-end.pass": "El amarre termina en el anclaje {anchor}.",
    "tieback-end.fail": "El amarre termina en: {found}. No se puede amarrar a eso.",
    "tieback-end.refer": "El amarre termina en: {found}, sin documento que diga qué admite.",
    "tieback-end.missing": "Nadie ha declarado en qué termina el amarre.",
    "tieback-way.pass": (
        "Según el plano el amarre {tieback} pasa libre de todo; lo más cercano es {obstacle}, a"
        " {apart}."
    ),
    "tieback-way.above": (
        "Se vio que el amarre {tieback} pasa por encima de {obstacle}: empieza a {bearing} sobre la"
        " cubierta, {obstacle} mide {height} de alto."
    ),
    "tieback-way.word": (
        "Se vio que el amarre {tieback} pasa por encima de {obstacle}, que según el plano está en"
        " su camino; no está declarado a qué altura están los dos."
    ),
    "tieback-way.in-the-way": (
        "Según el plano {obstacle} está en el camino del amarre {tieback}, que según lo declarado"
        " no toca nada. Mirar de nuevo cómo pasa, o corregir el plano."
    ),
    "tieback-way.too-high": (
        "Según el plano {obstacle} está en el camino del amarre {tieback}, con {height} de alto; el"
        " amarre empieza a {bearing} sobre la cubierta. Mirar de nuevo cómo pasa, o corregir el"
        " plano."
    ),
    "tieback-way.missing": (
        "No se sabe si el plano muestra {obstacle} en el camino del amarre {tieback}."
    ),
    "na.route-unsaid": "Nadie declaró cómo corre el amarre, lo que se pregunta aparte.",
    "na.not-straight": "El amarre no corre recto.",
    "na.ends-on-no-anchor": "El amarre no termina en ningún anclaje del plano.",
    "na.no-obstacle": "El plano no muestra ningún obstáculo en la cubierta.",
    "tieback-angle.pass": (
        "El amarre {tieback} se desvía {angle} de la perpendicular; uno solo puede {most}."
    ),
    "tieback-angle.fail": (
        "El amarre {tieback} se desvía {angle} de la perpendicular; uno solo puede solo {most}."
    ),
    "tieback-angle.missing": "No se sabe cuánto se desvía un amarre de la perpendicular.",
    "tieback-pair.pass": (
        "Los amarres sujetan como par; {tieback} se desvía {angle} de la perpendicular."
    ),
    "tieback-pair.fail": (
        "El amarre {tieback} se desvía {angle} de la perpendicular: tira hacia fuera."
    ),
    "outside.one_side": (
        "Dos amarres en ángulo del mismo lado: no son un par, tiran de la viga hacia un lado."
    ),
    "tieback-strength.pass": (
        "El amarre resiste {strength}; tan fuerte como el cable son {required}."
    ),
    "tieback-strength.fail": (
        "El amarre resiste solo {strength}; tan fuerte como el cable son {required}."
    ),
    "tieback-strength.missing": "No se sabe qué resiste el amarre, o qué debe resistir.",
    "anchor-load.pass": "El anclaje {anchor} admite {rated} en este uso; se piden {required}.",
    "anchor-load.fail": (
        "El anclaje {anchor} admite solo {rated} en este uso; se piden {required}."
    ),
    "anchor-load.missing": "No se sabe qué admite el anclaje {anchor} en este uso.",
    "anchor-direction.pass": (
        "El tiro en el anclaje {anchor} se desvía {off} de la dirección para la que vale; puede"
        " {within}."
    ),
    "anchor-direction.fail": (
        "El tiro en el anclaje {anchor} se desvía {off} de la dirección para la que vale; puede"
        " solo {within}."
    ),
    "anchor-direction.missing": "No se sabe en qué dirección se puede tirar del anclaje {anchor}.",
}
