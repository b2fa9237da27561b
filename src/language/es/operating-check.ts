// Spanish (of the Americas) of gauge readings on a running unit: sentences and words.
import type {
  OperatingCheckStatements,
  OperatingCheckWord,
} from "../../operating-check/statements.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = OperatingCheckStatements & Words<OperatingCheckWord>;
const catalogue: Define<Said> = define;

/** What `operating-check` says, in Spanish. */
export const operatingCheck: CatalogueOf<Said> = /* @__PURE__ */ catalogue("es-419", {
  "operating-check.by-superheat":
    "Orificio fijo: la carga se comprueba por el sobrecalentamiento del vapor.",
  "operating-check.by-subcooling":
    "Válvula termostática: la carga se comprueba por el subenfriamiento.",
  "operating-check.no-target":
    "Inverter o válvula electrónica: no hay sobrecalentamiento ni subenfriamiento por el cual cargar.",
  "operating-check.no-target-in-heating":
    "Calefacción: los objetivos de sobrecalentamiento y subenfriamiento son para enfriamiento.",
  "operating-check.superheat-below-floor":
    "Sobrecalentamiento del vapor {superheat}: por debajo del mínimo de {least}. Puede llegar líquido al compresor.",
  "operating-check.superheat-near-floor":
    "Sobrecalentamiento del vapor {superheat}: demasiado cerca del mínimo de {least} para descartar líquido en el compresor.",

  "operating-check.gauge-set-suits": "El manómetro y la manguera admiten {pressure}.",
  "operating-check.above-hose-rating":
    "{pressure} supera la presión de trabajo de la manguera, {limit}.",
  "operating-check.destroys-gauge": "{pressure} destruye un manómetro que termina en {limit}.",
  "operating-check.beyond-scale": "{pressure} no se puede leer: la escala termina en {limit}.",

  "operating-check.within-window": "Presión {pressure}: dentro de {from} a {to}.",
  "operating-check.below-window": "Presión {pressure}: por debajo de {from} a {to}.",
  "operating-check.above-window": "Presión {pressure}: por encima de {from} a {to}.",
  "operating-check.other-side":
    "Presión {pressure}: fuera de {from} a {to}. Corresponde al otro lado: {side}.",
  "operating-check.too-close-to-call":
    "No concluyente: presión {pressure}, esperada de {from} a {to}.",
  "operating-check.approach-range-wide":
    "Una diferencia con el aire de {low} a {high} deja pasar una unidad averiada. Amplitud máxima útil: {widest}.",
  "operating-check.approach-at-rest":
    "Una diferencia con el aire de {low} a {high} deja pasar una unidad en reposo. Mínimo útil: {least}.",

  "operating-check.as-printed": "El manómetro y la manguera están sanos y son como llevan impreso.",
  "operating-check.steady-full-speed":
    "La unidad funciona de forma estable a plena velocidad. No se cuentan las pérdidas en las líneas.",
  "operating-check.approaches-as-stated": "Las diferencias con el aire son las indicadas.",
  "operating-check.expands-outdoors": "El refrigerante se expande en la unidad exterior.",
  "operating-check.exact-gauge": "No se indicó la exactitud; la lectura se supone exacta.",

  "operating-check.mode-first":
    "Compruebe primero el modo. En calefacción el puerto de gas tiene presión de descarga, que destruye un manómetro de baja.",
  "operating-check.hoses-lose-refrigerant":
    "Cada manguera pierde refrigerante. Conecte solo con motivo.",
  "operating-check.not-the-charge": "Ninguna presión demuestra que la carga sea correcta. Pésela.",

  "operating-check.weigh-the-charge": "Cargue por peso, según la placa de datos y el manual.",
  "operating-check.stop-liquid":
    "No deje funcionar así la unidad. Revise el caudal de aire y los filtros, y después la carga.",
  "operating-check.read-near-floor-again":
    "Suba el sobrecalentamiento hasta que esté claramente por encima de {least}, o vuelva a leer con mejores sondas.",
  "operating-check.use-rated-hose": "Use una manguera con presión de trabajo de {pressure} o más.",
  "operating-check.use-larger-gauge": "Use un manómetro cuya escala llegue a {pressure}.",
  "operating-check.check-mode-and-port":
    "Compruebe en qué modo está la unidad y en qué puerto está la manguera.",
  "operating-check.find-the-cause":
    "Revise filtros, serpentines, ventiladores y ambas temperaturas del aire, y vuelva a leer.",
  "operating-check.use-better-gauge": "Vuelva a leer con un manómetro de ±{needed} o mejor.",
  "operating-check.read-again-later": "Deje que la unidad se estabilice y vuelva a leer.",
  "operating-check.state-approach": "Escriba la diferencia con el aire que indica el fabricante.",

  "operating-check.side.low": "lado de baja",
  "operating-check.side.high": "lado de alta",
  "operating-check.cause.low": "por debajo del objetivo",
  "operating-check.cause.high": "por encima del objetivo",
  "operating-check.cause.liquid-to-compressor": "puede llegar líquido al compresor",
  "operating-check.cause.hose-rating": "manguera de presión insuficiente",
  "operating-check.cause.gauge-scale": "manómetro de escala insuficiente",
  "operating-check.cause.retard-only": "no se puede leer en este manómetro",
  "operating-check.cause.below-window": "presión demasiado baja",
  "operating-check.cause.above-window": "presión demasiado alta",
  "operating-check.cause.other-side": "otro lado u otro modo",
});
