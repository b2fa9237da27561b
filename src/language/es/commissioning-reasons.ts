// Spanish of reasons and assumptions of the verdict on an installation.
import type { CommissioningReasons } from "../../commissioning/statements.ts";
import { type CatalogueOf, type Define, define } from "../define.ts";

const catalogue: Define<CommissioningReasons> = define;

/** Why the verdict is what it is, and what it assumes, in Spanish of the Americas. */
export const commissioningReasons: CatalogueOf<CommissioningReasons> = /* @__PURE__ */ catalogue(
  "es-419",
  {
    "commissioning.not-recorded": "No registrado: {fields}.",
    "commissioning.unusable-value": "El valor de {field} no se puede usar: {value}.",
    "commissioning.unusable-part": "Lo registrado no se puede usar: {field}.",
    "commissioning.value-too-low":
      "Valor demasiado bajo ({field}): {value}; permitido: al menos {limit}.",
    "commissioning.value-not-above":
      "Valor demasiado bajo ({field}): {value}; exigido: más de {limit}.",
    "commissioning.value-too-high":
      "Valor demasiado alto ({field}): {value}; permitido: {limit} como máximo.",
    "commissioning.value-not-below":
      "Valor demasiado alto ({field}): {value}; exigido: menos de {limit}.",
    "commissioning.too-few-entries":
      "Faltan entradas ({field}): {count}; exigido: al menos {limit}.",
    "commissioning.too-many-entries":
      "Sobran entradas ({field}): {count}; permitido: {limit} como máximo.",
    "commissioning.waived": "No comprobado: dispensado por {by}, {at}: {why}.",
    "commissioning.waived-for-run":
      "Recorrido {run} no comprobado: dispensado por {by}, {at}: {why}.",
    "commissioning.waived-by-nobody": "La dispensa no cuenta: no se nombra a nadie.",
    "commissioning.waived-twice": "El paso está dispensado más de una vez.",
    "commissioning.waiver-contradicted":
      "El paso está dispensado, pero hay un dato registrado: {field}.",
    "commissioning.waiver-without-reason":
      "La dispensa no cuenta sin motivo. Este paso admite: {fits}.",
    "commissioning.waiver-does-not-fit":
      "El motivo no corresponde al paso: {reason}. Este paso admite: {fits}.",
    "commissioning.waiver-needs-a1":
      "El recinto solo puede quedar sin comprobar con un refrigerante de clase de seguridad A1.",
    "commissioning.waiver-needs-heating-only":
      "El drenaje solo se puede dispensar en una unidad que nunca enfría.",
    "commissioning.falls-away": "No hace falta: {construction}.",
    "commissioning.construction-contradicted":
      "Hay un dato registrado, aunque no hace falta ({construction}): {field}.",
    "commissioning.run-not-covered": "El recorrido {run} no queda incluido.",
    "commissioning.unknown-run": "Ningún recorrido se llama {run}.",
    "commissioning.order-not-shown": {
      by: "hold",
      "open-valves":
        "Las horas no muestran que las comprobaciones cumplieran antes de abrir las válvulas.",
      "add-charge":
        "Las horas no muestran que las comprobaciones cumplieran antes de agregar refrigerante.",
      other:
        "Las horas no muestran que las comprobaciones cumplieran antes de energizar la unidad.",
    },
    "commissioning.line-other-than-port":
      "La {line}, {diameter}, no tiene el tamaño de su puerto, {port} pulg. ¿Hay un adaptador, o es otro diámetro?",
    "commissioning.line-with-adapter":
      "La {line}, {diameter}, está en un puerto de {port} pulg, con adaptador.",
    "commissioning.indoor-lift-within":
      "Altura entre las unidades interiores {lift}: dentro del máximo de {most}.",
    "commissioning.indoor-lift-above":
      "Altura entre las unidades interiores {lift}: supera el máximo de {most}.",
    "commissioning.connected-within":
      "Las unidades interiores suman {total}: dentro del límite de {limit}.",
    "commissioning.connected-enough":
      "Las unidades interiores suman {total}; exigido: al menos {limit}.",
    "commissioning.connected-above":
      "Las unidades interiores suman {total}: superan el límite de {limit}.",
    "commissioning.connected-below":
      "Las unidades interiores suman {total}: por debajo del límite de {limit}.",
    "commissioning.indoor-lift-too-close":
      "Demasiado justo para decidir: la altura entre las unidades interiores es {lift}, el máximo {most}.",
    "commissioning.total-length-within": "Longitud total {total}: dentro del máximo de {most}.",
    "commissioning.total-length-above": "Longitud total {total}: supera el máximo de {most}.",
    "commissioning.total-length-too-close":
      "No concluyente: la longitud total es de {total} y el máximo, de {most}.",
    "commissioning.fewer-joints-than-ends":
      "Uniones indicadas: {count}. Dos líneas con dos extremos tienen al menos cuatro. ¿Falta alguna?",
    "commissioning.manual-silent":
      "El manual no da presión de prueba. La exigida viene de otra fuente: {standing}.",
    "commissioning.blend-fed-as-liquid": "La mezcla se cargó como líquido.",
    "commissioning.blend-fed-as-vapor":
      "La mezcla se cargó como vapor; su composición puede haber cambiado.",
    "commissioning.drain-fall":
      "El drenaje cae {fall} desde la bandeja hasta su extremo; se exige al menos {needed}.",
    "commissioning.drain-falls-straight": "El drenaje cae vertical.",
    "commissioning.usual-air-difference":
      "No se indicó el intervalo del manual. Se toma el habitual: de {low} a {high}.",
    "commissioning.air-difference-within": {
      by: "mode",
      cooling: "El aire se enfría {difference}: dentro de {low} a {high}.",
      other: "El aire se calienta {difference}: dentro de {low} a {high}.",
    },
    "commissioning.air-difference-outside": {
      by: "mode",
      cooling: "El aire se enfría {difference}: fuera de {low} a {high}.",
      other: "El aire se calienta {difference}: fuera de {low} a {high}.",
    },
    "commissioning.air-difference-too-close": {
      by: "mode",
      cooling: "No concluyente: el aire se enfría {difference}; exigido: de {low} a {high}.",
      other: "No concluyente: el aire se calienta {difference}; exigido: de {low} a {high}.",
    },
    "commissioning.air-the-other-way": {
      by: "mode",
      cooling:
        "En enfriamiento, el aire de suministro está {difference} más caliente que el de retorno. ¿Están intercambiados?",
      other:
        "En calefacción, el aire de suministro está {difference} más frío que el de retorno. ¿Están intercambiados?",
    },
    "commissioning.not-at-full-speed":
      "El compresor no funcionó a plena velocidad; el aire y la corriente no demuestran nada.",
    "commissioning.current-within":
      "Corriente {current}: dentro de {most}, según la placa: {field}.",
    "commissioning.current-within-deviation":
      "Corriente {current}: supera {most} de la placa ({field}) en no más del 15 % que permite su norma.",
    "commissioning.current-above-plate":
      "Corriente {current}: supera {most}, según la placa: {field}.",
    "commissioning.current-too-close":
      "No concluyente: corriente de {current}; placa: {most}, {field}.",
    "commissioning.current-odd":
      "Corriente {current} a plena velocidad: muy por debajo de {rated}, según la placa: {field}. ¿Falta una cifra?",
    "commissioning.current-unusual":
      "Corriente {current}: a plena carga es habitual de {low} a {rated}, de la mitad al total de lo que da la placa: {field}.",
    "commissioning.rules-not-passed":
      "El circuito no se comprobó: no se dispone del conjunto de reglas {rules}.",
    "commissioning.done-before-proof": {
      by: "hold",
      "open-valves": "Las válvulas se abrieron el {at}, antes de una comprobación del {proof}.",
      "add-charge": "Se agregó refrigerante el {at}, antes de una comprobación del {proof}.",
      other: "La unidad se energizó el {at}, antes de una comprobación del {proof}.",
    },
    "commissioning.done-without-proof": {
      by: "hold",
      "open-valves": "Las válvulas se abrieron antes de que cumpliera lo siguiente: {steps}.",
      "add-charge": "Se agregó refrigerante antes de que cumpliera lo siguiente: {steps}.",
      other: "La unidad se energizó antes de que cumpliera lo siguiente: {steps}.",
    },
    "commissioning.held": {
      by: "hold",
      "open-valves": "Mantenga cerradas las válvulas hasta que cumpla lo siguiente: {steps}.",
      "add-charge": "No agregue refrigerante hasta que cumpla lo siguiente: {steps}.",
      other: "Mantenga la energía cortada hasta que cumpla lo siguiente: {steps}.",
    },
    "commissioning.released": {
      by: "hold",
      "open-valves": "Las válvulas se pueden abrir: cumplieron todas las comprobaciones previas.",
      "add-charge": "Se puede agregar refrigerante: cumplieron todas las comprobaciones previas.",
      other: "La unidad se puede energizar: cumplieron todas las comprobaciones previas.",
    },
    "commissioning.left-to-verify":
      "La unidad está energizada. Queda por comprobar según el texto de la norma: {steps}.",
    "commissioning.released-by-declaration": {
      by: "hold",
      "open-valves": "Las válvulas se pueden abrir. No aplica y no se comprobó: {steps}.",
      "add-charge": "Se puede agregar refrigerante. No aplica y no se comprobó: {steps}.",
      other: "La unidad se puede energizar. No aplica y no se comprobó: {steps}.",
    },
    "commissioning.older-than-work":
      "La lectura del {read} es anterior al trabajo del {at}, y no demuestra nada sobre él.",
    "commissioning.rework-not-ordered":
      "El trabajo con fecha {at} pudo hacerse después de la lectura de {read}, que entonces no prueba nada de él.",
    "commissioning.begun-before-work":
      "Las lecturas que terminaron el {read} empezaron antes del trabajo del {at}, y no demuestran nada sobre él.",
    "commissioning.lines-swapped":
      "La línea de líquido, {liquid}, está registrada como más ancha que la línea de gas, {vapor}.",
    "commissioning.joints-complete": {
      by: "count",
      one: "La única unión está registrada.",
      other: "Están registradas las {count} uniones.",
    },
    "commissioning.joints-incomplete": "Uniones registradas: {recorded} de {count}.",
    "commissioning.joint-recorded-twice": "Registrado más de una vez: unión {joints}.",
    "commissioning.joint-defect": "La inspección encontró un defecto.",
    "commissioning.joint-inspected": "La inspección no encontró defectos.",
    "commissioning.brazed-with-nitrogen": "Soldada con flujo de nitrógeno.",
    "commissioning.brazed-without-nitrogen": "Soldada sin flujo de nitrógeno.",
    "commissioning.no-flare-of-line":
      "No hay registrado ningún abocinado de la {line}, {diameter}. Tamaños registrados, en pulgadas: {tubes}. ¿Se copió un dato, o hay un adaptador?",
    "commissioning.held-long-enough": "Duración de la prueba: {held}; exigida: {required}.",
    "commissioning.held-too-short": "Duración de la prueba: solo {held}; exigida: {required}.",
    "commissioning.within-marked-pressure":
      "La prueba llegó a {pressure}, sin superar la presión marcada más baja, {limit}.",
    "commissioning.above-marked-pressure":
      "La prueba llegó a {pressure}: por encima de la presión marcada más baja, {limit}.",
    "commissioning.test-pressure-reached": "Se probó a {pressure}; exigido: al menos {limit}.",
    "commissioning.test-pressure-too-low": "Se probó a solo {pressure}; exigido: al menos {limit}.",
    "commissioning.test-below-refrigerant":
      "Se probó a {pressure}: por debajo de los {own} que {refrigerant} tiene en reposo a {temperature}.",
    "commissioning.stands-outdoors":
      "No se registró ningún recinto, así que se supone que toda la unidad está al aire libre. Si está en un recinto, hay que registrarlo: su carga se compara con él.",
    "commissioning.nothing-added": "No se agregó nada: el manual no pide nada con esta longitud.",
    "commissioning.weighed-within":
      "La carga agregada, {added}, está a menos de {tolerance} de la exigida, {asked}.",
    "commissioning.weighed-outside":
      "La carga agregada, {added}, está a más de {tolerance} de la exigida, {asked}.",
    "commissioning.weighed-too-close":
      "No concluyente: la carga agregada es de {added}; exigida: {asked}, con tolerancia de {tolerance}.",
    "commissioning.above-maximum-charge": "La carga total, {total}, supera la máxima, {most}.",
    "commissioning.near-maximum-charge":
      "No concluyente: la carga total es de {total} y la máxima, de {most}.",
    "commissioning.tolerance-too-wide":
      "La tolerancia, {tolerance}, es demasiado amplia para una carga de {whole}: más de su décima parte.",
    "commissioning.valves-opened": "Las válvulas se abrieron el {at}.",
    "commissioning.water-drained": "El agua vertida en la bandeja salió correctamente.",
    "commissioning.water-did-not-drain": "El agua vertida en la bandeja no salió correctamente.",
    "commissioning.exact-scale": "No se indicó la exactitud de la báscula; se supone exacta.",
    "commissioning.joints-undated":
      "Las uniones sin fecha se suponen hechas antes de las pruebas: {joints}.",
    "commissioning.calibration-taken-for-granted":
      "Sin fechas de lectura y de calibración, se suponen calibrados: {fields}.",
  },
);
