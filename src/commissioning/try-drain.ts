// Does the water get away from every indoor unit?
// Follows condensate, which decides. Does not cover what a short test cannot show: the wettest day.
import {
  assessCondensatePump,
  assessDrainSlope,
  assessIndoorUnitPitch,
  type CondensatePumpInput,
  type CondensateStatements,
  minimumFall,
  type SlopeReading,
} from "../condensate/index.ts";
import { known } from "../quantity/known.ts";
import { isAtLeast } from "../quantity/limit.ts";
import { Quantity } from "../quantity/quantity.ts";
import { m } from "../quantity/units/geometry.ts";
import { type Draft, whole } from "../shapes/index.ts";
import { doubt } from "./doubt.ts";
import type { Job } from "./job.ts";
import { oddFigure } from "./odd-figure.ts";
import { ownVerdict } from "./own-verdict.ts";
import type { Drain } from "./record-run.ts";
import { servesIndoorUnit } from "./runs.ts";
import { say } from "./statements.ts";
import { present, type Trial, type Tried, tryAll } from "./step.ts";

type Length = Quantity<"length">;

/** Does the water get away? */
export function tryDrain({ runs }: Job): Tried {
  const trials = runs
    .filter(servesIndoorUnit)
    .flatMap(({ run, path }) => drainTrials(run.drain ?? {}, `${path}.drain`));
  return tryAll("drain", trials);
}

function drainTrials(drain: Drain, path: string): Trial[] {
  const { slope, vertical, requiredSlope, run, fall, route, unitPitch, pump, waterRanOff } = drain;
  const trials: Trial[] = [];
  if (slope || (!pump && !vertical)) {
    trials.push({
      name: "drain-slope",
      path,
      needs: { [`${path}.slope`]: slope },
      paths: { reading: `${path}.slope`, required: `${path}.requiredSlope` },
      run: () => assessDrainSlope(present({ reading: slope, required: requiredSlope, run, route })),
    });
  } else if (vertical && !pump) {
    const passes = () => ownVerdict("pass", say("commissioning.drain-falls-straight"));
    trials.push({ name: "drain-slope", path: `${path}.vertical`, needs: {}, run: passes } as Trial);
  }
  if (fall && !pump) trials.push(...tooLittleFall(drain, fall, path));
  trials.push(...oddSlope(slope, `${path}.slope`), ...oddSlope(unitPitch, `${path}.unitPitch`));
  if (pump) {
    const check = () => assessCondensatePump(whole<CondensatePumpInput>(pump));
    trials.push({ name: "condensate-pump", path: `${path}.pump`, needs: {}, run: check });
  }
  if (unitPitch) {
    trials.push({
      name: "unit-pitch",
      path: `${path}.unitPitch`,
      needs: {},
      paths: { reading: `${path}.unitPitch` },
      run: () => assessIndoorUnitPitch({ reading: whole<SlopeReading>(unitPitch) }),
    });
  }
  trials.push({
    name: "water-drained",
    path: `${path}.waterRanOff`,
    needs: { [`${path}.waterRanOff`]: waterRanOff },
    run: () =>
      waterRanOff
        ? ownVerdict("pass", say("commissioning.water-drained"))
        : ownVerdict(
            "fail",
            say("commissioning.water-did-not-drain"),
            say("commissioning.clear-drain"),
          ),
  });
  return trials;
}

/** A slope is measured at one place; heights say whether the whole of it falls. */
function tooLittleFall({ run, requiredSlope }: Drain, fall: Length, path: string): Trial[] {
  const judged = () => {
    const { si } = minimumFall(present({ run: run ?? fall.minus(fall), slope: requiredSlope }));
    const needed = new Quantity(si, fall.unit);
    return ownVerdict(
      isAtLeast(fall.si, si) && fall.si > 0 ? "pass" : "fail",
      say("commissioning.drain-fall", { fall, needed }),
      say("commissioning.lower-drain"),
    );
  };
  const paths = { run: `${path}.run` };
  return [{ name: "drain-slope", path: `${path}.fall`, needs: {}, paths, run: judged } as Trial];
}

/** Lengths of spirit levels; common practice, no source. */
const levels = [/* @__PURE__ */ m(0.1), /* @__PURE__ */ m(5)] as const;

/** A level that is none, and a slope steeper than a drain or a unit is hung, which the module passes with a finding. */
function oddSlope(reading: Draft<SlopeReading> | undefined, path: string): Trial[] {
  if (!reading) return [];
  const level = "levelLength" in reading ? reading.levelLength : undefined;
  return [...oddFigure(`${path}.levelLength`, level, levels), ...steep(reading, path)];
}

function steep(reading: Draft<SlopeReading>, path: string): Trial[] {
  // What is refused, the check of the slope names.
  const judged = known(() => assessDrainSlope({ reading: whole<SlopeReading>(reading) }));
  const found = judged?.cautions.find(({ code }) => code === "condensate.steep");
  const { slope, usual } = (found?.values ?? {}) as SteepValues;
  return found ? [doubt(path, say("commissioning.drain-steep", { slope, usual }))] : [];
}

type SteepValues = CondensateStatements["condensate.steep"];
