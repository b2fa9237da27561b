// Spanish (of the Americas) of the supply: sentences and words.
import type {
  SupplyVoltageStatements,
  SupplyVoltageWord,
} from "../../supply-voltage/statements.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = SupplyVoltageStatements & Words<SupplyVoltageWord>;
const catalogue: Define<Said> = define;

/** What `supply-voltage` says, in Spanish. */
export const supplyVoltage: CatalogueOf<Said> = /* @__PURE__ */ catalogue("es-419", {
  "supply-voltage.within-nameplate": {
    by: "readings",
    one: "Voltaje {low}: dentro del intervalo de la unidad, de {minimum} a {maximum}.",
    other:
      "Voltaje de {low} a {high}: dentro del intervalo de la unidad, de {minimum} a {maximum}.",
  },
  "supply-voltage.would-have-failed":
    "Una lectura {beyond} más allá de un límite no habría cumplido.",
  "supply-voltage.board-at-risk":
    "Voltaje demasiado alto: {high}, por encima de {ceiling}. Las tarjetas electrónicas corren peligro.",
  "supply-voltage.no-voltage":
    "Sin voltaje: {low}. Eso no demuestra que el circuito esté desenergizado.",
  "supply-voltage.phase-missing": "Falta una fase, o una se midió al neutro: {lines}.",
  "supply-voltage.leg-missing":
    "{low} es cerca de la mitad de {nominal}: falta una fase, o se midió al neutro.",
  "supply-voltage.uneven-to-ground":
    "Las fases son desiguales a tierra, {lines}: el neutro o la tierra pueden estar abiertos.",
  "supply-voltage.plate-does-not-fit":
    "Una unidad para {minimum} a {maximum} no corresponde a un suministro de {nominal}.",
  "supply-voltage.high-supply": "Voltaje demasiado alto: {high}; máximo de la unidad: {maximum}.",
  "supply-voltage.low-supply": "Voltaje demasiado bajo: {low}; mínimo de la unidad: {minimum}.",
  "supply-voltage.sag-under-load":
    "Voltaje demasiado bajo solo con carga: {low}; mínimo de la unidad: {minimum}.",
  "supply-voltage.dip-not-marked":
    "El registro baja a {low}, menos que el mínimo de la unidad, {minimum}. No se indicó si la unidad arrancaba.",
  "supply-voltage.meter-cannot-tell": {
    by: "readings",
    one: "No concluyente: {low} está cerca de un límite de {minimum} a {maximum}.",
    other: "No concluyente: de {low} a {high} está cerca de un límite de {minimum} a {maximum}.",
  },
  "supply-voltage.within-standard": {
    by: "readings",
    one: "Voltaje {low}: dentro del {range} de {standard}, de {minimum} a {maximum}.",
    other: "Voltaje de {low} a {high}: dentro del {range} de {standard}, de {minimum} a {maximum}.",
  },
  "supply-voltage.too-close-to-standard": {
    by: "readings",
    one: "No concluyente: {low} está cerca de un límite del {range} de {standard}, de {minimum} a {maximum}.",
    other:
      "No concluyente: de {low} a {high} está cerca de un límite del {range} de {standard}, de {minimum} a {maximum}.",
  },
  "supply-voltage.outside-standard": {
    by: "readings",
    one: "Voltaje {low}: fuera del {range} de {standard}, de {minimum} a {maximum}.",
    other: "Voltaje de {low} a {high}: fuera del {range} de {standard}, de {minimum} a {maximum}.",
  },
  "supply-voltage.outside-at-times": {
    by: "readings",
    one: "Voltaje {low}: a veces fuera del {range} de {standard}, de {minimum} a {maximum}.",
    other:
      "Voltaje de {low} a {high}: a veces fuera del {range} de {standard}, de {minimum} a {maximum}.",
  },
  "supply-voltage.standard-not-stated":
    "No se indicó qué intervalo debe mantener la compañía eléctrica para {nominal}.",
  "supply-voltage.week-within":
    "{within} de {means} medias de diez minutos están dentro de ±10 %; fuera: {outside10}. Fuera de +10/−15 %: {outside15}.",
  "supply-voltage.week-outside":
    "Solo {within} de {means} medias de diez minutos están dentro de ±10 %; fuera: {outside10}. Fuera de +10/−15 %: {outside15}.",
  "supply-voltage.week-so-far":
    "Hasta ahora {within} de {means} medias de diez minutos están dentro de ±10 %; fuera: {outside10}. Fuera de +10/−15 %: {outside15}.",
  "supply-voltage.week-incomplete": "Al registro le faltan {missing} para una semana.",
  "supply-voltage.week-meter-cannot-tell": "El error del voltímetro abarca un límite de la semana.",
  "supply-voltage.unbalance-within":
    "Desbalance de voltaje {unbalance}, dentro de {limit}; factor de reducción {factor}, devanados {rise} más calientes.",
  "supply-voltage.unbalance-above":
    "Desbalance de voltaje demasiado alto: {unbalance}; límite {limit}.",
  "supply-voltage.unbalance-too-close":
    "No concluyente: desbalance de voltaje {unbalance}, límite {limit}.",
  "supply-voltage.unbalance-above-5-percent":
    "Desbalance de voltaje {unbalance}: ningún motor puede funcionar por encima de 5 %.",
  "supply-voltage.line-without-current":
    "Una fase no lleva corriente con carga: se perdió una fase.",
  "supply-voltage.current-unbalance-within":
    "Desbalance de corriente {unbalance}, dentro de {limit}.",
  "supply-voltage.current-unbalance-above":
    "Desbalance de corriente demasiado alto: {unbalance}; límite {limit}.",
  "supply-voltage.full-load-enough":
    "A {current} se espera {there}: por encima del mínimo de la unidad, {minimum}.",
  "supply-voltage.full-load-too-low":
    "A {current} se espera {there}: por debajo del mínimo de la unidad, {minimum}.",
  "supply-voltage.full-load-too-close":
    "A {current} se espera {there}: demasiado cerca del mínimo de la unidad, {minimum}.",
  "supply-voltage.full-load-far-off":
    "A {current} se espera {there}, por debajo del mínimo de la unidad, {minimum}. La lectura se tomó a menos de la mitad de esa corriente.",
  "supply-voltage.full-load-impossible":
    "La caída de voltaje no deja nada a {current}; mínimo de la unidad: {minimum}.",

  "supply-voltage.ten-percent":
    "La placa de datos no indica intervalo; se usó ±10 % de los voltajes nominales.",
  "supply-voltage.exact-meter":
    "No se indicó la exactitud del voltímetro; las lecturas se suponen exactas.",
  "supply-voltage.moment-only": "Las lecturas valen solo para su momento.",
  "supply-voltage.no-sag": "No se leyó en reposo y con carga; no se conoce la caída de voltaje.",
  "supply-voltage.standard-assumed": "Norma usada para {nominal}: {standard}.",
  "supply-voltage.judged-as":
    "{nominal} es aquí un valor de placa de datos; el suministro se tomó como {as}.",
  "supply-voltage.no-range-at-unit":
    "Sin intervalo para la unidad en {standard}; solo se usó la placa de datos.",
  "supply-voltage.unbalance-limit": "Límite del desbalance de voltaje: {limit}.",
  "supply-voltage.currents-not-judged":
    "Las corrientes sin estado no se evalúan. Márquelas en reposo o con carga.",
  "supply-voltage.starts-found": {
    by: "count",
    one: "Se encontró {count} arranque en el registro por su corriente.",
    other: "Se encontraron {count} arranques en el registro por su corriente.",
  },
  "supply-voltage.starts-unseen":
    "El registro tiene una lectura cada {interval}: la caída de un arranque puede quedar entre dos.",

  "supply-voltage.start-dip": "El arranque baja el suministro a {dip}.",
  "supply-voltage.large-sag":
    "Una caída de voltaje de {share} indica un conductor de calibre insuficiente o una mala conexión.",
  "supply-voltage.rise-under-load":
    "{load} con carga supera en más de 5 % los {rest} en reposo. Compruebe cuál lectura es cuál, y el neutro.",
  "supply-voltage.transformer-tap":
    "Si la unidad tiene transformador de control, ponga su derivación en {near}.",
  "supply-voltage.narrow-plate": "Una unidad de {near} tiene poco margen con {nominal}.",
  "supply-voltage.limited-time": "Solo por tiempo limitado: {range}. Haga que se corrija.",
  "supply-voltage.drop-to-unit": "Cuente con la caída de voltaje hasta la unidad: 3 % son {drop}.",
  "supply-voltage.derate": "Por encima de 1 % de desbalance hay que reducir la carga de un motor.",
  "supply-voltage.uneven-supply":
    "Con más de 3 % de desbalance en vacío, avise a la compañía eléctrica.",
  "supply-voltage.line-grounded": "Una fase está a tierra, como en una delta con vértice a tierra.",
  "supply-voltage.from-memory": "Citado de memoria: {standard}. Compruebe su intervalo.",

  "supply-voltage.do-not-energize": "No energice la unidad.",
  "supply-voltage.find-missing-line": "Localice la fase que falta y haga que la reparen.",
  "supply-voltage.check-neutral": "Haga revisar el neutro y la puesta a tierra.",
  "supply-voltage.match-unit-and-supply":
    "Compruebe la placa de datos y el suministro. No se corresponden.",
  "supply-voltage.check-wiring":
    "Busque un conductor de calibre insuficiente o una mala conexión entre la acometida y la unidad.",
  "supply-voltage.read-at-service": "Mida el voltaje también en la acometida.",
  "supply-voltage.call-utility": "Llame a la compañía eléctrica.",
  "supply-voltage.mark-starts": "Marque las lecturas tomadas durante el arranque de la unidad.",
  "supply-voltage.measure-better": "Vuelva a medir con un voltímetro de ±{needed} o mejor.",
  "supply-voltage.log-near-limit":
    "Registre el voltaje durante un día. Ningún voltímetro distingue una alimentación tan cerca de un límite.",
  "supply-voltage.measure-finer": "Vuelva a medir con un voltímetro de mejor resolución.",
  "supply-voltage.measure-at-full-load": "Vuelva a medir con la unidad a plena carga.",
  "supply-voltage.state-standard":
    "Escriba la norma del suministro, o el intervalo que promete la compañía eléctrica.",
  "supply-voltage.log-longer": "Registre {missing} más, con una lectura por minuto o más seguido.",
  "supply-voltage.even-out-load": "Localice la carga desigual y reparta las cargas monofásicas.",

  "supply-voltage.name.japan-article-38": "el reglamento japonés (artículo 38)",
  "supply-voltage.name.stated-supply": "la compañía eléctrica",
  "supply-voltage.name.only-range": "rango",
  "supply-voltage.name.utilization-range": "rango de utilización",
  "supply-voltage.name.range-a": "rango A",
  "supply-voltage.name.range-b": "rango B",
  "supply-voltage.readings.one": "una lectura",
  "supply-voltage.readings.several": "varias lecturas",
  "supply-voltage.cause.board-at-risk": "voltaje peligrosamente alto",
  "supply-voltage.cause.no-voltage": "falta de voltaje",
  "supply-voltage.cause.leg-missing": "falta una fase",
  "supply-voltage.cause.phase-missing": "falta una fase",
  "supply-voltage.cause.uneven-to-ground": "fases desiguales a tierra",
  "supply-voltage.cause.plate-does-not-fit": "la unidad no corresponde al suministro",
  "supply-voltage.cause.high-supply": "voltaje demasiado alto",
  "supply-voltage.cause.low-supply": "voltaje demasiado bajo",
  "supply-voltage.cause.sag-under-load": "caída de voltaje con carga",
  "supply-voltage.cause.sag-at-full-load": "caída de voltaje a plena carga",
  "supply-voltage.cause.unbalance": "desbalance de voltaje",
  "supply-voltage.cause.current-unbalance": "desbalance de corriente",
  "supply-voltage.cause.outside-standard": "suministro fuera de su intervalo",

  "supply-voltage.times-in-order":
    "Indique la hora de cada lectura, en el orden en que se tomaron, o de ninguna.",
  "supply-voltage.state-connection": "Escriba el voltaje de la conexión que se hizo.",
  "supply-voltage.do-not-run-motor": "No haga funcionar un motor con más de 5 % de desbalance.",
  "supply-voltage.line-to-neutral": "Parece una medición de fase a neutro. Mida entre fases.",
});
