"""Frases en español sobre la línea de suspensión: herraje, extremo, grapas, desgaste, longitud."""

from __future__ import annotations

LINE: dict[str, str] = {
    "hardware.pass": "Resiste {strength}; se exigen {required} ({factor} x {load}).",
    "hardware.fail": "Resiste solo {strength}; se exigen {required} ({factor} x {load}).",
    "hardware.missing": "No se sabe lo que este herraje resiste, o lo que debe resistir.",
    "hardware.unsaid": "Nadie declaró qué une el extremo del cable con su soporte.",
    "hardware.none": (
        "No se declara ningún herraje de unión: un ojo o un casquillo necesita una pieza que"
        " lo una a su soporte."
    ),
    "connector.pass": "Cómo se encontró la pieza: {found}.",
    "connector.fail": "Cómo se encontró la pieza: {found}. Nadie sube hasta que se corrija.",
    "connector.missing": "Nadie declaró en qué estado se encontró la pieza.",
    "pin.pass": "Su pasador o cierre: {found}.",
    "pin.fail": "Su pasador o cierre: {found}. Puede salirse.",
    "pin.missing": "Nadie declaró cómo está sujeto su pasador o cierre.",
    "thimble.pass": "Guardacabo en el ojo del cable: {found}.",
    "thimble.fail": (
        "Guardacabo en el ojo del cable: {found}. Este extremo necesita uno presente y en"
        " buen estado."
    ),
    "thimble.missing": "Nadie declaró si hay guardacabo en el ojo del cable.",
    "end-clips.pass": "El cable no acaba en grapas rechazadas: {found}.",
    "end-clips.fail": "El cable acaba en {found}: rechazado donde cuelga el cable de un aparejo.",
    "end-clips.missing": "No se declara con qué está hecho el extremo del cable.",
    "end-knot.pass": "El cable no acaba en nudo: {found}.",
    "end-knot.fail": "El cable acaba en {found}: eso no sostiene el cable de un aparejo.",
    "end-knot.missing": "No se declara si el cable acaba en nudo.",
    "end-maker.pass": "El extremo del cable lo hizo: {found}.",
    "end-maker.fail": "El extremo del cable lo hizo: {found}; quién puede: {listed}.",
    "end-maker.missing": "No se declara quién hizo el extremo del cable.",
    "end-fits.pass": "El extremo está hecho para {made_for}; el cable es de {diameter}.",
    "end-fits.fail": (
        "El extremo está hecho para {made_for}; el cable es de {diameter}: no sostiene ese cable."
    ),
    "end-fits.missing": "No se declara para qué diámetro está hecho el extremo, o el del cable.",
    "clip-count.pass": "Grapas en el extremo del cable: {count}; se exigen al menos {least}.",
    "clip-count.fail": "Grapas en el extremo del cable: solo {count}; se exigen al menos {least}.",
    "clip-count.missing": (
        "Con lo declarado no se pueden contar las grapas frente a la hoja de su fabricante."
    ),
    "clip-spacing.pass": (
        "Las grapas están a {apart}; se exige al menos {least} ({factor} diámetros de cable)."
    ),
    "clip-spacing.fail": (
        "Las grapas están solo a {apart}; se exige al menos {least} ({factor} diámetros de cable)."
    ),
    "clip-spacing.missing": "No se sabe a qué distancia están las grapas, o deben estar.",
    "clip-turnback.pass": "Cable devuelto en las grapas: {turned}; se exige al menos {least}.",
    "clip-turnback.fail": "Cable devuelto en las grapas: solo {turned}; se exige al menos {least}.",
    "clip-turnback.missing": "No se sabe cuánto cable está devuelto en las grapas, o debe estarlo.",
    "clip-torque.pass": "Las grapas están apretadas con {torque}; su fabricante pide {makers}.",
    "clip-torque.fail": (
        "Las grapas están apretadas con {torque}; su fabricante pide {makers}, y más de"
        " {most} es demasiado."
    ),
    "clip-torque.missing": "No se sabe con qué par están apretadas las grapas, o deben estarlo.",
    "saddle.pass": "Bases de las grapas: {found}.",
    "saddle.fail": "Bases de las grapas: {found}. Deben estar: {listed}.",
    "saddle.missing": "Nadie declaró en qué lado están las bases de las grapas.",
    "tightened.pass": "Las grapas se apretaron: {found}.",
    "tightened.fail": "Las grapas se apretaron: {found}. Se exige: {listed}.",
    "tightened.missing": "Nadie declaró desde cuándo están apretadas las grapas.",
    "broken-in-lay.pass": "Alambres rotos en un paso de cable: {count}; con {limit} se cambia.",
    "broken-in-lay.fail": "Alambres rotos en un paso de cable: {count}; con {limit} se cambia.",
    "broken-in-lay.missing": (
        "Nadie declaró de este mismo cable cuántos alambres de un paso están rotos."
    ),
    "broken-in-strand.pass": (
        "Alambres rotos en un cordón de un paso: {count}; con {limit} se cambia el cable."
    ),
    "broken-in-strand.fail": (
        "Alambres rotos en un cordón de un paso: {count}; con {limit} se cambia el cable."
    ),
    "broken-in-strand.missing": (
        "Nadie declaró de este mismo cable cuántos alambres de un cordón están rotos."
    ),
    "wire-worn.pass": (
        "Parte perdida del diámetro de un alambre exterior: {share}; con {limit} se cambia el"
        " cable."
    ),
    "wire-worn.fail": (
        "Parte perdida del diámetro de un alambre exterior: {share}; con {limit} se cambia el"
        " cable."
    ),
    "wire-worn.missing": (
        "Nadie declaró de este mismo cable cuánto están gastados los alambres exteriores."
    ),
    "rope-damage.pass": "Daños del cable: {found}.",
    "rope-damage.fail": "Daños del cable: {found}. Se cambia.",
    "rope-damage.missing": "Nadie declaró de este mismo cable si tiene otros daños.",
    "rope-length.pass": "{length} de cable; con {needed} se llega al nivel de abajo.",
    "rope-length.fail": (
        "Solo {length} de cable; con {needed} se llega al nivel de abajo, y no hay tope en"
        " buen estado en su extremo."
    ),
    "rope-length.missing": (
        "No se sabe si el cable llega al nivel de abajo, y no se declara un tope en buen"
        " estado en su extremo."
    ),
    "drum-turns.pass": (
        "{count} vueltas de cable en el tambor con la plataforma en su punto más bajo; al menos"
        " {least}."
    ),
    "drum-turns.fail": (
        "Solo {count} vueltas de cable en el tambor con la plataforma en su punto más bajo; al"
        " menos {least} quedan en él."
    ),
    "drum-turns.missing": (
        "No se sabe cuántas vueltas de cable quedan en el tambor con la plataforma en su punto más"
        " bajo."
    ),
    "hoist-rope.missing": (
        "Nadie declaró si el aparejo {hoist} trepa por su cable o lo enrolla en un tambor; alguien"
        " debe decirlo."
    ),
    "end-stop.pass": "Tope en el extremo inferior del cable: {found}.",
    "na.no-clips": "El extremo del cable no está hecho con grapas.",
    "na.no-wire-rope": "No es un cable de acero.",
}
