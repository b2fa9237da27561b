// Card 3: what a pasted vacuum log proves, its plot, and the same log through the live monitor.
import { explain } from "hvac-install-math/assessment";
import { english } from "hvac-install-math/language/en";
import { vacuumDecayPlot } from "hvac-install-math/plots";
import { degF, liter } from "hvac-install-math/quantity";
import {
  acceptancePolicies,
  assessVacuumDecay,
  createDecayMonitor,
  type PolicyName,
  type VacuumDecayInput,
} from "hvac-install-math/vacuum-decay";
import { type Answer, chosenSystem, type Show, verdictOf } from "./card.ts";
import { element, figures, fill } from "./elements.ts";
import type { Fields } from "./fields.ts";
import { type Course, inventedLog } from "./invented-logs.ts";
import { pastedLog } from "./pasted-log.ts";

/** Fills the menu and the log, and lets the buttons bring another one. */
export function prepareVacuumLog(form: HTMLFormElement): void {
  const policies = Object.entries(acceptancePolicies).map(
    ([key, { name, standing }]) => [key, `${name} (${standing})`] as const,
  );
  fill(form, "policy", policies, "splitManualA");
  const log = form.elements.namedItem("readings") as HTMLTextAreaElement;
  const bring = (course: Course) => {
    log.value = inventedLog(course);
    log.dispatchEvent(new Event("input", { bubbles: true }));
  };
  for (const button of form.querySelectorAll<HTMLButtonElement>("button[data-course]")) {
    button.addEventListener("click", () => bring(button.dataset.course as Course));
  }
  bring("tight");
}

/** The verdict on the log, with its plot. */
export function vacuumLog(fields: Fields, show: Show): Answer | undefined {
  const typed = fields.read({ ambient: degF });
  const { volume } = fields.readIfGiven({ volume: liter });
  const readings = pastedLog(fields.text("readings"));
  if ("problem" in readings) fields.mark("readings", readings.problem, readings.place);
  if (!typed || "problem" in readings || fields.isMarked()) return undefined;

  const policy = acceptancePolicies[fields.text("policy") as PolicyName];
  const test = { readings, policy, ambient: typed.ambient, ...(volume && { volume }) };
  const verdict = fields.attempt(() => assessVacuumDecay(test));
  if (!verdict) return undefined;

  const { outcome, cause, smallestLeak, smallestLeakThroughput: throughput, atHoldEnd } = verdict;
  const picture = element("figure");
  // The one place for markup: the plot is the library's own text, with every word in it escaped.
  const width = window.innerWidth < 480 ? 300 : 560; // near its room, so that its text keeps its size
  picture.innerHTML = vacuumDecayPlot(test, verdict, {
    language: english,
    system: chosenSystem(),
    id: "vacuum-plot",
    width,
  });
  return {
    headline: `${outcome}: ${cause}`,
    outcome,
    body: [
      picture,
      replay(test, show),
      figures([
        [
          "At the end of the hold",
          atHoldEnd
            ? `${show(atHoldEnd.value)} ± ${show(atHoldEnd.expandedUncertainty)}`
            : "not reached",
        ],
        ["Smallest leak that would show", smallestLeak ? show(smallestLeak) : "not known"],
        ["The same as a throughput", throughput ? show(throughput) : "needs the volume"],
      ]),
      ...verdictOf(verdict, show),
    ],
  };
}

/** A button that plays the log, reading by reading, to the monitor that an app gives its live gauge to. */
function replay({ readings, ...options }: VacuumDecayInput, show: Show): HTMLElement {
  const button = element("button", "Replay as a live gauge");
  const said = element("p", "The live monitor answers at every reading.");
  said.className = "live";
  button.addEventListener("click", () => {
    const monitor = createDecayMonitor(options);
    const perFrame = Math.ceil(readings.length / 120);
    let next = 0;
    const frame = () => {
      for (const reading of readings.slice(next, next + perFrame)) {
        const { outcome, reasons } = monitor.add(reading);
        const why = reasons[0] ? explain(reasons[0], english, show) : "";
        said.textContent = `${reading.elapsed.toString()}: ${outcome}. ${why}`;
      }
      next += perFrame;
      if (next < readings.length && said.isConnected) requestAnimationFrame(frame);
    };
    frame();
  });
  return element("div", button, said);
}
