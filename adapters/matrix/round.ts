import { z } from "zod";
import { arrive } from "./arrive.ts";
import { completeTimeline } from "./backfill.ts";
import { answerInvite } from "./invite.ts";
import { idsOf, lockedEvents, retryLocked, setAside } from "./locked.ts";
import { keyOf } from "./look.ts";
import { eventsOf, keyNewsOf, type RoomEvent, type SyncAnswer } from "./sync.ts";
import type { Working } from "./working.ts";

/** Where the last sync ended, kept with the messages. */
export const syncPlace = "sync";

/** What is older is not answered any more; the operator is told. */
const oldestMs = 14 * 24 * 3600 * 1000;

export interface Round {
  readonly since: string | undefined;
  readonly answer: SyncAnswer;
  /** the first of this run, before which nothing is sent */
  readonly first: boolean;
  readonly stopping: () => boolean;
}

/**
 * Works one sync off: keys first, then what rooms are, then what was said, and the sync's place last.
 * Whatever fails before that rejects, and the same sync comes again; what was kept of it stands once.
 */
export async function takeRound(working: Working, round: Round): Promise<void> {
  const { machine, door } = working;
  const { answer, since, stopping } = round;
  await machine.take(keyNewsOf(answer));
  const joined = Object.entries(answer.rooms.join);
  for (const [room, { state, timeline }] of joined) {
    const events = [...eventsOf(state.events), ...eventsOf(timeline.events)];
    for (const event of events) noteState(working, room, event);
  }
  for (const [room, invited] of Object.entries(answer.rooms.invite)) {
    await answerInvite(working, room, invited);
  }
  for (const room of Object.keys(answer.rooms.leave)) noteLeft(working, room);
  // a first start looks only forward: what was said before it, was not said to it
  if (since !== undefined) {
    await retryLocked(working);
    for (const [room] of joined) {
      if (stopping()) return;
      await takeRoom(working, room, round);
    }
  }
  if (!stopping()) door.moveCursor(syncPlace, answer.next_batch);
}

/** Before anything of ours is sent: what stands there is not said again. */
async function noteStanding(
  working: Working,
  room: string,
  events: readonly RoomEvent[],
): Promise<void> {
  for (const event of events) {
    if (event.sender !== working.me) continue;
    const key = await keyOf(working, room, event);
    if (key !== undefined) working.standing.set(key, event.event_id);
  }
}

async function takeRoom(working: Working, room: string, round: Round): Promise<void> {
  const { rooms, door, connection, me } = working;
  const channel = rooms.channelOf(room);
  const joined = round.answer.rooms.join[room];
  if (channel === undefined || joined === undefined) return;
  const at = { room, since: round.since, me, oldestMs: door.now() - oldestMs };
  const { events, cut } = await completeTimeline(connection.ask, at, joined);
  if (cut) {
    door.tell(
      `cut:${room}`,
      `In ${channel}, messages from more than 14 days ago were left unread.`,
    );
  }
  if (round.first) await noteStanding(working, room, events);
  for (const event of events) {
    if (round.stopping()) return;
    noteState(working, room, event);
    const came = await arrive(working, room, event, idsOf(lockedEvents(working)));
    if (came === "locked" || came === "early") setAside(working, room, event);
  }
}

/** What an event says about the room itself. */
function noteState(working: Working, room: string, event: RoomEvent): void {
  const { rooms, door } = working;
  if (event.state_key === undefined) return;
  if (event.type === "m.room.encryption" && event.state_key === "")
    rooms.noteEncrypted(room, event.content);
  if (event.type === "m.room.member" || event.type === "m.room.history_visibility")
    rooms.forgetReaders(room);
  const channel = rooms.channelOf(room);
  if (event.type === "m.room.tombstone" && channel !== undefined) {
    const next = z.string().safeParse(event.content.replacement_room).data ?? "another room";
    door.tell(
      `moved:${room}`,
      `The room of ${channel} was replaced by ${next}: invite the bot there and name it under "rooms".`,
    );
  }
}

function noteLeft(working: Working, room: string): void {
  const channel = working.rooms.channelOf(room);
  working.rooms.forgetReaders(room);
  if (channel === undefined) return;
  working.door.tell(
    `left:${room}`,
    `The bot is no longer in ${channel}; what was filed stays. Invite it again to go on.`,
  );
}
