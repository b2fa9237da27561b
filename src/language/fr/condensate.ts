// French (of Canada) of condensate: sentences and words.
import type { CondensateStatements, CondensateWord } from "../../condensate/statements.ts";
import type { CatalogueOf, Define, Words } from "../define.ts";
import { defineFrench } from "./typeset.ts";

type Said = CondensateStatements & Words<CondensateWord>;
const catalogue: Define<Said> = defineFrench;

/** What `condensate` says, in French. */
export const condensate: CatalogueOf<Said> = /* @__PURE__ */ catalogue("fr-CA", {
  "condensate.falls-enough":
    "Pente de l’évacuation {slope} ± {uncertainty} : au moins {required}, comme exigé.",
  "condensate.falls-too-little":
    "Pente de l’évacuation {slope} ± {uncertainty} : inférieure à celle exigée, {required}.",
  "condensate.rises":
    "L’évacuation monte dans le sens de l’écoulement : pente {slope} ± {uncertainty}; exigée : {required}.",
  "condensate.codes-differ":
    "Pente de l’évacuation {slope} ± {uncertainty} : les codes divergent. L’un indique {least}, les autres {required}.",
  "condensate.slope-near":
    "Pente de l’évacuation {slope} ± {uncertainty} : trop près de celle exigée, {required}, pour trancher.",
  "condensate.pitch-enough":
    "Inclinaison vers l’évacuation {pitch} ± {uncertainty} : au moins {minimum}, comme exigé.",
  "condensate.pitch-within":
    "Inclinaison vers l’évacuation {pitch} ± {uncertainty} : dans la plage de {minimum} à {maximum}.",
  "condensate.pitch-away":
    "L’unité penche à l’opposé de son évacuation : inclinaison {pitch} ± {uncertainty}; exigée : au moins {minimum}.",
  "condensate.pitch-too-little":
    "Inclinaison vers l’évacuation {pitch} ± {uncertainty} : au-dessous du minimum de {minimum}.",
  "condensate.pitch-too-much":
    "Inclinaison vers l’évacuation {pitch} ± {uncertainty} : dépasse le maximum de {maximum}.",
  "condensate.pitch-near":
    "Inclinaison vers l’évacuation {pitch} ± {uncertainty} : trop près d’une limite pour trancher.",
  "condensate.pump-keeps-up":
    "À une hauteur de refoulement de {lift}, la pompe débite {flow}; exigé : {required}.",
  "condensate.pump-too-slow":
    "À une hauteur de refoulement de {lift}, la pompe débite {flow} : moins que le débit exigé, {required}.",
  "condensate.pump-lift-too-high":
    "Hauteur de refoulement {lift} : dépasse le maximum de la pompe, {highest}.",
  "condensate.gravity": "Dénivelé {available}; exigé : {needed}.",
  "condensate.fall-short": "Dénivelé insuffisant : il manque {shortfall} au point {point}.",

  "condensate.straight": "Droit entre les points mesurés.",
  "condensate.exact-instrument": "L’exactitude n’est pas donnée; le relevé est supposé exact.",
  "condensate.code-slope":
    "La pente exigée n’est pas donnée. Prise : 1/8 po par pied, {slope}, des codes américains.",
  "condensate.level-is-enough": "De niveau est pris comme une inclinaison suffisante.",
  "condensate.maximum-pitch-not-checked":
    "L’inclinaison maximale du manuel n’est pas donnée et n’a pas été vérifiée.",
  "condensate.pump-margin": "Débit exigé de la pompe : {margin} fois le condensat.",
  "condensate.pump-curve-straight": "La courbe de la pompe est droite entre ses points.",

  "condensate.steep":
    "Une pente de {slope} est forte; habituellement jusqu’à {usual}. Une valeur a-t-elle été notée dans une autre unité?",
  "condensate.flatter-than-code":
    "Les codes de plomberie exigent au moins {least}. Demandez quel texte s’applique ici.",
  "condensate.discharge":
    "Ne laissez pas couler l’eau sur la voie publique. À l’égout, seulement par rejet indirect, l’extrémité du tuyau au-dessus de l’eau.",
  "condensate.sweating": "Isolez les évacuations intérieures qui suintent.",
  "condensate.sunlight":
    "Le soleil désagrège le tuyau souple et la mousse nus. Couvrez-les ou peignez-les.",
  "condensate.freezing":
    "Une évacuation extérieure peut geler et refouler. Faites-la courte, pentue, sans siphon, isolée ou chauffée.",
  "condensate.overflow":
    "Au-dessus d’un espace fini, un débordement cause des dégâts. Posez un bac, une seconde évacuation ou un interrupteur de niveau.",
  "condensate.pump-failure":
    "Raccordez l’interrupteur de niveau de la pompe de sorte qu’il arrête l’appareil.",
  "condensate.dry-trap": "Remplissez d’abord le siphon d’eau. Un siphon sec laisse passer l’air.",

  "condensate.increase-slope": "Augmentez la pente à {required} ou plus, ou posez une pompe.",
  "condensate.increase-fall":
    "Augmentez le dénivelé de {fall} ou plus sur {run}, ou posez une pompe.",
  "condensate.ask-code":
    "Demandez à l’autorité locale quelle pente s’applique, ou donnez à l’évacuation {required}.",
  "condensate.measure-better":
    "Mesurez de nouveau sur une base plus longue ou avec un meilleur niveau.",
  "condensate.raise-pitch": "Remettez l’unité à niveau : au moins {minimum} vers l’évacuation.",
  "condensate.lower-pitch": "Remettez l’unité à niveau : au plus {maximum} vers l’évacuation.",
  "condensate.other-pump":
    "Posez une pompe qui débite {required} ou plus à une hauteur de refoulement de {lift}.",
  "condensate.lower-point":
    "Abaissez le point {point} de {shortfall} ou plus, ou posez une pompe pour une hauteur de refoulement de {lift}.",

  "condensate.cause.rises": "évacuation qui monte",
  "condensate.cause.too-flat": "évacuation trop plate",
  "condensate.cause.away-from-drain": "unité penchée à l’opposé de son évacuation",
  "condensate.cause.too-little": "inclinaison insuffisante",
  "condensate.cause.too-much": "inclinaison excessive",
  "condensate.cause.lift-too-high": "hauteur de refoulement trop grande pour la pompe",
  "condensate.cause.too-slow": "débit de la pompe insuffisant",
  "condensate.cause.needs-pump": "il faut une pompe",
});
