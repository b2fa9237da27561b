// What must not compile. Every misuse stands under a directive that says why; the number is the
// compiler's own code for the refusal, which misuse-reasons.test.ts checks, so that a misspelt name
// cannot pass for a refusal.
import { conformity, type Estimate, standardUncertainty } from "hvac-install-math/assessment";
import {
  type AnyQuantity,
  ampere,
  atmosphereAtAltitude,
  degF,
  deltaF,
  equals,
  fromJSON,
  ft,
  isQuantity,
  type Kind,
  kPaa,
  kPag,
  m,
  micron,
  minute,
  oz,
  ozPerFt,
  product,
  psi,
  psia,
  psig,
  Quantity,
  quotient,
  sqft,
  standardAtmosphere,
  toAbsolute,
  toGauge,
  type Unit,
  volt,
} from "hvac-install-math/quantity";
import { describe, it } from "vitest";

declare function wantsTemperature(value: Quantity<"temperature">): void;
declare function wantsDifference(value: Quantity<"temperatureDifference">): void;
declare function wantsGauge(value: Quantity<"gaugePressure">): void;
declare function wantsEitherPressure(value: Quantity<"gaugePressure" | "absolutePressure">): void;
declare function wantsAnyKind(value: Quantity<Kind>): void;
declare function wantsList(values: Quantity<"gaugePressure" | "absolutePressure">[]): void;
declare function wantsNumber(value: number): void;
declare function wantsUnit(unit: Unit<"gaugePressure">): void;
declare const unknownKind: AnyQuantity;
declare const eitherPressure: Quantity<"gaugePressure"> | Quantity<"absolutePressure">;

describe("points do not add", () => {
  it("adding a gauge and an absolute pressure", () => {
    // @ts-expect-error 2345: 118 psig and 14.7 psia share no zero
    psig(118).plus(psia(14.7));
  });
  it("adding two gauge pressures", () => {
    // @ts-expect-error 2345: the sum would count the atmosphere twice
    psig(118).plus(psig(2));
  });
  it("adding two temperatures", () => {
    // @ts-expect-error 2345: 80 °F and 70 °F do not make 150 °F
    degF(80).plus(degF(70));
  });
  it("subtracting a pressure on another scale", () => {
    // @ts-expect-error 2769: the difference would hold an atmosphere
    psig(118).minus(psia(14.7));
  });
  it("adding a difference of another kind", () => {
    // @ts-expect-error 2345: psi is no temperature difference
    degF(80).plus(psi(3));
  });
  it("adding unlike additive kinds", () => {
    // @ts-expect-error 2345: volts and amperes do not add
    volt(230).plus(ampere(10));
  });
});

describe("points do not scale", () => {
  it("doubling a temperature", () => {
    // @ts-expect-error 2345: twice 80 °F is 160 °F or 619 °F, by the scale
    degF(80).times(2);
  });
  it("halving a gauge pressure", () => {
    // @ts-expect-error 2769: half of a gauge pressure depends on the atmosphere
    psig(118).dividedBy(2);
  });
  it("the ratio of two temperatures", () => {
    // @ts-expect-error 2769: the ratio of two Fahrenheit readings means nothing
    degF(80).dividedBy(degF(40));
  });
});

describe("a difference is not a point", () => {
  it("a difference where a temperature is wanted", () => {
    // @ts-expect-error 2345: a superheat of 10 °F is not a line at 10 °F
    wantsTemperature(deltaF(10));
  });
  it("a temperature where a difference is wanted", () => {
    // @ts-expect-error 2345: a line at 50 °F is not a superheat of 50 °F
    wantsDifference(degF(50));
  });
  it("a pressure drop where a gauge pressure is wanted", () => {
    // @ts-expect-error 2345: a drop of 3 psi is not a reading of 3 psig
    wantsGauge(psi(3));
  });
  it("reading a difference on a gauge scale", () => {
    // @ts-expect-error 2345: a difference has no zero to be read against
    psi(3).in(psig);
  });
  it("an uncertainty given as a point", () => {
    // @ts-expect-error 2322: ± 1 psi is a difference
    standardUncertainty<"gaugePressure">({ accuracy: psig(1) }, psi);
  });
});

