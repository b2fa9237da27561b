// The page: four cards, each a form and what the library says of it.
import { type Answer, connect, type Show } from "./card.ts";
import type { Fields } from "./fields.ts";
import { nameplate, prepareNameplate } from "./nameplate.ts";
import { nitrogenHold } from "./nitrogen-hold.ts";
import { prepareSaturation, saturation } from "./saturation.ts";
import { prepareVacuumLog, vacuumLog } from "./vacuum-log.ts";

/** The forms by id: what fills their menus, and what answers. */
const cards: Readonly<
  Record<
    string,
    {
      readonly prepare?: (form: HTMLFormElement) => void;
      readonly answer: (fields: Fields, show: Show) => Answer | undefined;
    }
  >
> = {
  saturation: { prepare: prepareSaturation, answer: saturation },
  "nitrogen-hold": { answer: nitrogenHold },
  "vacuum-log": { prepare: prepareVacuumLog, answer: vacuumLog },
  nameplate: { prepare: prepareNameplate, answer: nameplate },
};

for (const [id, { prepare, answer }] of Object.entries(cards)) {
  const form = document.getElementById(id) as HTMLFormElement;
  prepare?.(form);
  connect(form, answer);
}
