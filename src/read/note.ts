import type { OpenQuestion, Reading, Span, Statement } from "../model.ts";
import type { Context } from "./context.ts";
import type { Item } from "./item.ts";

/** A statement before its spans and words are cut out. */
export type Say<S = Statement> = S extends Statement ? Omit<S, "said" | "spans" | "rule"> : never;

/** What a message holds, so that most rules need not look at it. */
export interface Holds {
  readonly number: boolean;
  readonly signs: boolean;
  readonly status: boolean;
  readonly undo: boolean;
  readonly aside: boolean;
  /** it ends with a question mark */
  readonly question: boolean;
  /** there is a question mark somewhere */
  readonly mark: boolean;
}

/** A time of day in a message, and the item that it stands at. */
export interface MeasuredAt {
  readonly index: number;
  readonly time: string;
}

/** One message on its way from text to what was understood. */
export interface Note {
  readonly text: string;
  readonly plain: string;
  readonly items: readonly Item[];
  readonly context: Context;
  readonly statements: Statement[];
  readonly readings: Reading[];
  readonly ask: string[];
  /** numbers that got no meaning */
  readonly unread: Span[];
  /** names of the rules that changed something, in order: for `explain` */
  readonly trace: string[];
  /** which lists of words have one that stands here, as `headsOf` tells it */
  readonly heads: Uint8Array;
  readonly holds: Holds;
  /** the times of day that the message gives for what it measured, and where */
  readonly measuredAt: MeasuredAt[];
  /** where in the text the figure of each reading begins */
  readonly figureAt: Map<Reading, number>;
  /** what `ask` leaves open */
  open: OpenQuestion | undefined;
}

/** A way of saying something that is no measurement; each in its own file, none knows another. */
export interface Rule {
  /** reads as its pattern */
  readonly name: string;
  /** words of which one must be there for the rule to be tried, "|" between them; any message where none are given */
  readonly heads?: string;
  /** what the message must hold for the rule to be tried */
  readonly needs?: "number" | "signs" | "status" | "undo" | "context" | "open" | "aside";
  readonly apply: (note: Note) => void;
}

/** Takes the items from `from` to before `to` for a statement. */
export function state(
  note: Note,
  rule: string,
  range: readonly [from: number, to: number],
  say: Say,
): void {
  const first = note.items[range[0]];
  const last = note.items[range[1] - 1];
  if (first === undefined || last === undefined) return;
  for (let i = range[0]; i < range[1]; i++) {
    const item = note.items[i];
    if (item !== undefined && item.owner === undefined) item.owner = rule;
  }
  note.statements.push({
    ...say,
    said: note.text.slice(first.from, last.to),
    spans: [[first.from, last.to]],
    rule,
  });
  note.trace.push(rule);
}
