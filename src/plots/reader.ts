// How does this reader see figures and words? In a language, in units, in digits. Internal.
// Follows display for every figure and assessment for every sentence.
// Does not cover which figure is drawn: each plot says that.
import {
  type Assessment,
  type Catalogue,
  explain,
  label,
  type Statement,
} from "../assessment/index.ts";
import { numbersOf } from "../display/format-number.ts";
import { type FigureTextOptions, figureText, shownUnit, unitName } from "../display/index.ts";
import { listOf, objectOf, oneOf } from "../quantity/check.ts";
import type { Kind } from "../quantity/kinds.ts";
import type { Quantity, Unit } from "../quantity/quantity.ts";
import { day, hour, minute, second } from "../quantity/units/time.ts";
import type { PlotLanguage, PlotStatement, PlotStatements } from "./statements.ts";

/** What a picture asks of its reader. */
export interface Reader {
  /** What the picture says, with its figures. */
  readonly say: (said: PlotStatement) => string;
  /** What the picture says without figures. */
  readonly word: (code: keyof PlotStatements & string) => string;
  /** The outcome in a word, and with its reasons in sentences. */
  readonly verdict: (assessment: Assessment<string>) => {
    readonly outcome: string;
    readonly sentences: string;
  };
  /** A number of an axis. */
  readonly number: (value: number, decimals: number) => string;
  /** The unit in which a quantity of this size is shown. */
  readonly unitFor: <K extends Kind>(quantity: Quantity<K>) => Unit<K>;
  /** The unit of a span of seconds. */
  readonly timeUnitFor: (seconds: number) => Unit<"duration">;
  /** The name of a unit, for an axis. */
  readonly unitName: (unit: Unit<never>) => { readonly verbatim: string };
}

/** The reader that the options describe, checked. */
export function readerOf(
  options: Pick<FigureTextOptions, "system" | "units" | "locale"> & {
    readonly language: PlotLanguage;
  },
): Reader {
  const { language, system, locale } = options;
  label("assessment.outcome.pass", language); // refuses what is no language, by name
  const { gaugePressure, absolutePressure } = options.units ?? {};
  const differs = gaugePressure ?? absolutePressure;
  const units = {
    ...(differs && { pressureDifference: differs.difference }),
    ...options.units,
  };
  const ofNumbers = { language, ...(locale !== undefined && { locale }) };
  const show = figureText({ system, units, ...ofNumbers });
  const numbers = numbersOf(locale, language);
  const explained = (said: Statement) => explain(said, language as Catalogue, show);
  return {
    say: explained,
    word: (code) => explained({ code, values: {} }),
    verdict: (assessment) => {
      const { outcome, reasons } = objectOf("assessment", assessment);
      oneOf("assessment.outcome", outcome, ["pass", "fail", "inconclusive"]);
      const code = `assessment.outcome.${outcome}` as const;
      const said = listOf("assessment.reasons", reasons).map(explained);
      const result = explained({ code: "plots.outcome", values: { outcome: code } });
      return { outcome: label(code, language), sentences: [result, ...said].join(" ") };
    },
    number: (value, decimals) => numbers.fixed(value, decimals),
    unitFor: (quantity) => shownUnit(quantity, { system, units }),
    timeUnitFor: (seconds) => units.duration ?? timeUnitFor(seconds),
    unitName: (unit) => ({ verbatim: unitName(unit, language) }),
  };
}

/** The unit in which a time is a handy number. */
function timeUnitFor(seconds: number): Unit<"duration"> {
  if (seconds < 3 * 60) return second;
  return seconds < 3 * 3600 ? minute : seconds < 4 * 86_400 ? hour : day;
}

/** The number of an SI value in a unit. */
export const inUnit = (
  si: number,
  { scale, offset }: { readonly scale: number; readonly offset: number },
): number => (si - offset) / scale;
