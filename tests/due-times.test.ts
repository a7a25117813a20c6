import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { startContext } from "../src/read/context.ts";
import { read } from "../src/read/read.ts";

const weekdays = ["sunday", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday"];

function due(text: string, at: string): readonly [string | undefined, string | undefined] {
  const { statements } = read(text, startContext("us", at));
  const part = statements.find(({ kind }) => kind === "part");
  return part?.kind === "part" ? [part.due, part.due_on] : [undefined, undefined];
}

describe("when a part comes, as said and as a day", () => {
  // 2026-05-12 was a Tuesday
  const tuesday = "2026-05-12T10:00:00-05:00";
  it.each([
    ["drive ordered, part 60-12E4, due thursday", "thursday", "2026-05-14"],
    ["ordered a contactor, eta 2 days", "2 days", "2026-05-14"],
    ["need a txv, should be here next tuesday", "next tuesday", "2026-05-19"],
    ["compressor ordered, due nov 30", "nov 30", "2026-11-30"],
    ["ordered fan motor 2 weeks out", "2 weeks", "2026-05-26"],
    ["need 4 filters by fri", "fri", "2026-05-15"],
    ["ordered the board, next week", "next week", undefined],
    ["contactor ordered, here a week from friday", "a week from friday", undefined],
    ["ordered drive sat 43", undefined, undefined],
  ])("%s", (text, said, day) => {
    expect(due(text, tuesday)).toEqual([said, day]);
  });

  it("counts from the day where the technician is", () => {
    expect(due("contactor ordered, due tomorrow", "2026-05-12T23:30:00-05:00")[1]).toBe(
      "2026-05-13",
    );
    expect(due("contactor ordered, due tomorrow", "2026-05-12T00:30:00+02:00")[1]).toBe(
      "2026-05-13",
    );
  });

  it("gives no day where the message has no moment", () => {
    const { statements } = read("drive ordered, due thursday", startContext("us"));
    expect(statements[0]).toMatchObject({ kind: "part", due: "thursday" });
    expect(statements[0]).not.toHaveProperty("due_on");
  });

  // the calendar of the platform's own Date as the second opinion
  it("a weekday is the next such day ahead, whatever the day", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 4000 }), fc.constantFrom(...weekdays), (days, name) => {
        const start = Date.UTC(2024, 0, 1 + days, 12);
        const at = new Date(start).toISOString().replace(/\.\d+Z$/, "+00:00");
        const day = due(`drive ordered, due ${name}`, at)[1] ?? "";
        const ahead = (Date.parse(`${day}T12:00:00Z`) - start) / 86_400_000;
        expect(weekdays[new Date(`${day}T12:00:00Z`).getUTCDay()]).toBe(name);
        expect(ahead).toBeGreaterThanOrEqual(0);
        expect(ahead).toBeLessThanOrEqual(7);
      }),
    );
  });
});
