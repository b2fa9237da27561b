// Hoses and pumps where the law has a closed form: one flow regime at a time, or no hose at all.
import {
  degC,
  liter,
  literPerSecond,
  m,
  m3PerSecond,
  micron,
  pascalAbsolute,
  second,
} from "hvac-install-math/quantity";
import {
  effectivePumpingSpeed,
  pumpDownTime,
  residualGasFraction,
  tubeConductance,
} from "hvac-install-math/vacuum-decay";
import { describe, expect, it } from "vitest";

const tube = { bore: m(0.01), length: m(1), temperature: degC(20) };

describe("the conductance of a tube", () => {
  // λ·p = 6.7e-3 Pa·m for air: Kn = 0.67 Pa / p in a bore of 10 mm
  it.each([
    [0.67 / 0.6, "molecular"],
    [0.67 / 0.51, "molecular"],
    [0.67 / 0.5 + 1e-9, "transition"],
    [0.67 / 0.011, "transition"],
    [0.67 / 0.0099, "viscous"],
    [1000, "viscous"],
  ])("at %f Pa belongs to %s flow", (pa, regime) => {
    const result = tubeConductance({ ...tube, meanPressure: pascalAbsolute(pa) });
    expect(result.regime).toBe(regime);
    expect(result.knudsenNumber).toBeCloseTo(0.67 / pa, 9);
  });

  it("is in transition at both limits: viscous below Kn 0.01, molecular above 0.5", () => {
    const wide = { ...tube, bore: m(1) };
    for (const pa of [6.7e-3 / 0.5, 6.7e-3 / 0.01]) {
      const { regime } = tubeConductance({ ...wide, meanPressure: pascalAbsolute(pa) });
      expect(regime).toBe("transition");
    }
  });

  it("adds to the viscous part what Knudsen's transition formula leaves of the molecular", () => {
    for (const pa of [0.01, 1, 13.3, 1000]) {
      const given = { ...tube, meanPressure: pascalAbsolute(pa) };
      const { conductance, viscous, molecular } = tubeConductance(given);
      // d·p̄ in cm·mbar, from memory: (1 + 192 x)/(1 + 237 x)
      const x = 1 * (pa / 100);
      const expected = viscous.si + (molecular.si * (1 + 192 * x)) / (1 + 237 * x);
      expect(conductance.si / expected).toBeCloseTo(1, 9);
    }
  });

  it("is that of air unless nitrogen is named: 1.6 % more in molecular flow, 3.6 % in viscous", () => {
    const at = (gas?: "air" | "nitrogen") =>
      tubeConductance({ ...tube, meanPressure: micron(500), ...(gas && { gas }) });
    expect(at()).toEqual(at("air"));
    // √(M_air/M_N2) and η_air/η_N2
    expect(at("nitrogen").molecular.si / at().molecular.si).toBeCloseTo(
      Math.sqrt(28.964 / 28.013),
      6,
    );
    expect(at("nitrogen").viscous.si / at().viscous.si).toBeCloseTo(18.2 / 17.57, 6);
  });

  it("comes in the pump's unit once it is in series with a pump", () => {
    const speed = effectivePumpingSpeed({
      pump: literPerSecond(6),
      conductances: [literPerSecond(3), literPerSecond(2)],
    });
    expect(speed.toString()).toBe("1 L/s");
  });
});

describe("the time to pump down", () => {
  const job = { volume: liter(8), pump: literPerSecond(2) };

  it("is (V/S)·ln of the ratio above the ultimate pressure", () => {
    const time = pumpDownTime({
      ...job,
      from: micron(10_010),
      to: micron(110),
      ultimate: micron(10),
    });
    expect(time.in(second)).toBeCloseTo(4 * Math.log(100), 9);
  });

  it("asks for the temperature where there are tubes", () => {
    const time = () => pumpDownTime({ ...job, from: micron(1000), to: micron(500), tubes: [tube] });
    expect(time).toThrow("with tubes");
  });

  it("is the same with the speed at the system where a hose is in molecular flow", () => {
    // far below Kn 0.5 the conductance no longer depends on the pressure
    const from = pascalAbsolute(1e-5);
    const to = pascalAbsolute(1e-7);
    const { molecular } = tubeConductance({ ...tube, meanPressure: from });
    for (const count of [1, 3]) {
      const tubes = Array.from({ length: count }, () => tube);
      const time = pumpDownTime({ ...job, from, to, tubes, temperature: degC(20) });
      const resistance = 1 / literPerSecond(2).si + count / molecular.si;
      expect(time.in(second)).toBeCloseTo(liter(8).si * resistance * Math.log(100), 3);
    }
  });

  it("with a hose in viscous flow meets V·dp/dt = −S_eff·(p − p_ult), integrated by itself", () => {
    // C = c·p̄ with p̄ = (p + p_pump)/2 and p·S_eff = p_pump·S = C·(p − p_pump), solved for p_pump in closed form:
    // c/2·(p² − p_pump²) = S·p_pump
    const S = 0.002;
    const V = 0.008;
    const thick = { bore: m(0.02), length: m(200) };
    const at = { ...thick, temperature: degC(20), meanPressure: pascalAbsolute(1e5) };
    const { conductance } = tubeConductance(at);
    const c = conductance.si / 1e5; // the molecular part is below 1e-4 of it
    const ultimate = 5000;
    const speed = (p: number) => {
      const pumpPressure = (-S + Math.sqrt(S * S + c * c * p * p)) / c;
      return (S * pumpPressure) / p;
    };
    const [p1, p2, steps] = [1e5, 1e4, 20_000];
    let time = 0;
    for (let i = 0; i < steps; i++) {
      const a =
        Math.log(p1 - ultimate) + (Math.log((p2 - ultimate) / (p1 - ultimate)) * (i + 0.5)) / steps;
      time +=
        (V * Math.log((p1 - ultimate) / (p2 - ultimate))) / steps / speed(ultimate + Math.exp(a));
    }
    const ours = pumpDownTime({
      volume: liter(8),
      pump: m3PerSecond(S),
      from: pascalAbsolute(p1),
      to: pascalAbsolute(p2),
      ultimate: pascalAbsolute(ultimate),
      tubes: [thick],
      temperature: degC(20),
    });
    expect(ours.in(second) / time).toBeCloseTo(1, 3);
  });
});

describe("what is left of the air", () => {
  it("is the product of each vacuum over what it was broken from", () => {
    const left = residualGasFraction({
      cycles: [
        { vacuum: micron(1000), brokenTo: micron(800_000) },
        { vacuum: micron(2000), brokenTo: micron(500_000) },
      ],
      last: micron(400),
      start: micron(760_000),
    });
    expect(left.si).toBeCloseTo((1000 / 760_000) * (2000 / 800_000) * (400 / 500_000), 15);
  });
});
