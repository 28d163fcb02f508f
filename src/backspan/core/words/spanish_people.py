"""Frases sobre personas y cargas, en español: la parte de cada aparejo, los pasos del trabajo."""

from __future__ import annotations

PEOPLE: dict[str, str] = {
    "share.not-on-two": "{stage} cuelga de {points}: la estática sola lo dice de dos puntos.",
    "share-anywhere.pass": (
        "Con todo en un extremo, el aparejo ({side}) lleva {load}; su carga nominal es {rated}."
    ),
    "share-anywhere.unplaced": (
        "Con todo en un extremo, el aparejo ({side}) llevaría {load}, con carga nominal {rated}:"
        " hay que decir paso a paso dónde está cada persona y cada cosa."
    ),
    "share-anywhere.missing": "Con lo indicado no se puede decir qué llega a cada aparejo.",
    "taut-anywhere.pass": (
        "Todo en un extremo quita {lifted} al otro cable, que {held} mantiene tenso."
    ),
    "taut-anywhere.unplaced": (
        "Todo en un extremo quita {lifted} al otro cable, que solo {held} mantiene tenso: hay que"
        " decir paso a paso dónde está cada persona."
    ),
    "taut-anywhere.missing": "Con lo indicado no se puede decir si un cable queda flojo.",
    "share-in-step.pass": (
        "El aparejo ({side}) lleva como máximo {load}, en el paso {step}; su carga nominal es"
        " {rated}."
    ),
    "share-in-step.fail": (
        "En el paso {step} el aparejo ({side}) lleva {load}; su carga nominal es solo {rated}."
    ),
    "share-in-step.missing": "No se puede decir qué llega a cada aparejo en algún paso.",
    "taut-in-step.pass": (
        "El paso {step} es el que más quita a un cable, {lifted}; {held} lo mantiene tenso."
    ),
    "taut-in-step.fail": (
        "En el paso {step} lo que está más allá del cable ({side}) quita {lifted} al otro, que solo"
        " {held} mantiene tenso: ese cable queda flojo."
    ),
    "taut-in-step.missing": "No se puede decir si un cable queda flojo en algún paso.",
    "riders-weight.pass": "Las personas pesan {people} de los {intended} previstos.",
    "riders-weight.fail": "Las personas pesan {people}; solo se prevén {intended} con todo.",
    "riders-weight.missing": "No se indicó cuántas personas suben, o qué carga se prevé.",
    "step-load.pass": "Hay como máximo {load} en la plataforma, en el paso {step}; se prevén"
    " {intended}.",
    "step-load.fail": "En el paso {step} hay {load} en la plataforma; solo se prevén {intended}.",
    "step-load.missing": "No se sabe qué hay, o puede haber, en la plataforma en algún paso.",
    "steps-with-all.pass": "Los pasos tienen a todas las que suben, {riders}, y no más en total.",
    "steps-with-all.fail": "Los pasos más llenos suman {people} personas; suben {riders}.",
    "steps-with-all.missing": "No se indicó cuántas suben; un paso tiene que tenerlas a todas.",
    "one-load.pass": "Lo que más pesa en un solo lugar es {load}, en el paso {step}.",
    "one-load.refer": (
        "En el paso {step} hay {load} en un solo lugar; se supone que el piso lleva ahí {most}."
    ),
    "one-load.missing": "No se sabe cuánto pesa lo que está en un solo lugar de la plataforma.",
    "need.one-load": "Decir que el piso de la plataforma {stage} lo lleva ahí, y firmarlo.",
    "step-on-deck.pass": "Todo lo que se colocó está sobre la plataforma.",
    "step-on-deck.fail": (
        "En el paso {step} algo está a {off} del centro de la plataforma, que termina a {half}."
    ),
    "step-on-deck.missing": "No se puede decir si todo lo colocado está sobre la plataforma.",
}
