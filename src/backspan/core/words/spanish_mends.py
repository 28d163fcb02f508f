"""What mends a refused drop, in Spanish: by the margin that is used up, else by what was found."""

from __future__ import annotations

from backspan.core.words import spanish_beam

BY_MARGIN: dict[str, str] = {
    "pieces-spare": "añadir {value} piezas",
    "no-number-of-pieces": "ningún número de piezas en esta viga es suficiente",
    "more-reach": "quitar {value} al voladizo",
    "less-backspan": "alargar el brazo trasero {value}",
    "fulcrum-inboard": "mover el fulcro {value} hacia fuera",
    "most-rated-load": "usar aparejos de carga nominal de hasta {value}",
    "most-stall-load": "usar aparejos que se bloqueen a {value} como mucho",
    "hoists-that-do": "usar el aparejo {value}",
}

BY_MESSAGE: dict[str, str] = {
    **spanish_beam.MENDS,
    "rig.moved": "Revisar el montaje donde cuelga ahora.",
    "support.several": "Registrar cada punto con el único apoyo del que cuelga.",
    "stage-on-point.several": "Colgar una sola plataforma de cada punto.",
    "stage-hangs.one": "Colgar la plataforma de dos puntos.",
    "tipping.does-not-hold": "Cambiar la viga, su contrapeso o el aparejo; hacerlo revisar.",
    "tipping.no-pieces": "Poner el contrapeso en la viga, y hacerlo revisar.",
    "stall-cap.fail": "Usar un aparejo que no se bloquee por encima de lo permitido.",
    "stack-fits.fail": "Usar menos piezas o más cortas, o una viga más larga.",
    "backspan-fits.fail": "Medir de nuevo brazo trasero, voladizo y viga.",
    "stack-stands.fail": "Medir de nuevo dónde está la pila, o usar una viga más larga.",
    "outside.inboard": "Mover la viga hacia dentro hasta que su contrapeso la sujete.",
    "outside.reach": "Medir de nuevo el voladizo.",
    "outside.rear_stand": "Medir de nuevo dónde está el caballete trasero.",
    "outside.beyond_tail": "Medir de nuevo dónde está el caballete trasero y el largo de la viga.",
    "outside.front": "Medir dónde está el caballete trasero.",
    "outside.beyond_wall": "Meter el fulcro hacia dentro, o medir otra vez retranqueo y muro.",
    "outside.plate": "Medir de nuevo la placa bajo el fulcro, y la plancha debajo de ella.",
    "outside.backspan": "Poner el contrapeso por dentro del fulcro.",
    "outside.line": "Separar el cable de la fachada, o medir de nuevo voladizo y retranqueo.",
    "plan.over": "Declarar un plan para los días de trabajo.",
    "designer.fail": "Hacer proyectar el montaje por quien puede.",
    "anchor-dates.refused": "Hacer inspeccionar o ensayar el anclaje, o amarrar a otro.",
    "unit.twice": "Nombrar lo que cuelga aquí: no puede colgar en dos sitios.",
    "unit.same-serial": "Leer otra vez ambos números de serie; si es una cosa, nombrarla una vez.",
    "unit.lot-too-small": "Contar de nuevo el lote, o nombrar los lotes de las piezas.",
    "condition.fail": "Poner otro en buen estado en su lugar, y hacerlo mirar.",
    "test.over": "Hacerlo ensayar, o poner uno ensayado en su lugar.",
    "beam-clear.fail": "Subir la viga por encima del pretil, o medir ambos de nuevo.",
    "strip.outside": "Mover el cable dentro de la bajada, o medir de nuevo su posición.",
    "hoist-rope.fail": "Poner el cable para el que está hecho el aparejo.",
    "deck-clear.fail": "Colgar las plataformas separadas, o bajar una de ellas.",
    "roof-below.fail": "Medir otra vez el descenso y la altura libre, hasta ese techo.",
    "spacing.fail": "Mover los cables hasta que cuelguen sobre los estribos.",
    "hoists-in-sum.fail": "Quitar carga de la plataforma, o usar aparejos que levanten más.",
    "share-in-step.fail": "Poner la carga más cerca del otro aparejo, o subir menos a la vez.",
    "taut-in-step.fail": "Mantener personas y material entre los cables, o subir menos a la vez.",
    "riders-weight.fail": "Que suban menos personas, o usar una plataforma prevista para más.",
    "step-load.fail": "Subir menos a la vez, o usar una plataforma prevista para más.",
    "steps-with-all.fail": "Indicar el paso en que suben todos, también la última bajada.",
    "step-on-deck.fail": "Medir otra vez dónde está; tiene que estar sobre la plataforma.",
    "hoists-by-half.fail": "Quitar carga de la plataforma, o usar aparejos que levanten más.",
    "anchor-use.out": "Amarrar a un anclaje que esté en servicio.",
    "anchor-use.barred": "Amarrar a un anclaje estructural hecho para ello.",
    "anchor-use.not-for-it": "Amarrar a un anclaje cuyos papeles lo permitan.",
    "tieback-end.fail": "Amarrar a un anclaje permitido, o a una estructura que alguien juzgue.",
    "tieback-angle.fail": "Amarrar en perpendicular, o con un par desde ambos lados de la viga.",
    "tieback-pair.fail": "Amarrar a lo que está por dentro de la viga.",
    "outside.one_side": "Poner uno del par al otro lado de la viga.",
    "tieback-strength.fail": "Usar un amarre y extremos tan fuertes como el cable de suspensión.",
    "anchor-load.fail": "Amarrar a un anclaje que lo admita.",
    "anchor-direction.fail": "Amarrar a un anclaje que valga para esta dirección de tiro.",
    "alone.shared": "Dar a cada línea de vida un anclaje propio.",
    "edge-protection.low": "Sujetar a quienes montan en el borde, y decir por escrito cómo.",
    "seen.fail": "Arreglarlo, y mirar de nuevo.",
    "heads.fail": "Añadir una línea de vida en buen estado por persona, o menos personas.",
    "label-state.fail": "Usar una viga cuya etiqueta se pueda leer.",
    "label-limit.fail": "Quitar piezas o usar una viga que las admita; hacerlo revisar.",
    "label-limit-mass.fail": "Quitar piezas o usar una viga que las admita; hacerlo revisar.",
    "proportion.fail": "Acortar el brazo exterior o alargar el interior; hacerlo revisar.",
    "rope.fail": "Usar un cable o extremo más fuerte, o un aparejo menor; hacerlo revisar.",
    "hardware.fail": (
        "Usar herraje más fuerte de carga de rotura conocida, o un aparejo menor; hacerlo revisar."
    ),
    "connector.fail": "Cambiar la pieza y mirarla de nuevo.",
    "pin.fail": "Poner perno, alambre o cierre al pasador y mirarlo de nuevo.",
    "thimble.fail": "Hacer el extremo con un guardacabo de la medida del cable.",
    "end-clips.fail": "Usar grapas de doble mordaza, o hacer un extremo prensado o empalmado.",
    "end-knot.fail": "Hacer un extremo para este cable, sin nudos.",
    "end-maker.fail": "Que lo haga el fabricante del cable o una persona cualificada.",
    "end-fits.fail": "Usar un extremo hecho para el diámetro de este cable.",
    "clip-count.fail": "Poner tantas grapas como se exigen y devolver más cable.",
    "clip-spacing.fail": "Poner las grapas más separadas.",
    "clip-turnback.fail": "Devolver más cable y poner de nuevo las grapas.",
    "clip-torque.fail": (
        "Mirar la hoja de las grapas y apretarlas con su par; cambiar el cable aplastado."
    ),
    "saddle.fail": "Girar las grapas: base en el lado de carga.",
    "tightened.fail": "Cargar la línea, apretar de nuevo las grapas, y antes de cada turno.",
    "broken-in-lay.fail": "Cambiar el cable.",
    "broken-in-strand.fail": "Cambiar el cable.",
    "wire-worn.fail": "Cambiar el cable.",
    "rope-damage.fail": "Cambiar el cable.",
    "drum-turns.fail": "Poner un cable más largo en el tambor.",
    "hoist-tested.fail": "Usar un aparejo de un tipo ensayado por un laboratorio cualificado.",
    "second-brake.fail": "Usar un aparejo con un freno que actúe solo con exceso de velocidad.",
    "control.fail": "Dar a cada aparejo su propio mando.",
    "joints.fail": (
        "Unir los módulos con pasadores o tornillos en buen estado, y mirarlos de nuevo."
    ),
    "fixed.fail": "Fijar la plataforma a sus estribos, y mirarla de nuevo.",
    "guardrail.fail": (
        "Poner barandillas en buen estado en todos los lados abiertos, y mirarlas de nuevo."
    ),
    "toeboard.fail": (
        "Poner rodapiés en buen estado en todos los lados abiertos, y mirarlos de nuevo."
    ),
    "along.fail": (
        "Quitar aquello en lo que se engancha, o guiar la plataforma apartada, y decir cómo."
    ),
    "sway.fail": "Amarrar la plataforma a lo que puede sujetarla, o hacer evaluar si hace falta.",
    "first-lift.fail": (
        "Subir un poco la plataforma, probar los dos frenos y decir qué se encontró."
    ),
    "deck.fail": "Cerrar los huecos del piso, y mirar otra vez.",
    "level.fail": "Ajustar los dos aparejos por igual, y mirar otra vez en 3 m de recorrido.",
    "bow.fail": "Quitar carga, o usar una plataforma hecha para ella.",
    "drives.fail": "Usar aparejos con engranajes y frenos cerrados, sin motor en la plataforma.",
    "hot-work.fail": "Aislar la plataforma y ponerla a tierra, o soldar y cortar en otro sitio.",
    "overhead.fail": "Darle cables de apoyo propios, o desmontarlo.",
    "listed.fail": "Usar una plataforma ensayada e inscrita.",
    "stage-narrow.fail": "Usar una plataforma más ancha, o medirla otra vez.",
    "stage-short.fail": "Medir otra vez la plataforma y sus estribos.",
    "most-load.fail": "Quitar personas o material, o usar una plataforma que los pueda llevar.",
    "rail-height.fail": "Subir el pasamanos.",
    "plate-state.fail": "Poner en su lugar uno cuya placa se pueda leer.",
    "test.failed": "Retirarlo; poner uno ensayado en su lugar.",
    "rail-lacks.fail": "Remediar lo que le falta a la barandilla, y mirar otra vez.",
    "high-rail.fail": "Bajar el pasamanos, o remediar lo demás que le falta a la barandilla.",
    "face-side.fail": (
        "Colgar la plataforma más cerca, poner ahí una barandilla o amarrar a cada uno."
    ),
    "rope-length.fail": "Usar un cable más largo, o poner un tope en su extremo inferior.",
    "lifeline-strength.fail": (
        "Usar una cuerda más resistente, o un terminal que conserve más que un nudo."
    ),
    "lifeline-rope.fail": "Usar una línea de vida de fibra sintética.",
    "life-end-kind.fail": "Usar una línea con un extremo hecho para una cuerda de su clase.",
    "life-end-maker.fail": (
        "Usar una línea cuyo extremo hizo su fabricante o una persona cualificada."
    ),
    "life-end-fits.fail": "Usar un extremo hecho para el diámetro de esta línea de vida.",
    "lifeline-ledge.fail": "Quitarlo, o que se proyecte cómo sujetar a los ocupantes ahí.",
    "lifeline-overhead.fail": (
        "Retirarlo, o que se proyecte otra manera de sujetar a los ocupantes bajo él."
    ),
    "lifeline-grab.fail": "Poner un freno hecho para esta cuerda, con el lado correcto arriba.",
    "grab-height.fail": "Llevar el freno a la altura de la argolla D o más arriba.",
    "lifeline-swing.fail": "Colgar la línea de vida donde se trabaja, libre a ambos lados.",
    "rider-harness.fail": "Retirar arnés y cabo, y usar otros en buen estado.",
    "lifeline-splices.fail": "Usar una línea de vida de una sola pieza, sin nudos.",
    "lifeline-tied.fail": "Unir el cabo a la línea de vida propia del ocupante.",
    "free-fall.fail": "Usar un cabo más corto.",
    "deceleration.fail": "Usar un cabo que detenga la caída en lo permitido.",
    "arrest-force.fail": "Usar un cabo con un absorbedor que limite la fuerza.",
    "absorber.fail": "Usar un cabo con un absorbedor hecho para el peso de su ocupante.",
    "outside.force_left": "Mirar de nuevo la etiqueta del cabo, o usar uno hecho para su ocupante.",
    "line-angle.fail": "Usar un anclaje frente al lugar donde la línea de vida pasa el borde.",
    "fall-clearance.fail": (
        "Usar un cabo más corto o una cuerda que se alargue menos; más abajo hace falta otro medio."
    ),
    "bearing.fail": "Repartir la carga con una placa mayor, o apoyar en lo que la resista.",
    "rear-bearing.fail": "Repartir la carga con una placa mayor, o apoyar en lo que la resista.",
    "outside.rear-plate": "Medir de nuevo la placa bajo el caballete trasero.",
    "flowable.fail": "Usar piezas hechas como contrapeso que no puedan derramarse.",
    "purpose-made.fail": "Usar piezas hechas como contrapeso.",
    "marking.fail": "Usar piezas con su masa estampada, o pesarlas y marcarlas.",
    "fastening.fail": "Sujetar las piezas como pide la regla, y mirar de nuevo.",
}
