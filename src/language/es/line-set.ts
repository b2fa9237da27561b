// Spanish (of the Americas) of the line set: sentences and words.
import type { LineSetStatements, LineSetWord } from "../../line-set/statements.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = LineSetStatements & Words<LineSetWord>;
const catalogue: Define<Said> = define;

/** What `line-set` says, in Spanish. */
export const lineSet: CatalogueOf<Said> = /* @__PURE__ */ catalogue("es-419", {
  "line-set.rate-unit": "Compruebe la unidad: g/m, oz/pie o lb/pie.",
  "line-set.viscosity-unit": "En µPa·s: 100 µPa·s = 0.0001 Pa·s.",

  "line-set.within-maximum": "{figure} {value}: dentro del máximo de {limit}.",
  "line-set.above-maximum": "{figure} {value}: supera el máximo de {limit}.",
  "line-set.near-maximum":
    "{figure} {value} ± {uncertainty}: demasiado cerca del máximo de {limit} para decidir.",
  "line-set.above-minimum": "{figure} {value}: al menos {limit}, como se exige.",
  "line-set.below-minimum": "{figure} {value}: por debajo del mínimo de {limit}.",
  "line-set.near-minimum":
    "{figure} {value} ± {uncertainty}: demasiado cerca del mínimo de {limit} para decidir.",
  "line-set.kept-as-measured":
    "{figure} {value} ± {uncertainty}: según lo medido, dentro de los {limit} permitidos.",
  "line-set.bends-within-maximum": {
    by: "count",
    one: "{count} curva: dentro del máximo de {most}.",
    other: "{count} curvas: dentro del máximo de {most}.",
  },
  "line-set.bends-above-maximum": {
    by: "count",
    one: "{count} curva: supera el máximo de {most}.",
    other: "{count} curvas: superan el máximo de {most}.",
  },
  "line-set.bends-not-counted": "No se contaron las curvas; máximo {most}.",
  "line-set.bend-length-not-counted":
    "No se contaron las curvas; cada una suma {bend} a la longitud equivalente.",

  "line-set.add":
    "Según la regla, agregue {charge}: la longitud es de {length}, {difference} más que la precargada, {preCharged}, a {rate}.",
  "line-set.take-out":
    "Según la regla, retire {charge}: la longitud es de {length}, {difference} menos que la precargada, {preCharged}, a {rate}.",
  "line-set.nothing-to-add":
    "Según la regla, no agregue nada: la carga de fábrica alcanza para {length} de línea (longitud precargada: {preCharged}).",
  "line-set.short-line-rule-not-known":
    "La longitud, {length}, es {difference} menor que la precargada, {preCharged}. No se conoce la regla para líneas cortas.",
  "line-set.allowances": "Otros ajustes: {mass}.",
  "line-set.nothing-to-add-in-all": "Según la regla, no agregue nada: el total es de {total}.",
  "line-set.total-not-known":
    "No se indicó la carga de fábrica; el total no se comparó con {limit}.",

  "line-set.rate-plausible":
    "La carga por longitud, {rate}, equivale a {ratio} veces una línea llena, {full}: dentro de lo verosímil, de {low} a {high}.",
  "line-set.rate-implausible":
    "La carga por longitud, {rate}, equivale a {ratio} veces una línea llena, {full}: fuera de lo verosímil, de {low} a {high}.",
  "line-set.rate-fits-other-device":
    "La carga por longitud, {rate}, equivale a {ratio} veces una línea llena, {full}. Con ese lugar de expansión es verosímil de {low} a {high}.",
  "line-set.two-phase-liquid-line":
    "Una carga menor que la de una línea llena es correcta si el líquido se expande en el exterior: la línea lleva entonces líquido y vapor.",
  "line-set.rate-too-high": "La carga por longitud, {rate}, supera la de cualquier línea llena.",
  "line-set.rate-per-foot": "El valor concuerda con una carga por pie. ¿Se leyó como por metro?",
  "line-set.rate-per-meter": "El valor concuerda con una carga por metro. ¿Se leyó como por pie?",

  "line-set.subcooling-enough":
    "Subenfriamiento {available}: se exige {needed} para una pérdida de {loss}.",
  "line-set.subcooling-too-low":
    "Subenfriamiento {available}: menor que el exigido, {needed}, para una pérdida de {loss}. El líquido se vaporiza en la línea.",
  "line-set.subcooling-near":
    "Subenfriamiento {available} ± {uncertainty}: no concluyente. Se exige {needed} para una pérdida de {loss}.",
  "line-set.subcooling-not-known":
    "No se conoce el subenfriamiento; se exige {needed} para una pérdida de {loss}.",
  "line-set.liquid-velocity-within":
    "Velocidad del líquido {velocity}: dentro de {least} a {most}, según las guías de tubería.",
  "line-set.liquid-velocity-high":
    "Velocidad del líquido {velocity}: supera el máximo de las guías de tubería, {most}.",
  "line-set.liquid-velocity-low":
    "Velocidad del líquido {velocity}: por debajo del mínimo de las guías de tubería, {least}. Una línea ancha contiene más carga.",
  "line-set.loss-not-known": "No se conoce la pérdida de presión; permitido {limit} como máximo.",
  "line-set.oil-returns":
    "Velocidad del vapor a capacidad mínima {velocity}: al menos {least}, como se exige para el retorno de aceite.",
  "line-set.oil-stays":
    "Velocidad del vapor a capacidad mínima {velocity}: demasiado baja para elevar el aceite, que exige {oil}.",
  "line-set.oil-return-open-riser":
    "Velocidad del vapor a capacidad mínima {velocity}: menor que la exigida, {least}, aunque el aceite sube desde {oil}.",
  "line-set.oil-return-open-level":
    "Velocidad del vapor a capacidad mínima {velocity}: menor que la exigida para el retorno de aceite, {least}.",
  "line-set.vapor-noise":
    "Velocidad del vapor a plena capacidad {velocity}: supera el máximo de {most}. Hace ruido.",

  "line-set.stock-length": "{stock} es la medida comercial más corta que alcanza para {needed}.",
  "line-set.surplus-to-cut": "Sobrante que cortar: {surplus}.",
  "line-set.coil-to-minimum":
    "Para llegar al mínimo, enrolle en plano junto a la unidad exterior: {coiled}. La carga cuenta {installed}.",
  "line-set.coil-surplus":
    "Sobrante que enrollar en plano junto a la unidad exterior: {coiled}. La carga cuenta {installed}.",
  "line-set.no-stock-length":
    "Longitud necesaria {needed}: supera la medida comercial más larga, {longest}.",
  "line-set.items-fit": "Los elementos caben y llenan {fill} de la abertura.",
  "line-set.opening-too-small":
    "La abertura es insuficiente. Un pasamuros de {sleeve} admite los elementos.",
  "line-set.no-layout-found":
    "No se encontró ninguna disposición, y ninguna queda descartada. Un pasamuros de {sleeve} admite los elementos.",
  "line-set.to-recover": "Refrigerante que recuperar: {mass}. Quedan {keep} en el sistema.",
  "line-set.to-add": "Refrigerante que agregar: {mass}. El sistema llega a {keep}.",
  "line-set.charge-not-known": "No se conoce la carga del sistema.",
  "line-set.cylinder-too-small": "En el cilindro caben {room}; hay que retirar {mass}.",

  "line-set.limits-of-the-manual":
    "Los límites son los del manual de esta unidad. Los que no se indicaron no se comprobaron.",
  "line-set.maximum-length-not-checked":
    "La longitud máxima del manual no se indicó ni se comprobó.",
  "line-set.minimum-length-not-checked":
    "La longitud mínima del manual no se indicó ni se comprobó.",
  "line-set.room-limit-not-checked": "El límite de carga del recinto no se indicó ni se comprobó.",
  "line-set.saturated-liquid": "La línea está llena de líquido saturado a su temperatura.",
  "line-set.no-heat-gain": "La línea de líquido no absorbe calor.",
  "line-set.expansion-indoors": "El líquido se expande en la unidad interior.",
  "line-set.liquid-only": "La línea lleva solo líquido.",
  "line-set.loss-not-checked": "No se indicó un límite de pérdida de presión; no se comprobó.",
  "line-set.same-density": "La densidad del vapor es la misma a ambas capacidades.",
  "line-set.guide-minimum-velocity":
    "Velocidad mínima del vapor según las guías de tubería: {least}.",
  "line-set.guide-maximum-velocity":
    "Velocidad máxima del vapor según las guías de tubería: {most}.",
  "line-set.no-slack": "Sin margen para medir y hacer los extremos.",
  "line-set.no-service-loop": "Sin tramo de reserva.",
  "line-set.round-and-stiff": "Los elementos son rectos, redondos y no se aplastan.",
  "line-set.no-clearance": "No se deja holgura para pasar los elementos.",
  "line-set.charge-as-labeled": "La carga del sistema es la que dice la etiqueta.",
  "line-set.cylinder-not-checked": "No se indicó ningún cilindro; su cabida no se comprobó.",

  "line-set.charge-after-tests":
    "Cargue por peso, y solo después de que la prueba de presión y la evacuación cumplan.",
  "line-set.no-kinks":
    "Curve con curvadora, sin dobleces. Enrolle en plano para que no se junte aceite. Mantenga tapados los extremos.",
  "line-set.drain-falls-outward": "El drenaje debe caer hacia afuera por la abertura. Séllela.",
  "line-set.drilling":
    "Antes de taladrar, busque cables y tuberías en el muro. Corte la energía de lo que esté cerca.",
  "line-set.overfilled-cylinder":
    "Pese el cilindro de recuperación y nunca lo llene de más: puede reventar al calentarse.",
  "line-set.mixed-refrigerants": "Nunca mezcle refrigerantes en un cilindro.",
  "line-set.never-vent": "Nunca libere refrigerante a la atmósfera. Solo técnicos con licencia.",

  "line-set.measure-better": "Vuelva a medir con más exactitud: {figure}.",
  "line-set.shorten-line":
    "Acorte la línea a {limit} o menos, o instale una unidad que lo admita. Ninguna carga lo compensa.",
  "line-set.lengthen-line": "Instale al menos {limit} de línea, o una unidad que admita menos.",
  "line-set.reduce-height":
    "Reduzca el desnivel a {limit} o menos, o instale una unidad que lo admita.",
  "line-set.fewer-bends": {
    by: "most",
    one: "Tienda la línea con {most} curva o ninguna.",
    other: "Tienda la línea con {most} curvas o menos.",
  },
  "line-set.count-bends": "Cuente las curvas y escriba el número.",
  "line-set.enter-short-line-rule":
    "Busque en el manual si una línea corta obliga a retirar refrigerante, y escriba la regla.",
  "line-set.reduce-charge":
    "No agregue esta carga. Acorte la línea, o busque un recinto y una unidad que admitan más de {limit}.",
  "line-set.enter-factory-charge": "Escriba la carga de fábrica de la placa de datos.",
  "line-set.read-rate-again":
    "Vuelva a leer la placa de datos: tamaño del tubo, carga por longitud y su unidad.",
  "line-set.enter-expansion-device":
    "Averigüe si el líquido se expande en el interior o en el exterior, y escríbalo.",
  "line-set.measure-subcooling": "Mida el subenfriamiento en la unidad exterior y escríbalo.",
  "line-set.reduce-loss":
    "Reduzca la pérdida de presión: línea de líquido más ancha o más corta, según admita el manual.",
  "line-set.no-extra-charge": "No agregue refrigerante para compensarlo.",
  "line-set.wider-liquid-line": "Instale una línea de líquido más ancha, según admita el manual.",
  "line-set.ask-line-size": "Busque en el manual si admite este tamaño de tubo.",
  "line-set.enter-loss": "Calcule la pérdida por fricción, subida y accesorios, y escríbala.",
  "line-set.smaller-riser":
    "Instale un tramo vertical más delgado o trampas de aceite, según admita el manual.",
  "line-set.ask-oil-return":
    "Busque en el manual cómo devuelve la unidad el aceite a capacidad mínima.",
  "line-set.wider-vapor-line": "Instale una línea de gas más ancha, según admita el manual.",
  "line-set.other-stock": "Busque un juego de {needed} a {limit}, o uno que se pueda cortar.",
  "line-set.take-from-roll": "Tome tubo de un rollo, o una dos juegos con soldadura fuerte.",
  "line-set.larger-opening": "Haga un pasamuros de {sleeve} o más, o un ducto mayor.",
  "line-set.recover-all": "Recupere todo el refrigerante y péselo.",
  "line-set.charge-by-weight": "Después cargue {keep} por peso.",
  "line-set.other-cylinder": "Use un cilindro con cabida para {mass} o más.",

  "line-set.figure.length": "Longitud",
  "line-set.figure.equivalent-length": "Longitud equivalente",
  "line-set.figure.height-difference": "Desnivel",
  "line-set.figure.height-difference-outdoor-above": "Desnivel (unidad exterior arriba)",
  "line-set.figure.total-charge": "Carga total",
  "line-set.figure.added-charge": "Carga agregada",
  "line-set.figure.pressure-loss": "Pérdida de presión",
  "line-set.figure.subcooling": "Subenfriamiento",
  "line-set.cause.per-foot-taken-as-per-meter": "carga por pie leída como por metro",
  "line-set.cause.per-meter-taken-as-per-foot": "carga por metro leída como por pie",
});
