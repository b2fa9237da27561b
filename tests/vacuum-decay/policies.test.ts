// The acceptance policies beside what their sources state: target, then each checkpoint, in micron and minutes. The
// guide specifications are public (UFGS 15182, 15741N, 15730N); manuals and advice as their sources have them; ASHRAE 15
// and EN 378-2 from memory; the rest is common practice, no source.
import { micron, minute } from "hvac-install-math/quantity";
import {
  acceptancePolicies,
  evacuationTargets,
  type PolicyName,
} from "hvac-install-math/vacuum-decay";
import { describe, expect, it } from "vitest";

type Row = readonly [minutes: number, what: "limit" | "rise", micron: number, failAbove?: number];
const stated: Record<PolicyName, readonly [target: number, ...Row[]]> = {
  guideSpec15182: [300, [60, "limit", 500]],
  guideSpec15741N: [300, [120, "limit", 300]],
  splitManualA: [500, [15, "limit", 700, 800]],
  splitManualB: [500, [20, "limit", 500]],
  closeControlManual: [500, [30, "limit", 500], [60, "limit", 750]],
  multiSplitManualC: [500, [60, "rise", 0]],
  multiSplitManualD: [5000, [60, "rise", 0]], // 5 torr
  distributorAdvice: [250, [10, "limit", 1000, 2000]],
  ashrae15Memory: [500, [10, "limit", 1500]],
  commonPractice500: [500, [10, "rise", 500]],
  provenEarly500: [500, [10, "rise", 500]],
};
const microns = (one: { readonly si: number } | undefined) =>
  one === undefined ? undefined : Math.round((one.si / micron.scale) * 10) / 10;

describe("a policy", () => {
  it.each(Object.entries(stated))("%s has the figures of its source", (name, [target, ...rows]) => {
    const policy = acceptancePolicies[name as PolicyName];
    expect(microns(policy.target)).toBe(target);
    expect(
      policy.checkpoints.map(({ at, limit, rise, failAbove }) => [
        at.in(minute),
        microns(limit),
        microns(rise),
        microns(failAbove),
      ]),
    ).toEqual(
      rows.map(([at, what, most, failAbove]) => [
        at,
        what === "limit" ? most : undefined,
        what === "rise" ? most : undefined,
        failAbove,
      ]),
    );
  });

  it("passes before its hold is over only where it says so", () => {
    const early = Object.entries(acceptancePolicies).filter(([, { earlyPass }]) => earlyPass);
    expect(early.map(([name]) => name)).toEqual(["provenEarly500"]);
  });

  it("says where it comes from, and how sure that is", () => {
    const of = (standing: string) =>
      Object.entries(acceptancePolicies)
        .filter(([, policy]) => policy.standing === standing)
        .map(([name, { source }]) => [name, source.source]);
    expect(of("memory")).toEqual([["ashrae15Memory", "ashrae-15-2022"]]);
    expect(of("practice")).toEqual([
      ["commonPractice500", "common-practice"],
      ["provenEarly500", "common-practice"],
    ]);
    expect(of("published")).toHaveLength(8);
  });
});

it("a target without a hold has the figure of its source", () => {
  const pascals = Object.fromEntries(
    Object.entries(evacuationTargets).map(([name, { target, standing }]) => [
      name,
      [Math.round(target.si), standing],
    ]),
  );
  expect(pascals).toEqual({
    guideSpec15730N: [133, "published"], // 1 torr
    fieldChecklist: [133, "published"], // 1000 micron
    en378: [270, "memory"],
    factory: [7, "published"], // 50 micron
  });
});
