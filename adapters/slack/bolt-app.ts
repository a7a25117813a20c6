import { App, type Logger, LogLevel, type Receiver } from "@slack/bolt";
import type { Log } from "../serve/log.ts";
import type { Me } from "./working.ts";

/**
 * Bolt as a transport: one listener that sees every event. Who we are is already known, so that it
 * asks Slack nothing by itself; and no error handler is set, since a failure must reach the receiver.
 */
export function boltApp(
  receiver: Receiver,
  more: { readonly me: Me; readonly token: string; readonly logger: Logger },
  handle: (body: unknown, retry: number) => Promise<void>,
): App {
  const { me, token, logger } = more;
  const app = new App({
    receiver,
    logger,
    ignoreSelf: false,
    authorize: async () => ({
      botToken: token,
      botId: me.botId,
      botUserId: me.userId,
      teamId: me.team,
    }),
  });
  app.use(async ({ body, context }) => handle(body, context.retryNum ?? 0));
  return app;
}

/** The SDK's own words go to our log, without their details: those may hold people's text. */
export function boltLogger(log: Log): Logger {
  const first = (words: readonly unknown[]): string => String(words[0] ?? "").slice(0, 300);
  return {
    debug: () => {},
    info: () => {},
    warn: (...words) => log.warn("slack_sdk", { says: first(words) }),
    error: (...words) => log.warn("slack_sdk", { says: first(words) }),
    setLevel: () => {},
    getLevel: () => LogLevel.WARN,
    setName: () => {},
  };
}
