"""Spanish: the tables of language.py, to be checked by a fluent engineer before they are used."""

from __future__ import annotations

from backspan.core.words import (
    spanish_beam_strength,
    spanish_beam_web,
    spanish_drawing,
    spanish_formulas,
    spanish_labels,
    spanish_mends,
    spanish_names,
    spanish_questions,
    spanish_record,
    spanish_seen_from,
    spanish_sentences,
)
from backspan.core.words.language import Language

#: Printed wherever Spanish is: nobody who knows the trade in this language has checked it yet.
NOTE = (
    "Textos en español pendientes de comprobar por un ingeniero que domine el idioma y el oficio."
    " En caso de duda vale el texto en inglés."
)

ONE_CHANGE = "Un solo cambio: {margins}."
STAY_ON = "Tal como está montado; las piezas se quedan hasta desmontar la plataforma."

ONE_PIECE: dict[str, tuple[str, str]] = {
    "pieces-spare": ("sobra 1 pieza", "falta 1 pieza"),
}

MARGINS: dict[str, tuple[str, str]] = {
    "pieces-spare": ("sobran {value} piezas", "faltan {value} piezas"),
    "no-number-of-pieces": (
        "{value} piezas",
        "ningún número de piezas en esta viga es suficiente",
    ),
    "more-reach": ("margen de {value} más de voladizo", "voladizo excesivo en {value}"),
    "less-backspan": (
        "bastaría un brazo trasero más corto en {value}",
        "al brazo trasero le faltan {value}",
    ),
    "fulcrum-inboard": (
        "el fulcro puede moverse {value} hacia dentro",
        "el fulcro debe moverse {value} hacia fuera",
    ),
    "most-rated-load": ("basta para una carga nominal de hasta {value}",) * 2,
    "most-stall-load": ("basta para una carga de bloqueo de hasta {value}",) * 2,
    "most-stall-load-allowed": (
        "basta para cualquier carga de bloqueo que la regla permite, {value}",
    )
    * 2,
    "hoists-that-do": ("aparejos del equipo con los que bastaría: {value}",) * 2,
    "pieces-per-step-us": ("una pulgada más de voladizo cuesta {value} piezas",) * 2,
    "pieces-per-step-metric": ("10 mm más de voladizo cuestan {value} piezas",) * 2,
}

NOT_JUDGED = "No juzgado, nadie lo asumió: {topics}."

TOPICS_COUNTED: dict[str, tuple[str, str]] = {
    "refused": ("1 tema rechazado", "{count} temas rechazados"),
    "open": ("1 tema abierto", "{count} temas abiertos"),
    "taken over": (
        "1 tema asumido por una persona nombrada",
        "{count} temas asumidos por personas nombradas",
    ),
}

CAUTIONS: tuple[str, ...] = (
    "Esto apoya el juicio de una persona calificada o con licencia; no lo sustituye.",
    "Primero van los códigos locales, el manual del fabricante y el ingeniero del proyecto.",
    "Habla de la configuración que su código nombra, y de ninguna otra.",
    "Parar, y hacer revisar de nuevo, si algo en la cubierta difiere de lo declarado aquí.",
    "Una persona competente inspecciona antes de cada turno y después de cuanto pueda importar.",
)

ONE_LINE_CAUTION = (
    "Apoya el juicio de una persona calificada o con licencia; primero los códigos locales;"
    " parar si la cubierta difiere."
)

VERDICT_MEANINGS: dict[str, str] = {
    "pass": "se cumple lo exigido, con evidencia suficiente para esa comprobación",
    "fail": "no se cumple lo exigido",
    "refer": "debe decidir una persona nombrada; el resultado dice quién y sobre qué",
    "missing": "no hay evidencia suficiente; el resultado nombra lo que lo resolvería",
}

