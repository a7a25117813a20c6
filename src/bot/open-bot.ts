import type { Store } from "../record/store.ts";
import type { Bot } from "./desk.ts";
import { remember } from "./memory.ts";

/** The bot on a store, as far as showing, exporting and importing need it; the reader is not loaded for it. */
export function openBot(store: Store, salt: () => string): Bot {
  return { store, salt, memory: remember(store) };
}
