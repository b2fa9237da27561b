/**
 * Everything for the arithmetic of an installation. Each module is also a subpath of its own, such as
 * `hvac-install-math/pressure-test`.
 *
 * @module hvac-install-math
 */
export * from "./assessment/index.ts";
export * from "./quantity/index.ts";
export * from "./sources/index.ts";
