// Spanish (of the Americas) of the flare joint: sentences and words.
import type { FlareJointStatements, FlareJointWord } from "../../flare-joint/statements.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = FlareJointStatements & Words<FlareJointWord>;
const catalogue: Define<Said> = define;

/** What `flare-joint` says, in Spanish. */
export const flareJoint: CatalogueOf<Said> = /* @__PURE__ */ catalogue("es-419", {
  "flare-joint.within-range": "{figure} {measured}: dentro de {low} a {high}.",
  "flare-joint.outside-range": "{figure} {measured}: fuera de {low} a {high}.",
  "flare-joint.above-minimum": "{figure} {measured}: al menos {low}, como se exige.",
  "flare-joint.below-minimum": "{figure} {measured}: menor que el mínimo de {low}.",
  "flare-joint.would-have-failed": "Una lectura {beyond} más allá de un límite no habría cumplido.",
  "flare-joint.sources-disagree":
    "{figure} {measured}: los intervalos publicados no coinciden. Todos admiten de {low} a {high}.",
  "flare-joint.minimums-disagree":
    "{figure} {measured}: los mínimos publicados no coinciden. Todos admiten {low} o más.",
  "flare-joint.instrument-cannot-tell":
    "No concluyente: {figure} {measured} está a menos de {guard} de un límite.",
  "flare-joint.hydraulic-flare":
    "Parece un abocinado hidráulico de 37° (SAE J514). No encaja en un asiento de 45°.",
  "flare-joint.right-on-other-scale":
    "{other} estaría dentro del intervalo. ¿Está el par en otra unidad?",
  "flare-joint.manual-range-wide":
    "El intervalo del manual, de {low} a {high}, es demasiado amplio para distinguir N·m de lb·pie. Publicado: de {from} a {to} para {tube}.",
  "flare-joint.manual-range-apart":
    "El intervalo del manual, de {low} a {high}, no tiene nada en común con el publicado, de {from} a {to} para {tube}.",
  "flare-joint.newton-meter-as-foot-pound":
    "El intervalo indicado es unas 1.36 veces mayor. ¿Está en N·m en lugar de lb·pie?",
  "flare-joint.foot-pound-as-newton-meter":
    "El intervalo publicado es unas 1.36 veces mayor. ¿Está el indicado en lb·pie en lugar de N·m?",
  "flare-joint.manual-diameters-wide":
    "Los límites del manual, de {low} a {high}, son demasiado amplios para un abocinado. Los publicados distan {widest} como máximo.",
  "flare-joint.manual-minimum-thin":
    "El espesor mínimo indicado, {least}, es menor que el de cualquier tubo del mercado. Los manuales exigen {usual} o más.",
  "flare-joint.adapter-needed":
    "Se exige un adaptador: {port} pulg SAE hembra ({portThread}) a {hose} pulg SAE macho ({hoseThread}).",
  "flare-joint.hose-fits": "La manguera SAE de {hose} pulg ({hoseThread}) entra en el puerto.",

  "flare-joint.exact-instrument": "No se indicó la exactitud; la lectura se supone exacta.",
  "flare-joint.published-ranges":
    "Evaluado con intervalos publicados, porque falta el del manual: {sources}.",
  "flare-joint.one-source": "Una sola fuente da este intervalo, y es de memoria.",
  "flare-joint.wider-flare-assumed":
    "R-454B lleva el abocinado más ancho de R-410A: práctica común, no se leyó ningún manual.",
  "flare-joint.manual-read-again":
    "El manual se volvió a leer; sus valores deciden sobre los publicados.",

  "flare-joint.not-a-leak-test":
    "Esto no demuestra que la unión sea hermética. Solo lo hace una prueba de presión.",
  "flare-joint.beyond-sources":
    "El par de apriete {torque} solo lo respalda el manual. Publicado: de {low} a {high}. Compruebe el tamaño y la unidad.",

  "flare-joint.tighten":
    "Apriete la tuerca con un par de entre {low} y {high}, sujetando el cuerpo con una segunda llave.",
  "flare-joint.tighten-by-turn":
    "Siga girando la tuerca, de {low} a {high} desde el punto en que sube el par.",
  "flare-joint.remake-and-tighten":
    "Corte el abocinado, rehágalo y apriételo con un par de entre {low} y {high}.",
  "flare-joint.remake-and-turn": "Corte el abocinado, rehágalo y gire su tuerca de {low} a {high}.",
  "flare-joint.remake-larger": "Corte el abocinado y haga uno mayor: de {low} a {high}.",
  "flare-joint.remake-smaller": "Corte el abocinado y haga uno menor: de {low} a {high}.",
  "flare-joint.remake-cone": "Corte el abocinado y rehágalo con un abocinador de 45°.",
  "flare-joint.replace-tube": "Cambie el tubo por uno con pared de {low} o más.",
  "flare-joint.measure-better": "Vuelva a medir con un instrumento de ±{needed} o mejor.",
  "flare-joint.check-wrench":
    "Haga comprobar la llave cerca de este par e indique su error: ±{needed} o mejor decide.",
  "flare-joint.check-scale": "Antes de cortar nada, compruebe qué escala de la llave se leyó.",
  "flare-joint.aim-inside":
    "Llévelo al centro de {low} a {high}. Ningún instrumento distingue un valor tan cerca de un límite.",
  "flare-joint.aim-above":
    "Elija un tubo claramente por encima de {low}. Ningún instrumento distingue un valor tan cerca de un límite.",
  "flare-joint.state-manual-range": "Escriba el intervalo del manual de la unidad.",
  "flare-joint.read-manual-again": "Vuelva a leer el manual, con su unidad de medida.",

  "flare-joint.figure-from-manual": "No hay valor publicado. Tómelo del manual de la unidad.",

  "flare-joint.figure.torque": "Par de apriete",
  "flare-joint.figure.turn": "Giro",
  "flare-joint.figure.diameter": "Diámetro del abocinado",
  "flare-joint.figure.wall": "Espesor de pared",
  "flare-joint.figure.seat-angle": "Ángulo del asiento",
  "flare-joint.source.jis-type-manuals": "dos manuales para tuercas de tipo JIS",
  "flare-joint.source.en-378-2": "EN 378-2",
  "flare-joint.source.manual-range": "el intervalo de otro manual",
  "flare-joint.cause.under-tightened": "tuerca demasiado floja",
  "flare-joint.cause.over-tightened": "tuerca demasiado apretada",
  "flare-joint.cause.flare-too-small": "abocinado demasiado chico",
  "flare-joint.cause.flare-too-large": "abocinado demasiado grande",
  "flare-joint.cause.wall-too-thin": "pared demasiado delgada",
  "flare-joint.cause.cone-too-steep": "cono demasiado cerrado",
  "flare-joint.cause.cone-too-flat": "cono demasiado abierto",
});
