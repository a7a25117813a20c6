import type { Arrival, Bot } from "../src/bot.ts";

/** What a chat platform is given to work with. */
export interface Host {
  readonly bot: Bot;
  /** ISO with offset, the moment it is called */
  readonly now: () => string;
  /**
   * Keeps what arrived; when this has returned, the platform may be told so. Work on it and the
   * answers follow by themselves. Throws where the store refuses: then tell nobody.
   */
  readonly accept: (arrival: Arrival) => void;
  /** a line for the operator, without message text */
  readonly log: (line: string) => void;
}

/** A platform that runs. */
export interface Running {
  /** sends what waits in the outbox; called after each piece of work and now and then */
  readonly deliver: () => Promise<void>;
  readonly stop: () => Promise<void>;
  /** ends by itself when the person or the platform ends it */
  readonly ended: Promise<void>;
}

/** One chat platform: its folder and a line in `list.ts`. */
export interface Platform {
  readonly name: string;
  /** `config` is what stands under its name in the configuration file, not checked yet */
  readonly start: (host: Host, config: unknown) => Promise<Running | ConfigProblem>;
}

/** Why it cannot start, in one sentence that says what to do. */
export interface ConfigProblem {
  readonly problem: string;
}
