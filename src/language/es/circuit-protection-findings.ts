// Spanish of the assumptions and findings of the verdict on a circuit.
import type { CircuitProtectionFindings } from "../../circuit-protection/statements.ts";
import { type CatalogueOf, type Define, define } from "../define.ts";

const catalogue: Define<CircuitProtectionFindings> = define;

/** Assumptions and findings of the verdict on a circuit, in Spanish of the Americas. */
export const circuitProtectionFindings: CatalogueOf<CircuitProtectionFindings> =
  /* @__PURE__ */ catalogue("es-419", {
    "circuit-protection.marking-assumed":
      "Se supone que la placa de datos admite interruptores termomagnéticos.",
    "circuit-protection.service-assumed": "Suministro supuesto: {system}.",
    "circuit-protection.ambient-assumed":
      "Temperatura ambiente supuesta en el recorrido: {ambient}.",
    "circuit-protection.terminations-assumed":
      "Se supone que los terminales no están marcados para 75 °C.",
    "circuit-protection.cable-assumed": "Se supone que el cable no es de tipo NM.",
    "circuit-protection.roof-assumed": "Se supone que el recorrido no pasa cerca de un techo.",
    "circuit-protection.conductors-assumed":
      "Se suponen 3 conductores cargados juntos como máximo.",
    "circuit-protection.circuits-assumed": "Se supone que no hay otro circuito junto al cable.",
    "circuit-protection.rated-load-assumed":
      "Como corriente de carga nominal se supone la ampacidad mínima del circuito, {ampacity}.",
    "circuit-protection.voltage-marking-assumed":
      "Se supone el interruptor termomagnético marcado {marking} o más.",
    "circuit-protection.compressor-inferred":
      "Se supone que el circuito alimenta un compresor: solo un motor da un máximo de {maximum} con {ampacity}.",
    "circuit-protection.ground-fault-not-adopted":
      "{clause} no está adoptada aquí, según lo indicado.",
    "circuit-protection.not-stated": "No indicado y por eso no comprobado: {parts}.",
    "circuit-protection.not-judged": "Fuera de esta comprobación: {parts}.",
    "circuit-protection.heater-below-50-kw": "Se suponen resistencias de menos de 50 kW en total.",
    "circuit-protection.not-a-usual-size": "{maximum} no es un tamaño normalizado.",
    "circuit-protection.maximum-confirmed":
      "Un máximo de {maximum} es más de lo que corresponde a {ampacity}. Se leyó dos veces y se tomó como está impreso.",
    "circuit-protection.rated-load-low":
      "Una ampacidad mínima del circuito de {ampacity} corresponde a más de {load}: la carga nominal es la suma de compresor y ventiladores. Se usó {ampacity} en su lugar.",
    "circuit-protection.device-not-standard": "{rating} no es un tamaño normalizado de {device}.",
    "circuit-protection.no-standard-device-between":
      "No hay tamaño normalizado entre {ampacity} y {maximum}. El inmediato inferior puede dispararse en uso normal.",
    "circuit-protection.hacr-mark":
      "El interruptor termomagnético no lleva la marca HACR. Hoy se prueban para ello, pero algunos inspectores exigen la marca.",
    "circuit-protection.curve": "La curva {curve} puede dispararse al arrancar un compresor.",
    "circuit-protection.start-may-trip":
      "El arranque de {locked} supera {from}, donde el interruptor termomagnético puede dispararse al instante.",
    "circuit-protection.working-space-recommended":
      "Espacio de trabajo recomendado: {depth} de fondo, {width} de ancho, {height} de alto.",
    "circuit-protection.voltage-drop-recommended":
      "Caída de voltaje {drop}, superior a la recomendada, {limit}.",
    "circuit-protection.verified":
      "Comprobado por {by} según {clause}, {rules}, el {date}: no se comprobó aquí.",
    "circuit-protection.from-memory":
      "Cumple según reglas citadas de memoria. Compruébelas: {clauses}.",
    "circuit-protection.rules-older":
      "El conjunto de reglas se revisó por última vez el {reviewed}, antes del trabajo del {date}. Busque reglas más nuevas.",
    "circuit-protection.ground-fault-required":
      "{clause} exige aquí protección contra falla a tierra. Los estados la modificaron: consulte el texto adoptado.",
    "circuit-protection.ground-fault-class-c":
      "{clause} admite también un dispositivo certificado de clase C, con una advertencia en el medio de desconexión.",
    "circuit-protection.ground-fault-exempt":
      "{clause} exige aquí protección contra falla a tierra desde el {from}. El circuito tiene fecha del {date}; si el permiso o el texto adoptado cuentan otro día, decide ese.",
    "circuit-protection.advice": "{advice} ({clause}).",
    "circuit-protection.calculated-not-marked":
      "Los valores calculados no sustituyen a la placa de datos.",
    "circuit-protection.shared-circuit": {
      by: "count",
      one: "{count} carga más comparte este circuito.",
      other: "{count} cargas más comparten este circuito.",
    },
  });
