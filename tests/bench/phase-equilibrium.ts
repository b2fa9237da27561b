// What does the property model take for one point of saturation?
import {
  bubblePoint,
  dewPoint,
  type Fluid,
  mixture,
  R32,
  R125,
  R134a,
  R410A,
  R1234yf,
  R1234zeE,
} from "hvac-install-math/property-model";
import { degC, kPaa, percent } from "hvac-install-math/quantity";
import { measure, shown } from "./measure.ts";
import type { Section } from "./section.ts";

const share = (fluid: typeof R32, mass: number) => ({ fluid, massFraction: percent(mass) });
const two = mixture({ id: "R-454B", components: [share(R32, 68.9), share(R1234yf, 31.1)] });
const five = mixture({
  id: "R-448A",
  components: [
    share(R32, 26),
    share(R125, 26),
    share(R1234yf, 20),
    share(R134a, 21),
    share(R1234zeE, 7),
  ],
});
const fluids: readonly (readonly [string, Fluid])[] = [
  ["R-32, pure", R32],
  ["R-410A, pseudo-pure", R410A],
  ["R-454B, two components", two],
  ["R-448A, five components", five],
];

export async function phaseEquilibrium(): Promise<Section> {
  const temperature = degC(10);
  const pressure = kPaa(900);
  const figures = await measure(
    fluids.flatMap(([name, fluid]) => [
      {
        name: `${name}: bubble pressure`,
        values: 1,
        run: () => bubblePoint(fluid, { temperature }),
      },
      { name: `${name}: dew pressure`, values: 1, run: () => dewPoint(fluid, { temperature }) },
      { name: `${name}: dew temperature`, values: 1, run: () => dewPoint(fluid, { pressure }) },
    ]),
    5,
    60,
  );
  return {
    title: "Phase equilibrium of the property model",
    text: "One point from the equations of state, for those who want more than the saturation curves. Budgets: 100 µs for the dew temperature of R-32; 7 µs for the dew pressure and 20 µs for the dew temperature of R-410A.",
    columns: ["point", "median"],
    rows: figures.map(({ name, nanoseconds }) => [name, shown(nanoseconds)]),
  };
}
