// Spanish of the words of the verdict on a circuit: points of a rule set, causes, advice.
import type { CircuitProtectionWord } from "../../circuit-protection/statements.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = Words<CircuitProtectionWord>;
const catalogue: Define<Said> = define;

/** Words of the verdict on a circuit: points of a rule set, causes, advice, in Spanish of the Americas. */
export const circuitProtectionWords: CatalogueOf<Said> = /* @__PURE__ */ catalogue("es-419", {
  "circuit-protection.device.breaker": "interruptor termomagnético",
  "circuit-protection.device.fuse": "fusible",
  "circuit-protection.section.run": "tramo desde el tablero",
  "circuit-protection.section.whip": "tramo flexible final",
  "circuit-protection.point.marked-values": "valores de la placa de datos",
  "circuit-protection.point.device-ratings": "corrientes nominales normalizadas",
  "circuit-protection.point.poles": "polos",
  "circuit-protection.point.voltage-marking": "voltaje marcado",
  "circuit-protection.point.overload": "protección del conductor",
  "circuit-protection.point.small-fuse": "corriente de fusión de los fusibles pequeños",
  "circuit-protection.point.ampacity": "ampacidad",
  "circuit-protection.point.terminations": "temperatura de los terminales",
  "circuit-protection.point.sheathed-cable": "límite del cable con cubierta",
  "circuit-protection.point.ambient": "temperatura ambiente",
  "circuit-protection.point.grouping": "conductores juntos",
  "circuit-protection.point.thermal-insulation": "cable dentro de aislamiento térmico",
  "circuit-protection.point.rooftop": "recorrido sobre un techo",
  "circuit-protection.point.aluminum-terminals": "terminales para aluminio",
  "circuit-protection.point.grounding": "conductor de puesta a tierra",
  "circuit-protection.point.enlarged-grounding": "puesta a tierra con conductores aumentados",
  "circuit-protection.point.disconnect-rating": "corriente nominal del medio de desconexión",
  "circuit-protection.point.disconnect-place": "lugar del medio de desconexión",
  "circuit-protection.point.working-space": "espacio de trabajo",
  "circuit-protection.point.voltage-drop": "caída de voltaje",
  "circuit-protection.point.residual-current": "dispositivo diferencial",
  "circuit-protection.point.ground-fault": "protección contra falla a tierra",
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
  "circuit-protection.advice.earth-class-d":
    "La toma de tierra debe ser de clase D: como máximo 100 Ω, o 500 Ω si un interruptor de fuga dispara en 0.5 s",
  "circuit-protection.advice.notifiable-work":
    "Un circuito nuevo en una vivienda debe notificarse en Inglaterra y Gales",
  "circuit-protection.advice.gas-clearance":
    "Los equipos que producen arco deben separarse de medidores, venteos y alivios de gas",
  "circuit-protection.unjudged.equipment-grounding": "conductor de puesta a tierra",
  "circuit-protection.unjudged.disconnect": "medio de desconexión",
  "circuit-protection.unjudged.voltage-drop": "caída de voltaje",
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
  "circuit-protection.cause.device-voltage": "voltaje marcado insuficiente",
  "circuit-protection.cause.conductor": "conductor de calibre insuficiente",
  "circuit-protection.cause.terminals": "terminales no aptos para aluminio",
  "circuit-protection.cause.equipment-grounding": "conductor de puesta a tierra",
  "circuit-protection.cause.disconnect-rating": "medio de desconexión insuficiente",
  "circuit-protection.cause.disconnect-fuse": "fusibles incorrectos en el medio de desconexión",
  "circuit-protection.cause.disconnect-place": "lugar del medio de desconexión",
  "circuit-protection.cause.working-space": "espacio de trabajo insuficiente",
  "circuit-protection.cause.service-receptacle": "tomacorriente de servicio",
  "circuit-protection.cause.voltage-drop": "caída de voltaje excesiva",
  "circuit-protection.cause.not-confirmed": "apartados sin confirmar",
  "circuit-protection.cause.residual-current": "dispositivo diferencial",
  "circuit-protection.cause.ampacity-too-low": "ampacidad indicada demasiado baja",
  "circuit-protection.cause.protection-too-high": "protección indicada demasiado alta",
});
