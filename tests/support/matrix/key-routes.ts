import type { World } from "./world.ts";

type Json = Record<string, unknown>;
const object = (value: unknown): Json =>
  typeof value === "object" && value !== null ? { ...value } : {};

/** The key requests of a homeserver: enough for two real crypto machines to talk. */
export function keyAnswer(
  world: World,
  by: { readonly user: string; readonly device: string },
  call: { readonly path: string; readonly body: Json },
): Json | undefined {
  const { user, device } = by;
  const { path, body } = call;
  if (path === "/keys/upload") {
    if (body.device_keys !== undefined) {
      const mine = world.deviceKeys.get(user) ?? new Map<string, Json>();
      mine.set(device, object(body.device_keys));
      world.deviceKeys.set(user, mine);
      world.changes.push(user);
    }
    const place = `${user} ${device}`;
    const keys = world.oneTimeKeys.get(place) ?? new Map<string, Json>();
    for (const [name, key] of Object.entries(object(body.one_time_keys)))
      keys.set(name, object(key));
    world.oneTimeKeys.set(place, keys);
    return { one_time_key_counts: { signed_curve25519: keys.size } };
  }
  if (path === "/keys/query") {
    const users = Object.keys(object(body.device_keys));
    const cross = (kind: string): Json =>
      Object.fromEntries(
        users.flatMap((one) => {
          const found = world.crossSigning.get(one)?.[kind];
          return found === undefined ? [] : [[one, found]];
        }),
      );
    return {
      device_keys: Object.fromEntries(
        users.map((one) => [one, Object.fromEntries(world.deviceKeys.get(one) ?? [])]),
      ),
      master_keys: cross("master_key"),
      self_signing_keys: cross("self_signing_key"),
      user_signing_keys: cross("user_signing_key"),
      failures: {},
    };
  }
  if (path === "/keys/claim")
    return { one_time_keys: claimed(world, object(body.one_time_keys)), failures: {} };
  if (path === "/keys/device_signing/upload") {
    world.crossSigning.set(user, body);
    world.changes.push(user);
    return {};
  }
  if (path === "/keys/signatures/upload") return {};
  const type = /^\/sendToDevice\/([^/]+)\//.exec(path)?.[1];
  if (type === undefined) return undefined;
  for (const [to, devices] of Object.entries(object(body.messages))) {
    for (const content of Object.values(object(devices))) {
      (world.holding ? world.held : world.toDevice).push({
        user: to,
        event: { type: decodeURIComponent(type), sender: user, content },
      });
    }
  }
  return {};
}

function claimed(world: World, wanted: Json): Json {
  const found: Record<string, Json> = {};
  for (const [user, devices] of Object.entries(wanted)) {
    for (const device of Object.keys(object(devices))) {
      const keys = world.oneTimeKeys.get(`${user} ${device}`);
      const [first] = keys?.entries() ?? [];
      if (first === undefined) continue;
      keys?.delete(first[0]);
      found[user] = { ...found[user], [device]: { [first[0]]: first[1] } };
    }
  }
  return found;
}
