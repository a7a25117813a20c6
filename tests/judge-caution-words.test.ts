import { describe, expect, test } from "vitest";
import type { CautionRule } from "../src/judge/caution.ts";
import { cautions } from "../src/judge/cautions/list.ts";
import { judge } from "../src/judge/judge.ts";
import { sceneOf } from "../src/judge/scene.ts";
import type { EquipmentFacts } from "../src/model.ts";
import { caseOf, did, megs, note, type Part, r, seen } from "./case-builder.ts";
import { act } from "./support/job-lines.ts";

/** Every way in which a caution is called for, each alone, and how near the danger is then. */

type Near = 1 | 2 | 3;
interface Row {
  readonly text?: string;
  readonly parts?: readonly Part[];
  readonly facts?: EquipmentFacts;
}
type Called = readonly [near: Near, ...rows: readonly (string | Row)[]];

const inverter: EquipmentFacts = { drive: "inverter" };
const mild: EquipmentFacts = { refrigerant: "R-454B" };
const [lead] = megs([9e8]);
const tested: readonly Part[] = lead === undefined ? [] : [lead];
const outdoors = (cel: number): Part => r("temperature", cel, { at: "outdoor_air" });
const bus = (volts: number): Part => r("voltage", volts, { at: "dc_bus", kind: "dc" });

