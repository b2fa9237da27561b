// Spanish (of the Americas) of what all verdicts share: outcomes, kinds of cautions, the dangers of the trade.
import type { Outcome } from "../../assessment/assessment.ts";
import type { CautionKind } from "../../assessment/caution.ts";
import type { SafetyStatements } from "../../assessment/safety.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = SafetyStatements &
  Words<`assessment.outcome.${Outcome}` | `assessment.caution.${CautionKind}`>;
const catalogue: Define<Said> = define;

/** What every verdict may say, in Spanish. */
export const assessment: CatalogueOf<Said> = /* @__PURE__ */ catalogue("es-419", {
  "safety.others-govern":
    "Prevalecen la placa de datos, las instrucciones del fabricante, el código local y la práctica autorizada.",
  "safety.dry-nitrogen-only":
    "Use solo nitrógeno seco. Nunca oxígeno, aire comprimido ni gas inflamable: explotan con el aceite.",
  "safety.regulator-and-relief":
    "Alimente el nitrógeno con un regulador y una válvula de alivio ajustada por debajo de la presión marcada más baja. Nunca directamente del cilindro.",
  "safety.raise-in-stages": "Suba la presión por etapas y mantenga a las personas alejadas.",
  "safety.lowest-rating":
    "No supere nunca la presión marcada más baja. Aísle lo que no admite la prueba; el lado de baja puede admitir menos.",
  "safety.nitrogen-suffocates":
    "El nitrógeno desplaza el aire y puede asfixiar. Libérelo al exterior.",
  "safety.open-under-pressure":
    "Nunca afloje, corte ni suelde nada bajo presión. Recupere antes el refrigerante o libere el nitrógeno.",
  "safety.refrigerant-contact":
    "El refrigerante líquido congela la piel y los ojos. Use guantes y gafas, también al soltar una manguera.",
  "safety.flammable-refrigerant":
    "Con un refrigerante inflamable: elimine las fuentes de ignición, ventile, use un detector de fugas (alarma al 25 % del LII o menos) y herramientas aptas, y purgue con nitrógeno antes de cualquier llama.",
  "safety.toxic-refrigerant": "Refrigerante tóxico: use protección respiratoria.",
  "safety.refrigerant-suffocates":
    "El refrigerante desplaza el aire y puede asfixiar, sobre todo en lugares bajos y cerrados. Ventile.",
  "safety.charge-tight-system": "Cargue por peso, y nunca un sistema con fugas o sin probar.",
  "safety.refrigerant-air-mixture":
    "Nunca pruebe a presión con refrigerante y aire. Hasta un refrigerante A1 puede arder en esa mezcla.",
  "safety.compressor-in-vacuum": "Nunca haga funcionar un compresor en vacío.",
  "safety.line-voltage":
    "El voltaje puede matar. Corte la energía, bloquee y compruebe la ausencia de voltaje; los capacitores del inverter siguen cargados. Solo electricistas con licencia.",
  "safety.meter-category":
    "Mida con un multímetro y puntas de categoría III (IV en la acometida), comprobados antes y después en una fuente con voltaje conocido.",
  "safety.running-unit":
    "La unidad está en marcha: aléjese de terminales con voltaje y ventiladores.",
  "safety.work-at-height": "Trabajo en altura: asegúrese usted, la escalera y la carga.",

  "assessment.outcome.pass": "CUMPLE",
  "assessment.outcome.fail": "NO CUMPLE",
  "assessment.outcome.inconclusive": "NO CONCLUYENTE",
  "assessment.caution.finding": "Hallazgo",
  "assessment.caution.danger": "PELIGRO",
  "assessment.caution.governing": "Prevalece",
});
