// Does the fitted disconnect pass, and does it stand where it should?
// Follows NFPA 70 (2023), 440.12, 440.14, 110.26(A), 110.29; CSA C22.1, 28-604, 28-714, 2-308; AS/NZS 3000, 4.19.
// Does not cover the horsepower rating and the exception for unfused horsepower-rated switches.
import { isAtLeast, isAtMost } from "../quantity/limit.ts";
import { ampere } from "../quantity/units/electricity.ts";
import type { CheckedCircuit } from "./check-circuit.ts";
import type { FittedDisconnect } from "./circuit-input.ts";
import {
  assumed,
  clauseOf,
  decides,
  type Finding,
  judged,
  notConfirmed,
  noted,
  open,
} from "./findings.ts";
import { judgeSmall } from "./judge-device.ts";
import type { DisconnectDemand } from "./rules/index.ts";
import type { CircuitSizes } from "./size-circuit.ts";
import { say, type Unjudged } from "./statements.ts";

/** Judges the disconnect. */
export function judgeDisconnect(circuit: CheckedCircuit, sizes: CircuitSizes): Finding[] {
  const { disconnect: fitted } = circuit.installed;
  if (fitted === undefined) return [];
  return [
    ...judgeRating(circuit, sizes, fitted),
    ...judgeFuse(circuit, sizes, fitted),
    ...judgePlace(circuit, sizes, fitted),
    ...judgeSpace(circuit, sizes, fitted),
  ];
}

/** The rating; by the sum, or by the largest load where that is known. */
function judgeRating(
  { rules, input }: CheckedCircuit,
  { disconnect, load }: CircuitSizes,
  { rating }: FittedDisconnect,
): Finding[] {
  if (!rules.points["disconnect-rating"]) return [];
  const { minimumRating: needed } = disconnect;
  const bySum = rules.disconnect.of === "largest" && input.largestLoadCurrent === undefined;
  const ok = isAtLeast(rating.si, needed.si);
  // The largest load alone counts 115 %: a rating between the load and 115 % of the sum can be right.
  if (bySum && !ok && rating.si > load.amperes) {
    return [
      open(
        say("circuit-protection.largest-load-not-stated", { rating, needed }),
        say("circuit-protection.state-largest-load"),
      ),
    ];
  }
  return judged(rules, ["disconnect-rating"], "disconnect-rating", ok, {
    met: say("circuit-protection.disconnect-rating-met", { rating, needed }),
    broken: say("circuit-protection.disconnect-too-small", { rating, needed }),
    actions: [say("circuit-protection.fit-disconnect", { needed })],
  });
}

/** Fuses in it: within nameplate and switch, and enough to carry the unit. */
function judgeFuse(
  circuit: CheckedCircuit,
  sizes: CircuitSizes,
  { fuse, rating }: FittedDisconnect,
): Finding[] {
  if (fuse === undefined) return [];
  const { rules, plate } = circuit;
  const limit = ampere(Math.min(plate.maximum, rating.si));
  return [
    ...judged(rules, ["marked-values"], "disconnect-fuse", fuse.si <= limit.si, {
      met: say("circuit-protection.disconnect-fuse-met", { fuse, limit }),
      broken: say("circuit-protection.disconnect-fuse-too-large", { fuse, limit }),
      actions: [say("circuit-protection.fit-disconnect-fuses", { limit })],
    }),
    ...judgeSmall(circuit, sizes, fuse.si, "fuse", "disconnect-fuse"),
  ];
}

const move = "move-disconnect";
const lock = "fit-lockable-disconnect";
type Place = readonly [
  unjudged: Unjudged,
  ok: (fitted: FittedDisconnect) => boolean | undefined,
  met: string,
  broken: string,
  action: typeof move | typeof lock,
];
const not = (flag: boolean | undefined) => (flag === undefined ? undefined : !flag);

