import type { Store } from "../record/store.ts";
import type { Memory } from "./memory.ts";

/** A bot at work on a store. `salt` gives fresh random text for each thing that is hashed. */
export interface Bot {
  readonly store: Store;
  readonly memory: Memory;
  readonly salt: () => string;
  /** the board is kept by whoever runs the bot, not put out with every message */
  readonly boardElsewhere?: true;
  /** readings of one burst, or of an outage, get one answer */
  readonly answersTogether?: true;
}
