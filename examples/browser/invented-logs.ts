// Logs to begin with. All of it is invented: half an hour at five-second steps on a system that was never built.

/** What a log is to show: a steady rise in micron per minute, and water that levels off. */
const courses = {
  tight: { leak: 0, water: 0 },
  leak: { leak: 42, water: 0 },
  moisture: { leak: 0, water: 900 },
} as const;

/** Name of an invented log. */
export type Course = keyof typeof courses;

/** A log as a logger would hand it over, with the small noise of a gauge. */
export function inventedLog(course: Course): string {
  const { leak, water } = courses[course];
  const rows = Array.from({ length: 361 }, (_, i) => {
    const minutes = i / 12;
    const settling = 30 * (1 - Math.exp(-minutes / 0.4)) + 12 * (1 - Math.exp(-minutes / 7));
    const levelling = water * (1 - Math.exp(-minutes / 9));
    const noise = Math.sin(i * 12.9898) + Math.sin(i * 78.233);
    return `${i * 5},${Math.round(280 + settling + levelling + leak * minutes + noise)}`;
  });
  return [
    "# Invented data; no such reading was ever taken.",
    "elapsed [s],pressure [micron]",
    ...rows,
  ].join("\n");
}
