// Does the fitted disconnect pass, and does it stand where it should?
// Follows NFPA 70 (2023), 440.12, 440.14, 110.26(A).
// Does not cover the horsepower rating and the exception for unfused horsepower-rated switches.
import { statement } from "../assessment/assessment.ts";
import { flagOf, objectOf, siOf } from "../quantity/check.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { ampere } from "../quantity/units/electricity.ts";
import { amperesOf } from "./checks.ts";
import type { FittedDisconnect } from "./circuit-input.ts";
import { type Findings, judge } from "./findings.ts";
import type { RequiredDisconnect } from "./required-disconnect.ts";

/** Judges the disconnect; `spaceRequired` tells whether working space binds or is advice. */
export function checkDisconnect(
  findings: Findings,
  fitted: FittedDisconnect,
  required: RequiredDisconnect,
  maximum: number,
  spaceRequired: boolean,
): void {
  const at = "installed.disconnect";
  const { minimumRating, withinSight, workingSpace } = required;
  const rating = amperesOf(`${at}.rating`, fitted.rating);
  judge(
    findings,
    rating >= minimumRating.si - 1e-9,
    "disconnect-rating",
    "Disconnect {rating}, at least {needed}.",
    { rating: fitted.rating, needed: minimumRating },
  );
  if (fitted.fuse !== undefined) {
    judge(
      findings,
      amperesOf(`${at}.fuse`, fitted.fuse) <= Math.min(maximum, rating),
      "disconnect-fuse",
      "Fuses {fuse}, at most {limit}.",
      { fuse: fitted.fuse, limit: ampere(Math.min(maximum, rating)) },
    );
  }
  const { visible, distance, readilyAccessible, inTheWay, workingSpace: space } = fitted;
  const far =
    distance !== undefined &&
    siOf(`${at}.distance`, distance, "length", { min: 0 }) > (withinSight?.si ?? Infinity);
  const unknown = [
    visible === undefined && "in sight of the unit",
    withinSight && distance === undefined && "near enough",
    readilyAccessible === undefined && "readily accessible",
    inTheWay === undefined && "not over nameplate or panel",
    workingSpace && space === undefined && "with its working space",
  ].filter(Boolean);
  if (unknown.length > 0) {
    findings.assumptions.push(
      statement(
        "disconnect-place",
        `Not stated of the disconnect and not checked: ${unknown.join(", ")}.`,
      ),
    );
  }
  // Each by itself: what is not stated is not called met.
  const place = (name: string, known: boolean | undefined, wanted: boolean, text: string) => {
    if (known === undefined) return;
    judge(findings, flagOf(`${at}.${name}`, known) === wanted, "disconnect-place", text);
  };
  place("visible", visible, true, "Disconnect in sight of the unit.");
  if (withinSight && distance !== undefined) {
    judge(findings, !far, "disconnect-place", "Disconnect at most {withinSight} from the unit.", {
      withinSight,
    });
  }
  place("readilyAccessible", readilyAccessible, true, "Disconnect readily accessible.");
  place("inTheWay", inTheWay, false, "Disconnect not over the nameplate or an access panel.");
  if (space !== undefined && workingSpace) {
    const { depth, width, height, equipmentWidth } = objectOf(`${at}.workingSpace`, space);
    const least = { ...workingSpace };
    const metres = (name: string, side: Quantity<"length">) =>
      siOf(`${at}.workingSpace.${name}`, side, "length", { min: 0 });
    if (equipmentWidth !== undefined && metres("equipmentWidth", equipmentWidth) > least.width.si) {
      least.width = equipmentWidth;
    }
    const enough = [
      metres("depth", depth) >= least.depth.si - 1e-9,
      metres("width", width) >= least.width.si - 1e-9,
      metres("height", height) >= least.height.si - 1e-9,
    ].every(Boolean);
    const text = "Working space {depth} deep, {width} wide, {height} high.";
    if (enough || spaceRequired) judge(findings, enough, "working-space", text, least);
    else findings.cautions.push(statement("working-space-short", text, least));
  }
}
