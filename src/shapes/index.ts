/**
 * The language of shapes: which form a value has, as data, and the walk that checks a live value against it.
 * Internal to the package: `wire` and `commissioning` show what is public of it.
 *
 * @module shapes
 */
export { type Draft, whole } from "./draft.ts";
export { isRecord } from "./is-record.ts";
export { type Dated, type IsoTime, isoTime, momentOf, surelyBefore } from "./iso-time.ts";
export { oneOfWords } from "./leaf-visits.ts";
export { checkOf, live } from "./live.ts";
export { pathText, shown } from "./path-text.ts";
export { reading } from "./read-json.ts";
export {
  type AtShape,
  type CasesShape,
  casesOf,
  type EachShape,
  type EitherShape,
  type Fields,
  type FieldsShape,
  type ItemsShape,
  type ListShape,
  type NamedShape,
  type SchemaWords,
  type Shape,
  type StatementsShape,
  type StatementTable,
  type UnitShape,
  type WordsShape,
} from "./shape.ts";
export { segmentsOf, shapeAt } from "./shape-at.ts";
export { type Leaves, visitOf } from "./visit.ts";
export {
  errorOf,
  type Finding,
  leaf,
  refuse,
  saidBy,
  startWalk,
  tried,
  type Visit,
  type Walk,
} from "./walk.ts";
