import { kelvin } from "hvac-install-math/quantity";
import { changeCodec, defaultLimits, recordCodec } from "hvac-install-math/wire";
import { describe, expect, it } from "vitest";
import { thrownBy } from "./thrown-by.ts";

/** Its value may be anything, so that only the limits end it. */
const change = { path: "site", by: "N. N.", at: "2026-05-05", reason: "invented" };

const record = (more: string) => `{"version":1,${more}}`;

/** How long a refusal takes, ms of this process: what else the machine does counts for nothing. */
function timed(act: () => unknown): number {
  const start = process.cpuUsage();
  thrownBy(act);
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000;
}

describe("a document beyond the limits fails fast and says why:", () => {
  it("a log of 100 MB", () => {
    const line = '{"elapsed":{"kind":"duration","value":1,"unit":"s"}},';
    const text = record(`"evacuation":{"readings":[${line.repeat(1_900_000)}{}]}`);
    expect(text.length).toBeGreaterThan(100_000_000);
    const error = thrownBy(() => recordCodec.parse(text));
    expect(error.argument).toBe("record.length");
    expect(error.allowed).toBe("at most 20000000");
    expect(timed(() => recordCodec.parse(text))).toBeLessThan(1000);
  });

  it("a text of a million characters in a field, typed or parsed", () => {
    const long = "x".repeat(1_000_000);
    const error = thrownBy(() => recordCodec.parse(record(`"name":"${long}"`)));
    expect(error.argument).toBe("name");
    expect(error.message).toContain("a text of 1000000 characters is not allowed");
    expect(timed(() => recordCodec.parse(record(`"name":"${long}"`)))).toBeLessThan(1000);
    expect(thrownBy(() => recordCodec.decode({ version: 1, name: long })).argument).toBe("name");
    expect(thrownBy(() => recordCodec.encode({ version: 2, name: long })).argument).toBe("name");
    expect(thrownBy(() => recordCodec.parse(record(`"${long}":1`))).message.length).toBeLessThan(
      300,
    );
  });

  it("100 000 lists inside each other, as text, as data, and unclosed", () => {
    const deep = `${"[".repeat(100_000)}${"]".repeat(100_000)}`;
    let data: unknown = [];
    for (let i = 0; i < 100_000; i++) data = [data];
    for (const act of [
      () => recordCodec.parse(deep),
      () => recordCodec.parse("[".repeat(100_000)),
      () => recordCodec.parse(`${'{"a":'.repeat(100_000)}`),
      () => recordCodec.parse(record(`"joints":${deep}`)),
      () => changeCodec.decode({ ...change, value: data }),
    ]) {
      expect(thrownBy(act).allowed).toContain("at most 32");
      expect(timed(act)).toBeLessThan(1000);
    }
    // Where the shape says how deep it goes, the first list that is none of it is refused.
    expect(thrownBy(() => recordCodec.decode(data)).argument).toBe("record");
    expect(thrownBy(() => recordCodec.decode({ version: 1, joints: data })).argument).toBe(
      "runs[0].joints[0]",
    );
  });

  it("a list of too many items, and too many values in all", () => {
    const readings = Array.from({ length: 100_001 }, () => ({}));
    const error = thrownBy(() => recordCodec.decode({ version: 1, evacuation: { readings } }));
    expect(error.argument).toBe("evacuations[0].readings");
    expect(error.allowed).toBe("at most 100000");
    const wide = Array.from({ length: 1000 }, () => Array.from({ length: 1000 }, () => 0));
    expect(thrownBy(() => changeCodec.decode({ ...change, value: wide })).allowed).toBe(
      "at most 1000000 values in all",
    );
  });

  it("the same in a text, before anything is made of it", () => {
    const many = record(`"photos":[${"{},".repeat(5_000_000)}{}]`);
    const error = thrownBy(() => recordCodec.parse(many));
    expect([error.argument, error.allowed]).toEqual(["photos[100000]", "at most 100000 in a list"]);
    expect(timed(() => recordCodec.parse(many))).toBeLessThan(1000);
    const names = record(Array.from({ length: 30 }, (_, i) => `"n${i}":1`).join());
    expect(thrownBy(() => recordCodec.parse(names, { values: 20 })).allowed).toBe(
      "at most 20 values in all",
    );
  });

  // RFC 8259, section 6, leaves the range of numbers to the reader; 5e-324 and 1.8e308 are those of IEEE 754 binary64.
  it("a number beyond a double, but for one that is nearer to 0 than it can tell", () => {
    const bends = (text: string) => record(`"tubing":{"bends":${text}}`);
    expect(thrownBy(() => recordCodec.parse(bends("1e400"))).argument).toBe("runs[0].tubing.bends");
    expect(recordCodec.parse(bends("1e-400")).runs?.[0]?.tubing?.bends).toBe(0);
    expect(recordCodec.parse(bends("5e-324")).runs?.[0]?.tubing?.bends).toBe(Number.MIN_VALUE);
  });

  it("a name that would move the cursor of a terminal is written out", () => {
    const error = thrownBy(() => recordCodec.parse(record('"\\u001b[31m":1')));
    expect(error.argument).toBe('["\\u001b[31m"]');
  });

  it("a limit that does not exist", () => {
    expect(
      thrownBy(() => recordCodec.parse(record('"name":"a"'), { dept: 3 } as never)).argument,
    ).toBe("limits");
  });

  it("a ring of objects", () => {
    const ring: Record<string, unknown> = { version: 1 };
    ring.site = ring;
    expect(thrownBy(() => recordCodec.decode(ring)).argument).toBe("site.version");
    ring.again = ring;
    expect(thrownBy(() => changeCodec.decode({ ...change, value: ring })).allowed).toContain(
      "at most 32",
    );
  });

  it("a limit of the caller's own", () => {
    const text = record('"name":"four"');
    expect(recordCodec.parse(text, { textLength: 100, stringLength: 7 }).name).toBe("four");
    expect(thrownBy(() => recordCodec.parse(text, { textLength: 10 })).allowed).toBe("at most 10");
    expect(thrownBy(() => recordCodec.parse(text, { stringLength: 3 })).allowed).toBe("at most 3");
    expect(thrownBy(() => recordCodec.parse(text, { values: 2 })).argument).toBe("name");
    for (const depth of [0, 501, Number.NaN, "7" as never]) {
      expect(thrownBy(() => recordCodec.parse(text, { depth })).argument).toBe("limits.depth");
    }
    expect(thrownBy(() => recordCodec.parse(text, null as never)).argument).toBe("limits");
  });

  it("while a day's log of one reading a second is read", { timeout: 120_000 }, () => {
    const reading = (i: number) => ({
      elapsed: { kind: "duration", value: i, unit: "s" },
      pressure: { kind: "absolutePressure", value: 300, unit: "micron" },
    });
    const readings = Array.from({ length: 86_400 }, (_, i) => reading(i));
    const text = JSON.stringify({ version: 1, evacuation: { readings } });
    expect(text.length).toBeLessThan(defaultLimits.textLength);
    expect(recordCodec.parse(text).evacuations?.[0]?.readings).toHaveLength(86_400);
  });
});

