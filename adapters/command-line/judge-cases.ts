import { z } from "zod";
import { judgeNotes } from "../../src/bot/judge-notes.ts";
import type { EquipmentFacts, SiteFacts } from "../../src/model.ts";
import type { Exit, Io } from "./command.ts";
import { equipmentShape, limitsShape, siteShape } from "./facts-shapes.ts";
import { isoTime, lineId, unitHabit } from "./input-shapes.ts";
import { answerLines } from "./lines.ts";

const shape = z.object({
  id: lineId.optional(),
  equipment: equipmentShape.optional(),
  site: siteShape.optional(),
  limits: limitsShape.optional(),
  notes: z.array(z.string()),
  units: unitHabit.optional(),
  at: isoTime.optional(),
});

function judgeLine(line: z.infer<typeof shape>): unknown {
  const equipment: EquipmentFacts = line.equipment ?? {};
  const site: SiteFacts = line.site ?? {};
  const { notes, at, limits } = line;
  const units = line.units ?? "us";
  const { findings, diagnosis, next, cautions } = judgeNotes({
    equipment,
    site,
    notes,
    units,
    ...(limits === undefined ? {} : { limits }),
    ...(at === undefined ? {} : { at }),
  });
  return { id: line.id ?? null, findings, diagnosis, next, cautions };
}

/** Judges the cases on standard input. */
export const judgeCases = (io: Io): Promise<Exit> => answerLines(io, shape, judgeLine);
