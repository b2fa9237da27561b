// French of France: the words that it has for what Canada calls otherwise.
// Follows the trade's manuals and rules as sold and published in France, from memory.
// Does not cover units: a reader in France passes SI; inches stay for tube.
import type { Catalogue, Message } from "../../assessment/catalogue.ts";
import type { CodeOf } from "../define.ts";
import { swapping, vary } from "../vary.ts";
import { french } from "./whole.ts";

const words = /* @__PURE__ */ swapping([
  ["po", "pouce"],
  ["2000 pi", "2000 pieds"],
  ["40 pi³", "40 pieds³"],
  ["oz/pi", "oz/pied"],
  ["lb/pi", "lb/pied"],
  // Tubing, valves, hoses
  ["conduite de liquide", "liaison liquide"],
  ["conduite de gaz", "liaison gaz"],
  ["robinet", "vanne"],
  ["robinets", "vannes"],
  ["les robinets ont été ouverts", "les vannes ont été ouvertes"],
  ["les robinets peuvent être ouverts", "les vannes peuvent être ouvertes"],
  ["gardez les robinets fermés", "gardez les vannes fermées"],
  ["le robinet a été fermé", "la vanne a été fermée"],
  ["le robinet", "la vanne"],
  ["un robinet", "une vanne"],
  ["un robinet fermé", "une vanne fermée"],
  ["son propre robinet", "sa propre vanne"],
  ["son robinet", "sa vanne"],
  ["son robinet est ouvert", "sa vanne est ouverte"],
  ["boyau", "flexible"],
  ["boyaux", "flexibles"],
  ["en rouleau", "en couronne"],
  ["manchon mural", "fourreau"],
  ["un régulateur", "un détendeur de bouteille"],
  ["le serpentin", "l’échangeur"],
  ["serpentins", "échangeurs"],
  // Pressure, refrigerant, air
  ["manométrique", "relative"],
  ["manométriques", "relatives"],
  ["débit de fuite", "taux de fuite"],
  ["frigorigène", "fluide frigorigène"],
  ["frigorigènes", "fluides frigorigènes"],
  ["circuit de frigorigène", "circuit frigorifique"],
  ["en climatisation", "en froid"],
  ["pour la climatisation", "pour le froid"],
  ["climatisation", "froid"],
  ["superficie de plancher", "surface au sol"],
  ["pompe à condensat", "pompe de relevage"],
  ["ruban à mesurer", "mètre ruban"],
  // The manual
  ["manuel", "notice"],
  ["manuels", "notices"],
  ["le manuel", "la notice"],
  ["du manuel", "de la notice"],
  ["un autre manuel", "une autre notice"],
  ["d’un autre manuel", "d’une autre notice"],
  ["le manuel a été relu", "la notice a été relue"],
  ["seul le manuel", "seule la notice"],
  ["aucun manuel n’a été lu", "aucune notice n’a été lue"],
  // Electricity
  ["sectionneur", "interrupteur-sectionneur"],
  ["le sectionneur", "l’interrupteur-sectionneur"],
  ["du sectionneur", "de l’interrupteur-sectionneur"],
  ["au sectionneur", "à l’interrupteur-sectionneur"],
  ["en vue de", "à portée de vue de"],
  ["en vue", "à portée de vue"],
  ["cadenassez", "consignez"],
  ["cadenassé", "verrouillé"],
  ["grosseur", "section"],
  ["grosseur du conducteur", "section du conducteur"],
  ["conducteurs grossis", "conducteurs de section augmentée"],
  ["courant nominal du sectionneur", "calibre de l’interrupteur-sectionneur"],
  ["courant nominal du dispositif", "calibre du dispositif"],
  ["courants nominaux normalisés", "calibres normalisés"],
  ["conducteur de continuité des masses", "conducteur de protection"],
  ["continuité des masses", "mise à la terre"],
  ["depuis le panneau", "depuis le tableau"],
  ["tension nominale", "tension assignée"],
  ["tensions nominales", "tensions assignées"],
]);

/** A narrow no-break space stands before these in France. */
const write = (text: string): string => words(text).replace(/[;!?]/g, "\u202f$&");

type Code = CodeOf<typeof french>;

/** The vacuum, which shares its word with the drain elsewhere, and the signs of inch-pound units. */
const own: { readonly [C in Code]?: Message } = {
  "commissioning.step.evacuation": "tirage au vide",
  "commissioning.field.evacuations": "tirage au vide",
  "commissioning.field.evacuations.at": "date du tirage au vide",
  "commissioning.field.evacuations.covers": "tracés du tirage au vide",
  "line-set.charge-after-tests":
    "Chargez à la balance, et seulement une fois l’essai de pression et le tirage au vide conformes.",
  "planning.adapter":
    "Tracé {run}, liaison {line}, côté {end}\u00a0: un adaptateur de tube de {tube} pouce à port de {port} pouce, un raccord de plus.",
  "display.unit.in": { by: "count", one: "{count} pouce", other: "{count} pouces" },
  "display.unit.ft": { by: "count", one: "{count} pied", other: "{count} pieds" },
  "display.unit.in²": { by: "count", one: "{count} pouce²", other: "{count} pouces²" },
  "display.unit.ft²": { by: "count", one: "{count} pied²", other: "{count} pieds²" },
  "display.unit.in³": { by: "count", one: "{count} pouce³", other: "{count} pouces³" },
  "display.unit.ft³": { by: "count", one: "{count} pied³", other: "{count} pieds³" },
  "display.unit.cfm": { by: "count", one: "{count} pied³/min", other: "{count} pieds³/min" },
  "display.unit.oz/ft": "{count} oz/pied",
  "display.unit.lb/ft": "{count} lb/pied",
  "display.unit.lb/ft³": "{count} lb/pied³",
  "display.unit.lb/1000 ft³": "{count} lb/1000 pieds³",
  "display.unit.ft/min": { by: "count", one: "{count} pied/min", other: "{count} pieds/min" },
  "display.unit.Ω/kft": "{count} Ω/1000 pieds",
};

/** The whole language as France writes it. */
export const frenchOfFrance: Catalogue<Code> = /* @__PURE__ */ vary(french, "fr-FR", write, own);
