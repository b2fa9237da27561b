// Card 4: from the nameplate to breaker, poles, conductor and disconnect, by the edition that is adopted.
import {
  type CircuitAssessment,
  type CircuitInput,
  cec2024,
  circuitFromNameplate,
  iec60364,
  nec2020,
  nec2023,
  nec2026,
} from "hvac-install-math/circuit-protection";
import { ampere, ft, volt } from "hvac-install-math/quantity";
import { type Answer, type Show, verdictOf } from "./card.ts";
import { figures, fill } from "./elements.ts";
import type { Fields } from "./fields.ts";

const byWireGauge = [nec2020, nec2023, nec2026, cec2024];
const editions = [...byWireGauge, iec60364].map(({ name }) => name);

/** Puts the editions into the menu. */
export function prepareNameplate(form: HTMLFormElement): void {
  fill(
    form,
    "rules",
    editions.map((name) => [name, name] as const),
    nec2023.name,
  );
}

/** The circuit, and the verdict on what is fitted. */
export function nameplate(fields: Fields, show: Show): Answer | undefined {
  const plate = fields.read({
    minimumCircuitAmpacity: ampere,
    maximumOvercurrentProtection: ampere,
    "supply.voltage": volt,
  });
  const fitted = fields.readIfGiven({ "installed.device.rating": ampere, "wiring.length": ft });
  if (!plate || fields.isMarked()) return undefined;

  const rating = fitted["installed.device.rating"];
  const poles = ([1, 2, 3] as const).find(
    (one) => String(one) === fields.text("installed.device.poles"),
  );
  const conductor = fields.text("installed.conductor").trim();
  const length = fitted["wiring.length"];
  const common = {
    minimumCircuitAmpacity: plate.minimumCircuitAmpacity,
    maximumOvercurrentProtection: plate.maximumOvercurrentProtection,
    supply: {
      voltage: plate["supply.voltage"],
      phases: fields.text("supply.phases") === "3" ? 3 : 1,
    },
    installed: {
      ...(rating && { device: { kind: "breaker", rating, ...(poles && { poles }) } }),
      // What is no size of the rules is refused, with the list of those that are.
      ...(conductor && { conductor: conductor as never }),
    },
  } as const satisfies Partial<CircuitInput>;
  const run = length && { length };
  const rules = byWireGauge.find(({ name }) => name === fields.text("rules"));
  const circuit = fields.attempt(
    (): CircuitAssessment =>
      rules
        ? circuitFromNameplate({
            ...common,
            rules,
            date: "2026-03-02", // an invented day: it decides whether 210.8(F) asks for ground-fault protection
            wiring: { material: "copper", insulation: "75 °C", terminations: "75 °C", ...run },
          })
        : circuitFromNameplate({
            ...common,
            rules: iec60364,
            wiring: { material: "copper", insulation: "70 °C", method: "B1", ...run },
          }),
  );
  return circuit && shown(circuit, show);
}

function shown(circuit: CircuitAssessment, show: Show): Answer {
  const { outcome, device, conductor, equipmentGrounding, disconnect, voltageDrop } = circuit;
  const { poles, voltageRating } = device;
  const made = disconnect.madeSize ? `, made size ${show(disconnect.madeSize)}` : "";
  const sight = disconnect.withinSight
    ? `, within ${show(disconnect.withinSight)} and in sight`
    : "";
  return {
    headline: `${show(device.rating)}, ${poles} ${poles === 1 ? "pole" : "poles"}${conductor ? `, ${conductor.size}` : ""}: ${outcome}`,
    outcome,
    body: [
      figures([
        ["Breaker or fuse", `${show(device.rating)} (${device.kind})`],
        ["Standard sizes that the plate allows", device.ratings.map((one) => show(one)).join(", ")],
        ["Poles and marking", `${poles}, at least ${voltageRating}; service ${device.system}`],
        [
          "Smallest conductor",
          conductor && `${conductor.size} copper, carries ${show(conductor.usable)}`,
        ],
        ["Grounding conductor", equipmentGrounding?.size],
        [
          "Disconnect",
          `at least ${show(disconnect.minimumRating)}${made}${sight}; ${disconnect.nonFusedAllowed ? "without fuses will do" : "fused"}`,
        ],
        ["Voltage drop", voltageDrop && show(voltageDrop.running.ratio)],
      ]),
      ...verdictOf(circuit, show),
    ],
  };
}
