import type { FileNote, OpenQuestion, Reading, Role, Span, Statement } from "../model.ts";

/** What opened a job. `title` holds what could be told apart in "New job: …". */
export interface Opening {
  readonly site: string | null;
  readonly equipment: string | null;
  readonly complaint?: string;
  readonly assigned?: string;
  /** who was sent along */
  readonly second?: string;
  readonly channel: string;
  readonly thread?: string;
  /** one of a list of calls: what is said under their message is of none of them alone */
  readonly listed?: true;
}

/** A reading of an earlier entry that no longer stands. */
export interface Replaces {
  /** reading id: job.place.index */
  readonly was: string;
  /** its successor: its place in this entry, or the id of a reading elsewhere */
  readonly by?: number | string;
}

/** What one message added to a job. */
export interface NoteFacts {
  readonly kind: "note";
  readonly role: Role;
  readonly opens?: Opening;
  readonly readings: readonly Reading[];
  readonly statements: readonly Statement[];
  readonly unread: readonly Span[];
  /** the one question that was put back */
  readonly asked?: string;
  /** what that question left open, so that the answer completes it */
  readonly open?: OpenQuestion;
  readonly files: readonly FileNote[];
  readonly replaces: readonly Replaces[];
  /** id of the message whose earlier entry this one stands for */
  readonly edits?: string;
}

/** A message was removed by its author. */
export interface DeleteFacts {
  readonly kind: "delete";
  readonly message: string;
}

/** The last entries of this person were taken back. */
export interface UndoFacts {
  readonly kind: "undo";
  readonly places: readonly number[];
}

/** A doubtful reading was answered: it stands as said, or it does not stand. */
export interface AnswerFacts {
  readonly kind: "answer";
  readonly readings: readonly string[];
  readonly stands: boolean;
}

/** A message was filed on the wrong job and now belongs to another. */
export interface MoveFacts {
  readonly kind: "move";
  readonly message: string;
  readonly to: number;
}

/** A clock came due and asked, or was overtaken. */
export interface ClockFacts {
  readonly kind: "clock";
  readonly clock: string;
  readonly outcome: "asked" | "missed";
}

export type Facts = NoteFacts | DeleteFacts | UndoFacts | AnswerFacts | MoveFacts | ClockFacts;

/** One line of a job's record, read back with the words that still exist. */
export interface Entry {
  readonly job: number;
  readonly place: number;
  /** ISO with offset: the message's time */
  readonly at: string;
  /** the person field of the message, or a stand-in where the name was erased */
  readonly who: string;
  readonly platform: string;
  readonly message: string;
  /** where it was written; absent where no message stands behind the entry */
  readonly channel?: string;
  readonly thread?: string;
  /** the message's words; absent once erased */
  readonly text?: string;
  readonly facts: Facts;
}

/** The newest shape of `facts` that this program writes. */
export const entryVersion = 1;
