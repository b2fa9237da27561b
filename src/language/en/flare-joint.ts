// English of the flare joint: sentences and words.
import type { FlareJointStatements, FlareJointWord } from "../../flare-joint/statements.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = FlareJointStatements & Words<FlareJointWord>;
const catalogue: Define<Said> = define;

/** What `flare-joint` says, in American English. */
export const flareJoint: CatalogueOf<Said> = /* @__PURE__ */ catalogue("en-US", {
  "flare-joint.within-range": "{figure} {measured}: within {low} to {high}.",
  "flare-joint.outside-range": "{figure} {measured}: outside {low} to {high}.",
  "flare-joint.above-minimum": "{figure} {measured}: at least {low}, as required.",
  "flare-joint.below-minimum": "{figure} {measured}: below the minimum of {low}.",
  "flare-joint.would-have-failed": "A reading {beyond} beyond a limit would have failed.",
  "flare-joint.sources-disagree":
    "{figure} {measured}: the published ranges disagree. All allow {low} to {high}.",
  "flare-joint.minimums-disagree":
    "{figure} {measured}: the published minimums disagree. All allow {low} or more.",
  "flare-joint.instrument-cannot-tell":
    "Too close to call: {figure} {measured} is within {guard} of a limit.",
  "flare-joint.hydraulic-flare":
    "This looks like a 37° hydraulic flare (SAE J514). It does not fit a 45° seat.",
  "flare-joint.right-on-other-scale":
    "{other} would be within the range. Is the torque in another unit?",
  "flare-joint.manual-range-wide":
    "The manual’s range, {low} to {high}, is too wide to tell N·m from ft·lb. Published: {from} to {to} for {tube}.",
  "flare-joint.manual-range-apart":
    "The manual’s range, {low} to {high}, does not overlap the published {from} to {to} for {tube}.",
  "flare-joint.newton-meter-as-foot-pound":
    "The stated range is about 1.36 times as high. Is it in N·m instead of ft·lb?",
  "flare-joint.foot-pound-as-newton-meter":
    "The published range is about 1.36 times as high. Is the stated one in ft·lb instead of N·m?",
  "flare-joint.manual-diameters-wide":
    "The manual’s limits, {low} to {high}, are too wide for a flare. Published limits lie within {widest}.",
  "flare-joint.manual-minimum-thin":
    "The stated minimum wall, {least}, is below any tube on the market. Manuals require {usual} or more.",
  "flare-joint.adapter-needed":
    "Adapter required: {port} in SAE female ({portThread}) to {hose} in SAE male ({hoseThread}).",
  "flare-joint.hose-fits": "The {hose} in SAE hose ({hoseThread}) fits the port.",

  "flare-joint.exact-instrument": "No accuracy was given, so the reading is taken as exact.",
  "flare-joint.published-ranges":
    "Judged by published ranges, because the manual’s range was not given: {sources}.",
  "flare-joint.one-source": "Only one source gives this range, and it is from memory.",
  "flare-joint.wider-flare-assumed":
    "R-454B takes the wider flare of R-410A: common practice, no manual was read.",
  "flare-joint.manual-read-again":
    "The manual was read again, so its figures decide over the published ones.",

  "flare-joint.not-a-leak-test": "This does not prove the joint tight. Only a pressure test does.",
  "flare-joint.beyond-sources":
    "Torque {torque} is right only by the manual. Published: {low} to {high}. Check the size and the unit.",

  "flare-joint.tighten":
    "Tighten the nut to {low} to {high}, holding the body with a second wrench.",
  "flare-joint.tighten-by-turn":
    "Turn the nut further, to {low} to {high} from the point where the torque rises.",
  "flare-joint.remake-and-tighten":
    "Cut off the flare, make a new one and tighten it to {low} to {high}.",
  "flare-joint.remake-and-turn":
    "Cut off the flare, make a new one and turn its nut {low} to {high}.",
  "flare-joint.remake-larger": "Cut off the flare and make a larger one: {low} to {high}.",
  "flare-joint.remake-smaller": "Cut off the flare and make a smaller one: {low} to {high}.",
  "flare-joint.remake-cone": "Cut off the flare and make a new one with a 45° tool.",
  "flare-joint.replace-tube": "Replace the tube with one whose wall is at least {low}.",
  "flare-joint.measure-better": "Measure again with an instrument of ±{needed} or better.",
  "flare-joint.check-wrench":
    "Have the wrench checked near this torque and enter its error: ±{needed} or better decides.",
  "flare-joint.check-scale": "Check which scale of the wrench was read before you cut anything.",
  "flare-joint.aim-inside":
    "Bring it to the middle of {low} to {high}. No instrument can tell a figure this near a limit.",
  "flare-joint.aim-above":
    "Choose a tube clearly above {low}. No instrument can tell a figure this near a limit.",
  "flare-joint.state-manual-range": "Enter the range from the unit’s manual.",
  "flare-joint.read-manual-again": "Read the manual again, with its unit.",

  "flare-joint.figure-from-manual": "No figure is published. Take it from the unit’s manual.",

  "flare-joint.figure.torque": "Torque",
  "flare-joint.figure.turn": "Turn",
  "flare-joint.figure.diameter": "Flare diameter",
  "flare-joint.figure.wall": "Wall",
  "flare-joint.figure.seat-angle": "Seat angle",
  "flare-joint.source.jis-type-manuals": "two manuals for JIS-type nuts",
  "flare-joint.source.en-378-2": "EN 378-2",
  "flare-joint.source.manual-range": "the range of another manual",
  "flare-joint.cause.under-tightened": "nut too loose",
  "flare-joint.cause.over-tightened": "nut too tight",
  "flare-joint.cause.flare-too-small": "flare too small",
  "flare-joint.cause.flare-too-large": "flare too large",
  "flare-joint.cause.wall-too-thin": "wall too thin",
  "flare-joint.cause.cone-too-steep": "cone too steep",
  "flare-joint.cause.cone-too-flat": "cone too flat",
});
