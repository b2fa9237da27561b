// What can hurt someone when mains voltage is measured? The cautions that every result carries.
// Common practice; IEC 61010-2-033 for the meter category (from memory).
// Does not cover local code, which overrides all of it.
import { type Caution, statement } from "../assessment/assessment.ts";

/** Carried by every result of the module. */
export const cautions: readonly Caution[] = /* @__PURE__ */ (() => [
  statement(
    "mains-kills",
    "Mains voltage kills. Live measurement is for licensed electricians, with protective equipment; everything else is done de-energised, locked out and verified dead.",
  ),
  statement(
    "meter-category",
    "Use a meter and leads of category III (IV at the service) rated for the voltage, and prove it on a known live source before and after.",
  ),
  statement(
    "nameplate-first",
    "Nameplate, maker's instructions, local code, the utility and the authority having jurisdiction come before this result; it is no permission to energise.",
  ),
])();
