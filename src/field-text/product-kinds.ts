// What kind do two kinds make when they are multiplied or divided? The table of products, both ways.
// Follows ISO 80000-1:2022, 5.3, through the table of the quantity module.
// Does not cover anything beyond that table.
import type { Kind } from "../quantity/kinds.ts";
import { products } from "../quantity/products.ts";

const entries = /* @__PURE__ */ Object.entries(products).flatMap(([a, row]) =>
  Object.entries(row as Record<string, string>).map(([b, c]) => [a, b, c] as [Kind, Kind, Kind]),
);

/** The kind of a × b, in whichever order the table has them. */
export function productKind(a: Kind, b: Kind): Kind | undefined {
  return entries.find(([x, y]) => (x === a && y === b) || (x === b && y === a))?.[2];
}

/** The kind of a ÷ b: what makes a when it is multiplied by b. */
export function quotientKind(a: Kind, b: Kind): Kind | undefined {
  const found = entries.find(([x, y, product]) => product === a && (x === b || y === b));
  return found && (found[0] === b ? found[1] : found[0]);
}
