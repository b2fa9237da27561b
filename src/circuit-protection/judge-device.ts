// Does the fitted breaker or fuse pass?
// Follows NFPA 70 (2023), 440.22(C), 240.15(B), 240.85; CSA C22.1, 28-202, 14-010; IEC 60364-4-43:2008, 433.1.
// Does not cover the device's condition, its brand in the panel, or its interrupting rating.
import { isAtLeast } from "../quantity/limit.ts";
import { ampere } from "../quantity/units/electricity.ts";
import type { CheckedCircuit } from "./check-circuit.ts";
import type { FittedDevice } from "./circuit-input.ts";
import type { DeviceKind } from "./circuit-kinds.ts";
import { assumed, decides, type Finding, judged, noted, open } from "./findings.ts";
import type { CircuitSizes } from "./size-circuit.ts";
import type { Device } from "./statement-values.ts";
import { type CircuitPart, say, verbatim } from "./statements.ts";

/** Judges the device; fuses in the disconnect may do the nameplate's job. */
export function judgeDevice(circuit: CheckedCircuit, sizes: CircuitSizes): Finding[] {
  const { rules, plate, installed, fuse } = circuit;
  const { device } = installed;
  const none = sizes.permitted.ratings.length === 0 ? noStandardDevice(circuit) : [];
  if (device === undefined) return none;
  const { maximum, marking } = plate;
  const { rating, kind } = device;
  const fusesDoIt = fuse !== undefined && fuse <= maximum;
  const shown = fusesDoIt && rating.si > maximum ? ampere(fuse) : rating;
  const rated = { device: word(fusesDoIt ? "fuse" : kind), rating: shown };
  const limit = ampere(Number.isFinite(maximum) ? maximum : rating.si); // an unknown one is asked for
  return [
    ...(Number.isFinite(maximum)
      ? judged(rules, ["marked-values"], "device-rating", rating.si <= maximum || fusesDoIt, {
          met: say("circuit-protection.device-rating-met", { ...rated, limit }),
          broken: say("circuit-protection.device-too-large", { ...rated, limit }),
          actions: [say("circuit-protection.fit-at-most", { limit })],
        })
      : []),
    ...judged(
      rules,
      ["marked-values"],
      "device-kind",
      marking !== "fuse only" || kind === "fuse" || fusesDoIt,
      {
        met: say("circuit-protection.device-kind-met", { device: rated.device }),
        broken: say("circuit-protection.fuse-required"),
        actions: [say("circuit-protection.fit-fuses")],
      },
    ),
    ...judgePoles(circuit, device),
    ...judgeMarking(circuit, device),
    ...judgeSmall(circuit, sizes, rating.si, kind, "device-rating"),
    ...deviceNotes(circuit, device),
    ...none,
  ];
}

/** The word for a kind of device. */
export const word = (kind: DeviceKind): Device => `circuit-protection.device.${kind}`;

/** No standard size lies between the two figures of the nameplate. */
function noStandardDevice({ rules, plate }: CheckedCircuit): Finding[] {
  const values = { ampacity: ampere(plate.ampacity), maximum: ampere(plate.maximum) };
  if (!rules.deviceProtectsConductor && plate.maximum >= plate.ampacity) {
    return [noted(say("circuit-protection.no-standard-device-between", values))];
  }
  return [
    {
      as: "fail",
      part: "device-rating",
      said: say("circuit-protection.no-standard-device", values),
      actions: [
        say(`circuit-protection.${plate.shared > 0 ? "give-own-circuit" : "ask-manufacturer"}`),
      ],
    },
  ];
}

/**
 * A device too small to carry the unit. Below what runs together it fails; below the ampacity it has to be asked
 * about, except where the rules ask for Ib ≤ In. What runs together is at least the ampacity/1.25 (UL 1995, 37.14).
 */
