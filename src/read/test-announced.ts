import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { testerVolts } from "./tester-volts.ts";

/** "PI test lead 1 500v", "pi test on lead 1 at 500": the test and its voltage, before anything is read. */
export function testAnnounced(draft: Draft, items: readonly Item[]): boolean {
  const volts = draft.unit === undefined || draft.unit.figure === "V";
  if (!volts || !testerVolts.has(draft.value)) return false;
  const numbers = items.filter(
    (item) => item.kind === itemKind.number && item.unit?.dimension !== "time",
  );
  if (numbers.length !== 1) return false;
  return items.some(
    (item, at) => /^(?:test|testing)$/.test(item.text) || beginsNow(items.slice(at, at + 3)),
  );
}

/** "megger going on comp 2", "meg on": the tester is put on, and shows nothing yet. */
function beginsNow([tester, ...behind]: readonly Item[]): boolean {
  if (!/^(?:meg|megs|megger|tester|megging)$/.test(tester?.text ?? "")) return false;
  return behind.some(({ text }) => /^(?:going|on|now|starting|started|hooked)$/.test(text));
}
