// Writes a record and its verdict as JSON, as a server would store them, for words.py.
// The installation is the invented one of examples/worked-install. Writes to the folder that is named, or to /tmp.
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { assessInstallation, circuitRules } from "hvac-install-math/commissioning";
import { assessInstallationResult, recordCodec } from "hvac-install-math/wire";
import { readInstallation } from "../worked-install/read-installation.ts";

const [folder = "/tmp"] = process.argv.slice(2);
const { record } = readInstallation(join(import.meta.dirname, "../worked-install"));
const verdict = assessInstallation(record, { rules: Object.values(circuitRules) });
writeFileSync(join(folder, "record.json"), recordCodec.stringify(record));
writeFileSync(join(folder, "verdict.json"), assessInstallationResult.stringify(verdict));
