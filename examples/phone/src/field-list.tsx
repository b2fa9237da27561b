// The boxes of a screen, each with what the verdict has against it.
import type { ReactElement } from "react";
import type { Field } from "./fields.ts";
import { QuantityField } from "./quantity-field.tsx";
import type { ScreenProps } from "./screen.ts";

export type FieldListProps = Pick<ScreenProps, "judged" | "typed" | "reader" | "onTyped"> & {
  readonly fields: readonly Field[];
};

export function FieldList({
  fields,
  judged,
  typed,
  reader,
  onTyped,
}: FieldListProps): ReactElement {
  const problems = judged?.assessment.steps.flatMap((step) => step.problems) ?? [];
  return (
    <div className="fields">
      {fields.map((field) => {
        const found = problems.find(({ path }) => path === field.path);
        return (
          <QuantityField
            key={field.path}
            field={field}
            typed={typed[field.path]}
            reader={reader}
            problem={found && reader.say(found.reason)}
            onTyped={onTyped}
          />
        );
      })}
    </div>
  );
}
