// Clauses that the rule sets do not confirm, and what it settles that a person checked them by their text.
import {
  asNzs3000Australia,
  bs7671,
  type CircuitInput,
  type ClauseVerification,
  cec2024,
  circuitFromNameplate,
  japan,
} from "hvac-install-math/circuit-protection";
import { ampere, degC, m, volt } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { condenser, sentences, withChanges } from "./fixtures.ts";

const wiring = { material: "copper", insulation: "70 °C", method: "C", length: m(12) } as const;
const installed = {
  device: { kind: "breaker", rating: ampere(16), poles: 2 },
  conductor: "2.5 mm²",
  equipmentGrounding: "2.5 mm²",
  residualCurrent: ampere(0.03),
  disconnect: { rating: ampere(20), visible: true, lockable: true, distance: m(1) },
} as const;

/** An invented metric circuit of 8.5 A behind a breaker of 16 A. */
const metric = (changes: Partial<CircuitInput<"metric">> = {}) =>
  circuitFromNameplate({
    rules: bs7671,
    ratedCurrent: ampere(8.5),
    maximumFuse: ampere(16),
    equipment: "motor-compressor",
    earthing: "TN",
    supply: { voltage: volt(230), phases: 1 },
    wiring,
    installed,
    ...changes,
  });

const verified = (clauses: readonly string[], more: Partial<ClauseVerification> = {}) =>
  clauses.map((clause) => ({
    clause,
    complies: true,
    by: "N. Tester",
    at: "2026-06-15",
    ...more,
  }));

// BS 7671, 537 and 462 are held from memory and from one transcription; AS/NZS 3008.1.1 and Japan's articles likewise:
// such a point decides nothing.
describe.each([
  ["BS 7671", { rules: bs7671 }, ["537", "462, 537"]],
  ["AS/NZS 3000", { rules: asNzs3000Australia }, ["AS/NZS 3008.1.1", "5.3.3, table 5.1", "4.19"]],
  [
    "Japan",
    {
      rules: japan,
      supply: { voltage: volt(200), phases: 1 as const },
      installed: { ...installed, conductor: "2.0 mm", equipmentGrounding: "1.6 mm" } as const,
    },
    ["art. 146, 149", "JEAC 8001", "art. 36"],
  ],
] as const)("%s", (_, changes, expected) => {
  const open = metric(changes);

  it("is open by nothing but clauses, and names them", () => {
    expect(open.outcome).toBe("inconclusive");
    expect(open.cause).toBe("not-confirmed");
    expect(open.toVerify.length).toBeGreaterThan(0);
    if (expected) expect([...open.toVerify].sort()).toEqual([...expected].sort());
  });

  it("passes once all of them were checked, and says who did", () => {
    const found = metric({ ...changes, verifications: verified(open.toVerify) });
    expect(found.outcome).toBe("pass");
    expect(found.toVerify).toEqual([]);
    expect(found.actions).toEqual([]);
    const said = found.cautions.filter(({ code }) => code === "circuit-protection.verified");
    expect(said).toHaveLength(open.toVerify.length);
    expect(sentences(said as never)[0]).toMatch(
      /^Checked by N\. Tester against .*: not checked here\.$/,
    );
  });

  it("stays open by the one that was not checked", () => {
    const [first = "", ...others] = open.toVerify;
    const found = metric({ ...changes, verifications: verified(others) });
    expect(found.outcome).toBe("inconclusive");
    expect(found.toVerify).toEqual([first]);
  });

  it("fails where the check found that it does not comply, whoever found that it does", () => {
    const verifications = [
      ...verified(open.toVerify),
      ...verified(open.toVerify.slice(0, 1), { complies: false, by: "An Inspector" }),
    ];
    const found = metric({ ...changes, verifications });
    expect(found.outcome).toBe("fail");
    expect(sentences(found.reasons)[0]).toContain("An Inspector");
  });
});

// IEC 60898-1: breakers are made with up to four poles; the fourth opens the neutral of three phases.
it("takes a device of four poles for three phases and neutral", () => {
  const found = metric({
    supply: { voltage: volt(400), phases: 3 },
    installed: { ...installed, device: { kind: "breaker", rating: ampere(16), poles: 4 } },
  });
  expect(found.cause).toBe("not-confirmed");
});

