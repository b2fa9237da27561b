// Reads a pasted log: as it is guessed to be written, unless the guess leaves something in doubt.
import { explain } from "hvac-install-math/assessment";
import { english } from "hvac-install-math/language/en";
import { guessLog, readLog } from "hvac-install-math/logs";
import type { DecayReading } from "hvac-install-math/vacuum-decay";

/** What is wrong with a line, and where it stands in the text. */
export interface LogProblem {
  readonly problem: string;
  readonly place: readonly [from: number, to: number];
}

/** The readings, or the first thing that stands in their way. */
export function pastedLog(text: string): readonly DecayReading[] | LogProblem {
  const { format, doubts } = guessLog(text, { pressure: "absolutePressure" });
  const [doubt] = doubts.filter(({ code }) => code !== "logs.decimal-unsure");
  if (!format || doubt) {
    const why = doubt ? explain(doubt, english) : "";
    const problem = `${why} Paste a header such as elapsed [s],pressure [micron] and the readings.`;
    return { problem, place: [0, 0] };
  }
  const { rows, refused } = readLog(text, format);
  const [wrong] = refused;
  if (!wrong) return rows;
  const lines = text.split("\n").slice(0, wrong.values.line);
  const to = lines.join("\n").length;
  return { problem: explain(wrong, english), place: [to - (lines.at(-1) ?? "").length, to] };
}
