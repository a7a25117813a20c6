import type { CellReader } from "../column.ts";
import type { RowFacts } from "../file-kind.ts";

const plate =
  /^(\d{2,3})(?:[/-](\d{2,3}))?\s*v?\s*[/, -]\s*([13])\s*(?:ph)?\s*(?:[/, -]\s*[56]0\s*(?:hz)?)?$/i;

/** "460/3/60", "208-1-60": volts, phases, hertz as a plate writes them; two voltages are refused. */
export const plateSupply: CellReader = (cell) => {
  const [, volts = "", other, phase = ""] = plate.exec(cell.trim()) ?? [];
  if (volts !== "" && other === undefined) return { ok: true, value: [volts, phase] };
  const problem =
    volts === ""
      ? `"${cell}" is no supply; write volts, phases, hertz: 460/3/60`
      : `"${cell}" names two voltages; write the one that stands there: ${volts}/${phase}/60`;
  return { ok: false, problem };
};

/** The one cell becomes the two fields that judging knows; columns of their own go first. */
export function withSupply({ supply, ...facts }: RowFacts): RowFacts {
  if (!Array.isArray(supply)) return facts;
  const [volts, phases] = supply.map(Number);
  return { supply_V: volts, phases, ...facts };
}
