// How is a closed word of a record or a verdict said, such as the kind of a joint? By the word of the reader's language.
// Follows the types of the record and of the verdicts: a word that a language lacks does not compile.
// Does not cover what a standard, a nameplate or the trade writes itself, such as 12 AWG: that stays as it is.
import type { CheckName, CheckVerdicts, InstallationRecord } from "../commissioning/index.ts";
import type { AnyQuantity } from "../quantity/json.ts";
import type { LeftOut } from "./figure-path.ts";
import type { Words } from "./words.ts";

/** Fields that pick from words which the catalogue of a module has. */
type Elsewhere =
  | "between"
  | "construction"
  | "currentUnbalance"
  | "edition"
  | "line"
  | "mode"
  | "name"
  | "nameplate"
  | "part"
  | "reason"
  | "sag"
  | "side"
  | "standing"
  | "step"
  | "supply"
  | "unbalance"
  | "uncertaintyBudget"
  | "vaporPort";

/** Under which codes these stand. */
const elsewhere: Readonly<Record<Elsewhere, readonly string[]>> = {
  between: ["flare-joint.source"],
  construction: ["commissioning.construction"],
  currentUnbalance: ["assessment.outcome"],
  edition: ["charge-limit.edition"],
  line: ["commissioning.line"],
  mode: ["commissioning.mode"],
  name: ["supply-voltage.name"],
  nameplate: ["assessment.outcome"],
  part: ["pressure-test.part"],
  reason: ["commissioning.waiver", "report.figure.excludedCount"],
  sag: ["assessment.outcome"],
  side: ["operating-check.side"],
  standing: ["commissioning.standing", "charge-limit.standing"],
  step: ["commissioning.step"],
  supply: ["assessment.outcome"],
  unbalance: ["assessment.outcome"],
  uncertaintyBudget: ["pressure-test.part"],
  vaporPort: ["operating-check.side"],
};

/** What stays as it is: sizes, ratings, markings, and the letters and numbers of tables. */
type Verbatim =
  | "column"
  | "conductor"
  | "conductorWithinLimit"
  | "curve"
  | "earthing"
  | "equipmentGrounding"
  | "insulation"
  | "liquid"
  | "protectionMarking"
  | "size"
  | "system"
  | "tableSize"
  | "terminations"
  | "tube"
  | "vapor"
  | "voltageRating";

type Skipped = Elsewhere | LeftOut | Verbatim;

/** The closed words below a type, each behind the field that picks it. */
type Choice<T, Field extends string = never> = T extends string
  ? string extends T
    ? never
    : Field extends Skipped
      ? never
      : `${Field}.${T}`
  : T extends number | boolean | AnyQuantity | null | undefined
    ? never
    : T extends readonly (infer One)[]
      ? Choice<One, Field>
      : { [K in Exclude<keyof T & string, LeftOut>]: Choice<T[K], K> }[Exclude<
          keyof T & string,
          LeftOut
        >];

/** The reference methods of wiring are letters and numbers of tables; the methods of charging are words. */
type Lettered = `method.${Uppercase<string> | number}`;

/** The word for what a field of a record or a verdict picks. */
export type ChoiceWord =
  `report.choice.${Exclude<Choice<InstallationRecord | CheckVerdicts[CheckName]>, Lettered>}`;

/** A word that stands at a path, in the reader's language; a text of the record as it is. */
export function choiceText({ code }: Words, path: string, value: string): string | undefined {
  const field = path.slice(path.lastIndexOf(".") + 1).replace(/\[\d+\]$/, "");
  const lists = Object.hasOwn(elsewhere, field)
    ? elsewhere[field as Elsewhere]
    : [`report.choice.${field}`];
  return lists.map((list) => code(`${list}.${value}`, "")).find((word) => word !== "");
}
