import type { IncomingMessage, Server } from "node:http";
import { HTTPReceiver } from "@slack/bolt";
import type { Log } from "../serve/log.ts";
import { boltApp, boltLogger } from "./bolt-app.ts";
import type { Transport, TransportOptions } from "./transport.ts";
import type { Me } from "./working.ts";

interface HttpSettings {
  readonly signing_secret: string;
  readonly host: string;
  readonly port: number;
}

/** Slack's own tolerance, which Bolt checks for late requests only. */
const aheadMs = 5 * 60_000;

/** A request that claims to come from the future is replayed or forged. */
const isAhead = (request: IncomingMessage): boolean =>
  Number(request.headers["x-slack-request-timestamp"] ?? 0) * 1000 > Date.now() + aheadMs;

/** Events as HTTP requests; answered only after what they hold is kept. */
export function httpTransport(
  settings: HttpSettings,
  known: { readonly me: Me; readonly token: string; readonly log: Log },
  options: TransportOptions,
): Transport {
  const logger = boltLogger(known.log);
  const receiver = new HTTPReceiver({
    signingSecret: settings.signing_secret,
    endpoints: "/slack/events",
    processBeforeResponse: true,
    // an answer that comes late is a failure for Slack, which then asks again; the work goes on
    unhandledRequestHandler: () => {},
    logger,
    customPropertiesExtractor: (request) => ({ ahead: isAhead(request) }),
    processEventErrorHandler: async ({ error, request, response }) => {
      options.failed({ why: error.message, final: false });
      response.writeHead(isAhead(request) ? 401 : 500).end();
      return false;
    },
    dispatchErrorHandler: ({ response }) => {
      response.writeHead(404).end();
    },
  });
  const app = boltApp(receiver, { ...known, logger }, options.handle);
  const process = app.processEvent.bind(app);
  app.processEvent = async (event) => {
    if (event.customProperties?.ahead === true) throw new Error("a request from the future");
    return process(event);
  };
  let server: Server | undefined;
  return {
    open: async () => {
      server = await receiver.start({ port: settings.port, host: settings.host });
      options.connected(true);
      options.joined();
      return `listens on ${settings.host}:${settings.port}/slack/events`;
    },
    close: async () => {
      options.connected(false);
      if (server === undefined) return;
      // a request that is being handled ends first; its connection must not be waited for after that
      const timer = setInterval(() => server?.closeIdleConnections(), 50);
      await receiver.stop().catch(() => {});
      clearInterval(timer);
    },
  };
}
