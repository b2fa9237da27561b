// A gauge in place of a real one: made-up readings, 100 times as fast as a clock. A real one would call `onReading` from
// its radio, with the time since the valve was closed.
import { micron, second } from "hvac-install-math/quantity";
import type { DecayReading } from "hvac-install-math/vacuum-decay";

/** What the system does, in micron: a steady rise in a minute, and water that levels off. */
const courses = {
  tight: { leak: 0, water: 0 },
  leak: { leak: 42, water: 0 },
  moisture: { leak: 0, water: 900 },
} as const;

export type Course = keyof typeof courses;
export const courseNames: readonly Course[] = ["tight", "leak", "moisture"];

const step = 10; // s
const last = 1800; // s

/** Calls with one reading after the other; returns what stops it. */
export function simulateGauge(
  course: Course,
  onReading: (reading: DecayReading, isLast: boolean) => void,
): () => void {
  const { leak, water } = courses[course];
  let elapsed = 0;
  const timer = setInterval(() => {
    const minutes = elapsed / 60;
    const settling = 30 * (1 - Math.exp(-minutes / 0.4)) + 12 * (1 - Math.exp(-minutes / 7));
    const levelling = water * (1 - Math.exp(-minutes / 9));
    const noise = Math.sin(elapsed * 2.6) + Math.sin(elapsed * 15.6);
    const pressure = Math.round(280 + settling + levelling + leak * minutes + noise);
    const isLast = elapsed >= last;
    if (isLast) clearInterval(timer);
    onReading({ elapsed: second(elapsed), pressure: micron(pressure) }, isLast);
    elapsed += step;
  }, step * 10);
  return () => clearInterval(timer);
}
