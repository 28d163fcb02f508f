"""The fixed words of an elevation, in Spanish, by id."""

from __future__ import annotations

ELEVATION: dict[str, str] = {
    "elevation": "Alzado {roof} {edge}",
    "elevation_name": "Alzado: borde {edge}, {roof}",
    "elevation_title": "{site}: alzado del borde {edge}, {roof}",
    "elevation_told": (
        "Alzado de la fachada bajo el borde {edge} de {roof} en {site}, visto desde fuera, a"
        " escala. Bajadas de izquierda a derecha: {answers}."
    ),
    "seen_from_outside": (
        "Visto desde fuera: izquierda y derecha van al revés que desde la cubierta, y el borde"
        " empieza a la derecha."
    ),
    "edge_looks_to": "Da a {faces}.",
    "edge_looks_unstated": "No se declaró a qué da.",
    "start_of_edge": "inicio del borde {edge}",
    "end_of_edge": "fin del borde {edge}",
    "ground_datum": "cota del suelo",
    "level_of_roof": "nivel de cubierta",
    "top_of_parapet": "alto del pretil",
    "drop_height_not_stated": "altura no declarada",
    "clear_below_of": "{length} libre",
    "clear_below_not_stated": "libre abajo no declarado",
    "way_down": "recorrido: {found}",
    "way_down_not_stated": "recorrido: no declarado",
    "standing_framed": "Bajo la respuesta: cómo está la bajada según el registro del día.",
    "standing_left_out": "Cómo está cada bajada en un día consta en el registro, no aquí.",
    "stage_drawn": "La plataforma va a trazos bajo sus puntos: no se declaró a qué altura cuelga.",
    "below_datum": "Longitudes declaradas de estas bajadas pasan bajo la cota del suelo: {drops}.",
    "no_ground": "La cubierta no está sobre la cota del suelo: no se sabe dónde queda el suelo.",
}
