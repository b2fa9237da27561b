// Which pages are generated? All of them, from the library, its tests' data and its own records.
// Does not cover the pages that are written by hand: docs/front-page.md, docs/app-developers.md, docs/guides, docs/methods.
import { askPages } from "./ask-pages.ts";
import { bibliographyPage } from "./bibliography-page.ts";
import { changelogPage } from "./changelog-page.ts";
import { circuitRulesPage } from "./circuit-rules-page.ts";
import { decayCurvesPage } from "./decay-curves-page.ts";
import { evaluateAll } from "./evaluate-checks.ts";
import { finishedRecordPage } from "./finished-record-page.ts";
import { guidesPage, methodsPage } from "./guides-page.ts";
import { jurisdictionsPage } from "./jurisdictions-page.ts";
import type { Page } from "./page.ts";
import {
  pressureTemperatureIndex,
  pressureTemperaturePage,
  type ShippedFluid,
} from "./pressure-temperature-page.ts";
import { referencePage, referenceSummary } from "./reference-page.ts";
import { referenceStates } from "./reference-rows.ts";
import { sentencesPages } from "./sentences-page.ts";
import { slipsPage } from "./slips-page.ts";
import { summaryPage } from "./summary-page.ts";
import { validationPages } from "./validation-page.ts";
import { weightsPage } from "./weights-page.ts";

/** Every generated page. */
export async function allPages(): Promise<Page[]> {
  const modules = await evaluateAll();
  const fluids = referenceStates();
  const shipped = fluids.filter((fluid): fluid is ShippedFluid => fluid.refrigerant !== undefined);
  return [
    ...askPages(),
    guidesPage(),
    methodsPage(),
    weightsPage(),
    finishedRecordPage(),
    decayCurvesPage(),
    pressureTemperatureIndex(shipped),
    ...shipped.map((fluid) => pressureTemperaturePage(fluid)),
    summaryPage(modules, referenceSummary(fluids), {
      ...Object.fromEntries(modules.map(({ module }) => [module, `validation/${module}.md`])),
      "Reference values": "validation/reference-values.md",
      "Circuit rules by country": "circuit-rules.md",
      "Checks by jurisdiction": "checks-by-jurisdiction.md",
    }),
    ...modules.flatMap(validationPages),
    referencePage(fluids),
    bibliographyPage(),
    circuitRulesPage(),
    jurisdictionsPage(modules),
    ...sentencesPages(),
    slipsPage(),
    changelogPage(),
  ];
}
