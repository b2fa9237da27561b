// How does a statement read? Its sentence from a catalogue, with the figures as the reader wants them.
// Follows Unicode CLDR for plurals and lists, by Intl where the runtime has it.
// Does not cover units and digits: `show` prints each figure.
import { describe, numberOf, objectOf, refuse, requireKind, textOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { isQuantity } from "../quantity/json.ts";
import { type Catalogue, type Message, variantFor } from "./catalogue.ts";
import { listed } from "./grammar.ts";
import type { Figure, Single, Statement, Value } from "./statement.ts";

/** Prints a figure, given the other figures of its sentence. */
type Show = (figure: Figure, resolution: undefined, beside: readonly Figure[]) => string;

/**
 * A statement as a sentence of a language, with its figures.
 *
 * @param said - A reason, an assumption, a caution or an action.
 * @param language - A whole language or the catalogue of one module, from `hvac-install-math/language/en`.
 * @param show - How a figure is printed, for instance in the reader's units, given the other figures of the
 * sentence; when left out, in the unit in which it comes, to four significant digits or to the whole number,
 * and to more where two figures that differ would read the same.
 * @returns The sentence; a dash stands for a list of nothing.
 * @throws {@link InvalidInputError} when the language does not word the code, and from JavaScript, when an argument
 * is none; `reasons.map(explain)` is such a call: write `reasons.map((one) => explain(one, english))`.
 *
 * Source: Unicode CLDR for plural forms and lists; the rest is the library's own.
 *
 * @example
 * ```ts
 * import { explain } from "hvac-install-math/assessment";
 * import { assessFlareTorque } from "hvac-install-math/flare-joint";
 * import { flareJoint } from "hvac-install-math/language/en";
 * import { newtonMeter } from "hvac-install-math/quantity";
 *
 * const { reasons } = assessFlareTorque({ tube: "3/8", torque: newtonMeter(50) });
 * explain(reasons[0]!, flareJoint); // => Torque 50 N·m: outside 32.7 N·m to 42 N·m.
 * ```
 */
export function explain<C extends string>(
  said: Statement<C>,
  language: Catalogue<NoInfer<C>>,
  show: Show = rounded,
): string {
  const { code, values } = objectOf<Statement>("said", said);
  textOf("said.code", code);
  objectOf("said.values", values);
  const words = catalogueOf(language);
  if (typeof show !== "function") {
    refuse("show", show, "a function that prints a figure");
  }
  const sentence = variantOf(messageOf(words, code), values, words.locale);
  const names = [...sentence.matchAll(places)].map(([, name = ""]) => name);
  const beside = names.flatMap((name) => partsOf(valueNamed(values, name)).filter(isFigure));
  return sentence.replace(places, (_, name: string, or?: string) => {
    const value = valueNamed(values, name);
    const print = (one: Single): string =>
      typeof one === "string"
        ? label(one, words)
        : typeof one === "object" && "verbatim" in one
          ? one.verbatim
          : textOf("show()", show(one, undefined, beside));
    const parts = (partsOf(value) as readonly Single[]).map(print);
    return parts.length > 0 ? listed(parts, words.locale, or) : "—";
  });
}

/**
 * A word of a language by its code: the name of an outcome, a step, a field, a figure.
 *
 * @param code - A code without values.
 * @param language - A whole language or the catalogue of one module.
 * @returns The word.
 * @throws {@link InvalidInputError} when the language does not hold it.
 *
 * @example
 * ```ts
 * import { label } from "hvac-install-math/assessment";
 * import { english } from "hvac-install-math/language/en";
 *
 * label("assessment.outcome.inconclusive", english); // => INCONCLUSIVE
 * ```
 */
export function label<C extends string>(code: C, language: Catalogue<NoInfer<C>>): string {
  const message = messageOf(catalogueOf(language), textOf("code", code));
  return typeof message === "string" ? message : message.other;
}

/** `{name}` in a sentence; `{name:or}` for a list of alternatives. */
const places = /\{(\w+)(:or)?\}/g;

function catalogueOf(language: unknown): Catalogue {
  const { messages, locale } = (language ?? {}) as Partial<Catalogue>;
  if (typeof messages === "object" && messages && typeof locale === "string") {
    return language as Catalogue;
  }
  throw new InvalidInputError({
    argument: "language",
    value: describe(language),
    allowed:
      "a language or a catalogue, as in reasons.map((one) => explain(one, english)) with hvac-install-math/language/en",
  });
}

function messageOf({ messages, locale }: Catalogue, code: string): Message {
  const message = Object.hasOwn(messages, code) ? messages[code] : undefined;
  if (typeof message === "string" || typeof message?.other === "string") return message;
  throw new InvalidInputError({
    argument: "code",
    value: describe(code),
    allowed: `a code that the catalogue (${locale}) words: pass that of its module, or the whole language`,
  });
}

/** The variant of a sentence for its values. */
function variantOf(message: Message, values: Statement["values"], locale: string): string {
  const chosenBy = typeof message === "string" ? undefined : valueNamed(values, message.by);
  return variantFor(message, chosenBy, locale);
}

function valueNamed(values: Statement["values"], name: string): Value {
  const argument = `said.values.${name}`;
  const value = Object.hasOwn(values, name) ? values[name] : undefined;
  for (const one of partsOf(value)) {
    if (typeof one === "number") numberOf(argument, one);
    else if (typeof one === "object" && one && "verbatim" in one) textOf(argument, one.verbatim);
    else if (typeof one !== "string") requireKind(argument, one);
  }
  return value as Value;
}

/** Whether a value, or a part of one, is a figure. */
const isFigure = (one: unknown): one is Figure => typeof one === "number" || isQuantity(one);

/** The parts of a value: those of a list, or itself. */
const partsOf = (value: Value | undefined) => [value].flat() as readonly (Single | undefined)[];

/** Four significant digits, never fewer than stand before the decimal point, and more beside a figure that would read the same. */
function rounded(figure: Figure, _: undefined, beside: readonly Figure[]): string {
  const { value, unit } = plain(figure);
  const text = (number: number, finer: number) => {
    const digits = Math.max(4, Math.floor(Math.log10(Math.abs(number))) + 1) + finer;
    return Number(number.toPrecision(Math.min(digits, 21)));
  };
  const others = beside.map(plain).filter((one) => one.unit === unit && one.value !== value);
  let finer = 0;
  while (finer < 8 && others.some((one) => text(one.value, finer) === text(value, finer))) finer++;
  return `${text(value, finer)} ${unit}`.trim();
}

/** A figure in its unit, to twelve digits, which leave out the noise of arithmetic. */
function plain(figure: Figure): { value: number; unit: string } {
  return typeof figure === "number" ? { value: figure, unit: "" } : figure.toJSON();
}
