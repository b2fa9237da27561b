// The modules that write for a reader: figures, refusals of typed texts, plans, reports and pictures in a language.
import { formatQuantity } from "hvac-install-math/display";
import * as en from "hvac-install-math/language/en";
import { vacuumDecayPlot } from "hvac-install-math/plots";
import { hour } from "hvac-install-math/quantity";
import { htmlReport, markdownReport, planSheet } from "hvac-install-math/report";
import { assessVacuumDecay } from "hvac-install-math/vacuum-decay";
import { rules } from "../commissioning/assess.ts";
import { changed } from "../commissioning/changed.ts";
import { complete } from "../commissioning/complete-record.ts";
import { allUnits } from "../field-text/catalogue.ts";
import { allPlots } from "../plots/samples.ts";
import { failing, half, rich } from "../report/rich-record.ts";
import * as ofFieldText from "./inputs/field-text.ts";
import { inputs as ofPlanning, plans } from "./inputs/planning.ts";
import * as ofQuantity from "./inputs/quantity.ts";
import * as ofReadQuantity from "./inputs/read-quantity.ts";
import { refusals } from "./inputs/refusals.ts";
import * as ofVacuumDecay from "./inputs/vacuum-decay.ts";
import { type Spoken, walk } from "./walk.ts";

type Language = Parameters<NonNullable<Spoken["write"]>>[0];
const reader = (language: Language) => ({ language, system: "inch-pound", rules }) as const;

/** Every unit of the catalogue, one of it and several. */
const writeFigures = (language: Language) => {
  for (const unit of allUnits) {
    for (const count of [1, 5]) {
      formatQuantity(unit(count) as never, { ...reader(language), unit } as never);
    }
  }
};

const records = [
  { version: 2 } as const,
  complete,
  rich,
  failing,
  half,
  changed({ "equipment.construction": "monobloc" }),
  changed({ "equipment.manual.testHold": hour(0), signatures: undefined }),
  changed({
    "runs[0].joints": undefined,
    signatures: undefined,
    waivers: [{ step: "joints", reason: "existing-lines", by: "N. N.", at: "2026-05-04" }],
  }),
];

const writeReports = (language: Language) => {
  for (const record of records) markdownReport(record, reader(language));
  htmlReport(rich, { ...reader(language), printedAt: "2026-05-06" });
  htmlReport({ ...rich, name: "x".repeat(1000) }, { ...reader(language), appendix: false });
  for (const plan of plans) planSheet(plan, reader(language));
};

const writePictures = (language: Language) => {
  allPlots({ language });
  for (const [input] of ofVacuumDecay.inputs.assessVacuumDecay ?? []) {
    vacuumDecayPlot(input, assessVacuumDecay(input), { language, system: "SI" });
  }
};

const spoken: readonly Spoken[] = [
  {
    module: "field-text",
    catalogue: en.fieldText,
    further: ofFieldText.inputs as never,
    also: [["read-quantity", ofReadQuantity.inputs]],
  },
  {
    module: "quantity",
    catalogue: en.quantity,
    further: ofQuantity.inputs as never,
    also: [["field-text", ofFieldText.inputs], ...refusals],
  },
  { module: "display", catalogue: en.display, write: writeFigures },
  { module: "planning", catalogue: en.planning, further: ofPlanning as never },
  { module: "report", catalogue: en.report, write: writeReports },
  { module: "plots", catalogue: en.plots, write: writePictures },
];
for (const one of spoken) walk(one);
