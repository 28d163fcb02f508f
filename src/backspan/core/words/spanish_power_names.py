"""What the numbers of the hoists' power are called in Spanish."""

from __future__ import annotations

INPUTS: dict[str, str] = {
    "supply_voltage": "tensión donde empieza el cable eléctrico",
    "least_voltage": "tensión mínima en el aparejo que pide su fabricante",
    "running_current": "corriente de un aparejo que sube su carga nominal",
    "starting_current": "corriente de un aparejo al arrancar, con el rotor bloqueado",
    "cord_length": "longitud del cable eléctrico del cuadro a los aparejos, solo ida",
    "conductor_area": "calibre de los conductores del cable eléctrico",
    "conductor_resistance": "resistencia de un conductor del cable por su longitud",
    "cord_linear_mass": "masa del cable eléctrico por su longitud",
    "most_drop": "mayor parte de la tensión que el cable eléctrico puede perder",
    "generator_rating": "lo que el generador da sin límite",
    "generator_starting": "lo que el generador da mientras un motor arranca",
}
