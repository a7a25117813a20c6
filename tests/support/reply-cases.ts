import type { Job, ReplyInput } from "../../src/model.ts";
import { sameOrMore } from "../../src/show/charge-question.ts";
import type { ReplyContext } from "./lint-reply.ts";
import { finding, input, job, reading, statement } from "./reply-input.ts";

/** One situation, its reply's input, and what the lint must hold it to. */
export interface ReplyCase {
  readonly title: string;
  readonly input: ReplyInput;
  readonly context?: ReplyContext;
  /** silence is the answer */
  readonly silent?: true;
}

const at = (time: string) => `2026-05-12T${time}:00-05:00`;
const lead = (n: number, figure: string) =>
  reading(figure, {
    quantity: "insulation_resistance",
    points: [`lead ${n}`, "ground"],
    subject: "compressor 1",
    test_voltage: 500,
  });
const low = finding({
  check: "insulation",
  level: "bad",
  says: "lowest lead 0.4 megohm, a ground fault on every published floor",
});
const falling = finding({
  check: "insulation",
  level: "watch",
  says: "84 megohm against 655 megohm earlier: down by a factor of 8",
  basis: "own history",
});
const sound = finding({
  check: "winding",
  level: "good",
  says: "three pairs agree",
  basis: "plate",
});
const next = [
  { check: "winding", why: "it tells the windings from the cable", minutes: 5 },
  { check: "supply", why: "a missing leg looks the same", minutes: 3 },
];
const charge = {
  fault: "refrigerant_undercharge",
  probability: 0.82,
  for: ["superheat 24 F", "subcooling 2 F"],
  against: ["amps near the plate"],
} as const;
const restriction = {
  fault: "liquid_line_restricted",
  probability: 0.15,
  for: ["superheat 24 F"],
  against: ["no frost at the drier"],
} as const;
const locked = {
  fault: "compressor_rotor_locked",
  probability: 0.004,
  for: [],
  against: ["ran for ten minutes"],
} as const;
const status = (
  word: "on_the_way" | "on_site" | "left_site" | "waiting_for_parts" | "no_access" | "done",
) => ({ statements: [statement({ kind: "status", status: word, said: word })] });
const asks = (
  question: Parameters<typeof statement<"question">>[0]["question"],
  about?: string,
) => ({
  statements: [
    statement({ kind: "question", question, said: "?", ...(about === undefined ? {} : { about }) }),
  ],
});

const past: Job = {
  ...job,
  job: 2,
  opened: "2026-03-31T08:30:00-05:00",
  status: "done",
  status_at: "2026-03-31T14:20:00-05:00",
  complaint: "hums and trips",
  people: ["tamsin"],
  readings: [1, 2, 3].map((n) => ({
    ...lead(n, "655 megohm"),
    taken: "2026-03-31T09:33:00-05:00",
    who: "tamsin",
  })),
  parts: [
    {
      part: "compressor 1",
      state: "fitted",
      who: "tamsin",
      at: "2026-03-31T13:55:00-05:00",
      message: "p",
    },
  ],
  file: { state: "open", gaps: ["supply volts"] },
};
const left: Job = {
  ...job,
  machine: {
    power: "locked",
    leads: "lifted",
    circuit: "nitrogen",
    locks: [{ who: "tamsin", where: "roof disconnect", since: at("09:00") }],
    bypasses: [{ what: "high pressure switch", who: "bram", since: at("09:05") }],
  },
  parts: [
    {
      part: "drive board",
      number: "60-12E4",
      state: "ordered",
      due: "Thu",
      who: "ife",
      at: at("09:40"),
      message: "b",
    },
  ],
  timeline: [
    {
      at: at("09:40"),
      who: "tamsin",
      kind: "action",
      says: "leads off, nitrogen 500 at 81",
      message: "b",
    },
  ],
  clocks: [{ id: "c", due: at("16:50"), job: 4, channel: "south", text: "" }],
  file: {
    state: "open",
    gaps: ["three running amps", "cylinder number for 7 lb 6 oz", "acid test", "drier"],
  },
};
const closed: Job = {
  ...past,
  job: 4,
  opened: at("07:00"),
  status_at: at("14:20"),
  statements: [
    {
      message: "a",
      at: at("08:00"),
      who: "bram",
      statement: statement({
        kind: "observation",
        observation: "oil_stain",
        said: "oil on the suction stub",
      }),
    },
    {
      message: "b",
      at: at("09:00"),
      who: "bram",
      statement: statement({ kind: "action", action: "brazed", said: "joint redone" }),
    },
  ],
  visits: [{ person: "bram", kind: "site", from: at("07:40"), to: at("14:20") }],
  labor_hours: 6.67,
  refrigerant: { recovered_kg: 3.288, charged_kg: 3.629 },
};
const corrected = lead(2, "91 megohm");
const caution = {
  id: "stored_energy",
  says: "Measure the bus before a hand goes in: under 50 V to touch",
  source: "s",
  severity: "danger",
} as const;
const visits: Job["visits"] = [{ person: "bram", kind: "site", from: at("08:00") }];

