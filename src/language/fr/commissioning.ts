// French (of Canada) of the verdict on an installation: sentences and words. The fields of the record: record-fields.ts.
import type { CommissioningStatements } from "../../commissioning/statements.ts";
import type { CommissioningWord, FieldWord } from "../../commissioning/words.ts";
import { type CatalogueOf, type Define, join, type Words } from "../define.ts";
import { recordFields } from "./record-fields.ts";
import { defineFrench } from "./typeset.ts";

type Said = CommissioningStatements & Words<CommissioningWord>;
const catalogue: Define<Said> = defineFrench;

const sentences: CatalogueOf<Said> = /* @__PURE__ */ catalogue("fr-CA", {
  "commissioning.not-recorded": "Non renseigné : {fields}.",
  "commissioning.unusable-value": "Cette valeur ne peut pas servir ({field}) : {value}.",
  "commissioning.unusable-part": "Ce qui est noté ne peut pas servir : {field}.",
  "commissioning.value-too-low":
    "Valeur trop basse ({field}) : {value}; permis : au moins {limit}.",
  "commissioning.value-not-above":
    "Valeur trop basse ({field}) : {value}; exigé : plus de {limit}.",
  "commissioning.value-too-high":
    "Valeur trop élevée ({field}) : {value}; permis : au plus {limit}.",
  "commissioning.value-not-below":
    "Valeur trop élevée ({field}) : {value}; exigé : moins de {limit}.",
  "commissioning.too-few-entries":
    "Trop peu d’entrées ({field}) : {count}; exigé : au moins {limit}.",
  "commissioning.too-many-entries": "Trop d’entrées ({field}) : {count}; permis : au plus {limit}.",
  "commissioning.waived": "Non vérifié : dispensé par {by}, {at} : {why}.",
  "commissioning.waived-for-run": "Tracé {run} non vérifié : dispensé par {by}, {at} : {why}.",
  "commissioning.waived-by-nobody": "La dispense ne compte pas : personne n’est nommé.",
  "commissioning.waived-twice": "L’étape est dispensée plus d’une fois.",
  "commissioning.waiver-contradicted": "L’étape est dispensée, mais ceci est noté : {field}.",
  "commissioning.waiver-without-reason":
    "La dispense ne compte pas sans motif. Cette étape admet : {fits}.",
  "commissioning.waiver-does-not-fit":
    "Le motif ne convient pas à l’étape : {reason}. Cette étape admet : {fits}.",
  "commissioning.waiver-needs-a1":
    "Le local ne peut rester non vérifié que pour un frigorigène de classe de sécurité A1.",
  "commissioning.waiver-needs-heating-only":
    "L’évacuation ne peut être dispensée que pour un appareil qui ne climatise jamais.",
  "commissioning.falls-away": "Non nécessaire : {construction}.",
  "commissioning.construction-contradicted":
    "Ceci est noté, bien que non nécessaire ({construction}) : {field}.",
  "commissioning.run-not-covered": "Le tracé {run} n’est pas couvert.",
  "commissioning.unknown-run": "Aucun tracé ne s’appelle {run}.",
  "commissioning.order-not-shown": {
    by: "hold",
    "open-valves":
      "Les heures ne montrent pas que les vérifications étaient conformes avant l’ouverture des robinets.",
    "add-charge":
      "Les heures ne montrent pas que les vérifications étaient conformes avant l’ajout de frigorigène.",
    other:
      "Les heures ne montrent pas que les vérifications étaient conformes avant la mise sous tension de l’appareil.",
  },
  "commissioning.line-other-than-port":
    "La {line}, {diameter}, n’a pas la taille de son port, {port} po. Y a-t-il un adaptateur, ou est-ce un autre diamètre?",
  "commissioning.line-with-adapter":
    "La {line}, {diameter}, est sur un port de {port} po, avec un adaptateur.",
  "commissioning.total-length-within": "Longueur totale {total} : dans le maximum de {most}.",
  "commissioning.total-length-above": "Longueur totale {total} : dépasse le maximum de {most}.",
  "commissioning.total-length-too-close":
    "Non concluant : la longueur totale est de {total} et le maximum, de {most}.",
  "commissioning.fewer-joints-than-ends":
    "Raccords indiqués : {count}. Deux conduites à deux extrémités en ont au moins quatre. En manque-t-il un?",
  "commissioning.manual-silent":
    "Le manuel ne donne pas de pression d’essai. Celle exigée vient d’une autre source : {standing}.",
  "commissioning.blend-fed-as-liquid": "Le mélange a été chargé en liquide.",
  "commissioning.blend-fed-as-vapor":
    "Le mélange a été chargé en vapeur; sa composition peut avoir changé.",
  "commissioning.drain-falls-straight": "L’évacuation descend à la verticale.",
  "commissioning.usual-air-difference":
    "La plage du manuel n’est pas donnée. L’habituelle est prise : de {low} à {high}.",

  "commissioning.lift-above-length":
    "Le dénivelé, {lift}, dépasse la longueur, {length}. L’un des deux est-il dans une autre unité?",
  "commissioning.pre-charged-above-longest":
    "La longueur préchargée, {preCharged}, dépasse la longueur maximale, {longest}. Est-elle dans une autre unité?",
  "commissioning.allowed-drop-large":
    "Une chute permise de {limit} dépasse le vingtième de la pression d’essai. Est-elle dans une autre unité?",
  "commissioning.temperatures-apart":
    "Le gaz était à {test}, le système sous vide à {evacuation} : plus de {usual} d’écart. L’une est-elle dans une autre unité?",
  "commissioning.log-copied":
    "Les relevés sont les mêmes, ligne par ligne, que ceux d’un autre essai. Sont-ils de celui-ci?",
  "commissioning.altitude-odd":
    "Une altitude de {altitude} est inhabituelle. Est-elle dans une autre unité?",
  "commissioning.barometer-odd":
    "Le baromètre indique {atmosphere}; à {altitude}, c’est environ {usual}. Est-ce la pression ramenée au niveau de la mer?",
  "commissioning.room-height-odd":
    "La superficie et le volume donnent une hauteur de {height}; habituel : de {low} à {high}. L’un est-il dans une autre unité?",
  "commissioning.ceiling-odd":
    "Une hauteur sous plafond de {height} est inhabituelle; habituel : de {low} à {high}. Est-elle dans une autre unité?",
  "commissioning.floor-area-large":
    "Une superficie de plancher de {area} est grande pour une unité intérieure; habituel : jusqu’à {usual}. Est-elle dans une autre unité?",
  "commissioning.volume-large":
    "Un volume de {volume} est grand pour une unité intérieure; habituel : jusqu’à {usual}. Est-il dans une autre unité?",
  "commissioning.unit-high":
    "Une hauteur de pose de {height} est inhabituelle; habituel : jusqu’à {usual}. Est-elle dans une autre unité?",
  "commissioning.factory-charge-odd":
    "Une charge d’usine de {charge} est inhabituelle pour {capacity}; habituel : de {low} à {high}. Est-elle dans une autre unité?",
  "commissioning.factory-charge-is-maximum":
    "La charge d’usine, {charge}, n’est pas inférieure à la charge maximale, {most}. Est-ce la maximale?",
  "commissioning.total-as-added":
    "La charge ajoutée, {added}, vaut autant que la charge totale attendue. Est-ce la totale?",
  "commissioning.added-large":
    "La charge ajoutée, {added}, dépasse 60 % de la charge d’usine, {charge}. Est-elle dans une autre unité?",
  "commissioning.rated-above-ampacity":
    "Le courant de charge nominal, {rated}, dépasse le courant admissible minimal du circuit, {ampacity}. Sont-ils inversés?",
  "commissioning.protection-far-above-ampacity":
    "La protection maximale contre les surintensités, {protection}, est anormalement élevée pour un courant admissible de {ampacity}. Manque-t-il un séparateur décimal?",
  "commissioning.capacity-odd":
    "Une puissance de {capacity} ne va pas avec {rated} à {voltage}. Est-elle dans une autre unité?",
  "commissioning.length-odd":
    "{field} : {value}; habituellement de {low} à {high}. Est-ce dans une autre unité?",
  "commissioning.volume-odd":
    "{field} : {value}; habituellement de {low} à {high}. Est-ce dans une autre unité?",
  "commissioning.temperature-odd":
    "{field} : {value}; habituellement de {low} à {high}. Est-ce dans une autre unité?",
  "commissioning.pressure-odd":
    "{field} : {value}; habituellement de {low} à {high}. Est-ce dans une autre unité?",
  "commissioning.mass-odd":
    "{field} : {value}; habituellement de {low} à {high}. Est-ce dans une autre unité?",
  "commissioning.rated-as-ampacity":
    "Le courant admissible minimal du circuit, {rated}, est le courant de charge nominal. Sont-ils inversés?",
  "commissioning.drain-steep":
    "Une pente de {slope} est forte pour une évacuation; habituel : jusqu’à {usual}. Est-elle dans une autre unité?",

  "commissioning.air-difference-within": {
    by: "mode",
    cooling: "L’air est refroidi de {difference} : dans la plage de {low} à {high}.",
    other: "L’air est réchauffé de {difference} : dans la plage de {low} à {high}.",
  },
  "commissioning.air-difference-outside": {
    by: "mode",
    cooling: "L’air est refroidi de {difference} : hors de la plage de {low} à {high}.",
    other: "L’air est réchauffé de {difference} : hors de la plage de {low} à {high}.",
  },
  "commissioning.air-difference-too-close": {
    by: "mode",
    cooling: "Non concluant : l’air est refroidi de {difference}; exigé : de {low} à {high}.",
    other: "Non concluant : l’air est réchauffé de {difference}; exigé : de {low} à {high}.",
  },
  "commissioning.air-the-other-way": {
    by: "mode",
    cooling:
      "En climatisation, l’air soufflé est plus chaud de {difference} que l’air repris. Sont-ils inversés?",
    other:
      "En chauffage, l’air soufflé est plus froid de {difference} que l’air repris. Sont-ils inversés?",
  },
  "commissioning.not-at-full-speed":
    "Le compresseur n’a pas tourné à pleine vitesse; l’air et le courant ne prouvent rien.",
  "commissioning.current-within":
    "Courant {current} : entre la moitié et la totalité du courant de charge nominal, de {low} à {rated}.",
  "commissioning.current-odd":
    "Courant {current} : hors de la moitié à la totalité du courant de charge nominal, de {low} à {rated}.",
  "commissioning.current-above-ampacity":
    "Courant {current} : dépasse le courant admissible minimal du circuit, {most}.",

  "commissioning.rules-not-passed":
    "Le circuit n’a pas été vérifié : l’ensemble de règles {rules} n’est pas disponible.",
  "commissioning.done-before-proof": {
    by: "hold",
    "open-valves": "Les robinets ont été ouverts {at}, avant une vérification du {proof}.",
    "add-charge": "Du frigorigène a été ajouté {at}, avant une vérification du {proof}.",
    other: "L’appareil a été mis sous tension {at}, avant une vérification du {proof}.",
  },
  "commissioning.done-without-proof": {
    by: "hold",
    "open-valves": "Les robinets ont été ouverts avant que ces étapes soient conformes : {steps}.",
    "add-charge": "Du frigorigène a été ajouté avant que ces étapes soient conformes : {steps}.",
    other: "L’appareil a été mis sous tension avant que ces étapes soient conformes : {steps}.",
  },
  "commissioning.held": {
    by: "hold",
    "open-valves":
      "Gardez les robinets fermés tant que ces étapes ne sont pas conformes : {steps}.",
    "add-charge":
      "N’ajoutez pas de frigorigène tant que ces étapes ne sont pas conformes : {steps}.",
    other: "Laissez l’alimentation coupée tant que ces étapes ne sont pas conformes : {steps}.",
  },
  "commissioning.released": {
    by: "hold",
    "open-valves":
      "Les robinets peuvent être ouverts : toutes les vérifications préalables sont conformes.",
    "add-charge":
      "Du frigorigène peut être ajouté : toutes les vérifications préalables sont conformes.",
    other:
      "L’appareil peut être mis sous tension : toutes les vérifications préalables sont conformes.",
  },
  "commissioning.released-by-declaration": {
    by: "hold",
    "open-valves": "Les robinets peuvent être ouverts. Sans objet, donc non vérifié : {steps}.",
    "add-charge": "Du frigorigène peut être ajouté. Sans objet, donc non vérifié : {steps}.",
    other: "L’appareil peut être mis sous tension. Sans objet, donc non vérifié : {steps}.",
  },
  "commissioning.older-than-work":
    "Le relevé du {read} est antérieur aux travaux du {at}, et n’en prouve rien.",
  "commissioning.begun-before-work":
    "Les relevés terminés {read} ont commencé avant les travaux du {at}, et n’en prouvent rien.",
  "commissioning.lines-swapped":
    "La conduite de liquide, {liquid}, est notée comme plus large que la conduite de gaz, {vapor}.",
  "commissioning.joints-complete": {
    by: "count",
    one: "Le seul raccord est noté.",
    other: "Les {count} raccords sont notés.",
  },
  "commissioning.joints-incomplete": "Raccords notés : {recorded} sur {count}.",
  "commissioning.joint-defect": "L’inspection a trouvé un défaut.",
  "commissioning.joint-inspected": "L’inspection n’a trouvé aucun défaut.",
  "commissioning.brazed-with-nitrogen": "Brasé sous flux d’azote.",
  "commissioning.brazed-without-nitrogen": "Brasé sans flux d’azote.",
  "commissioning.no-flare-of-line":
    "Aucun évasement n’est noté pour la {line}, {diameter}. Tailles notées, en pouces : {tubes}. Une saisie est-elle copiée, ou y a-t-il un adaptateur?",
  "commissioning.held-long-enough": "Durée de l’essai : {held}; durée exigée : {required}.",
  "commissioning.held-too-short": "Durée de l’essai : {held} seulement; durée exigée : {required}.",
  "commissioning.within-marked-pressure":
    "L’essai a atteint {pressure} : dans la plus basse pression indiquée, {limit}.",
  "commissioning.above-marked-pressure":
    "L’essai a atteint {pressure} : au-dessus de la plus basse pression indiquée, {limit}.",
  "commissioning.test-pressure-reached": "Essayé à {pressure}; exigé : au moins {limit}.",
  "commissioning.test-pressure-too-low": "Essayé à {pressure} seulement; exigé : au moins {limit}.",
  "commissioning.test-below-refrigerant":
    "Essayé à {pressure} : au-dessous des {own} de {refrigerant} au repos à {temperature}.",
  "commissioning.weighed-within":
    "La charge ajoutée, {added}, est à moins de {tolerance} de celle exigée, {asked}.",
  "commissioning.weighed-outside":
    "La charge ajoutée, {added}, est à plus de {tolerance} de celle exigée, {asked}.",
  "commissioning.weighed-too-close":
    "Non concluant : la charge ajoutée est de {added}; exigée : {asked}, avec une tolérance de {tolerance}.",
  "commissioning.above-maximum-charge": "La charge totale, {total}, dépasse la maximale, {most}.",
  "commissioning.near-maximum-charge":
    "Non concluant : la charge totale est de {total} et la maximale, de {most}.",
  "commissioning.tolerance-too-wide":
    "La tolérance, {tolerance}, est trop large pour une charge de {whole} : plus du dixième.",
  "commissioning.valves-opened": "Les robinets ont été ouverts {at}.",
  "commissioning.water-drained": "L’eau versée dans le bac s’est écoulée correctement.",
  "commissioning.water-did-not-drain":
    "L’eau versée dans le bac ne s’est pas écoulée correctement.",

  "commissioning.exact-scale":
    "L’exactitude de la balance n’est pas donnée; elle est supposée exacte.",
  "commissioning.joints-undated":
    "Les raccords sans date sont supposés faits avant les essais : {joints}.",
  "commissioning.calibration-taken-for-granted":
    "Sans dates de relevé et d’étalonnage, supposés étalonnés : {fields}.",

  "commissioning.heed-nitrogen":
    "Azote sec seulement : jamais d’oxygène, d’air comprimé ni de gaz inflammable, qui explosent au contact de l’huile. Alimentez par un régulateur et une soupape de sûreté. Montez la pression par paliers, tenez les personnes à l’écart et ne dépassez pas la plus basse pression indiquée. Évacuez-le à l’extérieur : il chasse l’air et asphyxie.",
  "commissioning.heed-refrigerant":
    "Le frigorigène liquide gèle la peau et les yeux, et tout frigorigène chasse l’air et asphyxie : portez gants et lunettes, et ventilez. Ne desserrez, ne coupez et ne brasez jamais rien sous pression. Ne chargez qu’un système étanche et essayé, et ne faites jamais d’essai de pression avec du frigorigène et de l’air. Ne faites jamais tourner un compresseur sous vide.",
  "commissioning.heed-voltage":
    "La tension peut tuer. Coupez, cadenassez et vérifiez l’absence de tension; les condensateurs de l’Inverter restent chargés. Électriciens qualifiés seulement. Mesurez avec un multimètre de catégorie III (IV au branchement), vérifié avant et après, et restez à l’écart des bornes sous tension et des ventilateurs d’un appareil en marche.",
  "commissioning.heed-gauges":
    "Vérifiez le mode avant de raccorder un manomètre : en chauffage, le port de gaz est à la pression de refoulement, qui détruit un manomètre BP. Chaque boyau perd du frigorigène; ne raccordez que pour une bonne raison.",
  "commissioning.heed-drain":
    "Protégez l’évacuation du gel, du soleil, de la condensation et du débordement au-dessus d’un espace fini. Terminez-la par un rejet indirect, hors de la voie publique, et faites que l’interrupteur de niveau de la pompe arrête l’appareil.",
  "commissioning.tested-again": {
    by: "tests",
    one: "Refait : {step}. Un essai antérieur est conservé au dossier et ne compte pas.",
    other:
      "Refait : {step}. {tests} essais antérieurs sont conservés au dossier et ne comptent pas.",
  },
  "commissioning.zones-mixed":
    "Certaines heures ont un décalage par rapport à UTC et d’autres non; leur ordre n’est pas certain.",
  "commissioning.air-proves-no-charge":
    "L’air et le courant montrent que l’appareil tourne, non que sa charge est juste.",
  "commissioning.not-signed": "Personne n’a signé ce dossier.",
  "commissioning.signed-before-change":
    "{name} a signé {at}, avant que ceci soit fait ou changé : {fields}.",
  "commissioning.amended":
    "Changé après avoir été noté; l’historique garde les valeurs antérieures : {fields}.",
  "commissioning.unit-unknown":
    "Il manque le modèle ou le numéro de série d’un appareil : ce dossier pourrait concerner n’importe lequel.",
  "commissioning.older-than-a-year":
    "Plus d’un an avant cette donnée ({field}) du {at} : {fields}. Est-ce cette installation, et l’année est-elle juste?",
  "commissioning.opened-long-after-evacuation":
    "Les robinets ont été ouverts {opened}, plus d’une semaine après l’évacuation du {evacuated}. Ce qui a fui entre-temps ne se voit pas.",
  "commissioning.instrument-coarse":
    "L’exactitude dépasse 100 fois la résolution : {fields}. L’une des deux est-elle dans une autre unité?",
  "commissioning.instrument-without-error":
    "Aucun instrument n’est exact, mais l’exactitude est notée 0 : {fields}.",
  "commissioning.calibration-expired":
    "L’étalonnage était dû le {due}, avant le relevé du {at} : {instrument}.",
  "commissioning.calibrated-afterwards":
    "Étalonné le {on}, après le relevé du {at} : {instrument}. Le certificat n’en dit rien.",

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
      "Fermez les robinets et n’allez pas plus loin tant que ces étapes ne sont pas conformes : {steps}.",
    "add-charge":
      "N’ajoutez plus de frigorigène tant que ces étapes ne sont pas conformes : {steps}.",
    other: "Mettez l’appareil hors tension tant que ces étapes ne sont pas conformes : {steps}.",
  },
  "commissioning.repeat-step": "Refaites-le et notez-le : {step}.",
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
  "commissioning.clear-drain": "Dégagez l’évacuation, puis versez de nouveau de l’eau.",
  "commissioning.pass-what-is-on-file": "Passez ce qui est enregistré sous ce nom.",

  "commissioning.step.line-run": "tracé des conduites",
  "commissioning.step.joints": "raccords",
  "commissioning.step.pressure-test": "essai de pression",
  "commissioning.step.evacuation": "évacuation",
  "commissioning.step.room-limit": "limite du local",
  "commissioning.step.charge": "charge",
  "commissioning.step.valves": "robinets",
  "commissioning.step.circuit": "circuit",
  "commissioning.step.supply": "alimentation électrique",
  "commissioning.step.drain": "évacuation des condensats",
  "commissioning.step.operation": "fonctionnement",
  "commissioning.step-state.done": "fait",
  "commissioning.step-state.partial": "noté en partie",
  "commissioning.step-state.missing": "rien de noté",
  "commissioning.step-state.not-applicable": "sans objet",
  "commissioning.hold.open-valves": "ouvrir les robinets",
  "commissioning.hold.add-charge": "ajouter du frigorigène",
  "commissioning.hold.power-on": "mettre l’appareil sous tension",
  "commissioning.hold-state.held": "en attente",
  "commissioning.hold-state.released": "levé",
  "commissioning.hold-state.breached": "franchi sans levée",
  "commissioning.line.liquid": "conduite de liquide",
  "commissioning.line.vapor": "conduite de gaz",
  "commissioning.waiver.factory-line-set": "conduites de longueur fixe fournies avec l’appareil",
  "commissioning.waiver.existing-lines": "conduites existantes, non ouvertes",
  "commissioning.waiver.no-enclosed-room": "pas de local fermé",
  "commissioning.waiver.heats-only": "l’appareil ne climatise jamais",
  "commissioning.construction.split": "conduites raccordées sur place",
  "commissioning.construction.quick-connect": "conduites préchargées à raccords rapides",
  "commissioning.construction.monobloc": "circuit de frigorigène scellé dans l’unité extérieure",
  "commissioning.standing.adopted-code": "le code adopté",
  "commissioning.standing.manufacturer": "le fabricant",
  "commissioning.standing.common-practice": "la pratique courante",
  "commissioning.mode.cooling": "climatisation",
  "commissioning.mode.heating": "chauffage",
  "commissioning.check.line-run": "longueur et dénivelé",
  "commissioning.check.total-length": "longueur totale",
  "commissioning.check.flare-wall": "paroi du tube évasé",
  "commissioning.check.coupling-joint": "raccord rapide",
  "commissioning.check.fed-as-liquid": "état du frigorigène ajouté",
  "commissioning.check.air-difference": "air à travers le serpentin intérieur",
  "commissioning.check.running-current": "courant en marche",
  "commissioning.check.coverage": "tracés couverts",
  "commissioning.check.plausibility": "vraisemblance",
  "commissioning.check.waiver": "dispense",
  "commissioning.check.line-sizes": "tailles des conduites",
  "commissioning.check.flare-torque": "couple de serrage de l’évasement",
  "commissioning.check.flare-turn": "rotation de l’écrou évasé",
  "commissioning.check.flare-diameter": "diamètre de l’évasement",
  "commissioning.check.brazed-joint": "raccord brasé",
  "commissioning.check.pressed-joint": "raccord serti",
  "commissioning.check.joint-inspected": "inspection du raccord",
  "commissioning.check.joint-count": "nombre de raccords",
  "commissioning.check.joint-sizes": "tailles des raccords",
  "commissioning.check.pressure-test": "chute de pression",
  "commissioning.check.test-hold": "durée de maintien",
  "commissioning.check.marked-pressure": "pression indiquée",
  "commissioning.check.test-pressure": "pression d’essai",
  "commissioning.check.vacuum-decay": "remontée en pression",
  "commissioning.check.order": "ordre des travaux",
  "commissioning.check.room-charge": "charge et superficie de plancher",
  "commissioning.check.room-concentration": "charge et volume du local",
  "commissioning.check.additional-charge": "charge ajoutée selon le manuel",
  "commissioning.check.charge-rate": "charge ajoutée par longueur",
  "commissioning.check.weighed-charge": "charge pesée",
  "commissioning.check.valves-opened": "ouverture des robinets",
  "commissioning.check.circuit": "circuit",
  "commissioning.check.rules": "règles électriques",
  "commissioning.check.supply-voltage": "tension d’alimentation",
  "commissioning.check.drain-slope": "pente de l’évacuation",
  "commissioning.check.condensate-pump": "pompe à condensat",
  "commissioning.check.unit-pitch": "inclinaison de l’unité intérieure",
  "commissioning.check.water-drained": "essai à l’eau",
  "commissioning.check.service-reading": "pression de fonctionnement",
  "commissioning.check.charge-by-gauge": "surchauffe ou sous-refroidissement",
});

type Whole = typeof sentences | CatalogueOf<Words<FieldWord>>;

/** What `commissioning` says, with the fields of a record, in French. */
export const commissioning: CatalogueOf<Said & Words<FieldWord>> = /* @__PURE__ */ join<Whole>([
  sentences,
  recordFields,
]);
