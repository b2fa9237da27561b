// Spanish (of the Americas) of the logs: sentences and words.
import type { LogsStatements, LogsWord } from "../../logs/statements.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = LogsStatements & Words<LogsWord>;
const catalogue: Define<Said> = define;

/** What `logs` says, in Spanish. */
export const logs: CatalogueOf<Said> = /* @__PURE__ */ catalogue("es-419", {
  "logs.open-quote": "Línea {line}: unas comillas no se cierran.",
  "logs.long-line": "La línea {line} es demasiado larga para ser fila de un registro.",
  "logs.cell-count": "La línea {line} tiene {count} celdas. Esperadas: {expected}.",
  "logs.blank-cell": "Línea {line}: {column} está en blanco.",
  "logs.not-a-number": "Línea {line}, {column}: «{cell}» no es un número en la notación indicada.",
  "logs.not-possible": "Línea {line}, {column}: «{cell}» no es posible.",
  "logs.unknown-word": "Línea {line}, {column}: «{cell}» no es ninguna de las palabras indicadas.",
  "logs.not-a-time": "Línea {line}, {column}: «{cell}» no es una hora en la forma indicada.",
  "logs.skipped-hour":
    "Línea {line}, {column}: «{cell}» no existe. El reloj se adelantó en ese momento.",
  "logs.duplicate": "La línea {line} repite la fila anterior.",
  "logs.same-time": "La línea {line} tiene la hora de la fila anterior.",
  "logs.time-goes-back":
    "La línea {line} es {by} anterior a la fila de arriba. ¿Se atrasó el reloj, o empieza otra grabación?",
  "logs.header-again": "La línea {line} repite el encabezado. ¿Empieza otra grabación?",

  "logs.gap": "Faltan filas antes de la línea {line}: {gap} sin ninguna; lo habitual es {usual}.",
  "logs.past-midnight": "Pasó la medianoche antes de la línea {line}.",
  "logs.clock-set-back": "El reloj se atrasó una hora antes de la línea {line}.",
  "logs.clock-set-forward": "Falta una hora antes de la línea {line}. ¿Se adelantó el reloj?",

  "logs.separator": "Las celdas se separan con {separator}: {columns} columnas.",
  "logs.decimal-mark": "El signo decimal es «{mark}», como en {cell}.",
  "logs.header": "La línea {line} nombra las columnas.",
  "logs.unit": "La columna {column} está en {unit}.",
  "logs.date-order": "Las fechas se escriben {order}, como en {cell}.",
  "logs.time": "La columna {column} es el tiempo: {written}.",

  "logs.no-separator": "No se encontró separador: el texto tiene una columna.",
  "logs.decimal-unsure": "Ningún número tiene signo decimal. Se supuso el punto.",
  "logs.thousands-or-decimal": "¿El signo de {cell} es decimal o separa miles?",
  "logs.no-header": "Ninguna línea nombra las columnas.",
  "logs.zero-not-stated":
    "La columna {column} no dice si es manométrica o absoluta. Se supuso {unit}.",
  "logs.unit-unknown": "La columna {column} no tiene una unidad conocida; se deja fuera.",
  "logs.time-unit-unknown":
    "La columna {column} no tiene una unidad conocida. Se supusieron segundos.",
  "logs.column-missing": "No se encontró columna para {name}.",
  "logs.two-columns": "Más de una columna corresponde a {name}: {columns}. Se tomó la primera.",
  "logs.no-time": "Ninguna columna contiene el tiempo.",
  "logs.date-order-unsure": "Las fechas admiten más de un orden. Se supuso {order}: {cell}.",
  "logs.zone-unknown": "No se indica el huso del reloj. Las horas se toman tal cual.",
  "logs.serial-unsure":
    "La columna {column} parece contener fechas de una hoja de cálculo. Se supuso un calendario desde 1900.",
  "logs.elapsed-or-clock":
    "La columna {column} puede ser la hora del día o el tiempo desde el inicio.",
  "logs.blank-cells": {
    by: "count",
    one: "Una fila tiene una celda en blanco. Con este formato, se rechaza.",
    other: "{count} filas tienen una celda en blanco. Con este formato, se rechazan.",
  },

  "logs.lowest": "La presión más baja, {pressure}, está en {elapsed}.",
  "logs.highest": "La presión más alta, {pressure}, está en {elapsed}.",
  "logs.between-rows": "La válvula se cerró entre esta fila y la siguiente: en menos de {spacing}.",
  "logs.starts-isolated":
    "No hay bajada de presión antes del aumento. ¿Empieza el registro después de aislar?",
  "logs.starts-filled": "No se encontró el llenado. ¿Empieza el registro después?",
  "logs.several-rises": "La presión aumenta después de {count} mínimos. Se tomó el último.",
  "logs.several-fills": "La presión se subió en {count} etapas. Se tomó la última.",
  "logs.ends-before": "Se dejaron fuera las filas después de {elapsed}: ahí la presión cae.",
  "logs.no-rise":
    "Después de bajar, la presión nunca sube una décima parte. Un sistema seco y sin fugas y una bomba en marcha se ven igual.",
  "logs.no-fill": "El registro no contiene ninguna presión por encima de la atmosférica.",
  "logs.gas-settles": "El gas tarda unos minutos en estabilizarse después del llenado.",

  "logs.which-zero": "¿Manométrica o absoluta?",

  "logs.separator.comma": "comas",
  "logs.separator.semicolon": "puntos y comas",
  "logs.separator.tab": "tabuladores",
  "logs.separator.bar": "barras verticales",
  "logs.written.elapsed": "tiempo desde el inicio",
  "logs.written.clock": "hora del día",
  "logs.written.date-time": "fecha y hora",
  "logs.written.serial": "días del calendario de una hoja de cálculo",
  "logs.order.year-month-day": "año, mes, día",
  "logs.order.day-month-year": "día, mes, año",
  "logs.order.month-day-year": "mes, día, año",
});
