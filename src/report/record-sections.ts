// What was installed, with what was it measured, who signed, and what was changed? The record beside the steps.
// Follows the record. Does not cover what the steps show.
import type { Instruments } from "../commissioning/index.ts";
import type { Context } from "./context.ts";
import { errorsText, leavesOf, recordBlocks, valueText } from "./record-rows.ts";
import { type Block, type Section, table, text } from "./report-document.ts";
import { capital, fieldWords, plainWords } from "./words.ts";

const orNone = (blocks: Block[], none: string): Block[] => (blocks.length ? blocks : [text(none)]);

/** Site, plates, manual, instruments. */
export function installationSection(context: Context): Section {
  const { equipment: { manual, ...plates } = {} } = context.record;
  const own: Context = { ...context, record: { ...context.record, equipment: plates } };
  return {
    id: "installation",
    title: "Site, equipment and instruments",
    blocks: [
      ...orNone(recordBlocks(context, ["site"], "Site"), "Of the site nothing is recorded."),
      ...orNone(
        Object.keys(plates).length
          ? recordBlocks(own, ["equipment"], "Equipment, by its plates")
          : [],
        "Of the plates nothing is recorded.",
      ),
      ...orNone(
        recordBlocks(context, ["equipment.manual"], "What the manual lays down"),
        "Of the manual nothing is recorded.",
      ),
      ...(context.record.runs ?? []).flatMap(({ name }, i) =>
        recordBlocks(
          context,
          ["name", "port", "serves", "indoorUnits", "manual"].map((own) => `runs[${i}].${own}`),
          `Run ${i + 1}${name === undefined ? "" : `, ${context.figure(name)}`}`,
        ),
      ),
      ...orNone(instrumentsTable(context), "No instrument is recorded."),
    ],
  };
}

const identity = ["name", "serialNumber", "calibratedOn", "calibrationDue"];

function instrumentsTable(context: Context): Block[] {
  const { instruments = {} } = context.record;
  const rows = Object.entries(instruments).map(([key, given]) => {
    const { name, serialNumber, calibratedOn, calibrationDue } = given as NonNullable<
      Instruments["level"]
    >;
    const known = [name, serialNumber && `serial number ${serialNumber}`]
      .filter(Boolean)
      .join(", ");
    const more = leavesOf(given, "")
      .filter(([path]) => !identity.includes(path) && !/^(relativeA|a)ccuracy/.test(path))
      .map(([path, value]) => `${fieldWords(path)} ${valueText(context, value)}`);
    return [
      capital(plainWords(key)),
      known ? context.figure(known) : "not stated",
      [errorsText(context, given), ...more].join("; "),
      calibratedOn ?? "not stated",
      calibrationDue ?? "not stated",
    ];
  });
  const head = ["Instrument", "Which", "Accuracy and limits", "Calibrated", "Calibration due"];
  return table("Instruments", head, rows);
}

/** Photos, signatures, amendments. */
export function evidenceSections(context: Context): Section[] {
  const { photos = [], signatures = [], history = [] } = context.record;
  const shown = (value: unknown) => (value === undefined ? "—" : valueText(context, value));
  const photoRows = photos.map(({ reference, of, caption, at, digest }) => [
    shown(reference),
    of === undefined ? "—" : context.figure(`${capital(fieldWords(of))} (${of})`),
    shown(caption),
    shown(at),
    digest === undefined ? "none: an exchanged picture would not show" : shown(digest),
  ]);
  const signatureRows = signatures.map(({ name, role, at }) => [
    shown(name),
    shown(role),
    shown(at),
  ]);
  const historyRows = history.map(({ path, previous, by, at, reason }, i) => [
    String(i + 1),
    `${capital(fieldWords(path))} (${path})`,
    previous === undefined ? "nothing" : before(context, previous),
    shown(by),
    shown(at),
    shown(reason),
  ]);
  return [
    {
      id: "photos",
      title: "Photos",
      blocks: orNone(
        table(
          "Photos, by reference",
          ["Reference", "Shows", "Caption", "Taken", "Digest"],
          photoRows,
        ),
        "No photo is recorded.",
      ),
    },
    {
      id: "signatures",
      title: "Signatures",
      blocks: [
        ...orNone(
          table("Signatures, as stated", ["Name", "As", "When"], signatureRows),
          "Nobody has signed this record.",
        ),
        text("Names and times are as the record states them; nothing here verifies who signed."),
      ],
    },
    {
      id: "history",
      title: "Amendments",
      blocks: orNone(
        table(
          "What was changed, the oldest first",
          ["No.", "Field", "Before", "By", "When", "Why"],
          historyRows,
        ),
        "Nothing was amended.",
      ),
    },
  ];
}

function before(context: Context, previous: unknown): string {
  const leaves = leavesOf(previous, "");
  const shown = leaves.map(([path, value]) =>
    path ? `${fieldWords(path)}: ${valueText(context, value)}` : valueText(context, value),
  );
  return context.figure(shown.join("; "));
}
