"""What an entry of each kind may say at the made-up site, with its line in English and Spanish."""

from __future__ import annotations

from dataclasses import replace

from backspan.core.ledger import bodies
from backspan.core.ledger.kinds import Body
from backspan.core.ledger.writes import skeleton
from backspan.core.model.evidence import Evidence, StatedValue
from backspan.core.model.laid import Pick
from backspan.core.model.plan import Plan
from backspan.core.model.signed import SignedLimits
from backspan.core.model.site import AnchorStanding
from backspan.core.model.topics import DropTaken, TakeOver, Topic
from backspan.core.model.underlay import Underlay
from backspan.core.model.work import WorkStep
from tests.unit.core.ledger.histories import DROP, REACH, RIG, ROOF, TIED
from tests.unit.core.rigs import PROJECT, TODAY

ANCHOR = next(one for one in ROOF.anchors if one.id == TIED)
HOIST = next(one for one in PROJECT.kit.units if one.id == "H-1")
POINT = ("suspension_points", "L", "counterweighted_beam")
TAUT = ("drops", DROP, "rig", "tiebacks", "T1", "taut")
UNTIL = "2027-03-01"
PLACE = f"{PROJECT.site.name}, {PROJECT.site.place}"
TAPED = StatedValue(0.4572, 0.0, Evidence.MEASURED, "MT", TODAY, text="18 in")
LETTER = TakeOver(
    "ana", "LETTER 7", TODAY, UNTIL, (Topic.WIND, Topic.RESCUE), (DropTaken(DROP, "c0de"),)
)
LIMITS = SignedLimits("ana", "SK-1", TODAY, UNTIL, (DROP, "E"), revision="B")

SPAN = StatedValue(9.144, None, Evidence.MEASURED, "MT", TODAY, text="30 ft")
UNDER = Underlay(
    "5e" * 32,
    "roof.dxf",
    (Pick((0.0, 0.0), (0.0, 0.0)), Pick((18.288, 0.0), (18.288, 0.0))),
    ("corner 1", "corner 2"),
    ((0.0, 0.0), (0.0, 9.15)),
    SPAN,
    0.006,
    unit="ft",
)
PHOTO = replace(UNDER, name="roof.jpg", difference=-0.02, unit=None, size=(4000, 3000))

