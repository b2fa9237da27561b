// Which codecs are there?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.

export * from "./charge-limit.ts";
export * from "./circuit-protection.ts";
export * from "./commissioning.ts";
export * from "./condensate.ts";
export * from "./flare-joint.ts";
export * from "./line-set.ts";
export * from "./operating-check.ts";
export * from "./planning.ts";
export * from "./pressure-test.ts";
export * from "./refrigerants.ts";
export * from "./supply-voltage.ts";
export * from "./vacuum-decay.ts";