const calls: Readonly<Record<string, readonly Called[]>> = {
  "50v": [
    [2, "it is energized", "working on a live panel", "checked with the power on"],
    [
      1,
      "l1-l2 is fine",
      "amp draw",
      "clamp on it",
      "what volts",
      "running at 230 v",
      "12 v running",
    ],
  ],
  a2l_tools: [[2, { text: "vacuum pump hooked up", facts: mild }, "leak detector on the r-32"]],
  a2l: [
    [3, { text: "going to braze", facts: mild }, "r-32 leak"],
    [
      2,
      { text: "adding some", facts: mild },
      { text: "purge it", facts: { refrigerant: "R-290" } },
    ],
  ],
  acid: [
    [3, { parts: [seen("acid_found")] }, { parts: [seen("oil_black")] }],
    [2, "a burnout", "smells of acid", "oil is black"],
  ],
  arc_flash: [
    [3, "opening the panel while it is live", "hot 480 in there"],
    [2, "the 480 volt panel", "racking the breaker", "motor control center"],
  ],
  braze_open: [
    [3, "going to braze it", "brazing now"],
    [2, "the torch", "i brazed and soldered", "solder joint"],
  ],
  breaker: [
    [
      ...([2, { parts: [seen("breaker_trips")] }, { parts: [seen("fuse_blown")] }] as const),
      ...["reset the breaker", "keeps tripping", "blown fuse"],
    ],
  ],
  bypass: [[3, "jumped out the switch", "bypass it", "defeat the interlock", "overriding it"]],
  cylinder: [[1, "weighed the cylinder", "a full bottle", "regulator is set", "the tank"]],
  discharge_hot: [[1, "too hot to touch", "discharge line 200"]],
  epa608: [
    [
      2,
      { parts: [did("charged")] },
      { parts: [r("mass", 3, { action: "charged" })] },
      "adding gas",
    ],
    [1, "gauges on", "recover it"],
  ],
  fall: [[2, "an open edge", "on a scaffold", "open hatch"]],
  fan: [
    [2, "guard off", "the sheave", "spun the blade by hand", "reaching in"],
    [1, "belt is worn", "the blower", "fan motor"],
  ],
  fire_watch: [
    [2, "the torch", "hot work", "grinding"],
    [1, "brazing later"],
  ],
  frostbite: [
    [2, { parts: [did("charged")] }, "charging", "hoses off", "purge it"],
    [1, "recovering"],
  ],
  grounded: [
    [
      ...([3, { parts: megs([1.9e6]) }, { parts: [seen("continuity_to_ground")] }] as const),
      ...[{ parts: [r("resistance", 4, { points: ["T1", "ground"] })] }],
    ],
    [2, "a dead short", "shorted to ground", "grounded comp"],
  ],
  heat: [
    [3, "feeling dizzy", "heat stroke"],
    [2, "hot roof", "attic is an oven", { parts: [outdoors(32)] }, { parts: [outdoors(40)] }],
  ],
  insulation_dead: [[2, { parts: tested }, "megger it", "insulation test"]],
  insulation_discharge: [
    [2, { text: "10 min", parts: tested }, { text: "lead to lead", parts: tested }],
    [1, { parts: tested }, "megged it"],
  ],
  insulation_drive: [
    [3, { text: "still plugged into the inverter", parts: tested }, "megger through the drive"],
    [1, { parts: tested, facts: inverter }],
  ],
  insulation_gas: [
    [3, { text: "there is a leak", parts: tested, facts: mild }],
    [1, { parts: tested, facts: mild }],
  ],
  insulation_vacuum: [
    [
      ...([3, { parts: [r("vacuum", 60), ...tested] }] as const),
      { text: "i'll start it", parts: [r("vacuum", 60)] },
      { parts: [act("vacuum_started", { circuit: "vacuum" }), ...tested] },
      ...["in a vacuum, about to meg it", "will run it before i break the vacuum"],
    ],
  ],
  ladder: [[2, "on the ladder"]],
  lift: [[2, "crane is here", "hoist it", "lifting the compressor"]],
  lockout: [
    [2, "going to change the contactor", "swapping it", "pulling the fuses"],
    [1, "pulled fuses", "lifted leads", "replaced contactor, welded"],
  ],
  lone: [[2, "i am alone", "by myself up here", "no one on site"]],
  meter_cat: [[1, "at the disconnect", "service entrance", "a cat iii meter"]],
  multi_feed: [
    [2, "two disconnects", "120 v control", "heat trace is on"],
    [1, "crankcase heater warm", "the interlock"],
  ],
  nitrogen: [[2, "nitrogen on", "n2 at 200", "pressure test", "standing test"]],
  no_oxygen: [[3, "use shop air", "oxygen", "an air compressor"]],
  oxygen_low: [[3, "leak in the basement", "leak in the walk-in", "vault, it leaks"]],
  pm_motor: [[2, "ecm blower", "windmilling"]],
  qualified: [[2, "the feeder", "new circuit", "main panel"]],
  recovery_tank: [[2, "recovering", "recovered it", "reclaim"]],
  relief: [[3, "relief valve is weeping", "rupture disc", "prv", "popped the relief"]],
  roof: [[3, "edge of the roof", "skylight", "by the parapet"]],
  stored_energy: [
    [
      ...([3, { text: "going in, cover off", facts: inverter }] as const),
      { text: "power off", parts: [did("power_off"), bus(50)] },
    ],
    [2, "the capacitor", "40 uf", "diode check", "ipm", { text: "rectifier", facts: inverter }],
    [1, { text: "the drive", facts: inverter }, { text: "dc bus", facts: inverter }],
  ],
  terminal: [
    [3, "cover off, start it", "run it with the cover off"],
    [2, "terminal cover", "a burnt pin"],
    [1, "terminal block", "at the pins"],
  ],
  test_before_touch: [
    [3, "can i skip the dead test", "it has been off a while", "it's dead"],
    [2, "diode check"],
    [1, "12 ohms", "megged", "leads off", "power is off and dead"],
  ],
  toxic: [[2, "acid smell", "there is smoke", "it stings"]],
  trapped_liquid: [[2, "king valve shut", "pumped down", "heat gun", "both valves closed"]],
  wet: [
    [
      2,
      { parts: [seen("wet_weather")] },
      { parts: [seen("water_inside")] },
      "raining",
      "standing water",
    ],
  ],
};

function nearOf(rules: readonly CautionRule[], row: string | Row): number {
  const { text = "", parts = [], facts = {} }: Row = typeof row === "string" ? { text: row } : row;
  const scene = sceneOf(caseOf(facts, [note(text, parts)]));
  return Math.max(...rules.map((rule) => rule.fits(scene) ?? 0));
}

