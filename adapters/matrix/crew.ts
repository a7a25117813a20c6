import type { Person } from "../serve/people.ts";

/** Who is listened to, by full Matrix id, case and all; never by a display name, which anybody may take. */
export type Crew = ReadonlyMap<string, Person>;

export function crewOf(people: readonly Person[]): Crew {
  return new Map(
    people.flatMap((person) =>
      person.matrix === undefined ? [] : [[person.matrix, person] as const],
    ),
  );
}
