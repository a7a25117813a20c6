import type { Arrival } from "../src/bot.ts";
import type { Message } from "../src/model.ts";
import type { InboxRow } from "../src/record/inbox.ts";
import type { OutboxRow } from "../src/record/outbox.ts";
import type { Log } from "./serve/log.ts";
import type { Person } from "./serve/people.ts";

/** What the program gives a platform to work with. All of it is synchronous and safe to call at any time. */
export interface Door {
  /**
   * Keeps a message, its files' bytes and the platform's place in one transaction. Only after it
   * has returned may the platform be told that the message arrived; where it throws, tell it nothing.
   */
  readonly deliver: (arrival: Arrival) => "new" | "repeated";
  readonly cursor: (conversation: string) => string | undefined;
  readonly moveCursor: (conversation: string, value: string) => void;
  /** a message of this platform as it was kept */
  readonly kept: (id: string) => InboxRow | undefined;
  /** messages kept of a channel since an ISO time, oldest first: to see what was edited or removed meanwhile */
  readonly keptSince: (channel: string, since: string) => readonly InboxRow[];
  /** what the bot posted under a remote id */
  readonly posted: (remoteId: string) => OutboxRow | undefined;
  /** whether a row is the newest answer to its person in its channel and thread */
  readonly isLatest: (row: OutboxRow) => boolean;
  /** whether what the answer to a message asked about still waits for a word */
  readonly stillAsks: (id: string) => boolean;
  /** a sentence for the operator: logged, and said in the operator's channel where there is one */
  readonly tell: (key: string, sentence: string) => void;
  /** a sentence where something was sent, once: what was lost there is not taken for filed */
  readonly sayThere: (
    key: string,
    place: Pick<Message, "channel" | "thread">,
    sentence: string,
  ) => void;
  /** somebody removed the board: post it anew soon */
  readonly boardGone?: () => void;
  /** the board as it stands now */
  readonly board?: () => string;
  /** where the record is kept */
  readonly storePath?: string;
  /** the connection's state, for readiness */
  readonly connected: (is: boolean) => void;
  /** the platform can't go on (revoked token): end the program with its own exit code */
  readonly fatal: (sentence: string) => void;
  readonly log: Log;
  readonly now: () => number;
}

/** One piece of an outbox row as it goes out. */
export interface Part {
  /** the row's id, "#1" and so on after the first: the idempotency key */
  readonly key: string;
  /**
   * `text` is posted, or replaces the post `replaces`; `upload` brings bytes to the platform and
   * shows nothing; `share` shows the file uploaded by the part before it; `pin` pins the part before it.
   */
  readonly kind: "text" | "upload" | "share" | "pin";
  /** of the row: boards get their own form */
  readonly of: OutboxRow["kind"];
  readonly channel: string;
  /** id of the thread's first message */
  readonly thread?: string;
  readonly text: string;
  readonly file?: { readonly name: string; readonly type: string; readonly sha256: string };
  /** remote id of the post to change in place */
  readonly replaces?: string;
  /** body as it first went out, where the platform asked to keep it */
  readonly body?: string;
  /** remote id once it is out; of an `upload`, whatever its `share` needs */
  readonly remote?: string;
}

export interface SendContext {
  /** remote id of the part before this one in its row */
  readonly before?: string;
  /** bytes of an `upload` part */
  readonly bytes?: Uint8Array;
  /** stores the body before the request, so that a resend is byte for byte the same */
  readonly keepBody: (body: string) => void;
}

/** What became of one part. */
export type Outcome =
  | { readonly kind: "sent"; readonly remote: string }
  /** certainly not posted */
  | { readonly kind: "later"; readonly retryMs: number; readonly why: string }
  /** may be posted or not: `find` is asked before it is sent again */
  | { readonly kind: "unclear"; readonly why: string }
  /** what it should replace no longer exists: post it anew */
  | { readonly kind: "gone"; readonly why: string }
  /** final, with what to do about it */
  | { readonly kind: "refused"; readonly why: string };

export type Found =
  | { readonly kind: "found"; readonly remote: string }
  /** not there, or sending again under the same key is harmless */
  | { readonly kind: "absent" }
  | { readonly kind: "unclear"; readonly why: string };

/** One line of `serve --check`. */
export interface CheckLine {
  readonly ok: boolean;
  readonly says: string;
}

/** A chat platform, opened with its configuration: carries messages in and answers out, nothing more. */
export interface ChatPlatform {
  readonly name: string;
  /** longest text of one post, in characters */
  readonly longest: number;
  /** how long the platform counts a text; absent: its characters */
  readonly lengthOf?: (text: string) => number;
  /** where the board is posted, by the name that messages carry */
  readonly boardChannel?: string;
  readonly operatorChannel?: string;
  /** shortest time between two edits of the board, ms */
  readonly boardEveryMs: number;
  /** how long after an attempt a post may still be missing where `find` looks, ms; absent: 0 */
  readonly settleMs?: number;
  /** Connects and begins to deliver; says in one line what it joined. Never rejects for a server that is away. */
  readonly start: (door: Door) => Promise<string>;
  readonly send: (part: Part, context: SendContext) => Promise<Outcome>;
  readonly find: (part: Part, since: number, context: SendContext) => Promise<Found>;
  /** Ends cleanly: after it resolves nothing is delivered any more. */
  readonly stop: () => Promise<void>;
  /** called when all that waited was worked on and sent */
  readonly rest?: () => void;
  /** resolves when the person or the platform ends the chat */
  readonly ended?: Promise<void>;
  /** Looks whether tokens and permissions are right, without sending anything. */
  readonly check: () => Promise<readonly CheckLine[]>;
}

/** A platform as the configuration file may name it. */
export interface ChatKind {
  readonly name: string;
  /** Reads its own part of the configuration; each problem is a sentence with its place. */
  readonly configure: (raw: unknown, people: readonly Person[]) => Configured;
}

export type Configured =
  | { readonly ok: true; readonly platform: ChatPlatform }
  | { readonly ok: false; readonly problems: readonly string[] };
