import { z } from "zod";
import type { SyncAnswer } from "./sync.ts";
import { Trouble } from "./trouble.ts";
import type { Working } from "./working.ts";

type Invited = SyncAnswer["rooms"]["invite"][string];

const inviteSchema = z.object({
  type: z.literal("m.room.member"),
  state_key: z.string(),
  sender: z.string(),
  content: z.object({ membership: z.literal("invite"), is_direct: z.boolean().optional() }),
});

/** Joins where an admitted person invites into a configured room, or to a talk of two; else lets the invitation lie. */
export async function answerInvite(
  working: Working,
  room: string,
  invited: Invited,
): Promise<void> {
  const { crew, rooms, door, config, me, connection } = working;
  const invite = invited.invite_state.events
    .flatMap((raw) => inviteSchema.safeParse(raw).data ?? [])
    .find((event) => event.state_key === me);
  if (invite === undefined) return;
  const named = rooms.channelOf(room) !== undefined;
  const direct = config.direct && invite.content.is_direct === true;
  if (!crew.has(invite.sender) || !(named || direct)) {
    door.log.warn("invitation_left", { platform: "matrix", room, inviter: invite.sender });
    return;
  }
  if (!named) rooms.admitDirect(room, invite.sender);
  try {
    await connection.ask("POST", `/_matrix/client/v3/rooms/${encodeURIComponent(room)}/join`, {});
    door.log.info("joined", { platform: "matrix", room, inviter: invite.sender });
  } catch (error) {
    if (!(error instanceof Trouble) || error.kind !== "refused") throw error;
    door.log.warn("not_joined", { platform: "matrix", room, why: error.message });
  }
}
