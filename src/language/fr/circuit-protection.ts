// French (of Canada) of the circuit: sentences and words.
import type {
  CircuitProtectionStatements,
  CircuitProtectionWord,
} from "../../circuit-protection/statements.ts";
import type { CatalogueOf, Define, Words } from "../define.ts";
import { defineFrench } from "./typeset.ts";

type Said = CircuitProtectionStatements & Words<CircuitProtectionWord>;
const catalogue: Define<Said> = defineFrench;

/** What `circuit-protection` says, in French. */
export const circuitProtection: CatalogueOf<Said> = /* @__PURE__ */ catalogue("fr-CA", {
  "circuit-protection.device-rating-met":
    "Le {device} est de {rating} : dans le maximum de la plaque signalétique, {limit}.",
  "circuit-protection.device-too-large":
    "Le {device} est trop gros : {rating}; maximum de la plaque signalétique : {limit}.",
  "circuit-protection.device-below-load":
    "Le {device} est trop petit : {rating}, et l’appareil tire {load}.",
  "circuit-protection.device-below-ampacity":
    "Le {device} est de {rating}, inférieur au courant admissible minimal du circuit, {ampacity}. Il peut se déclencher en usage normal.",
  "circuit-protection.device-kind-met": "La plaque signalétique permet un {device}.",
  "circuit-protection.fuse-required":
    "La plaque signalétique ne permet que des fusibles. Un disjoncteur seul ne suffit pas.",
  "circuit-protection.poles-met": "Pôles installés : {poles}; exigés : {needed}.",
  "circuit-protection.poles-too-few": "Pas assez de pôles. Installés : {poles}; exigés : {needed}.",
  "circuit-protection.poles-not-stated": "Le nombre de pôles n’est pas donné. Exigés : {needed}.",
  "circuit-protection.voltage-marking-met": "La tension marquée, {marking}, est suffisante.",
  "circuit-protection.voltage-marking-too-low":
    "La tension marquée, {marking}, est insuffisante : {system} exige {needed}.",
  "circuit-protection.voltage-marking-not-stated":
    "La tension marquée n’est pas donnée, et {system} ne les admet pas toutes.",
  "circuit-protection.device-not-stated": "Le disjoncteur ou fusible installé n’est pas donné.",
  "circuit-protection.no-standard-device":
    "Aucun calibre normalisé n’existe entre {ampacity} et {maximum}.",
  "circuit-protection.maximum-too-high":
    "Un maximum de {maximum} est plus que ce qui convient à {ampacity}.",
  "circuit-protection.maximum-not-stated": "Le plus gros fusible permis n’est pas donné.",
  "circuit-protection.conductor-met":
    "{size} ({section}) admet {usable}; exigé : {ampacity}, avec une protection de {rating}.",
  "circuit-protection.conductor-too-small":
    "{size} ({section}) est trop petit avec une protection de {rating} : il admet {usable}; exigé : {ampacity}.",
  "circuit-protection.conductor-unprotected":
    "{size} ({section}) admet {usable} : {rating} ne le protège pas.",
  "circuit-protection.conductor-not-stated": "Le conducteur installé n’est pas donné.",
  "circuit-protection.conductor-not-judged":
    "{size} n’est pas évalué : le tableau n’est pas confirmé ({clause}).",
  "circuit-protection.equipment-not-stated":
    "{size} avec une protection de {rating} n’est permis que pour un circuit de compresseur. Ce que le circuit alimente n’est pas donné.",
  "circuit-protection.aluminum-terminals-met": "Les bornes sont marquées pour l’aluminium.",
  "circuit-protection.aluminum-terminals-missing":
    "Les bornes ne sont pas marquées pour l’aluminium.",
  "circuit-protection.aluminum-terminals-not-stated":
    "Conducteurs d’aluminium : il n’est pas indiqué si les bornes sont marquées pour l’aluminium.",
  "circuit-protection.grounding-met":
    "Conducteur de continuité des masses {fitted}; exigé : {size}.",
  "circuit-protection.grounding-too-small":
    "Le conducteur de continuité des masses est trop petit : {fitted}; exigé : {size}.",
  "circuit-protection.grounding-by-energy-met":
    "Conducteur de continuité des masses {fitted} : le défaut exige {area} mm².",
  "circuit-protection.grounding-by-energy-short":
    "Conducteur de continuité des masses {fitted} : trop petit pour le défaut, qui exige {area} mm².",
  "circuit-protection.grounding-needs-energy":
    "Le conducteur de continuité des masses {fitted} est inférieur à celui du tableau, {size}. Seule l’énergie du défaut peut montrer qu’il suffit.",
  "circuit-protection.grounding-two-readings":
    "{clause} peut se lire de deux façons pour des conducteurs grossis. La plus stricte exige {size}.",
  "circuit-protection.grounding-wire-missing":
    "La canalisation sur le toit est le seul chemin vers la terre ({clause}).",
  "circuit-protection.disconnect-rating-met": "Sectionneur {rating}; exigé : {needed}.",
  "circuit-protection.disconnect-too-small":
    "Le sectionneur est trop petit : {rating}; exigé : {needed}.",
  "circuit-protection.largest-load-not-stated":
    "Sectionneur {rating} : suffisant ou non selon la plus grosse charge. {needed} suffit toujours.",
  "circuit-protection.disconnect-fuse-met":
    "Fusibles du sectionneur : {fuse}, dans la limite de {limit}.",
  "circuit-protection.disconnect-fuse-too-large":
    "Les fusibles du sectionneur sont trop gros : {fuse}; maximum permis : {limit}.",
  "circuit-protection.disconnect-in-sight": "Le sectionneur est en vue de l’appareil.",
  "circuit-protection.disconnect-out-of-sight": "Le sectionneur n’est pas en vue de l’appareil.",
  "circuit-protection.disconnect-near":
    "Le sectionneur est à {distance}, dans la limite de {limit}.",
  "circuit-protection.disconnect-too-far":
    "Le sectionneur est trop loin : {distance}; maximum permis : {limit}.",
  "circuit-protection.disconnect-accessible": "Le sectionneur est facilement accessible.",
  "circuit-protection.disconnect-not-accessible": "Le sectionneur n’est pas facilement accessible.",
  "circuit-protection.disconnect-clear":
    "Le sectionneur laisse libres la plaque signalétique et les panneaux d’accès.",
  "circuit-protection.disconnect-in-the-way":
    "Le sectionneur couvre la plaque signalétique ou est fixé à un panneau d’accès.",
  "circuit-protection.disconnect-lockable": "Le sectionneur peut être cadenassé ouvert.",
  "circuit-protection.disconnect-not-lockable": "Le sectionneur ne peut pas être cadenassé ouvert.",
  "circuit-protection.disconnect-off-unit": "Le sectionneur n’est pas monté sur l’appareil.",
  "circuit-protection.disconnect-on-unit": "Le sectionneur est monté sur l’appareil.",
  "circuit-protection.working-space-met":
    "L’espace de travail a au moins {depth} de profondeur, {width} de largeur et {height} de hauteur.",
  "circuit-protection.working-space-short":
    "L’espace de travail est insuffisant. Exigé : {depth} de profondeur, {width} de largeur, {height} de hauteur.",
  "circuit-protection.receptacle-met":
    "La prise de service est à {distance}, dans la limite de {limit}.",
  "circuit-protection.receptacle-too-far":
    "La prise de service est trop loin : {distance}; maximum permis : {limit}.",
  "circuit-protection.receptacle-on-load-side":
    "La prise de service est alimentée du côté charge du sectionneur de l’appareil.",
  "circuit-protection.voltage-drop-met": "Chute de tension {drop}, dans la limite de {limit}.",
  "circuit-protection.voltage-drop-above-limit":
    "La chute de tension est trop grande : {drop}; maximum permis : {limit}.",
  "circuit-protection.residual-current-met": "Dispositif différentiel {rated} installé.",
  "circuit-protection.residual-current-missing": "Un dispositif différentiel est exigé ({clause}).",
  "circuit-protection.residual-current-too-high":
    "Le dispositif différentiel n’est pas assez sensible : {rated}; maximum permis : {limit}.",
  "circuit-protection.residual-current-not-stated":
    "Il reste à savoir si un dispositif différentiel est exigé et suffit ({clause}).",
  "circuit-protection.not-confirmed":
    "Non confirmé pour {rules} : {point} ({clause}). Cela ne décide de rien.",
  "circuit-protection.ampacity-fits":
    "Courant admissible minimal du circuit : {marked} sur la plaque signalétique, {ampacity} selon les parties.",
  "circuit-protection.ampacity-too-low":
    "Le courant admissible indiqué est trop bas : {marked}; les parties exigent {ampacity}.",
  "circuit-protection.ampacity-unexplained":
    "Le courant admissible indiqué, {marked}, dépasse celui des parties, {ampacity}.",
  "circuit-protection.protection-fits":
    "Protection contre les surintensités : {maximum} sur la plaque signalétique, au plus {ceiling} selon les parties.",
  "circuit-protection.protection-too-high":
    "La protection indiquée est trop élevée : {maximum}; les parties permettent {ceiling}.",
  "circuit-protection.next-size-down":
    "{calculated} n’est pas un calibre normalisé : calibre immédiatement inférieur.",
  "circuit-protection.heater-needs-more":
    "Au-dessous de 125 % de l’élément chauffant : calibre immédiatement supérieur, {rating}.",
  "circuit-protection.smallest-rating": "Jamais au-dessous de {rating}.",
  "circuit-protection.ampacity-needs-more":
    "Inférieur au courant admissible minimal du circuit : {rating}.",

  "circuit-protection.marking-assumed":
    "La plaque signalétique est supposée permettre les disjoncteurs.",
  "circuit-protection.service-assumed": "Alimentation supposée : {system}.",
  "circuit-protection.ambient-assumed":
    "Température ambiante supposée sur le parcours : {ambient}.",
  "circuit-protection.terminations-assumed": "Les bornes sont supposées non marquées pour 75 °C.",
  "circuit-protection.cable-assumed": "Le câble est supposé n’être pas de type NM.",
  "circuit-protection.roof-assumed": "Le parcours est supposé ne pas passer près d’un toit.",
  "circuit-protection.conductors-assumed": "Au plus 3 conducteurs chargés ensemble sont supposés.",
  "circuit-protection.circuits-assumed": "Aucun autre circuit n’est supposé à côté du câble.",
  "circuit-protection.rated-load-assumed":
    "Le courant de charge nominal est supposé égal au courant admissible minimal du circuit, {ampacity}.",
  "circuit-protection.voltage-marking-assumed":
    "Le disjoncteur est supposé marqué {marking} ou plus.",
  "circuit-protection.compressor-inferred":
    "Le circuit est supposé alimenter un compresseur : seul un moteur donne un maximum de {maximum} avec {ampacity}.",
  "circuit-protection.not-stated": "Non donné, donc non vérifié : {parts}.",
  "circuit-protection.not-judged": "Hors de cette vérification : {parts}.",
  "circuit-protection.heater-below-50-kw":
    "Les éléments chauffants sont supposés totaliser moins de 50 kW.",

  "circuit-protection.not-a-usual-size": "{maximum} n’est pas un calibre normalisé.",
  "circuit-protection.maximum-confirmed":
    "Un maximum de {maximum} est plus que ce qui convient à {ampacity}. Il a été lu deux fois et pris tel qu’imprimé.",
  "circuit-protection.rated-load-low":
    "Une charge nominale de {load} est moins que ce qui convient à {ampacity}. {ampacity} a été utilisé à la place.",
  "circuit-protection.device-not-standard": "{rating} n’est pas un calibre normalisé de {device}.",
  "circuit-protection.no-standard-device-between":
    "Aucun calibre normalisé n’existe entre {ampacity} et {maximum}. Le calibre inférieur peut se déclencher en usage normal.",
  "circuit-protection.hacr-mark":
    "Le disjoncteur n’a pas la marque HACR. Ils sont essayés pour cela aujourd’hui, mais certains inspecteurs exigent la marque.",
  "circuit-protection.curve": "La courbe {curve} peut se déclencher au démarrage d’un compresseur.",
  "circuit-protection.start-may-trip":
    "Le démarrage de {locked} dépasse {from}, où le disjoncteur peut se déclencher aussitôt.",
  "circuit-protection.working-space-recommended":
    "Espace de travail recommandé : {depth} de profondeur, {width} de largeur, {height} de hauteur.",
  "circuit-protection.voltage-drop-recommended":
    "Chute de tension {drop}, supérieure à celle recommandée, {limit}.",
  "circuit-protection.from-memory":
    "Conforme selon des règles citées de mémoire. Vérifiez-les : {clauses}.",
  "circuit-protection.rules-older":
    "L’ensemble de règles a été revu la dernière fois le {reviewed}, avant les travaux du {date}. Cherchez des règles plus récentes.",
  "circuit-protection.ground-fault-required":
    "{clause} exige ici une protection contre les défauts à la terre. Les États l’ont modifiée : consultez le texte adopté.",
  "circuit-protection.ground-fault-class-c":
    "{clause} permet aussi un dispositif homologué de classe C, avec un avertissement sur le sectionneur.",
  "circuit-protection.ground-fault-exempt":
    "{clause} exige ici une protection contre les défauts à la terre à partir du {from}.",
  "circuit-protection.ground-fault-by-date":
    "{clause} exige ici une protection contre les défauts à la terre pour les travaux à partir du {from}. La date des travaux n’est pas donnée.",
  "circuit-protection.advice": "{advice} ({clause}).",
  "circuit-protection.calculated-not-marked":
    "Les valeurs calculées ne remplacent pas la plaque signalétique.",
  "circuit-protection.shared-circuit": {
    by: "count",
    one: "{count} autre charge partage ce circuit.",
    other: "{count} autres charges partagent ce circuit.",
  },

  "circuit-protection.fit-at-most": "Posez un disjoncteur ou des fusibles de {limit} ou moins.",
  "circuit-protection.fit-between": "Posez un disjoncteur ou des fusibles de {from} à {to}.",
  "circuit-protection.fit-fuses": "Posez des fusibles, par exemple dans le sectionneur.",
  "circuit-protection.fit-poles": "Posez un disjoncteur à {needed} pôles.",
  "circuit-protection.fit-marking": "Posez un disjoncteur marqué {needed} ou plus.",
  "circuit-protection.ask-manufacturer": "Consultez le fabricant.",
  "circuit-protection.read-nameplate-again": "Relisez la plaque signalétique.",
  "circuit-protection.state-maximum":
    "Saisissez le plus gros fusible de la plaque signalétique ou du manuel.",
  "circuit-protection.state-device": "Saisissez le disjoncteur ou fusible installé.",
  "circuit-protection.state-poles": "Saisissez les pôles du disjoncteur.",
  "circuit-protection.state-marking": "Saisissez la tension marquée sur le disjoncteur.",
  "circuit-protection.state-conductor": "Saisissez le conducteur installé.",
  "circuit-protection.state-equipment":
    "Saisissez ce que le circuit alimente : un compresseur, ou autre chose comme un élément chauffant.",
  "circuit-protection.state-largest-load":
    "Saisissez le courant de charge nominal de la plus grosse charge.",
  "circuit-protection.size-conductor-elsewhere":
    "Faites calculer le conducteur selon {clause} et les règles locales.",
  "circuit-protection.fit-conductor": "Posez {size} ou plus gros.",
  "circuit-protection.fit-larger-conductor": "Posez un conducteur plus gros.",
  "circuit-protection.fit-aluminum-terminals":
    "Utilisez des bornes ou connecteurs marqués pour l’aluminium.",
  "circuit-protection.look-at-terminals": "Regardez le marquage de toutes les bornes.",
  "circuit-protection.fit-grounding":
    "Posez un conducteur de continuité des masses de {size} ou plus gros.",
  "circuit-protection.fit-grounding-area":
    "Posez un conducteur de continuité des masses de {area} mm² ou plus.",
  "circuit-protection.state-fault-energy":
    "Saisissez le courant de défaut et le temps de coupure, ou l’énergie que laisse passer le dispositif.",
  "circuit-protection.fit-grounding-wire":
    "Posez un conducteur de continuité des masses de type fil.",
  "circuit-protection.fit-disconnect": "Posez un sectionneur de {needed} ou plus.",
  "circuit-protection.fit-disconnect-fuses":
    "Posez des fusibles de {limit} ou moins dans le sectionneur.",
  "circuit-protection.move-disconnect":
    "Déplacez le sectionneur : en vue, facilement accessible, à l’écart des panneaux de l’appareil.",
  "circuit-protection.move-disconnect-within": "Déplacez le sectionneur à {limit} ou moins.",
  "circuit-protection.fit-lockable-disconnect":
    "Posez un sectionneur qui peut être cadenassé ouvert.",
  "circuit-protection.clear-space":
    "Dégagez l’espace de travail : {depth} de profondeur, {width} de largeur, {height} de hauteur.",
  "circuit-protection.add-receptacle":
    "Posez une prise de service à {limit} ou moins, en amont du sectionneur de l’appareil.",
  "circuit-protection.fit-conductor-for-drop":
    "Posez {size} ou plus gros pour la chute de tension.",
  "circuit-protection.shorten-run": "Raccourcissez le parcours à {longest} ou moins.",
  "circuit-protection.fit-residual-current":
    "Posez un dispositif différentiel de {limit} ou moins, d’un type que le manuel permet.",
  "circuit-protection.state-earthing":
    "Saisissez le schéma de mise à la terre de l’alimentation, TN ou TT, et le dispositif différentiel.",
  "circuit-protection.ask-authority": "Faites vérifier selon le texte de {rules}, {clause}.",

  "circuit-protection.device.breaker": "disjoncteur",
  "circuit-protection.device.fuse": "fusible",
  "circuit-protection.section.run": "parcours depuis le panneau",
  "circuit-protection.section.whip": "raccordement flexible",
  "circuit-protection.point.marked-values": "valeurs de la plaque signalétique",
  "circuit-protection.point.device-ratings": "courants nominaux normalisés",
  "circuit-protection.point.poles": "pôles",
  "circuit-protection.point.voltage-marking": "tension marquée",
  "circuit-protection.point.overload": "protection du conducteur",
  "circuit-protection.point.ampacity": "courant admissible",
  "circuit-protection.point.terminations": "température des bornes",
  "circuit-protection.point.sheathed-cable": "limite du câble sous gaine",
  "circuit-protection.point.ambient": "température ambiante",
  "circuit-protection.point.grouping": "conducteurs ensemble",
  "circuit-protection.point.rooftop": "parcours sur un toit",
  "circuit-protection.point.aluminum-terminals": "bornes pour l’aluminium",
  "circuit-protection.point.grounding": "conducteur de continuité des masses",
  "circuit-protection.point.enlarged-grounding": "continuité des masses avec conducteurs grossis",
  "circuit-protection.point.disconnect-rating": "courant nominal du sectionneur",
  "circuit-protection.point.disconnect-place": "emplacement du sectionneur",
  "circuit-protection.point.working-space": "espace de travail",
  "circuit-protection.point.voltage-drop": "chute de tension",
  "circuit-protection.point.residual-current": "dispositif différentiel",
  "circuit-protection.point.service-receptacle": "prise de service",
  "circuit-protection.point.rooftop-raceway": "canalisation sur un toit",
  "circuit-protection.point.compressor": "protection d’un compresseur",
  "circuit-protection.advice.enclosure-tool-or-lock":
    "Un sectionneur qui expose des pièces sous tension une fois ouvert doit exiger un outil pour s’ouvrir ou pouvoir se verrouiller",
  "circuit-protection.advice.enclosure-locked":
    "Un sectionneur qui expose des pièces sous tension une fois ouvert doit être verrouillé ou exiger un outil",
  "circuit-protection.advice.surge-protection":
    "Les branchements de logements exigent une protection contre les surtensions",
  "circuit-protection.advice.buried-cable-residual-current":
    "Un câble à moins de 50 mm de profondeur dans un mur exige un dispositif différentiel de 30 mA",
  "circuit-protection.advice.own-circuit":
    "Les manuels et les codes exigent d’ordinaire un circuit réservé à l’appareil",
  "circuit-protection.advice.notifiable-work":
    "Un nouveau circuit dans un logement doit être déclaré en Angleterre et au pays de Galles",
  "circuit-protection.advice.gas-clearance":
    "Les appareils à arc doivent être séparés des compteurs, évents et soupapes de gaz",
  "circuit-protection.unjudged.equipment-grounding": "conducteur de continuité des masses",
  "circuit-protection.unjudged.disconnect": "sectionneur",
  "circuit-protection.unjudged.voltage-drop": "chute de tension",
  "circuit-protection.unjudged.service-receptacle": "prise de service",
  "circuit-protection.unjudged.in-sight": "sectionneur en vue",
  "circuit-protection.unjudged.near-enough": "distance du sectionneur",
  "circuit-protection.unjudged.accessible": "accès au sectionneur",
  "circuit-protection.unjudged.not-in-the-way": "sectionneur à l’écart des panneaux",
  "circuit-protection.unjudged.lockable": "verrouillage du sectionneur",
  "circuit-protection.unjudged.not-on-unit": "sectionneur hors de l’appareil",
  "circuit-protection.unjudged.working-space": "espace de travail",
  "circuit-protection.unjudged.short-circuit-rating": "courant de court-circuit admissible",
  "circuit-protection.unjudged.horsepower-rating": "puissance en hp du sectionneur",
  "circuit-protection.unjudged.fault-loop": "boucle de défaut et temps de coupure",
  "circuit-protection.unjudged.breaking-capacity": "pouvoir de coupure",
  "circuit-protection.cause.device-rating": "mauvais calibre de disjoncteur ou de fusible",
  "circuit-protection.cause.device-kind": "disjoncteur au lieu de fusibles",
  "circuit-protection.cause.device-poles": "pas assez de pôles",
  "circuit-protection.cause.device-voltage": "tension marquée insuffisante",
  "circuit-protection.cause.conductor": "conducteur trop petit",
  "circuit-protection.cause.terminals": "bornes non prévues pour l’aluminium",
  "circuit-protection.cause.equipment-grounding": "conducteur de continuité des masses",
  "circuit-protection.cause.disconnect-rating": "sectionneur trop petit",
  "circuit-protection.cause.disconnect-fuse": "mauvais fusibles dans le sectionneur",
  "circuit-protection.cause.disconnect-place": "emplacement du sectionneur",
  "circuit-protection.cause.working-space": "espace de travail insuffisant",
  "circuit-protection.cause.service-receptacle": "prise de service",
  "circuit-protection.cause.voltage-drop": "chute de tension excessive",
  "circuit-protection.cause.residual-current": "dispositif différentiel",
  "circuit-protection.cause.ampacity-too-low": "courant admissible indiqué trop bas",
  "circuit-protection.cause.protection-too-high": "protection indiquée trop élevée",

  "circuit-protection.check-service":
    "Comparez la tension, les phases et le système avec le branchement.",
  "circuit-protection.maximum-below-ampacity":
    "MOP inférieure à MCA : la plaque signalétique est mal lue, ou les valeurs viennent de deux appareils.",
});
