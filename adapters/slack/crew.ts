import { directPrefix } from "../../src/vocabulary.ts";
import type { Person } from "../serve/people.ts";
import type { SlackConfig } from "./config.ts";

/** Who the bot listens to and where, by Slack's ids. */
export interface Crew {
  readonly person: (userId: string) => Person | undefined;
  /** the name of an admitted channel; a direct chat has its id behind a mark */
  readonly channelName: (channelId: string) => string | undefined;
  readonly channelId: (name: string) => string | undefined;
  readonly channels: readonly { readonly name: string; readonly id: string }[];
}

const isDirect = (id: string): boolean => id.startsWith("D");
/** A direct chat's name in the record is its id, marked as one; without the mark in older stores. */
const idOf = (name: string): string =>
  name.startsWith(directPrefix) ? name.slice(directPrefix.length) : name;

export function crewOf(config: SlackConfig, people: readonly Person[]): Crew {
  const byUser = new Map(
    people.flatMap((person) => (person.slack === undefined ? [] : [[person.slack, person]])),
  );
  const channels = Object.entries(config.channels).map(([name, id]) => ({ name, id }));
  return {
    channels,
    person: (userId) => byUser.get(userId),
    channelName: (id) =>
      channels.find((channel) => channel.id === id)?.name ??
      (config.direct && isDirect(id) ? `${directPrefix}${id}` : undefined),
    channelId: (name) =>
      channels.find((channel) => channel.name === name)?.id ??
      (isDirect(idOf(name)) ? idOf(name) : undefined),
  };
}
