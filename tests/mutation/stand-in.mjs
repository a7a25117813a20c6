import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import {
  ASYMMETRIC_MATCHERS_OBJECT,
  chai,
  customMatchers,
  GLOBAL_EXPECT,
  getState,
  JestAsymmetricMatchers,
  JestChaiExpect,
  JestExtend,
  setState,
} from "@vitest/expect";

/**
 * Stands in for the test runner, so that many mutants are tried in one process: collects tests as
 * they are declared; `worker.mjs` runs them again and again.
 */

/** Each test file with its tests and hooks, in order. */
export const files = [];

let group = { hooks: [], parent: undefined };

/** Called before the tests of a file are declared. */
export function openFile(name) {
  group = { hooks: [], parent: undefined };
  files.push({ name, tests: [], groups: [group] });
}

const collect = (run) => files.at(-1).tests.push({ run, group, file: files.at(-1).name });

const functionOf = (rest) => rest.find((one) => typeof one === "function");

const spread = (row) => (Array.isArray(row) ? row : [row]);

export function test(_title, ...rest) {
  collect(functionOf(rest));
}
test.each =
  (rows) =>
  (_title, ...rest) => {
    for (const row of rows) collect(() => functionOf(rest)(...spread(row)));
  };
test.skip = () => {};
test.skipIf = (skipped) => (skipped ? test.skip : test);
test.runIf = (wanted) => (wanted ? test : test.skip);
export const it = test;

export function describe(_title, ...rest) {
  const outer = group;
  group = { hooks: [], parent: outer };
  files.at(-1).groups.push(group);
  functionOf(rest)();
  group = outer;
}
describe.each =
  (rows) =>
  (title, ...rest) => {
    for (const row of rows) describe(title, () => functionOf(rest)(...spread(row)));
  };
describe.skip = () => {};
describe.skipIf = (skipped) => (skipped ? describe.skip : describe);
describe.runIf = (wanted) => (wanted ? describe : describe.skip);

const hook = (kind) => (run) => group.hooks.push({ kind, run });
export const beforeAll = hook("beforeAll");
export const afterAll = hook("afterAll");
export const beforeEach = hook("beforeEach");
export const afterEach = hook("afterEach");

chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);

export const expect = (value, message) => chai.expect(value, message);
Object.assign(expect, chai.expect);
expect.getState = () => getState(expect);
expect.setState = (state) => setState(state, expect);
Object.defineProperty(globalThis, GLOBAL_EXPECT, { value: expect, configurable: true });
Object.assign(expect, globalThis[ASYMMETRIC_MATCHERS_OBJECT]);
setState({ assertionCalls: 0, customTesters: [] }, expect);
expect.extend = (more) => chai.expect.extend(expect, more);
expect.extend(customMatchers);
for (const name of Object.keys(chai.expect)) expect[name] ??= chai.expect[name];

/** A transcript is compared, never written. */
chai.util.addMethod(chai.Assertion.prototype, "toMatchFileSnapshot", function (path) {
  const file = fileURLToPath(new URL(path, `file://${process.cwd()}/tests/`));
  if (!existsSync(file)) throw new Error(`${path} is missing`);
  chai.expect(this._obj).toBe(readFileSync(file, "utf8"));
});
