// Which refrigerants does the library carry?
// Follows ANSI/ASHRAE Standard 34 for the designations.
// Does not cover trade names: they belong to their owners.
import { frozenInPlace } from "../../quantity/frozen.ts";
import type { Refrigerant } from "../refrigerant.ts";
import { R22 } from "./r22.ts";
import { R32 } from "./r32.ts";
import { R134a } from "./r134a.ts";
import { R290 } from "./r290.ts";
import { R404A } from "./r404a.ts";
import { R407A } from "./r407a.ts";
import { R407C } from "./r407c.ts";
import { R407F } from "./r407f.ts";
import { R410A } from "./r410a.ts";
import { R448A } from "./r448a.ts";
import { R449A } from "./r449a.ts";
import { R450A } from "./r450a.ts";
import { R452A } from "./r452a.ts";
import { R452B } from "./r452b.ts";
import { R454A } from "./r454a.ts";
import { R454B } from "./r454b.ts";
import { R454C } from "./r454c.ts";
import { R507A } from "./r507a.ts";
import { R513A } from "./r513a.ts";
import { R600a } from "./r600a.ts";
import { R717 } from "./r717.ts";
import { R744 } from "./r744.ts";
import { R1233zdE } from "./r1233zde.ts";
import { R1234yf } from "./r1234yf.ts";
import { R1234zeE } from "./r1234zee.ts";

/**
 * Every refrigerant of the library, by number. Using it puts the data of all of them into a bundle;
 * import single ones where size matters.
 *
 * Source: ANSI/ASHRAE Standard 34.
 */
export const refrigerants: readonly Refrigerant[] = /* @__PURE__ */ frozenInPlace([
  R22,
  R32,
  R134a,
  R290,
  R404A,
  R407A,
  R407C,
  R407F,
  R410A,
  R448A,
  R449A,
  R450A,
  R452A,
  R452B,
  R454A,
  R454B,
  R454C,
  R507A,
  R513A,
  R600a,
  R717,
  R744,
  R1233zdE,
  R1234yf,
  R1234zeE,
]);
