// What the tests import as "vitest" while mutants are tried: vitest's own runner and matchers without its workers.
import {
  ASYMMETRIC_MATCHERS_OBJECT,
  customMatchers,
  JestAsymmetricMatchers,
  JestChaiExpect,
  JestExtend,
} from "@vitest/expect";
import * as chai from "chai";

export {
  afterAll,
  afterEach,
  beforeAll,
  beforeEach,
  describe,
  it,
  onTestFinished,
  startTests,
  test,
} from "@vitest/runner";

for (const plugin of [JestExtend, JestChaiExpect, JestAsymmetricMatchers]) chai.use(plugin);

export const expect = Object.assign(
  (value, message) => chai.expect(value, message),
  chai.expect,
  globalThis[ASYMMETRIC_MATCHERS_OBJECT],
  { unreachable: (message) => chai.assert.fail(message) },
);
chai.expect.extend(expect, customMatchers);

const replaced = new Map();

export const vi = {
  stubGlobal(name, value) {
    if (!replaced.has(name)) replaced.set(name, Object.getOwnPropertyDescriptor(globalThis, name));
    Object.defineProperty(globalThis, name, { value, configurable: true, writable: true });
  },
  unstubAllGlobals() {
    for (const [name, was] of replaced) Object.defineProperty(globalThis, name, was);
    replaced.clear();
  },
};
