"""Whether a beam takes its load, as asked on the roof. By hand from AISC 360 and statics."""

from __future__ import annotations

import pytest

from backspan.core.ask.shape import QuestionError
from backspan.core.findings import Verdict
from backspan.core.model.basis import Confirmation
from tests.unit.core.ask.asking import FOOT, INCH, POUND_FORCE, amount, ask, ids, notes, wanted

W6X12 = "shape=W6x12 yield=50ksi rated=1000lb"
OWN = "beam=18ft beam-mass=216lb"
KEYS = tuple(
    f"beam.{name}"
    for name in ("safety-bending", "elastic-constant", "slender-web", "slender-flange")
)
CONFIRMED = [
    Confirmation("us-aisc-360", "2016", key, "An office", "2026-11-20", "own copy") for key in KEYS
]


def test_four_times_the_load_is_held_against_the_moment_at_which_it_fails() -> None:
    """Mn at 10 ft is 13.98 x 1.67 = 23.35 kip-ft, so 4 x 1 kip reaches 5.83 ft."""
    found = ask("beam", W6X12, OWN, "reach=5ft unbraced=10ft", confirmations=CONFIRMED)
    assert found.verdict is Verdict.PASS
    # 12 lb/ft over 5 ft and its half: 150 lb ft of the beam itself.
    assert amount(found, "beam-moment") == pytest.approx(5150 * POUND_FORCE * FOOT)
    kip_foot = 1000 * POUND_FORCE * FOOT
    assert amount(found, "beam-allowed") / kip_foot == pytest.approx(13.98, rel=2e-3)
    assert amount(found, "beam-longest-reach") / FOOT == pytest.approx(5.8, abs=0.05)
    over = ask("beam", W6X12, OWN, "reach=6ft unbraced=10ft", confirmations=CONFIRMED)
    assert over.verdict is Verdict.FAIL
    assert over.message.id == "ask.beam-over"


def test_what_is_only_remembered_waits_for_an_office() -> None:
    found = ask("beam", W6X12, OWN, "reach=5ft unbraced=10ft")
    assert found.verdict is Verdict.REFER
    assert len(found.needs) == 4
    assert ask("beam", W6X12, "reach=6ft unbraced=10ft").verdict is Verdict.FAIL


def test_without_the_beam_s_own_weight_nothing_passes() -> None:
    found = ask("beam", W6X12, "reach=5ft unbraced=10ft", confirmations=CONFIRMED)
    assert found.verdict is Verdict.MISSING
    assert wanted(found) == {"beam", "beam-mass"}
    assert "note.own-weight-left-out" in notes(found)


def test_how_far_it_bends_by_the_tables_of_beams() -> None:
    """P a2 (a + b) / (3 E I) with I 22.1 in4: 1000 x 24^2 x 144 / (3 x 29e6 x 22.1) = 0.0431 in."""
    found = ask("beam", W6X12, "reach=2ft backspan=10ft")
    down, up = (one.value for one in found.steps[-2:])
    assert down / INCH == pytest.approx(0.04314, rel=1e-3)
    # P a b2 / (9 sqrt(3) E I) = 1000 x 24 x 120^2 / (15.588 x 29e6 x 22.1) = 0.03459 in
    assert up / INCH == pytest.approx(0.03459, rel=1e-3)
    # Told as a tape shows it, no less than it is.
    assert amount(found, "beam-tip-down") / INCH == pytest.approx(1 / 16)
    assert "note.whole-beam-unbraced" in notes(found)
    assert "beam-longest-reach" not in ids(found)


def test_a_section_by_its_sizes_takes_a_little_less_than_the_rolled_one() -> None:
    sizes = "depth=6.03in width=4in web=0.23in flange=0.28in yield=50ksi rated=1000lb"
    rolled = ask("beam", W6X12, "reach=2ft unbraced=8ft")
    plates = ask("beam", sizes, "reach=2ft unbraced=8ft")
    share = amount(plates, "beam-takes") / amount(rolled, "beam-takes")
    assert 0.95 < share < 1.0
    assert "note.without-fillets" in notes(plates)


def test_tubes_and_pipes_are_known_by_their_wall() -> None:
    """HSS4x4x1/4, Zx 4.69 in3: 46 x 4.69 / 12 = 17.98 kip-ft; pipe 3, 35 x 2.19 / 12 = 6.39."""
    kip_foot = 1000 * POUND_FORCE * FOOT
    tube = ask("beam", "shape=HSS4x4x1/4 yield=46ksi rated=1000lb reach=2ft unbraced=4ft")
    assert amount(tube, "beam-takes") / kip_foot == pytest.approx(17.98, rel=1e-3)
    pipe = ask("beam", "depth=3.5in wall=0.201in yield=35ksi rated=500lb reach=1ft unbraced=4ft")
    assert amount(pipe, "beam-takes") / kip_foot == pytest.approx(6.39, rel=2e-2)


