// French of the rules in print for pressure and hold: what each is called, asks for and accepts.
import type { HoldRuleWord } from "../../pressure-test/hold-rules.ts";
import type { CatalogueOf, Define, Words } from "../define.ts";
import { defineFrench } from "./typeset.ts";

type Said = Words<HoldRuleWord>;
const catalogue: Define<Said> = defineFrench;

/** The words of `holdRules`, in Canadian French. */
export const holdRules: CatalogueOf<Said> = /* @__PURE__ */ catalogue("fr-CA", {
  "pressure-test.rule.ashrae-15-field": "ASHRAE 15, essai au chantier",
  "pressure-test.rule-pressure.ashrae-15-field":
    "chaque côté : au moins la plus basse de la pression de calcul et du tarage de décharge",
  "pressure-test.rule.ashrae-15-small-a1": "ASHRAE 15, petits systèmes A1",
  "pressure-test.rule-pressure.ashrae-15-small-a1":
    "sa propre charge, saturée à 68 °F ou plus : A1, monté au chantier, cuivre jusqu’à 0,62 po",
  "pressure-test.rule.ashrae-15-standing": "ASHRAE 15-2022, pression maintenue",
  "pressure-test.rule-pressure.ashrae-15-standing": "comme l’essai au chantier d’ASHRAE 15",
  "pressure-test.rule.mechanical-code-checklist": "liste du code de mécanique",
  "pressure-test.rule-pressure.mechanical-code-checklist": "comme ASHRAE 15",
  "pressure-test.rule.imc": "Code international de mécanique",
  "pressure-test.rule-pressure.imc":
    "comme ASHRAE 15; au-dessus de 55 lb de charge, déclaration d’essai signée",
  "pressure-test.rule.asme-b31-5-pneumatic": "ASME B31.5, essai pneumatique",
  "pressure-test.rule-pressure.asme-b31-5-pneumatic":
    "au moins 1,1 fois la pression de calcul; décharge pour ne pas dépasser 130 %",
  "pressure-test.rule.en-378-2": "EN 378-2",
  "pressure-test.rule-pressure.en-378-2":
    "résistance 1,1 PS (1,43 PS par composants); étanchéité, au plus PS",
  "pressure-test.rule.iso-5149-2": "ISO 5149-2",
  "pressure-test.rule-pressure.iso-5149-2": "comme EN 378-2",
  "pressure-test.rule.guide-specification-piping": "devis type, tuyauterie frigorifique",
  "pressure-test.rule-pressure.guide-specification-piping":
    "10 psig avec solution savonneuse, puis la pression d’ASHRAE 15, au plus 25 % de plus",
  "pressure-test.rule.guide-specification-equipment": "devis type, tuyauterie et équipement",
  "pressure-test.rule-pressure.guide-specification-equipment":
    "300 psi du côté haute pression, 150 psi du côté basse pression",
  "pressure-test.rule.guide-specification-hermetic": "devis type, compresseurs hermétiques",
  "pressure-test.rule-pressure.guide-specification-hermetic":
    "au plus 150 psig avec des compresseurs hermétiques, sauf si la plaque signalétique dit autre chose",
  "pressure-test.rule.split-manuals-r410a": "notices de fabricants, splits R-410A",
  "pressure-test.rule-pressure.split-manuals-r410a":
    "0,3 MPa pendant 3 min, 1,5 MPa de 3 à 5 min, puis de 3,73 à 4,3 MPa",
  "pressure-test.rule.city-code": "règlement municipal",
  "pressure-test.rule-pressure.city-code": "la pression d’essai du règlement",
  "pressure-test.rule.small-splits": "petits splits à haute pression",
  "pressure-test.rule-pressure.small-splits":
    "de 300 à 600 psig, jamais plus que les limites de la plaque signalétique",
  "pressure-test.rule-accepts.proved-tight": "étanchéité prouvée",
  "pressure-test.rule-accepts.no-drop": "aucune chute",
  "pressure-test.rule-accepts.design-pressure":
    "étanche à la pression de calcul; essai préalable à 25 psig au plus",
  "pressure-test.rule-accepts.corrected-no-drop": "aucune chute après correction de température",
  "pressure-test.rule-accepts.no-detectable-change": "aucun changement décelable",
  "pressure-test.rule-accepts.no-drop-overnight": "aucune chute; toute la nuit si possible",
  "pressure-test.rule-standing.published": "publiée",
  "pressure-test.rule-standing.from-memory": "de mémoire",
  "pressure-test.rule-standing.common-practice": "pratique courante",
});
