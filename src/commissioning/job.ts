// What do several steps need? Atmosphere, refrigerant, volume and charge of a record.
// Follows the modules quantity, refrigerants and line-set.
// Does not cover a guess: what is not recorded is undefined.
import { type Assessment, statement } from "../assessment/assessment.ts";
import { type TubeSize, tubeVolume } from "../line-set/index.ts";
import { atmosphereAtAltitude } from "../quantity/atmosphere.ts";
import { siOf } from "../quantity/check.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { type Refrigerant, refrigerantByDesignation } from "../refrigerants/index.ts";
import { whole } from "../shapes/index.ts";
import type { InstallationRecord } from "./record.ts";

/** The atmosphere at the site: measured, or the average at its altitude. */
export function atmosphereOf({ site }: InstallationRecord): Quantity<"absolutePressure"> {
  return site?.atmosphere ?? atmosphereAtAltitude(site?.altitude as Quantity<"length">);
}

/** What has to be known for it. */
export function atmosphereNeed({ site }: InstallationRecord): Record<string, unknown> {
  return { "site.atmosphere": site?.atmosphere ?? site?.altitude };
}

/** The refrigerant of the plate. */
export function refrigerantOf({ equipment }: InstallationRecord): Refrigerant {
  return refrigerantByDesignation(equipment?.refrigerant as string);
}

/** Both tubes and the rest, or nothing as long as one of them is unknown. */
export function volumeOf({ tubing }: InstallationRecord): Quantity<"volume"> | undefined {
  const { liquid, vapor, length, otherVolume } = tubing ?? {};
  if (!liquid || !vapor || !length || !otherVolume) return undefined;
  siOf("volume", otherVolume, "volume", { min: 0 });
  const tubes = [liquid, vapor].map((tube) => tubeVolume(whole<TubeSize>(tube), length));
  return tubes.reduce((sum, one) => sum.plus(one), otherVolume);
}

/** A check that the record itself answers. */
export function stated(
  outcome: Assessment["outcome"],
  code: string,
  text: string,
  values: Assessment["reasons"][number]["values"] = {},
): Assessment {
  return {
    outcome,
    reasons: [statement(code, text, values)],
    assumptions: [],
    cautions: [],
    sources: [{ source: "common-practice", clause: "" }],
  };
}
