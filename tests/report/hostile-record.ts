// A record in which every text is hostile and every other field is left as it was.
import type { InstallationRecord } from "hvac-install-math/commissioning";
import { rich } from "./rich-record.ts";

/** The rich record with the same text in every place that takes any text. */
export function hostileRecord(text: string): InstallationRecord {
  const at = "2026-05-05";
  const { equipment, instruments, runs = [] } = rich;
  const named = Object.entries(instruments ?? {}).map(([key, one]) => [
    key,
    { ...one, name: text, serialNumber: text },
  ]);
  return {
    ...rich,
    name: text,
    site: { ...rich.site, name: text },
    equipment: {
      ...equipment,
      refrigerant: text,
      outdoorUnit: { ...equipment?.outdoorUnit, model: text, serialNumber: text },
    },
    instruments: Object.fromEntries(named),
    runs: runs.map((run) => ({
      ...run,
      name: text,
      port: text,
      indoorUnits: [{ model: text, serialNumber: text }],
      joints: (run.joints ?? []).map((joint) => ({ ...joint, name: text })),
    })),
    photos: [{ reference: text, of: text, caption: text, digest: text }],
    signatures: [{ name: text, role: text, at }],
    history: [{ path: "site.name", previous: text, by: text, at: "2026-05-09", reason: text }],
  };
}
