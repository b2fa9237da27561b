// French of what to do next about an installation.
import type { CommissioningActions } from "../../commissioning/statements.ts";
import type { CatalogueOf, Define } from "../define.ts";
import { defineFrench } from "./typeset.ts";

const catalogue: Define<CommissioningActions> = defineFrench;

/** What to do next, in Canadian French. */
export const commissioningActions: CatalogueOf<CommissioningActions> = /* @__PURE__ */ catalogue(
  "fr-CA",
  {
    "commissioning.record-fields": "Notez : {fields}.",
    "commissioning.correct-field": "Corrigez la valeur : {field}.",
    "commissioning.withdraw-waiver": "Retirez la dispense, ou corrigez le dossier.",
    "commissioning.correct-construction":
      "Corrigez la construction, ou retirez ce qui n’en relève pas.",
    "commissioning.cover-run": "Faites-le aussi pour le tracé {run} et notez-le : {step}.",
    "commissioning.state-times": {
      by: "hold",
      "open-valves": "Notez la date et l’heure des essais et de l’ouverture des robinets.",
      "add-charge": "Notez la date et l’heure des essais et de la charge.",
      other:
        "Notez la date et l’heure de l’inspection du circuit, des relevés d’alimentation et du démarrage.",
    },
    "commissioning.shorten-runs": "Raccourcissez les tracés à {most} ou moins au total.",
    "commissioning.connect-less":
      "Raccordez des unités intérieures de {limit} ou moins au total, comme le permet le manuel.",
    "commissioning.connect-more":
      "Raccordez des unités intérieures de {limit} ou plus au total, comme l’exige le manuel.",
    "commissioning.bring-indoor-units-closer":
      "Montez les unités intérieures à {most} de hauteur l’une de l’autre au plus.",
    "commissioning.measure-runs-better": "Mesurez les tracés plus exactement.",
    "commissioning.recover-and-charge-anew":
      "Récupérez la charge et chargez-en une nouvelle à la balance, en liquide.",
    "commissioning.read-air-again":
      "Relevez de nouveau l’air soufflé et l’air repris et corrigez le dossier.",
    "commissioning.run-at-full-speed":
      "Faites tourner l’appareil à pleine vitesse, ou en mode d’essai du manuel, 15 minutes, puis refaites le relevé.",
    "commissioning.see-filter-and-fan":
      "Vérifiez le filtre, la vitesse du ventilateur et les portes, puis refaites le relevé.",
    "commissioning.state-air-difference": "Notez la plage du manuel pour l’écart de l’air.",
    "commissioning.stop-and-find-current":
      "Arrêtez l’appareil et cherchez pourquoi le courant est trop élevé.",
    "commissioning.read-current-again":
      "Relevez de nouveau le courant à pleine vitesse et vérifiez la plaque signalétique.",
    "commissioning.pass-rules": "Évaluez de nouveau le dossier avec l’ensemble de règles {rules}.",
    "commissioning.put-right": {
      by: "hold",
      "open-valves":
        "Cherchez pourquoi les robinets ont été ouverts. Si la date est juste, récupérez le frigorigène, puis refaites l’essai et le vide.",
      "add-charge":
        "Cherchez pourquoi du frigorigène a été ajouté. Si la date est juste, récupérez-le, puis refaites l’essai et le vide.",
      other:
        "Cherchez pourquoi l’appareil a été mis sous tension. Si la date est juste, coupez l’alimentation et faites vérifier le circuit et l’alimentation.",
    },
    "commissioning.finish-first": {
      by: "hold",
      "open-valves":
        "Fermez les robinets et n’allez pas plus loin tant que ceci n’est pas conforme : {steps}.",
      "add-charge": "N’ajoutez plus de frigorigène tant que ceci n’est pas conforme : {steps}.",
      other: "Mettez l’appareil hors tension tant que ceci n’est pas conforme : {steps}.",
    },
    "commissioning.read-vacuum-again":
      "Relisez le vacuomètre avant de casser un vide qui a tenu des jours. S’il a monté, refaites le vide.",
    "commissioning.repeat-step": "À refaire et à consigner : {step}.",
    "commissioning.see-which-line": "Voyez quelle conduite est laquelle et corrigez le dossier.",
    "commissioning.record-each-joint": {
      by: "count",
      one: "Notez le raccord une fois.",
      other: "Notez chacun des {count} raccords une fois, sous son propre nom.",
    },
    "commissioning.remake-joint": "Refaites le raccord et notez-le.",
    "commissioning.see-joints-of-line": "Voyez les raccords de la {line} et notez chacun.",
    "commissioning.hold-longer": "Maintenez la pression {required} ou plus.",
    "commissioning.lower-pressure":
      "Baissez la pression à {limit} ou moins. Consultez le fabricant pour chaque partie restée au-dessus de son marquage.",
    "commissioning.test-higher":
      "Revoyez la pression d’essai du manuel et essayez à {limit} ou plus, sans dépasser la plus basse pression indiquée.",
    "commissioning.correct-charge":
      "Corrigez la charge ajoutée à {asked}, avec une tolérance de {tolerance}.",
    "commissioning.weigh-better": "Pesez la charge avec une balance plus exacte.",
    "commissioning.recover-down-to":
      "Récupérez du frigorigène jusqu’à ce que le total soit d’au plus {most}.",
    "commissioning.state-tolerance": "Notez la tolérance de la charge que donne le fabricant.",
    "commissioning.lower-drain": "Faites descendre l’évacuation plus bas ou posez une pompe.",
    "commissioning.clear-drain": "Dégagez l’évacuation, puis versez de nouveau de l’eau.",
    "commissioning.pass-what-is-on-file": "Passez ce qui est enregistré sous ce nom.",
  },
);
