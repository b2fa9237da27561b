// What does the example of the docs need of React? The types and a stand-in of two hooks.
// Follows React 19's documented meaning of useState and useRef, for one rendering at a time.
// Does not cover anything else of React.

/** What a component returns: a tag or a component with its properties. */
export interface Element {
  readonly type: string | ((props: never) => Element);
  readonly props: Readonly<Record<string, unknown>>;
}

interface Slots {
  readonly values: unknown[];
  next: number;
}

let slots: Slots = { values: [], next: 0 };

/** Renders with hooks that remember what they held in `memory`, as a mounted component does. */
export function render<T>(memory: unknown[], component: () => T): T {
  slots = { values: memory, next: 0 };
  return component();
}

/** A value that lives as long as the component, and the function that replaces it. */
export function useState<S>(first: S): [S, (next: S) => void] {
  const { values } = slots;
  const place = slots.next++;
  if (place >= values.length) values.push(first);
  return [
    values[place] as S,
    (next) => {
      values[place] = next;
    },
  ];
}

/** A box that lives as long as the component. */
export function useRef<T>(first: T): { current: T } {
  const [box] = useState({ current: first });
  return box;
}
