import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Job } from "../src/model.ts";
import { type Grip, holdsForMs, inHand } from "../src/record/hand.ts";
import { type Asked, leftOpen, type Routable, route, sentTo } from "../src/record/route.ts";

/** Whose job a message is, and which job is in whose hand. */

const now = Date.parse("2026-05-12T12:00:00Z");
const hoursAgo = (hours: number): string => new Date(now - hours * 3600_000).toISOString();

interface Given extends Partial<Omit<Routable, "statusAt">> {
  readonly status?: Job["status"];
}

function job(number: number, { status = "open", ...given }: Given = {}): Routable {
  return {
    ...{ job: number, site: "Gull Wharf", equipment: `RTU-${number}`, opened: hoursAgo(4) },
    ...{ people: [], tags: [], places: [], statusAt: () => status, ...given },
  };
}

const nothing = { jobs: [], sites: [], tags: [], places: [] };

interface Question extends Partial<Omit<Asked, "named">> {
  readonly named?: Partial<Asked["named"]>;
}

function asked({ named = {}, ...more }: Question = {}): Asked {
  return {
    ...{ thread: undefined, hand: undefined, person: "bram", instant: now, ...more },
    named: { ...nothing, ...named },
  };
}

describe("a message is of", () => {
  const two = [job(1), job(2, { site: "Hazelport School", equipment: "AC-5" })];
  test("the job of its thread, whatever it names and whatever is in hand", () => {
    const one = asked({ thread: 1, hand: 2, named: { sites: ["Hazelport School"], jobs: [2] } });
    expect(route(one, two)).toEqual({ kind: "job", job: 1, by: "thread" });
  });
  test("the job whose number it says, whatever else it names", () => {
    const one = asked({ hand: 1, named: { jobs: [2], sites: ["Gull Wharf"] } });
    expect(route(one, two)).toEqual({ kind: "job", job: 2, by: "name" });
    expect(route(asked({ named: { jobs: [9] } }), two)).toEqual({ kind: "none" });
  });
  test("the job that it names, though another is in hand", () => {
    const one = asked({ hand: 1, named: { sites: ["Hazelport School"] } });
    expect(route(one, two)).toEqual({ kind: "job", job: 2, by: "name" });
  });
  test("the job in hand where it names none, or nobody's", () => {
    expect(route(asked({ hand: 2 }), two)).toEqual({ kind: "job", job: 2, by: "hand" });
    expect(route(asked(), two)).toEqual({ kind: "none" });
    // a site that no job stands at is none of theirs
    const elsewhere = asked({ hand: 2, named: { sites: ["Old Mill"], tags: ["RTU-1"] } });
    expect(route(elsewhere, two)).toEqual({ kind: "job", job: 2, by: "hand" });
  });
});

