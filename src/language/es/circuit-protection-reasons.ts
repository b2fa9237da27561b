// Spanish of the reasons of the verdict on a circuit.
import type { CircuitProtectionReasons } from "../../circuit-protection/statements.ts";
import { type CatalogueOf, type Define, define } from "../define.ts";

const catalogue: Define<CircuitProtectionReasons> = define;

/** Reasons of the verdict on a circuit, in Spanish of the Americas. */
export const circuitProtectionReasons: CatalogueOf<CircuitProtectionReasons> =
  /* @__PURE__ */ catalogue("es-419", {
    "circuit-protection.device-rating-met":
      "El {device} es de {rating}: dentro del máximo de la placa de datos, {limit}.",
    "circuit-protection.device-too-large":
      "El {device} es demasiado grande: {rating}; máximo de la placa de datos: {limit}.",
    "circuit-protection.device-below-load":
      "El {device} es demasiado chico: {rating}, y la unidad consume {load}.",
    "circuit-protection.device-below-loads":
      "El {device} es demasiado chico: {rating}, y las cargas de este circuito consumen {load}.",
    "circuit-protection.device-below-ampacity":
      "El {device} es de {rating}, menor que la ampacidad mínima del circuito, {ampacity}. Puede dispararse en uso normal.",
    "circuit-protection.device-kind-met": "La placa de datos admite un {device}.",
    "circuit-protection.fuse-required":
      "La placa de datos solo admite fusibles. Un interruptor termomagnético solo no basta.",
    "circuit-protection.poles-met": "Polos instalados: {poles}; exigidos: {needed}.",
    "circuit-protection.poles-too-few": "Faltan polos. Instalados: {poles}; exigidos: {needed}.",
    "circuit-protection.poles-not-stated": "No se indicó el número de polos. Exigidos: {needed}.",
    "circuit-protection.voltage-marking-met": "El voltaje marcado, {marking}, es suficiente.",
    "circuit-protection.voltage-marking-too-low":
      "El voltaje marcado, {marking}, es insuficiente: {system} exige {needed}.",
    "circuit-protection.voltage-marking-not-stated":
      "No se indicó el voltaje marcado, y {system} no admite todas.",
    "circuit-protection.device-not-stated":
      "No se indicó el interruptor termomagnético o fusible instalado.",
    "circuit-protection.device-allowed": {
      by: "poles",
      one: "Permitido: {kinds:or} de {ratings:or}, {poles} polo.",
      other: "Permitido: {kinds:or} de {ratings:or}, {poles} polos.",
    },
    "circuit-protection.allowed": {
      by: "poles",
      one: "Permitido: {kinds:or} de {ratings:or}, {poles} polo; conductores de {size} como mínimo detrás de {rating}.",
      other:
        "Permitido: {kinds:or} de {ratings:or}, {poles} polos; conductores de {size} como mínimo detrás de {rating}.",
    },
    "circuit-protection.no-standard-device":
      "No hay tamaño normalizado entre {ampacity} y {maximum}.",
    "circuit-protection.maximum-too-high":
      "Un máximo de {maximum} es más de lo que corresponde a {ampacity}.",
    "circuit-protection.maximum-not-stated": "No se indicó el fusible máximo admitido.",
    "circuit-protection.conductor-met":
      "{size} ({section}) admite {usable}; exigido: {ampacity}, con protección de {rating}.",
    "circuit-protection.conductor-too-small":
      "{size} ({section}) es insuficiente con protección de {rating}: admite {usable}; exigido: {ampacity}.",
    "circuit-protection.conductor-unprotected":
      "{size} ({section}) admite {usable}: {rating} no lo protege.",
    "circuit-protection.conductor-not-stated": "No se indicó el conductor instalado.",
    "circuit-protection.conductor-not-judged":
      "{size} no se evalúa: la tabla no está confirmada ({clause}).",
    "circuit-protection.equipment-not-stated":
      "{size} con protección de {rating} solo se admite en un circuito de compresor. No se indicó qué alimenta el circuito.",
    "circuit-protection.aluminum-terminals-met": "Los terminales están marcados para aluminio.",
    "circuit-protection.aluminum-terminals-missing":
      "Los terminales no están marcados para aluminio.",
    "circuit-protection.aluminum-terminals-not-stated":
      "Conductores de aluminio: no se indicó si los terminales están marcados para aluminio.",
    "circuit-protection.grounding-met": "Conductor de puesta a tierra {fitted}; exigido: {size}.",
    "circuit-protection.grounding-too-small":
      "El conductor de puesta a tierra es insuficiente: {fitted}; exigido: {size}.",
    "circuit-protection.grounding-by-energy-met":
      "Conductor de puesta a tierra {fitted}: la falla exige {area} mm².",
    "circuit-protection.grounding-by-energy-short":
      "Conductor de puesta a tierra {fitted}: insuficiente para la falla, que exige {area} mm².",
    "circuit-protection.grounding-needs-energy":
      "El conductor de puesta a tierra {fitted} es menor que el de la tabla, {size}. Solo la energía de la falla puede mostrar que basta.",
    "circuit-protection.grounding-two-readings":
      "{clause} se puede leer de dos maneras para conductores aumentados. La más estricta exige {size}.",
    "circuit-protection.grounding-by-exception":
      "{fitted} basta para la protección, pero {clause} exige {size} junto a conductores mayores de lo necesario. Su excepción deja que lo dimensione una persona calificada.",
    "circuit-protection.grounding-wire-missing":
      "La canalización sobre el techo es el único camino a tierra ({clause}).",
    "circuit-protection.raceway-fittings-not-stated":
      "La canalización sobre el techo es el único camino a tierra. Con accesorios de compresión no basta ({clause}).",
    "circuit-protection.raceway-fittings-met":
      "La canalización sobre el techo no tiene accesorios de compresión: puede ser el camino a tierra ({clause}).",
    "circuit-protection.disconnect-rating-met": "Medio de desconexión {rating}; exigido: {needed}.",
    "circuit-protection.disconnect-too-small":
      "El medio de desconexión es insuficiente: {rating}; exigido: {needed}.",
    "circuit-protection.largest-load-not-stated":
      "Medio de desconexión {rating}: que baste depende de la carga mayor. {needed} siempre basta.",
    "circuit-protection.disconnect-fuse-met":
      "Fusibles del medio de desconexión: {fuse}, dentro de {limit}.",
    "circuit-protection.disconnect-fuse-too-large":
      "Los fusibles del medio de desconexión son demasiado grandes: {fuse}; máximo permitido: {limit}.",
    "circuit-protection.disconnect-in-sight":
      "El medio de desconexión está a la vista de la unidad.",
    "circuit-protection.disconnect-out-of-sight":
      "El medio de desconexión no está a la vista de la unidad.",
    "circuit-protection.disconnect-near":
      "El medio de desconexión está a {distance}, dentro de {limit}.",
    "circuit-protection.disconnect-too-far":
      "El medio de desconexión está demasiado lejos: {distance}; máximo permitido: {limit}.",
    "circuit-protection.disconnect-accessible": "El medio de desconexión es fácilmente accesible.",
    "circuit-protection.disconnect-not-accessible":
      "El medio de desconexión no es fácilmente accesible.",
    "circuit-protection.disconnect-clear":
      "El medio de desconexión deja libres la placa de datos y las tapas de acceso.",
    "circuit-protection.disconnect-in-the-way":
      "El medio de desconexión tapa la placa de datos o cuelga de una tapa de acceso.",
    "circuit-protection.disconnect-lockable": "El medio de desconexión se puede bloquear abierto.",
    "circuit-protection.disconnect-not-lockable":
      "El medio de desconexión no se puede bloquear abierto.",
    "circuit-protection.disconnect-off-unit":
      "El medio de desconexión no está montado en la unidad.",
    "circuit-protection.disconnect-on-unit": "El medio de desconexión está montado en la unidad.",
    "circuit-protection.working-space-met":
      "El espacio de trabajo tiene al menos {depth} de fondo, {width} de ancho y {height} de alto.",
    "circuit-protection.working-space-short":
      "El espacio de trabajo es insuficiente. Exigido: {depth} de fondo, {width} de ancho, {height} de alto.",
    "circuit-protection.receptacle-met":
      "El tomacorriente de servicio está a {distance}, dentro de {limit}.",
    "circuit-protection.receptacle-too-far":
      "El tomacorriente de servicio está demasiado lejos: {distance}; máximo permitido: {limit}.",
    "circuit-protection.receptacle-on-load-side":
      "El tomacorriente de servicio se alimenta del lado de carga del medio de desconexión de la unidad.",
    "circuit-protection.voltage-drop-met": "Caída de voltaje {drop}, dentro de {limit}.",
    "circuit-protection.voltage-drop-above-limit":
      "La caída de voltaje es excesiva: {drop}; máximo permitido: {limit}.",
    "circuit-protection.residual-current-met": "Dispositivo diferencial {rated} instalado.",
    "circuit-protection.residual-current-missing":
      "Se exige un dispositivo diferencial ({clause}).",
    "circuit-protection.residual-current-too-high":
      "El dispositivo diferencial no es bastante sensible: {rated}; máximo permitido: {limit}.",
    "circuit-protection.residual-current-not-stated":
      "Queda abierto si se exige un dispositivo diferencial y si basta ({clause}).",
    "circuit-protection.ground-fault-met":
      "Protección contra falla a tierra {rated} instalada ({clause}).",
    "circuit-protection.ground-fault-missing":
      "{clause} exige aquí protección contra falla a tierra. No hay ninguna instalada.",
    "circuit-protection.ground-fault-open":
      "{clause} exige aquí protección contra falla a tierra, salvo que el texto adoptado sea otro. Faltan ambos datos.",
    "circuit-protection.ground-fault-not-stated":
      "{clause} exige aquí protección contra falla a tierra. No se indicó si está instalada.",
    "circuit-protection.ground-fault-by-date":
      "{clause} exige aquí protección contra falla a tierra en trabajos desde el {from}. No se indicó la fecha del trabajo.",
    "circuit-protection.found-not-to-comply":
      "{by} comprobó el {date} que el circuito no cumple {clause}, {rules}.",
    "circuit-protection.clause-not-asked-for":
      "Verificado sin que se pidiera: {clause}. Se evalúa aquí o este circuito no lo necesita.",
    "circuit-protection.not-confirmed":
      "Sin confirmar para {rules}: {point} ({clause}). No decide nada.",
    "circuit-protection.ampacity-fits":
      "Ampacidad mínima del circuito: {marked} en la placa de datos, {ampacity} según las partes.",
    "circuit-protection.ampacity-too-low":
      "La ampacidad indicada es demasiado baja: {marked}; las partes exigen {ampacity}.",
    "circuit-protection.ampacity-unexplained":
      "La ampacidad indicada, {marked}, supera la de las partes, {ampacity}.",
    "circuit-protection.protection-fits":
      "Protección contra sobrecorriente: {maximum} en la placa de datos, {ceiling} como máximo según las partes.",
    "circuit-protection.protection-too-high":
      "La protección indicada es demasiado alta: {maximum}; las partes admiten {ceiling}.",
    "circuit-protection.next-size-down":
      "{calculated} no es un tamaño normalizado: el inmediato inferior.",
    "circuit-protection.heater-needs-more":
      "Menos de 125 % de la resistencia: el inmediato superior, {rating}.",
    "circuit-protection.smallest-rating": "Nunca por debajo de {rating}.",
    "circuit-protection.ampacity-needs-more":
      "Menor que la ampacidad mínima del circuito: {rating}.",
  });
