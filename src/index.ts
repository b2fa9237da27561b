/**
 * Everything for the arithmetic of an installation. Each module is also a subpath of its own, such as
 * `hvac-install-math/pressure-test`.
 *
 * @module hvac-install-math
 */
export * from "./assessment/index.ts";
export * from "./charge-limit/index.ts";
export * from "./circuit-protection/index.ts";
export * from "./condensate/index.ts";
export * from "./flare-joint/index.ts";
export * from "./line-set/index.ts";
export * from "./operating-check/index.ts";
export * from "./pressure-test/index.ts";
export * from "./quantity/index.ts";
export * from "./refrigerants/index.ts";
export * from "./sources/index.ts";
export * from "./supply-voltage/index.ts";
export * from "./vacuum-decay/index.ts";
