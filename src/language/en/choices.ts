// English of the closed words of a record and of a verdict, by the field that picks one of them.
import type { ChoiceWord } from "../../report/choices.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = Words<ChoiceWord>;
const catalogue: Define<Said> = define;

/** How a report says the words that a field picks from, in American English; the designation of a standard stays. */
export const choices: CatalogueOf<Said> = /* @__PURE__ */ catalogue("en-US", {
  "report.choice.fedAs.liquid": "liquid",
  "report.choice.fedAs.vapor": "vapor",

  "report.choice.compressor.inverter": "inverter",
  "report.choice.compressor.single-speed": "single-speed",

  "report.choice.duty.both": "cooling and heating",
  "report.choice.duty.cooling": "cooling",
  "report.choice.duty.heating": "heating",

  "report.choice.expansion.evaporating-unit": "in the unit that evaporates",
  "report.choice.expansion.outdoor-unit": "in the outdoor unit",

  "report.choice.preChargedFor.each-run": "each run",
  "report.choice.preChargedFor.sum": "all runs together",

  "report.choice.shortLineRule.add-and-subtract": "add or remove",
  "report.choice.shortLineRule.add-only": "add only, run by run",
  "report.choice.shortLineRule.net-add-only": "add only, over all runs",
  "report.choice.shortLineRule.not-stated": "not stated in the manual",

  "report.choice.meteringDevice.electronic-valve": "electronic expansion valve",
  "report.choice.meteringDevice.orifice": "orifice",
  "report.choice.meteringDevice.thermostatic-valve": "thermostatic expansion valve",

  "report.choice.material.low-permeation": "low-permeation hose",
  "report.choice.material.metal": "metal hose",
  "report.choice.material.rubber": "rubber hose",
  "report.choice.material.aluminum": "aluminum",
  "report.choice.material.copper": "copper",

  "report.choice.isolation.hose-removed": "hose removed at the system",
  "report.choice.isolation.isolation-valve": "isolation valve at the system",
  "report.choice.isolation.pump-valve": "valve at the pump",

  "report.choice.policy.guideSpec15182": "guide specification (UFGS 15182)",
  "report.choice.policy.guideSpec15741N": "guide specification (UFGS 15741N)",
  "report.choice.policy.splitManualA": "manual of a split (A)",
  "report.choice.policy.splitManualB": "manual of a split (B)",
  "report.choice.policy.closeControlManual": "manual of a close-control unit",
  "report.choice.policy.multiSplitManualC": "manual of a multi-split (C)",
  "report.choice.policy.multiSplitManualD": "manual of a multi-split (D)",
  "report.choice.policy.distributorAdvice": "advice of a parts distributor",
  "report.choice.policy.ashrae15Memory": "ASHRAE 15-2022, from memory",
  "report.choice.policy.commonPractice500": "common practice, 500 microns",
  "report.choice.policy.provenEarly500": "common practice, 500 microns, ended once proven",

  "report.choice.kind.brazed": "brazed",
  "report.choice.kind.coupling": "coupling",
  "report.choice.kind.flare": "flare",
  "report.choice.kind.pressed": "pressed",
  "report.choice.kind.breaker": "breaker",
  "report.choice.kind.fuse": "fuse",
  "report.choice.kind.fuse or breaker": "fuse or breaker",
  "report.choice.kind.unit": "unit of the same kind",
  "report.choice.kind.other": "other load",
  "report.choice.kind.correction": "correction",
  "report.choice.kind.rework": "rework",

  "report.choice.port.commonSuction": "common suction",
  "report.choice.port.liquid": "liquid line",
  "report.choice.port.vapor": "vapor line",

  "report.choice.feeds.motor-compressor": "motor-compressor",
  "report.choice.feeds.other": "other load",

  "report.choice.groundingMaterial.aluminum": "aluminum",
  "report.choice.groundingMaterial.copper": "copper",

  "report.choice.cable.NM": "nonmetallic-sheathed cable",
  "report.choice.cable.other": "other",

  "report.choice.conduit.PVC": "PVC conduit",
  "report.choice.conduit.aluminum": "aluminum conduit",
  "report.choice.conduit.steel": "steel conduit",

  "report.choice.grouping.bunched": "bunched",
  "report.choice.grouping.perforated tray": "perforated tray",
  "report.choice.grouping.single layer": "single layer",

  "report.choice.stranding.solid": "solid",
  "report.choice.stranding.stranded": "stranded",

  "report.choice.occupancy.dwelling": "dwelling",
  "report.choice.occupancy.other": "other",

  "report.choice.measuredAt.service": "service",
  "report.choice.measuredAt.unit": "unit",

  "report.choice.state.load": "running",
  "report.choice.state.rest": "at rest",
  "report.choice.state.start": "starting",

  "report.choice.wall.aluminum": "aluminum tube",
  "report.choice.wall.copper": "copper tube",
  "report.choice.wall.rigid": "rigid",

  "report.choice.end.between": "between the units",
  "report.choice.end.indoor": "indoor unit",
  "report.choice.end.outdoor": "outdoor unit",

  "report.choice.place.ceiling": "ceiling",
  "report.choice.place.floor": "floor",
  "report.choice.place.wall": "wall",
  "report.choice.place.window": "window",

  "report.choice.serves.branch-box": "branch box",
  "report.choice.serves.indoor-unit": "indoor unit",

  "report.choice.lengthIs.measured": "measured",
  "report.choice.lengthIs.nominal": "nominal, of a factory-made line set",
  "report.choice.outdoorUnit.above": "above the indoor unit",
  "report.choice.outdoorUnit.below": "below the indoor unit",
  "report.choice.outdoorUnit.level": "level with the indoor unit",

  "report.choice.rules.nfpa-70-2020": "NEC 2020 (NFPA 70)",
  "report.choice.rules.nfpa-70-2023": "NEC 2023 (NFPA 70)",
  "report.choice.rules.nfpa-70-2026": "NEC 2026 (NFPA 70)",
  "report.choice.rules.csa-c22.1-2024": "CEC 2024 (CSA C22.1)",
  "report.choice.rules.iec-60364": "IEC 60364",
  "report.choice.rules.bs-7671-2018": "BS 7671:2018",
  "report.choice.rules.as-nzs-3000-2018-australia": "AS/NZS 3000:2018 (Australia)",
  "report.choice.rules.as-nzs-3000-2018-new-zealand": "AS/NZS 3000:2018 (New Zealand)",
  "report.choice.rules.japan-interpretation": "Japan, Interpretation of the Technical Standards",

  "report.choice.standard.ansi-c84.1-2020": "ANSI C84.1-2020",
  "report.choice.standard.iec-60038": "IEC 60038",
  "report.choice.standard.japan-article-38": "Japan, article 38 of the ordinance",
  "report.choice.standard.esqcr-2002": "ESQCR 2002 (United Kingdom)",

  "report.choice.decidedBy.unrestricted": "charge allowed in any room",
  "report.choice.decidedBy.m2": "most by floor area (m2)",
  "report.choice.decidedBy.floor-area": "floor area",
  "report.choice.decidedBy.release-height-cap": "cap by release height",
  "report.choice.decidedBy.room-height-cap": "cap by room height",
  "report.choice.decidedBy.joined-area": "area of the joined rooms",
  "report.choice.decidedBy.openings": "openings",
  "report.choice.decidedBy.tightness": "tightness of the unit",
  "report.choice.decidedBy.circulated-area": "area with circulated air",
  "report.choice.decidedBy.airflow": "airflow",

  "report.choice.method.subcooling": "subcooling",
  "report.choice.method.superheat": "superheat",
  "report.choice.method.weigh": "weighing",
});
