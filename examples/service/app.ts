// What does the service answer? Records in, amended with their history, judged, printed.
// Does not know who asks: put it behind whatever signs people in, and behind TLS.
import { type Context, Hono } from "hono";
import { bodyLimit } from "hono/body-limit";
import { secureHeaders } from "hono/secure-headers";
import {
  amend,
  assessInstallation,
  circuitRules,
  type InstallationRecord,
} from "hvac-install-math/commissioning";
import { english } from "hvac-install-math/language/en";
import { spanish } from "hvac-install-math/language/es";
import { french } from "hvac-install-math/language/fr";
import { recordPlots } from "hvac-install-math/plots";
import { htmlReport } from "hvac-install-math/report";
import {
  assessInstallationResult,
  type Codec,
  changeCodec,
  recordCodec,
} from "hvac-install-math/wire";
import { openApi, page } from "./openapi.ts";
import { problem, refusal } from "./problems.ts";
import type { Row, Store } from "./store.ts";

/** Bytes of a request: a record with a log of a reading a second over an hour has some 0.4 MB. */
const largest = 2_000_000;

/** Requests at work at one time; more are told to come again. */
const mostAtOnce = 32;

const rules = Object.values(circuitRules);
const languages = { en: english, es: spanish, fr: french };

/** The service on a store of records. */
export function createApp(store: Store): Hono {
  const app = new Hono();
  let atWork = 0;
  app.use(
    secureHeaders({
      contentSecurityPolicy: { defaultSrc: ["'none'"], styleSrc: ["'unsafe-inline'"] },
    }),
  );
  app.use(async (c, next) => {
    if (atWork >= mostAtOnce) return problem(c, 503, "too many requests at once: try again");
    atWork++;
    try {
      await next();
    } finally {
      atWork--;
    }
  });
  app.use(
    bodyLimit({ maxSize: largest, onError: (c) => problem(c, 413, `at most ${largest} bytes`) }),
  );
  app.onError((_, c) => problem(c, 500, "the service failed; nothing was changed"));
  app.notFound((c) => problem(c, 404, "there is nothing here"));

  app.get("/", (c) => c.html(page()));
  app.get("/openapi.json", (c) => c.json(openApi));

  app.post("/records", async (c) => {
    const record = await read(c, recordCodec);
    if (record instanceof Response) return record;
    const id = crypto.randomUUID();
    store.add(id, recordCodec.stringify(record));
    return c.json({ id, revision: 0 }, 201, { location: `/records/${id}` });
  });

  const withRow =
    (answer: (c: Context, row: Row) => Response | Promise<Response>) => (c: Context) => {
      const row = store.get(c.req.param("id") ?? "");
      return row ? answer(c, row) : problem(c, 404, "no record of this id");
    };

  app.get(
    "/records/:id",
    withRow((c, { text, revision }) =>
      c.body(text, 200, { "content-type": "application/json", etag: `"${revision}"` }),
    ),
  );

  app.post(
    "/records/:id/changes",
    withRow(async (c, { id, revision, text }) => {
      const match = c.req.header("if-match");
      if (match === undefined) return problem(c, 428, `state If-Match, such as "${revision}"`);
      if (match !== `"${revision}"`)
        return problem(c, 412, `the record is at revision ${revision}`);
      const change = await read(c, changeCodec);
      if (change instanceof Response) return change;
      let changed: InstallationRecord;
      try {
        changed = amend(recordCodec.parse(text), change);
      } catch (error) {
        return refusal(c, error);
      }
      // Reading the body took time: only the row that was read is replaced.
      if (!store.change(id, revision, recordCodec.stringify(changed))) {
        return problem(c, 412, "somebody else was faster: read the record again");
      }
      return c.json({ id, revision: revision + 1 });
    }),
  );

  app.get(
    "/records/:id/verdict",
    withRow((c, { text }) => {
      const verdict = assessInstallation(recordCodec.parse(text), { rules });
      const json = assessInstallationResult.stringify(verdict);
      return c.body(json, 200, { "content-type": "application/json" });
    }),
  );

  app.get(
    "/records/:id/report",
    withRow((c, { text }) => {
      const { language = "en", system = "inch-pound" } = c.req.query();
      if (!Object.hasOwn(languages, language)) return problem(c, 400, "language: en, es or fr");
      if (system !== "inch-pound" && system !== "SI") {
        return problem(c, 400, "system: inch-pound or SI");
      }
      const options = {
        language: languages[language as keyof typeof languages],
        system,
        rules,
        plots: recordPlots,
      } as const;
      return c.html(htmlReport(recordCodec.parse(text), options));
    }),
  );

  return app;
}

/** The value that a request carries, or the answer that refuses it. */
async function read<T>(c: Context, codec: Codec<T>): Promise<T | Response> {
  if (!/^application\/json\b/.test(c.req.header("content-type") ?? "")) {
    return problem(c, 415, "content-type: application/json");
  }
  const text = await c.req.text();
  try {
    return codec.parse(text);
  } catch (error) {
    return refusal(c, error, text, codec as Codec<never>);
  }
}
