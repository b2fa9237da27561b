// Spanish of what to do next about an installation.
import type { CommissioningActions } from "../../commissioning/statements.ts";
import { type CatalogueOf, type Define, define } from "../define.ts";

const catalogue: Define<CommissioningActions> = define;

/** What to do next, in Spanish of the Americas. */
export const commissioningActions: CatalogueOf<CommissioningActions> = /* @__PURE__ */ catalogue(
  "es-419",
  {
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
    "commissioning.connect-less":
      "Conecte unidades interiores que sumen {limit} o menos, como permite el manual.",
    "commissioning.connect-more":
      "Conecte unidades interiores que sumen {limit} o más, como exige el manual.",
    "commissioning.bring-indoor-units-closer":
      "Monte las unidades interiores con {most} de diferencia de altura como máximo.",
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
      "open-valves": "Cierre las válvulas y no siga hasta que cumpla lo siguiente: {steps}.",
      "add-charge": "No agregue más refrigerante hasta que cumpla lo siguiente: {steps}.",
      other: "Desenergice la unidad hasta que cumpla lo siguiente: {steps}.",
    },
    "commissioning.read-vacuum-again":
      "Vuelva a leer el vacuómetro antes de romper un vacío que estuvo días. Evacúe de nuevo si subió.",
    "commissioning.repeat-step": "Repita y registre: {step}.",
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
    "commissioning.lower-drain": "Lleve el drenaje más abajo o instale una bomba.",
    "commissioning.clear-drain": "Despeje el drenaje y vuelva a verter agua.",
    "commissioning.pass-what-is-on-file": "Pase lo que está guardado con ese nombre.",
  },
);
