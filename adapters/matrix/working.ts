import type { Door } from "../chat-platform.ts";
import type { Connection } from "./client.ts";
import type { MatrixConfig } from "./config.ts";
import type { Crew } from "./crew.ts";
import type { KeyFile } from "./keys/key-file.ts";
import type { Machine } from "./keys/machine.ts";
import type { Rooms } from "./rooms.ts";

/** All that the parts of a connected bot work with. */
export interface Working {
  readonly config: MatrixConfig;
  readonly crew: Crew;
  readonly door: Door;
  readonly me: string;
  readonly connection: Connection;
  readonly file: KeyFile;
  readonly machine: Machine;
  readonly rooms: Rooms;
  /**
   * Outbox keys of own posts that the first round found, with their ids: a store that was brought back
   * from a backup does not know of them, nor does the server know the keys of another device again.
   */
  readonly standing: Map<string, string>;
  /** the last message seen in each thread, for clients that show none */
  readonly lastInThread: Map<string, string>;
}
