// What can be said of figures that cannot be right, and of air and current? Every code with its values.
// Follows assessment/statement.ts; the sentences are in language/, one file per language.
// Does not cover the other statements of this module: see statements.ts.
import type { None, Verbatim } from "../assessment/statement.ts";
import type { Kind } from "../quantity/kinds.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { FieldWord, ModeWord } from "./words.ts";

/** Figures that cannot be as they are recorded: “is it …?” */
export interface Doubted {
  "commissioning.lift-above-length": { readonly lift: Length; readonly length: Length };
  "commissioning.pre-charged-above-longest": {
    readonly preCharged: Length;
    readonly longest: Length;
  };
  "commissioning.allowed-drop-large": { readonly limit: Quantity<"pressureDifference"> };
  "commissioning.temperatures-apart": {
    readonly test: Quantity<"temperature">;
    readonly evacuation: Quantity<"temperature">;
    readonly usual: Quantity<"temperatureDifference">;
  };
  "commissioning.log-copied": None;
  "commissioning.altitude-odd": { readonly altitude: Length };
  "commissioning.barometer-odd": {
    readonly atmosphere: Quantity<"absolutePressure">;
    readonly altitude: Length;
    readonly usual: Quantity<"absolutePressure">;
  };
  "commissioning.barometer-in-hectopascal": {
    readonly atmosphere: Quantity<"absolutePressure">;
    readonly altitude: Length;
    readonly usual: Quantity<"absolutePressure">;
  };
  "commissioning.room-height-odd": Heights;
  "commissioning.ceiling-odd": Heights;
  "commissioning.unit-high": { readonly height: Length; readonly usual: Length };
  "commissioning.factory-charge-odd": {
    readonly charge: Mass;
    readonly capacity: Quantity<"power">;
    readonly low: Mass;
    readonly high: Mass;
  };
  "commissioning.factory-charge-is-maximum": { readonly charge: Mass; readonly most: Mass };
  "commissioning.total-as-added": { readonly added: Mass };
  "commissioning.added-large": { readonly added: Mass; readonly charge: Mass };
  "commissioning.rated-above-ampacity": { readonly rated: Current; readonly ampacity: Current };
  "commissioning.protection-far-above-ampacity": {
    readonly protection: Current;
    readonly ampacity: Current;
  };
  "commissioning.capacity-odd": {
    readonly capacity: Quantity<"power">;
    readonly rated: Current;
    readonly voltage: Quantity<"voltage">;
  };
  "commissioning.length-odd": Odd<"length">;
  "commissioning.volume-odd": Odd<"volume">;
  "commissioning.temperature-odd": Odd<"temperature">;
  "commissioning.pressure-odd": Odd<"gaugePressure">;
  "commissioning.mass-odd": Odd<"mass">;
  "commissioning.area-odd": Odd<"area">;
  "commissioning.power-odd": Odd<"power">;
  "commissioning.voltage-odd": Odd<"voltage">;
  "commissioning.entered-twice": { readonly field: FieldWord; readonly value: Verbatim };
  "commissioning.grounding-thick": {
    readonly grounding: Verbatim;
    readonly conductor: Verbatim;
  };
  "commissioning.rated-as-ampacity": { readonly rated: Current };
  "commissioning.drain-steep": {
    readonly slope: Quantity<"ratio">;
    readonly usual: Quantity<"ratio">;
  };
}

/** Air and current in place of a gauge. */
export interface Aired {
  "commissioning.air-difference-within": Air;
  "commissioning.air-difference-outside": Air;
  "commissioning.air-difference-too-close": Air;
  "commissioning.air-the-other-way": {
    readonly mode: ModeWord;
    readonly difference: Quantity<"temperatureDifference">;
  };
  "commissioning.not-at-full-speed": None;
  "commissioning.current-within": PlateCurrent;
  "commissioning.current-within-deviation": PlateCurrent;
  "commissioning.current-above-plate": PlateCurrent;
  "commissioning.current-too-close": PlateCurrent;
  "commissioning.current-odd": LoadCurrent;
  "commissioning.current-unusual": LoadCurrent & { readonly low: Current };
}

type Mass = Quantity<"mass">;
type Length = Quantity<"length">;
type Current = Quantity<"current">;
export interface Range {
  readonly low: Quantity<"temperatureDifference">;
  readonly high: Quantity<"temperatureDifference">;
}
interface Air extends Range {
  readonly mode: ModeWord;
  readonly difference: Quantity<"temperatureDifference">;
}
interface PlateCurrent {
  readonly current: Current;
  readonly most: Current;
  readonly field: FieldWord;
}
interface LoadCurrent {
  readonly current: Current;
  readonly rated: Current;
  readonly field: FieldWord;
}
interface Odd<K extends Kind> {
  readonly field: FieldWord;
  readonly value: Quantity<K>;
  readonly low: Quantity<K>;
  readonly high: Quantity<K>;
}
interface Heights {
  readonly height: Length;
  readonly low: Length;
  readonly high: Length;
}