describe("gauge is not absolute", () => {
  it("a vacuum reading where a gauge pressure is wanted", () => {
    // @ts-expect-error 2345: micron counts from a perfect vacuum
    wantsGauge(micron(500));
  });
  it("reading a gauge pressure in an absolute unit", () => {
    // @ts-expect-error 2345: the atmosphere is missing
    psig(118).in(psia);
  });
  it("printing a gauge pressure in an absolute unit", () => {
    // @ts-expect-error 2345: the atmosphere is missing
    psig(118).toString(kPaa);
  });
  it("converting to absolute without an atmosphere", () => {
    // @ts-expect-error 2554: no atmosphere is assumed
    toAbsolute(psig(118));
  });
  it("converting to gauge without an atmosphere", () => {
    // @ts-expect-error 2554: no atmosphere is assumed
    toGauge(psia(132.7));
  });
  it("converting to absolute what already is", () => {
    // @ts-expect-error 2345: the atmosphere would be added twice
    toAbsolute(psia(132.7), standardAtmosphere);
  });
  it("an atmosphere on the gauge scale", () => {
    // @ts-expect-error 2345: the atmosphere is 0 psig by definition
    toAbsolute(psig(118), psig(14.7));
  });
  it("an altitude in place of the atmosphere", () => {
    // @ts-expect-error 2345: atmosphereAtAltitude makes one from it
    toAbsolute(psig(118), ft(5000));
  });
  it("a pressure in place of an altitude", () => {
    // @ts-expect-error 2345: an altitude is a length
    atmosphereAtAltitude(kPaa(84.3));
  });
});

describe("a number has no unit", () => {
  it("adding a bare number", () => {
    // @ts-expect-error 2345: 2 of what
    psi(118).plus(2);
  });
  it("a bare number where a pressure is wanted", () => {
    // @ts-expect-error 2345: 118 of what
    wantsGauge(118);
  });
  it("a quantity where a number is wanted", () => {
    // @ts-expect-error 2345: read it with in(unit)
    wantsNumber(psi(3));
  });
  it("a text where a number is wanted", () => {
    // @ts-expect-error 2345: a text is parsed in field-text, not here
    psig("118");
  });
  it("an object that only looks like a quantity", () => {
    // @ts-expect-error 2322: fromJSON reads an object from storage
    wantsGauge({ kind: "gaugePressure", value: 118, unit: "psig" });
  });
  it("a unit where a quantity is wanted", () => {
    // @ts-expect-error 2345: call the unit
    wantsGauge(psig);
  });
  it("a quantity where a unit is wanted", () => {
    // @ts-expect-error 2345: one psig is not the unit psig
    wantsUnit(psig(1));
  });
});

describe("kinds do not widen", () => {
  it("a gauge pressure as one of two kinds", () => {
    // @ts-expect-error 2345: the widened type would add psig and psia
    wantsEitherPressure(psig(118));
  });
  it("a gauge pressure as any kind", () => {
    // @ts-expect-error 2345: the widened type would add anything; AnyQuantity is the safe one
    wantsAnyKind(psig(118));
  });
  it("an array of gauge pressures as an array of either", () => {
    const readings = [psig(118), psig(117)];
    // @ts-expect-error 2345: an absolute pressure could be pushed into it
    wantsList(readings);
  });
  it("arithmetic with a quantity of two possible kinds", () => {
    // @ts-expect-error 2345: in which unit is open until the kind is known
    eitherPressure.in(psig);
  });
  it("a quantity of unknown kind as a certain one", () => {
    // @ts-expect-error 2345: test its kind first
    wantsGauge(unknownKind);
  });
  it("what was read from storage as a certain kind", () => {
    // @ts-expect-error 2345: say which kind you expect
    wantsGauge(fromJSON({ kind: "gaugePressure", value: 118, unit: "psig" }));
  });
  it("a narrowed quantity as another kind", () => {
    // @ts-expect-error 2345: it was found to be absolute
    if (isQuantity(unknownKind, "absolutePressure")) wantsGauge(unknownKind);
  });
  it("a quantity made with the unit of another kind", () => {
    // @ts-expect-error 2345: the unit decides the kind
    wantsGauge(new Quantity(101_325, kPaa));
  });
});

