// English of the rules in print for pressure and hold: what each is called, asks for and accepts.
import type { HoldRuleWord } from "../../pressure-test/hold-rules.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = Words<HoldRuleWord>;
const catalogue: Define<Said> = define;

/** The words of `holdRules`, in American English. */
export const holdRules: CatalogueOf<Said> = /* @__PURE__ */ catalogue("en-US", {
  "pressure-test.rule.ashrae-15-field": "ASHRAE 15, field test",
  "pressure-test.rule-pressure.ashrae-15-field":
    "each side: at least the lower of design pressure and relief setting",
  "pressure-test.rule.ashrae-15-small-a1": "ASHRAE 15, small A1 systems",
  "pressure-test.rule-pressure.ashrae-15-small-a1":
    "its own charge, saturated at 68 °F or more: A1, built on site, copper up to 0.62 in outside",
  "pressure-test.rule.ashrae-15-standing": "ASHRAE 15-2022, standing pressure",
  "pressure-test.rule-pressure.ashrae-15-standing": "as for the ASHRAE 15 field test",
  "pressure-test.rule.mechanical-code-checklist": "mechanical code checklist",
  "pressure-test.rule-pressure.mechanical-code-checklist": "as for ASHRAE 15",
  "pressure-test.rule.imc": "International Mechanical Code",
  "pressure-test.rule-pressure.imc":
    "as for ASHRAE 15; above 55 lb of charge with a signed declaration of test",
  "pressure-test.rule.asme-b31-5-pneumatic": "ASME B31.5, pneumatic test",
  "pressure-test.rule-pressure.asme-b31-5-pneumatic":
    "at least 1.1 times the design pressure; relief so nothing exceeds 130 % of it",
  "pressure-test.rule.en-378-2": "EN 378-2",
  "pressure-test.rule-pressure.en-378-2":
    "strength 1.1 PS (1.43 PS by the component route); tightness at most PS",
  "pressure-test.rule.iso-5149-2": "ISO 5149-2",
  "pressure-test.rule-pressure.iso-5149-2": "as for EN 378-2",
  "pressure-test.rule.guide-specification-piping": "guide specification, refrigerant piping",
  "pressure-test.rule-pressure.guide-specification-piping":
    "10 psig with bubble solution, then ASHRAE 15 pressure, at most 25 % above",
  "pressure-test.rule.guide-specification-equipment": "guide specification, piping and equipment",
  "pressure-test.rule-pressure.guide-specification-equipment":
    "300 psi high side, 150 psi low side",
  "pressure-test.rule.guide-specification-hermetic": "guide specification, hermetic compressors",
  "pressure-test.rule-pressure.guide-specification-hermetic":
    "at most 150 psig on hermetic compressors unless the nameplate says otherwise",
  "pressure-test.rule.split-manuals-r410a": "manufacturers’ manuals, R-410A splits",
  "pressure-test.rule-pressure.split-manuals-r410a":
    "0.3 MPa for 3 min, 1.5 MPa for 3 to 5 min, then 3.73 to 4.3 MPa",
  "pressure-test.rule.city-code": "city code",
  "pressure-test.rule-pressure.city-code": "the code’s own test pressure",
  "pressure-test.rule.small-splits": "small high-pressure splits",
  "pressure-test.rule-pressure.small-splits": "300 to 600 psig, never above the nameplate limits",
  "pressure-test.rule-accepts.proved-tight": "proved tight",
  "pressure-test.rule-accepts.no-drop": "no drop",
  "pressure-test.rule-accepts.design-pressure":
    "tight at design pressure; preliminary test at most 25 psig",
  "pressure-test.rule-accepts.corrected-no-drop": "no drop after correction for temperature",
  "pressure-test.rule-accepts.no-detectable-change": "no detectable change",
  "pressure-test.rule-accepts.no-drop-overnight": "no drop; overnight when possible",
  "pressure-test.rule-standing.published": "published",
  "pressure-test.rule-standing.from-memory": "from memory",
  "pressure-test.rule-standing.common-practice": "common practice",
});
