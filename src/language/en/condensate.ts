// English of condensate: sentences and words.
import type { CondensateStatements, CondensateWord } from "../../condensate/statements.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = CondensateStatements & Words<CondensateWord>;
const catalogue: Define<Said> = define;

/** What `condensate` says, in American English. */
export const condensate: CatalogueOf<Said> = /* @__PURE__ */ catalogue("en-US", {
  "condensate.falls-enough":
    "Drain slope {slope} ± {uncertainty}: at least {required}, as required.",
  "condensate.falls-too-little":
    "Drain slope {slope} ± {uncertainty}: below the {required} required.",
  "condensate.rises":
    "The drain rises in the direction of flow: slope {slope} ± {uncertainty}; {required} required.",
  "condensate.codes-differ":
    "Drain slope {slope} ± {uncertainty}: the codes differ. One prints {least}, the others {required}.",
  "condensate.slope-near":
    "Drain slope {slope} ± {uncertainty}: too close to the {required} required to call.",
  "condensate.pitch-enough":
    "Pitch toward the drain {pitch} ± {uncertainty}: at least {minimum}, as required.",
  "condensate.pitch-within":
    "Pitch toward the drain {pitch} ± {uncertainty}: within {minimum} to {maximum}.",
  "condensate.pitch-away":
    "The unit leans away from its drain: pitch {pitch} ± {uncertainty}; at least {minimum} required.",
  "condensate.pitch-too-little":
    "Pitch toward the drain {pitch} ± {uncertainty}: below the {minimum} minimum.",
  "condensate.pitch-too-much":
    "Pitch toward the drain {pitch} ± {uncertainty}: above the {maximum} maximum.",
  "condensate.pitch-near":
    "Pitch toward the drain {pitch} ± {uncertainty}: too close to a limit to call.",
  "condensate.pump-keeps-up": "At a lift of {lift} the pump moves {flow}; {required} required.",
  "condensate.pump-too-slow":
    "At a lift of {lift} the pump moves {flow}: below the {required} required.",
  "condensate.pump-lift-too-high": "Lift {lift}: above the pump’s {highest} maximum.",
  "condensate.gravity": "Fall {available}; {needed} required.",
  "condensate.fall-short": "Not enough fall: {shortfall} short at point {point}.",

  "condensate.straight": "Straight between the points measured.",
  "condensate.exact-instrument": "No accuracy was given, so the reading is taken as exact.",
  "condensate.code-slope":
    "The required slope was not given. Taken: 1/8 in per foot, {slope}, of the American codes.",
  "condensate.level-is-enough": "Level is taken as enough pitch.",
  "condensate.maximum-pitch-not-checked":
    "The manual’s maximum pitch was not given and not checked.",
  "condensate.pump-margin": "Flow required of the pump: {margin} times the condensate.",
  "condensate.pump-curve-straight": "The pump curve is straight between its points.",

  "condensate.steep":
    "A slope of {slope} is steep; usual: up to {usual}. Is a figure in another unit?",
  "condensate.flatter-than-code":
    "Plumbing codes require at least {least}. Ask which text applies here.",
  "condensate.discharge":
    "Keep the water off public ways. Drain to a sewer by indirect waste only, the hose end above water.",
  "condensate.sweating": "Insulate indoor drains that sweat.",
  "condensate.sunlight": "Sunlight crumbles bare hose and foam. Cover or paint them.",
  "condensate.freezing":
    "An outdoor drain can freeze and back up. Keep it short, steep, without a trap, insulated or heated.",
  "condensate.overflow":
    "Above finished space an overflow does damage. Install a pan, a second drain or a level switch.",
  "condensate.pump-failure": "Wire the pump’s level switch so that it stops the unit.",
  "condensate.dry-trap": "Fill the trap with water first. A dry trap lets air through.",

  "condensate.increase-slope": "Increase the slope to {required} or more, or install a pump.",
  "condensate.increase-fall":
    "Increase the fall by {fall} or more over the {run}, or install a pump.",
  "condensate.ask-code":
    "Ask the local authority which slope applies, or give the drain {required}.",
  "condensate.measure-better": "Measure again over a longer base or with a better level.",
  "condensate.raise-pitch": "Level the unit again: at least {minimum} toward the drain.",
  "condensate.lower-pitch": "Level the unit again: at most {maximum} toward the drain.",
  "condensate.other-pump": "Install a pump that moves {required} or more at a lift of {lift}.",
  "condensate.lower-point":
    "Lower point {point} by {shortfall} or more, or install a pump for a lift of {lift}.",

  "condensate.cause.rises": "drain rises",
  "condensate.cause.too-flat": "drain too flat",
  "condensate.cause.away-from-drain": "unit leans away from its drain",
  "condensate.cause.too-little": "too little pitch",
  "condensate.cause.too-much": "too much pitch",
  "condensate.cause.lift-too-high": "lift too high for the pump",
  "condensate.cause.too-slow": "pump too slow",
  "condensate.cause.needs-pump": "needs a pump",
});