export function judgeSmall(
  { rules, plate, input }: CheckedCircuit,
  { load, permitted }: CircuitSizes,
  amperes: number,
  kind: DeviceKind,
  part: CircuitPart,
): Finding[] {
  if (amperes >= plate.ampacity) return [];
  const known = (plate.own - plate.rounding) / rules.ampacityFactor + plate.sharedCurrent;
  const carried = load.by === "input" ? load.amperes : known;
  const rated = { device: word(kind), rating: ampere(amperes) };
  const [from, to] = [permitted.ratings[0], permitted.ratings.at(-1)];
  const window =
    from && to
      ? say("circuit-protection.fit-between", { from, to })
      : say(`circuit-protection.${plate.shared > 0 ? "give-own-circuit" : "ask-manufacturer"}`);
  const fails = rules.deviceProtectsConductor || !isAtLeast(amperes, carried);
  if (fails) {
    const load = ampere(rules.deviceProtectsConductor ? plate.ampacity : carried);
    const code = plate.shared > 0 ? "device-below-loads" : "device-below-load";
    const said = say(`circuit-protection.${code}`, { ...rated, load });
    return [{ as: "fail", part, said, actions: [window] }];
  }
  // Nothing that is made lies between the figures: with the nameplate read again the next size down is what there is.
  if (permitted.ratings.length === 0 && input.nameplateReadAgain) return [];
  const ampacity = ampere(plate.ampacity);
  return [open(say("circuit-protection.device-below-ampacity", { ...rated, ampacity }), window)];
}

function judgePoles(
  { rules, connection }: CheckedCircuit,
  { poles, kind }: FittedDevice,
): Finding[] {
  const { poles: needed } = connection;
  if (needed === 1 || !rules.points.poles) return [];
  if (poles === undefined) {
    if (kind === "fuse") return [];
    return [
      open(
        say("circuit-protection.poles-not-stated", { needed }),
        say("circuit-protection.state-poles"),
      ),
    ];
  }
  return judged(rules, ["poles"], "device-poles", poles >= needed, {
    met: say("circuit-protection.poles-met", { poles, needed }),
    broken: say("circuit-protection.poles-too-few", { poles, needed }),
    actions: [
      say(`circuit-protection.${kind === "fuse" ? "fuse-every-line" : "fit-poles"}`, { needed }),
    ],
  });
}

/** The voltage marking; what is made with these poles at least counts as fitted where nothing is stated. */
function judgeMarking(
  { rules, connection }: CheckedCircuit,
  { voltageRating }: FittedDevice,
): Finding[] {
  const { rows } = rules.voltageRatings;
  if (!rules.points["voltage-marking"]) return [];
  const needed = verbatim(connection.voltageRating);
  const system = verbatim(connection.system);
  if (voltageRating === undefined) {
    // No breaker for two lines is marked lower than the slash rating of the lowest service.
    const lowest = rows.find(([, ground, lines]) => (lines ?? 0) > (ground ?? 0));
    const safe = connection.voltageRating === lowest?.[0] || connection.poles === 1;
    return safe
      ? [assumed(say("circuit-protection.voltage-marking-assumed", { marking: needed }))]
      : [
          open(
            say("circuit-protection.voltage-marking-not-stated", { system }),
            say("circuit-protection.state-marking"),
          ),
        ];
  }
  const [, ground, lines] = rows.find(([name]) => name === voltageRating) ?? [];
  const marking = verbatim(voltageRating);
  const ok = (ground ?? 0) >= connection.voltsToGround && (lines ?? 0) >= connection.voltsBetween;
  if (ok && !decides(rules, "voltage-marking")) return [];
  return judged(rules, ["voltage-marking"], "device-voltage", ok, {
    met: say("circuit-protection.voltage-marking-met", { marking }),
    broken: say("circuit-protection.voltage-marking-too-low", { marking, needed, system }),
    actions: [say("circuit-protection.fit-marking", { needed })],
  });
}

/** What a pass would hide: odd sizes, a missing mark, a curve that trips at the start. */
function deviceNotes({ rules, plate, input }: CheckedCircuit, device: FittedDevice): Finding[] {
  const { rating, kind, curve, hacr } = device;
  const found: Finding[] = [];
  if (!rules.ratings[kind].includes(rating.si)) {
    found.push(
      noted(say("circuit-protection.device-not-standard", { device: word(kind), rating })),
    );
  }
  if (plate.marking === "fuse or HACR breaker" && kind === "breaker" && hacr === false) {
    found.push(noted(say("circuit-protection.hacr-mark")));
  }
  if (curve === undefined || !rules.tripping) return found;
  if (!rules.tripping.compressor.includes(curve)) {
    found.push(noted(say("circuit-protection.curve", { curve: verbatim(curve) })));
  }
  const from = ampere(rating.si * rules.tripping.curves[curve][0]);
  const { lockedRotorCurrent: locked } = input;
  if (locked && locked.si > from.si) {
    found.push(noted(say("circuit-protection.start-may-trip", { locked, from })));
  }
  return found;
}
