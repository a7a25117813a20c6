import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { takeFor } from "./recast.ts";

const motor = /^(?:comp|comps|compressor|compressors|motor|winding|windings|stator)\b/;
const module = /^(?:diode|diodes|igbt|igbts|module|ipm|bridge|rectifier|inverter|board)$/;
/** Ohms of an inverter's motor at most. Common practice, no source. */
const mostOhms = 30;

const ofMotor = ({ text, subject, label }: Item): boolean =>
  motor.test(text) ||
  /^(?:compressor|motor)\b/.test(subject ?? "") ||
  label?.quantity === "winding_resistance";

function isPair({ points }: Draft): boolean {
  const [pair, ...more] = points ?? [];
  return (
    more.length === 0 && pair?.length === 2 && pair.every((one) => /^(?:[UVW]|T\d)$/.test(one))
  );
}

/** "compressor u-v 1.02 v-w 1.02 w-u 1.03", "comp windings 1.02 1.02 1.03" behind a module's diodes: the motor's ohms. */
export function motorBehindModule(
  drafts: readonly Draft[],
  items: readonly Item[],
  { readings }: Context,
): void {
  if (readings.at(-1)?.quantity !== "diode_drop") return;
  if (items.some(({ text }) => module.test(text)) || !items.some(ofMotor)) return;
  let led = false;
  drafts.forEach((draft, order) => {
    const from = drafts[order - 1]?.index ?? -1;
    const between = items.slice(from + 1, draft.index);
    const named = draft.named === "winding_resistance" || between.some(ofMotor);
    const row = between.every(({ kind, text }) => kind === itemKind.points || /^[,/]$/.test(text));
    led = named || (led && row);
    const bare = draft.unit === undefined && draft.rating === undefined && draft.value < mostOhms;
    const free = draft.named === undefined || draft.named === "winding_resistance";
    if (led && bare && free && (isPair(draft) || draft.points === undefined))
      takeFor(draft, "winding_resistance", "ohm");
  });
}
