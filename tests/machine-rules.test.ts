import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { JobReading, Machine } from "../src/model.ts";
import { byProcedure, foldMachine } from "../src/record/machine.ts";
import { r } from "./case-builder.ts";
import { type Action, act, kept, line, minuteOf } from "./support/job-lines.ts";

/** What each word and each reading makes of the machine, from every state that it can be in. */

type Power = Machine["power"];
/** A step: an action, or the readings of one message. */
type Step = Action | readonly JobReading[];

/** Steps a minute apart, all by one technician. */
function machineAfter(...steps: readonly Step[]): Machine {
  const readings = steps.flatMap((step, minute) =>
    "kind" in step
      ? []
      : step.map((one) => ({ ...one, message: `m${minute}`, taken: minuteOf(minute) })),
  );
  const lines = steps.flatMap((step, minute) => ("kind" in step ? [line(minute, step)] : []));
  return foldMachine(lines, readings);
}

const volts = (value: number, more: Partial<JobReading> = {}) => kept(0, r("voltage", value), more);

/** How each state comes about. */
const comesTo: Readonly<Record<Power, readonly Step[]>> = {
  unknown: [],
  off: [act("power_off")],
  live: [act("power_on")],
  locked: [act("locked")],
  proven_dead: [act("locked"), act("proved_dead")],
};
const states = ["unknown", "off", "live", "locked", "proven_dead"] as const;
const same = states;

/** What is said or read, then what the power is after it from unknown, off, live, locked, proven dead. */
const steps: readonly (readonly [string, Step, readonly Power[]])[] = [
  ["power off", act("power_off"), ["off", "off", "off", "locked", "proven_dead"]],
  ["tagged", act("tagged"), ["off", "off", "off", "locked", "proven_dead"]],
  ["power on", act("power_on"), ["live", "live", "live", "live", "live"]],
  ["started", act("started"), ["live", "live", "live", "live", "live"]],
  ["locked", act("locked"), ["locked", "locked", "locked", "locked", "proven_dead"]],
  ["a lock goes on", act("other", { lock: "on" }), [...Array(4).fill("locked"), "proven_dead"]],
  // what runs already had its lock off before the word came
  [
    "locked, the lock taken off again",
    act("locked", { lock: "off" }),
    ["off", "off", "live", "off", "off"],
  ],
  ["proved dead", act("proved_dead"), Array(5).fill("proven_dead")],
  ["stopped", act("stopped"), same],
  ["a plan to lock", act("locked", { planned: true }), same],
  ["a plan to power up", act("power_on", { planned: true }), same],
  ["a plan to prove it dead", act("proved_dead", { planned: true }), same],
  // a meter that finds nothing proves nothing: it may be broken, or at the wrong place
  ["0 V alone", [volts(0)], same],
  ["three times 0 V", [volts(0), volts(0), volts(0)], same],
  ["50 V", [volts(50)], same],
  ["more than 50 V", [volts(50.1)], ["live", "live", "live", "locked", "proven_dead"]],
  ["volts told with a minus", [volts(-60)], ["live", "live", "live", "locked", "proven_dead"]],
  ["50.1 ohm", [kept(0, r("resistance", 50.1))], same],
  // with the disconnect open the line side has its volts all the same, and a bus drains
  [
    "volts at the line side",
    [volts(460, { at: "supply" })],
    ["live", "off", "live", "locked", "proven_dead"],
  ],
  [
    "volts on the bus",
    [volts(600, { at: "dc_bus" })],
    ["live", "off", "live", "locked", "proven_dead"],
  ],
  [
    "volts at the drive's output",
    [volts(400, { at: "drive_output" })],
    ["live", "live", "live", "locked", "proven_dead"],
  ],
  ["volts of the plate", [volts(460, { rating: "nominal" })], same],
  ["volts of an hour ago", [volts(460, { earlier: true })], same],
  ["volts that were taken back", [volts(460, { undone: true })], same],
  ["half an ampere", [kept(0, r("current", 0.5))], same],
  // a current runs through no locked switch: whatever was said, it is live
  ["a current", [kept(0, r("current", 0.6))], Array(5).fill("live")],
  ["a current too large for the meter", [kept(0, r("current", "OL"))], same],
  // a known live source, dead at the work, the live source again (29 CFR 1910.333(b)(2)(iv)(B))
  ["live, dead, live", [volts(120), volts(0), volts(120)], Array(5).fill("proven_dead")],
  [
    "live, dead on three, live",
    [120, 0, 4.9, 1, 120].map((one) => volts(one)),
    Array(5).fill("proven_dead"),
  ],
  [
    "live, 5 V, live",
    [120, 5, 120].map((one) => volts(one)),
    ["live", "live", "live", "locked", "proven_dead"],
  ],
  [
    "one of three not dead",
    [120, 0, 40, 120].map((one) => volts(one)),
    ["live", "live", "live", "locked", "proven_dead"],
  ],
  [
    "live twice and nothing between",
    [120, 120].map((one) => volts(one)),
    ["live", "live", "live", "locked", "proven_dead"],
  ],
  [
    "not live first",
    [50, 0, 120].map((one) => volts(one)),
    ["live", "live", "live", "locked", "proven_dead"],
  ],
  [
    "not live again",
    [120, 0, 50].map((one) => volts(one)),
    ["live", "live", "live", "locked", "proven_dead"],
  ],
];

