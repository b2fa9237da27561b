import { InvalidInputError } from "hvac-install-math/quantity";
import {
  R410A,
  R717,
  R1234zeE,
  refrigerantByDesignation,
  refrigerants,
} from "hvac-install-math/refrigerants";
import { bibliography } from "hvac-install-math/sources";
import { describe, expect, test } from "vitest";

describe("a designation", () => {
  test.each(["R-410A", "r410a", "410A", "R 410 A", "R410a", " hfc-410A "])(
    "%s is R-410A",
    (text) => {
      expect(refrigerantByDesignation(text)).toBe(R410A);
    },
  );

  test.each(["R-1234ze(E)", "R1234zeE", "HFO-1234ze(E)", "r1234ze"])(
    "%s is R-1234ze(E)",
    (text) => {
      expect(refrigerantByDesignation(text)).toBe(R1234zeE);
    },
  );

  test.each(["HCFC-22", "hc290", "HFC-32", "HCFO-1233zd(E)", "HFO-1234yf"])(
    "%s may say what its molecule is made of",
    (text) => {
      const number = text.replace(/^[A-Za-z]+-?/, "");
      expect(refrigerantByDesignation(text).designation).toBe(`R-${number}`);
    },
  );

  test("with letters in front that are none of these means nothing", () => {
    for (const text of ["xr410a", "rr410a", "hfc", "cfc22", "R-hfc32", "4r10a"]) {
      expect(() => refrigerantByDesignation(text)).toThrow(InvalidInputError);
    }
  });

  test("of another isomer is not taken for the one that is known", () => {
    expect(() => refrigerantByDesignation("R-1234ze(Z)")).toThrow(InvalidInputError);
  });

  test("of every refrigerant leads to itself", () => {
    for (const one of refrigerants) expect(refrigerantByDesignation(one.designation)).toBe(one);
    expect(refrigerantByDesignation("717")).toBe(R717);
  });

  test.each(["R-410B", "", "R-4", "propane?", "10A"])(
    "%s is refused with the list of what is known",
    (text) => {
      expect(() => refrigerantByDesignation(text)).toThrow(InvalidInputError);
      expect(() => refrigerantByDesignation(text)).toThrow(/R-22, R-32, R-134a/);
    },
  );

  test("that is no text is refused", () => {
    expect(() => refrigerantByDesignation(410 as never)).toThrow(/410/);
    expect(() => refrigerantByDesignation(undefined as never)).toThrow(InvalidInputError);
  });
});

describe("what is told of each refrigerant", () => {
  test("the eighteen common ones are among them", () => {
    const common =
      "22 32 134a 290 404A 407C 410A 448A 449A 452B 454B 454C 507A 513A 600a 744 1234yf 1234ze(E)";
    const known = refrigerants.map(({ designation }) => designation);
    for (const number of common.split(" ")) expect(known).toContain(`R-${number}`);
  });

  test("masses sum to 100 %, sources are in the bibliography, the range ends below the critical point", () => {
    for (const one of refrigerants) {
      const total = one.composition.reduce((sum, { massPercent }) => sum + massPercent, 0);
      expect(total).toBeCloseTo(100, 9);
      for (const { source } of one.sources) expect(bibliography[source]).toBeDefined();
      expect(one.range.max < one.criticalPoint.temperature).toBe(true);
      expect(one.range.min.si).toBeGreaterThanOrEqual(213.15);
      expect(one.weakness.length).toBeGreaterThan(20);
    }
  });
});
