// What a person typed into a form, as quantities, and what is wrong with it at the field itself. The fields
// carry the names of the library's arguments, such as `start.pressure`, so that its errors find them.
import { explain } from "hvac-install-math/assessment";
import { isFieldTextError, parseQuantity } from "hvac-install-math/field-text";
import { english } from "hvac-install-math/language/en";
import {
  isInvalidInputError,
  type Kind,
  type Quantity,
  type Unit,
} from "hvac-install-math/quantity";
import { element } from "./elements.ts";

type Field = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement;
type AnyUnit = { [K in Kind]: Unit<K> }[Kind];
type QuantityIn<U> = U extends Unit<infer K extends Kind> ? Quantity<K> : never;

/** The fields of one form, read once. */
export interface Fields {
  /** The text of a field as it stands. */
  text(name: string): string;
  /** What must be there, each with the unit of a number alone; nothing while one of them is wrong. */
  read<const U extends Readonly<Record<string, AnyUnit>>>(
    units: U,
  ): { readonly [P in keyof U]: QuantityIn<U[P]> } | undefined;
  /** What may be left empty. A wrong one is left out too, and marked. */
  readIfGiven<const U extends Readonly<Record<string, AnyUnit>>>(
    units: U,
  ): { readonly [P in keyof U]?: QuantityIn<U[P]> };
  /** Runs what may refuse an input; then the field is marked, and there is no answer. */
  attempt<T>(work: () => T): T | undefined;
  /** Marks a field with what is wrong; the place in its text is shown, where it is known. */
  mark(name: string, problem: string, place?: readonly [from: number, to: number]): void;
  /** Whether a field has been marked. */
  isMarked(): boolean;
}

/** Reads a form whose marks of the last time are taken away. */
export function fieldsOf(form: HTMLFormElement): Fields {
  const all = [...form.elements].filter((one): one is Field => "value" in one && one.id !== "");
  let marked = false;
  for (const field of all) {
    field.removeAttribute("aria-invalid");
    problemOf(field).replaceChildren();
  }
  const named = (name: string) => {
    const field = all.find((one) => one.name === name);
    if (field) return field;
    throw new Error(`no field ${name}`);
  };
  const mark: Fields["mark"] = (name, problem, place) => {
    const field = named(name);
    field.setAttribute("aria-invalid", "true");
    problemOf(field).append(problem, ...(place ? [placeIn(field.value, place)] : []));
    marked = true;
  };
  const attempt = <T>(work: () => T): T | undefined => {
    try {
      return work();
    } catch (error) {
      if (!isInvalidInputError(error)) throw error;
      const { argument, value, allowed, hint } = error;
      const field = all.find(({ name }) => name && `${argument}.`.startsWith(`${name}.`));
      if (!field) throw error;
      const advice = hint ? `. ${explain(hint, english)}` : "";
      mark(field.name, `${value} is not possible here; allowed: ${allowed}${advice}`);
      return undefined;
    }
  };
  const quantity = <K extends Kind>(name: string, unit: Unit<K>): Quantity<K> | undefined => {
    try {
      return parseQuantity(named(name).value, { kind: unit.kind, defaultUnit: unit });
    } catch (error) {
      if (!isFieldTextError(error)) throw error;
      const { position, end, problem } = error;
      mark(name, `Character ${position + 1}: ${explain(problem, english)}`, [position, end]);
      return undefined;
    }
  };
  const readIfGiven = (units: Readonly<Record<string, AnyUnit>>) =>
    Object.fromEntries(
      Object.entries(units)
        .filter(([name]) => named(name).value.trim() !== "")
        .map(([name, unit]) => [name, quantity(name, unit as unknown as Unit<never>)])
        .filter(([, value]) => value !== undefined),
    );
  return {
    text: (name) => named(name).value,
    read(units) {
      const found = Object.entries(units).map(([name, unit]) => [
        name,
        quantity(name, unit as unknown as Unit<never>),
      ]);
      return found.every(([, value]) => value) ? Object.fromEntries(found) : undefined;
    },
    readIfGiven: readIfGiven as Fields["readIfGiven"],
    attempt,
    mark,
    isMarked: () => marked,
  };
}

/** Where the field's problem is said; made when it is first needed, and tied to the field. */
function problemOf(field: Field): HTMLElement {
  const id = `${field.id}-problem`;
  const found = document.getElementById(id);
  if (found) return found;
  const made = element("p");
  made.id = id;
  made.className = "problem";
  made.setAttribute("aria-live", "polite");
  field.setAttribute("aria-describedby", `${field.getAttribute("aria-describedby") ?? ""} ${id}`);
  field.closest(".field")?.append(made);
  return made;
}

/** The typed text with the mistake marked in it, a few characters around it. */
function placeIn(text: string, [from, to]: readonly [number, number]): HTMLElement {
  const [before, after] = [text.slice(Math.max(0, from - 20), from), text.slice(to, to + 20)];
  return element("code", before, element("mark", text.slice(from, to)), after);
}
