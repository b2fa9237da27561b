// One box with its unit menu, and what is wrong with it right below.
import { type ReactElement, useId } from "react";
import { type Field, meaningOf, type Typed, unitsOf } from "./fields.ts";
import type { Reader } from "./reader.ts";

export interface QuantityFieldProps {
  readonly field: Field;
  readonly typed: Typed | undefined;
  readonly reader: Reader;
  /** What the verdict has against the value, where it has something. */
  readonly problem?: string | undefined;
  readonly onTyped: (field: Field, typed: Typed) => void;
}

export function QuantityField({
  field,
  typed = { text: "" },
  reader,
  problem,
  onTyped,
}: QuantityFieldProps): ReactElement {
  const id = useId();
  const units = unitsOf(field, reader);
  const name = reader.field(field.path);
  // Units and language of the page may change later: what was typed keeps its own.
  const { locale } = reader.language;
  const unit = typed.unit ?? units[0];
  const wrong = meaningOf(field, typed, reader).problem ?? problem;
  return (
    <div className="field">
      <label htmlFor={id}>{name}</label>
      <input
        id={id}
        inputMode={field.holds === "number" ? "numeric" : "text"}
        autoComplete="off"
        value={typed.text}
        aria-invalid={wrong !== undefined}
        aria-describedby={`${id}-problem`}
        onChange={({ target }) => onTyped(field, { text: target.value, unit, locale })}
      />
      {units.length > 0 && (
        <select
          aria-label={`${reader.words.unit} ${name}`}
          value={unit}
          onChange={({ target }) => onTyped(field, { ...typed, unit: target.value })}
        >
          {units.map((unit) => (
            <option key={unit}>{unit}</option>
          ))}
        </select>
      )}
      <p id={`${id}-problem`} className="problem" aria-live="polite">
        {wrong}
      </p>
    </div>
  );
}
