"""Sentences on a counterweighted beam: what was found of it, and where its sections meet."""

from __future__ import annotations

BEAM: dict[str, str] = {
    "beam-web.pass": "The beam stands: {found}.",
    "beam-web.fail": "The beam stands: {found}. On its side it carries little and can roll over.",
    "beam-web-contradicts.missing": (
        "The beam was seen to have no web, but the section that is stated of it has one: one of"
        " the two is wrong."
    ),
    "beam-channels-contradicts.missing": (
        "The beam was seen to be a pair of channels, but one section is stated of it: one of the"
        " two is wrong."
    ),
    "beam-bow-contradicts.missing": (
        "The beam was seen to be bowed as its maker allows, and no label says who made it or what"
        " that is."
    ),
    "beam-web.missing": "How the web of the beam stands nobody stated.",
    "beam-stops.pass": "Stop bolts or shackles: {found}.",
    "beam-stops.fail": "Stop bolts or shackles: {found}; both ends of a beam have to have them.",
    "beam-stops.missing": "Whether both ends of the beam have stop bolts nobody stated.",
    "beam-square.pass": "The beam lies: {found}.",
    "beam-square.fail": (
        "The beam lies: {found}. It has to lie square to it, unless an obstruction that cannot be"
        " moved is shown."
    ),
    "beam-square.missing": "Whether the beam lies square to its bearing nobody stated.",
    "need.beam-square": (
        "Judge the angle of the beam at point {point}, the obstruction that stands in its way and"
        " its tiebacks at opposing angles, and sign for it."
    ),
    "beam-shackle.pass": "The suspension shackle hangs: {found}.",
    "beam-shackle.fail": (
        "The suspension shackle hangs: {found}. The rope pulls the beam or the stage aside."
    ),
    "beam-shackle.missing": "Whether the shackle hangs over the stirrup's middle nobody stated.",
    "beam-level.pass": "Level of the beam: {found}.",
    "beam-level.fail": "Level of the beam: {found}. What is on it can slide or tip it.",
    "beam-level.missing": "Whether the beam lies level nobody stated.",
    "beam-bow.pass": "The backspan under its load: {found}.",
    "beam-bow.fail": "The backspan under its load: {found}. The beam is overloaded or damaged.",
    "beam-bow.missing": "How far the backspan bows under its load nobody stated.",
    "beam-restrained.pass": "Against moving sideways the beam is: {found}.",
    "beam-restrained.fail": (
        "Against moving sideways the beam is: {found}. It can walk off its bearings."
    ),
    "beam-restrained.missing": "Whether the beam is restrained sideways nobody stated.",
    "beam-upright.pass": "Against rolling over the beam is: {found}.",
    "beam-upright.fail": (
        "Against rolling over the beam: {found}. Its strength counts on that it cannot."
    ),
    "beam-upright.missing": (
        "Whether the beam is held against rolling over at each support nobody stated; its strength"
        " counts on it."
    ),
    "beam-holes.pass": "Holes and cuts in the beam: {found}.",
    "beam-holes.fail": "Holes and cuts in the beam: {found}. The section is not whole there.",
    "beam-holes.missing": "Whether the beam has holes or cuts where it bends nobody stated.",
    "beam-channels.pass": "Channels that make one beam: {found}.",
    "beam-channels.fail": (
        "Channels that make one beam: {found}. They have to be fastened together, flanges out."
    ),
    "beam-channels.missing": "Whether the beam is a pair of channels, and how held, nobody stated.",
    "beam-joined.pass": "The beam is made of: {found}.",
    "beam-joined.missing": (
        "Whether the beam is of one piece or of sections is not known, or joints are listed of a"
        " beam of one piece."
    ),
    "beam-joint-there.pass": "Looked for: {found}.",
    "beam-joint-there.missing": (
        "Whether the joint is there is not known, or something was seen of one that is not there."
    ),
    "beam-pins.pass": "Pins of the joint: {found}.",
    "beam-pins.fail": "Pins of the joint: {found}. The beam can come apart.",
    "beam-pins.missing": "Whether the pins of the joint are in and locked nobody stated.",
    "beam-order.pass": "Sections at the joint: {found}.",
    "beam-order.fail": "Sections at the joint: {found}. The strong one may not be where it must.",
    "beam-order.missing": "Whether the sections stand in their maker's order is not known.",
    "beam-marks.pass": "Marks of the sections at the joint: {found}.",
    "beam-marks.fail": "Marks of the sections at the joint: {found}; parts of two beams are mixed.",
    "beam-marks.missing": "Whether the sections at the joint are of one set is not known.",
    "splice-clear.pass": (
        "The joint lies {at} from the tail, clear of the stack from {outer} to {inner}."
    ),
    "splice-clear.fail": (
        "The joint lies {at} from the tail, under the stack from {outer} to {inner}: the"
        " counterweight stands on it, and nobody sees its pins."
    ),
    "splice-clear.missing": "Whether the joint lies clear of the counterweight is not known.",
    "splice-reach.pass": (
        "The joint lies {at} from the tail, clear of fulcrum at {outer} and line at {inner} and of"
        " what is between them."
    ),
    "splice-reach.refer": (
        "The joint lies {at} from the tail, over the fulcrum at {outer} or between it and the line"
        " at {inner}: only the maker of the beam can allow that."
    ),
    "splice-reach.missing": (
        "Whether the joint lies over the fulcrum, or between it and the line, is not known."
    ),
    "splices.not-said": (
        "Where the sections of the beam meet nobody stated, nor that it is of one piece."
    ),
    "need.splice-reach": (
        "Show that the maker of the beam allows joint {splice} over the fulcrum or outboard of it,"
        " and sign."
    ),
    "note.splice-sleeve": (
        "Its sleeve is {sleeve} long, half of it on either side of the joint: all of that counts."
    ),
    "outside.joint": "The joint lies beyond the end of the beam: measure it again.",
    "na.one-piece": "The beam is of one piece.",
}

