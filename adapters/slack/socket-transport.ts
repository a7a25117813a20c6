import type { Log } from "../serve/log.ts";
import { type Waits, waits } from "../serve/waits.ts";
import { boltApp, boltLogger } from "./bolt-app.ts";
import { StoreFirstReceiver } from "./store-first.ts";
import type { Transport, TransportOptions } from "./transport.ts";
import { troubleOf } from "./trouble.ts";
import type { Me } from "./working.ts";

interface SocketSettings {
  readonly app_token: string;
  readonly api_url: string | undefined;
}

/** How long a connection may take to say hello. */
const helloMs = 15_000;
const longestPauseMs = 30_000;

/** Events over a socket that we open and, whenever it ends, open again. */
export function socketTransport(
  settings: SocketSettings,
  known: { readonly me: Me; readonly token: string; readonly log: Log },
  options: TransportOptions,
): Transport {
  const logger = boltLogger(known.log);
  const receiver = receiverFor(settings, logger, options);
  const resting = waits();
  let handling = 0;
  boltApp(receiver, { ...known, logger }, async (body, retry) => {
    // a socket that is being closed may still speak
    if (resting.stopped()) throw new Error("stopping");
    handling += 1;
    try {
      await options.handle(body, retry);
    } finally {
      handling -= 1;
    }
  });
  let loop: Promise<void> = Promise.resolve();
  return {
    open: () =>
      new Promise<string>((resolve) => {
        const first = (): void => resolve("holds a socket to Slack");
        loop = keepConnected(receiver, options, { resting, first });
      }),
    close: async () => {
      resting.stop();
      await inTime(
        receiver.client.disconnect().catch(() => {}),
        2000,
      );
      for (let naps = 0; handling > 0 && naps < 100; naps++) await sleep(20);
      await inTime(loop, 2000);
    },
  };
}

const sleep = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

async function inTime(work: Promise<unknown>, ms: number): Promise<void> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<void>((resolve) => {
    timer = setTimeout(resolve, ms);
  });
  await Promise.race([work, late]);
  clearTimeout(timer);
}

function receiverFor(
  settings: SocketSettings,
  logger: ReturnType<typeof boltLogger>,
  options: TransportOptions,
): StoreFirstReceiver {
  return new StoreFirstReceiver({
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
}

async function keepConnected(
  receiver: StoreFirstReceiver,
  options: TransportOptions,
  { resting, first }: { readonly resting: Waits; readonly first: () => void },
): Promise<void> {
  let hangUp: () => void = () => {};
  receiver.client.on("disconnected", () => hangUp());
  for (let failures = 0; !resting.stopped(); ) {
    const ended = new Promise<void>((resolve) => {
      hangUp = resolve;
    });
    try {
      await connect(receiver);
      failures = 0;
      options.connected(true);
      options.joined();
      first();
      await ended;
    } catch (error) {
      failures += 1;
      const trouble = troubleOf(error);
      options.failed({ why: trouble.why, final: trouble.kind === "token" });
      if (trouble.kind === "limited") await resting.pause(trouble.retryMs);
    }
    options.connected(false);
    if (failures > 0) await resting.pause(Math.min(longestPauseMs, 500 * 2 ** failures));
  }
}

/** Resolves once Slack has said hello. */
async function connect(receiver: StoreFirstReceiver): Promise<void> {
  const hello = receiver.client.start();
  // a rejection after the time is up is nobody's business any more
  hello.catch(() => {});
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error("no greeting came")), helloMs);
  });
  try {
    await Promise.race([hello, late]);
  } catch (error) {
    // a socket that is half open must not speak beside the next one
    void receiver.client.disconnect().catch(() => {});
    throw error;
  } finally {
    clearTimeout(timer);
  }
}