MARKS: dict[str, str] = {
    "read": "se vio un texto oficial",
    "copy": "se vio una copia estatal o una cita del texto",
    "memory": (
        "de memoria, texto no visto: verificar; un «cumple» que se apoya en esto queda a decidir"
    ),
    "practice": "práctica común, sin fuente; se dice lo que decide",
    "confirmed": "la oficina encontró el valor en su propio ejemplar del texto",
}

DECIDERS: dict[str, str] = {
    "competent person": "la persona competente",
    "qualified person": "la persona calificada",
    "licensed engineer": "el ingeniero con licencia",
    "owner": "el propietario",
    "contractor": "el contratista",
    "the office that keeps the text": "la oficina que guarda el texto",
    "the person who measures on the roof": "la persona que mide en la cubierta",
}

PHRASES: dict[str, str] = {
    "label-at-most-stall": "{label} con esa carga de bloqueo",
    "factor-on-load": "{factor} x {load}, peso propio de la viga: {beam_weight}",
    "factor-on-load-alone": "{factor} x {load}",
    "mark-confirmed": "{mark}, confirmado",
    "mark-by": "{mark} por {by} el {at}",
    "cited": "{reference}: {asked}",
    "cited-as-read": "{reference}, leído como «{reading}»: {asked}",
    "confirmed-in-copy": "confirmado por {by} el {at} en {copy_seen}",
    "mend": "Un solo cambio: {changes}.",
    "mend-one-piece": "añadir 1 pieza",
    "mend-or": "; o ",
    "seen-from": "Se ve desde: {where}.",
    "put-right": "Arreglarlo, y hacerlo revisar de nuevo.",
    "or": " o ",
    "waits-for": "No declarado: {inputs}.",
    "not-judged-here": "No juzgado aquí; nadie lo asumió.",
    "judge-in-writing": "Juzgarlo, y asumirlo por escrito.",
    "with-tolerance": "{value} ± {tolerance}",
    "with-usual-tolerance": "{value} ± {tolerance}, la habitual",
}

SPANISH = Language(
    code="es",
    note=NOTE,
    sentences={
        **spanish_questions.SENTENCES,
        **spanish_beam_strength.SENTENCES,
        **spanish_beam_web.SENTENCES,
        **spanish_sentences.SENTENCES,
    },
    margins=MARGINS,
    one_piece=ONE_PIECE,
    one_change=ONE_CHANGE,
    stay_on=STAY_ON,
    inputs={
        **spanish_names.INPUTS,
        **spanish_beam_strength.INPUTS,
        **spanish_beam_web.INPUTS,
    },
    seen_from=spanish_seen_from.SEEN_FROM,
    checks={
        **spanish_names.CHECKS,
        **spanish_beam_strength.CHECKS,
        **spanish_beam_web.CHECKS,
    },
    labels={**spanish_questions.LABELS, **spanish_beam_strength.LABELS},
    verdict_meanings=VERDICT_MEANINGS,
    marks=MARKS,
    mends_by_margin=spanish_mends.BY_MARGIN,
    mends_by_message={
        **spanish_mends.BY_MESSAGE,
        **spanish_beam_strength.MENDS,
        **spanish_beam_web.MENDS,
    },
    paper=spanish_labels.LABELS,
    drawing=spanish_drawing.DRAWING,
    dimensions=spanish_labels.DIMENSIONS,
    topics_counted=TOPICS_COUNTED,
    not_judged=NOT_JUDGED,
    cautions=CAUTIONS,
    question_cautions=spanish_questions.CAUTIONS,
    one_line_caution=ONE_LINE_CAUTION,
    deciders=DECIDERS,
    phrases={**PHRASES, **spanish_record.PHRASES},
    states=spanish_record.STATES,
    state_meanings=spanish_record.STATE_MEANINGS,
    events=spanish_record.EVENTS,
    reasons=spanish_record.REASONS,
    entry_titles=spanish_record.TITLES,
    entry_lines=spanish_record.LINES,
    words=spanish_names.WORDS,
    formulas={
        **spanish_formulas.TITLES,
        **spanish_beam_strength.FORMULAS,
        **spanish_beam_web.FORMULAS,
    },
)
