// How is a statement of this module made? Here, where the first of them are said.
// Follows assessment/statement.ts. Does not cover which there are: ../statements.ts.
import { type Say, sayer } from "../../assessment/statement.ts";
import type { RefrigerantsStatements } from "../statements.ts";

/** Makes a statement of this module. */
export const say: Say<RefrigerantsStatements> = /* @__PURE__ */ sayer();
