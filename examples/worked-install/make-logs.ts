// Writes the logs of the examples: `npx tsx examples/worked-install/make-logs.ts`. All of it is invented: a
// tight, dry system on a cold night and a sound 240 V service, and a vacuum on a leaking system, with the
// noise, rounding and drift that real instruments show. Seeded, so that the files can be made again.
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { expectedTestPressure } from "hvac-install-math/pressure-test";
import { atmosphereAtAltitude, degF, m, psig } from "hvac-install-math/quantity";

/** A random number from 0 to 1, the same sequence for the same seed (mulberry32). */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Normal noise of standard deviation 1, by Box and Muller. */
function noise(random: () => number): () => number {
  return () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

const remark = "# Invented data; no such reading was ever taken.";

/** Fourteen hours from dusk to the morning sun at five-minute steps; the gas follows the air. */
function nitrogenHold(): string {
  const normal = noise(seeded(1520));
  const atmosphere = atmosphereAtAltitude(m(1520));
  const cooling = (hours: number) => 41 + 21 * Math.exp(-hours / 4.5);
  const morning = (hours: number) => 14 / (1 + Math.exp((12.2 - hours) / 0.6));
  const air = (hours: number) => cooling(hours) + morning(hours) + 0.4 * Math.sin(hours * 1.7);
  const rows = Array.from({ length: 169 }, (_, i) => {
    const gas = air(i / 12);
    const pressure = expectedTestPressure({
      pressure: psig(500),
      temperature: degF(air(0)),
      laterTemperature: degF(gas),
      atmosphere,
    });
    const reading = pressure.in(psig) + 0.12 * normal();
    return [i * 5, reading.toFixed(1), (gas + 0.15 * normal()).toFixed(1)].join(",");
  });
  return [remark, "elapsed [min],pressure [psig],temperature [°F]", ...rows, ""].join("\n");
}

/**
 * Thirty minutes at five seconds after isolation: a quick equalization, a little outgassing, and what a leak
 * lets in, in micron per minute.
 */
function vacuumDecay(seed: number, leak: number): string {
  const normal = noise(seeded(seed));
  let wander = 0;
  const rows = Array.from({ length: 361 }, (_, i) => {
    const seconds = i * 5;
    wander = 0.7 * wander + 0.6 * normal();
    const equalised = 38 * (1 - Math.exp(-seconds / 22));
    const outgassed = 14 * (1 - Math.exp(-seconds / 420));
    const entered = (leak / 60) * seconds;
    return [seconds, Math.round(274 + equalised + outgassed + entered + wander)].join(",");
  });
  return [remark, "elapsed [s],pressure [micron]", ...rows, ""].join("\n");
}

/** At the disconnect, every two seconds: at rest, then with the unit running up. */
function supply(): string {
  const normal = noise(seeded(240));
  const rows = Array.from({ length: 60 }, (_, i) => {
    const running = i >= 30;
    const sag = running ? 1.7 * (1 - Math.exp(-(i - 29) / 4)) : 0;
    const volts = 243.6 - sag + 0.12 * normal();
    return [i * 2, running ? "load" : "rest", volts.toFixed(1)].join(",");
  });
  return [remark, "elapsed [s],state,voltage [V]", ...rows, ""].join("\n");
}

/**
 * The leak of the failing installation in vacuum. Its nitrogen lost 16 psi (110 kPa) in 4.5 h from about 1 L:
 * 6.8e-3 Pa·m³/s. Through a leak in viscous flow that goes with the difference of the squares of the absolute
 * pressures, 3.2 MPa to 0.1 MPa against 0.1 MPa to 0, 1000 to 1: 6.8e-6 Pa·m³/s, or 3 micron per minute.
 */
const leakInVacuum = 3;

/** The files by name, in the folder of the examples. */
export const logs: Readonly<Record<string, () => string>> = {
  "worked-install/nitrogen-hold.csv": nitrogenHold,
  "worked-install/vacuum-decay.csv": () => vacuumDecay(30, 0),
  "worked-install/supply.csv": supply,
  "failing-install/vacuum-decay.csv": () => vacuumDecay(31, leakInVacuum),
};

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  for (const [name, make] of Object.entries(logs)) {
    writeFileSync(join(import.meta.dirname, "..", name), make());
  }
}
