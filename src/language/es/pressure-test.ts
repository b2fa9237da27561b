// Spanish (of the Americas) of the nitrogen pressure test: sentences and words.
import type { PressureTestStatements, PressureTestWord } from "../../pressure-test/statements.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = PressureTestStatements & Words<PressureTestWord>;
const catalogue: Define<Said> = define;

/** What `pressure-test` says, in Spanish. */
export const pressureTest: CatalogueOf<Said> = /* @__PURE__ */ catalogue("es-419", {
  "pressure-test.within-limit":
    "La caída de presión, {drop} ± {uncertainty}, está dentro del límite de {limit}.",
  "pressure-test.above-limit":
    "La caída de presión, {drop} ± {uncertainty}, supera el límite de {limit}.",
  "pressure-test.across-limit":
    "No concluyente: la caída es de {drop} ± {uncertainty} y el límite, de {limit}.",
  "pressure-test.leak-within-limit":
    "El límite de {limit} la admite, pero hay una fuga demostrada: {drop} ± {uncertainty}.",
  "pressure-test.limit-lowered":
    "El límite indicado, {stated}, supera el 1 % de la presión de llenado, {pressure}. Se evaluó con {limit}.",
  "pressure-test.leak-proven":
    "Fuga demostrada: la caída, {drop}, es mayor que su incertidumbre, {uncertainty}.",
  "pressure-test.no-leak-above": "Si hay caída de presión, es de {above} como máximo.",
  "pressure-test.unexplained-rise":
    "La presión está {rise} ± {uncertainty} por encima de lo que explica la temperatura. Entró gas o el termómetro engaña.",
  "pressure-test.no-limit-stated": "No se indicó ningún límite; así la prueba no puede aprobarse.",
  "pressure-test.weather-alone":
    "La temperatura por sí sola cambia la presión en {temperature}. Cambió en {change}.",
  "pressure-test.weather-and-barometer-alone":
    "La temperatura por sí sola cambia la presión en {temperature}; el barómetro, en {barometer}. Cambió en {change}.",

  "pressure-test.hold-time-unknown": "No se indicó el tiempo entre las lecturas.",
  "pressure-test.short-hold": "Se mantuvo {hold}; el tiempo más corto publicado es de {shortest}.",
  "pressure-test.hold-below-manual": "Se mantuvo {hold}; el manual exige {required}.",
  "pressure-test.hold-below-step":
    "En {hold}, una fuga del 1 % de la presión de llenado por hora no mueve el manómetro ni un paso, {step}.",
  "pressure-test.gauge-without-error":
    "El manómetro se indicó como exacto. Ningún manómetro lo es.",
  "pressure-test.thermometer-without-error":
    "El termómetro se indicó como exacto. Ningún termómetro lo es.",
  "pressure-test.fill-below-manual": "Se probó a {pressure}; el manual exige {required}.",
  "pressure-test.fill-below-service":
    "Se probó a {pressure}: por debajo de {service}, la presión que alcanza el propio refrigerante.",
  "pressure-test.above-marked":
    "La presión llegó a {pressure}: por encima de la presión marcada más baja, {marked}.",
  "pressure-test.pressure-still":
    "El manómetro apenas se movió, aunque la temperatura y el barómetro por sí solos mueven la presión en {moved}.",
  "pressure-test.zones-swapped":
    "En la lectura a {elapsed} las temperaturas cambiaron de lugar: de {from} a {to}, y al revés en el otro termómetro.",
  "pressure-test.zones-swapped-at-end":
    "Al final las temperaturas habían cambiado de lugar: de {from} a {to}, y al revés en el otro termómetro.",
  "pressure-test.log-misfit":
    "La dispersión de las lecturas es {misfit} veces la que explican los errores indicados.",
  "pressure-test.last-reading-above-limit":
    "La última lectura muestra una caída de {drop}: por encima del límite de {limit}.",
  "pressure-test.falls-faster":
    "La presión cayó más rápido al final de la prueba: {lost} más de lo que explica el curso anterior.",
  "pressure-test.jump":
    "A los {elapsed} la presión cambió en {change}, más de lo que explican la temperatura y los instrumentos.",

  "pressure-test.below-limit":
    "{fill} pasan a {warm} con el mayor calor: dentro del límite marcado ({part}), {limit}.",
  "pressure-test.lowered-to-limit":
    "Deténgase en {fill}. Con el mayor calor pasan a {warm}: el límite marcado ({part}), {limit}.",

  "pressure-test.gauge-drift": "El cero del manómetro se movió ±{drift} como máximo.",
  "pressure-test.rigid-walls":
    "La tubería conservó su volumen; la dilatación del cobre cuenta como incertidumbre.",
  "pressure-test.volume-exact": "El volumen indicado es exacto.",
  "pressure-test.fill-unchecked":
    "La presión de llenado era la que exigen el manual y el refrigerante: no se indicó ninguno.",
  "pressure-test.barometer-unchanged":
    "El barómetro cambió ±{change} como máximo, aproximadamente.",
  "pressure-test.gas-settled":
    "El gas se había estabilizado después del llenado antes de la primera lectura.",
  "pressure-test.follows-gas":
    "El termómetro siguió al gas dentro de ±{within} y {missed} del cambio de temperatura.",
  "pressure-test.gas-elsewhere-unknown":
    "Parte del gas puede estar en otro lugar: cuentan como incertidumbre ±{within} y {missed} del cambio de temperatura.",
  "pressure-test.warm-from-fill":
    "La primera lectura se tomó justo después del llenado, con el gas aún caliente.",
  "pressure-test.all-limits-given":
    "Se indicaron todas las presiones marcadas de lo que queda conectado.",

  "pressure-test.smallest-leak":
    "Fuga mínima demostrable en esta prueba: {smallest}. Si se mantiene {hold}, sería cerca de la mitad.",
  "pressure-test.smallest-drop-rate":
    "La menor caída que esta prueba podría demostrar es de {smallest} en {held}. Una prueba de {hold} demostraría cerca de la mitad de ese ritmo.",
  "pressure-test.smallest-drop": "Caída mínima demostrable en esta prueba: {smallest}.",
  "pressure-test.no-margin":
    "El plan no deja margen para el error del manómetro ni para una válvula de alivio que abra antes. Deténgase más abajo por ambos.",
  "pressure-test.cylinder-cools":
    "Un cilindro que se vacía rápido está frío e indica menos. Vuelva a leerlo cuando esté a temperatura ambiente.",
  "pressure-test.water-volume":
    "El volumen de agua está grabado en el cilindro. Los cilindros se venden por el gas que contienen: 40 pie³ de gas son unos 8 L de agua.",
  "pressure-test.order-of-magnitude":
    "Es un orden de magnitud: la forma de la fuga decide qué ley rige.",
  "pressure-test.liquid-leaks-more":
    "El refrigerante líquido en la fuga pierde varias veces más masa.",

  "pressure-test.state-limit":
    "Indique la caída que admite el manual, {largest} como máximo (1 % de la presión de llenado).",
  "pressure-test.find-by-bubbles":
    "Localice la fuga, {leak} en total: aplique agua jabonosa en cada unión y observe cada una {watch}.",
  "pressure-test.find-by-foam":
    "Localice la fuga, {leak} en total: observe el agua jabonosa en cada unión {watch}, o use un gas trazador y su detector.",
  "pressure-test.find-by-tracer":
    "Localice la fuga, {leak} en total. Es demasiado pequeña para las burbujas: use un gas trazador no inflamable y mantenga su detector {watch} en cada unión.",
  "pressure-test.find-of-unknown-size":
    "Localice la fuga: aplique agua jabonosa en cada unión y observe cada una {watch}. Si nada aparece, use un gas trazador y su detector.",
  "pressure-test.repair-and-retest": "Libere el nitrógeno, repare la fuga y repita la prueba.",
  "pressure-test.close-supply":
    "Desconecte el suministro de nitrógeno, espere a que se estabilicen las temperaturas y repita la prueba.",
  "pressure-test.read-at-first-temperature":
    "Vuelva a leer cuando el gas esté a {temperature}, como al inicio.",
  "pressure-test.hold-longer": "Prolongue la prueba: {further} más, aproximadamente.",
  "pressure-test.hold-at-least": "Mantenga la presión al menos {hold} y anote ambas horas.",
  "pressure-test.state-gauge": "Indique la exactitud y la resolución del manómetro.",
  "pressure-test.state-thermometer": "Indique la exactitud y la resolución del termómetro.",
  "pressure-test.fill-higher":
    "Repita la prueba a {required} o más, si lo admiten todas las presiones marcadas.",
  "pressure-test.lower-pressure":
    "Baje la presión por debajo de {marked}. Consulte al fabricante antes de usar la unidad.",
  "pressure-test.check-thermometers":
    "Compruebe a qué termómetro pertenece cada temperatura y corrija la lectura.",
  "pressure-test.open-to-system":
    "Abra la válvula entre el manómetro y el sistema, libere la lectura retenida, fije el termómetro a la tubería y repita la prueba.",
  "pressure-test.look-at-plot":
    "Busque en la gráfica entrada de gas, una válvula cerrada, sol o una fila errónea. Evalúe el registro desde el último cambio.",
  "pressure-test.read-again": "Vuelva a leer ahora la presión y la temperatura.",
  "pressure-test.hold-again": "Averigüe qué cambió y empiece una nueva prueba.",
  "pressure-test.state-elsewhere":
    "Indique qué parte del gas está lejos del termómetro (0 si ninguna), o mida también allí.",
  "pressure-test.measure-elsewhere":
    "Ponga un segundo termómetro donde está el otro {share} del gas, o indique cuánto puede haber cambiado su temperatura.",
  "pressure-test.state-since-fill":
    "Indique cuánto tiempo después del llenado se tomó la primera lectura. Si fue menos de {settle}, deje reposar el gas ese tiempo y tome una nueva primera lectura.",
  "pressure-test.settle-first":
    "Deje reposar el gas {settle} después del llenado, tome una nueva primera lectura e indique ese tiempo.",
  "pressure-test.state-follows-gas":
    "Ponga el termómetro en la tubería, bajo el aislamiento, e indique cuánto puede diferir del gas. Para decidir se requiere ±{within} o menos.",
  "pressure-test.reduce-uncertainty":
    "Prolongar la prueba no lo decidirá. Reduzca la incertidumbre mayor: {part}, {share}.",

  "pressure-test.part.gauge-reading": "lectura del manómetro",
  "pressure-test.part.gauge-drift": "deriva del manómetro",
  "pressure-test.part.gauge-error": "error del manómetro",
  "pressure-test.part.thermometer-reading": "lectura del termómetro",
  "pressure-test.part.thermometer-error": "error del termómetro",
  "pressure-test.part.gas-temperature": "temperatura del gas",
  "pressure-test.part.settling": "gas aún caliente del llenado",
  "pressure-test.part.barometer": "barómetro",
  "pressure-test.part.wall-expansion": "dilatación de la tubería",
  "pressure-test.part.zone-volumes": "volúmenes de las zonas",
  "pressure-test.part.scatter": "dispersión de las lecturas",
  "pressure-test.marked.low side": "lado de baja",
  "pressure-test.marked.high side": "lado de alta",
  "pressure-test.marked.component": "componente",
  "pressure-test.marked.relief device": "válvula de alivio",
  "pressure-test.cause.leak": "fuga",
  "pressure-test.cause.unexplained-rise": "subida inexplicada",

  "pressure-test.no-loss-not-shown":
    "Ningún instrumento puede demostrar que no se perdió nada. Indique un límite que pueda demostrar.",
  "pressure-test.rate-needs-it": "El límite es una tasa y exige este dato.",
  "pressure-test.station-pressure":
    "Es la presión atmosférica del lugar, según un barómetro o la altitud.",
  "pressure-test.zones-need-volumes":
    "Las zonas a temperaturas distintas exigen sus volúmenes o sus partes del gas, en el mismo orden.",
  "pressure-test.gas-leaks-outward": "La presión interior tiene que ser mayor que la exterior.",
});
