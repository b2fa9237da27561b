// What can hurt someone at a running unit's gauges?
import { type Caution, statement } from "../assessment/assessment.ts";
import type { Refrigerant } from "../refrigerants/index.ts";

const always: readonly Caution[] = [
  /* @__PURE__ */ statement(
    "manual-decides",
    "Nameplate, manual, local code and licensed practice override this.",
  ),
  /* @__PURE__ */ statement(
    "pressure",
    "Liquid burns and freezes: gloves, goggles. Hoses lose refrigerant: connect only with a reason.",
  ),
  /* @__PURE__ */ statement(
    "electricity",
    "The unit runs: live terminals and fans. Work at height from a stable platform.",
  ),
  /* @__PURE__ */ statement(
    "mode-first",
    "Check the mode first: in heating the vapour port shows discharge pressure, which destroys a low-side gauge.",
  ),
];
const burns: Caution = /* @__PURE__ */ statement(
  "flammable",
  "It burns: no ignition source, ventilate, detector on, tools rated for it.",
);

/** What every answer of this module carries. */
export function gaugeCautions(refrigerant?: Pick<Refrigerant, "safetyClass">): readonly Caution[] {
  const flammable = refrigerant && !String(refrigerant.safetyClass).endsWith("1");
  return flammable ? [...always, burns] : always;
}
