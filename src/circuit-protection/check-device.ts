// Does the fitted breaker or fuse pass?
// Follows NFPA 70 (2023), 440.22(C), 240.15(B), 240.85; IEC 60364-4-43:2008, 433.1.
// Does not cover the device's condition, its brand in the panel, or its interrupting rating.
import { type Statement, statement } from "../assessment/assessment.ts";
import { flagOf, oneOf } from "../quantity/check.ts";
import { ampere } from "../quantity/units/electricity.ts";
import { amperesOf } from "./checks.ts";
import type { CircuitInput, FittedDevice, ProtectionMarking } from "./circuit-input.ts";
import type { Connection } from "./connection.ts";
import { type Findings, judge } from "./findings.ts";
import { tripBand } from "./trip-band.ts";

/** Judges the device; `fuse` is the rating of fuses in the disconnect, which may do the plate's job. */
export function checkDevice(
  findings: Findings,
  { rules, lockedRotorCurrent }: CircuitInput,
  plate: { ampacity: number; maximum: number; marking: ProtectionMarking },
  connection: Connection,
  device: FittedDevice,
  fuse: number | undefined,
): void {
  const { ampacity, maximum, marking } = plate;
  const rating = amperesOf("installed.device.rating", device.rating);
  const kind = oneOf("installed.device.kind", device.kind, ["breaker", "fuse"]);
  const limit = ampere(maximum);
  const fusesDoIt = fuse !== undefined && fuse <= maximum;
  judge(
    findings,
    rating <= maximum || fusesDoIt,
    "device-rating",
    "{rating} fitted, at most {limit} marked.",
    { rating: fusesDoIt && rating > maximum ? ampere(fuse) : device.rating, limit },
  );
  judge(
    findings,
    marking !== "fuse only" || kind === "fuse" || fusesDoIt,
    "device-kind",
    "{kind} fitted; the plate says {marking}.",
    { kind: fusesDoIt ? "fuse" : kind, marking },
  );
  const { poles, voltageRating, curve, hacr } = device;
  if (curve !== undefined) oneOf("installed.device.curve", curve, ["B", "C", "D"]);
  if (hacr !== undefined) flagOf("installed.device.hacr", hacr);
  if (poles !== undefined) {
    judge(
      findings,
      oneOf("installed.device.poles", poles, [1, 2, 3]) >= connection.poles,
      "device-poles",
      "{poles} poles fitted, {needed} needed.",
      { poles, needed: connection.poles },
    );
  }
  if (voltageRating !== undefined) {
    const { rows } = rules.voltageRatings;
    oneOf(
      "installed.device.voltageRating",
      voltageRating,
      rows.map(([name]) => name),
    );
    const row = rows.find(([name]) => name === voltageRating);
    judge(
      findings,
      (row?.[1] ?? 0) >= connection.voltsToGround && (row?.[2] ?? 0) >= connection.voltsBetween,
      "device-voltage",
      "Marked {voltageRating}; {system} needs {needed} or more.",
      { voltageRating, system: connection.system, needed: connection.voltageRating },
    );
  }
  const warn = (code: string, text: string, values: Statement["values"] = {}) =>
    findings.cautions.push(statement(code, text, values));
  if (!rules.ratings[kind].includes(rating)) {
    warn("device-not-standard", "{rating} is not a standard size.", { rating: device.rating });
  }
  if (rating < ampacity) {
    const text = "{rating} is below {ampacity}: it may trip in normal use.";
    const values = { rating: device.rating, ampacity: ampere(ampacity) };
    if (rules.deviceProtectsConductor) judge(findings, false, "device-rating", text, values);
    else warn("device-below-ampacity", text, values);
  }
  if (marking === "fuse or HACR breaker" && kind === "breaker" && hacr === false) {
    warn(
      "hacr-mark",
      "No HACR mark: breakers are tested for it today, but some inspectors ask for it.",
    );
  }
  if (curve !== undefined && rules.tripping) {
    const band = tripBand({ rules, rating: device.rating, curve });
    if (!rules.tripping.compressor.includes(curve)) {
      warn("curve", "Curve {curve} may trip when a compressor starts.", { curve });
    }
    if (lockedRotorCurrent && lockedRotorCurrent.si > band.instantaneousFrom.si) {
      warn("start-may-trip", "{locked} at the start is above {from}: it may trip.", {
        locked: lockedRotorCurrent,
        from: band.instantaneousFrom,
      });
    }
  }
}