STRENGTH: dict[str, str] = {
    "beam-four-times.pass": (
        "Four times the load makes {moment} over the fulcrum; the beam takes {takes} before it"
        " yields or turns over."
    ),
    "beam-four-times.fail": (
        "Four times the load makes {moment} over the fulcrum; the beam yields or turns over at"
        " {takes}."
    ),
    "beam-service.pass": "The load makes {moment} over the fulcrum; {takes} is allowed.",
    "beam-service.fail": "The load makes {moment} over the fulcrum; only {takes} is allowed.",
    "beam-idle.pass": "Idle, the stack bends the beam by {moment}; {takes} is allowed.",
    "beam-idle.fail": "Idle, the stack bends the beam by {moment}; only {takes} is allowed.",
    "beam-moment.missing": "What bends the beam, or what it takes, is not known.",
    "beam-spliced.refer": "The beam has no rating and is joined of sections: its joints decide.",
    "need.beam-spliced": "Reckon beam {beam} with its joints for its line, and sign it.",
    "beam-silent.refer": "No rule set in force says how the strength of a steel beam is reckoned.",
    "need.beam-silent": (
        "Reckon beam {beam} for the load of its line and sign it, or name a text for it in the"
        " basis."
    ),
    "beam-twists.refer": (
        "Bending alone, {takes} stands against {moment}. But the beam is a single channel: a load"
        " beside its shear centre twists it about its own length, and that is not judged here."
    ),
    "need.beam-twists": (
        "Reckon beam {beam} for the load of its line with the twist of a single channel, and sign"
        " it."
    ),
    "note.held-upright": (
        "Taken as held against turning over its fulcrum and where it is held down, which is asked"
        " of the beam as it was found; between them nothing is counted."
    ),
    "note.whole-beam": "All of the beam is taken as unbraced: nobody said what holds it sideways.",
    "beam-aluminium.refer": (
        "The beam is of aluminium: how it turns over, its thin plates and its web are not judged"
        " here."
    ),
    "need.beam-aluminium": (
        "Reckon beam {beam} of aluminium with its welds for the load of its line, and sign it."
    ),
    "aluminium-holds.refer": (
        "Before it yields or breaks, {takes} stands against {moment}. But whether a beam of"
        " aluminium turns over or its thin plates buckle is not judged here."
    ),
    "note.maybe-welded": (
        "The strength beside a weld is counted: nobody said that there is none over the fulcrum."
    ),
    "na.no-aluminium": "The beam is not reckoned as one of aluminium.",
    "na.sections-joined": "The beam is joined of sections: its joints decide.",
    "note.beam-bends": (
        "No rule limits how far the beam bends: by its section alone the hoist's rated load takes"
        " the line's end {tip_down} down and bows it {bow_up} up behind the fulcrum."
    ),
    "outside.other_shape": (
        "The beam's sizes are not those of the shape that is named: find out which it is."
    ),
    "outside.thin_plates": (
        "The beam's plates are so thin that they buckle before its section yields: use another, or"
        " have an engineer rate it."
    ),
    "section-unsaid.missing": (
        "Of the beam's section only sizes are stated: not what it is made of, or whether it is an I"
        " or a channel."
    ),
    "no-rating.refer": (
        "The beam has no label and no section of it is stated: what it may carry is not judged"
        " here."
    ),
    "need.no-rating": "Say what beam {beam} may carry at its reach and backspan, and sign.",
    "section-under-label.refer": (
        "By its section beam {beam} would not hold, by its label it does: they may not be of one"
        " beam."
    ),
    "need.section-under-label": (
        "Compare the label and the section of beam {beam} with its maker's papers, say which holds,"
        " and sign."
    ),
    "na.rated-by-label": "The maker's label rates this beam.",
    "na.no-section": "No section of the beam is stated.",
    "na.by-its-section": "No maker's label: the beam is reckoned by its section.",
}