def test_plates_too_thin_for_the_equations_are_for_an_engineer() -> None:
    thin = "depth=8in width=8in wall=0.06in yield=50ksi rated=500lb reach=1ft unbraced=4ft"
    found = ask("beam", thin, OWN, confirmations=CONFIRMED)
    assert found.verdict is Verdict.REFER
    assert found.message.id == "ask.beam-thin"


def test_a_single_channel_is_an_engineers_even_where_it_bends_little() -> None:
    rolled = "shape=C6x8.2 yield=36ksi rated=500lb reach=1ft unbraced=4ft"
    found = ask("beam", rolled, OWN, confirmations=CONFIRMED)
    assert (found.verdict, found.message.id) == (Verdict.REFER, "ask.beam-holds")
    assert [one.what.id for one in found.needs] == ["ask.need-of-channel"]
    assert "note.channel-twists" in notes(found)
    assert "beam-longest-reach" not in ids(found)
    plates = "form=channel depth=6in width=1.92in web=0.2in flange=0.343in yield=36ksi"
    by_sizes = ask("beam", plates, "rated=500lb reach=1ft unbraced=4ft")
    assert 0.95 < amount(by_sizes, "beam-takes") / amount(found, "beam-takes") < 1.0
    far = ask("beam", "shape=C6x8.2 yield=36ksi rated=2000lb reach=6ft unbraced=10ft")
    assert far.verdict is Verdict.FAIL


ALLOY = "depth=6.03in width=4in web=0.23in flange=0.28in material=6061-T6 yield=35ksi"


def test_a_beam_of_aluminium_never_passes_and_is_refused_where_its_alloy_gives_way() -> None:
    """S_x 7.187 in3: 35 ksi makes 20.96 kip ft, 15 ksi beside a weld 8.98; 38 / 1.95 in service."""
    kip_foot = 1000 * POUND_FORCE * FOOT
    sound = ask("beam", ALLOY, OWN, "weld=no rated=1000lb reach=2ft")
    assert (sound.verdict, sound.message.id) == (Verdict.REFER, "ask.beam-aluminium")
    assert "ask.need-of-aluminium" in {one.what.id for one in sound.needs}
    assert amount(sound, "beam-takes") / kip_foot == pytest.approx(20.96, rel=1e-3)
    allowed = 38 / 1.95 * 7.187 / 12
    assert amount(sound, "beam-allowed") / kip_foot == pytest.approx(allowed, rel=1e-3)
    welded = ask("beam", ALLOY, OWN, "rated=1000lb reach=3ft")
    assert welded.verdict is Verdict.FAIL
    assert "note.maybe-welded" in notes(welded)
    assert amount(welded, "beam-takes") / kip_foot == pytest.approx(8.98, rel=1e-3)
    untold = ask("beam", ALLOY, "weld=no rated=1000lb reach=2ft")
    assert untold.verdict is Verdict.MISSING


@pytest.mark.parametrize(
    ("words", "said"),
    [
        ("yield=50ksi", "neither of shape and sizes"),
        ("shape=W6x12 depth=6in yield=50ksi", "both of shape and sizes"),
        ("shape=W7x12 yield=50ksi", "shape: found 'W7x12'"),
        ("shape=C6x8.2 form=channel yield=50ksi", "form: a shape of the table"),
        ("form=angle depth=6in width=2in web=0.2in flange=0.3in yield=50ksi", "make no section"),
        ("depth=6in yield=50ksi", "the sizes make no section"),
        ("shape=W6x12 material=6061-T6 yield=50ksi", "of the table are of steel"),
        ("shape=W6x12 material=wood yield=50ksi", "material: found 'wood'"),
        ("shape=W6x12 weld=no yield=50ksi", "asked of aluminium alone"),
        (f"{ALLOY} weld=perhaps", "weld: found 'perhaps'"),
        ("depth=6in width=4in wall=3in yield=50ksi", "depth: a section is deeper"),
        ("depth=6in width=0.4in wall=0.25in yield=50ksi", "width: a section is wider"),
        ("shape=W6x12 yield=50ksi unbraced=1ft", "unbraced: the tip"),
        ("shape=W6x12 yield=50ksi beam=2ft tip=6in beam-mass=24lb", "beam: it is shorter"),
    ],
)
def test_what_makes_no_beam_is_refused(words: str, said: str) -> None:
    with pytest.raises(QuestionError, match=said.replace("(", r"\(")):
        ask("beam", words, "rated=1000lb reach=2ft backspan=8ft")


def test_without_a_backspan_or_a_length_nothing_is_known() -> None:
    with pytest.raises(QuestionError, match="without it nothing is known"):
        ask("beam", W6X12, "reach=2ft")


def test_a_rule_set_without_a_number_for_beams_is_named() -> None:
    with pytest.raises(QuestionError, match="says no number for the strength"):
        ask("beam", W6X12, "reach=2ft unbraced=4ft rules=eu-en-1808")
