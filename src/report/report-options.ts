// What may a reader choose about a report? Units, numbers, the time of printing, pictures.
// Follows no standard; the library's own options.
// Does not cover wording: the sentences come from the language that is passed in.
import type { CircuitRules } from "../circuit-protection/index.ts";
import type {
  InstallationAssessment,
  InstallationRecord,
  StepName,
} from "../commissioning/index.ts";
import { type FigureTextOptions, figureText } from "../display/index.ts";
import type { PlotLanguage } from "../plots/index.ts";
import { describe, flagOf, objectOf, refuse } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";

/**
 * How a report is to be written.
 */
export interface ReportOptions extends FigureTextOptions {
  /** The language of the report, such as `english` of `hvac-install-math/language/en`. */
  readonly language: PlotLanguage;
  /** The rule sets for circuits that the record may name; see `assessInstallation`. */
  readonly rules?: readonly CircuitRules[] | undefined;
  /**
   * Whether the appendix stands at the end: every reason with its source, the figures worked out, what was
   * recorded, equipment, instruments and evidence. It does when left out.
   */
  readonly appendix?: boolean | undefined;
  /** When the report is made, as it is to be printed; left out, the report says nothing of it. The library has no clock. */
  readonly printedAt?: string | undefined;
}

/** A picture of a step. */
export interface ReportPlot {
  /** The step under which it stands. */
  readonly step: StepName;
  /** What it shows, in a line. */
  readonly title: string;
  /** One `<svg>` element as text, such as `hvac-install-math/plots` draws; see {@link htmlReport} for what it may hold. */
  readonly svg: string;
}

/**
 * How an HTML report is to be written.
 */
export interface HtmlReportOptions extends ReportOptions {
  /** Draws pictures of the record as it was judged, such as `recordPlots` of `plots`; none when left out. */
  readonly plots?:
    | ((
        record: InstallationRecord,
        assessment: InstallationAssessment,
        options: ReportOptions,
      ) => readonly ReportPlot[])
    | undefined;
}

/** Checks what both reports share. */
export function checkOptions(options: ReportOptions): ReturnType<typeof figureText> {
  const { printedAt, language, appendix } = objectOf("options", options);
  if (typeof language?.messages !== "object" || typeof language.locale !== "string") {
    throw new InvalidInputError({
      argument: "options.language",
      value: describe(language),
      allowed: "a language, such as english of hvac-install-math/language/en",
    });
  }
  if (printedAt !== undefined && (typeof printedAt !== "string" || printedAt.trim() === "")) {
    const allowed = "a text that is not empty, such as 2026-05-06 09:30";
    refuse("options.printedAt", printedAt, allowed, "text");
  }
  if (appendix !== undefined) flagOf("options.appendix", appendix);
  return figureText(options);
}