WEB: dict[str, str] = {
    "web-shear-four.pass": (
        "Four times the load makes {force} of shear outboard of the fulcrum; the web takes {takes}"
        " before it yields."
    ),
    "web-shear-four.fail": (
        "Four times the load makes {force} of shear outboard of the fulcrum; the web yields at"
        " {takes}."
    ),
    "web-shear.pass": (
        "The load makes {force} of shear outboard of the fulcrum; {takes} is allowed."
    ),
    "web-shear.fail": (
        "The load makes {force} of shear outboard of the fulcrum; only {takes} is allowed."
    ),
    "web-inboard.pass": (
        "Counterweight and beam make at most {force} of shear inboard of the fulcrum; {takes} is"
        " allowed."
    ),
    "web-inboard.fail": (
        "Counterweight and beam can make {force} of shear inboard of the fulcrum; only {takes} is"
        " allowed."
    ),
    "web-bears-four.pass": (
        "Four times what the fulcrum carries presses the web with {force}; there it takes {takes}"
        " before it gives way."
    ),
    "web-bears-four.fail": (
        "Four times what the fulcrum carries presses the web with {force}; there it gives way at"
        " {takes}."
    ),
    "web-bears.pass": "The fulcrum presses the web with {force}; {takes} is allowed.",
    "web-bears.fail": "The fulcrum presses the web with {force}; only {takes} is allowed.",
    "web-rear.pass": "Idle, the rear stand presses the web with {force}; {takes} is allowed.",
    "web-rear.fail": "Idle, the rear stand presses the web with {force}; only {takes} is allowed.",
    "web-twists.refer": (
        "Upright, its web takes {takes} against {force}. But the beam is a single channel, whose"
        " flanges bear to one side of it, and that is not judged here."
    ),
    "web-twists-held.refer": (
        "It is held sideways so near that its web stays upright. But the beam is a single channel,"
        " whose flanges bear to one side of it, and that is not judged here."
    ),
    "web-force.missing": "What presses the web of the beam, or what it takes, is not known.",
    "web-wall.refer": (
        "Whether the wall of a tube or pipe takes what presses it over its stands is not judged"
        " here."
    ),
    "need.web-wall": (
        "Reckon the wall of beam {beam} where it bears on the fulcrum and the rear stand and where"
        " its line hangs, and sign it."
    ),
    "note.no-bearing-length": (
        "No length of bearing is counted at the fulcrum: nobody said how much of the beam lies"
        " on it."
    ),
    "note.web-not-asked": "Not asked: the web where the line hangs and where the stack lies.",
    "sideways-four.pass": (
        "Four times what the fulcrum carries presses the web with {force}; it buckles sideways at"
        " {takes}."
    ),
    "sideways-four.refer": (
        "Four times what the fulcrum carries presses the web with {force}; between flanges that"
        " nothing holds it may buckle sideways at {takes}."
    ),
    "sideways-service.pass": (
        "The fulcrum presses the web with {force}; {takes} is allowed before it buckles sideways."
    ),
    "sideways-service.refer": (
        "The fulcrum presses the web with {force}; between flanges that nothing holds only {takes}"
        " is allowed before it may buckle sideways."
    ),
    "sideways-held.pass": (
        "The beam is held sideways so near that its web does not buckle over the fulcrum."
    ),
    "sideways.missing": (
        "Whether the web of the beam buckles sideways over its fulcrum is not known."
    ),
    "need.sideways": (
        "Say how both flanges of beam {beam} are held over its fulcrum, or that its web is"
        " stiffened there, and sign."
    ),
    "na.no-open-web": "No web between two flanges.",
    "outside.unbraced": (
        "Between what holds it the beam cannot be shorter than its reach, as its tip is free:"
        " measure it again."
    ),
    "outside.thin_web": (
        "The beam's web is so thin that it buckles in shear before it yields: use another, or have"
        " an engineer rate it."
    ),
    "outside.no_flange": "Its sizes leave the beam no flange beside its web: measure them again.",
    "outside.no_web": "Its sizes leave the beam no web between its flanges: measure them again.",
}