describe("of jobs that a message may mean", () => {
  const chosen = (jobs: readonly Routable[], question: Question): unknown => {
    const found = route(asked(question), jobs);
    return found.kind === "job" ? found.job : found.kind === "ask" ? found.candidates : "none";
  };
  const tag = { named: { tags: ["rtu 1"] } };
  test("a unit named outweighs a room, and a part that hangs on one outweighs a room", () => {
    const unit = job(1, { equipment: "RTU-1" });
    const part = job(2, { tags: ["BB-1"] });
    const room = job(3, { places: ["Room 11"] });
    const all = { named: { tags: ["rtu 1", "BB-1"], places: ["Room 11"] } };
    expect(chosen([room, part, unit], all)).toBe(1);
    expect(chosen([room, part], all)).toBe(2);
    expect(chosen([room], all)).toBe(3);
    expect(chosen([room], { named: { places: ["Room 12"] } })).toBe("none");
  });
  test("the site outweighs all of them", () => {
    const there = job(1, { equipment: null });
    const unit = job(2, { site: "Hazelport School", equipment: "RTU-1" });
    expect(chosen([unit, there], { named: { sites: ["Gull Wharf"], tags: ["RTU-1"] } })).toBe(1);
    expect(chosen([job(3, { site: null })], { named: { sites: ["Gull Wharf"] } })).toBe("none");
  });
  test("two that fit alike are asked about", () => {
    expect(chosen([job(1), job(2)], { named: { sites: ["Gull Wharf"] } })).toEqual([1, 2]);
    // their people and who was sent settle it
    const sites = { named: { sites: ["Gull Wharf"] } };
    expect(chosen([job(1), job(2, { people: ["bram"] })], sites)).toBe(2);
    expect(chosen([job(1, { assigned: "bram" }), job(2)], sites)).toBe(1);
    expect(chosen([job(1, { assigned: "bram" }), job(2, { people: ["bram"] })], sites)).toBe(2);
  });
  test("open outweighs done, opened outweighs what is opened later", () => {
    const sites = { named: { sites: ["Gull Wharf"] } };
    expect(chosen([job(1, { status: "done" }), job(2)], sites)).toBe(2);
    expect(chosen([job(1), job(2, { opened: hoursAgo(-1) })], sites)).toBe(1);
    expect(chosen([job(1, { opened: hoursAgo(-1) })], sites)).toBe(1);
    expect(chosen([job(1, { opened: hoursAgo(0) }), job(2, { opened: hoursAgo(-1) })], sites)).toBe(
      1,
    );
  });
  test("of one unit the latest visit", () => {
    const first = job(1, { equipment: "RTU-1", opened: hoursAgo(50) });
    const second = job(2, { equipment: "RTU-1", opened: hoursAgo(3) });
    for (const jobs of [
      [first, second],
      [second, first],
    ])
      expect(chosen(jobs, tag)).toBe(2);
    const elsewhere = job(3, { site: "Hazelport School", equipment: "RTU-1" });
    expect(chosen([first, second, elsewhere], tag)).toEqual([2, 3]);
  });
  test("what is in hand counts among equals, unless it is done and another open", () => {
    const sites = { named: { sites: ["Gull Wharf"] }, hand: 1 };
    expect(chosen([job(1), job(2)], sites)).toBe(1);
    expect(chosen([job(1, { status: "done" }), job(2)], sites)).toBe(2);
    expect(chosen([job(1, { status: "done" }), job(2, { status: "done" })], sites)).toBe(1);
  });
  test("a late message finds the jobs as they stood in its time", () => {
    const since = Date.parse(hoursAgo(1));
    const closed = { ...job(1), statusAt: (at: number) => (at < since ? "open" : "done") } as const;
    const other = job(2, { status: "done" });
    const sites = { named: { sites: ["Gull Wharf"] } };
    expect(chosen([closed, other], { ...sites, instant: since - 1 })).toBe(1);
    expect(chosen([closed, other], sites)).toEqual([1, 2]);
  });
});

describe("somebody is", () => {
  const me = { person: "bram", instant: now };
  test("sent to the one open job that is his", () => {
    const mine = { assigned: "bram" };
    expect(sentTo(me, [job(1, mine), job(2, { assigned: "ife" })])).toBe(1);
    expect(sentTo(me, [job(1, mine), job(2, mine)])).toBeUndefined();
    expect(sentTo(me, [job(1, mine), job(2, { ...mine, status: "done" })])).toBe(1);
    expect(sentTo(me, [job(1, { ...mine, opened: hoursAgo(-1) })])).toBeUndefined();
    expect(sentTo(me, [job(1, { ...mine, opened: hoursAgo(0) })])).toBe(1);
    expect(sentTo(me, [])).toBeUndefined();
  });
  test("off the one job that he left and nobody closed", () => {
    const left = { people: ["ife", "bram"], status: "left_site" } as const;
    expect(leftOpen(me, [job(1, left), job(2, { people: ["bram"] })])).toBe(1);
    expect(leftOpen(me, [job(1, { ...left, people: ["ife"] })])).toBeUndefined();
    expect(leftOpen(me, [job(1, left), job(2, left)])).toBeUndefined();
    expect(leftOpen(me, [job(1, { ...left, status: "done" })])).toBeUndefined();
    expect(leftOpen(me, [job(1, { ...left, opened: hoursAgo(-1) })])).toBeUndefined();
    expect(leftOpen(me, [job(1, { ...left, opened: hoursAgo(0) })])).toBe(1);
  });
});

const names = fc.record({
  sites: fc.subarray(["A", "B"]),
  tags: fc.subarray(["X-1", "X-2", "P-1"]),
  places: fc.subarray(["Room 1", "Room 2"]),
});
const jobs = fc
  .array(
    fc.record({
      site: fc.constantFrom("A", "B", null),
      equipment: fc.constantFrom("X-1", "X-2", null),
      tags: fc.subarray(["P-1", "P-2"]),
      places: fc.subarray(["Room 1", "Room 2"]),
      status: fc.constantFrom("open", "on_site", "done"),
      people: fc.subarray(["bram", "ife"]),
      assigned: fc.constantFrom("bram", "ife"),
      hours: fc.integer({ min: -4, max: 30 }),
    }),
    { maxLength: 6 },
  )
  .map((some) =>
    // no two are opened in the same moment
    some.map(({ hours, ...one }, index) =>
      job(index + 1, { ...one, opened: hoursAgo(hours + index / 10) }),
    ),
  );

