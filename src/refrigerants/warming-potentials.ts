// How much does a kilogram warm over 100 years? The potentials of the substances, by the basis that fixes them.
// Follows IPCC AR4, AR5 and AR6; Regulations (EU) No 517/2014 and 2024/573; 42 U.S.C. 7675(c) and 40 CFR 84.64.
// Does not cover 20-year values, nor which basis a duty goes by: the law says that.
import { frozenInPlace } from "../quantity/frozen.ts";
import type { Standing } from "./refrigerant.ts";

/**
 * A basis that fixes warming potentials, by its id in the bibliography. The fourth report has no value for HFOs and
 * hydrocarbons: what is often called so are values of Regulation (EU) No 517/2014, which the European Union repealed
 * from 11 March 2024 and Great Britain retains.
 *
 * Source: the works of these ids.
 */
export type WarmingBasis =
  | "ipcc-ar4"
  | "ipcc-ar5"
  | "ipcc-ar6"
  | "eu-517-2014"
  | "eu-2024-573"
  | "cfr-40-84";

/** The bases, for checks. */
export const warmingBases: readonly WarmingBasis[] = /* @__PURE__ */ frozenInPlace([
  "ipcc-ar4",
  "ipcc-ar5",
  "ipcc-ar6",
  "eu-517-2014",
  "eu-2024-573",
  "cfr-40-84",
]);

type Potential = readonly [value: number, standing: Extract<Standing, "published" | "from memory">];
const P = (value: number): Potential => [value, "published"];
const M = (value: number): Potential => [value, "from memory"];

/**
 * By ASHRAE 34 designation without hyphen and brackets, in the order of {@link warmingBases}; nothing where a basis
 * lists no value. AR5 prints "< 1" for the two HFOs: 1 is used. AR6 prints "<< 1" for isobutane: none is given.
 */
// biome-ignore format: kept as a table
export const warmingPotentials: Readonly<
  Record<string, readonly (Potential | undefined)[]>
> = /* @__PURE__ */ (() => frozenInPlace({
  //          AR4      AR5      AR6       EU 517    EU 573    US
  R22:      [P(1810), P(1760), M(1960)],
  R32:      [P(675),  P(677),  P(771),   M(675),   P(675),   P(675)],
  R125:     [P(3500), P(3170), P(3740),  M(3500),  P(3500),  P(3500)],
  R134a:    [P(1430), P(1300), P(1530),  M(1430),  P(1430),  P(1430)],
  R143a:    [P(4470), P(4800), P(5810),  M(4470),  P(4470),  P(4470)],
  R152a:    [M(124),  M(138),  M(164),   M(124),   P(124),   P(124)],
  R1234yf:  [undefined, P(1),  P(0.501), M(4),     P(0.501), M(1)],
  R1234zeE: [undefined, P(1),  P(1.37),  M(7),     P(1.37),  M(1)],
  R1233zdE: [undefined, M(1),  P(3.88),  M(4.5),   P(3.88),  P(4)],
  R290:     [undefined, undefined, P(0.02), M(3),  P(0.02),  undefined],
  R600a:    [undefined, undefined, undefined, M(3), P(0),    undefined],
  R717:     [undefined, undefined, undefined, M(0), P(0),    undefined],
  R744:     [P(1),    P(1),    P(1),     P(1),     P(1),     P(1)],
  RE170:    [undefined, undefined, undefined, undefined, P(1), undefined],
}))();
