// Which objects go by their names on the wire? Refrigerants, rule sets, standards and acceptance policies.
// Follows the designations of ANSI/ASHRAE Standard 34 and of the standards themselves.
// Does not cover objects of the caller's own: they go by their fields, where these are data.
import { circuitRules, voltageStandards } from "../commissioning/format/index.ts";
import { refrigerants } from "../refrigerants/data/index.ts";
import type { NamedShape } from "../shapes/index.ts";
import { acceptancePolicies } from "../vacuum-decay/policies/index.ts";

/** Every refrigerant of the library by its designation. */
export const byDesignation: NamedShape = {
  named: () => Object.fromEntries(refrigerants.map((one) => [one.designation, one])),
};

/** The rule sets for circuits. */
export const byRules: NamedShape = { named: () => circuitRules };

/** The standards of supply voltage. */
export const byStandard: NamedShape = { named: () => voltageStandards };

/** The acceptance policies for a vacuum. */
export const byPolicy: NamedShape = { named: () => acceptancePolicies };