test("every caution stands here", () => {
  expect(Object.keys(calls).sort()).toEqual([...new Set(cautions.map(({ id }) => id))].sort());
});

describe.each(Object.entries(calls))("%s", (id, rows) => {
  const rules = cautions.filter((rule) => rule.id === id);
  test.each(rows.map(([near, ...some]) => ({ near, some })))(
    "as near as $near",
    ({ near, some }) => {
      for (const row of some) expect([row, nearOf(rules, row)]).toEqual([row, near]);
    },
  );
  test("is not called for by plain readings or talk", () => {
    for (const row of [
      ...["", "suction 118, head 340", "filter changed, all good", "here", "waiting for parts"],
      { parts: [r("pressure", 8e5, { at: "suction" }), seen("runs_normally")] },
    ])
      expect([row, nearOf(rules, row)]).toEqual([row, 0]);
  });
});

describe("a caution is not called for", () => {
  const not: readonly (readonly [string, string | Row])[] = [
    ...([
      ["a2l", "going to braze"],
      ["a2l_tools", "vacuum pump hooked up"],
    ] as const),
    ["a2l", { text: "going to braze", facts: { refrigerant: "R-410A" } }],
    ["grounded", { parts: megs([2e6]) }],
    ["grounded", { parts: [r("resistance", 4, { points: ["T1", "T2"] })] }],
    ["heat", { parts: [outdoors(31.9)] }],
    ["heat", { parts: [r("temperature", 40, { at: "discharge" })] }],
    ["insulation_dead", { parts: [r("vacuum", 60), ...tested] }],
    ["insulation_drive", { parts: tested }],
    ["insulation_drive", { text: "leads lifted", parts: tested, facts: inverter }],
    ["insulation_gas", { text: "leak", facts: mild }],
    ["insulation_vacuum", { parts: [r("vacuum", 60)] }],
    [
      "insulation_vacuum",
      { parts: [r("vacuum", 60), act("charged", { circuit: "charged" }), ...tested] },
    ],
    ["oxygen_low", "leak on the roof"],
    ["stored_energy", { text: "power off", parts: [did("power_off"), bus(49)] }],
    ["stored_energy", "valve caps back on"],
    ["stored_energy", "going in, cover off"],
    ["test_before_touch", "fan is dead"],
    ["epa608", { parts: [r("mass", 3, { rating: "nameplate_charge" })] }],
  ];
  test.each(not)("%s: %j", (id, row) => {
    expect(
      nearOf(
        cautions.filter((rule) => rule.id === id),
        row,
      ),
    ).toBe(0);
  });
});

describe("of several cautions", () => {
  const idsOf = (...texts: readonly string[]) =>
    judge(
      caseOf(
        {},
        texts.map((text) => note(text)),
      ),
    ).cautions;
  test("two are said, the nearest, and of these the most serious first", () => {
    // notice, danger, warning, danger: the two that are true now
    const said = idsOf("raining on the ladder, relief valve is weeping, skylight beside it");
    expect(said.map(({ id }) => id)).toEqual(["relief", "roof"]);
    expect(
      idsOf("ladder, discharge line is fine, jumped out the switch").map(({ id }) => id),
    ).toEqual([...["bypass", "ladder"]]);
  });
  test("what the last message brings up goes before what was as near before, and is marked", () => {
    const said = idsOf("raining", "on the ladder, by myself");
    expect(said.map(({ id, now }) => [id, now])).toEqual([
      ...[
        ["ladder", true],
        ["lone", true],
      ],
    ]);
    const before = idsOf("skylight beside it", "on the ladder");
    expect(before.map(({ id, now }) => [id, now])).toEqual([
      ...[
        ["roof", undefined],
        ["ladder", true],
      ],
    ]);
  });
  test("each is said once, whichever of its rules calls for it", () => {
    const said = idsOf("diode check, the capacitor reads 40 uf");
    expect(said.map(({ id }) => id).sort()).toEqual(["stored_energy", "test_before_touch"]);
  });
});
