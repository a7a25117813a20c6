import { endsClause } from "./breaks.ts";
import { type Item, itemKind } from "./item.ts";

/** Parts of one kind that are told one behind another, as they are called in a row and one by one. */
const names: ReadonlyMap<string, string> = new Map([
  ["heaters", "heater"],
  ["elements", "element"],
  ["caps", "cap"],
  ["capacitors", "capacitor"],
  ["comps", "compressor"],
  ["compressors", "compressor"],
  ["fans", "fan"],
  ["motors", "motor"],
  ["pumps", "pump"],
  ["coils", "coil"],
  ["solenoids", "solenoid"],
  ["probes", "probe"],
  ["sensors", "sensor"],
  ["thermistors", "thermistor"],
]);
const verb = /^(?:is|was|reads|read|shows|has|at|=)$/;

/** Which of the items are "1", "2", "3" of a row that counts up, each at the head of its clause with its value behind. */
function counted(items: readonly Item[], from: number): readonly number[] {
  const found: number[] = [];
  for (let at = from; at < items.length - 2; at++) {
    const [before, item, is, value] = [items[at - 1], items[at], items[at + 1], items[at + 2]];
    const begins = at === from || (before !== undefined && endsClause(before));
    const bare = item?.kind === itemKind.number && item.unit === undefined && !item.fraction;
    if (!begins || !bare || item.text !== String(found.length + 1)) continue;
    const told = value?.kind === itemKind.number || value?.kind === itemKind.over;
    if (told && verb.test(is?.text ?? "")) found.push(at);
  }
  return found;
}

/** "heaters: 1 is 27 ohms, 2 is OL, 3 is 27": the small numbers are which one, and measure nothing. */
export function rowsByNumber(items: readonly Item[], plain: string): void {
  items.forEach((item, i) => {
    const name = names.get(plain.slice(item.from, item.to));
    if (name === undefined) return;
    const from = /^[:,-]$/.test(items[i + 1]?.text ?? "") ? i + 2 : i + 1;
    const rows = counted(items, from);
    if (rows.length < 2 || rows[0] !== from) return;
    rows.forEach((at, order) => {
      const row = items[at];
      if (row === undefined) return;
      row.kind = itemKind.subject;
      row.subject = `${name} ${order + 1}`;
    });
  });
}
