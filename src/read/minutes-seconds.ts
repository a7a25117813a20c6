import { type Item, itemKind } from "./item.ts";

/** What is told by how long it takes, so that a bare figure behind its minutes is seconds. */
const timed = /^(?:harvest|harvests|freeze|freezes|cycle|cycles|defrost|runtime)$/;

/** "harvest 3 min 20": minutes and seconds of one time. */
export function minutesSeconds(items: Item[]): void {
  for (let at = items.length - 2; at > 0; at--) {
    const [before, minutes, seconds, next] = items.slice(at - 1, at + 3);
    if (minutes?.kind !== itemKind.number || minutes.unit?.figure !== "min") continue;
    if (!timed.test(before?.text ?? "") || seconds?.kind !== itemKind.number) continue;
    const whole = Number.isInteger(seconds.value) && seconds.value > 0 && seconds.value < 60;
    const bare = seconds.unit === undefined || seconds.unit.figure === "s";
    const ends =
      next === undefined ||
      next.kind === itemKind.line ||
      /^(?:[,.;]|now|today|again|then)$/.test(next.text);
    if (!whole || !bare || !ends) continue;
    minutes.value += seconds.value / 60;
    minutes.to = seconds.to;
    items.splice(at + 1, 1);
  }
}

/** Behind these the figure may be what was read after so many hours. */
const later = /^(?:after|at|in|hour|within)$/;
/** What may stand behind a length of time; anything else takes the figure for itself. */
const endsTime = /^(?:[,.;!]|on|total|each|now|today|here|there|and|then|on site|onsite)$/;

/** "2h 15 on site", "ran 3 hrs 20": minutes behind hours are of one time. */
export function hoursMinutes(items: Item[]): void {
  for (let at = items.length - 2; at >= 0; at--) {
    const [hours, minutes, next] = items.slice(at, at + 3);
    if (hours?.kind !== itemKind.number || hours.unit?.figure !== "h") continue;
    if (minutes?.kind !== itemKind.number || minutes.unit !== undefined) continue;
    if (hours.spoken || minutes.spoken || !/^\d{2}$/.test(minutes.text)) continue;
    const whole = Number.isInteger(hours.value) && minutes.value % 5 === 0 && minutes.value < 60;
    const ends = next === undefined || next.kind === itemKind.line || endsTime.test(next.text);
    if (!whole || !ends || later.test(items[at - 1]?.text ?? "")) continue;
    hours.value += minutes.value / 60;
    hours.to = minutes.to;
    items.splice(at + 1, 1);
  }
}