describe("nothing reaches a prototype:", () => {
  it("__proto__ is refused wherever it stands", () => {
    for (const [path, text] of [
      ["__proto__", record('"__proto__":{"polluted":1}')],
      ["site.__proto__", record('"site":{"__proto__":{"polluted":1}}')],
      ["site.__proto__", record('"site":{"\\u005f_proto__":null}')],
      [
        "history[0].previous.__proto__",
        record(
          '"history":[{"path":"site","previous":{"__proto__":{"polluted":1}},"by":"a","at":"2026-01-01","reason":"b"}]',
        ),
      ],
    ] as const) {
      const error = thrownBy(() => recordCodec.parse(text));
      expect(error.argument).toBe(path);
      expect(error.allowed).toContain("no such field");
    }
    const value = JSON.parse('{"a":{"__proto__":{"polluted":1}}}');
    expect(thrownBy(() => changeCodec.decode({ ...change, value })).argument).toBe(
      "value.a.__proto__",
    );
    expect(({} as { polluted?: number }).polluted).toBeUndefined();
  });

  it("constructor, prototype and toString are fields like any other that is not known", () => {
    for (const name of ["constructor", "prototype", "toString", "hasOwnProperty", "valueOf"]) {
      const error = thrownBy(() => recordCodec.parse(record(`"tubing":{"${name}":{"a":1}}`)));
      expect(error.argument).toBe(`runs[0].tubing.${name}`);
      expect(error.allowed).toContain("no such field");
    }
  });

  it("what is inherited is no field", () => {
    const child = Object.create({ name: "inherited" });
    expect(thrownBy(() => recordCodec.decode(child)).value).toBe("an object of a class");
    const bare = Object.assign(Object.create(null), { version: 1, name: "own" });
    expect(recordCodec.decode(bare).name).toBe("own");
  });
});

it("a field that stands twice is refused, however it is spelt", () => {
  for (const [path, more] of [
    ["version", '"version":1'],
    ["name", '"name":"a","name":"a"'],
    ["name", '"name":"a","n\\u0061me":"b"'],
    [
      "joints[1].torque.kind",
      '"joints":[{"a":1,"b":{"a":1}},{"torque":{"kind":"a","x":[],"kind":1}}]',
    ],
  ] as const) {
    const error = thrownBy(() => recordCodec.parse(record(more)));
    expect(error.argument).toBe(path);
    expect(error.value).toBe("a field that stands twice");
  }
  expect(
    recordCodec.parse(record('"joints":[{"name":"a"},{"name":"a"}]')).runs?.[0]?.joints,
  ).toHaveLength(2);
});

it("objects that are not data are refused with the typed error", () => {
  const throwing = Object.defineProperty({ version: 1 }, "site", {
    enumerable: true,
    get: () => {
      throw new Error("getter");
    },
  });
  const proxy = new Proxy(
    {},
    {
      ownKeys: () => {
        throw new Error("proxy");
      },
    },
  );
  for (const wrong of [throwing, proxy, new Date(0), new Map(), kelvin(1), Symbol("a"), 1n]) {
    expect(thrownBy(() => recordCodec.decode(wrong)).argument).toMatch(/^(record|version)$/);
    expect(thrownBy(() => recordCodec.decode({ version: 1, site: wrong })).argument).toBeTruthy();
  }
  const gaps = { version: 1, joints: new Array(2) };
  expect(thrownBy(() => recordCodec.decode(gaps)).argument).toBe("runs[0].joints[0]");
});

it("numbers that JSON can spell and a quantity cannot hold are refused", () => {
  const length = (value: string) =>
    record(`"tubing":{"length":{"kind":"length","value":${value},"unit":"ft"}}`);
  expect(thrownBy(() => recordCodec.parse(length("1e999"))).argument).toBe(
    "runs[0].tubing.length.value",
  );
  expect(recordCodec.parse(length("-0")).runs?.[0]?.tubing?.length?.si).toBe(0);
  expect(recordCodec.parse(length("1E2")).runs?.[0]?.tubing?.length?.toString()).toBe("100 ft");
});
