// Spanish of findings and dangers of the verdict on an installation.
import type { CommissioningFindings } from "../../commissioning/statements.ts";
import { type CatalogueOf, type Define, define } from "../define.ts";

const catalogue: Define<CommissioningFindings> = define;

/** What a pass would hide, figures that cannot be, and the dangers, in Spanish of the Americas. */
export const commissioningFindings: CatalogueOf<CommissioningFindings> = /* @__PURE__ */ catalogue(
  "es-419",
  {
    "commissioning.lift-above-length":
      "El desnivel, {lift}, es mayor que la longitud, {length}. ¿Se anotó uno de los dos en otra unidad?",
    "commissioning.pre-charged-above-longest":
      "La longitud precargada, {preCharged}, supera la máxima, {longest}. ¿Se anotó en otra unidad?",
    "commissioning.allowed-drop-large":
      "Una caída permitida de {limit} es más de un vigésimo de la presión de prueba. ¿Se anotó en otra unidad?",
    "commissioning.temperatures-apart":
      "El gas estaba a {test} y el sistema en vacío a {evacuation}: más de {usual} de diferencia. ¿Se anotó una en otra unidad?",
    "commissioning.log-copied":
      "Las lecturas son iguales, fila por fila, a las de otra prueba. ¿Son de esta?",
    "commissioning.altitude-odd": "Una altitud de {altitude} es inusual. ¿Se anotó en otra unidad?",
    "commissioning.barometer-odd":
      "El barómetro marca {atmosphere}; a {altitude} es cerca de {usual}. ¿Es la presión reducida al nivel del mar?",
    "commissioning.barometer-in-hectopascal":
      "El barómetro marca {atmosphere}; a {altitude} es cerca de {usual}. ¿Está en hPa?",
    "commissioning.room-height-odd":
      "El área y el volumen dan una altura de {height}; habitual: de {low} a {high}. ¿Se anotó uno en otra unidad?",
    "commissioning.ceiling-odd":
      "Una altura de techo de {height} es inusual; habitual: de {low} a {high}. ¿Se anotó en otra unidad?",
    "commissioning.unit-high":
      "Una altura de instalación de {height} es inusual; habitual: hasta {usual}. ¿Se anotó en otra unidad?",
    "commissioning.factory-charge-odd":
      "Una carga de fábrica de {charge} es inusual para {capacity}; habitual: de {low} a {high}. ¿Se anotó en otra unidad?",
    "commissioning.factory-charge-is-maximum":
      "La carga de fábrica, {charge}, no es menor que la carga máxima, {most}. ¿Es la máxima?",
    "commissioning.total-as-added":
      "La carga agregada, {added}, es tanto como debería ser la total. ¿Es la total?",
    "commissioning.added-large":
      "La carga agregada, {added}, es más de 60 % de la carga de fábrica, {charge}. ¿Se anotó en otra unidad?",
    "commissioning.rated-above-ampacity":
      "La corriente de carga nominal, {rated}, supera la ampacidad mínima del circuito, {ampacity}. ¿Están intercambiadas?",
    "commissioning.protection-far-above-ampacity":
      "La protección máxima contra sobrecorriente, {protection}, es inusualmente alta para una ampacidad de {ampacity}. ¿Falta un signo decimal?",
    "commissioning.capacity-odd":
      "Una capacidad de {capacity} no corresponde a {rated} con {voltage}. ¿Se anotó en otra unidad?",
    "commissioning.length-odd":
      "Inusual: {field}, {value}; habitual: de {low} a {high}. ¿Se anotó en otra unidad?",
    "commissioning.volume-odd":
      "Inusual: {field}, {value}; habitual: de {low} a {high}. ¿Se anotó en otra unidad?",
    "commissioning.temperature-odd":
      "Inusual: {field}, {value}; habitual: de {low} a {high}. ¿Se anotó en otra unidad?",
    "commissioning.pressure-odd":
      "Inusual: {field}, {value}; habitual: de {low} a {high}. ¿Se anotó en otra unidad?",
    "commissioning.mass-odd":
      "Inusual: {field}, {value}; habitual: de {low} a {high}. ¿Se anotó en otra unidad?",
    "commissioning.area-odd":
      "Inusual: {field}, {value}; habitual: de {low} a {high}. ¿Se anotó en otra unidad?",
    "commissioning.power-odd":
      "Inusual: {field}, {value}; habitual: de {low} a {high}. ¿Se anotó en otra unidad?",
    "commissioning.voltage-odd":
      "Inusual: {field}, {value}; habitual: de {low} a {high}. ¿Es de este suministro?",
    "commissioning.entered-twice":
      "Anotado dos veces: {field}, {value}. ¿Es incorrecto uno de los dos?",
    "commissioning.grounding-thick":
      "El conductor de puesta a tierra, {grounding}, es mucho más grueso que los conductores del circuito, {conductor}. ¿Es incorrecto uno de los dos?",
    "commissioning.rated-as-ampacity":
      "La ampacidad mínima del circuito, {rated}, es la corriente de carga nominal. ¿Están intercambiadas?",
    "commissioning.drain-steep":
      "Una pendiente de {slope} es mucha para un drenaje; habitual: hasta {usual}. ¿Se anotó en otra unidad?",
    "commissioning.heed-nitrogen":
      "Use solo nitrógeno seco: nunca oxígeno, aire comprimido ni gas inflamable, que explotan con el aceite. Aliméntelo con un regulador y una válvula de alivio. Suba la presión por etapas, mantenga a las personas alejadas y no supere la presión marcada más baja. Libérelo al exterior: desplaza el aire y asfixia.",
    "commissioning.heed-refrigerant":
      "El refrigerante líquido congela la piel y los ojos, y todo refrigerante desplaza el aire y asfixia: use guantes y gafas, y ventile. Nunca afloje, corte ni suelde nada bajo presión. Cargue solo un sistema hermético y probado, y nunca pruebe a presión con refrigerante y aire. Nunca haga funcionar un compresor en vacío.",
    "commissioning.heed-voltage":
      "El voltaje puede matar. Corte la energía, bloquee y compruebe la ausencia de voltaje; los capacitores del inverter siguen cargados. Solo electricistas con licencia. Mida con un multímetro de categoría III (IV en la acometida), comprobado antes y después, y aléjese de terminales con voltaje y ventiladores de una unidad en marcha.",
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
    "commissioning.weather-unusual":
      "Afuera hay {outdoor}, algo inusual en modo de {mode}. ¿Está en otra unidad?",
    "commissioning.cable-short": "El circuito mide solo {length}. ¿Está en otra unidad?",
    "commissioning.zones-mixed":
      "Unas horas tienen desfase respecto a UTC y otras no; su orden no es seguro.",
    "commissioning.air-proves-no-charge":
      "El aire y la corriente muestran que la unidad funciona, no que su carga sea correcta.",
    "commissioning.not-signed": "Nadie ha firmado este registro.",
    "commissioning.signed-before-change":
      "{name} firmó el {at}, antes de que esto se hiciera o cambiara: {fields}.",
    "commissioning.amended-before-work":
      "Cambiado antes del primer trabajo con fecha, {first}: {fields}. ¿Son correctas las fechas?",
    "commissioning.amended":
      "Cambiado después de registrado; el historial conserva los valores anteriores: {fields}.",
    "commissioning.unit-unknown":
      "Falta el modelo o el número de serie de una unidad: este registro podría ser de cualquiera.",
    "commissioning.older-than-a-year":
      "Más de un año anterior a este dato ({field}) del {at}: {fields}. ¿Es de esta instalación, y es correcto el año?",
    "commissioning.opened-long-after-evacuation":
      "El vacío se leyó por última vez el {evacuated} y se rompió el {opened}, más de dos días después. Lo que entró entretanto no se ve.",
    "commissioning.instrument-coarse":
      "La exactitud supera 100 veces la resolución: {fields}. ¿Se anotó una de las dos en otra unidad?",
    "commissioning.instrument-unknown":
      "Registrado sin exactitud, número de serie ni calibración; nada muestra qué tan bien mide: {fields}.",
    "commissioning.circuit-long-before":
      "El circuito tiene fecha del {circuit}, más de tres meses antes del primer otro trabajo, {field}, del {first}. Las reglas con fecha se leyeron para ese día. ¿Es correcto?",
    "commissioning.instrument-without-error":
      "Ningún instrumento es exacto, pero la exactitud está registrada como 0: {fields}.",
    "commissioning.calibration-expired":
      "La calibración venció el {due}, antes de la lectura del {at}: {instrument}.",
    "commissioning.calibrated-afterwards":
      "Se calibró el {on}, después de la lectura del {at}: {instrument}. El certificado no dice nada de ella.",
  },
);
