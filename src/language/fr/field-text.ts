// French (of Canada) of what is said of a typed text: what is wanted, and what to do about it.
import type { FieldTextStatements } from "../../read-quantity/statements.ts";
import type { CatalogueOf, Define } from "../define.ts";
import { defineFrench } from "./typeset.ts";

const catalogue: Define<FieldTextStatements> = defineFrench;

/** What `read-quantity` and `field-text` say of a text that they refuse, in French. */
export const fieldText: CatalogueOf<FieldTextStatements> = /* @__PURE__ */ catalogue("fr-CA", {
  "field-text.one-number": "Saisissez un nombre avec son unité.",
  "field-text.expression": "Saisissez des nombres avec leurs unités, + − × ÷ et des parenthèses.",
  "field-text.number-and-unit": "Saisissez un nombre et une unité : {symbols:or}.",
  "field-text.unit": "Saisissez une unité : {symbols:or}.",
  "field-text.unit-of-kind": "Saisissez une unité de ce type ({kind}) : {symbols:or}.",
  "field-text.number-with-unit": "Saisissez un nombre avec son unité.",
  "field-text.number-before-unit": "Saisissez un nombre avant l’unité.",
  "field-text.number-format":
    "Saisissez un nombre tel que {sample}. Le séparateur décimal est « {mark} ».",
  "field-text.operator": "Saisissez un opérateur entre les deux : + − × ÷.",
  "field-text.whole-number": "Saisissez un nombre entier avant une unité plus petite.",
  "field-text.less-than": "Saisissez moins de {limit} après {unit}.",
  "field-text.joined-or-subtracted": "Saisissez {joined} ou {subtracted}.",
  "field-text.one-decimal": "Saisissez une seule valeur, avec décimales.",
  "field-text.mixed-number":
    "Saisissez un nombre fractionnaire avec une espace, ou un signe moins avec des espaces.",
  "field-text.small-fraction":
    "Saisissez un nombre entier et une fraction inférieure à 1, comme 1 1/4.",
  "field-text.divisor": "Saisissez un diviseur autre que 0.",
  "field-text.shorter": "Saisissez au plus {most} caractères.",
  "field-text.at-least": "Saisissez {limit} ou plus.",
  "field-text.smaller": "Saisissez un nombre plus petit.",
  "field-text.one-unit": "Saisissez une seule unité. La parenthèse a la sienne.",
  "field-text.difference": "Saisissez une différence, comme {example}.",
  "field-text.difference-of": "Saisissez une valeur de ce type : {kind}.",
  "field-text.number-or-difference": "Saisissez un nombre ou une différence.",
  "field-text.known-product": "Saisissez deux grandeurs dont le métier utilise le produit.",
  "field-text.known-quotient": "Saisissez deux grandeurs dont le métier utilise le quotient.",
  "field-text.fraction-in-parentheses": "Mettez la fraction entre parenthèses.",
  "field-text.number-after-sign": "Saisissez un nombre après le signe.",
  "field-text.fewer-parentheses": "Imbriquez au plus {most} niveaux de parenthèses.",
  "field-text.opened-parenthesis": "Ouvrez d’abord la parenthèse.",
  "field-text.closing-parenthesis": "Fermez la parenthèse.",

  "field-text.digits-after-mark":
    "Saisissez les chiffres après le séparateur décimal, ou retirez-le.",
  "field-text.too-large": "Le nombre est trop grand.",
  "field-text.which-mark":
    "« {mark} » est-il un séparateur décimal ou de milliers? Saisissez {readings:or}.",
  "field-text.feet-or-thousands":
    "Le signe pourrait indiquer des pieds. N’écrivez pas de séparateurs de milliers.",
  "field-text.vacuum":
    "Saisissez un vide comme pression manométrique négative, -20 inHg (g), ou comme pression absolue, 500 microns.",
  "field-text.no-functions": "Les fonctions ne sont pas admises ici.",
  "field-text.capitals": "Les majuscules comptent ici. Est-ce {spelling}?",
  "field-text.slash-two-values":
    "Une barre oblique peut nommer deux valeurs, comme 208/230 V sur une plaque signalétique.",
  "field-text.hyphen-two-ways":
    "Avec un trait d’union, ce pourrait être une somme ou une différence.",
  "field-text.dash-two-ways":
    "Un trait entre {large} et {small} pourrait additionner ou soustraire. Utilisez une espace, ou un signe moins avec des espaces.",
  "field-text.write-plus": "Saisissez + entre les deux pour une somme.",
  "field-text.write-times": "Saisissez × pour multiplier.",
  "field-text.no-spaces": "Ne laissez pas d’espaces dans un nombre.",
  "field-text.which-zero": "Manométrique ou absolue?",
  "field-text.which-zero-of": "Manométrique ({gauge}) ou absolue ({absolute})?",
  "field-text.which-scale": "°F ou °C?",
  "field-text.is-absolute": "C’est une pression absolue. Saisissez le relevé du manomètre.",
  "field-text.is-gauge": "C’est une pression manométrique. Saisissez la pression absolue.",
  "field-text.given-kind": "Le texte donne une autre grandeur : {kind}.",
  "field-text.points-do-not-add": "Deux valeurs de ce type ne s’additionnent pas : {kind}.",
  "field-text.added-to": "Elle s’ajoute à une valeur de ce type : {kind}.",
  "field-text.taken-from": "Elle se soustrait d’une valeur de ce type : {kind}.",
  "field-text.points-do-not-scale":
    "Une valeur de ce type ne se multiplie ni ne se divise : {kind}.",
  "field-text.no-product": "Le métier n’utilise pas {first} × {second}.",
  "field-text.no-quotient": "Le métier n’utilise pas {first} ÷ {second}.",
  "field-text.number-over-quantity":
    "Un nombre seul ne se divise pas par une grandeur. Mettez la fraction entre parenthèses.",
  "field-text.each-needs-unit":
    "Chaque nombre d’une somme exige une unité. 1-1/4 sans espaces est un nombre fractionnaire.",
  "field-text.reading-less-reading":
    "Un relevé moins un relevé donne une autre grandeur : {given}. Exigé : {wanted}.",
  "field-text.readings-or-differences":
    "Sont-ce des relevés ou des différences? La réponse change.",
  "field-text.fraction-two-ways": "Diviser par une fraction a deux sens.",
});
