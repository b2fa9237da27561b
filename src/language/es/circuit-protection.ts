// Spanish (of the Americas) of the circuit: sentences and words.
import type {
  CircuitProtectionStatements,
  CircuitProtectionWord,
} from "../../circuit-protection/statements.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = CircuitProtectionStatements & Words<CircuitProtectionWord>;
const catalogue: Define<Said> = define;

/** What `circuit-protection` says, in Spanish. */
export const circuitProtection: CatalogueOf<Said> = /* @__PURE__ */ catalogue("es-419", {
  "circuit-protection.device-rating-met":
    "El {device} es de {rating}: dentro del máximo de la placa de datos, {limit}.",
  "circuit-protection.device-too-large":
    "El {device} es demasiado grande: {rating}; máximo de la placa de datos: {limit}.",
  "circuit-protection.device-below-load":
    "El {device} es demasiado chico: {rating}, y la unidad consume {load}.",
  "circuit-protection.device-below-ampacity":
    "El {device} es de {rating}, menor que la ampacidad mínima del circuito, {ampacity}. Puede dispararse en uso normal.",
  "circuit-protection.device-kind-met": "La placa de datos admite un {device}.",
  "circuit-protection.fuse-required":
    "La placa de datos solo admite fusibles. Un interruptor termomagnético solo no basta.",
  "circuit-protection.poles-met": "Polos instalados: {poles}; exigidos: {needed}.",
  "circuit-protection.poles-too-few": "Faltan polos. Instalados: {poles}; exigidos: {needed}.",
  "circuit-protection.poles-not-stated": "No se indicó el número de polos. Exigidos: {needed}.",
  "circuit-protection.voltage-marking-met": "La tensión marcada, {marking}, es suficiente.",
  "circuit-protection.voltage-marking-too-low":
    "La tensión marcada, {marking}, es insuficiente: {system} exige {needed}.",
  "circuit-protection.voltage-marking-not-stated":
    "No se indicó la tensión marcada, y {system} no admite todas.",
  "circuit-protection.device-not-stated":
    "No se indicó el interruptor termomagnético o fusible instalado.",
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
  "circuit-protection.grounding-wire-missing":
    "La canalización sobre el techo es el único camino a tierra ({clause}).",
  "circuit-protection.disconnect-rating-met": "Medio de desconexión {rating}; exigido: {needed}.",
  "circuit-protection.disconnect-too-small":
    "El medio de desconexión es insuficiente: {rating}; exigido: {needed}.",
  "circuit-protection.largest-load-not-stated":
    "Medio de desconexión {rating}: que baste depende de la carga mayor. {needed} siempre basta.",
  "circuit-protection.disconnect-fuse-met":
    "Fusibles del medio de desconexión: {fuse}, dentro de {limit}.",
  "circuit-protection.disconnect-fuse-too-large":
    "Los fusibles del medio de desconexión son demasiado grandes: {fuse}; máximo permitido: {limit}.",
  "circuit-protection.disconnect-in-sight": "El medio de desconexión está a la vista de la unidad.",
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
  "circuit-protection.disconnect-off-unit": "El medio de desconexión no está montado en la unidad.",
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
  "circuit-protection.voltage-drop-met": "Caída de tensión {drop}, dentro de {limit}.",
  "circuit-protection.voltage-drop-above-limit":
    "La caída de tensión es excesiva: {drop}; máximo permitido: {limit}.",
  "circuit-protection.residual-current-met": "Dispositivo diferencial {rated} instalado.",
  "circuit-protection.residual-current-missing": "Se exige un dispositivo diferencial ({clause}).",
  "circuit-protection.residual-current-too-high":
    "El dispositivo diferencial no es bastante sensible: {rated}; máximo permitido: {limit}.",
  "circuit-protection.residual-current-not-stated":
    "Queda abierto si se exige un dispositivo diferencial y si basta ({clause}).",
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
  "circuit-protection.ampacity-needs-more": "Menor que la ampacidad mínima del circuito: {rating}.",

  "circuit-protection.marking-assumed":
    "Se supone que la placa de datos admite interruptores termomagnéticos.",
  "circuit-protection.service-assumed": "Suministro supuesto: {system}.",
  "circuit-protection.ambient-assumed": "Temperatura ambiente supuesta en el recorrido: {ambient}.",
  "circuit-protection.terminations-assumed":
    "Se supone que los terminales no están marcados para 75 °C.",
  "circuit-protection.cable-assumed": "Se supone que el cable no es de tipo NM.",
  "circuit-protection.roof-assumed": "Se supone que el recorrido no pasa cerca de un techo.",
  "circuit-protection.conductors-assumed": "Se suponen 3 conductores cargados juntos como máximo.",
  "circuit-protection.circuits-assumed": "Se supone que no hay otro circuito junto al cable.",
  "circuit-protection.rated-load-assumed":
    "Como corriente de carga nominal se supone la ampacidad mínima del circuito, {ampacity}.",
  "circuit-protection.voltage-marking-assumed":
    "Se supone el interruptor termomagnético marcado {marking} o más.",
  "circuit-protection.compressor-inferred":
    "Se supone que el circuito alimenta un compresor: solo un motor da un máximo de {maximum} con {ampacity}.",
  "circuit-protection.not-stated": "No indicado y por eso no comprobado: {parts}.",
  "circuit-protection.not-judged": "Fuera de esta comprobación: {parts}.",
  "circuit-protection.heater-below-50-kw": "Se suponen resistencias de menos de 50 kW en total.",

  "circuit-protection.not-a-usual-size": "{maximum} no es un tamaño normalizado.",
  "circuit-protection.maximum-confirmed":
    "Un máximo de {maximum} es más de lo que corresponde a {ampacity}. Se leyó dos veces y se tomó como está impreso.",
  "circuit-protection.rated-load-low":
    "Una carga nominal de {load} es menos de lo que corresponde a {ampacity}. Se usó {ampacity} en su lugar.",
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
    "Caída de tensión {drop}, superior a la recomendada, {limit}.",
  "circuit-protection.from-memory":
    "Cumple según reglas citadas de memoria. Compruébelas: {clauses}.",
  "circuit-protection.rules-older":
    "El conjunto de reglas se revisó por última vez el {reviewed}, antes del trabajo del {date}. Busque reglas más nuevas.",
  "circuit-protection.ground-fault-required":
    "{clause} exige aquí protección contra falla a tierra. Los estados la modificaron: consulte el texto adoptado.",
  "circuit-protection.ground-fault-class-c":
    "{clause} admite también un dispositivo certificado de clase C, con una advertencia en el medio de desconexión.",
  "circuit-protection.ground-fault-exempt":
    "{clause} exige aquí protección contra falla a tierra desde el {from}.",
  "circuit-protection.ground-fault-by-date":
    "{clause} exige aquí protección contra falla a tierra en trabajos desde el {from}. No se indicó la fecha del trabajo.",
  "circuit-protection.advice": "{advice} ({clause}).",
  "circuit-protection.calculated-not-marked":
    "Los valores calculados no sustituyen a la placa de datos.",
  "circuit-protection.shared-circuit": {
    by: "count",
    one: "{count} carga más comparte este circuito.",
    other: "{count} cargas más comparten este circuito.",
  },

  "circuit-protection.fit-at-most":
    "Instale un interruptor termomagnético o fusibles de {limit} o menos.",
  "circuit-protection.fit-between":
    "Instale un interruptor termomagnético o fusibles de {from} a {to}.",
  "circuit-protection.fit-fuses": "Instale fusibles, por ejemplo en el medio de desconexión.",
  "circuit-protection.fit-poles": "Instale un interruptor termomagnético de {needed} polos.",
  "circuit-protection.fit-marking": "Instale un interruptor termomagnético marcado {needed} o más.",
  "circuit-protection.ask-manufacturer": "Consulte al fabricante.",
  "circuit-protection.read-nameplate-again": "Vuelva a leer la placa de datos.",
  "circuit-protection.state-maximum":
    "Escriba el fusible máximo de la placa de datos o del manual.",
  "circuit-protection.state-device": "Escriba el interruptor termomagnético o fusible instalado.",
  "circuit-protection.state-poles": "Escriba los polos del interruptor termomagnético.",
  "circuit-protection.state-marking":
    "Escriba la tensión marcada en el interruptor termomagnético.",
  "circuit-protection.state-conductor": "Escriba el conductor instalado.",
  "circuit-protection.state-equipment":
    "Escriba qué alimenta el circuito: un compresor, u otra cosa como una resistencia.",
  "circuit-protection.state-largest-load":
    "Escriba la corriente de carga nominal de la carga mayor.",
  "circuit-protection.size-conductor-elsewhere":
    "Haga calcular el conductor según {clause} y las reglas locales.",
  "circuit-protection.fit-conductor": "Instale {size} o mayor.",
  "circuit-protection.fit-larger-conductor": "Instale un conductor mayor.",
  "circuit-protection.fit-aluminum-terminals":
    "Use terminales o conectores marcados para aluminio.",
  "circuit-protection.look-at-terminals": "Vea el marcado de todos los terminales.",
  "circuit-protection.fit-grounding": "Instale un conductor de puesta a tierra de {size} o mayor.",
  "circuit-protection.fit-grounding-area":
    "Instale un conductor de puesta a tierra de {area} mm² o más.",
  "circuit-protection.state-fault-energy":
    "Escriba la corriente de falla y el tiempo de apertura, o la energía que deja pasar el dispositivo.",
  "circuit-protection.fit-grounding-wire":
    "Instale un conductor de puesta a tierra de equipos de tipo alambre.",
  "circuit-protection.fit-disconnect": "Instale un medio de desconexión de {needed} o más.",
  "circuit-protection.fit-disconnect-fuses":
    "Instale fusibles de {limit} o menos en el medio de desconexión.",
  "circuit-protection.move-disconnect":
    "Mueva el medio de desconexión: a la vista, fácilmente accesible, sin tapar las tapas de la unidad.",
  "circuit-protection.move-disconnect-within": "Mueva el medio de desconexión a {limit} o menos.",
  "circuit-protection.fit-lockable-disconnect":
    "Instale un medio de desconexión que se pueda bloquear abierto.",
  "circuit-protection.clear-space":
    "Despeje el espacio de trabajo: {depth} de fondo, {width} de ancho, {height} de alto.",
  "circuit-protection.add-receptacle":
    "Instale un tomacorriente de servicio a {limit} o menos, antes del medio de desconexión de la unidad.",
  "circuit-protection.fit-conductor-for-drop": "Instale {size} o mayor por la caída de tensión.",
  "circuit-protection.shorten-run": "Acorte el recorrido a {longest} o menos.",
  "circuit-protection.fit-residual-current":
    "Instale un dispositivo diferencial de {limit} o menos, de un tipo que admita el manual.",
  "circuit-protection.state-earthing":
    "Escriba el esquema de puesta a tierra del suministro, TN o TT, y el dispositivo diferencial.",
  "circuit-protection.ask-authority": "Haga que se compruebe según el texto de {rules}, {clause}.",

  "circuit-protection.device.breaker": "interruptor termomagnético",
  "circuit-protection.device.fuse": "fusible",
  "circuit-protection.section.run": "tramo desde el tablero",
  "circuit-protection.section.whip": "tramo flexible final",
  "circuit-protection.point.marked-values": "valores de la placa de datos",
  "circuit-protection.point.device-ratings": "corrientes nominales normalizadas",
  "circuit-protection.point.poles": "polos",
  "circuit-protection.point.voltage-marking": "tensión marcada",
  "circuit-protection.point.overload": "protección del conductor",
  "circuit-protection.point.ampacity": "ampacidad",
  "circuit-protection.point.terminations": "temperatura de los terminales",
  "circuit-protection.point.sheathed-cable": "límite del cable con cubierta",
  "circuit-protection.point.ambient": "temperatura ambiente",
  "circuit-protection.point.grouping": "conductores juntos",
  "circuit-protection.point.rooftop": "recorrido sobre un techo",
  "circuit-protection.point.aluminum-terminals": "terminales para aluminio",
  "circuit-protection.point.grounding": "conductor de puesta a tierra",
  "circuit-protection.point.enlarged-grounding": "puesta a tierra con conductores aumentados",
  "circuit-protection.point.disconnect-rating": "corriente nominal del medio de desconexión",
  "circuit-protection.point.disconnect-place": "lugar del medio de desconexión",
  "circuit-protection.point.working-space": "espacio de trabajo",
  "circuit-protection.point.voltage-drop": "caída de tensión",
  "circuit-protection.point.residual-current": "dispositivo diferencial",
  "circuit-protection.point.service-receptacle": "tomacorriente de servicio",
  "circuit-protection.point.rooftop-raceway": "canalización sobre un techo",
  "circuit-protection.point.compressor": "protección de un compresor",
  "circuit-protection.advice.enclosure-tool-or-lock":
    "Un medio de desconexión que al abrirse deja expuestas partes vivas debe requerir herramienta para abrirse o poder bloquearse",
  "circuit-protection.advice.enclosure-locked":
    "Un medio de desconexión que al abrirse deja expuestas partes vivas debe estar bloqueado o requerir herramienta",
  "circuit-protection.advice.surge-protection":
    "Las acometidas de viviendas exigen protección contra sobretensiones",
  "circuit-protection.advice.buried-cable-residual-current":
    "Un cable a menos de 50 mm de profundidad en un muro exige un dispositivo diferencial de 30 mA",
  "circuit-protection.advice.own-circuit":
    "Los manuales y códigos suelen exigir un circuito propio para la unidad",
  "circuit-protection.advice.notifiable-work":
    "Un circuito nuevo en una vivienda debe notificarse en Inglaterra y Gales",
  "circuit-protection.advice.gas-clearance":
    "Los equipos que producen arco deben separarse de medidores, venteos y alivios de gas",
  "circuit-protection.unjudged.equipment-grounding": "conductor de puesta a tierra",
  "circuit-protection.unjudged.disconnect": "medio de desconexión",
  "circuit-protection.unjudged.voltage-drop": "caída de tensión",
  "circuit-protection.unjudged.service-receptacle": "tomacorriente de servicio",
  "circuit-protection.unjudged.in-sight": "medio de desconexión a la vista",
  "circuit-protection.unjudged.near-enough": "distancia del medio de desconexión",
  "circuit-protection.unjudged.accessible": "acceso al medio de desconexión",
  "circuit-protection.unjudged.not-in-the-way": "medio de desconexión lejos de tapas",
  "circuit-protection.unjudged.lockable": "bloqueo del medio de desconexión",
  "circuit-protection.unjudged.not-on-unit": "medio de desconexión fuera de la unidad",
  "circuit-protection.unjudged.working-space": "espacio de trabajo",
  "circuit-protection.unjudged.short-circuit-rating": "corriente de cortocircuito admisible",
  "circuit-protection.unjudged.horsepower-rating": "potencia en hp del medio de desconexión",
  "circuit-protection.unjudged.fault-loop": "bucle de falla y tiempo de desconexión",
  "circuit-protection.unjudged.breaking-capacity": "capacidad interruptiva",
  "circuit-protection.cause.device-rating":
    "tamaño incorrecto del interruptor termomagnético o fusible",
  "circuit-protection.cause.device-kind": "interruptor termomagnético en lugar de fusibles",
  "circuit-protection.cause.device-poles": "faltan polos",
  "circuit-protection.cause.device-voltage": "tensión marcada insuficiente",
  "circuit-protection.cause.conductor": "conductor insuficiente",
  "circuit-protection.cause.terminals": "terminales no aptos para aluminio",
  "circuit-protection.cause.equipment-grounding": "conductor de puesta a tierra",
  "circuit-protection.cause.disconnect-rating": "medio de desconexión insuficiente",
  "circuit-protection.cause.disconnect-fuse": "fusibles incorrectos en el medio de desconexión",
  "circuit-protection.cause.disconnect-place": "lugar del medio de desconexión",
  "circuit-protection.cause.working-space": "espacio de trabajo insuficiente",
  "circuit-protection.cause.service-receptacle": "tomacorriente de servicio",
  "circuit-protection.cause.voltage-drop": "caída de tensión excesiva",
  "circuit-protection.cause.residual-current": "dispositivo diferencial",
  "circuit-protection.cause.ampacity-too-low": "ampacidad indicada demasiado baja",
  "circuit-protection.cause.protection-too-high": "protección indicada demasiado alta",

  "circuit-protection.check-service":
    "Compare la tensión, las fases y el sistema con la acometida.",
  "circuit-protection.maximum-below-ampacity":
    "MOP menor que MCA: la placa de datos se leyó mal, o los valores son de dos unidades.",
});
