// A figure that no check can use is named by its own field, which the app marks: not by the part around it, and not by
// another. Negative lengths, masses and accuracies, and figures a million times too large, are wrong by what they are.
import { isQuantity, type Quantity } from "hvac-install-math/quantity";
import { expect, it } from "vitest";
import { known } from "../../src/quantity/known.ts";
import { rich } from "../report/rich-record.ts";
import { assessInstallation } from "./assess.ts";
import { changed } from "./changed.ts";

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
  "runs[0].tubing.vapor.outsideDiameter", // of a volume: by the first of its tubes
];

it("names each figure of a record that cannot be used by its own field", () => {
  const { history: _, ...record } = rich;
  const places = (path: string, figure: Figure, factor: number): string[] => {
    const number = (figure.in(figure.unit) || 1) * factor;
    const wrong = known(() => figure.unit(number)); // no temperature is below absolute zero
    if (!wrong) return [];
    const { steps } = assessInstallation(changed({ [path]: wrong }, record));
    return steps.flatMap(({ problems }) => problems.map((one) => one.path));
  };
  const judged = figuresIn(record).map(([path, figure]) => {
    const found = places(path, figure, -1);
    return { path, found: found.includes(path) ? found : [...found, ...places(path, figure, 1e6)] };
  });
  const refused = judged.filter(({ found }) => found.length > 0);
  expect(refused.length).toBeGreaterThan(judged.length / 2); // the rest is judged: a course, a reading
  const astray = refused.filter(({ path, found }) => !found.includes(path));
  expect(astray.map(({ path }) => path).sort()).toEqual([...together].sort());
});
