"""What the program says of stands and of signed limits, in Spanish."""

from __future__ import annotations

STANDS_ON: dict[str, str] = {
    "bearing.silent": (
        "Ningún conjunto de reglas de la base dice lo que una superficie debe resistir"
        " ({rule_sets})."
    ),
    "rear-bearing.pass": (
        "El caballete trasero exige {pressure} de su superficie, que resiste {strength}."
    ),
    "rear-bearing.fail": (
        "El caballete trasero exige {pressure} de su superficie, que resiste solo {strength}."
    ),
    "rear-bearing.missing": (
        "No se conoce lo que el caballete trasero exige de su superficie, o lo que esta resiste."
    ),
    "rear-bearing.silent": (
        "Ningún conjunto de reglas de la base dice lo que la superficie bajo el caballete trasero"
        " debe resistir ({rule_sets})."
    ),
    "outside.rear-plate": ("La placa bajo el caballete trasero no tiene área: medirla de nuevo."),
    "outside.beyond_wall": (
        "El fulcro está en el borde mismo del muro o del techo: nada de su placa apoya parejo ahí."
    ),
    "fulcrum.signed-for": (
        "La viga apoya sobre: {kind}. {document}, revisión {revision}, con firma de {person}, dice"
        " lo que puede cargarlo, hasta el {until}."
    ),
    "signed.pass": (
        "Dentro de {document}, revisión {revision}, con firma de {person}, hasta el {until}."
    ),
    "signed.outside": (
        "{document}, revisión {revision}, con firma de {person}, no llega a tanto: {input} {value},"
        " su límite {limit}."
    ),
    "signed.off-the-list": (
        "{document}, revisión {revision}, con firma de {person}, no nombra {names}."
    ),
    "signed.lapses": (
        "Dentro de {document}, revisión {revision}, con firma de {person}, solo hasta el {until};"
        " el trabajo está previsto hasta el {ends}."
    ),
    "signed.missing": (
        "No se sabe si la viga queda dentro de {document}, revisión {revision}, con firma de"
        " {person}."
    ),
    "signed.ended": (
        "{document}, revisión {revision}, con firma de {person}: sin efecto, terminó el {until}."
    ),
    "signed.role": (
        "{document}, revisión {revision}: sin efecto, {person} no puede firmarlo; quién puede:"
        " {who}."
    ),
    "signed.no-card": (
        "{document}, revisión {revision}: sin efecto, no se indica la tarjeta de {person}."
    ),
    "na.signed-for": (
        "{document}, revisión {revision}, con firma de {person}, dice lo que puede cargar su"
        " superficie, hasta el {until}."
    ),
    "na.nothing-signed": "Ningún documento con límites de un ingeniero nombra la bajada.",
    "need.surface": "Decir lo que la superficie resiste de lo que la carga, y firmarlo.",
    "need.signed": (
        "Decir por escrito, con firma, lo que {document} deja abierto aquí, y hasta cuándo."
    ),
}
