import { createServer } from "node:http";
import { backlog } from "../../src/record/sending.ts";
import type { Store } from "../../src/record/store.ts";

export interface HealthSource {
  readonly store: Store;
  /** each platform, and whether it is connected */
  readonly platforms: () => Readonly<Record<string, boolean>>;
  /** when work was last tried, and whether it went well */
  readonly lastWork: () => { readonly at: number; readonly problem?: string };
}

export interface Health {
  readonly port: number;
  readonly stop: () => Promise<void>;
}

/**
 * `GET /live`: the program runs. `GET /ready`: every platform is connected and the store takes
 * what comes; 503 otherwise, and the body says what is wrong. On this machine only.
 */
export async function startHealth(port: number, source: HealthSource): Promise<Health> {
  const server = createServer((request, response) => {
    const path = (request.url ?? "/").split("?")[0];
    if (path !== "/live" && path !== "/ready") {
      response.writeHead(404).end();
      return;
    }
    const state = stateOf(source);
    const status = path === "/live" || state.ready ? 200 : 503;
    response.writeHead(status, { "content-type": "application/json" }).end(JSON.stringify(state));
  });
  await new Promise<void>((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, "127.0.0.1", resolve);
  });
  const address = server.address();
  return {
    port: typeof address === "object" && address !== null ? address.port : port,
    stop: async () => {
      server.closeAllConnections();
      await new Promise<void>((resolve) => server.close(() => resolve()));
    },
  };
}

function stateOf(source: HealthSource) {
  const platforms = source.platforms();
  const { problem } = source.lastWork();
  const away = Object.entries(platforms).flatMap(([name, connected]) => (connected ? [] : [name]));
  const counts = countsOf(source.store);
  const troubles = [
    ...away.map((name) => `${name} is not connected`),
    ...(problem === undefined ? [] : [problem]),
    ...(counts === undefined ? ["the store cannot be read"] : []),
  ];
  return { ready: troubles.length === 0, troubles, platforms, ...counts };
}

function countsOf(store: Store): ReturnType<typeof backlog> | undefined {
  try {
    return backlog(store);
  } catch {
    return undefined;
  }
}
