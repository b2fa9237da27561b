// Spanish (of the Americas) of a charge and its room: sentences and words.
import type { ChargeLimitStatements, ChargeLimitWord } from "../../charge-limit/statements.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = ChargeLimitStatements & Words<ChargeLimitWord>;
const catalogue: Define<Said> = define;

/** What `charge-limit` says, in Spanish. */
export const chargeLimit: CatalogueOf<Said> = /* @__PURE__ */ catalogue("es-419", {
  "charge-limit.shares-make-100": "Las proporciones deben sumar 100 %.",
  "charge-limit.place-or-height":
    "Indique solo uno de los dos: el lugar de la unidad interior o su altura de instalación.",
  "charge-limit.other-clauses":
    "Por encima rigen otros apartados: hermeticidad reforzada, ventilación, sensores.",
  "charge-limit.no-value-by-basis": "No hay valor para otro refrigerante en {basis}.",
  "charge-limit.others-by-concentration":
    "Un refrigerante de otra clase se rige por su límite de concentración.",
  "charge-limit.give-its-own-limit":
    "Para otro refrigerante, escriba el límite de su ficha de seguridad.",

  "charge-limit.within-limit": "La carga, {charge}, está dentro del límite de {limit}.",
  "charge-limit.above-limit": "La carga, {charge}, supera el límite de {limit}.",
  "charge-limit.too-close-to-call":
    "No concluyente: carga {charge} ± {uncertainty}, límite {limit}.",
  "charge-limit.room-does-not-matter":
    "Hasta {limit} no importa el tamaño del recinto. La carga es de {charge}.",
  "charge-limit.beyond-m2":
    "La carga, {charge}, supera {limit}, lo máximo que admite un área de piso.",
  "charge-limit.beyond-m3":
    "La carga, {charge}, supera {limit}; por encima, esta edición no tiene regla.",
  "charge-limit.protection-not-stated": "Necesario para este límite y no indicado: {missing}.",
  "charge-limit.every-room-passes": {
    by: "count",
    one: "La carga está dentro del límite del único recinto atendido.",
    other: "La carga está dentro del límite de cada uno de los {count} recintos atendidos.",
  },
  "charge-limit.room-fails": "Recinto {room}: la carga supera su límite.",
  "charge-limit.room-inconclusive": "Recinto {room}: no concluyente.",
  "charge-limit.nothing-near":
    "No se halló ninguna abertura ni fuente de ignición cerca de la unidad; distancia exigida: {required}.",
  "charge-limit.clear-of-openings":
    "La abertura o fuente de ignición más cercana está a {distance}; distancia exigida: {required}.",
  "charge-limit.too-near-an-opening":
    "La abertura o fuente de ignición más cercana está a solo {distance}; distancia exigida: {required}.",
  "charge-limit.distance-too-close-to-call":
    "No concluyente: la abertura o fuente de ignición más cercana está a {distance}; distancia exigida: {required}.",
  "charge-limit.protection-zone-not-stated":
    "No se indicó la zona de protección alrededor de la unidad.",
  "charge-limit.distances-not-stated":
    "No se indicaron las distancias a aberturas y fuentes de ignición.",
  "charge-limit.closed-in-outdoors":
    "La unidad está encerrada. El refrigerante que escape se acumula ahí.",

  "charge-limit.one-closed-room":
    "Un recinto cerrado y sin ventilación, con una unidad fija, sin ventilador ni sensor.",
  "charge-limit.edition-used": "Evaluado según {edition}.",
  "charge-limit.low-altitude": "No se indicó la altitud: se supone 600 m (2000 pies) como máximo.",
  "charge-limit.above-reference-height":
    "{height} supera las alturas de referencia. Solo si el manual lo admite.",
  "charge-limit.flammability-limit-used":
    "Límite inferior de inflamabilidad usado: {limit} ({standing}).",
  "charge-limit.concentration-limit-used": "Límite de concentración usado: {limit} ({standing}).",
  "charge-limit.exact-charge": "No se indicó la exactitud de la carga; se supone exacta.",
  "charge-limit.exact-size": "No se indicó la exactitud del tamaño del recinto; se supone exacto.",
  "charge-limit.exact-distance": "No se indicó la exactitud de las distancias; se suponen exactas.",

  "charge-limit.flammability-too":
    "Este límite es solo para la respiración. Un refrigerante inflamable debe cumplir además la regla de inflamabilidad.",
  "charge-limit.from-memory":
    "De memoria, sin cotejar con el texto: {rules}. Compruébelo antes de que decida.",
  "charge-limit.refrigerant-in-water":
    "Una fuga en el intercambiador de agua lleva refrigerante al agua de calefacción. Instale el separador de aire y la válvula de seguridad que exige el manual.",
  "charge-limit.market-rules-older":
    "Estas reglas se leyeron en su estado del {reviewed}. La fecha consultada, {date}, es posterior. Busque reglas más nuevas.",

  "charge-limit.add-no-refrigerant": "No agregue refrigerante.",
  "charge-limit.find-larger-room":
    "Lleve la unidad interior a un recinto de {area} o más, o elija una unidad con menos carga.",
  "charge-limit.find-larger-volume":
    "Lleve la unidad interior a un recinto de {volume} o más, o elija una unidad con menos carga.",
  "charge-limit.use-other-clauses":
    "Siga el manual sobre hermeticidad reforzada, ventilación y sensores, o elija una unidad de {maximum} o menos.",
  "charge-limit.divide-the-system": "Divida el sistema en sistemas de {maximum} o menos cada uno.",
  "charge-limit.enlarge-openings": "Agrande ambas aberturas hacia el recinto contiguo.",
  "charge-limit.raise-airflow": "Aumente el caudal de aire, o elija una unidad con menos carga.",
  "charge-limit.weigh-or-measure-better": "Pese la carga o mida el recinto con más exactitud.",
  "charge-limit.state-protection": "Escriba: {missing}.",
  "charge-limit.act-on-room": "En el recinto {room}, haga lo siguiente.",
  "charge-limit.move-outdoor-unit":
    "Mueva la unidad hasta que toda abertura y fuente de ignición quede a {required} o más.",
  "charge-limit.state-protection-zone": "Escriba la zona de protección del manual de la unidad.",
  "charge-limit.measure-distances":
    "Mida la distancia a cada puerta, ventana, toma de aire, desagüe y fuente de ignición.",
  "charge-limit.move-to-open-air": "Lleve la unidad al aire libre.",

  "charge-limit.standing.published": "publicado",
  "charge-limit.standing.secondary": "de una fuente secundaria",
  "charge-limit.standing.from-memory": "de memoria",
  "charge-limit.standing.stated": "según lo indicado",
  "charge-limit.rule.thresholds": "los umbrales m1, m2 y m3",
  "charge-limit.rule.flammability-limit": "el límite inferior de inflamabilidad",
  "charge-limit.rule.concentration-limit": "el límite de concentración",
  "charge-limit.rule.altitude-factor": "el factor de altitud",
  "charge-limit.rule.openings": "la regla de aberturas",
  "charge-limit.rule.enhanced-tightness": "la regla de hermeticidad reforzada",
  "charge-limit.rule.circulation": "la regla de circulación",
  "charge-limit.rule.dispersal": "la carga por volumen efectivo de dispersión",
  "charge-limit.rule.ventilation-limits": "los límites con ventilación",
  "charge-limit.edition.iec-60335-2-40-2013": "IEC 60335-2-40:2013, edición 5",
  "charge-limit.edition.iec-60335-2-40-2018": "IEC 60335-2-40:2018, edición 6",
  "charge-limit.edition.iec-60335-2-40-2022": "IEC 60335-2-40:2022, edición 7",
  "charge-limit.edition.ul-60335-2-40-2019": "UL 60335-2-40:2019, 3.ª edición",
  "charge-limit.edition.ul-60335-2-40-2022": "UL 60335-2-40:2022, 4.ª edición",
  "charge-limit.edition.en-378-1": "EN 378-1:2016",
  "charge-limit.missing.openings-placed": "si las aberturas son permanentes y están donde se exige",
  "charge-limit.missing.enhanced-tightness": "si el fabricante declara hermeticidad reforzada",
  "charge-limit.missing.detector": "si un detector arranca el ventilador",
  "charge-limit.cause.room-too-small": "recinto insuficiente",
  "charge-limit.cause.openings-too-small": "aberturas insuficientes",
  "charge-limit.cause.airflow-too-small": "caudal de aire insuficiente",
  "charge-limit.cause.beyond-m2": "excesiva para cualquier área de piso",
  "charge-limit.cause.beyond-m3": "excesiva para la regla",
  "charge-limit.cause.too-near-an-opening": "demasiado cerca de una abertura o fuente de ignición",
  "charge-limit.cause.closed-in": "unidad encerrada",
});
