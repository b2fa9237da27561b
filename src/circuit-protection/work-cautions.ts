import { type Caution, statement } from "../assessment/assessment.ts";

/** What every electrical result carries: mains can kill, and the plate comes first. */
export const workCautions: readonly Caution[] = [
  /* @__PURE__ */ statement(
    "nameplate-first",
    "The nameplate and the manufacturer's instructions come first.",
  ),
  /* @__PURE__ */ statement(
    "local-code",
    "The adopted code with its amendments and the authority having jurisdiction override this.",
  ),
  /* @__PURE__ */ statement(
    "mains",
    "Mains can kill: a check for a licensed electrician, not a permission to energise. De-energise, lock out and verify; inverter capacitors stay charged.",
  ),
];
