import type { Reading } from "../model.ts";
import { figureSpan } from "./figure-span.ts";
import { noteOf } from "./near.ts";
import { perScene, type Scene } from "./scene.ts";

/** Words of a pump-down that goes on: the low side is shut off from its liquid. */
const pumping =
  /\bpumping (?:it |her |this |that |everything |the (?:unit|system|charge|gas) )?(?:all )?down\b|\b(?:in|on|during|mid|doing|started) (?:a |the |its |my )?pump.?down\b|\bpump.?down (?:running|going|in progress)\b|\b(?:king|receiver|liquid(?: line| service)?) valve (?:is |was |now )?(?:all )?(?:closed|shut|front.?seated)\b|\b(?:closed|shut|front.?seated) (?:off )?(?:the|its|her) (?:king|receiver|liquid(?: line| service)?)(?: service)? valve\b|\b(?:closed|shut|front.?seated) (?:off )?(?:the|its|her) suction(?: service)?(?: valve)?\b|\bsuction(?: service)? valve (?:is |was |now )?(?:all )?(?:closed|shut|front.?seated)\b|\bliquid (?:line )?solenoid (?:is |now )?(?:closed|shut|de.?energi[sz]ed)\b/;

/** Its valves are open again, or it never was: what follows is of a running machine. */
const over =
  /\b(?:opened|back.?seated|cracked|re-?opened)\b|\b(?:after|before|since) (?:the |a |my )?pump/;

const mayPump: (scene: Scene) => boolean = perScene((scene) => pumping.test(scene.words));

/** Read while it was pumped down: no figure of how it runs, and none of its charge. */
export function isPumpingDown(scene: Scene, reading: Reading): boolean {
  if (!mayPump(scene)) return false;
  const text = (noteOf(scene, reading)?.text ?? "").toLowerCase();
  const at = text.search(pumping);
  if (at < 0) return false;
  // the clause that tells of it holds from its beginning: "suction 6 with the king valve shut"
  const clause = Math.max(
    text.lastIndexOf(",", at),
    text.lastIndexOf(". ", at),
    text.lastIndexOf(";", at),
    0,
  );
  const [from] = figureSpan(text, reading);
  return from >= clause && !over.test(text.slice(at, from));
}
