// What a person reads who typed a text that is refused.
import { explain } from "hvac-install-math/assessment";
import { english } from "hvac-install-math/language/en";
import type { FieldTextError } from "hvac-install-math/read-quantity";

/** The two sentences of the error: what is wanted, and what to do. */
export function spoken({ wanted, hint }: FieldTextError): string {
  const said = [wanted, ...(typeof hint === "object" ? [hint] : [])];
  return said.map((one) => explain(one, english)).join(" ");
}
