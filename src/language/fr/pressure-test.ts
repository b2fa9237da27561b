// French (of Canada) of the nitrogen pressure test: sentences and words.
import type { PressureTestStatements, PressureTestWord } from "../../pressure-test/statements.ts";
import type { CatalogueOf, Define, Words } from "../define.ts";
import { defineFrench } from "./typeset.ts";

type Said = PressureTestStatements & Words<PressureTestWord>;
const catalogue: Define<Said> = defineFrench;

/** What `pressure-test` says, in French. */
export const pressureTest: CatalogueOf<Said> = /* @__PURE__ */ catalogue("fr-CA", {
  "pressure-test.within-limit":
    "La chute de pression, {drop} ± {uncertainty}, est dans la limite de {limit}.",
  "pressure-test.above-limit":
    "La chute de pression, {drop} ± {uncertainty}, dépasse la limite de {limit}.",
  "pressure-test.across-limit":
    "Non concluant : la chute est de {drop} ± {uncertainty} et la limite, de {limit}.",
  "pressure-test.leak-within-limit":
    "La limite de {limit} l’admet, mais une fuite est prouvée : {drop} ± {uncertainty}.",
  "pressure-test.limit-lowered":
    "La limite indiquée, {stated}, dépasse 1 % de la pression de remplissage, {pressure}. Évalué avec {limit}.",
  "pressure-test.leak-proven":
    "Fuite prouvée : la chute, {drop}, dépasse son incertitude, {uncertainty}.",
  "pressure-test.no-leak-above": "La chute de pression, s’il y en a une, est d’au plus {above}.",
  "pressure-test.unexplained-rise":
    "La pression est de {rise} ± {uncertainty} au-dessus de ce qu’explique la température. Du gaz est entré, ou le thermomètre trompe.",
  "pressure-test.no-limit-stated":
    "Aucune limite n’est donnée : l’essai ne peut pas être conforme.",
  "pressure-test.weather-alone":
    "La température seule fait varier la pression de {temperature}. La pression a varié de {change}.",
  "pressure-test.weather-and-barometer-alone":
    "La température seule fait varier la pression de {temperature}; le baromètre, de {barometer}. La pression a varié de {change}.",

  "pressure-test.hold-time-unknown": "Le temps entre les relevés n’est pas donné.",
  "pressure-test.short-hold":
    "Durée de maintien : {hold}; la plus courte publiée est de {shortest}.",
  "pressure-test.hold-below-manual": "Durée de maintien : {hold}; le manuel exige {required}.",
  "pressure-test.hold-below-step":
    "En {hold}, une fuite de 1 % de la pression de remplissage par heure ne déplace pas le manomètre d’un pas, {step}.",
  "pressure-test.gauge-without-error":
    "Le manomètre a été donné comme exact. Aucun manomètre ne l’est.",
  "pressure-test.thermometer-without-error":
    "Le thermomètre a été donné comme exact. Aucun thermomètre ne l’est.",
  "pressure-test.fill-below-manual": "Essayé à {pressure}; le manuel exige {required}.",
  "pressure-test.fill-below-service":
    "Essayé à {pressure} : au-dessous de {service}, la pression qu’atteint le frigorigène lui-même.",
  "pressure-test.above-marked":
    "La pression a atteint {pressure} : au-dessus de la plus basse pression indiquée, {marked}.",
  "pressure-test.pressure-still":
    "Le manomètre a à peine bougé, alors que la température et le baromètre seuls font varier la pression de {moved}.",
  "pressure-test.zones-swapped":
    "Dans le relevé à {elapsed}, les températures ont changé de place : de {from} à {to}, et l’inverse sur l’autre thermomètre.",
  "pressure-test.zones-swapped-at-end":
    "À la fin, les températures avaient changé de place : de {from} à {to}, et l’inverse sur l’autre thermomètre.",
  "pressure-test.log-misfit":
    "La dispersion des relevés est de {misfit} fois celle qu’expliquent les erreurs indiquées.",
  "pressure-test.last-reading-above-limit":
    "Le dernier relevé montre une chute de {drop} : au-dessus de la limite de {limit}.",
  "pressure-test.falls-faster":
    "La pression a chuté plus vite à la fin du maintien : {lost} de plus que n’explique le cours précédent.",
  "pressure-test.jump":
    "À {elapsed}, la pression a changé de {change}, plus que n’expliquent la température et les instruments.",

  "pressure-test.below-limit":
    "{fill} deviennent {warm} au plus chaud : dans la limite indiquée ({part}), {limit}.",
  "pressure-test.lowered-to-limit":
    "Arrêtez à {fill}. Au plus chaud, cela devient {warm} : la limite indiquée ({part}), {limit}.",

  "pressure-test.gauge-drift": "Le zéro du manomètre a bougé d’au plus ±{drift}.",
  "pressure-test.rigid-walls":
    "La tuyauterie a gardé son volume; la dilatation du cuivre compte comme incertitude.",
  "pressure-test.volume-exact": "Le volume indiqué est exact.",
  "pressure-test.fill-unchecked":
    "La pression de remplissage était celle qu’exigent le manuel et le frigorigène : ni l’un ni l’autre n’a été indiqué.",
  "pressure-test.barometer-unchanged": "Le baromètre a varié d’au plus ±{change} environ.",
  "pressure-test.gas-settled":
    "Le gaz s’était stabilisé après le remplissage avant le premier relevé.",
  "pressure-test.follows-gas":
    "Le thermomètre a suivi le gaz à ±{within} et {missed} de la variation de température près.",
  "pressure-test.gas-elsewhere-unknown":
    "Une partie du gaz peut être ailleurs : ±{within} et {missed} de la variation de température comptent comme incertitude.",
  "pressure-test.warm-from-fill":
    "Le premier relevé a été pris juste après le remplissage, le gaz encore chaud.",
  "pressure-test.all-limits-given":
    "Toutes les pressions indiquées de ce qui reste raccordé ont été données.",

  "pressure-test.smallest-leak":
    "Plus petite fuite décelable par cet essai : {smallest}. Un maintien de {hold} en décèlerait environ la moitié.",
  "pressure-test.smallest-drop-rate":
    "La plus petite chute que cet essai pouvait prouver est de {smallest} en {held}. Un maintien de {hold} prouverait environ la moitié de ce débit.",
  "pressure-test.smallest-drop": "Plus petite chute décelable par cet essai : {smallest}.",
  "pressure-test.no-margin":
    "Le plan ne laisse aucune marge pour l’erreur du manomètre ni pour une soupape de sûreté qui ouvre tôt. Arrêtez plus bas d’autant.",
  "pressure-test.water-volume":
    "Le volume en eau est poinçonné sur la bouteille. Les bouteilles se vendent selon le gaz qu’elles contiennent : 40 pi³ de gaz font environ 8 L d’eau.",
  "pressure-test.cylinder-cools":
    "Une bouteille qui se vide vite est froide et indique moins. Relisez-la une fois réchauffée.",
  "pressure-test.order-of-magnitude":
    "C’est un ordre de grandeur : la forme de la fuite décide de la loi qui vaut.",
  "pressure-test.liquid-leaks-more": "Du frigorigène liquide à la fuite perd plusieurs fois plus.",

  "pressure-test.state-limit":
    "Saisissez la chute que permet le manuel, au plus {largest} (1 % de la pression de remplissage).",
  "pressure-test.find-by-bubbles":
    "Localisez la fuite, {leak} en tout : mettez de l’eau savonneuse sur chaque raccord et observez chacun {watch}.",
  "pressure-test.find-by-foam":
    "Localisez la fuite, {leak} en tout : observez l’eau savonneuse sur chaque raccord {watch}, ou utilisez un gaz traceur et son détecteur.",
  "pressure-test.find-by-tracer":
    "Localisez la fuite, {leak} en tout. Elle est trop petite pour les bulles : utilisez un gaz traceur ininflammable et tenez son détecteur {watch} à chaque raccord.",
  "pressure-test.find-of-unknown-size":
    "Localisez la fuite : mettez de l’eau savonneuse sur chaque raccord et observez chacun {watch}. Si rien n’apparaît, utilisez un gaz traceur et son détecteur.",
  "pressure-test.repair-and-retest":
    "Laissez échapper l’azote, réparez la fuite et refaites l’essai.",
  "pressure-test.close-supply":
    "Débranchez l’alimentation d’azote, laissez les températures se stabiliser et refaites l’essai.",
  "pressure-test.read-at-first-temperature":
    "Relisez quand le gaz est à {temperature}, comme au départ.",
  "pressure-test.hold-longer": "Maintenez la pression encore {further} environ.",
  "pressure-test.hold-at-least": "Maintenez la pression au moins {hold} et notez les deux heures.",
  "pressure-test.state-gauge": "Saisissez l’exactitude et la résolution du manomètre.",
  "pressure-test.state-thermometer": "Saisissez l’exactitude et la résolution du thermomètre.",
  "pressure-test.fill-higher":
    "Refaites l’essai à {required} ou plus, si toutes les pressions indiquées le permettent.",
  "pressure-test.lower-pressure":
    "Baissez la pression au-dessous de {marked}. Consultez le fabricant avant d’utiliser l’appareil.",
  "pressure-test.check-thermometers":
    "Vérifiez à quel thermomètre appartient chaque température, et corrigez le relevé.",
  "pressure-test.open-to-system":
    "Ouvrez le robinet entre le manomètre et le système, libérez l’affichage figé, fixez le thermomètre à la tuyauterie et refaites l’essai.",
  "pressure-test.look-at-plot":
    "Cherchez sur le graphique une entrée de gaz, un robinet fermé, du soleil ou une ligne erronée. Évaluez le relevé à partir du dernier changement.",
  "pressure-test.read-again": "Relevez de nouveau la pression et la température maintenant.",
  "pressure-test.hold-again": "Cherchez ce qui a changé, puis recommencez le maintien.",
  "pressure-test.state-elsewhere":
    "Saisissez quelle part du gaz est loin du thermomètre (0 si aucune), ou mesurez là aussi.",
  "pressure-test.measure-elsewhere":
    "Mettez un second thermomètre là où se trouvent les autres {share} du gaz, ou saisissez de combien sa température a pu varier.",
  "pressure-test.state-since-fill":
    "Saisissez combien de temps après le remplissage le premier relevé a été pris. Si c’était moins de {settle}, laissez le gaz se stabiliser ce temps et prenez un nouveau premier relevé.",
  "pressure-test.settle-first":
    "Laissez le gaz se stabiliser {settle} après le remplissage, prenez un nouveau premier relevé et saisissez ce temps.",
  "pressure-test.state-follows-gas":
    "Mettez le thermomètre sur la tuyauterie, sous l’isolant, et saisissez de combien il peut s’écarter du gaz. Pour trancher, il faut ±{within} ou moins.",
  "pressure-test.reduce-uncertainty":
    "Prolonger l’essai ne tranchera pas. Réduisez la plus grande incertitude : {part}, {share}.",

  "pressure-test.part.gauge-reading": "lecture du manomètre",
  "pressure-test.part.gauge-drift": "dérive du manomètre",
  "pressure-test.part.gauge-error": "erreur du manomètre",
  "pressure-test.part.thermometer-reading": "lecture du thermomètre",
  "pressure-test.part.thermometer-error": "erreur du thermomètre",
  "pressure-test.part.gas-temperature": "température du gaz",
  "pressure-test.part.settling": "gaz encore chaud du remplissage",
  "pressure-test.part.barometer": "baromètre",
  "pressure-test.part.wall-expansion": "dilatation de la tuyauterie",
  "pressure-test.part.zone-volumes": "volumes des zones",
  "pressure-test.part.scatter": "dispersion des relevés",
  "pressure-test.marked.low side": "côté BP",
  "pressure-test.marked.high side": "côté HP",
  "pressure-test.marked.component": "composant",
  "pressure-test.marked.relief device": "soupape de sûreté",
  "pressure-test.cause.leak": "fuite",
  "pressure-test.cause.unexplained-rise": "remontée inexpliquée",

  "pressure-test.no-loss-not-shown":
    "Aucun instrument ne peut montrer que rien n’a été perdu. Saisissez une limite qu’il peut montrer.",
  "pressure-test.rate-needs-it": "La limite est un débit, ce qui exige cette donnée.",
  "pressure-test.station-pressure":
    "C’est la pression atmosphérique du lieu, d’après un baromètre ou l’altitude.",
  "pressure-test.zones-need-volumes":
    "Des zones à des températures différentes exigent leurs volumes ou leurs parts du gaz, dans le même ordre.",
  "pressure-test.gas-leaks-outward":
    "La pression à l’intérieur doit dépasser celle de l’extérieur.",
});
