"""Frases en español sobre la plataforma y sus aparejos: tipos, lo encontrado y sus medidas."""

from __future__ import annotations

STAGE: dict[str, str] = {
    "need.hot-work-lines": (
        "Decir cómo se protegen del calor y las chispas las líneas de vida de la plataforma {stage}"
        " mientras se suelda o corta, y firmarlo."
    ),
    "deck-clear.pass": "Separada de {other}.",
    "deck-clear.fail": (
        "La plataforma comparte una franja de la fachada con {other}: la de la izquierda termina en"
        " {end}, la otra empieza en {begin}."
    ),
    "deck-clear.missing": "No se sabe si otra plataforma cuelga en su franja de la fachada.",
    "na.alone-at-edge": "De este borde no cuelga otra plataforma.",
    "hoist-rope.pass": "El aparejo está hecho para cable de {made_for}; el cable es de {diameter}.",
    "hoist-rope.fail": (
        "El aparejo está hecho para cable de {made_for} y el cable es de {diameter}: resbala, o el"
        " freno no lo sujeta."
    ),
    "hoist-rope.missing": "No se sabe para qué cable está hecho el aparejo, o qué cable lleva.",
    "hoist-tested.pass": "Tipo del aparejo: {found}.",
    "hoist-tested.fail": (
        "Tipo del aparejo: {found}; debe haberlo ensayado un laboratorio cualificado."
    ),
    "hoist-tested.missing": "Nadie declaró si un laboratorio ensayó este tipo de aparejo.",
    "second-brake.pass": "Además del freno normal, otro que: {found}.",
    "second-brake.fail": (
        "Además del freno normal: {found}; se exige uno que actúe solo con exceso de velocidad."
    ),
    "second-brake.missing": "Nadie declaró si el aparejo tiene freno de exceso de velocidad.",
    "hoists-alike.pass": "Los aparejos de la plataforma {stage} son de un solo tipo: {hoists}.",
    "hoists-alike.two": (
        "Los aparejos de la plataforma {stage} son de varios tipos: {hoists}; si van nivelados lo"
        " juzga una persona cualificada."
    ),
    "need.hoists-alike": (
        "Juzgar si {hoists} suben nivelada la plataforma {stage} y así la sostienen, y firmarlo."
    ),
    "control.pass": "Mando de los aparejos: {found}.",
    "control.fail": (
        "Mando de los aparejos: {found}; un laboratorio debe haberlos ensayado conectados así."
    ),
    "control.missing": "Nadie declaró si cada aparejo tiene su propio mando.",
    "joints.pass": "Uniones y pasadores entre módulos: {found}.",
    "joints.fail": "Uniones y pasadores entre módulos: {found}. La plataforma puede abrirse.",
    "joints.missing": "Nadie declaró qué se encontró en las uniones entre módulos.",
    "fixed.pass": "Fijación a los estribos: {found}.",
    "fixed.fail": "Fijación a los estribos: {found}. La plataforma puede salirse de ellos.",
    "fixed.missing": "Nadie declaró si la plataforma está fijada a sus estribos.",
    "guardrail.pass": "Barandillas en los lados abiertos: {found}.",
    "guardrail.fail": (
        "Barandillas en los lados abiertos: {found}. Se exigen en todos, con o sin líneas de vida."
    ),
    "guardrail.missing": "Nadie declaró si hay barandillas en todos los lados abiertos.",
    "toeboard.pass": "Rodapiés en los lados abiertos: {found}.",
    "toeboard.fail": "Rodapiés en los lados abiertos: {found}. Pueden caer cosas.",
    "toeboard.missing": "Nadie declaró si hay rodapiés en los lados abiertos.",
    "along.pass": "A lo largo del recorrido: {found}.",
    "along.fail": (
        "A lo largo del recorrido: {found}. Si se engancha, un cable queda flojo y el otro lo lleva"
        " todo; alguien debe decir cómo se mantiene apartada."
    ),
    "along.missing": "Nadie declaró si la plataforma puede engancharse en su recorrido.",
    "sway.pass": "Contra el balanceo: {found}.",
    "sway.fail": "Contra el balanceo: {found}; lo que se acepta: {listed}.",
    "sway.missing": "Nadie declaró qué impide que la plataforma se balancee.",
    "first-lift.pass": "Primera subida desde el montaje: {found}.",
    "first-lift.fail": (
        "Primera subida desde el montaje: {found}. Se sube un poco y se prueban los dos frenos"
        " antes de que nadie suba más."
    ),
    "first-lift.missing": "No se sabe si la plataforma se probó a poca altura desde el montaje.",
    "deck.pass": "Piso sin huecos: {found}.",
    "deck.fail": "Piso sin huecos: {found}. Pasan por él pies o herramientas.",
    "deck.missing": "Nadie declaró si el piso está entero.",
    "level.pass": "La plataforma {found}.",
    "level.fail": "La plataforma {found}: las cargas se deslizan, y un cable lleva de más.",
    "level.missing": "Nadie declaró si la plataforma sube nivelada.",
    "bow.pass": "La plataforma cargada {found}.",
    "bow.fail": "La plataforma cargada {found}: es débil o larga para su carga.",
    "bow.missing": "Nadie declaró cuánto se dobla la plataforma cargada.",
    "drives.pass": "Mecanismo de los aparejos: {found}.",
    "drives.fail": "Mecanismo de los aparejos: {found}. Nadie sube así.",
    "drives.missing": "Nadie declaró si engranajes y frenos están cerrados.",
    "hot-work.pass": "Soldadura o corte desde la plataforma: {found}.",
    "hot-work.fail": (
        "Soldadura o corte desde la plataforma: {found}. La corriente puede ir por los cables y"
        " quemarlos."
    ),
    "hot-work.missing": "Nadie declaró si se suelda o corta desde la plataforma.",
    "overhead.pass": "Por encima de quienes suben: {found}.",
    "overhead.fail": (
        "Por encima de quienes suben: {found}. Necesita cables de apoyo propios, tantos y tan"
        " resistentes como los de suspensión."
    ),
    "overhead.missing": "Nadie declaró si hay algo construido por encima de quienes suben.",
    "need.overhead": (
        "Juzgar lo que hay por encima de quienes suben en la plataforma {stage} y cómo se sujetan"
        " allí sin una línea de vida que lo atraviese, y firmarlo."
    ),
    "listed.pass": "Homologación de la plataforma: {found}.",
    "listed.fail": (
        "Homologación de la plataforma: {found}; la de metal ligero debe estar ensayada e inscrita."
    ),
    "listed.missing": "Nadie declaró si la plataforma fue ensayada e inscrita.",
    "listed-contradicts.missing": (
        "Por su nombre la plataforma es de metal ligero; no puede ser que no lo sea."
    ),
    "stage-width.pass": "La plataforma tiene {width} de ancho; como máximo {most}.",
    "stage-width.refer": (
        "La plataforma tiene {width} de ancho, más de {most}: exige el proyecto de una persona"
        " cualificada."
    ),
    "stage-width.missing": "No se sabe bastante bien cuánto mide de ancho la plataforma.",
    "need.stage-width": (
        "Decir que la plataforma {stage} se proyectó estable con ese ancho, y firmarlo."
    ),
    "stage-narrow.pass": "La plataforma tiene {width} de ancho; como mínimo {least}.",
    "stage-narrow.fail": "La plataforma tiene solo {width} de ancho; se exigen al menos {least}.",
    "stage-narrow.missing": "No se sabe si la plataforma es bastante ancha.",
    "stage-short.pass": "La plataforma tiene {length} de largo y cuelga de puntos a {apart}.",
    "stage-short.fail": (
        "La plataforma tiene {length} de largo y cuelga de puntos a {apart}: uno de los dos está"
        " mal."
    ),
    "stage-short.missing": "No se sabe si la plataforma es tan larga como distan sus estribos.",
    "stage-beyond.pass": "El piso sobresale {out} de cada cable; como máximo {most}.",
    "stage-beyond.refer": (
        "El piso sobresale {out} de cada cable, más de {most}: tiene que responder una persona"
        " cualificada."
    ),
    "stage-beyond.missing": "No se sabe cuánto sobresale el piso de sus cables.",
    "need.stage-beyond": (
        "Decir que la plataforma {stage} puede sobresalir tanto de sus cables, y firmarlo."
    ),
    "most-load.pass": "{intended} de personas y material; la placa permite {most}.",
    "most-load.fail": "{intended} de personas y material; la placa permite solo {most}.",
    "most-load.missing": "Lo que la plataforma puede llevar no se puede comparar con lo previsto.",
    "rail-height.pass": "El pasamanos está a {height} del piso; como mínimo {least}.",
    "rail-height.fail": "El pasamanos está solo a {height} del piso; se exigen al menos {least}.",
    "rail-height.missing": "No se sabe a qué altura está el pasamanos.",
    "rail-high.pass": "El pasamanos está a {height} del piso; como máximo {most}.",
    "high-rail.pass": "El pasamanos está más alto de lo usual: {found}.",
    "high-rail.fail": "El pasamanos está más alto de lo usual, y {found}.",
    "high-rail.missing": (
        "El pasamanos está más alto de lo usual, y nadie declaró, desde que se midió su altura,"
        " si cumple todo lo demás que se exige de una barandilla."
    ),
    "rail-lacks.fail": "Del pasamanos alguien vio: {found}.",
    "plate-state.pass": "Su placa o estampado: {found}.",
    "plate-state.fail": (
        "Su placa o estampado: {found}. Lo que se lee ahí no lo puede comprobar nadie."
    ),
    "test.failed": "{what} de {unit} no resistió.",
    "test.named-failed": (
        "Por su nombre, {what} de {unit} puede haber fallado; nadie declaró cómo terminó."
    ),
    "brake-test.lapses": (
        "El último ensayo del freno secundario de {unit} es del {at}; uno vale {most} días, y el"
        " trabajo está previsto hasta el {ends}."
    ),
    "to-face.pass": "El borde interior está a {apart} de la fachada; como máximo {most}.",
    "to-face.missing": "No se sabe a qué distancia de la fachada cuelga la plataforma.",
    "face-side.pass": "Del lado de la fachada: {found}.",
    "need.face-open": (
        "Decir que quienes van atados en la plataforma {stage} no necesitan baranda del lado de la"
        " fachada, y firmarlo."
    ),
    "face-side.fail": (
        "Del lado de la fachada: {found}, y la plataforma cuelga demasiado lejos: se exige una"
        " barandilla o que cada persona esté amarrada."
    ),
    "face-side.missing": (
        "La plataforma cuelga demasiado lejos de la fachada, y nadie declaró qué impide caer ahí."
    ),
}
