import { describe, expect, it } from "vitest";
import { judgeNotes } from "../src/bot/judge-notes.ts";
import { judge } from "../src/judge/judge.ts";
import type { EquipmentFacts } from "../src/model.ts";
import { caseOf, note, r } from "./case-builder.ts";

function idsOf(notes: readonly string[], equipment: EquipmentFacts = {}): string[] {
  return judgeNotes({ equipment, site: {}, notes, units: "us" }).cautions.map((one) => one.id);
}

interface Wanted {
  readonly notes: readonly string[];
  readonly has: readonly string[];
  readonly lacks?: readonly string[];
  readonly equipment?: EquipmentFacts;
}

/** A caution comes when the words or the machine's state call for it, and not otherwise. */
const cases: readonly Wanted[] = [
  {
    notes: ["T2 to ground 150 megohm at 500 V, comp still plugged into the inverter"],
    has: ["insulation_drive", "insulation_dead"],
    lacks: ["nitrogen"],
  },
  {
    notes: ["450 microns on it, going to meg the compressor before I break the vacuum"],
    has: ["insulation_vacuum"],
    lacks: ["fire_watch"],
  },
  {
    notes: ["run cap under load, 4.1 A and 365 V, it's a 35"],
    has: ["stored_energy"],
    lacks: ["nitrogen"],
  },
  {
    notes: ["power off two minutes, dc bus still 305 V"],
    has: ["stored_energy"],
    lacks: ["epa608"],
  },
  {
    notes: ["diode check on the inverter module, U V W to N 0.42 0.41 0.42"],
    has: ["stored_energy", "test_before_touch"],
  },
  {
    notes: ["R-454B leaking at the flare, going to braze it now"],
    has: ["a2l", "braze_open"],
    lacks: ["stored_energy"],
  },
  {
    notes: ["holding 440 psi nitrogen for the standing test"],
    has: ["nitrogen"],
    lacks: ["insulation_dead"],
  },
  { notes: ["can I use shop air to find this leak"], has: ["no_oxygen"] },
  { notes: ["L1-L2 476 L2-L3 471 L1-L3 480 running"], has: ["50v"], lacks: ["braze_open"] },
  {
    notes: ["breaker tripped again, reset it and it tripped right away"],
    has: ["breaker"],
    lacks: ["a2l"],
  },
  {
    notes: ["comp reads 0.2 megohm to ground, trying to start it once more"],
    has: ["grounded"],
    lacks: ["frostbite"],
  },
  {
    notes: ["adding 2 lb of R-410A on the suction side"],
    has: ["epa608", "frostbite"],
    lacks: ["a2l"],
  },
  { notes: ["unit sits 4 ft from the roof edge"], has: ["roof"], lacks: ["stored_energy"] },
  { notes: ["jumped out the high pressure switch to keep it going"], has: ["bypass"] },
  { notes: ["been off an hour, skip the dead test?"], has: ["test_before_touch"] },
  { notes: ["oil is black and the acid kit turned"], has: ["acid"] },
  { notes: ["it's raining and the panel is open"], has: ["wet"] },
  {
    notes: ["15.1 15.2 15.0 amps, all good here"],
    has: [],
    lacks: ["grounded", "nitrogen", "stored_energy", "roof"],
  },
];

describe("cautions", () => {
  it.each(cases.map((one) => [one.notes.join(" / "), one] as const))("%s", (_notes, wanted) => {
    const ids = idsOf(wanted.notes, wanted.equipment);
    for (const id of wanted.has) expect(ids).toContain(id);
    for (const id of wanted.lacks ?? []) expect(ids).not.toContain(id);
  });

  it("are at most two, the most serious first", () => {
    const gravity = { danger: 3, warning: 2, notice: 1 };
    for (const { notes, equipment } of cases) {
      const { cautions } = judgeNotes({ equipment: equipment ?? {}, site: {}, notes, units: "us" });
      expect(cautions.length).toBeLessThanOrEqual(2);
      const grades = cautions.map((one) => gravity[one.severity]);
      expect([...grades].sort((a, b) => b - a)).toEqual(grades);
    }
  });

  it("speak of what is done now before what was said earlier", () => {
    const ids = idsOf(
      ["breaker tripped", "megs good", "taking the inverter cover off to pull the board"],
      {
        drive: "inverter",
      },
    );
    expect(ids).toContain("stored_energy");
  });

  it("know a charged bus by its reading alone", () => {
    const bus = r("voltage", 120, { at: "dc_bus", kind: "dc" });
    const { cautions } = judge(
      caseOf({ drive: "inverter" }, [note("bus with the power off", bus)]),
    );
    expect(cautions.map((one) => one.id)).toContain("stored_energy");
  });
});
