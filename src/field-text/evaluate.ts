// What does the arithmetic come to? The quantity rules: what adds, what scales, what makes what.
// Follows ISO 80000-1:2022, 5.3, and the quantity module: points and differences are kinds of their own.
// Does not cover choosing a meaning where two remain: that is refused in parse-quantity.ts.
import type { Kind } from "../quantity/kinds.ts";
import type { Unit } from "../quantity/quantity.ts";
import { fraction } from "../quantity/units/ratio.ts";
import { FieldTextError } from "../read-quantity/field-text-error.ts";
import type { NamedUnit } from "../read-quantity/find-unit.ts";
import { possibleQuantity } from "../read-quantity/possible-quantity.ts";
import { type FieldTextStatement, kindWord, say, verbatim } from "../read-quantity/statements.ts";
import { refuseTwoReadings } from "../read-quantity/two-readings.ts";
import { differenceExample } from "./kind-mismatch.ts";
import { productKind, quotientKind } from "./product-kinds.ts";
import { resultUnit } from "./result-unit.ts";
import type { Tree } from "./syntax-tree.ts";
import type { Term } from "./trade-notation.ts";
import { type AnyUnit, homeUnits } from "./unit-names.ts";
import type { Value } from "./value.ts";

/** How a name is read that can be a point or a difference, where a difference is wanted. */
export type Reading = "difference" | "point";

interface Task {
  readonly text: string;
  readonly leaves: readonly Term[];
  readonly wanted: Kind;
  readonly reading: Reading;
}

type Unitful = Value & { readonly unit: AnyUnit };

/** Works the tree out. */
export function evaluate(task: Task, tree: Tree): Value {
  if ("leaf" in tree) return leafValue(task, task.leaves[tree.leaf] as Term);
  const [left, right] = tree.operands;
  const a = evaluate(task, left);
  if (!right) return tree.operator === "-" ? negated(task.text, a) : a;
  const unitLeaf = "leaf" in right ? task.leaves[right.leaf] : undefined;
  if (unitLeaf?.unitOnly) return withUnit(task, a, unitLeaf);
  const b = evaluate(task, right);
  const place = { start: a.start, end: b.end, unitPlace: a.unit ? a.unitPlace : b.unitPlace };
  const work = { "+": sum, "-": difference, "*": product, "/": quotient }[tree.operator];
  return { ...work(task.text, a, b), ...place };
}

/** Whether a name among the leaves can be a point and a difference, so that the reading matters. */
export function isReadTwoWays(leaves: readonly Term[]): boolean {
  return leaves.some(({ units = [] }) => units.length > 1);
}

/** The unit that a name stands for, given what is wanted. */
function meant(named: readonly NamedUnit[], wanted: Kind, reading: Reading): AnyUnit {
  const units = named as readonly AnyUnit[]; // as the table of names has them
  const [first, second] = units as [AnyUnit, AnyUnit | undefined];
  const asked = units.find((unit) => unit.kind === wanted);
  const pointWanted = ["temperature", "gaugePressure", "absolutePressure"].includes(wanted);
  if (asked && (pointWanted || asked.difference.kind !== second?.kind)) return asked;
  return pointWanted || reading === "point" ? first : (second ?? first);
}

function leafValue({ text, wanted, reading }: Task, leaf: Term): Value {
  const { value, units, start, end, unitPlace } = leaf;
  refuseTwoReadings(text, leaf, wanted);
  if (!units) return { si: value, start, end, unitPlace };
  const unit = meant(units, wanted, reading);
  const si = unit.offset + value * unit.scale;
  return checked(text, { si, unit: homeUnits.get(unit) ?? unit, start, end, unitPlace });
}

function withUnit(task: Task, { si, unit, start }: Value, leaf: Term): Value {
  if (unit) {
    throw new FieldTextError(task.text, leaf.start, leaf.end, say("field-text.one-unit"));
  }
  return leafValue(task, { ...leaf, value: si, start });
}

/** The value, unless the quantity module refuses it: below absolute zero, or too large. */
function checked(text: string, value: Value): Value {
  possibleQuantity(text, value, value.si, (value.unit ?? fraction) as unknown as Unit<Kind>);
  return value;
}

type Result = Pick<Value, "si" | "unit" | "secondReading">;

function refuse(
  text: string,
  { start, end }: Value,
  wanted: FieldTextStatement,
  hint?: FieldTextStatement,
): never {
  throw new FieldTextError(text, start, end, wanted, hint);
}

