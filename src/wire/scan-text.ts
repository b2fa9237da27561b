// Is this text safe to hand to JSON.parse? Its length, depth and number of values, and whether a field stands twice.
// Follows RFC 8259, section 4 (names should be unique) and 9 (limits). Runs once over the text.
// Does not cover whether it is JSON at all: JSON.parse says that afterwards.
import type { WireLimits } from "./limits.ts";
import { pathText, refuse } from "./refuse.ts";

/** An object or a list that is open: its names so far, and the name or position that is being read. */
interface Level {
  readonly names: Set<string> | undefined;
  at: string | number;
  awaitsName: boolean;
}

/** Throws where the text is too long or too deep, or an object has the same field twice. */
export function scanText(text: string, limits: WireLimits, whole: string): void {
  if (text.length > limits.textLength) {
    refuse(whole, `a text of ${text.length} characters`, `at most ${limits.textLength}`);
  }
  const open: Level[] = [];
  let commas = 0; // each parts two values
  const path = () =>
    pathText(
      open.map(({ at }) => at).filter((at) => at !== ""),
      whole,
    );
  let level: Level | undefined;
  for (let i = 0; i < text.length; i++) {
    const mark = text[i];
    if (mark === '"') {
      const start = i;
      while (++i < text.length && text[i] !== '"') if (text[i] === "\\") i++;
      if (!level?.awaitsName) continue;
      level.at = nameOf(text.slice(start, i + 1));
      level.awaitsName = false;
      if (level.names?.has(level.at))
        refuse(path(), "a field that stands twice", "each field once");
      level.names?.add(level.at);
    } else if (mark === "{" || mark === "[") {
      if (open.length >= limits.depth) {
        refuse(path(), "a value this deep", `at most ${limits.depth} deep`);
      }
      const isObject = mark === "{";
      level = {
        names: isObject ? new Set() : undefined,
        at: isObject ? "" : 0,
        awaitsName: isObject,
      };
      open.push(level);
    } else if (mark === "}" || mark === "]") {
      open.pop();
      level = open.at(-1);
    } else if (mark === "," && level) {
      if (++commas >= limits.values)
        refuse(whole, "one value more", `at most ${limits.values} values in all`);
      if (typeof level.at !== "number") level.awaitsName = true;
      else if (++level.at >= limits.listItems)
        refuse(path(), "one item more", `at most ${limits.listItems} in a list`);
    }
  }
}

/** A name with its escapes read, so that "a" and "\u0061" are the same. */
function nameOf(quoted: string): string {
  if (quoted.includes("\\")) {
    try {
      return String(JSON.parse(quoted));
    } catch {} // no JSON; JSON.parse of the whole will say so
  }
  return quoted.slice(1, -1);
}
