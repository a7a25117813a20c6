import type { Understood, UnitHabit } from "../model.ts";

/**
 * What earlier messages of the same job leave behind for the next one. Folded from what was
 * understood, never from text, so a correction or an undo changes it too.
 */
export interface Context {
  readonly units: UnitHabit;
  /** ISO, the moment of the message being read; without it a time stays as said */
  readonly at?: string;
}

/** The context of a job's first message. */
export function startContext(units: UnitHabit, at?: string): Context {
  return at === undefined ? { units } : { units, at };
}

/** The context after one more message. */
export function follow(context: Context, _understood: Understood): Context {
  return context;
}
