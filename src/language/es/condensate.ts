// Spanish (of the Americas) of condensate: sentences and words.
import type { CondensateStatements, CondensateWord } from "../../condensate/statements.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = CondensateStatements & Words<CondensateWord>;
const catalogue: Define<Said> = define;

/** What `condensate` says, in Spanish. */
export const condensate: CatalogueOf<Said> = /* @__PURE__ */ catalogue("es-419", {
  "condensate.falls-enough":
    "Pendiente del drenaje {slope} ± {uncertainty}: al menos {required}, como se exige.",
  "condensate.falls-too-little":
    "Pendiente del drenaje {slope} ± {uncertainty}: menor que la exigida, {required}.",
  "condensate.rises":
    "El drenaje sube en el sentido del flujo: pendiente {slope} ± {uncertainty}; exigida: {required}.",
  "condensate.codes-differ":
    "Pendiente del drenaje {slope} ± {uncertainty}: los códigos no coinciden. Uno indica {least}; los demás, {required}.",
  "condensate.slope-near":
    "Pendiente del drenaje {slope} ± {uncertainty}: demasiado cerca de la exigida, {required}, para decidir.",
  "condensate.pitch-enough":
    "Inclinación hacia el drenaje {pitch} ± {uncertainty}: al menos {minimum}, como se exige.",
  "condensate.pitch-within":
    "Inclinación hacia el drenaje {pitch} ± {uncertainty}: dentro de {minimum} a {maximum}.",
  "condensate.pitch-away":
    "La unidad se inclina en contra de su drenaje: inclinación {pitch} ± {uncertainty}; exigida: al menos {minimum}.",
  "condensate.pitch-too-little":
    "Inclinación hacia el drenaje {pitch} ± {uncertainty}: por debajo del mínimo de {minimum}.",
  "condensate.pitch-too-much":
    "Inclinación hacia el drenaje {pitch} ± {uncertainty}: supera el máximo de {maximum}.",
  "condensate.pitch-near":
    "Inclinación hacia el drenaje {pitch} ± {uncertainty}: demasiado cerca de un límite para decidir.",
  "condensate.pump-keeps-up":
    "Con una altura de bombeo de {lift} la bomba mueve {flow}; exigido: {required}.",
  "condensate.pump-too-slow":
    "Con una altura de bombeo de {lift} la bomba mueve {flow}: menos que lo exigido, {required}.",
  "condensate.pump-lift-too-high":
    "Altura de bombeo {lift}: supera el máximo de la bomba, {highest}.",
  "condensate.gravity": "Desnivel {available}; exigido: {needed}.",
  "condensate.fall-short": "Desnivel insuficiente: faltan {shortfall} en el punto {point}.",

  "condensate.straight": "Recto entre los puntos medidos.",
  "condensate.exact-instrument": "No se indicó la exactitud; la lectura se supone exacta.",
  "condensate.code-slope":
    "No se indicó la pendiente exigida. Se toma 1/8 pulg por pie, {slope}, de los códigos de Estados Unidos.",
  "condensate.level-is-enough": "A nivel se toma como inclinación suficiente.",
  "condensate.maximum-pitch-not-checked":
    "La inclinación máxima del manual no se indicó ni se comprobó.",
  "condensate.pump-margin": "Caudal exigido a la bomba: {margin} veces el condensado.",
  "condensate.pump-curve-straight": "La curva de la bomba es recta entre sus puntos.",

  "condensate.steep":
    "Una pendiente de {slope} es fuerte; lo habitual: hasta {usual}. ¿Se anotó un dato en otra unidad?",
  "condensate.flatter-than-code":
    "Los códigos de plomería exigen al menos {least}. Pregunte qué texto rige aquí.",
  "condensate.discharge":
    "No deje caer el agua en la vía pública. A la alcantarilla, solo por descarga indirecta, con el extremo de la manguera sobre el agua.",
  "condensate.sweating": "Aísle los drenajes interiores que suden.",
  "condensate.sunlight":
    "El sol deshace la manguera y la espuma sin proteger. Cúbralas o píntelas.",
  "condensate.freezing":
    "Un drenaje exterior puede congelarse y el agua puede retroceder. Hágalo corto, con pendiente, sin sifón, aislado o calentado.",
  "condensate.overflow":
    "Sobre un espacio terminado, un desborde causa daños. Instale una bandeja, un segundo drenaje o un interruptor de nivel.",
  "condensate.pump-failure":
    "Conecte el interruptor de nivel de la bomba de modo que pare la unidad.",
  "condensate.dry-trap": "Llene primero el sifón con agua. Un sifón seco deja pasar aire.",

  "condensate.increase-slope": "Aumente la pendiente a {required} o más, o instale una bomba.",
  "condensate.increase-fall":
    "Aumente el desnivel en {fall} o más a lo largo de {run}, o instale una bomba.",
  "condensate.ask-code":
    "Pregunte a la autoridad local qué pendiente rige, o dé al drenaje {required}.",
  "condensate.measure-better": "Vuelva a medir sobre una base más larga o con un nivel mejor.",
  "condensate.raise-pitch": "Nivele de nuevo la unidad: al menos {minimum} hacia el drenaje.",
  "condensate.lower-pitch": "Nivele de nuevo la unidad: {maximum} como máximo hacia el drenaje.",
  "condensate.other-pump":
    "Instale una bomba que mueva {required} o más con una altura de bombeo de {lift}.",
  "condensate.lower-point":
    "Baje el punto {point} en {shortfall} o más, o instale una bomba para una altura de bombeo de {lift}.",

  "condensate.cause.rises": "el drenaje sube",
  "condensate.cause.too-flat": "drenaje demasiado plano",
  "condensate.cause.away-from-drain": "la unidad se inclina en contra de su drenaje",
  "condensate.cause.too-little": "inclinación insuficiente",
  "condensate.cause.too-much": "inclinación excesiva",
  "condensate.cause.lift-too-high": "altura de bombeo excesiva para la bomba",
  "condensate.cause.too-slow": "caudal de la bomba insuficiente",
  "condensate.cause.needs-pump": "hace falta una bomba",
});
