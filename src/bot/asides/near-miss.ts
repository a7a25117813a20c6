import { nearMissAnswer, nearMissReport } from "../../show/near-miss.ts";
import { nothingRead } from "../filing.ts";
import type { Aside } from "./aside.ts";

const said = /^\s*(?:report(?:ing)?\s+(?:a\s+)?)?near[\s-]?miss\b[\s:,.-]*(.*)$/is;

/** "Near miss: ...": told to the safety person alone; no job, board, sheet or log holds it. */
export const nearMiss: Aside = ({ memory }, message) => {
  const words = said.exec(message.text)?.[1]?.trim();
  if (words === undefined) return undefined;
  const channel = memory.settings.safety_channel;
  const base = { understood: nothingRead, opened: false, drafts: [] };
  if (words === "") return { ...base, says: nearMissAnswer("empty") };
  if (channel === undefined) return { ...base, says: nearMissAnswer("nobody") };
  const report = { channel, text: nearMissReport(words, message.at.slice(11, 16)) };
  return { ...base, says: nearMissAnswer("passed"), private: report };
};
