// What was installed, with what was it measured, who signed, and what was changed? The record beside the steps.
// Follows the record. Does not cover what the steps show.
import type { Instruments } from "../commissioning/index.ts";
import type { Context } from "./context.ts";
import { fieldText, runText } from "./places.ts";
import { errorsText } from "./read-by.ts";
import { leavesOf, recordBlocks, valueText } from "./record-rows.ts";
import { type Block, type Section, table, text } from "./report-document.ts";
import { say, verbatim } from "./statements.ts";
import { capital } from "./words.ts";

/** Site, plates, manual, instruments. */
export function installationSection(context: Context): Section {
  const { equipment: { manual, ...plates } = {} } = context.record;
  const { words } = context;
  const own: Context = { ...context, record: { ...context.record, equipment: plates } };
  return {
    id: "installation",
    title: words.of("installation"),
    blocks: [
      ...recordBlocks(context, ["site"], words.of("site")),
      ...recordBlocks(own, ["equipment"], words.of("nameplate")),
      ...recordBlocks(context, ["equipment.manual"], words.of("manual")),
      ...(context.record.runs ?? []).flatMap((run, i) =>
        recordBlocks(
          { ...context, record: { ...context.record, runs: [run] } }, // its heading names it: no number
          ["name", "port", "serves", "indoorUnits", "manual"].map((own) => `runs[0].${own}`),
          runText(context, i),
        ),
      ),
      ...instrumentsTable(context),
    ],
  };
}

const identity = ["name", "serialNumber", "calibratedOn", "calibrationDue"];

function instrumentsTable(context: Context): Block[] {
  const { said, words, record } = context;
  const { instruments = {} } = record;
  const notStated = words.of("not-stated");
  const rows = Object.entries(instruments).map(([key, given]) => {
    const { name, serialNumber, calibratedOn, calibrationDue } = given as NonNullable<
      Instruments["level"]
    >;
    const number = serialNumber && verbatim(context.figure(serialNumber));
    const known = [name, number && said(say("report.serial-number", { number }))]
      .filter(Boolean)
      .join(", ");
    const more = leavesOf(given, "")
      .filter(([path]) => !identity.includes(path) && !/^(relativeA|a)ccuracy/.test(path))
      .map(
        ([path, value]) =>
          `${words.field(`instruments.${key}.${path}`)} ${valueText(context, path, value)}`,
      );
    return [
      capital(words.field(`instruments.${key}`)),
      known ? context.figure(known) : notStated,
      [errorsText(context, given), ...more].join("; "),
      calibratedOn ?? notStated,
      calibrationDue ?? notStated,
    ];
  });
  const head = (["instrument", "which", "accuracy", "calibrated", "calibration-due"] as const).map(
    words.of,
  );
  return table(words.of("instruments"), head, rows);
}

/** Photos, signatures, amendments. */
export function evidenceSections(context: Context): Section[] {
  const { said, words, record } = context;
  const { photos = [], signatures = [], history = [] } = record;
  const shown = (value: unknown) => (value === undefined ? "—" : context.figure(value as string));
  const photoRows = photos.map(({ reference, of, caption, at, digest }) => [
    shown(reference),
    of === undefined ? "—" : context.figure(capital(fieldText(context, of))),
    shown(caption),
    shown(at),
    digest === undefined ? said(say("report.no-digest")) : shown(digest),
  ]);
  const signatureRows = signatures.map(({ name, role, at }) => [
    shown(name),
    shown(role),
    shown(at),
  ]);
  const historyRows = history.map(({ path, previous, by, at, reason }, i) => [
    String(i + 1),
    capital(fieldText(context, path)),
    previous === undefined ? words.of("none") : before(context, path, previous),
    shown(by),
    shown(at),
    shown(reason),
  ]);
  return [
    {
      id: "photos",
      title: words.of("photos"),
      blocks: table(
        words.of("photos"),
        (["reference", "shows", "caption", "taken", "digest"] as const).map(words.of),
        photoRows,
      ),
    },
    {
      id: "signatures",
      title: words.of("signatures"),
      blocks: [
        ...table(
          words.of("signatures"),
          (["name", "as", "when"] as const).map(words.of),
          signatureRows,
        ),
        ...(signatures.length ? [text(said(say("report.signatures-not-verified")))] : []),
      ],
    },
    {
      id: "history",
      title: words.of("amendments"),
      blocks: table(
        words.of("amendments"),
        (["number", "field", "before", "by", "when", "why"] as const).map(words.of),
        historyRows,
      ),
    },
  ];
}

function before(context: Context, at: string, previous: unknown): string {
  const leaves = leavesOf(previous, "");
  const shown = leaves.map(([path, value]) =>
    path
      ? `${context.behind(fieldText(context, `${at}.${path}`))} ${valueText(context, path, value)}`
      : valueText(context, at, value),
  );
  return context.figure(shown.join("; "));
}
