// A figure that no check can use is named by its own field, which the app marks: not by the part around it, and not by
// another. Negative lengths, masses and accuracies, and figures a million times too large, are wrong by what they are.
import type { InstallationRecord } from "hvac-install-math/commissioning";
import { ft, inch, isQuantity, oz, ozPerFt, type Quantity } from "hvac-install-math/quantity";
import { expect, it } from "vitest";
import { known } from "../../src/quantity/known.ts";
import { rich } from "../report/rich-record.ts";
import { assessInstallation } from "./assess.ts";
import { changed } from "./changed.ts";
import { threeHeads } from "./three-heads.ts";

type Figure = Quantity<"length">;

function figuresIn(value: unknown, path = ""): [path: string, figure: Figure][] {
  if (isQuantity(value)) return [[path, value as Figure]];
  if (Array.isArray(value)) return value.slice(0, 1).flatMap((one) => figuresIn(one, `${path}[0]`));
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([name, one]) =>
    figuresIn(one, path ? `${path}.${name}` : name),
  );
}

/** Fields that are only judged together with others: the part that holds these is named. */
const together = [
  "operation[0].indoorTemperature", // of a coil: its air and its approach
  "operation[0].outdoorTemperature",
  "runs[0].drain.slope.gap",
  "runs[0].drain.unitPitch.gap",
];

/** Where problems are named when a figure is so many times what it was. */
function places(record: InstallationRecord, path: string, figure: Figure, factor: number) {
  const number = (figure.in(figure.unit) || 1) * factor;
  const wrong = known(() => figure.unit(number)); // no temperature is below absolute zero
  if (!wrong) return [];
  const { steps } = assessInstallation(changed({ [path]: wrong }, record));
  return steps.flatMap(({ problems }) => problems.map((one) => one.path));
}

it("names each figure of a record that cannot be used by its own field", () => {
  const { history: _, ...record } = rich;
  const judged = figuresIn(record).map(([path, figure]) => {
    const found = places(record, path, figure, -1);
    return {
      path,
      found: found.includes(path) ? found : [...found, ...places(record, path, figure, 1e6)],
    };
  });
  const refused = judged.filter(({ found }) => found.length > 0);
  expect(refused.length).toBeGreaterThan(judged.length / 2); // the rest is judged: a course, a reading
  const astray = refused.filter(({ path, found }) => !found.includes(path));
  expect(astray.map(({ path }) => path).sort()).toEqual([...together].sort());
});

it("names a figure of the second of three runs, and of its own manual, at that run", () => {
  const manual = {
    run: { maximumLength: ft(82), minimumLength: ft(10), maximumLift: ft(49) },
    preChargedLength: ft(25),
    chargeRate: ozPerFt(0.22),
    chargeAllowance: oz(1),
  };
  const [a = {}, b = {}, c = {}] = threeHeads.runs ?? [];
  const record = { ...threeHeads, runs: [a, { ...b, manual }, c] };
  const { tubing } = b;
  const own = [...figuresIn(manual, "runs[1].manual"), ...figuresIn(tubing, "runs[1].tubing")];
  for (const [path, figure] of own) {
    const found = new Set([-1, 1e6].flatMap((factor) => places(record, path, figure, factor)));
    expect([...found], path).toContain(path);
    expect([...found].filter((one) => !one.startsWith("runs[1]"))).toEqual([]);
  }
});

it.each<[string, unknown]>([
  ["equipment.manual.chargeRate", ozPerFt(-0.22)], // no run has its own
  ["instruments.tape.accuracy", inch(-0.5)], // each run and their total are measured with it
])("names %s of all runs there, and nowhere else", (path, wrong) => {
  const record = changed({ [path]: wrong }, threeHeads);
  const found = assessInstallation(record).steps.flatMap(({ problems }) => problems);
  expect([...new Set(found.map((one) => one.path))]).toEqual([path]);
});