/** How each demand of a rule set is read off what is fitted (`undefined` where it is not stated), and what it says. */
const places = {
  visible: ["in-sight", ({ visible }) => visible, "in-sight", "out-of-sight", move],
  "visible or lockable": [
    "in-sight",
    ({ visible, lockable }) => visible || lockable || (visible ?? lockable),
    "in-sight",
    "out-of-sight",
    lock,
  ],
  readilyAccessible: [
    "accessible",
    (fitted) => fitted.readilyAccessible,
    "accessible",
    "not-accessible",
    move,
  ],
  notInTheWay: ["not-in-the-way", ({ inTheWay }) => not(inTheWay), "clear", "in-the-way", move],
  lockable: ["lockable", ({ lockable }) => lockable, "lockable", "not-lockable", lock],
  notOnUnit: ["not-on-unit", ({ onUnit }) => not(onUnit), "off-unit", "on-unit", move],
} as const satisfies Record<DisconnectDemand, Place>;

/** Its place, demand by demand: what is not stated is listed, not called met. */
function judgePlace(
  { rules }: CheckedCircuit,
  { disconnect }: CircuitSizes,
  fitted: FittedDisconnect,
): Finding[] {
  const point = ["disconnect-place"] as const;
  const unknown: Unjudged[] = [];
  const found = rules.disconnect.wants.flatMap((name) => {
    const [unjudged, ok, met, broken, action] = places[name];
    const state = ok(fitted);
    if (state === undefined) {
      unknown.push(unjudged);
      return [];
    }
    return judged(rules, point, "disconnect-place", state, {
      met: say(`circuit-protection.disconnect-${met}`),
      broken: say(`circuit-protection.disconnect-${broken}`),
      actions: [say(`circuit-protection.${action}`)],
    });
  });
  const { withinSight: limit } = disconnect;
  const { distance, workingSpace } = fitted;
  if (limit && distance) {
    found.push(
      ...judged(rules, point, "disconnect-place", isAtMost(distance.si, limit.si), {
        met: say("circuit-protection.disconnect-near", { distance, limit }),
        broken: say("circuit-protection.disconnect-too-far", { distance, limit }),
        actions: [say("circuit-protection.move-disconnect-within", { limit })],
      }),
    );
  } else if (limit) unknown.push("near-enough");
  if (disconnect.workingSpace && workingSpace === undefined) unknown.push("working-space");
  if (unknown.length > 0) {
    const parts = unknown.map((one) => `circuit-protection.unjudged.${one}` as const);
    found.push(assumed(say("circuit-protection.not-stated", { parts })));
  }
  return found;
}

/** The space in front of it: a duty or advice, by rule set. */
function judgeSpace(
  { rules, connection }: CheckedCircuit,
  { disconnect }: CircuitSizes,
  { workingSpace: space }: FittedDisconnect,
): Finding[] {
  const { workingSpace: least } = disconnect;
  if (space === undefined || least === undefined) return [];
  const { equipmentWidth: wide } = space;
  const needed = { ...least, width: wide && wide.si > least.width.si ? wide : least.width };
  const enough = (["depth", "width", "height"] as const).every((side) =>
    isAtLeast(space[side].si, needed[side].si),
  );
  if (!rules.workingSpace?.required) {
    return enough ? [] : [noted(say("circuit-protection.working-space-recommended", needed))];
  }
  // Whoever says more is not worse off: what is met by the figure that is held here leaves nothing open.
  if (enough && !decides(rules, "working-space")) {
    return [{ ...notConfirmed(rules, "working-space", "working-space"), isNoted: true }];
  }
  const { readUpTo = Infinity } = rules.workingSpace;
  const clause = clauseOf(rules, "working-space");
  return [
    ...judged(rules, ["working-space"], "working-space", enough, {
      met: say("circuit-protection.working-space-met", needed),
      broken: say("circuit-protection.working-space-short", needed),
      actions: [say("circuit-protection.clear-space", needed)],
    }),
    ...(connection.voltsToGround > readUpTo ? [{ as: "memory", clause } as const] : []),
  ];
}
