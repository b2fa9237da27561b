// Writes the files of the four loggers: `npx tsx examples/logger/make-files.ts`. Loggers, formats and readings are
// invented: no such instrument was ever built. Seeded, so that the files can be made again, in another folder too.
import { writeFileSync } from "node:fs";
import { join } from "node:path";

/** A random number from −1 to 1, the same sequence for the same seed (mulberry32). */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 31 - 1;
  };
}
const two = (n: number) => String(n).padStart(2, "0");
const clockOf = (zone: string) =>
  new Intl.DateTimeFormat("en-US", { timeZone: zone, dateStyle: "short", timeStyle: "short" });

/**
 * A night under nitrogen at five minutes, filled in three steps, until the morning sun brings the temperature back, then
 * let off; clocks go back at 2 AM.
 */
function overnight(): string {
  const noise = seeded(1);
  const clock = clockOf("America/Denver");
  const begin = Date.UTC(2026, 10, 1, 2, 0); // 8 PM on 31 October
  const rows = Array.from({ length: 170 }, (_, i) => {
    const gas = 44 + 14 * Math.exp(-i / 60) + 13 / (1 + Math.exp((150 - i) / 4));
    const temperature = gas + 0.1 * noise();
    const filled = i < 2 ? 0 : i < 5 ? 150 : i < 8 ? 300 : 500 + 1.02 * (gas - 57);
    const pressure = i > 167 ? 0.2 : Math.max(0, filled + 0.1 * noise());
    const [date = "", time = ""] = clock.format(begin + 300_000 * i).split(", ");
    return [date, time, pressure.toFixed(1), temperature.toFixed(1)].join(",");
  });
  const head = [
    "Pocket logger (invented),model none",
    "",
    "Date,Time,Line pressure (psi),Gas temp (deg F)",
  ];
  return [...head, ...rows, ""].join("\r\n");
}

/** A pump-down to its end pressure and twenty minutes on a closed valve, in mbar with a decimal comma. */
function vacuum(): string {
  const noise = seeded(2);
  const rows = Array.from({ length: 421 }, (_, i) => {
    const t = 5 * i;
    const pumped = 0.36 + 1000 * Math.exp(-t / 60);
    const since = t - 900;
    const isolated =
      0.36 + 0.045 * (1 - Math.exp(-since / 20)) + 0.012 * (1 - Math.exp(-since / 400));
    const mbar = (since <= 0 ? pumped : isolated) * (1 + 0.002 * noise());
    const clock = `${Math.floor(t / 3600)}:${two(Math.floor(t / 60) % 60)}:${two(t % 60)}`;
    return `${clock};${mbar.toPrecision(4).replace(".", ",")}`;
  });
  return ["\ufeffLaufzeit (h:mm:ss);Druck (mbar abs)", ...rows, ""].join("\r\n");
}

/** Two hours of a service at a minute, in the days of a spreadsheet; some cells are blank. */
function supply(): string {
  const noise = seeded(3);
  const rows = Array.from({ length: 121 }, (_, i) => {
    const day = (46_110 + (14 * 60 + i) / 1440).toFixed(6);
    const volts = i % 40 === 17 ? "---" : (231 + 2.5 * Math.sin(i / 9) + 0.3 * noise()).toFixed(1);
    return `${day}\t${volts}\t${50 + (i % 3 === 0 ? 0.01 : 0)}`;
  });
  return ["# invented", "Stamp\tMains\tFrequency", "d\tV\tHz", ...rows, ""].join("\n");
}

/** A hold in kPa with UTC stamps and quoted cells; the logger was started twice and lost some rows. */
function hold(): string {
  const noise = seeded(4);
  const title = '"Stamp","Pressure, kPa(g)","Temperature, °C","Note"';
  const rows = Array.from({ length: 97 }, (_, i) => {
    const stamp = new Date(Date.UTC(2026, 2, 10, 6, 0) + 600_000 * i).toISOString().slice(0, 19);
    const celsius = 8 + 6 * Math.sin(i / 22) + 0.05 * noise();
    const kPa = 3800 + 13.6 * (celsius - 8) - 1.9 * i + 0.6 * noise();
    return `"${stamp}Z","${kPa.toFixed(0)}","${celsius.toFixed(1)}",""`;
  });
  const kept = rows.filter((_, i) => i < 40 || i > 45);
  const whole = [
    title,
    ...kept.slice(0, 20),
    kept[19],
    ...kept.slice(20, 60),
    title,
    ...kept.slice(60),
  ];
  return [...whole, ""].join("\n");
}

const files = {
  "overnight.csv": overnight,
  "vacuum.txt": vacuum,
  "supply.tsv": supply,
  "hold.csv": hold,
};

const folder = process.argv[2] ?? import.meta.dirname;
for (const [name, make] of Object.entries(files)) writeFileSync(join(folder, name), make());
