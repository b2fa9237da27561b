// What can hurt someone when mains voltage is measured? The cautions that every result carries.
// Common practice; IEC 61010-2-033 for the meter category (from memory).
// Does not cover local code, which overrides all of it.
import { type Caution, statement } from "../assessment/assessment.ts";

/** Carried by every result of the module. */
export const cautions: readonly Caution[] = /* @__PURE__ */ (() => [
  statement(
    "mains-kills",
    "Mains voltage kills. Measuring it is for licensed electricians with protective equipment; all else is done de-energised, locked out and verified dead.",
  ),
  statement(
    "meter-category",
    "Meter and leads of category III (IV at the service), proved on a known live source before and after.",
  ),
  statement(
    "nameplate-first",
    "Nameplate, maker's instructions, local code, utility and the authority having jurisdiction come first; this is no permission to energise.",
  ),
])();
