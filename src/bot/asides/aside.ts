import type { Message } from "../../model.ts";
import type { Store } from "../../record/store.ts";
import type { Plan } from "../file-note.ts";
import type { Memory } from "../memory.ts";

/** What an aside may look at. */
export interface Known {
  readonly store: Store;
  readonly memory: Memory;
}

/** A way of saying that is no report of the machine; undefined where the message is none of it. */
export type Aside = (known: Known, message: Message) => Plan | undefined;
