// Does the water get away from every indoor unit?
// Follows condensate, which decides. Does not cover what a short test cannot show: the wettest day.
import {
  assessCondensatePump,
  assessDrainSlope,
  assessIndoorUnitPitch,
  type CondensatePumpInput,
  type SlopeReading,
} from "../condensate/index.ts";
import { percent } from "../quantity/units/ratio.ts";
import { whole } from "../shapes/index.ts";
import { doubt } from "./doubt.ts";
import type { Job } from "./job.ts";
import { ownVerdict } from "./own-verdict.ts";
import type { Drain } from "./record-run.ts";
import { servesIndoorUnit } from "./runs.ts";
import { say } from "./statements.ts";
import { present, type Trial, type Tried, tryAll } from "./step.ts";

/** A steeper slope than this is laid as a fall pipe, or typed in another unit; common practice, no source. */
const steepest = 0.05;

/** Does the water get away? */
export function tryDrain({ runs }: Job): Tried {
  const trials = runs
    .filter(servesIndoorUnit)
    .flatMap(({ run, path }) => drainTrials(run.drain ?? {}, `${path}.drain`));
  return tryAll("drain", trials);
}

function drainTrials(drain: Drain, path: string): Trial[] {
  const { slope, vertical, requiredSlope, run, route, unitPitch, pump, waterRanOff } = drain;
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
  const stated = slope && "slope" in slope ? slope.slope : undefined;
  if (stated && stated.si > steepest) {
    const reason = say("commissioning.drain-steep", { slope: stated, usual: percent(5) });
    trials.push(doubt(`${path}.slope.slope`, reason));
  }
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
