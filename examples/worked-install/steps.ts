// The steps of an installation in the order of the work, each from the files to a verdict. Uses only the
// library's public functions.
import type { Assessment, Statement } from "hvac-install-math/assessment";
import { circuitFromNameplate, nec2023 } from "hvac-install-math/circuit-protection";
import { additionalCharge, astmB280Tube, tubeVolume } from "hvac-install-math/line-set";
import { assessPressureLog } from "hvac-install-math/pressure-test";
import {
  atmosphereAtAltitude,
  degF,
  type Quantity,
  toGauge,
  volt,
} from "hvac-install-math/quantity";
import {
  bubblePressure,
  dewPressure,
  refrigerantByDesignation,
} from "hvac-install-math/refrigerants";
import { assessSupplyVoltage } from "hvac-install-math/supply-voltage";
import { acceptancePolicies, assessVacuumDecay } from "hvac-install-math/vacuum-decay";
import { at, Section, Table } from "./input.ts";
import type { Figure } from "./reader-units.ts";

/** One step of the work: what it asks, what the readings prove, and the figures behind it. */
export interface Step {
  readonly title: string;
  readonly verdict: Assessment<string>;
  readonly figures: readonly (readonly [name: string, value: Figure])[];
}

/** A whole installation, worked through. */
export interface Installation {
  readonly title: string;
  readonly about: readonly (readonly [name: string, value: Figure | Statement])[];
  readonly steps: readonly Step[];
}

/** What several steps need. */
interface Job {
  readonly folder: string;
  readonly input: Section;
  readonly atmosphere: Quantity<"absolutePressure">;
  readonly volume: Quantity<"volume">;
}

/** Reads `install.json` and the logs that it names, and works through every step. */
export function workThrough(folder: string): Installation {
  const input = Section.open(folder, "install.json");
  const site = input.section("site");
  const altitude = site.quantity("altitude", "length");
  const atmosphere = at(site.place("altitude"), () => atmosphereAtAltitude(altitude));
  const equipment = input.section("equipment");
  const job: Job = { folder, input, atmosphere, volume: systemVolume(input) };
  return {
    title: `Commissioning summary: ${site.text("name")}`,
    about: [
      ["data", input.text("note")],
      ["equipment", equipment.text("name")],
      ["altitude", altitude],
      ["atmosphere there, on average", atmosphere],
      ["inner volume under test", job.volume],
      ...saturationFigures(equipment, atmosphere),
    ],
    steps: [pressureTest(job), vacuumDecay(job), charge(job), circuit(job), supply(job)],
  };
}

/** Both tubes and the indoor coil. */
function systemVolume(input: Section): Quantity<"volume"> {
  const lineSet = input.section("lineSet");
  const length = lineSet.quantity("length", "length");
  const tube = (field: "liquidTube" | "gasTube") => {
    const size = lineSet.choice(field, ["1/4", "3/8", "1/2", "5/8", "3/4"] as const);
    return at(lineSet.place(field), () =>
      tubeVolume(astmB280Tube({ size, temper: "annealed" }), length),
    );
  };
  return lineSet
    .quantity("indoorCoilVolume", "volume")
    .plus(tube("liquidTube"))
    .plus(tube("gasTube"));
}

/** What a gauge would show here at two temperatures that the reader may want to compare. */
function saturationFigures(
  equipment: Section,
  atmosphere: Quantity<"absolutePressure">,
): Installation["about"] {
  const refrigerant = at(equipment.place("refrigerant"), () =>
    refrigerantByDesignation(equipment.text("refrigerant")),
  );
  const shown = (
    text: string,
    temperature: Quantity<"temperature">,
    pressure: Quantity<"absolutePressure">,
  ) => ({
    code: "saturation",
    text,
    values: { temperature, pressure: toGauge(pressure, atmosphere) },
  });
  const [evaporating, condensing] = [degF(40), degF(110)];
  const dew = dewPressure(refrigerant, evaporating);
  const bubble = bubblePressure(refrigerant, condensing);
  return [
    [
      refrigerant.designation,
      shown("dew at {temperature}: {pressure} on a gauge here", evaporating, dew),
    ],
    ["", shown("bubble at {temperature}: {pressure} on a gauge here", condensing, bubble)],
  ];
}

