// Which refrigerants are there? The data of each, opened without the functions that read them.
// Follows the sources that each names. Does not cover look-up by a designation.

export { R22 } from "./r22.ts";
export { R32 } from "./r32.ts";
export { R134a } from "./r134a.ts";
export { R290 } from "./r290.ts";
export { R404A } from "./r404a.ts";
export { R407A } from "./r407a.ts";
export { R407C } from "./r407c.ts";
export { R407F } from "./r407f.ts";
export { R410A } from "./r410a.ts";
export { R448A } from "./r448a.ts";
export { R449A } from "./r449a.ts";
export { R450A } from "./r450a.ts";
export { R452A } from "./r452a.ts";
export { R452B } from "./r452b.ts";
export { R454A } from "./r454a.ts";
export { R454B } from "./r454b.ts";
export { R454C } from "./r454c.ts";
export { R507A } from "./r507a.ts";
export { R513A } from "./r513a.ts";
export { R600a } from "./r600a.ts";
export { R717 } from "./r717.ts";
export { R744 } from "./r744.ts";
export { R1233zdE } from "./r1233zde.ts";
export { R1234yf } from "./r1234yf.ts";
export { R1234zeE } from "./r1234zee.ts";
export { refrigerants } from "./refrigerants.ts";
