// French (of Canada) of the supply: sentences and words.
import type {
  SupplyVoltageStatements,
  SupplyVoltageWord,
} from "../../supply-voltage/statements.ts";
import type { CatalogueOf, Define, Words } from "../define.ts";
import { defineFrench } from "./typeset.ts";

type Said = SupplyVoltageStatements & Words<SupplyVoltageWord>;
const catalogue: Define<Said> = defineFrench;

/** What `supply-voltage` says, in French. */
export const supplyVoltage: CatalogueOf<Said> = /* @__PURE__ */ catalogue("fr-CA", {
  "supply-voltage.within-nameplate": {
    by: "readings",
    one: "Tension {low} : dans la plage de l’appareil, de {minimum} à {maximum}.",
    other: "Tension de {low} à {high} : dans la plage de l’appareil, de {minimum} à {maximum}.",
  },
  "supply-voltage.would-have-failed":
    "Un relevé dépassant une limite de {beyond} aurait été non conforme.",
  "supply-voltage.board-at-risk":
    "Tension trop élevée : {high}, au-dessus de {ceiling}. Les cartes électroniques sont en danger.",
  "supply-voltage.no-voltage":
    "Pas de tension : {low}. Cela ne prouve pas que le circuit est hors tension.",
  "supply-voltage.phase-missing": "Une phase manque, ou l’une a été mesurée au neutre : {lines}.",
  "supply-voltage.leg-missing":
    "{low} est environ la moitié de {nominal} : une phase manque, ou la mesure a été faite au neutre.",
  "supply-voltage.uneven-to-ground":
    "Les phases sont inégales à la terre, {lines} : le neutre ou la terre peuvent être coupés.",
  "supply-voltage.plate-does-not-fit":
    "Un appareil pour {minimum} à {maximum} ne convient pas à une alimentation de {nominal}.",
  "supply-voltage.high-supply": "Tension trop élevée : {high}; maximum de l’appareil : {maximum}.",
  "supply-voltage.low-supply": "Tension trop basse : {low}; minimum de l’appareil : {minimum}.",
  "supply-voltage.sag-under-load":
    "Tension trop basse en charge seulement : {low}; minimum de l’appareil : {minimum}.",
  "supply-voltage.dip-not-marked":
    "Le relevé descend à {low}, sous le minimum de l’appareil, {minimum}. Il n’est pas indiqué si l’appareil démarrait.",
  "supply-voltage.meter-cannot-tell": {
    by: "readings",
    one: "Non concluant : {low} est près d’une limite de {minimum} à {maximum}.",
    other: "Non concluant : de {low} à {high} est près d’une limite de {minimum} à {maximum}.",
  },
  "supply-voltage.within-standard": {
    by: "readings",
    one: "Tension {low} : dans {range} de {standard}, de {minimum} à {maximum}.",
    other: "Tension de {low} à {high} : dans {range} de {standard}, de {minimum} à {maximum}.",
  },
  "supply-voltage.too-close-to-standard": {
    by: "readings",
    one: "Non concluant : {low} est près d’une limite de {range} de {standard}, de {minimum} à {maximum}.",
    other:
      "Non concluant : de {low} à {high} est près d’une limite de {range} de {standard}, de {minimum} à {maximum}.",
  },
  "supply-voltage.outside-standard": {
    by: "readings",
    one: "Tension {low} : hors de {range} de {standard}, de {minimum} à {maximum}.",
    other: "Tension de {low} à {high} : hors de {range} de {standard}, de {minimum} à {maximum}.",
  },
  "supply-voltage.outside-at-times": {
    by: "readings",
    one: "Tension {low} : parfois hors de {range} de {standard}, de {minimum} à {maximum}.",
    other:
      "Tension de {low} à {high} : parfois hors de {range} de {standard}, de {minimum} à {maximum}.",
  },
  "supply-voltage.standard-not-stated":
    "La plage que le distributeur d’électricité doit tenir pour {nominal} n’est pas donnée.",
  "supply-voltage.week-within":
    "{within} moyennes de dix minutes sur {means} sont dans ±10 %; hors : {outside10}. Hors de +10/−15 % : {outside15}.",
  "supply-voltage.week-outside":
    "Seulement {within} moyennes de dix minutes sur {means} sont dans ±10 %; hors : {outside10}. Hors de +10/−15 % : {outside15}.",
  "supply-voltage.week-so-far":
    "Jusqu’ici {within} moyennes de dix minutes sur {means} sont dans ±10 %; hors : {outside10}. Hors de +10/−15 % : {outside15}.",
  "supply-voltage.week-incomplete": "Il manque {missing} au relevé pour faire une semaine.",
  "supply-voltage.week-meter-cannot-tell":
    "L’erreur du voltmètre chevauche une limite de la semaine.",
  "supply-voltage.unbalance-within":
    "Déséquilibre de tension {unbalance}, dans la limite de {limit}; facteur de déclassement {factor}, enroulements {rise} plus chauds.",
  "supply-voltage.unbalance-above":
    "Déséquilibre de tension trop élevé : {unbalance}; limite {limit}.",
  "supply-voltage.unbalance-too-close":
    "Non concluant : déséquilibre de tension {unbalance}, limite {limit}.",
  "supply-voltage.unbalance-above-5-percent":
    "Déséquilibre de tension {unbalance} : aucun moteur ne peut tourner au-dessus de 5 %.",
  "supply-voltage.line-without-current":
    "Une phase ne porte pas de courant en charge : une phase est perdue.",
  "supply-voltage.current-unbalance-within":
    "Déséquilibre de courant {unbalance}, dans la limite de {limit}.",
  "supply-voltage.current-unbalance-above":
    "Déséquilibre de courant trop élevé : {unbalance}; limite {limit}.",
  "supply-voltage.full-load-enough":
    "À {current}, attendez {there} : au-dessus du minimum de l’appareil, {minimum}.",
  "supply-voltage.full-load-too-low":
    "À {current}, attendez {there} : au-dessous du minimum de l’appareil, {minimum}.",
  "supply-voltage.full-load-too-close":
    "À {current}, attendez {there} : trop près du minimum de l’appareil, {minimum}.",
  "supply-voltage.full-load-far-off":
    "À {current}, attendez {there}, au-dessous du minimum de l’appareil, {minimum}. Le relevé a été pris à moins de la moitié de ce courant.",
  "supply-voltage.full-load-impossible":
    "La baisse de tension ne laisse rien à {current}; minimum de l’appareil : {minimum}.",

  "supply-voltage.ten-percent":
    "La plaque signalétique n’indique pas de plage; ±10 % des tensions nominales ont servi.",
  "supply-voltage.exact-meter":
    "L’exactitude du voltmètre n’est pas donnée; les relevés sont supposés exacts.",
  "supply-voltage.moment-only": "Les relevés ne valent que pour leur moment.",
  "supply-voltage.no-sag":
    "Pas de relevé à la fois au repos et en charge; la baisse de tension n’est pas connue.",
  "supply-voltage.standard-assumed": "Norme utilisée pour {nominal} : {standard}.",
  "supply-voltage.judged-as":
    "{nominal} est ici une tension de plaque signalétique; l’alimentation est prise comme {as}.",
  "supply-voltage.no-range-at-unit":
    "Aucune plage à l’appareil dans {standard}; seule la plaque signalétique a servi.",
  "supply-voltage.unbalance-limit": "Limite du déséquilibre de tension : {limit}.",
  "supply-voltage.currents-not-judged":
    "Les courants sans état ne sont pas évalués. Marquez-les au repos ou en charge.",
  "supply-voltage.starts-found": {
    by: "count",
    one: "{count} démarrage a été trouvé dans le relevé par son courant.",
    other: "{count} démarrages ont été trouvés dans le relevé par leur courant.",
  },
  "supply-voltage.starts-unseen":
    "Le relevé a une mesure toutes les {interval} : la baisse d’un démarrage peut tomber entre deux.",

  "supply-voltage.start-dip": "Le démarrage abaisse l’alimentation à {dip}.",
  "supply-voltage.large-sag":
    "Une baisse de tension de {share} indique un conducteur sous-dimensionné ou un mauvais contact.",
  "supply-voltage.rise-under-load":
    "{load} en charge dépasse de plus de 5 % les {rest} au repos. Vérifiez quel relevé est lequel, et le neutre.",
  "supply-voltage.transformer-tap":
    "Si l’appareil a un transformateur de commande, réglez sa prise sur {near}.",
  "supply-voltage.narrow-plate": "Un appareil de {near} a peu de marge sur {nominal}.",
  "supply-voltage.limited-time": "Pour un temps limité seulement : {range}. Faites corriger.",
  "supply-voltage.drop-to-unit":
    "Comptez la chute de tension jusqu’à l’appareil : 3 % font {drop}.",
  "supply-voltage.derate": "Au-dessus de 1 % de déséquilibre, un moteur doit être déclassé.",
  "supply-voltage.uneven-supply":
    "Au-dessus de 3 % de déséquilibre à vide, avisez le distributeur d’électricité.",
  "supply-voltage.line-grounded":
    "Une phase est à la terre, comme dans un triangle mis à la terre par un sommet.",
  "supply-voltage.from-memory": "Cité de mémoire : {standard}. Vérifiez sa plage.",

  "supply-voltage.do-not-energize": "Ne mettez pas l’appareil sous tension.",
  "supply-voltage.find-missing-line": "Trouvez la phase manquante et faites-la réparer.",
  "supply-voltage.check-neutral": "Faites vérifier le neutre et la mise à la terre.",
  "supply-voltage.match-unit-and-supply":
    "Vérifiez la plaque signalétique et l’alimentation. Elles ne vont pas ensemble.",
  "supply-voltage.check-wiring":
    "Cherchez un conducteur sous-dimensionné ou un mauvais contact entre le branchement et l’appareil.",
  "supply-voltage.read-at-service": "Mesurez la tension aussi au branchement.",
  "supply-voltage.call-utility": "Appelez le distributeur d’électricité.",
  "supply-voltage.mark-starts": "Marquez les relevés pris pendant le démarrage de l’appareil.",
  "supply-voltage.measure-better": "Mesurez de nouveau avec un voltmètre de ±{needed} ou mieux.",
  "supply-voltage.log-near-limit":
    "Enregistrez la tension pendant une journée. Aucun voltmètre ne tranche pour une alimentation si près d’une limite.",
  "supply-voltage.measure-finer": "Mesurez de nouveau avec un voltmètre de résolution plus fine.",
  "supply-voltage.measure-at-full-load": "Mesurez de nouveau avec l’appareil à pleine charge.",
  "supply-voltage.state-standard":
    "Saisissez la norme de l’alimentation, ou la plage que promet le distributeur d’électricité.",
  "supply-voltage.log-longer":
    "Enregistrez encore {missing}, avec une mesure par minute ou plus souvent.",
  "supply-voltage.even-out-load":
    "Trouvez la charge inégale et répartissez les charges monophasées.",

  "supply-voltage.name.japan-article-38": "le règlement japonais (article 38)",
  "supply-voltage.name.stated-supply": "la compagnie d’électricité",
  "supply-voltage.name.only-range": "la plage",
  "supply-voltage.name.utilization-range": "la plage d’utilisation",
  "supply-voltage.name.range-a": "la plage A",
  "supply-voltage.name.range-b": "la plage B",
  "supply-voltage.readings.one": "un relevé",
  "supply-voltage.readings.several": "plusieurs relevés",
  "supply-voltage.cause.board-at-risk": "tension dangereusement élevée",
  "supply-voltage.cause.no-voltage": "tension absente",
  "supply-voltage.cause.leg-missing": "phase manquante",
  "supply-voltage.cause.phase-missing": "phase manquante",
  "supply-voltage.cause.uneven-to-ground": "phases inégales à la terre",
  "supply-voltage.cause.plate-does-not-fit": "appareil ne convenant pas à l’alimentation",
  "supply-voltage.cause.high-supply": "tension trop élevée",
  "supply-voltage.cause.low-supply": "tension trop basse",
  "supply-voltage.cause.sag-under-load": "baisse de tension en charge",
  "supply-voltage.cause.sag-at-full-load": "baisse de tension à pleine charge",
  "supply-voltage.cause.unbalance": "déséquilibre de tension",
  "supply-voltage.cause.current-unbalance": "déséquilibre de courant",
  "supply-voltage.cause.outside-standard": "alimentation hors de sa plage",

  "supply-voltage.times-in-order":
    "Entrez l’heure de chaque lecture, dans l’ordre des mesures, ou d’aucune.",
  "supply-voltage.state-connection": "Saisissez la tension du raccordement effectué.",
  "supply-voltage.do-not-run-motor":
    "Ne faites pas tourner un moteur au-dessus de 5 % de déséquilibre.",
  "supply-voltage.line-to-neutral":
    "Cela ressemble à une mesure entre phase et neutre. Mesurez entre phases.",
});
