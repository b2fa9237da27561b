// Spanish (of the Americas) of the verdict on an installation: sentences and words. The fields of the record: record-fields.ts.
import type { CommissioningStatements } from "../../commissioning/statements.ts";
import type { CommissioningWord, FieldWord } from "../../commissioning/words.ts";
import { type CatalogueOf, type Define, define, join, type Words } from "../define.ts";
import { recordFields } from "./record-fields.ts";

type Said = CommissioningStatements & Words<CommissioningWord>;
const catalogue: Define<Said> = define;

const sentences: CatalogueOf<Said> = /* @__PURE__ */ catalogue("es-419", {
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
  "commissioning.too-few-entries": "Faltan entradas ({field}): {count}; exigido: al menos {limit}.",
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
    other: "Las horas no muestran que las comprobaciones cumplieran antes de energizar la unidad.",
  },
  "commissioning.line-other-than-port":
    "La {line}, {diameter}, no tiene el tamaño de su puerto, {port} pulg. ¿Hay un adaptador, o es otro diámetro?",
  "commissioning.line-with-adapter":
    "La {line}, {diameter}, está en un puerto de {port} pulg, con adaptador.",
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
  "commissioning.drain-falls-straight": "El drenaje cae vertical.",
  "commissioning.usual-air-difference":
    "No se indicó el intervalo del manual. Se toma el habitual: de {low} a {high}.",

  "commissioning.lift-above-length":
    "El desnivel, {lift}, es mayor que la longitud, {length}. ¿Está uno de los dos en otra unidad?",
  "commissioning.pre-charged-above-longest":
    "La longitud precargada, {preCharged}, supera la máxima, {longest}. ¿Está en otra unidad?",
  "commissioning.allowed-drop-large":
    "Una caída permitida de {limit} es más de un vigésimo de la presión de prueba. ¿Está en otra unidad?",
  "commissioning.temperatures-apart":
    "El gas estaba a {test} y el sistema en vacío a {evacuation}: más de {usual} de diferencia. ¿Está una en otra unidad?",
  "commissioning.log-copied":
    "Las lecturas son iguales, fila por fila, a las de otra prueba. ¿Son de esta?",
  "commissioning.altitude-odd": "Una altitud de {altitude} es inusual. ¿Está en otra unidad?",
  "commissioning.barometer-odd":
    "El barómetro marca {atmosphere}; a {altitude} es cerca de {usual}. ¿Es la presión reducida al nivel del mar?",
  "commissioning.room-height-odd":
    "El área y el volumen dan una altura de {height}; habitual: de {low} a {high}. ¿Está uno en otra unidad?",
  "commissioning.ceiling-odd":
    "Una altura de techo de {height} es inusual; habitual: de {low} a {high}. ¿Está en otra unidad?",
  "commissioning.floor-area-large":
    "Un área de piso de {area} es grande para una unidad interior; habitual: hasta {usual}. ¿Está en otra unidad?",
  "commissioning.volume-large":
    "Un volumen de {volume} es grande para una unidad interior; habitual: hasta {usual}. ¿Está en otra unidad?",
  "commissioning.unit-high":
    "Una altura de instalación de {height} es inusual; habitual: hasta {usual}. ¿Está en otra unidad?",
  "commissioning.factory-charge-odd":
    "Una carga de fábrica de {charge} es inusual para {capacity}; habitual: de {low} a {high}. ¿Está en otra unidad?",
  "commissioning.factory-charge-is-maximum":
    "La carga de fábrica, {charge}, no es menor que la carga máxima, {most}. ¿Es la máxima?",
  "commissioning.total-as-added":
    "La carga agregada, {added}, es tanto como debería ser la total. ¿Es la total?",
  "commissioning.added-large":
    "La carga agregada, {added}, es más de 60 % de la carga de fábrica, {charge}. ¿Está en otra unidad?",
  "commissioning.rated-above-ampacity":
    "La corriente de carga nominal, {rated}, supera la ampacidad mínima del circuito, {ampacity}. ¿Están intercambiadas?",
  "commissioning.protection-far-above-ampacity":
    "La protección máxima contra sobrecorriente, {protection}, es inusualmente alta para una ampacidad de {ampacity}. ¿Falta un signo decimal?",
  "commissioning.capacity-odd":
    "Una capacidad de {capacity} no corresponde a {rated} con {voltage}. ¿Está en otra unidad?",
  "commissioning.length-odd":
    "{field}: {value}; lo habitual: de {low} a {high}. ¿Está en otra unidad?",
  "commissioning.volume-odd":
    "{field}: {value}; lo habitual: de {low} a {high}. ¿Está en otra unidad?",
  "commissioning.temperature-odd":
    "{field}: {value}; lo habitual: de {low} a {high}. ¿Está en otra unidad?",
  "commissioning.pressure-odd":
    "{field}: {value}; lo habitual: de {low} a {high}. ¿Está en otra unidad?",
  "commissioning.mass-odd":
    "{field}: {value}; lo habitual: de {low} a {high}. ¿Está en otra unidad?",
  "commissioning.rated-as-ampacity":
    "La ampacidad mínima del circuito, {rated}, es la corriente de carga nominal. ¿Están intercambiadas?",
  "commissioning.drain-steep":
    "Una pendiente de {slope} es mucha para un drenaje; habitual: hasta {usual}. ¿Está en otra unidad?",

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
    "Corriente {current}: dentro de la mitad y el total de la corriente de carga nominal, de {low} a {rated}.",
  "commissioning.current-odd":
    "Corriente {current}: fuera de la mitad y el total de la corriente de carga nominal, de {low} a {rated}.",
  "commissioning.current-above-ampacity":
    "Corriente {current}: supera la ampacidad mínima del circuito, {most}.",

  "commissioning.rules-not-passed":
    "El circuito no se comprobó: no se dispone del conjunto de reglas {rules}.",
  "commissioning.done-before-proof": {
    by: "hold",
    "open-valves": "Las válvulas se abrieron {at}, antes de una comprobación del {proof}.",
    "add-charge": "Se agregó refrigerante {at}, antes de una comprobación del {proof}.",
    other: "La unidad se energizó {at}, antes de una comprobación del {proof}.",
  },
  "commissioning.done-without-proof": {
    by: "hold",
    "open-valves": "Las válvulas se abrieron antes de que cumplieran: {steps}.",
    "add-charge": "Se agregó refrigerante antes de que cumplieran: {steps}.",
    other: "La unidad se energizó antes de que cumplieran: {steps}.",
  },
  "commissioning.held": {
    by: "hold",
    "open-valves": "Mantenga cerradas las válvulas hasta que cumplan: {steps}.",
    "add-charge": "No agregue refrigerante hasta que cumplan: {steps}.",
    other: "Mantenga la energía cortada hasta que cumplan: {steps}.",
  },
  "commissioning.released": {
    by: "hold",
    "open-valves": "Las válvulas se pueden abrir: cumplieron todas las comprobaciones previas.",
    "add-charge": "Se puede agregar refrigerante: cumplieron todas las comprobaciones previas.",
    other: "La unidad se puede energizar: cumplieron todas las comprobaciones previas.",
  },
  "commissioning.released-by-declaration": {
    by: "hold",
    "open-valves": "Las válvulas se pueden abrir. No aplica y no se comprobó: {steps}.",
    "add-charge": "Se puede agregar refrigerante. No aplica y no se comprobó: {steps}.",
    other: "La unidad se puede energizar. No aplica y no se comprobó: {steps}.",
  },
  "commissioning.older-than-work":
    "La lectura de {read} es anterior al trabajo del {at}, y no demuestra nada sobre él.",
  "commissioning.begun-before-work":
    "Las lecturas que terminaron {read} empezaron antes del trabajo del {at}, y no demuestran nada sobre él.",
  "commissioning.lines-swapped":
    "La línea de líquido, {liquid}, está registrada como más ancha que la línea de gas, {vapor}.",
  "commissioning.joints-complete": {
    by: "count",
    one: "La única unión está registrada.",
    other: "Están registradas las {count} uniones.",
  },
  "commissioning.joints-incomplete": "Uniones registradas: {recorded} de {count}.",
  "commissioning.joint-defect": "La inspección encontró un defecto.",
  "commissioning.joint-inspected": "La inspección no encontró defectos.",
  "commissioning.brazed-with-nitrogen": "Soldada con flujo de nitrógeno.",
  "commissioning.brazed-without-nitrogen": "Soldada sin flujo de nitrógeno.",
  "commissioning.no-flare-of-line":
    "No hay registrado ningún abocinado de la {line}, {diameter}. Tamaños registrados, en pulgadas: {tubes}. ¿Se copió un dato, o hay un adaptador?",
  "commissioning.held-long-enough": "Duración de la prueba: {held}; exigida: {required}.",
  "commissioning.held-too-short": "Duración de la prueba: solo {held}; exigida: {required}.",
  "commissioning.within-marked-pressure":
    "La prueba llegó a {pressure}: dentro de la presión marcada más baja, {limit}.",
  "commissioning.above-marked-pressure":
    "La prueba llegó a {pressure}: por encima de la presión marcada más baja, {limit}.",
  "commissioning.test-pressure-reached": "Se probó a {pressure}; exigido: al menos {limit}.",
  "commissioning.test-pressure-too-low": "Se probó a solo {pressure}; exigido: al menos {limit}.",
  "commissioning.test-below-refrigerant":
    "Se probó a {pressure}: por debajo de los {own} que {refrigerant} tiene en reposo a {temperature}.",
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
  "commissioning.valves-opened": "Las válvulas se abrieron {at}.",
  "commissioning.water-drained": "El agua vertida en la bandeja salió correctamente.",
  "commissioning.water-did-not-drain": "El agua vertida en la bandeja no salió correctamente.",

  "commissioning.exact-scale": "No se indicó la exactitud de la báscula; se supone exacta.",
  "commissioning.joints-undated":
    "Las uniones sin fecha se suponen hechas antes de las pruebas: {joints}.",
  "commissioning.calibration-taken-for-granted":
    "Sin fechas de lectura y de calibración, se suponen calibrados: {fields}.",

  "commissioning.heed-nitrogen":
    "Use solo nitrógeno seco: nunca oxígeno, aire comprimido ni gas inflamable, que explotan con el aceite. Aliméntelo con un regulador y una válvula de alivio. Suba la presión por etapas, mantenga a las personas alejadas y no supere la presión marcada más baja. Libérelo al exterior: desplaza el aire y asfixia.",
  "commissioning.heed-refrigerant":
    "El refrigerante líquido congela la piel y los ojos, y todo refrigerante desplaza el aire y asfixia: use guantes y gafas, y ventile. Nunca afloje, corte ni suelde nada bajo presión. Cargue solo un sistema hermético y probado, y nunca pruebe a presión con refrigerante y aire. Nunca haga funcionar un compresor en vacío.",
  "commissioning.heed-voltage":
    "La tensión puede matar. Corte la energía, bloquee y compruebe la ausencia de tensión; los capacitores del inverter siguen cargados. Solo electricistas con licencia. Mida con un multímetro de categoría III (IV en la acometida), comprobado antes y después, y aléjese de terminales con tensión y ventiladores de una unidad en marcha.",
  "commissioning.heed-gauges":
    "Compruebe el modo antes de conectar un manómetro: en calefacción el puerto de gas tiene presión de descarga, que destruye un manómetro de baja. Cada manguera pierde refrigerante; conecte solo con motivo.",
  "commissioning.heed-drain":
    "Proteja el drenaje contra heladas, sol, condensación exterior y desborde sobre espacios terminados. Termínelo en descarga indirecta, fuera de la vía pública, y haga que el interruptor de nivel de la bomba pare la unidad.",
  "commissioning.tested-again": {
    by: "tests",
    one: "Hecho de nuevo: {step}. Una prueba anterior se conserva en el registro y no cuenta.",
    other:
      "Hecho de nuevo: {step}. {tests} pruebas anteriores se conservan en el registro y no cuentan.",
  },
  "commissioning.zones-mixed":
    "Unas horas tienen desfase respecto a UTC y otras no; su orden no es seguro.",
  "commissioning.air-proves-no-charge":
    "El aire y la corriente muestran que la unidad funciona, no que su carga sea correcta.",
  "commissioning.not-signed": "Nadie ha firmado este registro.",
  "commissioning.signed-before-change":
    "{name} firmó {at}, antes de que esto se hiciera o cambiara: {fields}.",
  "commissioning.amended":
    "Cambiado después de registrado; el historial conserva los valores anteriores: {fields}.",
  "commissioning.unit-unknown":
    "Falta el modelo o el número de serie de una unidad: este registro podría ser de cualquiera.",
  "commissioning.older-than-a-year":
    "Más de un año anterior a este dato ({field}) del {at}: {fields}. ¿Es de esta instalación, y es correcto el año?",
  "commissioning.opened-long-after-evacuation":
    "Las válvulas se abrieron {opened}, más de una semana después de la evacuación del {evacuated}. Lo que se fugó entretanto no se ve.",
  "commissioning.instrument-coarse":
    "La exactitud supera 100 veces la resolución: {fields}. ¿Está una de las dos en otra unidad?",
  "commissioning.instrument-without-error":
    "Ningún instrumento es exacto, pero la exactitud está registrada como 0: {fields}.",
  "commissioning.calibration-expired":
    "La calibración venció el {due}, antes de la lectura del {at}: {instrument}.",
  "commissioning.calibrated-afterwards":
    "Se calibró el {on}, después de la lectura del {at}: {instrument}. El certificado no dice nada de ella.",

  "commissioning.record-fields": "Registre: {fields}.",
  "commissioning.correct-field": "Corrija el valor: {field}.",
  "commissioning.withdraw-waiver": "Retire la dispensa, o corrija el registro.",
  "commissioning.correct-construction":
    "Corrija el tipo de equipo, o elimine lo que no le corresponde.",
  "commissioning.cover-run": "Hágalo también para el recorrido {run} y regístrelo: {step}.",
  "commissioning.state-times": {
    by: "hold",
    "open-valves": "Registre fecha y hora de las pruebas y de la apertura de las válvulas.",
    "add-charge": "Registre fecha y hora de las pruebas y de la carga.",
    other:
      "Registre fecha y hora de la inspección del circuito, de las lecturas de alimentación y de la puesta en marcha.",
  },
  "commissioning.shorten-runs": "Acorte los recorridos a {most} o menos en total.",
  "commissioning.measure-runs-better": "Mida los recorridos con más exactitud.",
  "commissioning.recover-and-charge-anew":
    "Recupere la carga y cargue una nueva por peso, como líquido.",
  "commissioning.read-air-again":
    "Vuelva a leer el aire de suministro y de retorno y corrija el registro.",
  "commissioning.run-at-full-speed":
    "Haga funcionar la unidad a plena velocidad, o en el modo de prueba del manual, 15 minutos y vuelva a leer.",
  "commissioning.see-filter-and-fan":
    "Revise el filtro, la velocidad del ventilador y las puertas, y vuelva a leer.",
  "commissioning.state-air-difference":
    "Registre el intervalo del manual para la diferencia del aire.",
  "commissioning.stop-and-find-current":
    "Pare la unidad y averigüe por qué la corriente es demasiado alta.",
  "commissioning.read-current-again":
    "Vuelva a leer la corriente a plena velocidad y compruebe la placa de datos.",
  "commissioning.pass-rules": "Vuelva a evaluar el registro con el conjunto de reglas {rules}.",
  "commissioning.put-right": {
    by: "hold",
    "open-valves":
      "Averigüe por qué se abrieron las válvulas. Si la fecha es correcta, recupere el refrigerante, y vuelva a probar y a hacer vacío.",
    "add-charge":
      "Averigüe por qué se agregó refrigerante. Si la fecha es correcta, recupérelo, y vuelva a probar y a hacer vacío.",
    other:
      "Averigüe por qué se energizó la unidad. Si la fecha es correcta, corte la energía y haga revisar el circuito y la alimentación.",
  },
  "commissioning.finish-first": {
    by: "hold",
    "open-valves": "Cierre las válvulas y no siga hasta que cumplan: {steps}.",
    "add-charge": "No agregue más refrigerante hasta que cumplan: {steps}.",
    other: "Desenergice la unidad hasta que cumplan: {steps}.",
  },
  "commissioning.repeat-step": "Hágalo de nuevo y regístrelo: {step}.",
  "commissioning.see-which-line": "Vea cuál línea es cuál y corrija el registro.",
  "commissioning.record-each-joint": {
    by: "count",
    one: "Registre la unión una vez.",
    other: "Registre cada una de las {count} uniones una vez, con su propio nombre.",
  },
  "commissioning.remake-joint": "Rehaga la unión y regístrela.",
  "commissioning.see-joints-of-line": "Vea las uniones de la {line} y registre cada una.",
  "commissioning.hold-longer": "Mantenga la presión {required} o más.",
  "commissioning.lower-pressure":
    "Baje la presión a {limit} o menos. Consulte al fabricante sobre cada parte que estuvo por encima de su marca.",
  "commissioning.test-higher":
    "Vuelva a ver la presión de prueba del manual y pruebe a {limit} o más, sin superar la presión marcada más baja.",
  "commissioning.correct-charge":
    "Corrija la carga agregada a {asked}, con tolerancia de {tolerance}.",
  "commissioning.weigh-better": "Pese la carga con una báscula más exacta.",
  "commissioning.recover-down-to":
    "Recupere refrigerante hasta que el total sea de {most} como máximo.",
  "commissioning.state-tolerance": "Registre la tolerancia de la carga que da el fabricante.",
  "commissioning.clear-drain": "Despeje el drenaje y vuelva a verter agua.",
  "commissioning.pass-what-is-on-file": "Pase lo que está guardado con ese nombre.",

  "commissioning.step.line-run": "recorrido de tubería",
  "commissioning.step.joints": "uniones",
  "commissioning.step.pressure-test": "prueba de presión",
  "commissioning.step.evacuation": "evacuación",
  "commissioning.step.room-limit": "límite del recinto",
  "commissioning.step.charge": "carga",
  "commissioning.step.valves": "válvulas",
  "commissioning.step.circuit": "circuito",
  "commissioning.step.supply": "alimentación eléctrica",
  "commissioning.step.drain": "drenaje",
  "commissioning.step.operation": "funcionamiento",
  "commissioning.step-state.done": "hecho",
  "commissioning.step-state.partial": "registrado en parte",
  "commissioning.step-state.missing": "nada registrado",
  "commissioning.step-state.not-applicable": "no aplica",
  "commissioning.hold.open-valves": "abrir las válvulas",
  "commissioning.hold.add-charge": "agregar refrigerante",
  "commissioning.hold.power-on": "energizar la unidad",
  "commissioning.hold-state.held": "retenido",
  "commissioning.hold-state.released": "liberado",
  "commissioning.hold-state.breached": "infringido",
  "commissioning.line.liquid": "línea de líquido",
  "commissioning.line.vapor": "línea de gas",
  "commissioning.waiver.factory-line-set": "las líneas, de longitud fija, vinieron con la unidad",
  "commissioning.waiver.existing-lines": "líneas existentes, sin abrir",
  "commissioning.waiver.no-enclosed-room": "sin recinto cerrado",
  "commissioning.waiver.heats-only": "la unidad nunca enfría",
  "commissioning.construction.split": "líneas unidas en obra",
  "commissioning.construction.quick-connect": "líneas precargadas con acoplamientos",
  "commissioning.construction.monobloc": "circuito de refrigerante sellado en la unidad exterior",
  "commissioning.standing.adopted-code": "el código adoptado",
  "commissioning.standing.manufacturer": "el fabricante",
  "commissioning.standing.common-practice": "la práctica común",
  "commissioning.mode.cooling": "enfriamiento",
  "commissioning.mode.heating": "calefacción",
  "commissioning.check.line-run": "longitud y desnivel",
  "commissioning.check.total-length": "longitud total",
  "commissioning.check.flare-wall": "pared del tubo abocinado",
  "commissioning.check.coupling-joint": "acoplamiento",
  "commissioning.check.fed-as-liquid": "estado del refrigerante agregado",
  "commissioning.check.air-difference": "aire a través del serpentín interior",
  "commissioning.check.running-current": "corriente en marcha",
  "commissioning.check.coverage": "recorridos incluidos",
  "commissioning.check.plausibility": "verosimilitud",
  "commissioning.check.waiver": "dispensa",
  "commissioning.check.line-sizes": "tamaños de las líneas",
  "commissioning.check.flare-torque": "par de apriete del abocinado",
  "commissioning.check.flare-turn": "giro de la tuerca abocinada",
  "commissioning.check.flare-diameter": "diámetro del abocinado",
  "commissioning.check.brazed-joint": "unión soldada",
  "commissioning.check.pressed-joint": "unión prensada",
  "commissioning.check.joint-inspected": "inspección de la unión",
  "commissioning.check.joint-count": "número de uniones",
  "commissioning.check.joint-sizes": "tamaños de las uniones",
  "commissioning.check.pressure-test": "caída de presión",
  "commissioning.check.test-hold": "tiempo de permanencia a presión",
  "commissioning.check.marked-pressure": "presión marcada",
  "commissioning.check.test-pressure": "presión de prueba",
  "commissioning.check.vacuum-decay": "retención de vacío",
  "commissioning.check.order": "orden del trabajo",
  "commissioning.check.room-charge": "carga y área del piso",
  "commissioning.check.room-concentration": "carga y volumen del recinto",
  "commissioning.check.additional-charge": "carga agregada según el manual",
  "commissioning.check.charge-rate": "carga agregada por longitud",
  "commissioning.check.weighed-charge": "carga pesada",
  "commissioning.check.valves-opened": "apertura de las válvulas",
  "commissioning.check.circuit": "circuito",
  "commissioning.check.rules": "reglas eléctricas",
  "commissioning.check.supply-voltage": "tensión de alimentación",
  "commissioning.check.drain-slope": "pendiente del drenaje",
  "commissioning.check.condensate-pump": "bomba de condensados",
  "commissioning.check.unit-pitch": "inclinación de la unidad interior",
  "commissioning.check.water-drained": "prueba con agua",
  "commissioning.check.service-reading": "presión de funcionamiento",
  "commissioning.check.charge-by-gauge": "sobrecalentamiento o subenfriamiento",
});

type Whole = typeof sentences | CatalogueOf<Words<FieldWord>>;

/** What `commissioning` says, with the fields of a record, in Spanish. */
export const commissioning: CatalogueOf<Said & Words<FieldWord>> = /* @__PURE__ */ join<Whole>([
  sentences,
  recordFields,
]);