describe("operators", () => {
  it("comparing two kinds with <", () => {
    // @ts-expect-error 2365: 5 psig is more than 5 psia
    psig(5) < psia(5);
  });
  it("comparing with a bare number", () => {
    // @ts-expect-error 2365: 100 of what
    psig(118) > 100;
  });
  it("+", () => {
    // @ts-expect-error 2365: plus() knows the kinds
    psi(1) + psi(2);
  });
  it("+ with a number", () => {
    // @ts-expect-error 2365: plus() knows the kinds
    psi(1) + 2;
  });
  it("-", () => {
    // @ts-expect-error 2362: minus() knows the kinds
    psi(2) - 1;
  });
  it("*", () => {
    // @ts-expect-error 2362: times() keeps the unit
    psi(2) * 2;
  });
  it("/", () => {
    // @ts-expect-error 2362: dividedBy() keeps the unit
    psi(2) / 2;
  });
  it("=== between two kinds", () => {
    // @ts-expect-error 2367: never the same
    psig(1) === psia(1);
  });
  it("=== with a number", () => {
    // @ts-expect-error 2367: never the same
    psig(1) === 1;
  });
});

describe("products", () => {
  it("a product that the table does not hold", () => {
    // @ts-expect-error 2345: a length times a duration is nothing that the trade uses
    product(ft(20), minute(3), oz);
  });
  it("the factors the wrong way round", () => {
    // @ts-expect-error 2345: the table says rate × length
    product(ft(20), ozPerFt(0.16), oz);
  });
  it("a product in the unit of another kind", () => {
    // @ts-expect-error 2345: ounces per foot times feet are ounces
    product(ozPerFt(0.16), ft(20), sqft);
  });
  it("a product of a point", () => {
    // @ts-expect-error 2345: a gauge pressure is not a voltage
    product(psig(118), ampere(3), oz);
  });
  it("a quotient that the table does not hold", () => {
    // @ts-expect-error 2345: ounces over minutes are not feet
    quotient(oz(3.2), minute(20), ft);
  });
});

describe("equals", () => {
  it("no tolerance", () => {
    // @ts-expect-error 2554: how close is close enough depends on the instrument
    equals(psig(118), psig(118));
  });
  it("a point as the tolerance", () => {
    // @ts-expect-error 2345: a tolerance is a difference
    equals(psig(118), psig(118), psig(1));
  });
  it("a tolerance of another kind", () => {
    // @ts-expect-error 2345: degrees for a pressure
    equals(psig(118), psig(118), deltaF(1));
  });
  it("two kinds", () => {
    // @ts-expect-error 2345: a gauge and an absolute pressure
    equals(psig(118), psia(118), psi(1));
  });
});

describe("quantities and units do not change", () => {
  it("the SI value", () => {
    // @ts-expect-error 2540: make a new one
    psig(118).si = 0;
  });
  it("the kind", () => {
    // @ts-expect-error 2540: make a new one
    psig(118).kind = "gaugePressure";
  });
  it("the unit", () => {
    // @ts-expect-error 2540: as() gives the same value in another unit
    psig(118).unit = kPag;
  });
  it("the size of a unit", () => {
    // @ts-expect-error 2540: everyone shares the unit
    psig.scale = 1;
  });
});

describe("verdicts keep the kinds apart", () => {
  it("a limit of another kind", () => {
    // @ts-expect-error 2322: an absolute limit for a gauge reading
    conformity({ value: psig(118), standardUncertainty: psi(1), lowerLimit: psia(115) });
  });
  it("the uncertainty of a temperature as a temperature", () => {
    // @ts-expect-error 2322: ± 1 °F is a difference
    conformity({ value: degF(80), standardUncertainty: degF(1), lowerLimit: degF(70) });
  });
  it("an estimate of one kind as another", () => {
    const estimate = {} as Estimate<"gaugePressure">;
    // @ts-expect-error 2345: its value is on the gauge scale
    toGauge(estimate.value, standardAtmosphere);
  });
  it("a length in place of a duration", () => {
    // @ts-expect-error 2345: meters for minutes
    minute(3).plus(m(3));
  });
});
