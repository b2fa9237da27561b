// Who fitted the mixture parameters? The papers behind binary-pairs.ts and departure-functions.ts.
// Does not cover the pure fluids, which carry their own literature.
import type { Literature } from "./fluid.ts";

/** Bell I.H., Lemmon E.W. (2016). Source: doi:10.1021/acs.jced.6b00257. */
export const bellLemmon2016: Literature = {
  authors: "Bell I.H., Lemmon E.W.",
  year: 2016,
  title:
    "Automatic fitting of binary interaction parameters for multi-fluid Helmholtz-energy-explicit mixture models",
  journal: "J. Chem. Eng. Data 61",
  doi: "10.1021/acs.jced.6b00257",
};

/** Bell I.H. (2025). Source: doi:10.1021/acs.jced.4c00699. */
export const bell2025: Literature = {
  authors: "Bell I.H.",
  year: 2025,
  title: "Modeling Mixtures Containing Refrigerants: Updated Interaction Parameters",
  journal: "J. Chem. Eng. Data",
  doi: "10.1021/acs.jced.4c00699",
};

/** Bell I.H. (2022). Source: doi:10.1063/5.0086060. */
export const bell2022: Literature = {
  authors: "Bell I.H.",
  year: 2022,
  title:
    "Mixture Models for Refrigerants R-1234yf/134a, R-1234yf/1234ze(E), and R-134a/1234ze(E) and Interim Models for R-125/1234yf, R-1234ze(E)/227ea, and R-1234yf/152a",
  journal: "J. Phys. Chem. Ref. Data 51:013103",
  doi: "10.1063/5.0086060",
};

/** Bell I.H. (2023). Source: doi:10.1063/5.0135368. */
export const bell2023: Literature = {
  authors: "Bell I.H.",
  year: 2023,
  title:
    "Mixture Model for Refrigerant Pairs R-32/1234yf, R-32/1234ze(E), R-1234ze(E)/227ea, R-1234yf/152a, and R-125/1234yf",
  journal: "J. Phys. Chem. Ref. Data 52:013101",
  doi: "10.1063/5.0135368",
};

/** Kunz O., Wagner W. (2012). Source: doi:10.1021/je300655b. */
export const kunzWagner2012: Literature = {
  authors: "Kunz O., Wagner W.",
  year: 2012,
  title:
    "The GERG-2008 Wide-Range Equation of State for Natural Gases and Other Mixtures: An Expansion of GERG-2004",
  journal: "J. Chem. Eng. Data 57:3032-3091",
  doi: "10.1021/je300655b",
};

/** Lemmon E.W., Jacobsen R.T (2004). Source: doi:10.1063/1.1649997. */
export const lemmonJacobsen2004: Literature = {
  authors: "Lemmon E.W., Jacobsen R.T",
  year: 2004,
  title: "Equations of State for Mixtures of R-32, R-125, R-134a, R-143a, and R-152a",
  journal: "J. Phys. Chem. Ref. Data 33:593-620",
  doi: "10.1063/1.1649997",
};
