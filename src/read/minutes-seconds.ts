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
