// The part of vitest's interface that our unit tests use, for running them in this process many thousand times.
// Assertions are vitest's own; collecting and running is what has to be quick.
import { format } from "node:util";
import {
  ASYMMETRIC_MATCHERS_OBJECT,
  chai,
  customMatchers,
  GLOBAL_EXPECT,
  JestAsymmetricMatchers,
  JestChaiExpect,
  JestExtend,
  setState,
} from "@vitest/expect";

chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);
const expect = Object.assign((value, message) => chai.expect(value, message), chai.expect);
Object.assign(expect, globalThis[ASYMMETRIC_MATCHERS_OBJECT]);
expect.extend = (matchers) => chai.expect.extend(expect, matchers);
expect.extend(customMatchers);
setState({ assertionCalls: 0, isExpectingAssertions: false, expectedAssertionsNumber: null }, expect);
globalThis[GLOBAL_EXPECT] = expect;

/**
 * @typedef {{ name: string, run: () => unknown, suite: Suite, ms: number, index: number }} Test
 * @typedef {{ name: string, body: () => void, parent?: Suite, tests: Test[], suites: Suite[], isReady: boolean,
 *   beforeAll: Function[], beforeEach: Function[], afterEach: Function[] }} Suite
 */

/** @returns {Suite} */
const suiteOf = (name, body, parent) => ({
  ...{ name, body, parent, tests: [], suites: [], isReady: false },
  ...{ beforeAll: [], beforeEach: [], afterEach: [] },
});

/** The suite that calls of `test` and `describe` go to. */
let open;

/** How the outermost suites of a file get collected; a dry run takes notes there. */
export const watch = { outermost: (_index, collectIt) => collectIt() };

/** Runs a body that calls `describe` and `test`, and gives the suite that it made. */
export function collect(name, body, parent) {
  const suite = suiteOf(name, body, parent);
  const outer = open;
  open = suite;
  try {
    body();
  } finally {
    open = outer;
  }
  return suite;
}

/** All tests of a suite and of those inside it, in their order. */
export const testsOf = (suite) => [...suite.tests, ...suite.suites.flatMap(testsOf)];

/** Runs the `beforeAll` of a suite and of those around it, once. */
export async function makeReady(suite) {
  if (suite.isReady) return;
  if (suite.parent) await makeReady(suite.parent);
  for (const hook of suite.beforeAll) await hook();
  suite.isReady = true;
}

/** Runs one test with its hooks; throws what it throws. */
export async function runTest({ run, suite }) {
  await makeReady(suite);
  const around = [];
  for (let at = suite; at; at = at.parent) around.unshift(at);
  try {
    for (const { beforeEach } of around) for (const hook of beforeEach) await hook();
    const pending = run();
    if (pending instanceof Promise) await pending;
  } finally {
    for (const { afterEach } of around.reverse()) for (const hook of afterEach) await hook();
  }
}

/** `register(name, run)` with the `each`, `skipIf` and other forms that vitest gives it. */
function withForms(register) {
  const skip = withEach(() => {});
  const forms = withEach(register);
  return Object.assign(forms, { skip, skipIf: (is) => (is ? skip : forms), runIf: (is) => (is ? forms : skip) });
}

function withEach(register) {
  // Options may be before or after the body; none of them changes what is tested.
  const call = (name, ...rest) =>
    register(
      name,
      rest.find((given) => typeof given === "function"),
    );
  const each =
    (cases) =>
    (name, ...rest) => {
      const run = rest.find((given) => typeof given === "function");
      for (const one of cases) {
        const values = Array.isArray(one) ? one : [one];
        register(format(name, ...values), () => run(...values));
      }
    };
  return Object.assign(call, { each });
}

const test = withForms((name, run) => {
  open.tests.push({ name, run: () => run({ expect }), suite: open, ms: 0, index: -1 });
});
const describe = withForms((name, body) => {
  const around = open;
  const collectIt = () => collect(name, body, around);
  around.suites.push(around.parent ? collectIt() : watch.outermost(around.suites.length, collectIt));
});
const hook = (kind) => (run) => {
  open[kind].push(run);
};

const notHere = () => {
  throw new Error("Not in the mutation tester's harness; a test that needs it is left out.");
};

/** What `import … from "vitest"` gives. */
export const vitest = {
  expect,
  test,
  it: test,
  describe,
  beforeAll: hook("beforeAll"),
  beforeEach: hook("beforeEach"),
  afterEach: hook("afterEach"),
  // A process of the mutation tester ends without it.
  afterAll: () => {},
  vi: new Proxy({}, { get: notHere }),
  inject: notHere,
};
