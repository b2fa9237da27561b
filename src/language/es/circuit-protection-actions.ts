// Spanish of what to do next about a circuit.
import type { CircuitProtectionActions } from "../../circuit-protection/statements.ts";
import { type CatalogueOf, type Define, define } from "../define.ts";

const catalogue: Define<CircuitProtectionActions> = define;

/** What to do next about a circuit, in Spanish of the Americas. */
export const circuitProtectionActions: CatalogueOf<CircuitProtectionActions> =
  /* @__PURE__ */ catalogue("es-419", {
    "circuit-protection.fit-at-most":
      "Instale un interruptor termomagnético o fusibles de {limit} o menos.",
    "circuit-protection.fit-between":
      "Instale un interruptor termomagnético o fusibles de {from} a {to}.",
    "circuit-protection.fit-fuses": "Instale fusibles, por ejemplo en el medio de desconexión.",
    "circuit-protection.fit-poles": "Instale un interruptor termomagnético de {needed} polos.",
    "circuit-protection.fuse-every-line":
      "Ponga un fusible en cada uno de los {needed} conductores de línea.",
    "circuit-protection.give-own-circuit": "Dé a la unidad un circuito propio.",
    "circuit-protection.fit-marking":
      "Instale un interruptor termomagnético marcado {needed} o más.",
    "circuit-protection.ask-manufacturer": "Consulte al fabricante.",
    "circuit-protection.read-nameplate-again": "Vuelva a leer la placa de datos.",
    "circuit-protection.state-maximum":
      "Escriba el fusible máximo de la placa de datos o del manual.",
    "circuit-protection.state-device": "Escriba el interruptor termomagnético o fusible instalado.",
    "circuit-protection.state-poles": "Escriba los polos del interruptor termomagnético.",
    "circuit-protection.state-marking":
      "Escriba el voltaje marcado en el interruptor termomagnético.",
    "circuit-protection.state-conductor": "Escriba el conductor instalado.",
    "circuit-protection.state-equipment":
      "Escriba qué alimenta el circuito: un compresor, u otra cosa como una resistencia.",
    "circuit-protection.state-largest-load":
      "Escriba la corriente de carga nominal de la carga mayor.",
    "circuit-protection.size-conductor-elsewhere":
      "Haga calcular el conductor según {clause} y las reglas locales, y registre quién lo hizo.",
    "circuit-protection.fit-conductor": "Instale {size} o mayor.",
    "circuit-protection.fit-larger-conductor": "Instale un conductor mayor.",
    "circuit-protection.fit-aluminum-terminals":
      "Use terminales o conectores marcados para aluminio.",
    "circuit-protection.look-at-terminals": "Vea el marcado de todos los terminales.",
    "circuit-protection.fit-grounding":
      "Instale un conductor de puesta a tierra de {size} o mayor.",
    "circuit-protection.fit-grounding-area":
      "Instale un conductor de puesta a tierra de {area} mm² o más.",
    "circuit-protection.state-fault-energy":
      "Escriba la corriente de falla y el tiempo de apertura, o la energía que deja pasar el dispositivo.",
    "circuit-protection.fit-grounding-wire":
      "Instale un conductor de puesta a tierra de equipos de tipo alambre.",
    "circuit-protection.look-at-fittings":
      "Vea si la canalización tiene accesorios de compresión o roscados.",
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
    "circuit-protection.fit-conductor-for-drop": "Instale {size} o mayor por la caída de voltaje.",
    "circuit-protection.shorten-run": "Acorte el recorrido a {longest} o menos.",
    "circuit-protection.fit-residual-current":
      "Instale un dispositivo diferencial de {limit} o menos, de un tipo que admita el manual.",
    "circuit-protection.state-earthing":
      "Escriba el esquema de puesta a tierra del suministro, TN o TT, y el dispositivo diferencial.",
    "circuit-protection.fit-ground-fault":
      "Instale una protección certificada contra falla a tierra que se dispare con {limit} o menos, de un tipo que admita el manual.",
    "circuit-protection.state-date": "Indique la fecha del trabajo.",
    "circuit-protection.state-ground-fault":
      "Indique si hay instalada una protección contra falla a tierra de {limit} o menos, o el texto adoptado de {clause}.",
    "circuit-protection.comply-and-verify":
      "Cambie el circuito hasta que cumpla {clause}, {rules}, y haga que se compruebe de nuevo.",
    "circuit-protection.withdraw-verification":
      "Quite la verificación de {clause} o indique un apartado que se pidió.",
    "circuit-protection.ask-authority":
      "Haga que se compruebe según el texto de {rules}, {clause}, y registre quién lo comprobó.",
    "circuit-protection.add-compressor": "Añada el compresor a las cargas.",
    "circuit-protection.check-service":
      "Compare el voltaje, las fases y el sistema con la acometida.",
    "circuit-protection.maximum-below-ampacity":
      "MOP menor que MCA: la placa de datos se leyó mal, o los valores son de dos unidades.",
  });
