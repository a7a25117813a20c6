import { isNitrogen } from "../nitrogen-name.ts";
import type { Note, Rule } from "../note.ts";

/** "nitro 350 pipe 81": a pressure of nitrogen, and so what stands in the circuit. */
export const nitrogenRule: Rule = {
  name: "nitrogen <pressure>",
  heads: "nitrogen|n2|nitro",
  apply: (note) => {
    const said = note.items.find(isNitrogen);
    const pressure = note.readings.some(
      (reading) =>
        reading.quantity === "pressure" &&
        reading.at === undefined &&
        reading.rating === undefined &&
        reading.earlier !== true,
    );
    if (said === undefined || !pressure || note.holds.question || isTold(note)) return;
    note.statements.push({
      kind: "action",
      action: "nitrogen_in",
      circuit: "nitrogen",
      said: note.text.slice(said.from, said.to),
      spans: [[said.from, said.to]],
      rule: nitrogenRule.name,
    });
  },
};

/** Told already, let out, or nothing of this moment. */
function isTold(note: Note): boolean {
  return note.statements.some(
    (one) =>
      one.kind === "open_job" ||
      one.kind === "undo" ||
      one.kind === "question" ||
      (one.kind === "action" && (one.action === "nitrogen_in" || one.action === "nitrogen_out")),
  );
}