function loose(fields: Parameters<typeof input>[0]): ReplyInput {
  const { job: _, ...rest } = input(fields);
  return rest;
}

/** Each kind of answer at least once. */
export const replyCases: readonly ReplyCase[] = [
  {
    title: "one reading, judged, with the next check",
    input: input({ readings: [lead(2, "84 megohm")], judgement: { findings: [falling], next } }),
    context: { readings: 1, head: "OU-3 comp 1", figures: ["84"] },
  },
  {
    title: "a bad reading under a caution",
    input: input({
      readings: [lead(2, "0.4 megohm")],
      judgement: { findings: [low], next, cautions: [caution] },
    }),
    context: { readings: 1, head: "OU-3 comp 1", figures: ["0.4"], danger: true },
  },
  {
    title: "the same caution was given before today",
    input: input({
      readings: [lead(2, "0.4 megohm")],
      cautioned: ["stored_energy"],
      judgement: { findings: [low], next, cautions: [caution] },
    }),
    context: { readings: 1, head: "OU-3 comp 1" },
  },
  {
    title: "three alike",
    input: input({
      readings: [1, 2, 3].map((n) => lead(n, "505 megohm")),
      judgement: { findings: [sound] },
    }),
    context: { readings: 3, head: "OU-3 comp 1", figures: ["505"] },
  },
  {
    title: "a reading that no check speaks of",
    input: input({ readings: [reading("300 psig", { quantity: "pressure" })] }),
    context: { readings: 1, words: 15, head: "OU-3", figures: ["300"] },
  },
  {
    title: "something is missing for a verdict",
    input: input({
      readings: [reading("124 psi", { quantity: "pressure", at: "suction" })],
      judgement: {
        findings: [
          finding({
            check: "superheat",
            level: "unknown",
            about: "system",
            says: "x",
            missing: "the suction line temperature",
          }),
        ],
      },
    }),
    context: { readings: 1, figures: ["124"] },
  },
  {
    title: "a cause comes to the top",
    input: input({
      readings: [
        reading("101 psig", { quantity: "pressure", at: "suction" }),
        reading("70 F", { quantity: "temperature", at: "suction" }),
      ],
      judgement: {
        findings: [
          finding({
            check: "superheat",
            level: "bad",
            about: "system",
            says: "superheat 34 F, far over the band",
            basis: "common practice",
          }),
        ],
        diagnosis: [charge],
        next,
      },
    }),
    context: { readings: 2, figures: ["101", "70"] },
  },
  {
    title: "a whole sheet",
    input: input({
      readings: [
        lead(1, "84 megohm"),
        lead(2, "91 megohm"),
        lead(3, "90 megohm"),
        reading("471 V", { quantity: "voltage", points: ["L1", "L2"] }),
        reading("459 V", { quantity: "voltage", points: ["L2", "L3"] }),
        reading("468 V", { quantity: "voltage", points: ["L1", "L3"] }),
        reading("118 psi", { quantity: "pressure", at: "suction" }),
        reading("52 F", { quantity: "temperature", at: "suction" }),
      ],
      judgement: {
        findings: [
          falling,
          finding({
            check: "supply",
            about: "supply",
            level: "good",
            says: "unbalance 1.5 in 100",
            basis: "NEMA MG 1",
          }),
        ],
        next,
      },
    }),
    context: {
      readings: 8,
      head: "OU-3 comp 1",
      figures: ["84", "91", "90", "471", "459", "468", "118", "52"],
    },
  },
  {
    title: "a number that was not read",
    input: input({ understood: { unread: ["14"] } }),
    context: { unread: ["14"], words: 15 },
  },
  {
    title: "a number that was not read beside one that was",
    input: input({ readings: [lead(1, "84 megohm")], understood: { unread: ["14", "9"] } }),
    context: { readings: 1, unread: ["14", "9"] },
  },
  {
    title: "the reader's own question",
    input: input({
      understood: {
        unread: ["318", "96"],
        ask: ["Is 318 the head pressure, and 96 the liquid line?"],
      },
    }),
    context: { unread: ["318", "96"] },
  },
  {
    title: "a value that is hardly possible",
    input: input({
      readings: [reading("1240 psi", { quantity: "pressure", at: "suction", doubtful: true })],
    }),
    context: { readings: 1, figures: ["1240"] },
  },
  {
    title: "a correction that changes the verdict",
    input: input({
      readings: [corrected],
      replaced: [{ old: lead(2, "9.1 megohm"), by: corrected }],
      before: { findings: [low] },
      judgement: { findings: [{ ...low, level: "good", says: "no ground fault, floor 5 megohm" }] },
    }),
    context: { readings: 2, figures: ["91", "9.1"] },
  },
  {
    title: "a deletion",
    input: input({
      message: { deletes: "m0" },
      replaced: [{ old: reading("800 micron", { quantity: "vacuum" }) }],
    }),
    context: { figures: ["800"] },
  },
  {
    title: "an undo that takes a verdict back",
    input: input({
      understood: { statements: [statement({ kind: "undo", said: "undo" })] },
      replaced: [{ old: lead(2, "0.4 megohm") }],
      before: { findings: [low] },
    }),
    context: { figures: ["0.4"] },
  },
  {
    title: "readings without a job, two fit",
    input: loose({
      understood: { readings: [reading("318 psi", { quantity: "pressure" })] },
      routing: { candidates: [job, { ...job, job: 7, equipment: "RTU-2" }], again: false },
    }),
    context: { figures: ["318"] },
  },
  {
    title: "readings without a job, none fits",
    input: loose({
      understood: { readings: [reading("318 psi", { quantity: "pressure" })] },
      routing: { candidates: [], again: true },
    }),
    context: { figures: ["318"] },
  },
  {
    title: "a wish for a figure",
    input: loose({ understood: { statements: [noteAbout("wish")] } }),
  },
  {
    title: "leaving out the test for absence of voltage",
    input: loose({ understood: { statements: [noteAbout("skip dead test")] } }),
    context: { lines: 1, words: 30 },
  },
  {
    title: "talk",
    input: loose({ understood: { unread: ["18", "2"] }, addressed: false }),
    silent: true,
  },
  {
    title: "a remark",
    input: input({
      understood: {
        statements: [
          statement({
            kind: "observation",
            observation: "oil_stain",
            said: "oil on the suction stub",
          }),
        ],
      },
    }),
    context: { words: 15, lines: 1, head: "OU-3" },
  },
  {
    title: "a photo",
    input: input({
      message: { files: [{ name: "a.png", type: "image/png", size: 1, sha256: "0" }] },
    }),
    context: { words: 15 },
  },
  {
    title: "a part",
    input: input({
      understood: {
        statements: [
          statement({
            kind: "part",
            part: "contactor",
            number: "44-1902",
            state: "needed",
            said: "need a contactor 44-1902",
          }),
        ],
      },
    }),
    context: { words: 15, figures: ["44-1902"] },
  },
  {
    title: "a job opens where someone was before",
    input: input({
      opened: true,
      earlier: [past],
      job: { ...job, assigned: "bram", opened: at("07:00") },
    }),
    context: { lines: 4 },
  },
  { title: "a job opens and nobody is named", input: input({ opened: true }) },
  {
    title: "on the way, with what helps",
    input: input({
      understood: status("on_the_way"),
      site: { notes: "roof key at the desk" },
      equipment: { refrigerant: "R-410A" },
      job: left,
      earlier: [past],
      judgement: { next },
    }),
    context: { lines: 6, words: 70 },
  },
  {
    title: "here",
    input: input({ understood: status("on_site") }),
    context: { words: 8, lines: 1 },
  },
  {
    title: "a status that comes late",
    input: input({ understood: status("on_site"), late: true, job: { ...job, status: "done" } }),
    context: { words: 12, lines: 1 },
  },
  {
    title: "no access",
    input: input({ understood: status("no_access") }),
    context: { words: 8, lines: 1 },
  },
  {
    title: "done, with things left there",
    input: input({ understood: status("done"), job: left }),
    context: { lines: 5, words: 60 },
  },
  {
    title: "done after a reading",
    input: input({
      readings: [reading("38 F", { quantity: "temperature", at: "box" })],
      understood: {
        ...status("done"),
        readings: [reading("38 F", { quantity: "temperature", at: "box" })],
      },
      job: { ...job, status: "done", file: { state: "open", gaps: ["cylinder number"] } },
    }),
    context: { readings: 1, lines: 4, figures: ["38"] },
  },
  {
    title: "why",
    input: input({
      understood: asks("why"),
      judgement: { findings: [falling, sound], diagnosis: [charge, restriction, locked] },
    }),
    context: { lines: 8, words: 130 },
  },
  { title: "why, with nothing measured", input: input({ understood: asks("why") }) },
  {
    title: "what next",
    input: input({ understood: asks("next"), judgement: { next, diagnosis: [charge] } }),
    context: { lines: 4, words: 70 },
  },
  { title: "what next, with nothing left", input: input({ understood: asks("next") }) },
  {
    title: "history",
    input: input({ understood: asks("history"), earlier: [past] }),
    context: { lines: 12, words: 120 },
  },
  { title: "history of a unit that is new here", input: input({ understood: asks("history") }) },
  {
    title: "status of all jobs",
    input: loose({ understood: asks("status"), jobs: [{ ...job, visits }, left, closed] }),
    context: { lines: 12, words: 90 },
  },
  {
    title: "status of one job",
    input: input({
      understood: asks("status"),
      job: { ...left, visits },
      judgement: { diagnosis: [charge] },
    }),
    context: { lines: 6, words: 60 },
  },
  {
    title: "summary",
    input: input({
      understood: asks("summary"),
      job: closed,
      judgement: { findings: [sound], diagnosis: [charge] },
    }),
    context: { lines: 12, words: 150 },
  },
  {
    title: "handover",
    input: input({ understood: asks("handover"), job: left, judgement: { diagnosis: [charge] } }),
    context: { lines: 8, words: 110 },
  },
  {
    title: "what to bring",
    input: input({ understood: asks("bring"), job: left, judgement: { next } }),
  },
  {
    title: "a line for the customer",
    input: input({ understood: asks("customer"), job: { ...job, visits } }),
    context: { lines: 1 },
  },
  {
    title: "a line for the customer while a part is due",
    input: input({
      understood: asks("customer"),
      job: {
        ...left,
        status: "waiting_for_parts",
        visits: [{ person: "bram", kind: "site", from: at("08:00"), to: at("09:41") }],
      },
    }),
    context: { lines: 1 },
  },
  {
    title: "a value again",
    input: input({ understood: asks("reading", "lead 3"), earlier: [past] }),
    context: { lines: 4 },
  },
  {
    title: "a value that nobody measured",
    input: input({ understood: asks("reading", "static pressure") }),
  },
  {
    title: "who is there",
    input: input({ understood: asks("who"), jobs: [{ ...job, visits }] }),
    context: { lines: 4 },
  },
  { title: "nobody is there", input: input({ understood: asks("who") }) },
  {
    title: "whose lock is on it",
    input: input({
      understood: asks("locks"),
      job: {
        ...job,
        machine: {
          ...job.machine,
          locks: [{ who: "bram", where: "at the roof disconnect", since: job.opened }],
        },
      },
    }),
  },
  { title: "no lock is on", input: input({ understood: asks("locks") }) },
  {
    title: "what one person did",
    input: input({
      understood: asks("worked", "what did Bram do on OU-3?"),
      job: {
        ...job,
        people: ["bram"],
        parts: [{ part: "contactor", state: "fitted", who: "bram", at: job.opened, message: "m1" }],
      },
    }),
  },
  {
    title: "what somebody who was never there did",
    input: input({ understood: asks("worked", "what did Odo do on OU-3?") }),
  },
  {
    title: "how much went in",
    input: input({
      understood: asks("weights", "how much went in?"),
      equipment: { charge_kg: 8.6 },
      job: { ...job, refrigerant: { recovered_kg: 3.1, charged_kg: 2.3 } },
    }),
  },
  {
    title: "a colleague's lock is told off without his word",
    input: input({
      understood: {
        statements: [
          statement({
            kind: "action",
            action: "unlocked",
            what: "tamsin's",
            lock: "off",
            said: "Tamsin's lock is off",
          }),
        ],
      },
      job: {
        ...job,
        machine: { ...job.machine, locks: [{ who: "tamsin", since: job.opened }] },
      },
    }),
  },
  {
    title: "beside the last visit and the sister",
    input: input({
      readings: [oldMegs("60 megohm", 60, 500)],
      past: {
        before: {
          was: oldMegs("655 megohm", 655, 500),
          now: oldMegs("60 megohm", 60, 500),
          comparable: true,
        },
        sister: {
          own: oldMegs("60 megohm", 60, 500),
          other: { ...oldMegs("640 megohm", 640, 500), subject: "compressor 2" },
        },
      },
    }),
    context: { lines: 5 },
  },
  {
    title: "another test voltage is no comparison",
    input: input({
      readings: [oldMegs("60 megohm", 60, 1000)],
      past: {
        before: {
          was: oldMegs("655 megohm", 655, 500),
          now: oldMegs("60 megohm", 60, 1000),
          comparable: false,
        },
      },
    }),
    context: { lines: 5 },
  },
  {
    title: "the same weight again",
    input: input({
      readings: [reading("3 lb", { quantity: "mass", action: "charged" })],
      understood: { ask: [sameOrMore(reading("3 lb", { quantity: "mass", action: "charged" }))] },
    }),
    context: { lines: 4 },
  },
  { title: "export", input: input({ understood: asks("export") }), context: { words: 30 } },
  { title: "help", input: input({ understood: asks("help") }), context: { lines: 5, words: 90 } },
  {
    title: "a question that could be about any job",
    input: loose({ understood: asks("why"), jobs: [job, { ...job, job: 7, equipment: "RTU-2" }] }),
  },
];

function noteAbout(about: string) {
  return { kind: "note", about, said: about, spans: [], rule: "test" } as const;
}

function oldMegs(figure: string, megohm: number, volts: number) {
  return reading(figure, {
    quantity: "insulation_resistance",
    value: megohm * 1e6,
    subject: "compressor 1",
    points: ["lead 1", "ground"],
    test_voltage: volts,
  });
}