const kindOf = ({ unit }: Unitful) => ({ kind: kindWord(unit.kind) });
const kindsOf = (a: Unitful, b: Unitful) => ({
  first: kindWord(a.unit.kind),
  second: kindWord(b.unit.kind),
});
const differenceOf = ({ unit }: Unitful) =>
  say("field-text.difference-of", { kind: kindWord(unit.difference.kind) });
const isPoint = ({ unit }: Unitful) => unit.difference.kind !== unit.kind;

/** Both with a unit, or neither. */
function bothUnitful(text: string, a: Value, b: Value): boolean {
  if (!a.unit && !b.unit) return false;
  if (a.unit && b.unit) return true;
  const bare = a.unit ? b : a;
  const hint = say("field-text.each-needs-unit");
  return refuse(text, bare, say("field-text.number-with-unit"), hint);
}

function sum(text: string, a: Value, b: Value): Result {
  if (!bothUnitful(text, a, b)) return { si: a.si + b.si };
  const [x, y] = [a as Unitful, b as Unitful];
  if (isPoint(x) && isPoint(y)) {
    const wanted = say("field-text.difference", { example: verbatim(differenceExample(y.unit)) });
    return refuse(text, b, wanted, say("field-text.points-do-not-add", kindOf(x)));
  }
  if (y.unit.kind === x.unit.difference.kind) return { si: a.si + b.si, unit: x.unit };
  if (x.unit.kind === y.unit.difference.kind) return { si: a.si + b.si, unit: y.unit };
  return refuse(text, b, differenceOf(x), say("field-text.added-to", kindOf(x)));
}

function difference(text: string, a: Value, b: Value): Result {
  if (!bothUnitful(text, a, b)) return { si: a.si - b.si };
  const [x, y] = [a as Unitful, b as Unitful];
  if (y.unit.kind === x.unit.difference.kind) return { si: a.si - b.si, unit: x.unit };
  if (y.unit.kind === x.unit.kind) {
    const unit = x.unit.difference as AnyUnit;
    return { si: a.si - b.si, unit, secondReading: [b.start, b.end] };
  }
  return refuse(text, b, differenceOf(x), say("field-text.taken-from", kindOf(x)));
}

/** Refuses to scale a point. */
function additive(text: string, value: Value): void {
  if (!value.unit || !isPoint(value as Unitful)) return;
  const hint = say("field-text.points-do-not-scale", kindOf(value as Unitful));
  refuse(text, value, say("field-text.number-or-difference"), hint);
}

const isRatio = ({ unit }: Value) => unit?.kind === "ratio";

function product(text: string, a: Value, b: Value): Result {
  additive(text, a);
  additive(text, b);
  const si = a.si * b.si;
  if (!a.unit || !b.unit) return withoutUndefined(si, a.unit ?? b.unit);
  if (isRatio(a) || isRatio(b)) return { si, unit: isRatio(a) ? b.unit : a.unit };
  const kind = productKind(a.unit.kind, b.unit.kind);
  if (!kind) {
    const hint = say("field-text.no-product", kindsOf(a as Unitful, b as Unitful));
    return refuse(text, b, say("field-text.known-product"), hint);
  }
  return { si, unit: resultUnit(kind, a.unit) };
}

function quotient(text: string, a: Value, b: Value): Result {
  additive(text, a);
  additive(text, b);
  if (b.si === 0) refuse(text, b, say("field-text.divisor"));
  const si = a.si / b.si;
  if (!b.unit) return withoutUndefined(si, a.unit);
  if (!a.unit) {
    const hint = say("field-text.number-over-quantity");
    return refuse(text, a, say("field-text.number-with-unit"), hint);
  }
  if (a.unit.kind === b.unit.kind) return { si, unit: fraction };
  if (isRatio(b)) return { si, unit: a.unit };
  const kind = quotientKind(a.unit.kind, b.unit.kind);
  if (!kind) {
    const hint = say("field-text.no-quotient", kindsOf(a as Unitful, b as Unitful));
    return refuse(text, b, say("field-text.known-quotient"), hint);
  }
  return { si, unit: resultUnit(kind, a.unit) };
}

function withoutUndefined(si: number, unit: AnyUnit | undefined): Result {
  return unit ? { si, unit } : { si };
}

function negated(text: string, value: Value): Value {
  additive(text, value);
  return { ...value, si: -value.si };
}