describe.each(steps)("%s", (_said, step, after) => {
  test.each(states.map((state, index) => [state, after[index]] as const))(
    "where the power is %s makes it %s",
    (before, wanted) => {
      expect(machineAfter(...comesTo[before], step).power).toBe(wanted);
    },
  );
});

describe("the circuit", () => {
  type Circuit = Machine["circuit"];
  const says: Readonly<Record<Circuit, readonly Step[]>> = {
    unknown: [],
    charged: [act("charged", { circuit: "charged" })],
    recovered: [act("recovered", { circuit: "recovered" })],
    open: [act("circuit_opened", { circuit: "open" })],
    nitrogen: [act("nitrogen_in", { circuit: "nitrogen" })],
    vacuum: [act("vacuum_started", { circuit: "vacuum" })],
  };
  const circuits = ["unknown", "charged", "recovered", "open", "nitrogen", "vacuum"] as const;
  const mass = (more: Partial<JobReading>) => [kept(0, r("mass", 3), more)];
  const pressure = (pa: number) => [kept(0, r("pressure", pa))];
  test.each<[string, Step, readonly Circuit[]]>([
    ["a vacuum was read", [kept(0, r("vacuum", 60))], Array(6).fill("vacuum")],
    ["gas was weighed out", mass({ action: "recovered" }), Array(6).fill("recovered")],
    ["gas was weighed in", mass({ action: "charged" }), Array(6).fill("charged")],
    ["something else was weighed", mass({}), circuits],
    [
      "the plate's charge was told",
      mass({ action: "charged", rating: "nameplate_charge" }),
      circuits,
    ],
    // test gas and what is left in a recovered machine press as well: only nothing known gives way
    ["more than the air's pressure", pressure(1.01e5), ["charged", ...circuits.slice(1)]],
    ["no more than the air's pressure", pressure(1e5), circuits],
    ["a pressure too high for the gauge", [kept(0, r("pressure", "OL"))], circuits],
  ])("%s", (_said, step, after) => {
    expect(circuits.map((before) => machineAfter(...says[before], step).circuit)).toEqual(after);
  });
});

