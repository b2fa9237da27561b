// French (of Canada) of gauge readings on a running unit: sentences and words.
import type {
  OperatingCheckStatements,
  OperatingCheckWord,
} from "../../operating-check/statements.ts";
import type { CatalogueOf, Define, Words } from "../define.ts";
import { defineFrench } from "./typeset.ts";

type Said = OperatingCheckStatements & Words<OperatingCheckWord>;
const catalogue: Define<Said> = defineFrench;

/** What `operating-check` says, in French. */
export const operatingCheck: CatalogueOf<Said> = /* @__PURE__ */ catalogue("fr-CA", {
  "operating-check.by-superheat":
    "Orifice fixe : la charge se vérifie par la surchauffe de la vapeur.",
  "operating-check.by-subcooling":
    "Détendeur thermostatique : la charge se vérifie par le sous-refroidissement.",
  "operating-check.no-target":
    "Inverter ou détendeur électronique : il n’y a ni surchauffe ni sous-refroidissement pour charger.",
  "operating-check.no-target-in-heating":
    "Chauffage : les cibles de surchauffe et de sous-refroidissement sont pour la climatisation.",
  "operating-check.superheat-below-floor":
    "Surchauffe de la vapeur {superheat} : au-dessous du minimum de {least}. Du liquide peut atteindre le compresseur.",
  "operating-check.superheat-near-floor":
    "Surchauffe de la vapeur {superheat} : trop près du minimum de {least} pour exclure du liquide au compresseur.",

  "operating-check.gauge-set-suits": "Le manomètre et le boyau conviennent à {pressure}.",
  "operating-check.above-hose-rating":
    "{pressure} dépasse la pression de service du boyau, {limit}.",
  "operating-check.destroys-gauge": "{pressure} détruit un manomètre qui finit à {limit}.",
  "operating-check.beyond-scale": "{pressure} ne peut être lue : l’échelle finit à {limit}.",

  "operating-check.within-window": "Pression {pressure} : dans la plage de {from} à {to}.",
  "operating-check.below-window": "Pression {pressure} : au-dessous de la plage de {from} à {to}.",
  "operating-check.above-window": "Pression {pressure} : au-dessus de la plage de {from} à {to}.",
  "operating-check.other-side":
    "Pression {pressure} : hors de la plage de {from} à {to}. Elle correspond à l’autre côté : {side}.",
  "operating-check.too-close-to-call":
    "Non concluant : pression {pressure}, attendue de {from} à {to}.",
  "operating-check.approach-range-wide":
    "Un écart avec l’air de {low} à {high} laisse passer un appareil défectueux. Étendue maximale utile : {widest}.",
  "operating-check.approach-at-rest":
    "Un écart avec l’air de {low} à {high} laisse passer un appareil au repos. Minimum utile : {least}.",

  "operating-check.as-printed":
    "Le manomètre et le boyau sont en bon état et conformes à leur marquage.",
  "operating-check.steady-full-speed":
    "L’appareil fonctionne de façon stable à pleine vitesse. Les pertes en ligne ne sont pas comptées.",
  "operating-check.approaches-as-stated": "Les écarts avec l’air sont ceux indiqués.",
  "operating-check.expands-outdoors": "Le frigorigène se détend dans l’unité extérieure.",
  "operating-check.exact-gauge": "L’exactitude n’est pas donnée; le relevé est supposé exact.",

  "operating-check.mode-first":
    "Vérifiez d’abord le mode. En chauffage, le port de gaz est à la pression de refoulement, qui détruit un manomètre BP.",
  "operating-check.hoses-lose-refrigerant":
    "Chaque boyau perd du frigorigène. Ne raccordez que pour une bonne raison.",
  "operating-check.not-the-charge": "Aucune pression ne prouve que la charge est juste. Pesez-la.",

  "operating-check.weigh-the-charge":
    "Chargez à la balance, selon la plaque signalétique et le manuel.",
  "operating-check.stop-liquid":
    "Ne laissez pas l’appareil tourner ainsi. Vérifiez le débit d’air et les filtres, puis la charge.",
  "operating-check.read-near-floor-again":
    "Augmentez la surchauffe jusqu’à ce qu’elle soit nettement au-dessus de {least}, ou refaites le relevé avec de meilleures sondes.",
  "operating-check.use-rated-hose":
    "Utilisez un boyau d’une pression de service de {pressure} ou plus.",
  "operating-check.use-larger-gauge": "Utilisez un manomètre dont l’échelle atteint {pressure}.",
  "operating-check.check-mode-and-port":
    "Vérifiez dans quel mode est l’appareil et sur quel port est le boyau.",
  "operating-check.find-the-cause":
    "Vérifiez les filtres, les serpentins, les ventilateurs et les deux températures de l’air, puis refaites le relevé.",
  "operating-check.use-better-gauge": "Refaites le relevé avec un manomètre de ±{needed} ou mieux.",
  "operating-check.read-again-later": "Laissez l’appareil se stabiliser et refaites le relevé.",
  "operating-check.state-approach": "Saisissez l’écart avec l’air qu’indique le fabricant.",

  "operating-check.side.low": "côté BP",
  "operating-check.side.high": "côté HP",
  "operating-check.cause.low": "au-dessous de la cible",
  "operating-check.cause.high": "au-dessus de la cible",
  "operating-check.cause.liquid-to-compressor": "du liquide peut atteindre le compresseur",
  "operating-check.cause.hose-rating": "boyau de pression insuffisante",
  "operating-check.cause.gauge-scale": "manomètre d’échelle insuffisante",
  "operating-check.cause.retard-only": "illisible sur ce manomètre",
  "operating-check.cause.below-window": "pression trop basse",
  "operating-check.cause.above-window": "pression trop élevée",
  "operating-check.cause.other-side": "autre côté ou autre mode",
});
