import { sentence } from "./wording.ts";

const answers = {
  passed: "Passed to the safety person, to nobody else. It stands on no job.",
  nobody: "No safety person is set up here, so it was passed to nobody: tell yours directly.",
  empty: "Near miss: say in a line what happened. It goes to the safety person alone.",
} as const;

/** What is said to who told of a near miss. */
export function nearMissAnswer(outcome: keyof typeof answers): string {
  return answers[outcome];
}

/** What the safety person reads: his words and the time, no name. */
export function nearMissReport(words: string, time: string): string {
  return sentence(`Near miss told at ${time}: ${words}`);
}
