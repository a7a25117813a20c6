import { describe, expect, test } from "vitest";
import type { Reading, Statement } from "../src/model.ts";
import { claims } from "../src/record/claims/list.ts";
import type { Entry, NoteFacts } from "../src/record/entry.ts";
import { gapsOf } from "../src/record/gaps.ts";
import { foldJob } from "../src/record/job.ts";

const said = { said: "", spans: [], rule: "test" } as const;
const reading = (
  fields: Pick<Reading, "quantity" | "value" | "unit"> & Partial<Reading>,
): Reading => ({
  relation: "=",
  assumed: [],
  figure: { number: "", unit: "" },
  ...said,
  ...fields,
});
type Action = Extract<Statement, { kind: "action" }>;
const action = (fields: Pick<Action, "action"> & Partial<Action>): Statement => ({
  kind: "action",
  ...said,
  ...fields,
});

interface Piece extends Partial<Pick<NoteFacts, "readings" | "statements">> {
  readonly text?: string;
  /** the office knows who did it as certified */
  readonly certified?: true;
}

/** What makes each claim, and what proves each gap away; each proof stands in a message of its own. */
const makes: Readonly<Record<string, Piece>> = {
  "compressor replaced": { statements: [action({ action: "replaced", what: "compressor 1" })] },
  "refrigerant added": {
    readings: [reading({ quantity: "mass", value: 3, unit: "kg", action: "charged" })],
  },
  "refrigerant recovered": {
    readings: [reading({ quantity: "mass", value: 2, unit: "kg", action: "recovered" })],
  },
  "leak repaired": { statements: [action({ action: "repaired", what: "flare" })] },
  "joint brazed": { statements: [action({ action: "brazed" })] },
  "circuit opened": { statements: [action({ action: "circuit_opened", circuit: "open" })] },
  "electrical repair": {
    statements: [{ kind: "part", part: "contactor", state: "fitted", ...said }],
  },
  "fault in the supply mended": {
    statements: [{ kind: "observation", observation: "upstream_fuse_open", ...said }],
  },
};

const serial = (value: string): Statement => ({
  kind: "nameplate",
  field: "serial",
  value,
  ...said,
});
const proves: Readonly<Record<string, Piece>> = {
  "weight recovered": {
    readings: [reading({ quantity: "mass", value: 2, unit: "kg", action: "recovered" })],
  },
  "weight charged": {
    readings: [reading({ quantity: "mass", value: 3, unit: "kg", action: "charged" })],
  },
  "pressure test": {
    statements: [action({ action: "nitrogen_in", circuit: "nitrogen" })],
    readings: [reading({ quantity: "pressure", value: 2e6, unit: "Pa" })],
  },
  "vacuum hold": {
    readings: [reading({ quantity: "vacuum", value: 50, unit: "Pa", after_s: 600 })],
  },
  "running amps": {
    readings: [reading({ quantity: "current", value: 14, unit: "A", state: "running" })],
  },
  "running volts": { readings: [reading({ quantity: "voltage", value: 466, unit: "V" })] },
  "old and new serial": { statements: [serial("A1"), serial("B2")] },
  "acid test": { statements: [{ kind: "observation", observation: "no_acid", ...said }] },
  drier: { statements: [{ kind: "part", part: "drier", state: "fitted", ...said }] },
  "settled pressures and superheat": {
    readings: [reading({ quantity: "superheat", value: 6, unit: "K" })],
  },
  "cylinder number": {
    readings: [reading({ quantity: "mass", value: 2, unit: "kg", action: "recovered" })],
    statements: [{ kind: "note", about: "cylinder", ...said, said: "cylinder 22" }],
  },
  "cylinder of the charge": {
    readings: [reading({ quantity: "mass", value: 3, unit: "kg", action: "charged" })],
    statements: [{ kind: "note", about: "cylinder", ...said, said: "cylinder 31" }],
  },
  "nitrogen flow while brazing": { text: "nitrogen flowing while I brazed" },
  "why it failed, or what was looked at": { text: "it failed because the contactor welded" },
  "certificate of who handled refrigerant": { certified: true },
  "where it leaked, or what found no leak": {
    statements: [{ kind: "observation", observation: "no_leak_found", ...said }],
  },
};

