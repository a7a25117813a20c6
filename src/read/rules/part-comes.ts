import { dueWords } from "../due-time.ts";
import type { Item } from "../item.ts";
import { role } from "../word.ts";

const mounted =
  /^(?:motor|motors|board|capacitor|cap|compressor|contactor|valve|belt|sensor|drier|dryer|wheel|blade|relay|fuse|fuses|transformer|module|thermistor|filter|filters|heater|heaters|txv|igniter|coupling|impeller|seal)$/;

/** A part that is mounted in a machine. */
export const isMounted = (item: Item | undefined): boolean =>
  item?.text.split(" ").some((word) => mounted.test(word)) === true ||
  (/^(?:fan|blower|inducer)$/.test(item?.text ?? "") && item?.label !== undefined);

/** "board due friday", "part due tomorrow 8am": it comes; "filter change due friday" is work to do. */
export function comesDue(items: readonly Item[], i: number): boolean {
  if (comesOn(items, i)) return true;
  if (items[i]?.text !== "due" || items[i + 1]?.text === "for") return false;
  const before = items.slice(Math.max(0, i - 3), i);
  return (
    dueWords({ items: items.slice(i), plain: "" }) !== undefined &&
    !before.some(({ text, roles }) => (roles & role.not) !== 0 || upkeep.test(text))
  );
}

const arrives = /^(?:in|comes|coming|arrives|arriving|lands|landing|ships)$/;

/** "comp in friday morning", "board comes thursday": a part, and straight behind it the day. */
function comesOn(items: readonly Item[], i: number): boolean {
  const from = /^(?:is|will|be|should)$/.test(items[i - 1]?.text ?? "") ? i - 1 : i;
  const part = items[from - 1];
  const isPart = isMounted(part) || /^(?:comp|drive|inverter|txv)$/.test(part?.text ?? "");
  if (!arrives.test(items[i]?.text ?? "") || !isPart) return false;
  const begins = items[from - 2]?.text ?? ",";
  if (!/^(?:[,.;]|and|the|new|but|ok|your|his|her)$/.test(begins)) return false;
  const doing = items.slice(Math.max(0, from - 4), from - 1);
  if (doing.some(({ text }) => /^(?:put|putting|get|getting|set|have|install|fit)/.test(text)))
    return false;
  const day = dueWords({ items: items.slice(i + 1, i + 4), plain: "" })?.first;
  return day !== undefined && items.indexOf(day) <= i + 2;
}

/** "txv is 2 days out", "heater monday now": a part ahead, and behind it nothing but when it comes. */
export function comesLater(items: readonly Item[], from: number, i: number, to: number): boolean {
  if (!/^(?:out|now)$/.test(items[i]?.text ?? "") || i !== to - 1) return false;
  const begins = items.findIndex(
    (item, at) => at > from && at < i && dueWords({ items: [item], plain: "" }) !== undefined,
  );
  const day = begins < 0 ? items.slice(i - 2, i) : items.slice(begins, i);
  const due = dueWords({ items: day, plain: "" });
  const ahead = items[(due === undefined ? 0 : items.indexOf(due.first)) - 1];
  const part =
    ahead?.text === "is" || ahead?.text === "are" ? items[items.indexOf(ahead) - 1] : ahead;
  return (
    due !== undefined && (isMounted(part) || /^(?:comp|drive|inverter|txv)$/.test(part?.text ?? ""))
  );
}

export const toCome = /^(?:due|overdue|scheduled|coming|tomorrow|next|needed|interval|reminder)$/;
const upkeep =
  /^(?:change|changes|cleaning|clean|maintenance|pm|inspection|service|check|test|calibration|report|payment|rent|permit|visit|when|if)$/;
