// What is there to draw? Lines, bands, levels and panels in the reader's units. Internal types.
// Follows no standard. Does not cover how they are drawn: panel.ts.
import type { Frame } from "./plot-options.ts";
import type { Role } from "./styles.ts";

/** A point in the reader's units. */
export type Point = readonly [x: number, y: number];

/** A line, or with `marks` its points: a line with dots; dots, crosses or rings alone. */
export interface Line {
  readonly role: Role;
  readonly label?: string | undefined;
  readonly points: readonly Point[];
  readonly marks?: "dotted line" | "dots" | "crosses" | "rings" | undefined;
  /** How far up and down each point is uncertain. */
  readonly whisker?: number | undefined;
}

/** The area between two lines. */
export interface Band {
  readonly role: Role;
  readonly label?: string | undefined;
  readonly points: readonly (readonly [x: number, low: number, high: number])[];
}

/** A level with its words beside it; `stop` ends it with a stroke. */
export interface Level {
  readonly role: Role;
  readonly label: string;
  readonly from: number;
  readonly to: number;
  readonly y: number;
  readonly stop?: boolean | undefined;
}

/** What has one vertical axis. */
export interface Panel {
  readonly name: string;
  readonly height: number;
  readonly bands: readonly Band[];
  readonly levels: readonly Level[];
  /** The first one lies on top. */
  readonly lines: readonly Line[];
  /** Values that the axis has to reach beside those that are drawn. */
  readonly reach: readonly number[];
  /** A second axis on the right, `factor` times the left one. */
  readonly right?: { readonly name: string; readonly factor: number } | undefined;
}

/** A whole picture. */
export interface LinePlot {
  readonly frame: Frame;
  /** The outcome in a word, and what it rests on, below the heading. */
  readonly outcome: string;
  readonly result: string;
  /** The text alternative. */
  readonly description: string;
  readonly xName: string;
  readonly x: readonly [from: number, to: number];
  /** Words in place of the numbers along the horizontal axis. */
  readonly xWords?: readonly (readonly [at: number, word: string])[] | undefined;
  readonly panels: readonly Panel[];
}
