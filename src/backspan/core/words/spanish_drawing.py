"""The fixed words of drawings, in Spanish. Where paper is narrow they are short."""

from __future__ import annotations

from backspan.core.words.spanish_detail import DETAILS
from backspan.core.words.spanish_elevation import ELEVATION

DRAWING: dict[str, str] = {
    **DETAILS,
    **ELEVATION,
    # what nobody stated, measured or reviewed
    "not_measured": "sin medir",
    "not_stated": "no declarado",
    "not_reviewed": "no revisado",
    "no_finding": "sin resultado",
    "not_judged": "no juzgado por este programa",
    "evidence_not_stated": "evidencia no declarada",
    "evidence_not_measured": "{evidence}, sin medir",
    "worked_out": "calculado, sin medir",
    "length_worked_out": "{length} calculado",
    "length_not_measured": "{name} sin medir",
    # the building
    "edge": "Borde {edge}",
    "faces": "da a {faces}",
    "parapet": "pretil",
    "parapet_of": "pretil ({material})",
    "parapet_high": "pretil: {high}",
    "parapet_not_stated": "pretil: no declarado",
    "high": "alto {height}",
    "thick": "espesor {thickness}",
    "height_not_measured": "altura sin medir",
    # a support
    "beam": "Viga {tags}:",
    "beam_not_measured": "Viga {tags}: longitud sin medir",
    "type": "{tags}, tipo {types}",
    "tip_beyond_line": "Cable a punta",
    "tail_gap": "Cola a pila",
    "reach": "Voladizo",
    "backspan": "Brazo trasero",
    "setback": "Retranqueo",
    "setback_not_measured": "Retranqueo sin medir: no se conoce su lugar en la cubierta",
    "fulcrum": "Fulcro",
    "on_the_parapet": "Sobre el pretil",
    "kind_high": "{kind}, alto {height}",
    "kind_not_measured": "{kind}: altura sin medir",
    "rear_stand": "Fulcro a caballete trasero",
    "rear_stand_at": "Caballete trasero {length}",
    "planned": "previsto",
    "one_piece": "1 pieza",
    "pieces": "{count} piezas",
    "pieces_of": "{pieces} de {mass}",
    "no_pieces": "sin piezas",
    "held": "sujeción: {fastening}",
    "stack_not_measured": "longitud de la pila sin medir",
    "support_not_stated": "Soporte no declarado",
    "reach_of": "voladizo {length}",
    "backspan_of": "brazo trasero {length}",
    "reach_not_measured": "voladizo sin medir",
    "paper": "documento: {paper}",
    # what hangs, and what holds back
    "suspension_line": "Cable de suspensión",
    "rope": "cable {rope}",
    "hoist": "aparejo {hoist}",
    "rated_load": "carga nominal {load}",
    "stall_load": "bloqueo: {load}",
    "stage": "Plataforma {stage}",
    "stage_not_stated": "Plataforma no declarada",
    "long": "{length} de largo",
    "wide": "{width} de ancho",
    "width_not_stated": "ancho no declarado",
    "no_tieback": "Ningún amarre declarado",
    "anchor_not_to_scale": "no a escala",
    "tie_start_not_stated": "sujeto en: no declarado",
    "to_anchor": "al anclaje {anchor}",
    "to_other": "a: {end}",
    "tieback_to": "amarre {tieback} {end}",
    "angle_not_known": "{tieback}: ángulo no conocido",
    "station_not_stated": "posición no declarada",
    # titles of views and drawings
    "point_title": "Punto de suspensión {point}",
    "points_title": "Puntos de suspensión {points} y {last}, iguales",
    "section": "Sección {drop}",
    "section_name": "Sección: bajada {drop}",
    "section_title": "{site}: sección de la bajada {drop}",
    "section_told": (
        "Sección por la bajada {drop} en {site}, a escala, con {count} puntos de suspensión."
        " Respuesta: {answer}."
    ),
    "section_figure_told": (
        "Sección por la bajada {drop} en {site}, a escala; puntos de suspensión: {points}."
        " Respuesta: {answer}."
    ),
    "no_points": "ninguno",
    "plan": "Planta {roof}",
    "plan_name": "Planta de cubierta: {roof}",
    "plan_title": "{site}: planta de cubierta, {roof}",
    "plan_told": (
        "Planta de la cubierta {roof} en {site}, a escala, con {anchors} anclajes y {drops}"
        " bajadas. Respuestas: {answers}."
    ),
    "no_drops": "ninguna bajada",
    "plan_figure_title": "{site}: planta de la bajada {drop}",
    "plan_figure_told": (
        "Cubierta en torno a la bajada {drop} en {site}, en planta, a escala, con sus amarres y"
        " líneas de vida hasta sus anclajes. Respuesta: {answer}."
    ),
    # the title block
    "title_block": "Cajetín, base y precaución",
    "invented": "Inventado: {words}",
    "invented_begins": "inventado",
    "reviewed": "Revisado",
    "configuration": "Configuración",
    "by_drop": "por bajada, arriba",
    "governing": "Manda",
    "edge_pair": "Borde",
    "edge_faces": "{edge}, da a {faces}",
    "along_edge": "En el borde",
    "from_to": "{start} a {end}",
    "drop_height": "Altura bajada",
    "roof_level": "Nivel cubierta",
    "scale": "Escala",
    "scale_on": "{scale} en {sheet}",
    "scale_bar": "Escala {scale}",
    "owner": "Propietario",
    "prepared_by": "Preparado por",
    "project_number": "Proyecto núm.",
    "sheet": "Hoja",
    # what the answers mean
    "means_pass": "se cumplió cada comprobación hecha",
    "means_fail": "al menos una comprobación no se cumple",
    "means_refer": "debe decidir una persona nombrada",
    "means_missing": "falta una medida o un documento",
    # tables
    "answer": "Respuesta",
    "answers": "Respuestas",
    "findings": "Resultados",
    "check": "Comprobación",
    "at": "En",
    "drop": "Bajada",
    "point": "Punto",
    "counterweight": "Contrapeso",
    "hoist_rated_load": "Nominal aparejo",
    "more": "y {count} más: {where}",
    "see_report": "véase el informe",
    "see_sections": "véase la sección de cada bajada",
    # the legend
    "legend": "Leyenda",
    "legend_existing": "Edificio existente",
    "legend_parapet": "Pretil",
    "legend_obstacle": "Obstáculo",
    "legend_drop": "Bajada",
    "legend_beam": "Viga",
    "legend_counterweight": "Contrapeso",
    "legend_suspension": "Cable suspensión",
    "legend_stage": "Plataforma",
    "legend_tieback": "Amarre",
    "legend_lifeline": "Línea de vida",
    "legend_planned": "Previsto",
    "legend_not_known": "Sin medir",
    "legend_anchor": "Anclaje",
    "legend_anchor_conditional": "Con condición",
    "legend_anchor_out": "Fuera de servicio",
    "legend_point": "Punto suspensión",
    "legend_fulcrum": "Fulcro",
    "legend_centroid": "Centro de la pila",
    # basis, caution and notes
    "basis": "Base",
    "edition": "{rule_set}, edición {edition}",
    "more_basis": "y {count} más, véase el informe de cada bajada",
    "caution_head": "Revisado por programa. No es diseño.",
    "caution": (
        "Muestra lo declarado y medido, y lo que el programa halló al compararlo con las reglas"
        " nombradas aquí. No es permiso de trabajo. Deciden la persona calificada o con licencia"
        " y el código local. Si la cubierta difiere de esta hoja, parar, que nadie suba a la"
        " plataforma, y preguntar a esa persona."
    ),
    "brackets": "Entre corchetes, redondeado; vale la primera cifra.",
    "dashed": "A trazos y «sin medir»: nadie lo declaró; su lugar aquí no significa nada.",
    "no_rig": "No hay montaje declarado para esta bajada.",
    "not_to_scale": (
        "No a escala: bajo el corte, altura de las piezas, ancho del caballete, final de un amarre."
    ),
    "angles": (
        "El ángulo de un amarre es en planta, desde la línea de su viga; sin cifra es menor de"
        " 5 grados."
    ),
    "taken_over": (
        "Una respuesta abarca todos los temas de su bajada; lo asumido por escrito se cuenta en"
        " su sección."
    ),
    "backward": (
        "Según el contorno, la cubierta está al otro lado del borde {edges}: un borde va de su"
        " extremo izquierdo al derecho, visto desde la cubierta."
    ),
    "one_label": "1 rótulo",
    "labels": "{count} rótulos",
    "no_room": "{labels} sin sitio a esta escala: véase el informe.",
    "left_out": "{labels} fuera de aquí: véase {sheet}.",
    "more_views": "Sin dibujar, por falta de sitio: puntos de suspensión {points}.",
    # the operating envelope
    "envelope_head": "Voladizo que sostiene cada brazo trasero, {point}",
    "envelope_told": "{title}, {pieces}; como está montado: {as_built}.",
    "held_here": "las piezas lo sostienen",
    "not_held_here": "las piezas no lo sostienen",
    "no_envelope": "La revisión no dio ninguna línea para este punto.",
    "as_built": "Montado",
    "now": "Montado: {as_built}.",
    "together": "{pieces}, {mass} en total",
    "counterweight_on_beam": "Contrapeso en la viga: {held}.",
    "rule": "Regla: {rule}.",
    "rule_factor": "{rule}, {factor} veces el momento de: {load}",
    "rule_source": "Fuente de la regla: {mark}.",
    "confirmed": "{mark}, confirmado por {by} el {at}",
    "envelope_caution": (
        "Una sola comprobación, en el peor extremo de las tolerancias. No es un diseño ni un"
        " permiso de trabajo: deciden la revisión de toda la bajada, la persona calificada o con"
        " licencia y el código local."
    ),
}