#: A body of each kind, and of each case a kind has.
SAID: tuple[tuple[Body, str, str], ...] = (
    (
        bodies.SiteDescribed(skeleton(PROJECT)),
        f"site {PLACE}: building, people, kit and basis described",
        f"obra {PLACE}: descritos edificio, personas, equipo y base",
    ),
    (
        bodies.DropDescribed(replace(PROJECT.drops[0], rig=None, plan=None)),
        "drop D: described, roof ROOF, edge S",
        "bajada D: descrita, cubierta ROOF, borde S",
    ),
    (
        bodies.AnchorRegistered(ROOF.id, ANCHOR),
        "anchor A1, roof ROOF: registered, in service",
        "anclaje A1, cubierta ROOF: registrado, en servicio",
    ),
    (
        bodies.AnchorInspected(ROOF.id, TIED, TODAY, AnchorStanding.CONDITIONAL, says="rust"),
        "anchor A1, roof ROOF: inspected 2026-11-25, conditional - rust",
        "anclaje A1, cubierta ROOF: inspeccionado 2026-11-25, con condición: «rust»",
    ),
    (
        bodies.AnchorInspected(ROOF.id, TIED, TODAY, AnchorStanding.IN_SERVICE, "2026-01-02"),
        "anchor A1, roof ROOF: inspected 2026-11-25, in service, certificate of 2026-01-02",
        (
            "anclaje A1, cubierta ROOF: inspeccionado 2026-11-25, en servicio, certificado del"
            " 2026-01-02"
        ),
    ),
    (
        bodies.AnchorWithdrawn(ROOF.id, TIED, "cut off"),
        "anchor A1, roof ROOF: withdrawn, nobody uses it - cut off",
        "anclaje A1, cubierta ROOF: retirado, nadie lo usa: «cut off»",
    ),
    (
        bodies.PlanReceived(Plan("Riggers Ltd"), DROP),
        "drop D: plan of Riggers Ltd received",
        "bajada D: recibido el plan de Riggers Ltd",
    ),
    (
        bodies.PlanReceived(Plan("Riggers Ltd", drawing="R-1", revision="C")),
        "whole site: plan of Riggers Ltd received, drawing R-1, revision C",
        "toda la obra: recibido el plan de Riggers Ltd, plano R-1, revisión C",
    ),
    (
        bodies.UnitRegistered(HOIST),
        "hoist H-1, type H: registered",
        "aparejo H-1, tipo H: registro",
    ),
    (
        bodies.UnitLookedAt(HOIST),
        "hoist H-1, type H: looked at, condition: sound",
        "aparejo H-1, tipo H: examen, estado: en buen estado",
    ),
    (
        bodies.UnitLookedAt(replace(HOIST, condition=None)),
        "hoist H-1, type H: looked at, condition: not stated",
        "aparejo H-1, tipo H: examen, estado: no declarado",
    ),
    (
        bodies.UnitExchanged(DROP, (*POINT, "unit"), "B-1", "B-2"),
        "drop D: B-2 in the place of B-1 (suspension_points/L/counterweighted_beam/unit)",
        "bajada D: B-2 en lugar de B-1 (suspension_points/L/counterweighted_beam/unit)",
    ),
    (
        bodies.RigSetUp(DROP, RIG),
        "drop D: rig set up and looked at, suspension points: L, R",
        "bajada D: montaje hecho y revisado, puntos de suspensión: L, R",
    ),
    (
        bodies.RigSetUp(DROP, replace(RIG, suspension_points=())),
        "drop D: rig set up and looked at, suspension points: none",
        "bajada D: montaje hecho y revisado, puntos de suspensión: ninguno",
    ),
    (
        bodies.RigMoved(DROP, "E"),
        "drop D: rig moved to drop E",
        "bajada D: montaje trasladado a la bajada E",
    ),
    (
        bodies.NumberFound(REACH, TAPED),
        (
            "drop D: reach, fulcrum to suspension line: 18 in, measured"
            " (rig/suspension_points/L/counterweighted_beam/reach)"
        ),
        (
            "bajada D: voladizo, del fulcro al cable de suspensión: 18 in; medido"
            " (rig/suspension_points/L/counterweighted_beam/reach)"
        ),
    ),
    (
        bodies.NumberFound(REACH, replace(TAPED, value=1.5)),
        (
            "drop D: reach, fulcrum to suspension line: 1.5 in SI units, written as 18 in, measured"
            " (rig/suspension_points/L/counterweighted_beam/reach)"
        ),
        (
            "bajada D: voladizo, del fulcro al cable de suspensión: 1.5 en unidades SI, escrito"
            " como 18 in; medido (rig/suspension_points/L/counterweighted_beam/reach)"
        ),
    ),
    (
        bodies.NumberFound(REACH, replace(TAPED, text="about a foot and a half")),
        (
            "drop D: reach, fulcrum to suspension line: 0.4572 in SI units, written as about a foot"
            " and a half, measured (rig/suspension_points/L/counterweighted_beam/reach)"
        ),
        (
            "bajada D: voladizo, del fulcro al cable de suspensión: 0.4572 en unidades SI, escrito"
            " como about a foot and a half; medido"
            " (rig/suspension_points/L/counterweighted_beam/reach)"
        ),
    ),
    (
        bodies.NumberFound(("kit", "pieces", "P", "mass"), StatedValue(22.679619)),
        "whole site: kit/pieces/P/mass: 22.679619 in SI units, not stated",
        "toda la obra: kit/pieces/P/mass: 22.679619 en unidades SI; no declarado",
    ),
    (
        bodies.CountFound(("drops", DROP, "rig", "riders"), StatedValue(2, None, Evidence.TOLD)),
        "drop D: people on the stage at once: 2, told (rig/riders)",
        "bajada D: personas en la plataforma a la vez: 2; dicho de palabra (rig/riders)",
    ),
    (
        bodies.CountFound(("kit", "units", "P-1", "x", "count"), StatedValue(2)),
        "whole site: kit/units/P-1/x/count: 2, not stated",
        "toda la obra: kit/units/P-1/x/count: 2; no declarado",
    ),
    (
        bodies.WordFound(TAUT, StatedValue("slack", None, Evidence.MEASURED)),
        "drop D: whether the tieback is taut: slack, measured (rig/tiebacks/T1/taut)",
        "bajada D: si el amarre está tenso: flojo; medido (rig/tiebacks/T1/taut)",
    ),
    (
        bodies.WordFound(("drops", DROP, "rig", "x", "found"), StatedValue("there and sound")),
        "drop D: rig/x/found: there and sound, not stated",
        "bajada D: rig/x/found: presente y en buen estado; no declarado",
    ),
    (
        bodies.LineConnected(DROP, "L", "bo"),
        "drop D: line L connected, seen by ana and bo",
        "bajada D: línea L conectada, vista por ana y bo",
    ),
    (
        bodies.LineConnected(DROP, "L", ""),
        "drop D: line L connected, seen by ana and not named",
        "bajada D: línea L conectada, vista por ana y sin nombrar",
    ),
    (
        bodies.TopicTakenOver(LETTER),
        "drop D: wind, rescue taken over by ana, LETTER 7, until 2027-03-01",
        "bajada D: viento, rescate; lo asume ana, LETTER 7, hasta el 2027-03-01",
    ),
    (
        bodies.WorkPlanned(DROP, "ST", (WorkStep("UP", (), "joints raked"), WorkStep("DOWN", ()))),
        "drop D: work on stage ST, step by step: joints raked, DOWN",
        "bajada D: trabajo en la plataforma ST, paso a paso: joints raked, DOWN",
    ),
    (
        bodies.LimitsSigned(LIMITS),
        "drops D, E: limits signed by ana, SK-1, revision B, until 2027-03-01",
        "bajadas D, E: límites con firma de ana, SK-1, revisión B, hasta el 2027-03-01",
    ),
    (
        bodies.DeficiencyRaised("D-1", (DROP,), "sign", "faded", forbids_use=False, until=UNTIL),
        "drop D: deficiency D-1 at sign, until 2027-03-01 - faded",
        "bajada D: deficiencia D-1 en sign, hasta el 2027-03-01: «faded»",
    ),
    (
        bodies.DeficiencyRaised("D-2", (), "beam L", "pin missing", forbids_use=True),
        "whole site: deficiency D-2 at beam L, use forbidden - pin missing",
        "toda la obra: deficiencia D-2 en beam L, uso prohibido: «pin missing»",
    ),
    (
        bodies.DeficiencyAnswered("D-2", "pin put in"),
        "deficiency D-2: answered - pin put in",
        "deficiencia D-2: respondida: «pin put in»",
    ),
    (
        bodies.DeficiencyReinspected("D-2", mended=False, says="no lock"),
        "deficiency D-2: looked at again, not mended - no lock",
        "deficiencia D-2: examinada otra vez, no arreglada: «no lock»",
    ),
    (
        bodies.DeficiencyReinspected("D-2", mended=True, says="locked"),
        "deficiency D-2: looked at again, mended - locked",
        "deficiencia D-2: examinada otra vez, arreglada: «locked»",
    ),
    (bodies.DeficiencyClosed("D-2"), "deficiency D-2: closed", "deficiencia D-2: cerrada"),
    (
        bodies.ConcernNoted("C-1", "H-1", "a noise"),
        "concern C-1 about H-1 - a noise",
        "duda C-1 sobre H-1: «a noise»",
    ),
    (
        bodies.ConcernClosed("C-1", "load test", "held"),
        "concern C-1: closed by a test, load test - held",
        "duda C-1: cerrada con una prueba, load test: «held»",
    ),
    (
        bodies.ConcernClosed("C-1", " ", "mended"),
        "concern C-1: to be closed, no test named - mended",
        "duda C-1: por cerrar, sin prueba nombrada: «mended»",
    ),
    (
        bodies.UseStopped(("S2",), "cracked stirrup"),
        "drop S2: use stopped - cracked stirrup",
        "bajada S2: uso parado: «cracked stirrup»",
    ),
    (
        bodies.UseStopped((), "pass"),
        "whole site: use stopped - pass",
        "toda la obra: uso parado: «pass»",
    ),
    (
        bodies.UsePermitted(DROP, "c0de", "ba5e", "pass"),
        "drop D: use permitted, configuration c0de, basis ba5e, review: pass",
        "bajada D: uso permitido, configuración c0de, base ba5e, revisión: pass",
    ),
    (
        bodies.UsePermitted(DROP, "c0de", "ba5e", "pass, 1 topic taken over", ("LETTER 7",)),
        (
            "drop D: use permitted, configuration c0de, basis ba5e, review: pass, 1 topic taken"
            " over; leans on LETTER 7"
        ),
        (
            "bajada D: uso permitido, configuración c0de, base ba5e, revisión: pass, 1 topic taken"
            " over; se apoya en LETTER 7"
        ),
    ),
    (
        bodies.UseRestricted(DROP, "one person only"),
        "drop D: use restricted - one person only",
        "bajada D: uso restringido: «one person only»",
    ),
    (
        bodies.ShiftChecked(DROP, TODAY, fit=True),
        "drop D: shift check of 2026-11-25, fit",
        "bajada D: inspección de turno del 2026-11-25, apta",
    ),
    (
        bodies.ShiftChecked(DROP, TODAY, fit=False, says="ice"),
        "drop D: shift check of 2026-11-25, unfit - ice",
        "bajada D: inspección de turno del 2026-11-25, no apta: «ice»",
    ),
    (
        bodies.HoldBegun((DROP, "E"), "gusts"),
        "drops D, E: hold begun - gusts",
        "bajadas D, E: pausa empezada: «gusts»",
    ),
    (
        bodies.HoldEnded((DROP, "E"), "calm"),
        "drops D, E: hold ended, shift check to be made again - calm",
        "bajadas D, E: pausa terminada, repetir la inspección de turno: «calm»",
    ),
    (
        bodies.PaperIssued("review D", (DROP,)),
        "drop D: paper review D issued",
        "bajada D: documento review D emitido",
    ),
    (
        bodies.UnderlayLaid(ROOF.id, UNDER),
        (
            "roof ROOF: drawing roof.dxf laid under the plan by corner 1, corner 2; a third length"
            " taped as 30 ft is +6 mm off on it"
        ),
        (
            "cubierta ROOF: plano roof.dxf puesto bajo la planta por corner 1, corner 2; una"
            " tercera medida, 30 ft con cinta, difiere en él +6 mm"
        ),
    ),
    (
        bodies.UnderlayLaid(ROOF.id, PHOTO),
        (
            "roof ROOF: picture roof.jpg laid under the plan by corner 1, corner 2; a third length"
            " taped as 30 ft is -20 mm off on it"
        ),
        (
            "cubierta ROOF: imagen roof.jpg puesta bajo la planta por corner 1, corner 2; una"
            " tercera medida, 30 ft con cinta, difiere en ella -20 mm"
        ),
    ),
    (
        bodies.Corrected("ab" * 32, "wrong drop"),
        "entry abababababab: not so, counts no longer - wrong drop",
        "anotación abababababab: no es así, ya no cuenta: «wrong drop»",
    ),
)
