import { type App, type ReceiverEvent, SocketModeReceiver } from "@slack/bolt";
import type { Log } from "../serve/log.ts";
import { boltApp, boltLogger } from "./bolt-app.ts";
import type { Transport, TransportOptions } from "./transport.ts";
import { troubleOf } from "./trouble.ts";
import type { Me } from "./working.ts";

/** Bolt acknowledges before anything is stored; here what came is stored first, then acknowledged. */
class StoreFirstReceiver extends SocketModeReceiver {
  override init(app: App): void {
    const storeFirst = {
      processEvent: async (event: ReceiverEvent): Promise<void> => {
        let answer: unknown;
        const ack = async (response: unknown): Promise<void> => {
          answer = response;
        };
        await app.processEvent({ ...event, ack });
        await event.ack(answer);
      },
    };
    // the receiver uses nothing of the app but this
    super.init(storeFirst as unknown as App);
  }
}

/** How long a connection may take to say hello. */
const helloMs = 15_000;
const longestPauseMs = 30_000;

/** Events over a socket that we open and, whenever it ends, open again. */
export function socketTransport(
  settings: { readonly app_token: string; readonly api_url: string | undefined },
  known: { readonly me: Me; readonly token: string; readonly log: Log },
  options: TransportOptions,
): Transport {
  const logger = boltLogger(known.log);
  let stopping = false;
  let handling = 0;
  let wake: () => void = () => {};
  let hangUp: () => void = () => {};
  const receiver = new StoreFirstReceiver({
    appToken: settings.app_token,
    logger,
    // its own reconnecting waits, doubles and can end the program; ours is below
    autoReconnectEnabled: false,
    processEventErrorHandler: async ({ error }) => {
      options.failed({ why: error.message, final: false });
      return false;
    },
    installerOptions: {
      clientOptions: {
        retryConfig: { retries: 0 },
        timeout: 10_000,
        rejectRateLimitedCalls: true,
        ...(settings.api_url === undefined ? {} : { slackApiUrl: settings.api_url }),
      },
    },
  });
  receiver.client.on("disconnected", () => hangUp());
  boltApp(receiver, { ...known, logger }, async (body, retry) => {
    // a socket that is being closed may still speak
    if (stopping) throw new Error("stopping");
    handling += 1;
    try {
      await options.handle(body, retry);
    } finally {
      handling -= 1;
      wake();
    }
  });
  const pause = (ms: number): Promise<void> =>
    new Promise((resolve) => {
      const timer = setTimeout(resolve, ms);
      wake = () => {
        if (!stopping) return;
        clearTimeout(timer);
        resolve();
      };
    });
  const connect = async (): Promise<void> => {
    const hello = receiver.client.start();
    // a rejection after the time is up is nobody's business any more
    hello.catch(() => {});
    let timer: NodeJS.Timeout | undefined;
    const late = new Promise<never>((_, reject) => {
      timer = setTimeout(() => reject(new Error("no greeting came")), helloMs);
    });
    try {
      await Promise.race([hello, late]);
    } finally {
      clearTimeout(timer);
    }
  };
  const keepConnected = async (first: () => void): Promise<void> => {
    let failures = 0;
    while (!stopping) {
      try {
        const ended = new Promise<void>((resolve) => {
          hangUp = resolve;
        });
        await connect();
        failures = 0;
        options.connected(true);
        options.joined();
        first();
        await ended;
      } catch (error) {
        const trouble = troubleOf(error);
        failures += 1;
        options.failed({ why: trouble.why, final: trouble.kind === "token" });
        if (trouble.kind === "limited") await pause(trouble.retryMs);
      }
      options.connected(false);
      if (failures > 0 && !stopping) await pause(Math.min(longestPauseMs, 500 * 2 ** failures));
    }
  };
  let loop: Promise<void> = Promise.resolve();
  return {
    open: () =>
      new Promise<string>((resolve) => {
        loop = keepConnected(() => resolve("holds a socket to Slack"));
      }),
    close: async () => {
      stopping = true;
      wake();
      await receiver.client.disconnect().catch(() => {});
      while (handling > 0) await pause(50);
      await Promise.race([loop, new Promise((resolve) => setTimeout(resolve, 2000).unref())]);
    },
  };
}
