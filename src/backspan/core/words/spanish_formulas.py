"""Titles of the formulas in Spanish, by the name; the English ones stand beside the formulas."""

from __future__ import annotations

TITLES: dict[str, str] = {
    "tipping_moment": "Momento con que una carga en el cable hace girar el soporte sobre su fulcro",
    "required_moment": "Momento que el contrapeso debe resistir: un factor por el de vuelco",
    "free_fall": "Caída libre hasta que el cabo se tensa, según la altura de su unión",
    "lifeline_length": "Línea de vida de su anclaje, sobre el pretil, al punto más bajo",
    "lifeline_stretch": "Lo que se alarga una línea de vida al detener una caída",
    "line_slack": "Lo que se afloja una línea de vida que se desliza por el borde",
    "slowing_force": "Fuerza que frena al ocupante, aparte de su peso",
    "opening_needed": "Lo que tiene que abrirse un absorbedor hasta detener al ocupante",
    "fall_distance": "Altura bajo los pies que toma una caída, con un margen",
    "lowest_in_time": "Menor altura del piso desde la que una caída se detiene a tiempo",
    "weight": "Peso de una masa con la gravedad normal",
    "resisting_moment": "Momento con que el contrapeso sujeta el soporte sobre su fulcro",
    "resisting_moment_with_beam": (
        "Momento resistente con el peso de la viga: ayuda dentro, perjudica fuera (negativo)"
    ),
    "required_counterweight": "Peso de contrapeso que resiste un momento con un brazo trasero",
    "required_counterweight_with_beam": (
        "Peso de contrapeso necesario además del momento propio de la viga sobre el fulcro"
    ),
    "factor_reached": "Factor del momento resistente sobre un momento de vuelco",
    "pieces_in_weight": "Piezas que suman un peso, antes de redondear a enteras",
    "largest_rope_tension": (
        "Mayor tensión arriba del cable: tiro del aparejo, cable y peso estabilizador"
    ),
    "half_dead_full_live": "Carga de un soporte de dos cuando todos están en su extremo",
    "half_dead_half_live": "Carga de un soporte de dos cuando todo está repartido por igual",
    "stall_cap": "Mayor carga de bloqueo que un aparejo puede tener para su carga nominal",
    "inboard_length": "Longitud de la viga del fulcro a su cola",
    "backspan_to_stack": "Brazo trasero: del fulcro al centro de la pila, dado desde la cola",
    "uniform_beam_centroid": "Centro de una viga uniforme, por dentro del fulcro (negativo: fuera)",
    "beam_centroid": "Centro de una viga conocido desde su cola, por dentro del fulcro",
    "inboard_to_outboard": "Brazo interior entre brazo exterior",
    "rows_length": "Longitud de viga que ocupan filas de piezas iguales",
    "rows_centroid": "Centro de filas iguales, desde la cola de la viga",
    "pieces_weight": "Peso de un número de piezas iguales",
    "moment_about_tail": "Primer momento de la pila sobre la cola, con un grupo más",
    "added_weight": "Peso de la pila, con un grupo más",
    "added_length": "Distancia de la cola al extremo interior de las filas hasta aquí",
    "stack_centroid": "Centro de toda la pila, desde la cola de la viga",
    "utilisation": "Parte de lo disponible que usa lo exigido: 1 es justo lo que basta",
    "rear_reaction": (
        "Reacción del caballete trasero mientras carga; negativa donde la cola se levantaría"
    ),
    "front_reaction": (
        "Reacción del fulcro: cuanto cuelga y está en la viga, menos lo que lleva el trasero"
    ),
    "spread_side": "Lado que una placa presiona a través de una plancha debajo de ella",
    "pressed_area": "Área que presiona una plancha: ni más que la suya, ni más que lo repartido",
    "room_across": "Ancho que cuenta de una placa cerca del borde de lo que la sostiene",
    "imposed_load": "Lo que una superficie debe resistir: el factor de la regla sobre lo que carga",
    "bearing_pressure": "Presión que la superficie debe resistir, con el factor de la regla",
    "load_to_carry": "Fuerza que un cable de suspensión debe resistir, con el factor de la regla",
    "strength_at_end": "Fuerza que resiste un cable en su extremo: la parte que este conserva",
    "pair_tension": (
        "Tiro de uno de dos amarres a lados opuestos que sujetan juntos una fuerza a lo largo de la"
        " viga"
    ),
    "turned_pull": "Tiro de un cable que se desvía de la dirección de la fuerza que sujeta",
    "pull_aside": "Lo que tira tal cable a través de la dirección de la fuerza que sujeta",
    "sling_leg": "Tiro de cada uno de dos ramales iguales, por su pendiente desde la vertical",
    "metal_area": "Sección de los alambres de un cable, como parte del cuadrado de su diámetro",
    "rope_stretch": "Lo que se alarga un cable ya asentado bajo una carga, y que recupera",
    "hardware_strength": (
        "Fuerza a la que falla un herraje, por su límite de carga y el factor de su fabricante"
    ),
    "least_clip_spacing": "Menor separación entre grapas, como múltiplo del diámetro del cable",
    "turnback_for_clips": "Cable que devolver donde hay más grapas que en la hoja del fabricante",
    "most_clip_torque": (
        "Mayor par de apriete de las grapas, como múltiplo del que pide su fabricante"
    ),
    "deck_beyond_line": "Cuánto sobresale la plataforma más allá de cada cable",
    "half_way": "La mitad de una longitud",
    "share_of_load": "Lo que una carga lleva a un cable, por su distancia del otro",
    "hoist_share": "Lo que lleva un aparejo: la mitad de lo que cuelga, y su parte de cada carga",
    "half_of_dead": "Lo que mantiene tenso el cable alejado de todos",
    "rope_to_reach": "Cable desde donde apoya la viga hasta el nivel de abajo",
    "current_on_cord": "Corriente de un cable: se suman los aparejos que suben y los que arrancan",
    "drop_single_phase": (
        "Tensión perdida en un cable monofásico, ida y vuelta; solo resistencia, factor de"
        " potencia 1"
    ),
    "drop_three_phase": (
        "Tensión perdida entre dos líneas de un cable trifásico; solo resistencia, factor de"
        " potencia 1"
    ),
    "voltage_left": "Tensión que queda en el aparejo, de la que hay donde empieza su cable",
    "share_lost": "Parte de la tensión que pierde el cable",
    "drop_by_share": "Tensión que el cable puede perder, donde se admite una parte de ella",
    "drop_by_least": "Tensión que el cable puede perder, donde se pide una mínima en el aparejo",
    "longest_single_phase": (
        "Mayor cable monofásico para una pérdida admitida; solo resistencia, factor de potencia 1"
    ),
    "longest_three_phase": (
        "Mayor cable trifásico para una pérdida admitida; solo resistencia, factor de potencia 1"
    ),
    "cord_mass": "Masa de un cable eléctrico por su longitud",
    "power_single_phase": "Potencia aparente que toma una corriente monofásica",
    "power_three_phase": (
        "Potencia aparente que toma una corriente trifásica equilibrada, por la tensión entre"
        " líneas"
    ),
}
