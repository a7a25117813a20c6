import { isoWithOffset } from "../local-time.ts";

/**
 * What names a message of ours and theirs alike: team, channel and `ts`. Slack's `ts` alone is unique
 * only within a channel; it stays text, since as a number it loses digits.
 */
export interface SlackPlace {
  readonly team: string;
  readonly channel: string;
  readonly ts: string;
}

export const idOf = ({ team, channel, ts }: SlackPlace): string => `${team}:${channel}:${ts}`;

export function placeOf(id: string): SlackPlace | undefined {
  const [team, channel, ts] = id.split(":");
  return team === undefined || channel === undefined || ts === undefined
    ? undefined
    : { team, channel, ts };
}

/** "1700000000.000100" as ISO time with the company's offset. */
export const isoOfTs = (ts: string): string =>
  isoWithOffset(new Date(Math.floor(Number(ts) * 1000)));

/** A moment as Slack's `oldest` and `latest` want it. */
export const tsOfTime = (ms: number): string => (Math.max(0, ms) / 1000).toFixed(6);

/** Of two `ts` the later; they are of one length, so text order is time order. */
export const laterTs = (a: string, b: string): string => (a > b ? a : b);
