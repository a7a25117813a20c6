import type { webApi } from "@slack/bolt";
import type { Door } from "../chat-platform.ts";
import type { SlackConfig } from "./config.ts";
import type { Crew } from "./crew.ts";

/** All that the parts of a connected bot work with. */
export interface Working {
  readonly config: SlackConfig;
  readonly crew: Crew;
  readonly door: Door;
  readonly client: webApi.WebClient;
  readonly me: Me;
  /**
   * Outbox keys of our own posts that catching up found, with their ids: a store that was brought back
   * from a backup does not know of them.
   */
  readonly standing: Map<string, string>;
  /** true once it is told to stop */
  readonly stopping: () => boolean;
}

/** The bot's own ids, as `auth.test` gives them. */
export interface Me {
  readonly team: string;
  readonly userId: string;
  readonly botId: string;
}
