import type { Memory } from "./memory.ts";

type Known = Pick<Memory, "registry" | "roles">;
type Names = Readonly<Record<string, string>>;

/** Names change with the office's list and with who writes for the first time, not with each message. */
const made = new WeakMap<
  Known["roles"],
  { readonly registry: Known["registry"]; readonly size: number; readonly names: Names }
>();

/** The name to say for each person that wrote. */
export function namesOf({ registry, roles }: Known): Names {
  const last = made.get(roles);
  if (last?.registry === registry && last.size === roles.size) return last.names;
  const known = registry.people;
  const pairs = [...roles.keys()].map((person): [string, string] => {
    const entry = known.find(({ name, nickname, handles = [] }) =>
      [name, nickname, ...handles].some((one) => one?.toLowerCase() === person.toLowerCase()),
    );
    return [person, entry?.nickname ?? entry?.name ?? capital(person)];
  });
  const names = Object.fromEntries(pairs);
  made.set(roles, { registry, size: roles.size, names });
  return names;
}

/** "sorrel" is said "Sorrel"; a platform's id stays as it is. */
function capital(person: string): string {
  return /^\p{Ll}[\p{L}'-]*$/u.test(person)
    ? person.charAt(0).toUpperCase() + person.slice(1)
    : person;
}

/** The id under which somebody writes, from the name that others call them by. */
export function personSaid(
  memory: Pick<Memory, "registry" | "roles">,
  name: string,
): string | undefined {
  const said = name.toLowerCase();
  const writers = [...memory.roles.keys()];
  const names = namesOf(memory);
  const writer = writers.find(
    (id) => id.toLowerCase() === said || names[id]?.toLowerCase().split(" ")[0] === said,
  );
  if (writer !== undefined) return writer;
  const known = memory.registry.people.find((person) =>
    [person.nickname, person.name, person.name.split(" ")[0]].some(
      (one) => one?.toLowerCase() === said,
    ),
  );
  return known?.handles?.[0] ?? known?.name;
}
