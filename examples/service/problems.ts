// What does a client hear when something is wrong? Problem details, each wrong field by its path.
// Follows RFC 9457. Says nothing of what happened inside.
import type { Context } from "hono";
import { isInvalidInputError } from "hvac-install-math/quantity";
import type { Codec } from "hvac-install-math/wire";

/** How many wrong fields are listed. */
const most = 100;

type Status = 400 | 404 | 412 | 413 | 415 | 422 | 428 | 500 | 503;

/** The answer to what cannot be done. */
export function problem(c: Context, status: Status, detail: string, more: object = {}): Response {
  const body = JSON.stringify({ title: titles[status], status, detail, ...more });
  return c.body(body, status, { "content-type": "application/problem+json" });
}

const titles: Readonly<Record<Status, string>> = {
  400: "Bad request",
  404: "Not found",
  412: "Changed in between",
  413: "Too large",
  415: "Not JSON",
  422: "Not a valid value",
  428: "Revision required",
  500: "Internal error",
  503: "Busy",
};

/** The answer to text that a codec refuses: everything that is wrong with it, where it is JSON at all. */
export function refusal(c: Context, error: unknown, text?: string, codec?: Codec<never>): Response {
  if (!isInvalidInputError(error)) throw error;
  const { argument, value, allowed, message } = error;
  const all = text === undefined || !codec ? [] : problemsIn(text, codec);
  const problems = all.length > 0 ? all : [{ argument, value, allowed }];
  return problem(c, 422, message, { problems });
}

function problemsIn(text: string, codec: Codec<never>) {
  try {
    return codec
      .problems(JSON.parse(text))
      .slice(0, most)
      .map(({ argument, value, allowed }) => ({ argument, value, allowed }));
  } catch {
    return []; // no JSON: the first error says so
  }
}
