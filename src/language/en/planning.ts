// English of the plan: sentences and words.
import type { PlanningStatements, PlanningWord } from "../../planning/statements.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = PlanningStatements & Words<PlanningWord>;
const catalogue: Define<Said> = define;

/** What `planning` says, in American English. */
export const planning: CatalogueOf<Said> = /* @__PURE__ */ catalogue("en-US", {
  "planning.line-set": "Run {run}: a {stock} line set, {liquid} × {vapor}. {needed} needed.",
  "planning.two-sets":
    "Run {run}: {needed} needed, more than any line set. Take {first} and {second} with couplings, {joints} brazed joints more, or a roll.",
  "planning.roll": "Run {run}: {needed} needed, more than two line sets. Take it from a roll.",
  "planning.flares": {
    by: "count",
    one: "{count} flare to make.",
    other: "{count} flares to make.",
  },
  "planning.brazed": {
    by: "count",
    one: "{count} brazed joint, under flowing nitrogen.",
    other: "{count} brazed joints, under flowing nitrogen.",
  },
  "planning.couplings": {
    by: "count",
    one: "{count} pre-charged coupling to close.",
    other: "{count} pre-charged couplings to close.",
  },
  "planning.adapter":
    "Run {run}, {line} line, {end} end: an adapter from {tube} in tube to {port} in port, one joint more.",
  "planning.caps": {
    by: "count",
    one: "{count} cap on the unused ports, inside the leak test.",
    other: "{count} caps on the unused ports, inside the leak test.",
  },
  "planning.joints": {
    by: "count",
    one: "{count} joint to record.",
    other: "{count} joints to record.",
  },
  "planning.nut": {
    by: "count",
    one: "{count} flare nut {tube} in: {low} to {high}.",
    other: "{count} flare nuts {tube} in: {low} to {high}.",
  },
  "planning.wrenches":
    "Wrenches for the nuts: {flats} across flats, and a second one to hold each body.",
  "planning.sleeve": "Run {runs}: wall sleeve of at least {diameter} inside.",
  "planning.cover": "Run {runs}: line cover of at least {side} × {side} inside.",
  "planning.link-cable": {
    by: "count",
    one: "{count} cable between the units: {cable}.",
    other: "{count} cables between the units, labeled at both ends: {cable}.",
  },
  "planning.lines-swapped":
    "Run {run}: the liquid line is not the smaller one. Are the two swapped?",
  "planning.total-length-within": "All runs together are {total}: within the limit of {limit}.",
  "planning.total-length-above": "All runs together are {total}: above the limit of {limit}.",
  "planning.indoor-lift-within":
    "The indoor units are {lift} apart in height: within the limit of {limit}.",
  "planning.indoor-lift-above":
    "The indoor units are {lift} apart in height: above the limit of {limit}.",
  "planning.connected-within":
    "The indoor units together have {total}: within the limit of {limit}.",
  "planning.connected-enough": "The indoor units together have {total}; at least {limit} required.",
  "planning.connected-above": "The indoor units together have {total}: above the limit of {limit}.",
  "planning.connected-below": "The indoor units together have {total}: below the limit of {limit}.",

  "planning.device": {
    by: "poles",
    one: "Circuit {circuit}: {kinds:or}, {ratings:or}, {poles} pole.",
    other: "Circuit {circuit}: {kinds:or}, {ratings:or}, {poles} poles.",
  },
  "planning.conductor": "Circuit {circuit}: conductors of at least {size}, which carry {usable}.",
  "planning.conductor-for-drop":
    "Circuit {circuit}: bring {size}. On {smallest} the voltage drops {drop}, above {limit}.",
  "planning.grounding": "Circuit {circuit}: grounding conductor of at least {size}.",
  "planning.ground-fault":
    "Circuit {circuit}: ground-fault protection that trips at {limit} or less.",
  "planning.residual-current":
    "Circuit {circuit}: a residual-current device of {limit} or less, of a type that the manual allows.",
  "planning.disconnect":
    "Circuit {circuit}: a disconnect of {made} (at least {least}), unfused allowed.",
  "planning.fused-disconnect":
    "Circuit {circuit}: a disconnect of {made} (at least {least}) with fuses.",
  "planning.drop-within": "Circuit {circuit}: voltage drop {drop}, within {limit}.",
  "planning.drop-above": "Circuit {circuit}: voltage drop {drop}, above {limit}.",
  "planning.drop-at-start": "Circuit {circuit}: voltage drop {drop} when the compressor starts.",
  "planning.verify-clause":
    "Circuit {circuit}: have it checked by the text of {rules}, {clause}, and record who checked it.",
  "planning.rules-not-passed": "Circuit {circuit}: rule set {rules} was not supplied.",
  "planning.voltage-window": "Supply at the unit: {low} to {high}.",
  "planning.monitor":
    "Voltage monitor: cut out below {low} and above {high} after {trip}, reconnect after {reconnect}.",
  "planning.drain-fall": "Run {run}: the drain falls at least {fall} over {length}.",
  "planning.drain-pump": "Run {run}: a condensate pump that lifts {lift}, wired to stop the unit.",
  "planning.trap": "Run {run}: a trap with {drop} drop and {seal} seal, {height} high.",

  "planning.nitrogen": "Run {runs}: {mass} of nitrogen for {volume}.",
  "planning.cylinder-enough": {
    by: "count",
    one: "The cylinder is enough for {count} fill: {after} left.",
    other: "The cylinder is enough for {count} fills: {after} left.",
  },
  "planning.cylinder-too-small":
    "The cylinder does not hold enough: bring a larger or a fuller one.",
  "planning.regulator": "A nitrogen regulator whose outlet reaches {pressure}, with relief.",
  "planning.nitrogen-hose": "A hose for nitrogen that is marked for {pressure} or more.",
  "planning.vacuum-hose":
    "A vacuum hose of {bore} without core depressors, a core-removal tool and an adapter to the service port (often 5/16 in).",
  "planning.most-fill": "Fill to at most {most}: at {warmest} it reaches the marked {limit}.",
  "planning.fill": "Fill to {pressure} at {temperature}.",
  "planning.fill-lowered": "{wanted} would exceed the marked pressure when warm: fill to {most}.",
  "planning.stages": "Raise it in stages: {stages}. Check every joint at each.",
  "planning.when-warm": "At {temperature} it becomes {pressure}.",
  "planning.later": "At {temperature} the gauge shows {pressure} if nothing leaks.",
  "planning.hold":
    "Run {runs}: hold {recommended}, at least {shortest}, to show a leak of {leak} on this gauge.",
  "planning.hold-of-manual": "The manual requires a hold of {hold}.",
  "planning.hold-proves": "Run {runs}: the planned {hold} shows leaks from {leak} up.",
  "planning.hold-below-manual":
    "The planned hold, {hold}, is below the {least} that the manual requires.",
  "planning.above-own-pressure":
    "The fill, {fill}, is above the {own} that the refrigerant has at {temperature}.",
  "planning.below-own-pressure":
    "The fill, {fill}, is below the {own} that the refrigerant has at {temperature}: it proves too little.",
  "planning.fill-below-manual": "The fill, {fill}, is below the {least} that the manual requires.",
  "planning.no-nitrogen": "{construction}: no nitrogen test, no evacuation, no added charge.",
  "planning.bubble-couplings":
    "Check each coupling with bubbles and a detector after opening. Standing pressure: {pressure} at {temperature}.",
  "planning.vacuum-target": "Evacuate below {target}.",
  "planning.vacuum-limit": "Isolate: at most {limit} after {hold}.",
  "planning.vacuum-rise": "Isolate: a rise of at most {rise} in {hold}.",
  "planning.vacuum-leak": "Largest leak that the vacuum test may pass: {leak}.",
  "planning.pump-down":
    "Run {runs}: the pump alone takes {time} to {target}; hoses and water take longer.",
  "planning.ice":
    "At {temperature} ice holds {pressure}: warm the coldest part, or the vacuum can hide ice.",

  "planning.refrigerant": "{refrigerant}: {mass} to add and {reserve} in reserve.",
  "planning.flammable-cylinder":
    "Flammable refrigerant: cylinder, hoses, scale, pump and detector rated for it; left-hand cylinder thread.",
  "planning.blend-as-liquid": "Charge the blend as liquid.",
  "planning.added": "Add {mass} in all.",
  "planning.taken-out": "Take out {mass} in all.",
  "planning.nothing-added": "Add nothing.",
  "planning.label": "Total for the label: {mass}.",
  "planning.room-needs": "Run {run}: {charge} needs a room of {area}.",
  "planning.outdoor-zone":
    "{charge} stays outdoors: keep the manual’s zone free of openings, drains and ignition sources.",
  "planning.expect-pressures-low":
    "{mode}, {indoor} indoors, {outdoor} outdoors: low side {lowFrom} to {lowTo} (vapor port), high side {highFrom} to {highTo}.",
  "planning.expect-pressures-high":
    "{mode}, {indoor} indoors, {outdoor} outdoors: low side {lowFrom} to {lowTo}, high side {highFrom} to {highTo} (vapor port).",
  "planning.expect-air":
    "{mode} at full speed: the air changes by {low} to {high} across the indoor coil.",
  "planning.expect-current": "Current at full speed: about {rated}, never above {most}.",
  "planning.ask": "Enter: {field}. It decides {changes}.",
  "planning.ask-of-runs": "Run {runs}, enter: {field}. It decides {changes}.",
  "planning.unusable": "Check: {field}. {value} cannot be used.",

  "planning.part.lines": "line sets",
  "planning.part.joints": "joints",
  "planning.part.wall": "sleeve, cover and cable",
  "planning.part.circuit": "circuit",
  "planning.part.supply": "supply",
  "planning.part.drain": "drain",
  "planning.part.pressure-test": "pressure test",
  "planning.part.evacuation": "evacuation",
  "planning.part.charge": "charge",
  "planning.part.room": "room",
  "planning.part.operation": "operation",
  "planning.line.liquid": "liquid",
  "planning.line.vapor": "vapor",
  "planning.end.indoor": "indoor",
  "planning.end.outdoor": "outdoor",
  "planning.mode.cooling": "Cooling",
  "planning.mode.heating": "Heating",
  "planning.device.breaker": "breaker",
  "planning.device.fuse": "fuse",
  "planning.construction.quick-connect": "Pre-charged lines",
  "planning.construction.monobloc": "Monobloc",
});
