"""Every sentence of a review, in Spanish, by message id: the ids and values of english.py.

A word of the model stands after a colon or in brackets, where its gender and number do not matter.
"""

from __future__ import annotations

from backspan.core.words.spanish_beam import BEAM
from backspan.core.words.spanish_fall import FALL
from backspan.core.words.spanish_line import LINE
from backspan.core.words.spanish_load_path import LOAD_PATH
from backspan.core.words.spanish_people import PEOPLE
from backspan.core.words.spanish_stage import STAGE
from backspan.core.words.spanish_stands_on import STANDS_ON

SENTENCES: dict[str, str] = {
    **LOAD_PATH,
    **BEAM,
    # topics a person judged instead of the program, and why that has no effect
    "topic.taken-over": (
        "Asumido por {person}, {role}, tarjeta {card}, en {document} del {at}, hasta el {until}."
    ),
    "topic.taken-over-lapses": (
        "Asumido por {person}, {role}, tarjeta {card}, en {document} del {at}, solo hasta el"
        " {until}; el trabajo está previsto hasta el {ends}: después de ese día nadie sube sin otro"
        " documento."
    ),
    "take-over.answered": (
        "{document}: sin efecto, solo puede asumirse aquello sobre lo que no hay ningún resultado:"
        " {verdict} se mantiene."
    ),
    "take-over.role": (
        "{document}: sin efecto, {person} no puede asumir esto; quién puede: {who}."
    ),
    "take-over.no-card": "{document}: sin efecto, no se indica la tarjeta de {person}.",
    "take-over.no-contractor": (
        "{document}: sin efecto, ningún plan nombra al contratista, cuya gente no puede asumir"
        " nada."
    ),
    "take-over.no-employer": "{document}: sin efecto, no se indica el empleador de {person}.",
    "take-over.own-rig": (
        "{document}: sin efecto, {person} es de la gente del contratista o diseñó el montaje."
    ),
    "take-over.ended": "{document}: sin efecto, terminó el {until}.",
    "take-over.configuration": (
        "{document}: sin efecto, se dio para la configuración {given}; el montaje es ahora {now}."
    ),
    # what a check found
    "rig.moved": "El montaje se trasladó a {to}: ya no cuelga aquí.",
    "rig.none": "No hay ningún punto de suspensión registrado para esta bajada.",
    "support.one": "El punto de suspensión {point} tiene un solo soporte.",
    "support.none": "No hay ningún soporte registrado para el punto de suspensión {point}.",
    "support.several": "El punto de suspensión {point} está registrado con más de un soporte.",
    "stage-on-point.one": "De este punto cuelga una sola plataforma: {stages}.",
    "stage-on-point.none": "No hay registrada ninguna plataforma que cuelgue de este punto.",
    "stage-on-point.several": "De este punto cuelga más de una plataforma: {stages}.",
    "stage-hangs.two": "La plataforma {stage} cuelga de {points}.",
    "stage-hangs.one": (
        "La plataforma {stage} necesita dos puntos de suspensión; registrado: {points}."
    ),
    "stage-hangs.several": (
        "La plataforma {stage} cuelga de más de dos puntos: {points}. Lo que lleva cada uno no se"
        " obtiene solo por estática."
    ),
    "other-support": ("Tipo de soporte: {kind}. Esta versión no lo juzga. Documento: {document}."),
    "tipping.holds": (
        "El contrapeso basta: {resisting} frente a {required} exigidos ({factor} x {load})."
    ),
    "tipping.would-hold": (
        "Según lo declarado bastaría: {resisting} frente a {required} exigidos ({factor} x {load})."
    ),
    "tipping.does-not-hold": (
        "El contrapeso no basta: {resisting} frente a {required} exigidos ({factor} x {load})."
    ),
    "tipping.no-pieces": "No hay contrapeso en la viga: se exigen {required}.",
    "tipping.not-known": (
        "El vuelco según {rule_set} no puede calcularse con lo que está declarado."
    ),
    "tipping.branch-not-known": (
        "{resisting} frente a {required} exigidos ({factor} x {load}); otra rama de {rule_set} no"
        " puede calcularse con lo que está declarado."
    ),
    "tipping.no-number": "{rule_set} no da ningún factor que pueda calcularse aquí.",
    "stall-cap.pass": (
        "La carga de bloqueo del aparejo {hoist} es de {stall}; la mayor permitida es {cap}."
    ),
    "stall-cap.fail": (
        "La carga de bloqueo del aparejo {hoist} es de {stall}; la mayor permitida es {cap}."
    ),
    "stall-cap.missing": "La carga de bloqueo del aparejo {hoist} no está declarada.",
    "stack-fits.pass": "La pila ocupa {taken} de los {inboard} de viga hacia dentro.",
    "stack-fits.fail": (
        "Viga demasiado corta: {pieces} piezas ocupan {taken}, hacia dentro hay {inboard}."
    ),
    "stack-fits.missing": "Si la pila cabe no puede calcularse con lo que está declarado.",
    "backspan-fits.pass": (
        "El brazo trasero de {taken} queda dentro de los {inboard} de viga hacia dentro."
    ),
    "backspan-fits.fail": (
        "El brazo trasero de {taken} es más largo que los {inboard} de viga hacia dentro: medir de"
        " nuevo."
    ),
    "backspan-fits.missing": "El brazo trasero no puede compararse con la longitud de la viga.",
    "stack-stands.pass": (
        "La pila, en torno al centro medido con cinta, termina a {taken}, dentro de {inboard}."
    ),
    "stack-stands.fail": (
        "La pila, en torno al centro medido con cinta, llegaría a {taken}, donde hay {inboard}."
    ),
    "stack-stands.missing": "No puede calcularse si la pila queda sobre la viga.",
    "outside.inboard": (
        "La viga termina en el fulcro o hacia fuera de él: nada puede apoyarse en ella."
    ),
    "outside.reach": (
        "El cable cuelga en el fulcro o hacia dentro de él: medir de nuevo el voladizo."
    ),
    "outside.rear_stand": (
        "El caballete trasero está en el fulcro: medir de nuevo dónde se encuentra."
    ),
    "outside.beyond_tail": (
        "El caballete trasero está en la cola de la viga o más allá, donde no hay viga: medir ambos"
        " de nuevo."
    ),
    "outside.front": (
        "Con estos números la viga se levanta de su fulcro y gira en torno al caballete trasero:"
        " medir dónde está este."
    ),
    "outside.plate": "La placa bajo el fulcro o la plancha debajo no tiene área: medir de nuevo.",
    "outside.backspan": (
        "El centro del contrapeso no está hacia dentro del fulcro: no sujeta nada."
    ),
    "plan.pass": "Hay un plan declarado, para días que no han terminado.",
    "plan.missing": "El plan del contratista no está declarado por completo.",
    "plan.over": (
        "Los días previstos han terminado, o acaban antes de empezar: ningún plan cubre el {day}."
    ),
    "designer.pass": "Diseñado por: {found}.",
    "designer.fail": "Diseñado por: {found}; quién puede: {listed}.",
    "designer.missing": "No se nombra a nadie que haya diseñado el montaje.",
    "as-planned.pass": (
        "Montado según el plan, en lo que ambos están declarados: {count} valores."
    ),
    "as-planned.differs": "{input}: previsto {planned}, encontrado {found}.",
    "anchor-dates.pass": "Anclaje {anchor}, {input}: vale hasta el {last}.",
    "anchor-dates.refused": (
        "Anclaje {anchor}, {input}: vale hasta el {last}, el trabajo está previsto hasta el {ends};"
        " {paper} no deja usar ningún anclaje pasadas sus fechas."
    ),
    "anchor-dates.lapses": (
        "Anclaje {anchor}, {input}: vale hasta el {last}; el trabajo está previsto hasta el {ends}."
    ),
    "anchor-dates.missing": "Anclaje {anchor}, {input}: no declarado.",
    "unit.unknown": "Nadie declaró qué unidad es ({kind}); único nombre dado: {name}.",
    "unit.twice": "{unit} se nombra también en {others}: solo puede colgar en un lugar.",
    "unit.same-serial": (
        "{unit} tiene el número de serie {serial} de {others}, que también cuelga: uno está mal"
        " leído."
    ),
    "unit.lot-too-small": "Del lote {unit} hay {count} piezas; los montajes nombran {named}.",
    "condition.pass": "Estado: {found}.",
    "condition.fail": "Estado: {found}. No puede usarse.",
    "condition.missing": "Nadie declaró en qué estado está.",
    "test.pass": "{what} de {unit} vale hasta el {until}.",
    "test.lapses": (
        "{what} de {unit} vale hasta el {until}; el trabajo está previsto hasta el {ends}."
    ),
    "test.over": "{what} de {unit} valía hasta el {until}.",
    "brake-test.pass": "Del freno secundario de {unit} vale un ensayo del {at}: {what}.",
    "brake-test.missing": (
        "No se declaró ningún ensayo del freno secundario de {unit} que valga hoy."
    ),
    "brake-test.old": (
        "El último ensayo del freno secundario de {unit} es del {at}; uno vale {most} días."
    ),
    "line-clear.pass": (
        "El cable cuelga a {reach} hacia fuera de un fulcro situado {setback} detrás de la fachada."
    ),
    "line-clear.missing": "No puede calcularse si el cable libra la fachada.",
    "outside.line": (
        "Según el voladizo y el retranqueo, el cable de suspensión cuelga en la cara del edificio o"
        " dentro de ella."
    ),
    "beam-clear.pass": "La viga está {bearing} sobre la cubierta, el pretil mide {wall} de alto.",
    "beam-clear.fail": (
        "La viga está {bearing} sobre la cubierta y atravesaría el pretil, de {wall} de alto."
    ),
    "beam-clear.missing": "No puede calcularse si la viga libra el pretil.",
    "strip.pass": "Cuelga en {station}, dentro de la bajada, de {start} a {end}.",
    "strip.outside": "Cuelga en {station}, fuera de la bajada, que va de {start} a {end}.",
    "spacing.pass": "Los cables están separados {apart}, los estribos {stirrups}.",
    "spacing.fail": (
        "Los cables están separados {apart}, los estribos {stirrups}: cuelgan abiertos en ángulo."
    ),
    "spacing.missing": "No está declarada la separación de los estribos de la plataforma.",
    "hoists-in-sum.pass": "Cuelgan {load}; los aparejos elevan juntos {rated}.",
    "hoists-in-sum.fail": "Cuelgan {load}; los aparejos elevan juntos solo {rated}.",
    "hoists-in-sum.missing": "Lo que cuelga no puede compararse con lo que elevan los aparejos.",
    "hoists-by-half.pass": "La mitad de lo que cuelga es {load}; el aparejo menor eleva {rated}.",
    "hoists-by-half.fail": (
        "La mitad de lo que cuelga es {load}; el aparejo menor eleva solo {rated}."
    ),
    "hoists-by-half.missing": (
        "La mitad de lo que cuelga no puede compararse con lo que eleva un aparejo."
    ),
    "fulcrum.pass": "La viga apoya sobre: {kind}.",
    "fulcrum.refer": "La viga apoya sobre: {kind}.",
    "fulcrum.refer-with-load": ("La viga apoya sobre: {kind}; como máximo le llegan {most}."),
    "fulcrum.refer-with-reactions": (
        "La viga apoya sobre: {kind}. Con la carga nominal le llegan {front_loaded}, y"
        " {rear_loaded} al caballete trasero; sin nada en el cable, {front_idle} y {rear_idle}."
    ),
    "fulcrum.on-wall-missing": (
        "La viga apoya sobre: {kind}; no se sabe si está encima del peto, pues su lugar no está"
        " declarado."
    ),
    "fulcrum.missing": "No está declarado sobre qué apoya la viga.",
    "edge-protection.pass": (
        "El pretil mide {height} de alto; {least} protegen a quien está detrás."
    ),
    "edge-protection.low": (
        "El pretil mide solo {height} de alto; {least} protegen a quien está detrás."
    ),
    "edge-protection.missing": "Nadie declaró la altura del pretil.",
    "seen.pass": "Encontrado: {found}.",
    "seen.fail": "Encontrado: {found}. Nadie sube hasta que se corrija.",
    "seen.missing": "Nadie declaró qué se encontró.",
    "heads.pass": (
        "Para {riders} personas en la plataforma hay este número de líneas de vida en buen estado,"
        " de una persona cada una: {lines}."
    ),
    "heads.fail": (
        "Para {riders} personas en la plataforma hay solo este número de líneas de vida, de una"
        " persona cada una: {lines}."
    ),
    "heads.missing": (
        "Las personas a bordo no pueden contarse frente a las líneas de vida con lo que está"
        " declarado."
    ),
    "label-state.pass": "Etiqueta de la viga: {found}.",
    "label-state.fail": "Etiqueta de la viga: {found}. No usar la viga.",
    "label-state.missing": "El estado de la etiqueta de la viga no está registrado.",
    "label-limit.pass": "{pieces} piezas en la viga; su etiqueta permite {most}.",
    "label-limit.fail": "{pieces} piezas en la viga; su etiqueta permite solo {most}.",
    "label-limit.missing": "No está registrado el número de piezas que permite la etiqueta.",
    "label-limit-mass.pass": "{mass} en la viga; su etiqueta permite {most_mass}.",
    "label-limit-mass.fail": "{mass} en la viga; su etiqueta permite solo {most_mass}.",
    "proportion.pass": "El brazo hacia dentro entre el de fuera es {ratio}; se pide {least} o más.",
    "proportion.fail": "El brazo hacia dentro entre el de fuera es {ratio}; se pide {least} o más.",
    "proportion.missing": (
        "La proporción entre el brazo hacia dentro y el de fuera no puede calcularse con lo que"
        " está declarado."
    ),
    **LINE,
    **PEOPLE,
    **FALL,
    "bearing.pass": "El fulcro exige {pressure} de su superficie, que resiste {strength}.",
    "bearing.fail": "El fulcro exige {pressure} de su superficie, que resiste solo {strength}.",
    "bearing.missing": (
        "No se conoce lo que el fulcro exige de su superficie, o lo que esta resiste."
    ),
    **STANDS_ON,
    **STAGE,
    "flowable.pass": "Nada de lo que hay en la viga puede fluir: {found}.",
    "flowable.fail": "El material que fluye no es contrapeso: {found}.",
    "flowable.missing": "No hay piezas registradas en la viga.",
    "purpose-made.pass": "Hecho como contrapeso: {found}.",
    "purpose-made.fail": "No hecho como contrapeso: {found}.",
    "purpose-made.missing": "No hay piezas registradas en la viga.",
    "marking.pass": "Se conoce la masa de cada pieza: {found}.",
    "marking.fail": "La masa de una pieza no se conoce por su marca estampada: {found}.",
    "marking.missing": (
        "La masa de cada pieza no está resuelta; evidencia que se acepta: {listed}."
    ),
    "fastening.pass": "Las piezas están sujetas: {found}.",
    "fastening.fail": "Las piezas no están sujetas como pide la regla: {found}.",
    "fastening.missing": "No está registrado cómo se sujetan las piezas.",
    "unlikely.large": (
        "Poco probable: {input}, {value}, está por encima de {bound}. Se conserva como se anotó."
    ),
    "unlikely.small": (
        "Poco probable: {input}, {value}, está por debajo de {bound}. Se conserva como se anotó."
    ),
    # why a check does not apply
    "na.no-suspension-point": "No hay ningún punto de suspensión registrado.",
    "na.nothing-planned": "Ningún valor previsto está al lado de uno encontrado.",
    "na.no-anchor": "Ninguna línea de la bajada va a un anclaje.",
    "na.nothing-of-it": "El montaje no nombra ninguno.",
    "na.no-tieback": "Aquí no hay ningún amarre declarado.",
    "na.no-edge": "No hay declarada ninguna línea que pase un borde.",
    "na.no-lifeline": "No hay ninguna línea de vida declarada.",
    "na.stack-not-known": (
        "No se sabe dónde termina la pila en torno a un centro medido con cinta, o se deduce."
    ),
    "na.bolted": "Su cola está atornillada o unida de otro modo.",
    "na.no-counterweight": "No se sujeta con contrapeso.",
    "na.counterweighted": "Se sujeta con una viga con contrapeso.",
    "na.no-rule": "Ningún conjunto de reglas de la base tiene un valor {value} ({rule_sets}).",
    "na.beam-length": ("La longitud de la viga no está declarada, y el brazo trasero se midió."),
    "na.beam-tip": (
        "No está declarado lo que la viga tiene más allá del cable; si es nada, el brazo trasero"
        " cabe."
    ),
    "na.nothing-questioned": "Todos los valores están donde el oficio los espera.",
    "na.looked-again": "{input}: valor inusual; {by} lo miró de nuevo.",
    # what would settle it
    "need.too-much-doubt": (
        "{number} valores de esto llevan una tolerancia, más de los que pueden probarse en todos"
        " sus extremos. Medir de nuevo, primero los más amplios: {inputs}."
    ),
    "need.input": "Declarar: {input} ({place}).",
    "need.test": "Hacer ensayar de nuevo {unit} ({what}) antes del {until}.",
    "need.anchor-condition": ("Decir por escrito si se cumple la condición del anclaje {anchor}."),
    "need.two-tiebacks": (
        "Decir por escrito que el anclaje {anchor} puede sujetar {lines}, en total {load}."
    ),
    "need.tieback-end": "Juzgar en qué termina el amarre {tieback} y firmarlo.",
    "need.fulcrum": (
        "Juzgar lo que hay bajo la viga en el fulcro ({kind}) y aquello sobre lo que descansa, y"
        " firmarlo."
    ),
    "need.two-backspans": (
        "Medir de nuevo: la cinta da un brazo trasero de {taped}, la viga y la pila {computed},"
        " dentro de lo dudoso; con el más corto no basta."
    ),
    "need.limiter-as-stall": (
        "Determinar la carga de bloqueo del aparejo {hoist}: su limitador corta la corriente a"
        " {trip}, valor que se tomó por ella."
    ),
    "need.edge-protection": (
        "Decir cómo se sujeta a quienes montan en un borde de {height} de alto."
    ),
    "need.as-planned": (
        "Decir por escrito si el montaje puede quedarse como está: {input}, encontrado {found},"
        " previsto {planned}."
    ),
    "need.anchor-inspected": (
        "Hacer inspeccionar el anclaje {anchor}, o decir por escrito hasta cuándo vale."
    ),
    "need.anchor-certified": (
        "Hacer ensayar el anclaje {anchor}, o decir por escrito hasta cuándo vale."
    ),
    "need.witness": (
        "{input}: evidencia «{evidence}», pero no por quién ni cuándo: cuenta como dicho de palabra"
        " ({place})."
    ),
    "need.role": "{input}: lo declaró {person}; quién puede declararlo: {who} ({place}).",
    "need.age": (
        "{input}: se vio el {at}, lo que vale este número de días: {most}. Mirar de nuevo"
        " ({place})."
    ),
    "need.evidence": "{input}: evidencia «{evidence}»; se acepta: {accepted} ({place}).",
    "need.confirmation": (
        "Confirmar {value} con el ejemplar propio de la oficina de {rule_set} {edition}, {clause}:"
        " solo se recuerda."
    ),
    "need.design": "Juzgar el contrapeso según {rule_set} y firmarlo.",
    "need.other-support": "Juzgar el soporte ({kind}) y aquello sobre lo que apoya, y firmarlo.",
    "need.several-points": (
        "Hallar lo que cada uno de {points} puede llevar de la plataforma {stage}, con cualquiera"
        " de los cables flojo, y firmar."
    ),
    "need.look-again": (
        "Mirar de nuevo: {input} ({value}), y firmar como segunda persona que lee."
    ),
    # notes
    "note.beam-weight-left-out": "El peso propio de la viga no se cuenta: no perjudica.",
    "note.shorter-backspan": (
        "Dentro de lo dudoso, la cinta da un brazo trasero de {taped}, la viga y la pila"
        " {computed}: se juzga el más corto."
    ),
    "note.beam-weight-harms": "El peso propio de la viga tira hacia fuera y se cuenta.",
    "note.beam-weight-credited": ("El peso propio de la viga se cuenta, como permite {rule_set}."),
    "note.behind-rear-stand": (
        "Hay peso detrás del caballete trasero: lo que lleva el caballete no se descuenta del"
        " fulcro."
    ),
    "note.tieback-no-credit": "El amarre es adicional: no cuenta a favor en el vuelco.",
    "note.stall-not-known": (
        "La carga de bloqueo no se conoce: su rama queda abierta hasta que se declare el valor del"
        " fabricante, o lo que determine una persona calificada antes de elevar."
    ),
    "note.stall-at-most": (
        "Si el aparejo se bloqueara en lo máximo que la regla permite, {cap}, se exigirían"
        " {required}; hay {resisting}."
    ),
    "note.within-tolerance": "La respuesta cambia dentro de la tolerancia.",
    # rule comparison
    "compare.no-number": "ningún número con el que calcular",
    "compare.not-known": "no declarado: {inputs}",
    "compare.too-much-doubt": (
        "demasiados valores llevan una tolerancia para preguntar por el peor de ellos"
    ),
    "compare.no-backspan": "el contrapeso no está hacia dentro del fulcro",
}