describe("locks", () => {
  const hangs = (...lines: Parameters<typeof line>[]): readonly string[] =>
    foldMachine(
      lines.map((one) => line(...one)),
      [],
    ).locks.map(
      ({ who, where, tag, since }) =>
        `${who}${where === undefined ? "" : ` ${where}`}${tag === true ? " tag" : ""} ${since.slice(14, 16)}`,
    );
  const on = (what?: string) => act("locked", what === undefined ? {} : { what });
  const tag = (what?: string) => act("tagged", what === undefined ? {} : { what });
  test("one that is told again hangs since the first time, its place is what was named", () => {
    expect(hangs([1, on()], [2, on("roof disconnect")], [3, on()])).toEqual([
      "bram roof disconnect 01",
    ]);
    expect(hangs([1, on("roof disconnect")], [2, on("roof disconnect")])).toHaveLength(1);
  });
  test("in two places are two", () => {
    expect(hangs([1, on("roof disconnect")], [2, on("panel")])).toEqual([
      "bram roof disconnect 01",
      "bram panel 02",
    ]);
  });
  test("'still locked' and its like name no place", () => {
    for (const word of [
      "still",
      "all",
      "now",
      "it",
      "too",
      "also",
      "again",
      "already",
      "here",
      "as well",
      "Myself",
    ])
      expect(hangs([1, on(word)])).toEqual(["bram 01"]);
    expect(hangs([1, on("still the panel")])).toEqual(["bram still the panel 01"]);
  });
  test("behind a tag are more than the tag, and a tag on a lock takes nothing from it", () => {
    expect(hangs([1, tag()])).toEqual(["bram tag 01"]);
    expect(hangs([1, tag()], [2, tag("panel")])).toEqual(["bram panel tag 01"]);
    expect(hangs([1, tag()], [2, on()])).toEqual(["bram 01"]);
    expect(hangs([1, on()], [2, tag()])).toEqual(["bram 01"]);
  });
  test("of the place that is powered up come off, another place's lock hangs on", () => {
    const two = [
      [1, on("panel")],
      [2, on("roof")],
    ] satisfies Parameters<typeof line>[];
    expect(hangs(...two, [3, act("power_on", { what: "roof" })])).toEqual(["bram panel 01"]);
    expect(hangs(...two, [3, act("started")])).toEqual([]);
    expect(hangs([1, on()], [3, act("power_on", { what: "roof" })])).toEqual([]);
  });
  test("of an owner who left come off by the office's procedure, that one alone", () => {
    const off = act("unlocked", { lock: "off", what: byProcedure(minuteOf(1)) });
    expect(hangs([1, on("panel")], [2, on("roof")], [3, off, "maren"])).toEqual(["bram roof 02"]);
    const none = act("unlocked", { lock: "off", what: byProcedure(minuteOf(9)) });
    expect(hangs([1, on("panel"), "maren"], [3, none, "maren"])).toHaveLength(1);
  });
  test("the power stays locked until the last of them is off", () => {
    const power = (...lines: Parameters<typeof line>[]) =>
      foldMachine(
        lines.map((one) => line(...one)),
        [],
      ).power;
    expect(power([1, on()], [2, on(), "ife"], [3, act("unlocked"), "ife"])).toBe("locked");
    expect(power([1, on()], [2, act("unlocked"), "ife"])).toBe("locked");
    expect(power([1, on()], [2, act("unlocked")])).toBe("off");
  });

  const people = ["bram", "ife", "odo"] as const;
  const words = fc.array(
    fc.tuple(
      fc.constantFrom(...people),
      fc.constantFrom("locked", "unlocked", "power_on", "power_off", "other"),
    ),
    { maxLength: 14 },
  );
  test("of each person hang by his own words alone, whatever the others say", () => {
    fc.assert(
      fc.property(words, (said) => {
        const own = new Map<string, boolean>();
        for (const [who, action] of said) {
          if (action === "locked") own.set(who, true);
          if (action === "unlocked" || action === "power_on") own.set(who, false);
        }
        const { locks } = foldMachine(
          said.map(([who, action], minute) => line(minute, act(action), who)),
          [],
        );
        expect(locks.map(({ who }) => who).sort()).toEqual(
          people.filter((who) => own.get(who) === true),
        );
      }),
    );
  });
  test("and everything else hang together by time, however the lines are mixed", () => {
    const all = fc.uniqueArray(fc.nat(50), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(all, words, fc.nat(), (minutes, said, turn) => {
        const lines = minutes.flatMap((minute, at) => {
          const [who, action] = said[at] ?? ["bram", "other"];
          return [line(minute, act(action), who)];
        });
        const turned = [
          ...lines.slice(turn % lines.length),
          ...lines.slice(0, turn % lines.length),
        ];
        expect(foldMachine(turned, [])).toEqual(foldMachine(lines, []));
      }),
    );
  });
});

test("words of a moment count after the readings of that moment: 0 V, locked", () => {
  const reading = kept(1, r("current", 12));
  expect(foldMachine([line(1, act("locked"))], [reading]).power).toBe("locked");
  expect(foldMachine([line(1, act("power_off"))], [kept(2, r("current", 12))]).power).toBe("live");
});

describe("a bypass", () => {
  const bypasses = (...steps: readonly Action[]) =>
    machineAfter(...steps).bypasses.map(({ what, since }) => `${what} ${since.slice(14, 16)}`);
  const on = (what?: string) =>
    act("jumper_on", { bypass: "on", ...(what === undefined ? {} : { what }) });
  const off = (what?: string) =>
    act("jumper_off", { bypass: "off", ...(what === undefined ? {} : { what }) });
  test("stands once under its name, without the words behind it", () => {
    expect(bypasses(on("high pressure switch to"), on("high pressure switch"))).toEqual([
      "high pressure switch 01",
    ]);
    expect(bypasses(on())).toEqual(["a safety 00"]);
  });
  test("comes off by its name, or without one where it is the only one", () => {
    expect(bypasses(on("door switch"), on("float"), off("float"))).toEqual(["door switch 00"]);
    expect(bypasses(on("float"), off())).toEqual([]);
    expect(bypasses(on("door switch"), on("float"), off())).toEqual(["door switch 00", "float 01"]);
    expect(bypasses(on("float"), off("door switch"))).toEqual(["float 00"]);
  });
  test("planned is none", () => {
    expect(bypasses({ ...on("float"), planned: true })).toEqual([]);
  });
});

test("leads and their state are the last word's", () => {
  const lifted = act("leads_lifted", { leads: "lifted" });
  const landed = act("leads_landed", { leads: "landed" });
  expect(machineAfter(lifted).leads).toBe("lifted");
  expect(machineAfter(lifted, landed, act("other")).leads).toBe("landed");
});