/** Is the tubing tight? The nitrogen hold over the night. */
function pressureTest({ folder, input, atmosphere, volume }: Job): Step {
  const test = input.section("pressureTest");
  const file = test.text("log");
  const gauge = input.section("instruments").section("testGauge");
  const thermometer = input.section("instruments").section("thermometer");
  const readings = Table.open(folder, file).map((row) => ({
    elapsed: row.quantity("elapsed", "duration"),
    pressure: row.quantity("pressure", "gaugePressure"),
    temperature: row.quantity("temperature", "temperature"),
  }));
  const verdict = at(file, () =>
    assessPressureLog({
      readings,
      atmosphere,
      volume,
      instruments: {
        pressure: {
          accuracy: gauge.quantity("accuracy", "pressureDifference"),
          resolution: gauge.quantity("resolution", "pressureDifference"),
          drift: gauge.quantity("drift", "pressureDifference"),
        },
        temperature: {
          accuracy: thermometer.quantity("accuracy", "temperatureDifference"),
          resolution: thermometer.quantity("resolution", "temperatureDifference"),
          followsGasWithin: thermometer.quantity("followsGasWithin", "temperatureDifference"),
        },
      },
      criterion: { maximumDrop: test.quantity("largestAcceptedDrop", "pressureDifference") },
    }),
  );
  return {
    title: "Nitrogen pressure test",
    verdict,
    figures: [
      ["readings", readings.length],
      ["corrected drop", verdict.correctedDrop.value],
      ["expanded uncertainty (k = 2)", verdict.correctedDrop.expandedUncertainty],
      ...(verdict.smallestProvableLeak
        ? [["smallest provable leak", verdict.smallestProvableLeak] as const]
        : []),
    ],
  };
}

/** Is it dry? The pressure after the pump was valved off. */
function vacuumDecay({ folder, input, volume }: Job): Step {
  const evacuation = input.section("evacuation");
  const file = evacuation.text("log");
  const policies = Object.keys(acceptancePolicies) as (keyof typeof acceptancePolicies)[];
  const policy = acceptancePolicies[evacuation.choice("policy", policies)];
  const gauge = input.section("instruments").section("vacuumGauge");
  const readings = Table.open(folder, file).map((row) => ({
    elapsed: row.quantity("elapsed", "duration"),
    pressure: row.quantity("pressure", "absolutePressure"),
  }));
  const verdict = at(file, () =>
    assessVacuumDecay({
      readings,
      ambient: evacuation.quantity("ambient", "temperature"),
      volume,
      gauge: {
        accuracy: gauge.quantity("accuracy", "ratio"),
        resolution: gauge.quantity("resolution", "pressureDifference"),
      },
      policy,
    }),
  );
  return {
    title: `Vacuum decay, policy ${policy.name}`,
    verdict,
    figures: [
      ["readings", readings.length],
      ["cause", verdict.cause],
      ["at the end of the hold", verdict.atHoldEnd.value],
      ["steady rise", verdict.leak.value],
      ["smallest provable leak", verdict.smallestLeak],
    ],
  };
}

