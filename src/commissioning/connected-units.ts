// May these indoor units be joined to the outdoor unit? Their capacities together against the manual's least and most.
// Follows the manual. Does not cover which sizes go together: a manual's table of combinations says that.
import { isAtLeast, isAtMost } from "../quantity/limit.ts";
import { Quantity } from "../quantity/quantity.ts";
import type { Job } from "./job.ts";
import { ownVerdict } from "./own-verdict.ts";
import { runsOf, servesIndoorUnit } from "./runs.ts";
import { say } from "./statements.ts";
import type { Trial } from "./step.ts";

/** The sum of the indoor units, where the manual limits it. */
export function connectedUnits({ record }: Job): Trial[] {
  const { leastConnected: least, mostConnected: most } = record.equipment?.manual ?? {};
  const units = runsOf(record) // also those that are waived
    .filter(servesIndoorUnit)
    .flatMap(({ run: { indoorUnits }, path }) =>
      (indoorUnits?.length ? indoorUnits : [{}]).map(
        ({ capacity }, i) => [`${path}.indoorUnits[${i}].capacity`, capacity] as const,
      ),
    );
  const needs = Object.fromEntries(units);
  const sum = (like: Quantity<"power">) =>
    new Quantity(
      units.reduce((all, [, one]) => all + (one as Quantity<"power">).si, 0),
      (units[0]?.[1] ?? like).unit,
    );
  const judge = (limit: Quantity<"power">, isLeast: boolean) => {
    const total = sum(limit);
    const values = { total, limit };
    if (isLeast ? isAtLeast(total.si, limit.si) : isAtMost(total.si, limit.si)) {
      return ownVerdict(
        "pass",
        say(`commissioning.connected-${isLeast ? "enough" : "within"}`, values),
      );
    }
    return ownVerdict(
      "fail",
      say(`commissioning.connected-${isLeast ? "below" : "above"}`, values),
      say(`commissioning.connect-${isLeast ? "more" : "less"}`, { limit }),
    );
  };
  return [[least, "leastConnected"] as const, [most, "mostConnected"] as const].flatMap(
    ([limit, field]): Trial[] =>
      limit
        ? [
            {
              name: "connected-units",
              path: `equipment.manual.${field}`,
              needs,
              run: () => judge(limit, field === "leastConnected"),
            },
          ]
        : [],
  );
}
