// What else it takes to hear all that the module says.
import type * as condensate from "hvac-install-math/condensate";
import { cm, literPerHour, m, mm, percent } from "hvac-install-math/quantity";
import type { Inputs } from "../../faults/catalogue.ts";

const curve = [
  { lift: m(0), flow: literPerHour(15) },
  { lift: m(10), flow: literPerHour(5) },
];
const points = [{ distance: m(4), height: cm(210) }];
const pitch = (slope: number) => ({ reading: { slope: percent(slope) } });

export const inputs: Partial<Inputs<typeof condensate>> = {
  assessCondensatePump: [
    [{ condensate: literPerHour(8), lift: m(6), curve }],
    [{ condensate: literPerHour(2), lift: m(11), curve }],
  ],
  assessDrainSlope: [
    [{ reading: { slope: percent(0.7) }, required: percent(0.6) }],
    [{ reading: { slope: percent(1.02) } }],
    [{ reading: { gap: mm(6.5), levelLength: mm(600), accuracy: mm(0.6) } }],
    [{ reading: { slope: percent(0.5) } }],
    [{ reading: { slope: percent(0.5) }, run: m(6) }],
    [{ reading: { slope: percent(-1) } }],
  ],
  assessIndoorUnitPitch: [
    [pitch(1)],
    [pitch(6)],
    [pitch(-1)],
    [{ ...pitch(0.1), minimum: percent(0.5) }],
    [{ ...pitch(3), maximum: percent(2) }],
    [{ reading: { gap: mm(0), levelLength: mm(600), accuracy: mm(0.3) } }],
  ],
  planDrain: [[{ outletHeight: cm(215), points }], [{ outletHeight: cm(213), points }]],
};