/** How much refrigerant does the tube length ask for? */
function charge({ input }: Job): Step {
  const equipment = input.section("equipment");
  const lineSet = input.section("lineSet");
  const verdict = at("install.json, lineSet", () =>
    additionalCharge({
      length: lineSet.quantity("length", "length"),
      preChargedLength: lineSet.quantity("preChargedLength", "length"),
      rate: lineSet.quantity("rate", "massPerLength"),
      shortLineRule: lineSet.choice("shortLineRule", [
        "add-only",
        "add-and-subtract",
        "not-stated",
      ]),
      minimumLength: lineSet.quantity("minimumLength", "length"),
      maximumLength: lineSet.quantity("maximumLength", "length"),
      factoryCharge: equipment.quantity("factoryCharge", "mass"),
      scaleResolution: input.section("instruments").section("scale").quantity("resolution", "mass"),
    }),
  );
  return {
    title: "Added charge",
    verdict,
    figures: [
      ["weigh in", verdict.additionalCharge],
      ...(verdict.totalCharge ? [["total for the label", verdict.totalCharge] as const] : []),
    ],
  };
}

/** Is the circuit what the nameplate asks for? */
function circuit({ input }: Job): Step {
  const equipment = input.section("equipment");
  const wiring = input.section("circuit");
  const device = wiring.section("device");
  const sizes = ["14 AWG", "12 AWG", "10 AWG", "8 AWG", "6 AWG", "4 AWG"] as const;
  const verdict = at("install.json, equipment and circuit", () =>
    circuitFromNameplate({
      rules: nec2023,
      minimumCircuitAmpacity: equipment.quantity("minimumCircuitAmpacity", "current"),
      maximumOvercurrentProtection: equipment.quantity("maximumOvercurrentProtection", "current"),
      ratedLoadCurrent: equipment.quantity("ratedLoadCurrent", "current"),
      supply: {
        voltage: wiring.quantity("supplyVoltage", "voltage"),
        phases: wiring.choice("phases", [1, 3]),
      },
      wiring: {
        material: "copper",
        insulation: wiring.choice("insulation", ["60 °C", "75 °C", "90 °C"]),
        terminations: wiring.choice("terminations", ["60 °C", "75 °C"]),
        length: wiring.quantity("length", "length"),
      },
      installed: {
        device: {
          kind: device.choice("kind", ["breaker", "fuse"]),
          rating: device.quantity("rating", "current"),
          poles: device.choice("poles", [1, 2, 3]),
        },
        conductor: wiring.choice("conductor", sizes),
        equipmentGrounding: wiring.choice("equipmentGrounding", sizes),
        disconnect: { rating: wiring.section("disconnect").quantity("rating", "current") },
      },
    }),
  );
  return {
    title: "Branch circuit, NFPA 70 (2023)",
    verdict,
    figures: [
      ["largest breaker or fuse", verdict.device.rating],
      ["poles", verdict.device.poles],
      ["smallest copper conductor", verdict.conductor.size],
      ["smallest grounding conductor", verdict.equipmentGrounding.size],
      ["disconnect at least", verdict.disconnect.minimumRating],
    ],
  };
}

/** Is the supply fit to connect, at rest and with the unit running? */
function supply({ folder, input }: Job): Step {
  const equipment = input.section("equipment");
  const wiring = input.section("circuit");
  const file = input.section("supply").text("log");
  const rated = {
    "208/230": [volt(208), volt(230)],
    "230": [volt(230)],
    "115": [volt(115)],
  } as const;
  const plate = equipment.choice("ratedVoltage", ["208/230", "230", "115"]);
  const readings = Table.open(folder, file).map((row) => ({
    elapsed: row.quantity("elapsed", "duration"),
    state: row.choice("state", ["rest", "load", "start"]),
    voltage: row.quantity("voltage", "voltage"),
  }));
  const verdict = at(file, () =>
    assessSupplyVoltage({
      nameplate: { rated: rated[plate] },
      supply: {
        voltage: wiring.quantity("supplyVoltage", "voltage"),
        phases: wiring.choice("phases", [1]),
      },
      readings,
      measuredAt: "unit",
      meter: {
        accuracy: input.section("instruments").section("voltmeter").quantity("accuracy", "voltage"),
      },
    }),
  );
  return {
    title: "Supply voltage at the unit",
    verdict,
    figures: [
      ["readings", readings.length],
      ["lowest", verdict.lowest.value],
      ["highest", verdict.highest.value],
    ],
  };
}