test("whatever is named, the answer is a job that it fits, and the same in whatever order they stand", () => {
  fc.assert(
    fc.property(
      jobs,
      names,
      fc.option(fc.constantFrom(1, 2, 3)),
      fc.nat(),
      (all, named, hand, turn) => {
        const question = asked({ named, hand: hand ?? undefined });
        const found = route(question, all);
        const by = all.length === 0 ? 0 : turn % all.length;
        const turned = route(question, [...all.slice(by), ...all.slice(0, by)]);
        const sorted = (one: typeof found) =>
          one.kind === "ask" ? { ...one, candidates: [...one.candidates].sort() } : one;
        expect(sorted(turned)).toEqual(sorted(found));
        const meant =
          found.kind === "ask"
            ? found.candidates
            : found.kind === "job" && found.by === "name"
              ? [found.job]
              : [];
        for (const number of meant) {
          const one = all.find((other) => other.job === number);
          // never a job of a site that was not named
          if (named.sites.length > 0) expect(named.sites).toContain(one?.site);
          const hit =
            (one?.site !== null && named.sites.includes(one?.site ?? "")) ||
            named.tags.some((tag) => tag === one?.equipment || one?.tags.includes(tag)) ||
            named.places.some((place) => one?.places.includes(place));
          expect(hit).toBe(true);
        }
        if (found.kind === "ask") {
          expect(new Set(found.candidates).size).toBe(found.candidates.length);
          expect(found.candidates.length).toBeGreaterThan(1);
          // of a unit never two visits
          const units = found.candidates.map((number) => {
            const one = all.find((other) => other.job === number);
            return `${one?.site} ${one?.equipment}`;
          });
          expect(new Set(units).size).toBe(units.length);
        }
      },
    ),
  );
});

describe("a job in hand", () => {
  let count = 0;
  const grip = (kind: Grip["kind"], of: number, hours: number): Grip => ({
    ...{ kind, job: of, instant: now + hours * 3600_000, message: `m${count++}` },
  });
  const held = (hours: number, ...grips: readonly Grip[]) => inHand(grips, now + hours * 3600_000);
  test("is the last one taken", () => {
    expect(held(1)).toBeUndefined();
    expect(held(1, grip("take", 1, 0))).toBe(1);
    expect(held(3, grip("take", 1, 0), grip("take", 2, 2))).toBe(2);
    expect(held(0, grip("take", 1, 0))).toBe(1);
  });
  test("named in passing counts only where nothing is held", () => {
    expect(held(3, grip("take", 1, 0), grip("name", 2, 1))).toBe(1);
    expect(held(3, grip("name", 2, 1))).toBe(2);
    expect(held(3, grip("name", 2, 1), grip("name", 3, 2))).toBe(2);
  });
  test("is let go by leaving it, not by leaving another", () => {
    expect(held(3, grip("take", 1, 0), grip("drop", 1, 1))).toBeUndefined();
    expect(held(3, grip("take", 1, 0), grip("drop", 2, 1))).toBe(1);
    expect(held(3, grip("take", 1, 0), grip("drop", 1, 1), grip("name", 2, 2))).toBe(2);
  });
  test("is that of its own time for a message that comes late", () => {
    const grips = [grip("take", 1, 0), grip("take", 2, 2)];
    expect(inHand(grips, now + 3600_000)).toBe(1);
    expect(inHand([...grips].reverse(), now + 3 * 3600_000)).toBe(2);
  });
  test("of two words of one moment is the later's, by message, whichever came first", () => {
    const [first, second] = [grip("take", 1, 0), grip("take", 2, 0)];
    for (const grips of [
      [first, second],
      [second, first],
    ])
      expect(inHand(grips, now)).toBe(2);
  });
  test("is nobody's once nobody spoke of it for sixteen hours", () => {
    const taken = grip("take", 1, 0);
    expect(inHand([taken], now + holdsForMs)).toBe(1);
    expect(inHand([taken], now + holdsForMs + 1)).toBeUndefined();
    // a word about it holds it longer; one after that names it anew
    expect(held(20, taken, grip("name", 1, 10))).toBe(1);
    expect(held(18, taken, grip("name", 2, 17))).toBe(2);
    expect(held(17, taken, grip("name", 2, 16))).toBe(1);
    expect(holdsForMs).toBe(16 * 3600_000);
  });
});
