// Spanish (of the Americas) of the closed words of a record and of a verdict, by the field that picks one of them.
import type { ChoiceWord } from "../../report/choices.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = Words<ChoiceWord>;
const catalogue: Define<Said> = define;

/** How a report says the words that a field picks from, in Spanish; the designation of a standard stays. */
export const choices: CatalogueOf<Said> = /* @__PURE__ */ catalogue("es-419", {
  "report.choice.fedAs.liquid": "líquido",
  "report.choice.fedAs.vapor": "vapor",

  "report.choice.compressor.inverter": "inverter",
  "report.choice.compressor.single-speed": "de velocidad fija",

  "report.choice.duty.both": "refrigeración y calefacción",
  "report.choice.duty.cooling": "refrigeración",
  "report.choice.duty.heating": "calefacción",

  "report.choice.expansion.evaporating-unit": "en la unidad que evapora",
  "report.choice.expansion.outdoor-unit": "en la unidad exterior",

  "report.choice.preChargedFor.each-run": "cada tramo",
  "report.choice.preChargedFor.sum": "todos los tramos juntos",

  "report.choice.shortLineRule.add-and-subtract": "añadir o retirar",
  "report.choice.shortLineRule.add-only": "solo añadir, tramo por tramo",
  "report.choice.shortLineRule.net-add-only": "solo añadir, en el total de los tramos",
  "report.choice.shortLineRule.not-stated": "no indicado en el manual",

  "report.choice.meteringDevice.electronic-valve": "válvula de expansión electrónica",
  "report.choice.meteringDevice.orifice": "orificio",
  "report.choice.meteringDevice.thermostatic-valve": "válvula de expansión termostática",

  "report.choice.material.low-permeation": "manguera de baja permeación",
  "report.choice.material.metal": "metal",
  "report.choice.material.rubber": "caucho",
  "report.choice.material.aluminum": "aluminio",
  "report.choice.material.copper": "cobre",

  "report.choice.isolation.hose-removed": "manguera retirada del sistema",
  "report.choice.isolation.isolation-valve": "válvula de aislamiento en el sistema",
  "report.choice.isolation.pump-valve": "válvula de la bomba",

  "report.choice.policy.guideSpec15182": "especificación guía (UFGS 15182)",
  "report.choice.policy.guideSpec15741N": "especificación guía (UFGS 15741N)",
  "report.choice.policy.splitManualA": "manual de un equipo split, criterio A",
  "report.choice.policy.splitManualB": "manual de un equipo split, criterio B",
  "report.choice.policy.closeControlManual": "instrucciones de una unidad de precisión",
  "report.choice.policy.multiSplitManualC": "manual de un multisplit, criterio C",
  "report.choice.policy.multiSplitManualD": "manual de un multisplit, criterio D",
  "report.choice.policy.distributorAdvice": "consejo de un distribuidor de repuestos",
  "report.choice.policy.ashrae15Memory": "ASHRAE 15-2022, de memoria",
  "report.choice.policy.commonPractice500": "práctica común, 500 micrones",
  "report.choice.policy.provenEarly500":
    "práctica común, 500 micrones, terminada al quedar demostrado",

  "report.choice.kind.brazed": "soldada",
  "report.choice.kind.coupling": "acople",
  "report.choice.kind.flare": "abocardada",
  "report.choice.kind.pressed": "prensada",
  "report.choice.kind.breaker": "interruptor termomagnético",
  "report.choice.kind.fuse": "fusible",
  "report.choice.kind.fuse or breaker": "fusible o interruptor termomagnético",
  "report.choice.kind.unit": "otra unidad",
  "report.choice.kind.other": "otra carga",
  "report.choice.kind.correction": "corrección",
  "report.choice.kind.rework": "trabajo rehecho",

  "report.choice.port.commonSuction": "succión común",
  "report.choice.port.liquid": "línea de líquido",
  "report.choice.port.vapor": "línea de gas",

  "report.choice.feeds.motor-compressor": "motocompresor",
  "report.choice.feeds.other": "otra carga",

  "report.choice.groundingMaterial.aluminum": "aluminio",
  "report.choice.groundingMaterial.copper": "cobre",

  "report.choice.cable.NM": "cable con cubierta no metálica",
  "report.choice.cable.other": "otro",

  "report.choice.conduit.PVC": "PVC",
  "report.choice.conduit.aluminum": "aluminio",
  "report.choice.conduit.steel": "acero",

  "report.choice.grouping.bunched": "agrupados",
  "report.choice.grouping.perforated tray": "bandeja perforada",
  "report.choice.grouping.single layer": "una capa",

  "report.choice.stranding.solid": "sólido",
  "report.choice.stranding.stranded": "cableado",

  "report.choice.occupancy.dwelling": "vivienda",
  "report.choice.occupancy.other": "otro",

  "report.choice.measuredAt.service": "acometida",
  "report.choice.measuredAt.unit": "unidad",

  "report.choice.state.load": "en marcha",
  "report.choice.state.rest": "en reposo",
  "report.choice.state.start": "arrancando",

  "report.choice.wall.aluminum": "tubo de aluminio",
  "report.choice.wall.copper": "tubo de cobre",
  "report.choice.wall.rigid": "rígida",

  "report.choice.end.between": "entre las unidades",
  "report.choice.end.indoor": "unidad interior",
  "report.choice.end.outdoor": "unidad exterior",

  "report.choice.place.ceiling": "techo",
  "report.choice.place.floor": "piso",
  "report.choice.place.wall": "pared",
  "report.choice.place.window": "ventana",

  "report.choice.serves.branch-box": "caja de derivación",
  "report.choice.serves.indoor-unit": "unidad interior",

  "report.choice.lengthIs.measured": "medida",
  "report.choice.lengthIs.nominal": "nominal, de un juego de tuberías de fábrica",
  "report.choice.outdoorUnit.above": "más alta que la interior",
  "report.choice.outdoorUnit.below": "más baja que la interior",
  "report.choice.outdoorUnit.level": "a la altura de la interior",

  "report.choice.rules.nfpa-70-2020": "NEC 2020 (NFPA 70)",
  "report.choice.rules.nfpa-70-2023": "NEC 2023 (NFPA 70)",
  "report.choice.rules.nfpa-70-2026": "NEC 2026 (NFPA 70)",
  "report.choice.rules.csa-c22.1-2024": "CEC 2024 (CSA C22.1)",
  "report.choice.rules.iec-60364": "IEC 60364",
  "report.choice.rules.bs-7671-2018": "BS 7671:2018",
  "report.choice.rules.as-nzs-3000-2018-australia": "AS/NZS 3000:2018 (Australia)",
  "report.choice.rules.as-nzs-3000-2018-new-zealand": "AS/NZS 3000:2018 (Nueva Zelanda)",
  "report.choice.rules.japan-interpretation": "Japón, interpretación de las normas técnicas",

  "report.choice.standard.ansi-c84.1-2020": "ANSI C84.1-2020",
  "report.choice.standard.iec-60038": "IEC 60038",
  "report.choice.standard.japan-article-38": "Japón, artículo 38 del reglamento",
  "report.choice.standard.esqcr-2002": "ESQCR 2002 (Reino Unido)",

  "report.choice.decidedBy.unrestricted": "carga permitida en cualquier local",
  "report.choice.decidedBy.m2": "máximo según la superficie (m2)",
  "report.choice.decidedBy.floor-area": "superficie del local",
  "report.choice.decidedBy.release-height-cap": "tope por altura de liberación",
  "report.choice.decidedBy.room-height-cap": "tope por altura del local",
  "report.choice.decidedBy.joined-area": "superficie de los locales unidos",
  "report.choice.decidedBy.openings": "aberturas",
  "report.choice.decidedBy.tightness": "hermeticidad de la unidad",
  "report.choice.decidedBy.circulated-area": "superficie con aire circulado",
  "report.choice.decidedBy.airflow": "caudal de aire",

  "report.choice.method.subcooling": "subenfriamiento",
  "report.choice.method.superheat": "sobrecalentamiento",
  "report.choice.method.weigh": "pesaje",
});
