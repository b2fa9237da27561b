// Whatever of a record is missing or stands once, its pictures are drawn.
import type { InstallationRecord } from "hvac-install-math/commissioning";
import { recordPlots } from "hvac-install-math/plots";
import { acceptancePolicies } from "hvac-install-math/vacuum-decay";
import { expect, it } from "vitest";
import { assessInstallation } from "../commissioning/assess.ts";
import { changed } from "../commissioning/changed.ts";
import { complete } from "../commissioning/complete-record.ts";
import { pathsOf, put } from "../commissioning/mutated-record.ts";
import { reader } from "./samples.ts";

const drawn = (record: InstallationRecord) =>
  recordPlots(record, assessInstallation(record), reader);

it("draws every record that can be judged, whatever is missing or stands once", () => {
  const parts = pathsOf(complete).filter(([part]) =>
    /^(site|instruments|pressureTest|evacuation|tubing)$/.test(String(part)),
  );
  for (const path of parts) {
    const record = put(complete, path, undefined) as InstallationRecord;
    expect(() => drawn(record), path.join(".")).not.toThrow();
  }
  for (const policy of Object.keys(acceptancePolicies)) {
    for (const count of [1, 2, 5, 61]) {
      const readings = complete.evacuations?.[0]?.readings?.slice(0, count);
      const record = changed({
        "evacuations[0].readings": readings,
        "evacuations[0].policy": policy,
      });
      expect(() => drawn(record), `${policy}, ${count}`).not.toThrow();
    }
  }
});
