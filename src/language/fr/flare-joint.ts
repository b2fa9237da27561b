// French (of Canada) of the flare joint: sentences and words.
import type { FlareJointStatements, FlareJointWord } from "../../flare-joint/statements.ts";
import type { CatalogueOf, Define, Words } from "../define.ts";
import { defineFrench } from "./typeset.ts";

type Said = FlareJointStatements & Words<FlareJointWord>;
const catalogue: Define<Said> = defineFrench;

/** What `flare-joint` says, in French. */
export const flareJoint: CatalogueOf<Said> = /* @__PURE__ */ catalogue("fr-CA", {
  "flare-joint.within-range": "{figure} {measured} : dans la plage de {low} à {high}.",
  "flare-joint.outside-range": "{figure} {measured} : hors de la plage de {low} à {high}.",
  "flare-joint.above-minimum": "{figure} {measured} : au moins {low}, comme exigé.",
  "flare-joint.below-minimum": "{figure} {measured} : inférieur au minimum de {low}.",
  "flare-joint.would-have-failed":
    "Un relevé dépassant une limite de {beyond} aurait été non conforme.",
  "flare-joint.sources-disagree":
    "{figure} {measured} : les plages publiées divergent. Toutes admettent de {low} à {high}.",
  "flare-joint.minimums-disagree":
    "{figure} {measured} : les minimums publiés divergent. Tous admettent {low} ou plus.",
  "flare-joint.instrument-cannot-tell":
    "Non concluant : {figure} {measured} est à moins de {guard} d’une limite.",
  "flare-joint.hydraulic-flare":
    "Cela ressemble à un évasement hydraulique à 37° (SAE J514). Il ne convient pas à un siège à 45°.",
  "flare-joint.right-on-other-scale":
    "{other} serait dans la plage. Le couple est-il dans une autre unité?",
  "flare-joint.manual-range-wide":
    "La plage du manuel, de {low} à {high}, est trop large pour distinguer N·m et pi-lb. Publié : de {from} à {to} pour {tube}.",
  "flare-joint.manual-range-apart":
    "La plage du manuel, de {low} à {high}, n’a rien en commun avec celle publiée, de {from} à {to} pour {tube}.",
  "flare-joint.newton-meter-as-foot-pound":
    "La plage indiquée est environ 1,36 fois plus élevée. Est-elle en N·m plutôt qu’en pi-lb?",
  "flare-joint.foot-pound-as-newton-meter":
    "La plage publiée est environ 1,36 fois plus élevée. Celle indiquée est-elle en pi-lb plutôt qu’en N·m?",
  "flare-joint.manual-diameters-wide":
    "Les limites du manuel, de {low} à {high}, sont trop larges pour un évasement. Celles publiées s’écartent d’au plus {widest}.",
  "flare-joint.manual-minimum-thin":
    "L’épaisseur minimale indiquée, {least}, est inférieure à celle de tout tube du marché. Les manuels exigent {usual} ou plus.",
  "flare-joint.adapter-needed":
    "Adaptateur exigé : {port} po SAE femelle ({portThread}) vers {hose} po SAE mâle ({hoseThread}).",
  "flare-joint.hose-fits": "Le boyau SAE de {hose} po ({hoseThread}) convient au port.",

  "flare-joint.exact-instrument": "L’exactitude n’est pas donnée; le relevé est supposé exact.",
  "flare-joint.published-ranges":
    "Évalué selon des plages publiées, faute de celle du manuel : {sources}.",
  "flare-joint.one-source": "Une seule source donne cette plage, et de mémoire.",
  "flare-joint.wider-flare-assumed":
    "R-454B prend l’évasement plus large de R-410A : pratique courante, aucun manuel n’a été lu.",
  "flare-joint.manual-read-again":
    "Le manuel a été relu; ses valeurs l’emportent sur celles publiées.",

  "flare-joint.not-a-leak-test":
    "Cela ne prouve pas l’étanchéité du raccord. Seul un essai de pression le fait.",
  "flare-joint.beyond-sources":
    "Seul le manuel appuie le couple de serrage {torque}. Publié : de {low} à {high}. Vérifiez la taille et l’unité.",

  "flare-joint.tighten":
    "Serrez l’écrou à un couple compris entre {low} et {high}, en retenant le corps avec une seconde clé.",
  "flare-joint.tighten-by-turn":
    "Continuez de tourner l’écrou, de {low} à {high} à partir du point où le couple monte.",
  "flare-joint.remake-and-tighten":
    "Coupez l’évasement, refaites-le et serrez-le à un couple compris entre {low} et {high}.",
  "flare-joint.remake-and-turn":
    "Coupez l’évasement, refaites-le et tournez son écrou de {low} à {high}.",
  "flare-joint.remake-larger": "Coupez l’évasement et faites-en un plus grand : de {low} à {high}.",
  "flare-joint.remake-smaller":
    "Coupez l’évasement et faites-en un plus petit : de {low} à {high}.",
  "flare-joint.remake-cone": "Coupez l’évasement et refaites-le avec un outil d’évasement à 45°.",
  "flare-joint.replace-tube": "Remplacez le tube par un autre dont la paroi a {low} ou plus.",
  "flare-joint.measure-better": "Mesurez de nouveau avec un instrument de ±{needed} ou mieux.",
  "flare-joint.check-wrench":
    "Faites vérifier la clé près de ce couple et saisissez son erreur : ±{needed} ou mieux tranche.",
  "flare-joint.check-scale":
    "Avant de couper quoi que ce soit, vérifiez quelle échelle de la clé a été lue.",
  "flare-joint.aim-inside":
    "Amenez-le au milieu de {low} à {high}. Aucun instrument ne distingue une valeur si près d’une limite.",
  "flare-joint.aim-above":
    "Choisissez un tube nettement au-dessus de {low}. Aucun instrument ne distingue une valeur si près d’une limite.",
  "flare-joint.state-manual-range": "Saisissez la plage du manuel de l’appareil.",
  "flare-joint.read-manual-again": "Relisez le manuel, avec son unité de mesure.",

  "flare-joint.figure-from-manual":
    "Aucune valeur n’est publiée. Prenez-la dans le manuel de l’appareil.",

  "flare-joint.figure.torque": "Couple de serrage",
  "flare-joint.figure.turn": "Rotation",
  "flare-joint.figure.diameter": "Diamètre de l’évasement",
  "flare-joint.figure.wall": "Épaisseur de paroi",
  "flare-joint.figure.seat-angle": "Angle du siège",
  "flare-joint.source.jis-type-manuals": "deux manuels pour écrous de type JIS",
  "flare-joint.source.en-378-2": "EN 378-2",
  "flare-joint.source.manual-range": "la plage d’un autre manuel",
  "flare-joint.cause.under-tightened": "écrou trop lâche",
  "flare-joint.cause.over-tightened": "écrou trop serré",
  "flare-joint.cause.flare-too-small": "évasement trop petit",
  "flare-joint.cause.flare-too-large": "évasement trop grand",
  "flare-joint.cause.wall-too-thin": "paroi trop mince",
  "flare-joint.cause.cone-too-steep": "cône trop fermé",
  "flare-joint.cause.cone-too-flat": "cône trop ouvert",
});
