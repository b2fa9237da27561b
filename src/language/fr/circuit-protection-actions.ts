// French of what to do next about a circuit.
import type { CircuitProtectionActions } from "../../circuit-protection/statements.ts";
import type { CatalogueOf, Define } from "../define.ts";
import { defineFrench } from "./typeset.ts";

const catalogue: Define<CircuitProtectionActions> = defineFrench;

/** What to do next about a circuit, in Canadian French. */
export const circuitProtectionActions: CatalogueOf<CircuitProtectionActions> =
  /* @__PURE__ */ catalogue("fr-CA", {
    "circuit-protection.fit-at-most": "Posez un disjoncteur ou des fusibles de {limit} ou moins.",
    "circuit-protection.fit-between": "Posez un disjoncteur ou des fusibles de {from} à {to}.",
    "circuit-protection.fit-fuses": "Posez des fusibles, par exemple dans le sectionneur.",
    "circuit-protection.fit-poles": "Posez un disjoncteur à {needed} pôles.",
    "circuit-protection.fuse-every-line":
      "Posez un fusible sur chacun des {needed} conducteurs de ligne.",
    "circuit-protection.give-own-circuit": "Donnez à l’appareil un circuit à lui.",
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
      "Faites calculer le conducteur selon {clause} et les règles locales, et notez qui l’a fait.",
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
    "circuit-protection.look-at-fittings":
      "Regardez si la canalisation a des raccords à compression ou filetés.",
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
    "circuit-protection.fit-ground-fault":
      "Posez une protection homologuée contre les défauts à la terre qui se déclenche à {limit} ou moins, d’un type que le manuel permet.",
    "circuit-protection.state-date": "Indiquez la date des travaux.",
    "circuit-protection.state-ground-fault":
      "Indiquez si une protection contre les défauts à la terre de {limit} ou moins est posée, ou le texte adopté de {clause}.",
    "circuit-protection.comply-and-verify":
      "Modifiez le circuit jusqu’à ce qu’il soit conforme à {clause}, {rules}, et faites-le vérifier de nouveau.",
    "circuit-protection.withdraw-verification":
      "Retirez la vérification de {clause}, ou nommez un article qui a été demandé.",
    "circuit-protection.ask-authority":
      "Faites vérifier selon le texte de {rules}, {clause}, et notez qui l’a vérifié.",
    "circuit-protection.add-compressor": "Ajoutez le compresseur aux charges.",
    "circuit-protection.check-service":
      "Comparez la tension, les phases et le système avec le branchement.",
    "circuit-protection.maximum-below-ampacity":
      "MOP inférieure à MCA : la plaque signalétique est mal lue, ou les valeurs viennent de deux appareils.",
  });
