// What the functions of a module answer to all of its inputs: those of the fault tests, and those that reach more.
import { isInvalidInputError } from "hvac-install-math/quantity";
import { type FieldTextError, isFieldTextError } from "hvac-install-math/read-quantity";
import { type Subject, subjectsOf } from "../faults/catalogue.ts";
import { modules, subjects } from "../faults/subjects.ts";

/** Inputs beyond those of the fault tests, by the name of the function. */
export type Further = Readonly<Record<string, readonly (readonly unknown[])[]>>;

/** An answer, or what the error instead of one says: its hint, and of a typed text what is wanted. */
function answerOf(act: () => unknown): unknown {
  try {
    return act();
  } catch (error) {
    if (isFieldTextError(error)) {
      const { wanted, problem } = error as FieldTextError;
      return { wanted, problem };
    }
    if (isInvalidInputError(error) && error.hint) return error.hint;
    throw error;
  }
}

/** What the functions of a module answer to all of its inputs. */
export function resultsOf(module: string, further: Further = {}): unknown[] {
  const own = subjects.filter(({ name }) => name.startsWith(`${module}.`));
  const all: readonly Subject[] = [...own, ...subjectsOf(module, modules[module] ?? {}, further)];
  return all.flatMap(({ act, calls }) => calls.map((args) => answerOf(() => act(...args))));
}
