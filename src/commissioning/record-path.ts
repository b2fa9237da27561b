// How is a path written? Paths such as `pressureTest.readings[1].pressure`.
// Follows the writing of JavaScript. Does not cover which fields there are: shapes does.

/** The steps of a path as text. */
export function pathOf(segments: readonly (string | number)[]): string {
  return segments
    .map((one, i) => (typeof one === "number" ? `[${one}]` : i > 0 ? `.${one}` : one))
    .join("");
}
