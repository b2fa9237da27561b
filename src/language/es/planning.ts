// Spanish (of the Americas) of the plan: sentences and words.
import type { PlanningStatements, PlanningWord } from "../../planning/statements.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = PlanningStatements & Words<PlanningWord>;
const catalogue: Define<Said> = define;

/** What `planning` says, in Spanish. */
export const planning: CatalogueOf<Said> = /* @__PURE__ */ catalogue("es-419", {
  "planning.line-set":
    "Recorrido {run}: líneas de {stock}, {liquid} × {vapor}. Necesario: {needed}.",
  "planning.two-sets":
    "Recorrido {run}: necesario {needed}, más que la medida comercial más larga. Lleve {first} y {second} con acoples, {joints} uniones soldadas más, o un rollo.",
  "planning.roll":
    "Recorrido {run}: necesario {needed}, más que dos medidas comerciales. Tómelo de un rollo.",
  "planning.flares": {
    by: "count",
    one: "{count} abocinado por hacer.",
    other: "{count} abocinados por hacer.",
  },
  "planning.brazed": {
    by: "count",
    one: "{count} unión soldada, con flujo de nitrógeno.",
    other: "{count} uniones soldadas, con flujo de nitrógeno.",
  },
  "planning.couplings": {
    by: "count",
    one: "{count} acoplamiento precargado por cerrar.",
    other: "{count} acoplamientos precargados por cerrar.",
  },
  "planning.adapter":
    "Recorrido {run}, línea de {line}, extremo {end}: un adaptador de tubo de {tube} pulg a puerto de {port} pulg, una unión más.",
  "planning.caps": {
    by: "count",
    one: "{count} tapa en los puertos sin usar, dentro de la prueba de fugas.",
    other: "{count} tapas en los puertos sin usar, dentro de la prueba de fugas.",
  },
  "planning.joints": {
    by: "count",
    one: "{count} unión por registrar.",
    other: "{count} uniones por registrar.",
  },
  "planning.nut": {
    by: "count",
    one: "{count} tuerca abocinada de {tube} pulg: de {low} a {high}.",
    other: "{count} tuercas abocinadas de {tube} pulg: de {low} a {high}.",
  },
  "planning.wrenches":
    "Llaves para las tuercas: {flats} entre caras, y otra para sujetar cada cuerpo.",
  "planning.sleeve": "Recorrido {runs}: pasamuros de {diameter} de medida interior como mínimo.",
  "planning.cover": "Recorrido {runs}: canaleta de {side} × {side} de medida interior como mínimo.",
  "planning.link-cable": {
    by: "count",
    one: "{count} cable entre las unidades: {cable}.",
    other: "{count} cables entre las unidades, rotulados en ambos extremos: {cable}.",
  },
  "planning.lines-swapped":
    "Recorrido {run}: la línea de líquido no es la menor. ¿Están intercambiadas?",
  "planning.total-length-within":
    "Todos los recorridos suman {total}: dentro del límite de {limit}.",
  "planning.total-length-above":
    "Todos los recorridos suman {total}: superan el límite de {limit}.",
  "planning.indoor-lift-within":
    "La altura entre las unidades interiores es {lift}: dentro del límite de {limit}.",
  "planning.indoor-lift-above":
    "La altura entre las unidades interiores es {lift}: supera el límite de {limit}.",
  "planning.connected-within":
    "Las unidades interiores suman {total}: dentro del límite de {limit}.",
  "planning.connected-enough": "Las unidades interiores suman {total}; exigido: al menos {limit}.",
  "planning.connected-above":
    "Las unidades interiores suman {total}: superan el límite de {limit}.",
  "planning.connected-below":
    "Las unidades interiores suman {total}: por debajo del límite de {limit}.",

  "planning.device": {
    by: "poles",
    one: "Circuito {circuit}: {kinds:or}, {ratings:or}, {poles} polo.",
    other: "Circuito {circuit}: {kinds:or}, {ratings:or}, {poles} polos.",
  },
  "planning.conductor":
    "Circuito {circuit}: conductores de {size} como mínimo, que admiten {usable}.",
  "planning.conductor-for-drop":
    "Circuito {circuit}: lleve {size}. Con {smallest} la caída de voltaje es de {drop}, superior a {limit}.",
  "planning.grounding": "Circuito {circuit}: conductor de puesta a tierra de {size} como mínimo.",
  "planning.ground-fault":
    "Circuito {circuit}: protección contra falla a tierra que se dispare con {limit} o menos.",
  "planning.residual-current":
    "Circuito {circuit}: dispositivo diferencial de {limit} o menos, de un tipo que admita el manual.",
  "planning.disconnect":
    "Circuito {circuit}: medio de desconexión de {made} (al menos {least}); se admite sin fusibles.",
  "planning.fused-disconnect":
    "Circuito {circuit}: medio de desconexión de {made} (al menos {least}) con fusibles.",
  "planning.drop-within": "Circuito {circuit}: caída de voltaje {drop}, dentro de {limit}.",
  "planning.drop-above": "Circuito {circuit}: caída de voltaje {drop}, superior a {limit}.",
  "planning.drop-at-start": "Circuito {circuit}: caída de voltaje {drop} al arrancar el compresor.",
  "planning.verify-clause":
    "Circuito {circuit}: haga que se compruebe según el texto de {rules}, {clause}, y registre quién lo comprobó.",
  "planning.rules-not-passed": "Circuito {circuit}: no se dispone de las reglas {rules}.",
  "planning.voltage-window": "Alimentación en la unidad: de {low} a {high}.",
  "planning.monitor":
    "Monitor de voltaje: corta por debajo de {low} y por encima de {high} después de {trip}; reconecta después de {reconnect}.",
  "planning.drain-fall": "Recorrido {run}: el drenaje cae al menos {fall} en {length}.",
  "planning.drain-pump":
    "Recorrido {run}: una bomba de condensados con altura de bombeo de {lift}, conectada para parar la unidad.",
  "planning.trap":
    "Recorrido {run}: un sifón con {drop} de caída y {seal} de sello, {height} de alto.",

  "planning.nitrogen": "Recorrido {runs}: {mass} de nitrógeno para {volume}.",
  "planning.cylinder-enough": {
    by: "count",
    one: "El cilindro alcanza para {count} llenado: quedan {after}.",
    other: "El cilindro alcanza para {count} llenados: quedan {after}.",
  },
  "planning.cylinder-too-small": "El cilindro no contiene bastante: lleve otro mayor o más lleno.",
  "planning.regulator":
    "Un regulador de nitrógeno cuya salida llegue a {pressure}, con válvula de alivio.",
  "planning.nitrogen-hose": "Una manguera para nitrógeno marcada para {pressure} o más.",
  "planning.vacuum-hose":
    "Una manguera de vacío de {bore} sin depresores de válvula, un extractor de obuses y un adaptador para la toma de servicio (a menudo 5/16 pulg).",
  "planning.most-fill":
    "Llene hasta {most} como máximo: llega a la presión marcada, {limit}, a {warmest}.",
  "planning.fill": "Llene hasta {pressure} a {temperature}.",
  "planning.fill-lowered":
    "{wanted} superaría la presión marcada con el calor: llene hasta {most}.",
  "planning.stages": "Súbala por etapas: {stages}. Revise todas las uniones en cada una.",
  "planning.when-warm": "A {temperature} llega a {pressure}.",
  "planning.later": "A {temperature} el manómetro marca {pressure} si nada se fuga.",
  "planning.hold":
    "Recorrido {runs}: mantenga {recommended}, al menos {shortest}, para mostrar una fuga de {leak} con este manómetro.",
  "planning.hold-of-manual": "El manual exige una duración de {hold}.",
  "planning.hold-proves": "Recorrido {runs}: los {hold} previstos muestran fugas desde {leak}.",
  "planning.hold-below-manual":
    "La duración prevista, {hold}, es menor que la que exige el manual, {least}.",
  "planning.above-own-pressure":
    "El llenado, {fill}, supera los {own} que tiene el refrigerante a {temperature}.",
  "planning.below-own-pressure":
    "El llenado, {fill}, es menor que los {own} que tiene el refrigerante a {temperature}: demuestra demasiado poco.",
  "planning.fill-below-manual": "El llenado, {fill}, es menor que el que exige el manual, {least}.",
  "planning.no-nitrogen":
    "{construction}: sin prueba con nitrógeno, sin evacuación, sin carga agregada.",
  "planning.bubble-couplings":
    "Revise cada acoplamiento con agua jabonosa y un detector después de abrir. Presión en reposo: {pressure} a {temperature}.",
  "planning.vacuum-target": "Haga vacío por debajo de {target}.",
  "planning.vacuum-limit": "Aísle: {limit} como máximo después de {hold}.",
  "planning.vacuum-rise": "Aísle: un aumento de {rise} como máximo en {hold}.",
  "planning.vacuum-leak": "Fuga máxima con la que el vacío puede cumplir: {leak}.",
  "planning.pump-down":
    "Recorrido {runs}: la bomba sola tarda {time} en llegar a {target}; mangueras y agua tardan más.",
  "planning.ice":
    "A {temperature} el hielo mantiene {pressure}: caliente el punto más frío, o el vacío puede ocultar hielo.",

  "planning.refrigerant": "{refrigerant}: {mass} por agregar y {reserve} de reserva.",
  "planning.flammable-cylinder":
    "Refrigerante inflamable: cilindro, mangueras, báscula, bomba y detector aptos; rosca izquierda en el cilindro.",
  "planning.blend-as-liquid": "Cargue la mezcla como líquido.",
  "planning.added": "Agregue {mass} en total.",
  "planning.taken-out": "Retire {mass} en total.",
  "planning.nothing-added": "No agregue nada.",
  "planning.label": "Total para la etiqueta: {mass}.",
  "planning.room-needs": "Recorrido {run}: {charge} exigen un recinto de {area}.",
  "planning.outdoor-zone":
    "Los {charge} quedan en el exterior: mantenga la zona del manual libre de aberturas, desagües y fuentes de ignición.",
  "planning.expect-pressures-low":
    "{mode}, {indoor} en el interior, {outdoor} en el exterior: lado de baja de {lowFrom} a {lowTo} (puerto de gas), lado de alta de {highFrom} a {highTo}.",
  "planning.expect-pressures-high":
    "{mode}, {indoor} en el interior, {outdoor} en el exterior: lado de baja de {lowFrom} a {lowTo}, lado de alta de {highFrom} a {highTo} (puerto de gas).",
  "planning.expect-air":
    "{mode} a plena velocidad: el aire cambia de {low} a {high} a través del serpentín interior.",
  "planning.expect-current":
    "Corriente a plena velocidad: cerca de {rated}, nunca por encima de {most}.",
  "planning.ask": "Escriba: {field}. Hace falta para: {changes}.",
  "planning.ask-of-runs": "Recorrido {runs}, escriba: {field}. Hace falta para: {changes}.",
  "planning.unusable": "Revise: {field}. {value} no se puede usar.",

  "planning.part.lines": "líneas",
  "planning.part.joints": "uniones",
  "planning.part.wall": "pasamuros, canaleta y cable",
  "planning.part.circuit": "circuito",
  "planning.part.supply": "alimentación eléctrica",
  "planning.part.drain": "drenaje",
  "planning.part.pressure-test": "prueba de presión",
  "planning.part.evacuation": "evacuación",
  "planning.part.charge": "carga",
  "planning.part.room": "recinto",
  "planning.part.operation": "funcionamiento",
  "planning.line.liquid": "líquido",
  "planning.line.vapor": "gas",
  "planning.end.indoor": "interior",
  "planning.end.outdoor": "exterior",
  "planning.mode.cooling": "Enfriamiento",
  "planning.mode.heating": "Calefacción",
  "planning.device.breaker": "interruptor termomagnético",
  "planning.device.fuse": "fusible",
  "planning.construction.quick-connect": "Líneas precargadas",
  "planning.construction.monobloc": "Monobloque",
});
