import { isStrongBreak, isWeakBreak } from "./breaks.ts";
import { classOf } from "./carrier.ts";
import { type Item, itemKind, newItem } from "./item.ts";

/** How something is that was named: what is said so of it says nothing of the figure before it. */
const states =
  /^(?:ok|okay|good|fine|off|out|down|dead|stuck|loose|burnt|burned|blown|gone|shut|stands|stopped|stops|wont|wouldnt|doesnt|isnt|cant|aint|never|tripped|trips|seized|locked|leaking|leaks|noisy|dirty|plugged|iced|frosted|faded|missing|normal|even|hums|smells|looks|seems|needs|stays|sits|starts|keeps)$/;
/** Behind "is" alone: "head low" may be a gauge's reading. */
const behindIs = /^(?:high|low|hot|cold|warm|up|bad|clean|clear|open|closed|running)$/;
/** Between a name and how it is. */
const small = /^(?:all|still|just|now|also|too|both|is|are|was|were|been|not|has)$/;

/** "ok", "still off", "is dead": does what follows a name tell how it is? */
export function tellsHow(items: readonly Item[], at: number): boolean {
  let i = at;
  while (small.test(items[i]?.text ?? "") && i < at + 2) i++;
  const item = items[i];
  if (item === undefined || item.kind === itemKind.number) return false;
  const said = i > at || items[at - 1]?.apostrophe === true;
  if (!states.test(item.text) && !(said && behindIs.test(item.text))) return false;
  return items[i + 1]?.kind !== itemKind.number;
}

/** Where the words of the clause before `end` begin. */
function clauseFrom(items: readonly Item[], end: number): number {
  for (let i = end - 1; i >= 0; i--) {
    const item = items[i];
    if (item === undefined || isStrongBreak(item) || isWeakBreak(item)) return i + 1;
  }
  return 0;
}

/** Has the figure that ends at `end` been named by what stands before it? */
function namedBefore(items: readonly Item[], end: number): boolean {
  let i = end - 1;
  while (items[i]?.kind === itemKind.number || items[i]?.text === "/") i--;
  return i >= clauseFrom(items, end) && /[LQURPN]/.test(classOf(items[i]));
}

function endsValue(items: readonly Item[], i: number): boolean {
  const item = items[i];
  return item?.kind === itemKind.number && item.owner === undefined;
}

function stopsHere(items: readonly Item[], i: number): boolean {
  const item = items[i];
  if (item === undefined || !endsValue(items, i - 1)) return false;
  const kind = classOf(item);
  if (kind === "S" || kind === "P") return tellsHow(items, i + 1);
  if (kind !== "" && "LQUN".includes(kind)) return tellsHow(items, i + 1) && namedBefore(items, i);
  return false;
}

/** "sup 55 amps good", "head 340 fan 2 dead": puts the comma that nobody typed where another clause begins. */
export function unsaidStops(items: Item[]): void {
  for (let i = items.length - 1; i > 0; i--) {
    if (!stopsHere(items, i)) continue;
    const [before, head] = [items[i - 1], items[i]];
    if (head?.kind === itemKind.unit) head.kind = itemKind.word;
    const at = before?.to ?? 0;
    items.splice(i, 0, newItem(itemKind.sign, at, at, ","));
  }
}
