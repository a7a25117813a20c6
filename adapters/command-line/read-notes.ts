import { z } from "zod";
import type { Understood } from "../../src/model.ts";
import { type Context, follow, startContext } from "../../src/read/context.ts";
import { explain } from "../../src/read/explain.ts";
import { read } from "../../src/read/read.ts";
import type { Exit, Given, Io } from "./command.ts";
import { explained } from "./explained.ts";
import { isoTime, lineId, unitHabit } from "./input-shapes.ts";
import { answerLines } from "./lines.ts";

const shape = z.object({
  id: lineId.optional(),
  text: z.string(),
  before: z.array(z.string()).optional(),
  units: unitHabit.optional(),
  at: isoTime.optional(),
});

function readLine(line: z.infer<typeof shape>): unknown {
  const start = startContext(line.units ?? "us", line.at);
  const context = (line.before ?? []).reduce<Context>(
    (known, text) => follow(known, read(text, known)),
    start,
  );
  return { id: line.id ?? null, ...shown(read(line.text, context)) };
}

function shown({ readings, statements, unread, ask, skipped }: Understood): object {
  return { readings, statements, unread, ask, skipped };
}

/** Reads the words given, or else the lines on standard input. */
export async function readNotes(given: Given, io: Io): Promise<Exit> {
  if (given.words.length === 0) return answerLines(io, shape, readLine);
  const units = unitHabit.optional().safeParse(given.options.units);
  if (!units.success) {
    io.complain("--units is us or si.");
    return 2;
  }
  if (given.options.verbose === true) return sayWhy(given.words.join(" "), units.data, io);
  const line = { id: "1", text: given.words.join(" ") };
  io.line(
    JSON.stringify(readLine(units.data === undefined ? line : { ...line, units: units.data })),
  );
  return 0;
}

function sayWhy(text: string, units: "us" | "si" | undefined, io: Io): 0 {
  for (const line of explained(explain(text, startContext(units ?? "us")), text)) io.line(line);
  return 0;
}
