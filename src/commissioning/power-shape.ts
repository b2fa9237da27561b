// Which fields have circuit and supply of a record, and of which form?
// Follows record-power.ts; the compiler holds the names of the fields together.
// Does not cover words that a module checks itself: those are `text` here.
import type { Circuit, Power, SupplyPart } from "./record-power.ts";
import { circuitRules, voltageStandards } from "./rule-names.ts";
import { list, of, type Shape } from "./shape.ts";

const circuit: Shape = /* @__PURE__ */ of<Circuit>({
  rules: { words: Object.keys(circuitRules) },
  wiring: {
    fields: {
      ambient: "temperature",
      length: "length",
      stranding: "text",
      material: "text",
      insulation: "text",
      terminations: "text",
      cable: "text",
      currentCarryingConductors: "number",
      aboveRoof: "length",
      conduit: "text",
      method: "text",
      groupedCircuits: "number",
    },
  },
  installed: {
    fields: {
      device: {
        fields: {
          kind: "text",
          rating: "current",
          poles: "number",
          voltageRating: "text",
          hacr: "flag",
          curve: "text",
        },
      },
      conductor: "text",
      equipmentGrounding: "text",
      disconnect: {
        fields: {
          rating: "current",
          fuse: "current",
          visible: "flag",
          distance: "length",
          readilyAccessible: "flag",
          inTheWay: "flag",
          workingSpace: {
            fields: {
              depth: "length",
              width: "length",
              height: "length",
              equipmentWidth: "length",
              condition: "number",
            },
          },
        },
      },
    },
  },
  powerFactor: "number",
  occupancy: { words: ["dwelling", "other"] },
  at: "time",
});

export const power: Shape = /* @__PURE__ */ of<Power>({
  voltage: "voltage",
  phases: { words: [1, 3] },
  system: "text",
  circuit,
  supply: of<SupplyPart>({
    readings: list({
      fields: {
        state: "text",
        elapsed: "duration",
        voltage: "voltage",
        current: "current",
        lineToLine: { list: "voltage" },
        currents: { list: "current" },
      },
    }),
    measuredAt: "text",
    standard: { words: Object.keys(voltageStandards) },
    unbalanceLimit: "ratio",
    at: "time",
  }),
  energizedAt: "time",
});