describe("a verification", () => {
  const { toVerify } = metric();

  it("counts for the clauses that were asked for alone", () => {
    for (const clause of ["433.1.1", "table 4D5", "537 ", "999"]) {
      const said = `Verified, but not asked for: ${clause}. It is judged here, or this circuit does not need it.`;
      const more = metric({ verifications: verified([...toVerify, clause]) });
      expect(more.outcome, clause).toBe("pass");
      expect(sentences(more.cautions as never), clause).toContain(said);
      // In the place of one that was asked for it leaves that one open.
      const instead = metric({ verifications: verified([...toVerify.slice(1), clause]) });
      expect(instead.outcome, clause).toBe("inconclusive");
      expect(instead.toVerify, clause).toEqual(toVerify.slice(0, 1));
      // Nobody's "does not comply" is passed over.
      const against = [...verified(toVerify), ...verified([clause], { complies: false })];
      const found = metric({ verifications: against });
      expect(found.outcome, clause).toBe("inconclusive");
      expect(sentences(found.reasons), clause).toContain(said);
      expect(sentences(found.actions ?? []), clause).toEqual([
        `Remove the verification of ${clause}, or name a clause that was asked for.`,
      ]);
    }
  });

  // BS 7671, table 4D5: 1 mm² in an insulated wall (method 103) carries 8 A, less than the 8.5 A and the 16 A device.
  it("covers nothing that fails by a confirmed table", () => {
    const insulated = { ...wiring, method: "103" as const };
    const thin = { ...installed, conductor: "1 mm²" as const };
    const found = metric({ wiring: insulated, installed: thin, verifications: verified(toVerify) });
    expect(found.outcome).toBe("fail");
    expect(found.cause).toBe("conductor");
  });

  // Table 4B1 is from memory above 30 °C, table 4D5 is confirmed: no word about the one covers the other.
  it("covers no conductor that rests on a confirmed table too and is too small", () => {
    const hot = { ...wiring, method: "103" as const, ambient: degC(45) };
    const thin = { ...installed, conductor: "1.5 mm²" as const };
    const open = metric({ wiring: hot, installed: thin });
    expect(open.toVerify).toContain("table 4B1");
    const found = metric({
      wiring: hot,
      installed: thin,
      verifications: verified(open.toVerify),
    });
    expect(found.outcome).not.toBe("pass");
    expect(found.reasons.map(({ code }) => code)).toContain(
      "circuit-protection.conductor-too-small",
    );
  });

  it.each([
    [{ by: " ." }, "verifications[0].by"],
    [{ at: "yesterday" }, "verifications[0].at"],
    [{ complies: "yes" as never }, "verifications[0].complies"],
    [{ clause: undefined as never }, "verifications[0].clause"],
  ])("is refused where %j", (more, argument) => {
    expect(() => metric({ verifications: verified(["537"], more) })).toThrow(
      expect.objectContaining({ name: "InvalidInputError", argument }),
    );
  });
});

// CEC 2024, 2-308: 1 m of working space, by one transcription.
describe("the working space of a Canadian disconnect", () => {
  const canada = (depth: number | undefined, verifications?: readonly ClauseVerification[]) => {
    const { workingSpace: _, ...place } = condenser.installed?.disconnect ?? { rating: ampere(60) };
    const workingSpace = depth && { depth: m(depth), width: m(1), height: m(2.2) };
    return withChanges({
      rules: cec2024,
      ...(verifications && { verifications }),
      installed: {
        ...condenser.installed,
        device: { kind: "breaker", rating: ampere(40), poles: 2 },
        conductor: "10 AWG",
        equipmentGrounding: "10 AWG",
        disconnect: { ...place, distance: m(2), ...(workingSpace && { workingSpace }) },
      },
    });
  };

  it("makes nothing worse where it is stated and met", () => {
    expect(canada(undefined).outcome).toBe("pass");
    const stated = canada(1.1);
    expect(stated.outcome).toBe("pass");
    expect(sentences(stated.cautions as never).join()).toContain("working space (2-308)");
    expect(stated.toVerify).toEqual([]);
  });

  it("is open where it is short, until somebody checked it", () => {
    expect(canada(0.2).outcome).toBe("inconclusive");
    expect(canada(0.2).toVerify).toEqual(["2-308"]);
    for (const depth of [1.1, 0.2]) {
      expect(canada(depth, verified(["2-308"])).outcome).toBe("pass");
    }
  });
});
