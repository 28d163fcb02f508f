"""The fixed words of the sheet for the structural engineer, in Spanish."""

from __future__ import annotations

REACTIONS: dict[str, str] = {
    "reactions": "Reacciones para el ingeniero estructural",
    "reactions_told": (
        "Lo que cada viga con contrapeso carga sobre la cubierta. No dice nada de lo que la"
        " cubierta resiste: esa es la respuesta del ingeniero estructural, en el espacio del"
        " final."
    ),
    "stand": "Apoyo",
    "fulcrum": "fulcro",
    "rear": "caballete trasero",
    "at_plan": "Planta x, y",
    "plate": "Placa; resistencia indicada",
    "on_pad": "sobre un tablón",
    "idle": "Sin carga",
    "at_rated": "A carga nominal",
    "with_factor": "Con el factor de la regla",
    "most": "Máximo en servicio",
    "assumed": "Lo que se supone",
    "assumed_told": (
        "Valores como se indican, sin tolerancia añadida. Viga rígida sobre dos apoyos:"
        " momentos respecto al fulcro y luego fuerzas verticales; cubierta horizontal, cables"
        " verticales, sin impacto ni viento. La carga en el cable es la nominal o la de"
        " bloqueo de su aparejo; no se le suma cable. Pesos a 9.80665 m/s2. Máximo en"
        " servicio: en el fulcro, la carga nominal, el contrapeso y la viga juntos, como si la"
        " cola fuera a levantarse; en el caballete trasero, sin nada en el cable. El factor de"
        " la regla se aplica a lo que el apoyo lleva bajo la carga que la regla nombra;"
        " detrás, a lo que hay allí sin carga, que es la lectura estricta de este programa. De"
        " un brazo trasero conocido de dos maneras, cada apoyo se calcula con el que más lo"
        " carga. Coordenadas: el origen propio del sitio, por borde, estación y retiro. Una"
        " raya: no se indica, o no se conoce por ello."
    ),
    "engineers_answer": "La respuesta del ingeniero estructural",
    "engineers_answer_told": (
        "Para las bajadas, los límites y los días escritos aquí, y para nada más. Un límite"
        " en blanco no es límite."
    ),
    "paper_number": "Plano o carta, revisión",
    "valid_until": "Válido hasta",
    "for_drops": "Para las bajadas",
    "most_reach": "Voladizo, máximo",
    "least_backspan": "Brazo trasero, mínimo",
    "most_rated": "Carga nominal, máxima",
    "most_front": "Sobre un fulcro, máximo, sin factor",
    "most_rear": "Sobre un caballete trasero, máximo, sin factor",
    "kinds_named": "Aparejos y vigas",
}
