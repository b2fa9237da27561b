// What does JSX become? An object with type and properties. See index.ts.
import type { Element as ReactElement } from "./index.ts";

/** Makes an element. */
export function jsx(type: ReactElement["type"], props: ReactElement["props"]): ReactElement {
  return { type, props };
}

export { jsx as jsxs };

type Child = ReactElement | string | readonly Child[];

interface Common {
  readonly children?: Child;
  readonly key?: string;
  readonly role?: string;
}

/** The part of React's own JSX types that the example uses. */
export declare namespace JSX {
  type Element = ReactElement;
  interface ElementChildrenAttribute {
    children: unknown;
  }
  interface IntrinsicElements {
    label: Common;
    span: Common;
    section: Common;
    h2: Common;
    p: Common;
    input: Common & {
      readonly value: string;
      readonly "aria-invalid": boolean;
      readonly onChange: (event: { readonly target: { readonly value: string } }) => void;
    };
  }
}
