// Which thresholds turn weights into words? Chosen on the first simulator of the tests, checked on the
// second: common practice, no source. Does not cover the policy's limits: policies.ts.

/** Share of the misfit that counts: neighbouring bins err together, and an effective n would hide real bends. */
export const temper = 0.5;
/** Variance that the fit never goes below, as a part of what the gauge's step and noise explain. */
export const floor = 0.1;
/** Part of a curved rise's mean rate by which a wrong shape can feign a leak. */
export const discrepancy = 0.09;
/** Part of the whole rise below which a bend may be the gauge's scale or the warming gas. */
export const smallestBend = 0.05;
/** Share of the evidence that names a cause. */
export const sure = 0.8;
/** Share above which a law that never levels off is not excluded, so that moisture is not proven. */
export const notExcluded = 0.01;
/** Share from which such a law alone names the cause. */
export const outgassingNamed = 0.25;
/** Part of the policy's mean rate below which a leak counts as excluded beside moisture. */
export const excludedLeak = 0.35;
/** Largest rise over the hold that outgassing is believed to make, Pa: 2000 micron. */
export const outgassingMax: number = /* @__PURE__ */ (() => (2000 * 101.325) / 760)();
