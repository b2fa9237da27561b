// Spanish of the rules in print for pressure and hold: what each is called, asks for and accepts.
import type { HoldRuleWord } from "../../pressure-test/hold-rules.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = Words<HoldRuleWord>;
const catalogue: Define<Said> = define;

/** The words of `holdRules`, in Spanish of the Americas. */
export const holdRules: CatalogueOf<Said> = /* @__PURE__ */ catalogue("es-419", {
  "pressure-test.rule.ashrae-15-field": "ASHRAE 15, prueba en obra",
  "pressure-test.rule-pressure.ashrae-15-field":
    "cada lado: al menos la menor entre la presión de diseño y la del alivio",
  "pressure-test.rule.ashrae-15-small-a1": "ASHRAE 15, sistemas pequeños A1",
  "pressure-test.rule-pressure.ashrae-15-small-a1":
    "su propia carga, saturada a 68 °F o más: A1, armado en obra, cobre de hasta 0.62 pulg",
  "pressure-test.rule.ashrae-15-standing": "ASHRAE 15-2022, presión mantenida",
  "pressure-test.rule-pressure.ashrae-15-standing": "como la prueba en obra de ASHRAE 15",
  "pressure-test.rule.mechanical-code-checklist": "lista del código mecánico",
  "pressure-test.rule-pressure.mechanical-code-checklist": "como en ASHRAE 15",
  "pressure-test.rule.imc": "Código Mecánico Internacional",
  "pressure-test.rule-pressure.imc":
    "como en ASHRAE 15; con más de 55 lb de carga, declaración de prueba firmada",
  "pressure-test.rule.asme-b31-5-pneumatic": "ASME B31.5, prueba neumática",
  "pressure-test.rule-pressure.asme-b31-5-pneumatic":
    "al menos 1.1 veces la presión de diseño; alivio para no pasar de 130 % de ella",
  "pressure-test.rule.en-378-2": "EN 378-2",
  "pressure-test.rule-pressure.en-378-2":
    "resistencia 1.1 PS (1.43 PS por componentes); hermeticidad, PS como máximo",
  "pressure-test.rule.iso-5149-2": "ISO 5149-2",
  "pressure-test.rule-pressure.iso-5149-2": "como en EN 378-2",
  "pressure-test.rule.guide-specification-piping": "especificación guía, tubería de refrigerante",
  "pressure-test.rule-pressure.guide-specification-piping":
    "10 psig con solución jabonosa; luego la presión de ASHRAE 15, 25 % más como máximo",
  "pressure-test.rule.guide-specification-equipment": "especificación guía, tubería y equipos",
  "pressure-test.rule-pressure.guide-specification-equipment":
    "300 psi en el lado de alta, 150 psi en el de baja",
  "pressure-test.rule.guide-specification-hermetic": "especificación guía, compresores herméticos",
  "pressure-test.rule-pressure.guide-specification-hermetic":
    "150 psig como máximo con compresores herméticos, salvo que la placa de datos diga otra cosa",
  "pressure-test.rule.split-manuals-r410a": "manuales de fabricantes, splits de R-410A",
  "pressure-test.rule-pressure.split-manuals-r410a":
    "0.3 MPa durante 3 min, 1.5 MPa de 3 a 5 min, luego de 3.73 a 4.3 MPa",
  "pressure-test.rule.city-code": "código municipal",
  "pressure-test.rule-pressure.city-code": "la presión de prueba del código",
  "pressure-test.rule.small-splits": "splits pequeños de alta presión",
  "pressure-test.rule-pressure.small-splits":
    "de 300 a 600 psig, nunca más que los límites de la placa de datos",
  "pressure-test.rule-accepts.proved-tight": "hermeticidad comprobada",
  "pressure-test.rule-accepts.no-drop": "sin caída",
  "pressure-test.rule-accepts.design-pressure":
    "hermético a la presión de diseño; prueba previa a 25 psig como máximo",
  "pressure-test.rule-accepts.corrected-no-drop": "sin caída tras corregir por temperatura",
  "pressure-test.rule-accepts.no-detectable-change": "sin cambio detectable",
  "pressure-test.rule-accepts.no-drop-overnight": "sin caída; toda la noche si es posible",
  "pressure-test.rule-standing.published": "publicada",
  "pressure-test.rule-standing.from-memory": "de memoria",
  "pressure-test.rule-standing.common-practice": "práctica común",
});
