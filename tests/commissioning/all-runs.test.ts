// All runs together against the manual, measured with one tape. It errs the same way on each run, so that three lengths
// of ±1 ft have a standard uncertainty of 3 · 1 ft/√3 (JCGM 100:2008, 4.3.7 and 5.2.2), and what lies within 1.645 of
// these beyond a limit has not failed yet (JCGM 106:2012, 8.3.3).
import { ft, kW, watt } from "hvac-install-math/quantity";
import { expect, it } from "vitest";
import { assessInstallation } from "./assess.ts";
import { type Change, changed } from "./changed.ts";
import { threeHeads } from "./three-heads.ts";

const found = (name: "total-length" | "indoor-lift" | "connected-units", changes: Change) =>
  assessInstallation(changed(changes, threeHeads))
    .steps.flatMap(({ checks }) => checks)
    .find((check) => check.name === name)?.assessment;
const outcome = (...given: Parameters<typeof found>) => found(...given)?.outcome;
/** What is said of a figure, and what is to be done. */
const said = (...given: Parameters<typeof found>) =>
  [...(found(...given)?.reasons ?? []), ...(found(...given)?.actions ?? [])].map(({ code }) =>
    code.replace("commissioning.", ""),
  );
const tape = { "instruments.tape.accuracy": ft(1) };

// 41 ft + 18 ft + 33 ft = 92 ft; 1.645 · 3 ft/√3 = 2.85 ft, and 1.90 ft where one length is nominal.
it.each([
  [89.2, tape, "inconclusive"],
  [89.1, tape, "fail"],
  [90.2, { ...tape, "runs[1].tubing.lengthIs": "nominal" }, "inconclusive"],
  [90, { ...tape, "runs[1].tubing.lengthIs": "nominal" }, "fail"],
  [91.9, { "instruments.tape": {} }, "fail"],
] as const)("92 ft in all against %f ft with %j is %s", (limit, changes, expected) => {
  const manual = { "equipment.manual.maximumTotalLength": ft(limit) };
  expect(outcome("total-length", { ...changes, ...manual })).toBe(expected);
});

// 19 ft − 9 ft = 10 ft; 1.645 · 2 ft/√3 = 1.90 ft.
it.each([
  [8.2, "inconclusive"],
  [8, "fail"],
])("heads 10 ft above each other against %f ft are %s", (limit, expected) => {
  const manual = { "equipment.manual.maximumIndoorLift": ft(limit) };
  const changes = { ...tape, ...manual, "runs[0].tubing.lift": ft(19) };
  expect(outcome("indoor-lift", changes)).toBe(expected);
});

it("the total is judged once every length is known", () => {
  const changes = {
    "equipment.manual.maximumTotalLength": ft(50),
    "runs[1].tubing.length": undefined,
  };
  expect(outcome("total-length", changes)).toBeUndefined();
});

it.each([
  [92, ["total-length-within"]],
  [89.2, ["total-length-too-close", "measure-runs-better"]],
  [89.1, ["total-length-above", "shorten-runs"]],
])("says of 92 ft against %f ft what is to be done: %j", (limit, expected) => {
  const manual = { "equipment.manual.maximumTotalLength": ft(limit) };
  expect(said("total-length", { ...tape, ...manual })).toEqual(expected);
});

it("says how far the heads are apart, and to bring them closer", () => {
  const changes = { "equipment.manual.maximumIndoorLift": ft(5), "runs[0].tubing.lift": ft(19) };
  expect(said("indoor-lift", changes)).toEqual(["indoor-lift-above", "bring-indoor-units-closer"]);
  const [reason] = found("indoor-lift", changes)?.reasons ?? [];
  expect(Object.values(reason?.values ?? {}).map(String)).toEqual(["10 ft", "5 ft"]);
});

// 3 · 2600 W = 7800 W, in the unit of the heads.
it.each([
  ["leastConnected", 8, "below", ["connect-more"]],
  ["leastConnected", 7.8, "enough", []],
  ["mostConnected", 7.8, "within", []],
  ["mostConnected", 7, "above", ["connect-less"]],
] as const)("heads of 7800 W in all with %s %f kW are %s, %j", (field, limit, how, actions) => {
  const heads = [0, 1, 2].map((i) => [`runs[${i}].indoorUnits[0].capacity`, watt(2600)] as const);
  const changes = { ...Object.fromEntries(heads), [`equipment.manual.${field}`]: kW(limit) };
  expect(said("connected-units", changes)).toEqual([`connected-${how}`, ...actions]);
  const [reason] = found("connected-units", changes)?.reasons ?? [];
  expect(reason?.values).toMatchObject({ total: watt(7800), limit: kW(limit) });
});

// What is connected together is known once the plate of every head is.
it.each([[[]], [[{}]], [undefined]])(
  "asks for the capacity of a head of which %j is recorded",
  (units) => {
    const heads = { "runs[0].indoorUnits[0].capacity": watt(2600), "runs[1].indoorUnits": units };
    const manual = { "equipment.manual.mostConnected": kW(8) };
    const { missing } = assessInstallation(changed({ ...heads, ...manual }, threeHeads));
    expect(missing).toContain("runs[1].indoorUnits[0].capacity");
    expect(missing).not.toContain("runs[0].indoorUnits[0].capacity");
    expect(outcome("connected-units", { ...heads, ...manual })).toBeUndefined();
  },
);
