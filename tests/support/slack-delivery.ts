import { createHmac } from "node:crypto";
import type { SocketPeer } from "./web-socket-server.ts";

export interface DeliveryOptions {
  /** where the app listens; undefined: Socket Mode */
  readonly eventsUrl?: string;
  readonly signingSecret: string;
  readonly team: string;
  readonly appId: string;
  readonly botUserId: string;
  /** waits before the first, second and third repeat; the service itself takes about 0, 60 and 300 s */
  readonly retriesMs: readonly number[];
  /** the service's own patience is 3 s */
  readonly patienceMs: number;
}

export interface Delivery {
  readonly publish: (event: Record<string, unknown>, eventId?: string) => void;
  readonly attach: (peer: SocketPeer) => void;
  readonly peers: () => readonly SocketPeer[];
  /** events given up after the last repeat */
  readonly lost: () => number;
  /** events that are still on their way */
  readonly open: () => number;
  readonly acknowledged: () => number;
  readonly stop: () => void;
  readonly chaos: { duplicate: number; shuffleMs: number };
}

export interface Signed {
  readonly body: string;
  readonly headers: Record<string, string>;
}

/** A request body with the signature that the service puts on it. */
export function signed(body: string, secret: string, at: number = Date.now()): Signed {
  const timestamp = String(Math.floor(at / 1000));
  const digest = createHmac("sha256", secret).update(`v0:${timestamp}:${body}`).digest("hex");
  return {
    body,
    headers: {
      "content-type": "application/json",
      "x-slack-request-timestamp": timestamp,
      "x-slack-signature": `v0=${digest}`,
    },
  };
}

export function envelopeOf(
  options: DeliveryOptions,
  event: Record<string, unknown>,
  id: string,
): object {
  return {
    token: "unused",
    team_id: options.team,
    api_app_id: options.appId,
    event,
    type: "event_callback",
    event_id: id,
    event_time: Math.floor(Date.now() / 1000),
    authorizations: [
      {
        enterprise_id: null,
        team_id: options.team,
        user_id: options.botUserId,
        is_bot: true,
        is_enterprise_install: false,
      },
    ],
    is_ext_shared_channel: false,
  };
}

/** Brings events to the app until it acknowledges them in time or the repeats are used up. */
export function startDelivery(options: DeliveryOptions): Delivery {
  const peers: SocketPeer[] = [];
  const waiting = new Map<string, (acked: boolean) => void>();
  const chaos = { duplicate: 0, shuffleMs: 0 };
  const count = { events: 0, open: 0, lost: 0, acknowledged: 0, envelopes: 0 };
  let stopped = false;
  const pause = (ms: number) => new Promise<void>((resolve) => setTimeout(resolve, ms).unref());

  const overHttp = async (url: string, body: string, retry: number): Promise<boolean> => {
    const { headers } = signed(body, options.signingSecret);
    const more =
      retry === 0
        ? {}
        : { "x-slack-retry-num": String(retry), "x-slack-retry-reason": "http_timeout" };
    try {
      const answer = await fetch(url, {
        method: "POST",
        body,
        headers: { ...headers, ...more },
        signal: AbortSignal.timeout(options.patienceMs),
      });
      await answer.arrayBuffer();
      return answer.ok;
    } catch {
      return false;
    }
  };

  const overSocket = (payload: object, retry: number): Promise<boolean> => {
    const peer = peers[count.envelopes % Math.max(1, peers.length)];
    if (peer === undefined) return Promise.resolve(false);
    count.envelopes += 1;
    const envelope_id = `env-${count.envelopes}`;
    const acked = new Promise<boolean>((resolve) => {
      waiting.set(envelope_id, resolve);
      setTimeout(() => resolve(false), options.patienceMs).unref();
    });
    peer.onEnd(() => waiting.get(envelope_id)?.(false));
    peer.send(
      JSON.stringify({
        envelope_id,
        payload,
        type: "events_api",
        accepts_response_payload: false,
        retry_attempt: retry,
        retry_reason: retry === 0 ? "" : "timeout",
      }),
    );
    return acked.finally(() => waiting.delete(envelope_id));
  };

  const bring = async (event: Record<string, unknown>, id: string): Promise<void> => {
    count.open += 1;
    const payload = envelopeOf(options, event, id);
    if (chaos.shuffleMs > 0) await pause(Math.random() * chaos.shuffleMs);
    for (let retry = 0; retry <= options.retriesMs.length && !stopped; retry++) {
      if (retry > 0) await pause(options.retriesMs[retry - 1] ?? 0);
      const acked =
        options.eventsUrl === undefined
          ? await overSocket(payload, retry)
          : await overHttp(options.eventsUrl, JSON.stringify(payload), retry);
      if (!acked) continue;
      count.acknowledged += 1;
      count.open -= 1;
      return;
    }
    count.lost += 1;
    count.open -= 1;
  };

  return {
    publish: (event, eventId) => {
      count.events += 1;
      const id = eventId ?? `Ev${String(count.events).padStart(6, "0")}`;
      void bring(event, id);
      if (Math.random() < chaos.duplicate) void bring(event, id);
    },
    attach: (peer) => {
      peers.push(peer);
      peer.onEnd(() => peers.splice(peers.indexOf(peer), 1));
      peer.onText((text) => {
        const { envelope_id } = JSON.parse(text);
        waiting.get(envelope_id)?.(true);
      });
      peer.send(
        JSON.stringify({
          type: "hello",
          num_connections: peers.length,
          connection_info: { app_id: options.appId },
        }),
      );
    },
    peers: () => peers,
    lost: () => count.lost,
    open: () => count.open,
    acknowledged: () => count.acknowledged,
    stop: () => {
      stopped = true;
      for (const peer of [...peers]) peer.cut();
    },
    chaos,
  };
}
