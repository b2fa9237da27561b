// What does an import weigh in an app? Bundled and minified by esbuild, after gzip.
// Measured when the site is built, as the size tests measure it.
// Does not cover what an app shares between imports: each figure stands alone.
import { refrigerants } from "hvac-install-math/refrigerants";
import { bundle } from "../../tests/package/bundle.ts";
import { type Page, page, table } from "./page.ts";

/** A task, and what an app writes for it. */
const uses: readonly (readonly [task: string, code: string])[] = [
  ["one unit", 'export { psig } from "hvac-install-math/quantity";'],
  ["every unit and `fromJSON`", 'export { fromJSON } from "hvac-install-math/quantity";'],
  [
    "superheat and subcooling of one refrigerant",
    'export { R32, superheat, subcooling } from "hvac-install-math/refrigerants";',
  ],
  [
    `all ${refrigerants.length} refrigerants by designation`,
    'export { refrigerantByDesignation } from "hvac-install-math/refrigerants";',
  ],
  ["pressure test", 'export { assessPressureTest } from "hvac-install-math/pressure-test";'],
  [
    "pressure test from a log",
    'export { assessPressureLog } from "hvac-install-math/pressure-test";',
  ],
  ["vacuum decay, live", 'export { createDecayMonitor } from "hvac-install-math/vacuum-decay";'],
  ["added charge", 'export { additionalCharge } from "hvac-install-math/line-set";'],
  [
    "nameplate to breaker, one edition of the rules",
    'export { circuitFromNameplate, nec2023 } from "hvac-install-math/circuit-protection";',
  ],
  ["supply voltage", 'export { assessSupplyVoltage } from "hvac-install-math/supply-voltage";'],
  ["room and charge", 'export { assessRoomCharge } from "hvac-install-math/charge-limit";'],
  ["a whole record", 'export { assessInstallation } from "hvac-install-math/commissioning";'],
  ["typed text (with mathjs)", 'export { parseQuantity } from "hvac-install-math/field-text";'],
  [
    "equation of state of one fluid",
    'export { R32, saturation } from "hvac-install-math/property-model";',
  ],
];

/** The page with one line per use. */
export async function weightsPage(): Promise<Page> {
  const rows = await Promise.all(
    uses.map(async ([task, code]) => {
      const { gzip } = await bundle(code);
      const [, names = "", module = ""] =
        /\{ (.+) \} from "hvac-install-math\/(.+)"/.exec(code) ?? [];
      return [task, `\`${names}\``, `\`${module}\``, (gzip / 1000).toFixed(1)];
    }),
  );
  return page("weights.md", "What an import weighs", [
    "# What an import weighs",
    "Kilobytes (1000 bytes) after bundling, minification and gzip, each alone with everything that it needs. Two imports of one app share the core, so that they weigh less together than their sum. Only what is imported is carried: one refrigerant, one unit, one edition of the rules.",
    table(["for", "import", "from", "kB"], rows, ["left", "left", "left", "right"]),
  ]);
}
