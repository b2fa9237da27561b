// Times the built package and writes docs/speed.md. Run: npm run bench, or with the names of some parts:
// npm run bench -- quantities saturation, which prints them and writes nothing.
import { writeFileSync } from "node:fs";
import { cpus, loadavg } from "node:os";
import { join } from "node:path";
import { firstCall } from "./first-call.ts";
import { installation } from "./installation.ts";
import { liveMonitor } from "./live-monitor.ts";
import { loading } from "./loading.ts";
import { pressureLogs, vacuumLogs, voltageLogs } from "./logs.ts";
import { phaseEquilibrium } from "./phase-equilibrium.ts";
import { quantities } from "./quantities.ts";
import { saturation } from "./saturation.ts";
import { markdown } from "./section.ts";

import { logTexts, typedText } from "./typed-and-logged.ts";
import { wire } from "./wire.ts";

const parts = {
  quantities,
  typedText,
  saturation,
  phaseEquilibrium,
  logTexts,
  vacuumLogs,
  liveMonitor,
  pressureLogs,
  voltageLogs,
  installation,
  wire,
  firstCall,
  loading,
};

const wanted = process.argv.slice(2);
const unknown = wanted.filter((name) => !Object.hasOwn(parts, name));
if (unknown.length) {
  throw new Error(
    `No such part: ${unknown.join(", ")}. There are ${Object.keys(parts).join(", ")}.`,
  );
}

const written: string[] = [];
for (const [name, part] of Object.entries(parts)) {
  if (wanted.length && !wanted.includes(name)) continue;
  const text = markdown(await part());
  console.log(text);
  written.push(text);
}

if (!wanted.length) {
  const head = `# Speed

Written by \`npm run bench\` from the built package: medians of one run on Node ${process.versions.node},
${cpus().length} × ${cpus()[0]?.model.trim()}, load average ${loadavg()[0]?.toFixed(1)}. Above the number of processors, the
times are those of a busy machine and up to several times too long. Each ratio compares what ran in the same
round. All data are invented.
`;
  writeFileSync(join(import.meta.dirname, "../../docs/speed.md"), `${head}\n${written.join("\n")}`);
}