function entry(place: number, given: Piece & Partial<NoteFacts>): Entry {
  const { text = "", certified: _certified, ...piece } = given;
  return {
    job: 1,
    place,
    at: `2026-05-12T08:${String(place).padStart(2, "0")}:00-05:00`,
    who: "bram",
    platform: "test",
    message: `m${String(place).padStart(2, "0")}`,
    text,
    facts: {
      kind: "note",
      role: "tech",
      readings: [],
      statements: [],
      unread: [],
      files: [],
      replaces: [],
      ...piece,
    },
  };
}

function gapsWith(pieces: readonly Piece[]): readonly string[] {
  const opens = { site: "Gull Wharf", equipment: "OU-3", channel: "south" };
  const entries = [entry(1, { opens }), ...pieces.map((piece, index) => entry(index + 2, piece))];
  const job = foldJob(entries);
  if (job === undefined) throw new Error("no job");
  const knows = pieces.some(({ certified }) => certified === true);
  const others = { name: "ife", certificate: "C-2" };
  const people = knows
    ? [{ name: "bram", certificate: "C-1" }, others]
    : [{ name: "bram" }, others];
  return gapsOf(job, {}, people);
}

test("every claim can be made, and every proof given, in this test", () => {
  expect(Object.keys(makes).sort()).toEqual(claims.map(({ name }) => name).sort());
  const gaps = new Set(claims.flatMap(({ proofs }) => proofs.map(({ gap }) => gap)));
  expect(Object.keys(proves).sort()).toEqual([...gaps].sort());
});

/** A cylinder is named beside its weight: where the weight is the proof that lacks, without it. */
function without(piece: Piece, gap: string): Piece {
  const gone = JSON.stringify(proves[gap]?.readings?.[0]);
  if (piece.readings === undefined || piece.statements === undefined) return piece;
  return { ...piece, readings: piece.readings.filter((one) => JSON.stringify(one) !== gone) };
}

for (const claim of claims) {
  describe(claim.name, () => {
    const made = makes[claim.name] ?? {};
    const all = Object.entries(proves);

    test("with every proof the file lacks nothing", () => {
      expect(gapsWith([made, ...all.map(([, piece]) => piece)])).toEqual([]);
    });

    test("without any proof the file lacks each of its own", () => {
      const gaps = gapsWith([made]);
      for (const { gap, held } of claim.proofs) {
        const nothing = { equipment: {}, readings: [], said: [], words: [], uncertified: ["bram"] };
        const itself = held(nothing, "2026-05-12T08:00:00-05:00");
        expect(itself).toBe(false);
        // what makes the claim may prove a part of it
        const given = JSON.stringify(made) === JSON.stringify(proves[gap]);
        expect([gap, gaps.includes(gap)]).toEqual([gap, !given]);
      }
    });

    test.each(claim.proofs.map(({ gap }) => gap))("without %s exactly that is named", (gap) => {
      if (JSON.stringify(made) === JSON.stringify(proves[gap])) return;
      const rest = all.filter(([name]) => name !== gap).map(([, piece]) => without(piece, gap));
      const gaps = gapsWith([made, ...rest]);
      expect(gaps).toEqual([gap]);
    });
  });
}

test("no claim, no gap; a bypass left on is named first", () => {
  expect(gapsWith([])).toEqual([]);
  const bypass: Piece = {
    statements: [action({ action: "jumper_on", bypass: "on", what: "high pressure switch" })],
  };
  expect(gapsWith([bypass, makes["electrical repair"] ?? {}])).toEqual([
    "high pressure switch bypass off",
    "running amps",
  ]);
});
