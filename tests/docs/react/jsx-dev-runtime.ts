// What does JSX become while the tests run? The same as in jsx-runtime.ts.
export { jsx as jsxDEV } from "./jsx-runtime.ts";
