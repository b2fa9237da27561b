// Logs of any length for timing, all invented.
import type { PressureTestLog } from "hvac-install-math/pressure-test";
import {
  standardAtmosphere as atmosphere,
  degC,
  degF,
  deltaF,
  hour,
  liter,
  micron,
  psi,
  psig,
  second,
} from "hvac-install-math/quantity";
import {
  acceptancePolicies,
  type DecayReading,
  type VacuumDecayInput,
} from "hvac-install-math/vacuum-decay";

export const vacuumOptions: Omit<VacuumDecayInput, "readings"> = {
  ambient: degC(20),
  volume: liter(4),
  policy: acceptancePolicies.guideSpec15182,
};

/** Pressure in micron at t seconds after isolation. */
const courses: Readonly<
  Record<"outgassing" | "moisture" | "leak" | "leak and moisture", (t: number) => number>
> = {
  outgassing: (t: number) => 280 + 60 * Math.log1p(t / 400),
  moisture: (t: number) => 280 + 900 * (1 - Math.exp(-t / 700)),
  leak: (t: number) => 280 + (40 * t) / 60 + 30 * (1 - Math.exp(-t / 8)),
  "leak and moisture": (t: number) => 280 + (10 * t) / 60 + 400 * (1 - Math.exp(-t / 500)),
};

export type Course = keyof typeof courses;
export const courseNames = Object.keys(courses) as Course[];

/** Rows `spacing` seconds apart, with a ripple of 2 micron, shown to the micron. */
export function vacuumLog(course: Course, rows: number, spacing: number): DecayReading[] {
  return Array.from({ length: rows }, (_, i) => ({
    elapsed: second(i * spacing),
    pressure: micron(Math.round(courses[course](i * spacing) + 2 * Math.sin(1.7 * i))),
  }));
}

/** Twelve hours of a test that cools and warms again and loses a little. */
export function pressureLog(rows: number): PressureTestLog {
  return {
    readings: Array.from({ length: rows }, (_, i) => {
      const at = (12 * i) / Math.max(1, rows - 1);
      const warm = 60 + 10 * Math.cos((Math.PI * at) / 6);
      return {
        elapsed: hour(at),
        temperature: degF(Number(warm.toFixed(1))),
        pressure: psig(Number((490 + 0.95 * (warm - 60) - 0.1 * at).toFixed(1))),
      };
    }),
    instruments: {
      pressure: { accuracy: psi(2), resolution: psi(0.1) },
      temperature: { accuracy: deltaF(1), resolution: deltaF(0.1) },
    },
    criterion: { maximumDrop: psi(5) },
    atmosphere,
  };
}
