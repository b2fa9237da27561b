// French (of Canada) of the plan: sentences and words.
import type { PlanningStatements, PlanningWord } from "../../planning/statements.ts";
import type { CatalogueOf, Define, Words } from "../define.ts";
import { defineFrench } from "./typeset.ts";

type Said = PlanningStatements & Words<PlanningWord>;
const catalogue: Define<Said> = defineFrench;

/** What `planning` says, in French. */
export const planning: CatalogueOf<Said> = /* @__PURE__ */ catalogue("fr-CA", {
  "planning.line-set":
    "Tracé {run} : conduites de {stock}, {liquid} × {vapor}. Nécessaire : {needed}.",
  "planning.two-sets":
    "Tracé {run} : {needed} nécessaires, plus que la plus grande longueur standard. Apportez {first} et {second} avec manchons, {joints} raccords brasés de plus, ou un rouleau.",
  "planning.roll":
    "Tracé {run} : {needed} nécessaires, plus que deux longueurs standard. Prenez-les en rouleau.",
  "planning.flares": {
    by: "count",
    one: "{count} évasement à faire.",
    other: "{count} évasements à faire.",
  },
  "planning.brazed": {
    by: "count",
    one: "{count} raccord brasé, sous flux d’azote.",
    other: "{count} raccords brasés, sous flux d’azote.",
  },
  "planning.couplings": {
    by: "count",
    one: "{count} raccord rapide préchargé à fermer.",
    other: "{count} raccords rapides préchargés à fermer.",
  },
  "planning.adapter":
    "Tracé {run}, conduite de {line}, côté {end} : un adaptateur de tube de {tube} po à port de {port} po, un raccord de plus.",
  "planning.caps": {
    by: "count",
    one: "{count} capuchon sur les ports inutilisés, compris dans l’essai d’étanchéité.",
    other: "{count} capuchons sur les ports inutilisés, compris dans l’essai d’étanchéité.",
  },
  "planning.joints": {
    by: "count",
    one: "{count} raccord à noter.",
    other: "{count} raccords à noter.",
  },
  "planning.nut": {
    by: "count",
    one: "{count} écrou évasé de {tube} po : de {low} à {high}.",
    other: "{count} écrous évasés de {tube} po : de {low} à {high}.",
  },
  "planning.wrenches":
    "Clés pour les écrous : {flats} sur plats, et une seconde pour tenir chaque corps.",
  "planning.sleeve":
    "Tracé {runs} : manchon mural d’une dimension intérieure d’au moins {diameter}.",
  "planning.cover":
    "Tracé {runs} : goulotte d’une dimension intérieure d’au moins {side} × {side}.",
  "planning.link-cable": {
    by: "count",
    one: "{count} câble entre les unités : {cable}.",
    other: "{count} câbles entre les unités, étiquetés aux deux extrémités : {cable}.",
  },
  "planning.lines-swapped":
    "Tracé {run} : la conduite de liquide n’est pas la plus petite. Sont-elles inversées?",
  "planning.total-length-within": "Tous les tracés totalisent {total} : dans la limite de {limit}.",
  "planning.total-length-above":
    "Tous les tracés totalisent {total} : au-dessus de la limite de {limit}.",
  "planning.indoor-lift-within":
    "La hauteur entre les unités intérieures est {lift} : dans la limite de {limit}.",
  "planning.indoor-lift-above":
    "La hauteur entre les unités intérieures est {lift} : dépasse la limite de {limit}.",
  "planning.connected-within":
    "Les unités intérieures totalisent {total} : dans la limite de {limit}.",
  "planning.connected-enough":
    "Les unités intérieures totalisent {total}; exigé : au moins {limit}.",
  "planning.connected-above":
    "Les unités intérieures totalisent {total} : au-dessus de la limite de {limit}.",
  "planning.connected-below":
    "Les unités intérieures totalisent {total} : au-dessous de la limite de {limit}.",

  "planning.device": {
    by: "poles",
    one: "Circuit {circuit} : {kinds:or}, {ratings:or}, {poles} pôle.",
    other: "Circuit {circuit} : {kinds:or}, {ratings:or}, {poles} pôles.",
  },
  "planning.conductor":
    "Circuit {circuit} : conducteurs d’au moins {size}, qui admettent {usable}.",
  "planning.conductor-for-drop":
    "Circuit {circuit} : apportez {size}. Avec {smallest}, la chute de tension est de {drop}, au-dessus de {limit}.",
  "planning.grounding":
    "Circuit {circuit} : conducteur de continuité des masses d’au moins {size}.",
  "planning.ground-fault":
    "Circuit {circuit} : protection contre les défauts à la terre qui se déclenche à {limit} ou moins.",
  "planning.residual-current":
    "Circuit {circuit} : dispositif différentiel de {limit} ou moins, d’un type que le manuel permet.",
  "planning.disconnect":
    "Circuit {circuit} : sectionneur de {made} (au moins {least}); permis sans fusibles.",
  "planning.fused-disconnect":
    "Circuit {circuit} : sectionneur de {made} (au moins {least}) avec fusibles.",
  "planning.drop-within": "Circuit {circuit} : chute de tension {drop}, dans la limite de {limit}.",
  "planning.drop-above": "Circuit {circuit} : chute de tension {drop}, au-dessus de {limit}.",
  "planning.drop-at-start":
    "Circuit {circuit} : chute de tension {drop} au démarrage du compresseur.",
  "planning.verify-clause":
    "Circuit {circuit} : faites-le vérifier selon le texte de {rules}, {clause}, et notez qui l’a vérifié.",
  "planning.rules-not-passed": "Circuit {circuit} : les règles {rules} ne sont pas disponibles.",
  "planning.voltage-window": "Alimentation à l’appareil : de {low} à {high}.",
  "planning.monitor":
    "Contrôleur de tension : coupe au-dessous de {low} et au-dessus de {high} après {trip}; rétablit après {reconnect}.",
  "planning.drain-fall": "Tracé {run} : l’évacuation descend d’au moins {fall} sur {length}.",
  "planning.drain-pump":
    "Tracé {run} : une pompe à condensat d’une hauteur de refoulement de {lift}, raccordée pour arrêter l’appareil.",
  "planning.trap":
    "Tracé {run} : un siphon avec {drop} de chute et {seal} de garde d’eau, {height} de hauteur.",

  "planning.nitrogen": "Tracé {runs} : {mass} d’azote pour {volume}.",
  "planning.cylinder-enough": {
    by: "count",
    one: "La bouteille suffit pour {count} remplissage : il reste {after}.",
    other: "La bouteille suffit pour {count} remplissages : il reste {after}.",
  },
  "planning.cylinder-too-small":
    "La bouteille n’en contient pas assez : apportez-en une plus grande ou plus pleine.",
  "planning.regulator":
    "Un régulateur d’azote dont la sortie atteint {pressure}, avec soupape de sûreté.",
  "planning.nitrogen-hose": "Un flexible pour azote marqué pour {pressure} ou plus.",
  "planning.vacuum-hose":
    "Un flexible de vide de {bore} sans poussoir d’obus, un démonte-obus et un adaptateur pour la prise de service (souvent 5/16 po).",
  "planning.most-fill":
    "Remplissez jusqu’à {most} au plus : cela atteint la pression indiquée, {limit}, à {warmest}.",
  "planning.fill": "Remplissez jusqu’à {pressure} à {temperature}.",
  "planning.fill-lowered":
    "{wanted} dépasserait la pression indiquée à la chaleur : remplissez jusqu’à {most}.",
  "planning.stages": "Montez-la par paliers : {stages}. Vérifiez tous les raccords à chacun.",
  "planning.when-warm": "À {temperature}, cela devient {pressure}.",
  "planning.later": "À {temperature}, le manomètre indique {pressure} si rien ne fuit.",
  "planning.hold":
    "Tracé {runs} : maintenez {recommended}, au moins {shortest}, pour montrer une fuite de {leak} avec ce manomètre.",
  "planning.hold-of-manual": "Le manuel exige une durée de {hold}.",
  "planning.hold-proves":
    "Tracé {runs} : les {hold} prévus montrent les fuites à partir de {leak}.",
  "planning.hold-below-manual":
    "La durée prévue, {hold}, est inférieure à celle qu’exige le manuel, {least}.",
  "planning.above-own-pressure":
    "Le remplissage, {fill}, dépasse les {own} du frigorigène à {temperature}.",
  "planning.below-own-pressure":
    "Le remplissage, {fill}, est inférieur aux {own} du frigorigène à {temperature} : il prouve trop peu.",
  "planning.fill-below-manual":
    "Le remplissage, {fill}, est inférieur à celui qu’exige le manuel, {least}.",
  "planning.no-nitrogen":
    "{construction} : ni essai à l’azote, ni mise sous vide, ni charge ajoutée.",
  "planning.bubble-couplings":
    "Vérifiez chaque raccord rapide à l’eau savonneuse et au détecteur après l’ouverture. Pression au repos : {pressure} à {temperature}.",
  "planning.vacuum-target": "Faites le vide au-dessous de {target}.",
  "planning.vacuum-limit": "Isolez : au plus {limit} après {hold}.",
  "planning.vacuum-rise": "Isolez : une remontée d’au plus {rise} en {hold}.",
  "planning.vacuum-leak": "Plus grande fuite avec laquelle le vide peut être conforme : {leak}.",
  "planning.pump-down":
    "Tracé {runs} : la pompe seule met {time} à atteindre {target}; boyaux et eau prennent plus de temps.",
  "planning.ice":
    "À {temperature}, la glace tient {pressure} : réchauffez le point le plus froid, ou le vide peut cacher de la glace.",

  "planning.refrigerant": "{refrigerant} : {mass} à ajouter et {reserve} en réserve.",
  "planning.flammable-cylinder":
    "Frigorigène inflammable : bouteille, boyaux, balance, pompe et détecteur adaptés; filetage à gauche sur la bouteille.",
  "planning.blend-as-liquid": "Chargez le mélange en liquide.",
  "planning.added": "Ajoutez {mass} en tout.",
  "planning.taken-out": "Retirez {mass} en tout.",
  "planning.nothing-added": "N’ajoutez rien.",
  "planning.label": "Total pour l’étiquette : {mass}.",
  "planning.room-needs": "Tracé {run} : {charge} exigent un local de {area}.",
  "planning.outdoor-zone":
    "Les {charge} restent à l’extérieur : gardez la zone du manuel libre d’ouvertures, d’avaloirs et de sources d’inflammation.",
  "planning.expect-pressures-low":
    "{mode}, {indoor} à l’intérieur, {outdoor} à l’extérieur : côté BP de {lowFrom} à {lowTo} (port de gaz), côté HP de {highFrom} à {highTo}.",
  "planning.expect-pressures-high":
    "{mode}, {indoor} à l’intérieur, {outdoor} à l’extérieur : côté BP de {lowFrom} à {lowTo}, côté HP de {highFrom} à {highTo} (port de gaz).",
  "planning.expect-air":
    "{mode} à pleine vitesse : l’air varie de {low} à {high} à travers le serpentin intérieur.",
  "planning.expect-current":
    "Courant à pleine vitesse : environ {rated}, jamais au-dessus de {most}.",
  "planning.ask": "Saisissez : {field}. Requis pour : {changes}.",
  "planning.ask-of-runs": "Tracé {runs}, saisissez : {field}. Requis pour : {changes}.",
  "planning.unusable": "Vérifiez : {field}. {value} ne peut pas servir.",

  "planning.part.lines": "conduites",
  "planning.part.joints": "raccords",
  "planning.part.wall": "manchon, goulotte et câble",
  "planning.part.circuit": "circuit",
  "planning.part.supply": "alimentation électrique",
  "planning.part.drain": "évacuation des condensats",
  "planning.part.pressure-test": "essai de pression",
  "planning.part.evacuation": "mise sous vide",
  "planning.part.charge": "charge",
  "planning.part.room": "local",
  "planning.part.operation": "fonctionnement",
  "planning.line.liquid": "liquide",
  "planning.line.vapor": "gaz",
  "planning.end.indoor": "intérieur",
  "planning.end.outdoor": "extérieur",
  "planning.mode.cooling": "Climatisation",
  "planning.mode.heating": "Chauffage",
  "planning.device.breaker": "disjoncteur",
  "planning.device.fuse": "fusible",
  "planning.construction.quick-connect": "Conduites préchargées",
  "planning.construction.monobloc": "Appareil monobloc",
});
