// What number do these digits mean? One number as typed, with the marks of its locale.
// Follows ISO 80000-1:2022, 7.3: one decimal sign; where a mark could be either sign, it is refused.
// Does not cover fractions and signs: operand.ts puts those together.
import { FieldTextError } from "./field-text-error.ts";
import type { NumberMarks } from "./number-marks.ts";
import { tightSpace } from "./plain-text.ts";
import { type FieldTextStatement, say, verbatim } from "./statements.ts";

/** A number as read: its value, the index after it, and whether it is a plain run of digits. */
export interface ReadNumber {
  readonly value: number;
  readonly end: number;
  readonly whole: boolean;
}

/** What the reader looks at: the text as typed, its plain form, the marks, and whether ' can be a foot. */
export interface NumberContext {
  readonly text: string;
  readonly plain: string;
  readonly marks: NumberMarks;
  readonly feet: boolean;
}

/** The number that starts at `start`, or undefined when none starts there. */
export function readNumber(context: NumberContext, start: number): ReadNumber | undefined {
  const { text, plain, marks } = context;
  const runs: string[] = [];
  const separators: string[] = [];
  let end = start;
  for (;;) {
    const run = digitsAt(plain, end);
    runs.push(run);
    end += run.length;
    if (run === "" && runs.length > 1) break;
    if (!isSeparator(context, end, run)) break;
    separators.push(plain.charAt(end));
    end += 1;
  }
  if (end === start) return undefined;
  const refuse = (hint?: FieldTextStatement) => {
    const [sample, mark] = [verbatim(`1234${marks.decimal}5`), verbatim(marks.decimal)];
    throw new FieldTextError(
      text,
      start,
      end,
      say("field-text.number-format", { sample, mark }),
      hint,
    );
  };
  const decimal = separators.at(-1) === marks.decimal ? runs.pop() : undefined;
  if ((decimal ?? runs.at(-1)) === "") refuse(say("field-text.digits-after-mark"));
  const groupMarks = decimal === undefined ? separators : separators.slice(0, -1);
  if (groupMarks.length > 0) {
    checkGroups(context, runs, groupMarks, decimal !== undefined, refuse);
  }
  const digits = `${runs.join("") || "0"}.${decimal ?? "0"}`;
  const power = readPower(plain, end, marks.exponent);
  end += power.length;
  const value = Number(`${digits}e${power.exponent}`);
  if (!Number.isFinite(value)) refuse(say("field-text.too-large"));
  return { value, end, whole: separators.length === 0 && power.length === 0 };
}

/** The digits that stand at `at`; none is "". */
const digitsAt = (plain: string, at: number) => plain.slice(at).replace(/\D.*/s, "");

/** Whether the character at `at` belongs to the number: a mark with digits behind it. */
function isSeparator(context: NumberContext, at: number, before: string): boolean {
  const { plain, marks } = context;
  const mark = plain.charAt(at);
  const after = digitsAt(plain, at + 1);
  if (mark === marks.decimal || mark === "." || mark === ",") {
    return after !== "" || mark === marks.decimal || before !== "";
  }
  if (before === "" || after.length !== 3) return false;
  if (/[/¼-¾⅐-⅞]/.test(plain.charAt(at + 4))) return false; // 1 125/1000 is no 1125
  if (mark === tightSpace) return before.length <= 3;
  return mark === marks.group || (mark === " " && marks.group === tightSpace);
}

function checkGroups(
  { marks, feet }: NumberContext,
  runs: readonly string[],
  groupMarks: readonly string[],
  hasDecimal: boolean,
  refuse: (hint?: FieldTextStatement) => void,
): void {
  const [mark = ""] = groupMarks;
  const spaces = mark === tightSpace || mark === " ";
  const [last, others] = spaces ? [3, 3] : marks.groupSizes;
  const [first = "", second = ""] = runs;
  const sizes = runs.map(({ length }) => length);
  const leading = /^[1-9]/.test(first);
  const thousands =
    leading &&
    groupMarks.every((other) => other === mark && (other === marks.group || spaces)) &&
    first.length <= others &&
    sizes.at(-1) === last &&
    sizes.slice(1, -1).every((size) => size === others);
  const lone = runs.length === 2 && !hasDecimal && /[.,]/.test(mark);
  if (lone && (!thousands || marks.eitherWay?.includes(mark))) {
    const decimal = verbatim(`${first || 0}${marks.decimal}${second}`);
    const readings = leading ? [decimal, verbatim(first + second)] : [decimal];
    refuse(say("field-text.which-mark", { mark: verbatim(mark), readings }));
  }
  if (!thousands) refuse();
  if (mark === "'" && feet) refuse(say("field-text.feet-or-thousands"));
}

/** A power of ten behind a number: `e-8`, `×10^-8`, `×10⁻⁸`, or as the locale writes it. */
function readPower(
  plain: string,
  at: number,
  separator: string,
): { length: number; exponent: string } {
  const rest = plain.slice(at, at + 24);
  const escaped = separator.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
  const direct = new RegExp(`^(?:[eE]|${escaped})\u00a0?([+−-]?)(\\d{1,3})(?!\\d)`, "u").exec(rest);
  const written =
    /^[ \u00a0]?[×·xX][ \u00a0]?10(?:\^[ \u00a0]?([+−-]?)(\d{1,3})(?!\d)|([⁺⁻]?)([⁰¹²³⁴-⁹]{1,3}))/.exec(
      rest,
    );
  const found = direct ?? written;
  if (!found) return { length: 0, exponent: "0" };
  const sign = found[1] || found[3] || "+";
  const digits = (found[2] ?? found[4] ?? "0").normalize("NFKD");
  return { length: found[0].length, exponent: `${"−-⁻".includes(sign) ? "-" : ""}${digits}` };
}
