// Spanish (of the Americas) of what all verdicts share: outcomes, kinds of cautions, the dangers of the trade.
import type { Outcome } from "../../assessment/assessment.ts";
import type { CautionKind } from "../../assessment/caution.ts";
import type { SafetyStatements } from "../../assessment/safety.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

/** What a pressure test says of them; the others follow with their modules. */
type Dangers =
  | "safety.others-govern"
  | "safety.dry-nitrogen-only"
  | "safety.regulator-and-relief"
  | "safety.raise-in-stages"
  | "safety.lowest-rating"
  | "safety.nitrogen-suffocates"
  | "safety.open-under-pressure";
type Said = Pick<SafetyStatements, Dangers> &
  Words<`assessment.outcome.${Outcome}` | `assessment.caution.${CautionKind}`>;
const catalogue: Define<Said> = define;

/** What a verdict on a pressure test says besides its own sentences, in Spanish. */
export const assessment: CatalogueOf<Said> = /* @__PURE__ */ catalogue("es", {
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

  "assessment.outcome.pass": "CUMPLE",
  "assessment.outcome.fail": "NO CUMPLE",
  "assessment.outcome.inconclusive": "NO CONCLUYENTE",
  "assessment.caution.finding": "Hallazgo",
  "assessment.caution.danger": "PELIGRO",
  "assessment.caution.governing": "Prevalece",
});
