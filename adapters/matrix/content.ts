import { fitBoard } from "../serve/board-fit.ts";
import { boardHtml } from "./board-html.ts";
import { escaped } from "./escaped.ts";

/** Where in a room something is said. */
export interface Spot {
  /** id of the thread's first message, and of the last one seen in it */
  readonly thread?: { readonly root: string; readonly last: string };
  /** id of the post whose text this is to replace */
  readonly replaces?: string;
}

/** The field in which a post carries its outbox key; other clients ignore it. */
export const keyField = "io.readback.key";

/** A notice: other bots don't answer it. Its plain text is complete; the other form only looks better. */
function notice(text: string, html: string): object {
  return {
    msgtype: "m.notice",
    body: text,
    format: "org.matrix.custom.html",
    formatted_body: html,
    // nobody is called: without this, a name or "@room" in the text would ring every telephone
    "m.mentions": {},
  };
}

interface Said {
  readonly text: string;
  readonly board: boolean;
  readonly key: string;
}

/** An event may have 64 KiB (client-server API, size limits); encryption adds a third, headers a little. */
const mostBytes = 44_000;

/** The content of a text message; a board shows as many jobs as an event holds. */
export function textContent(said: Said, spot: Spot): object {
  if (!said.board) return contentOf(said, spot);
  const ofBoard = (text: string): object => contentOf({ ...said, text }, spot);
  return ofBoard(
    fitBoard(said.text, (text) => Buffer.byteLength(JSON.stringify(ofBoard(text))) <= mostBytes),
  );
}

function contentOf(said: Said, spot: Spot): object {
  const html = said.board ? boardHtml(said.text) : escaped(said.text).replaceAll("\n", "<br>");
  const content = { ...notice(said.text, html), [keyField]: said.key };
  if (spot.replaces !== undefined) {
    return {
      ...content,
      body: `* ${said.text}`,
      "m.new_content": notice(said.text, html),
      "m.relates_to": { rel_type: "m.replace", event_id: spot.replaces },
    };
  }
  return { ...content, ...threaded(spot) };
}

function threaded({ thread }: Spot): object {
  if (thread === undefined) return {};
  return {
    "m.relates_to": {
      rel_type: "m.thread",
      event_id: thread.root,
      // for clients without threads: they show it as a reply
      is_falling_back: true,
      "m.in_reply_to": { event_id: thread.last },
    },
  };
}

/** The content of a file message; `source` is what the upload gave: an address, or address and key. */
export function fileContent(
  file: { readonly name: string; readonly type: string; readonly size: number },
  source: object,
  said: { readonly key: string; readonly spot: Spot },
): object {
  return {
    msgtype: file.type.startsWith("image/") ? "m.image" : "m.file",
    body: file.name,
    filename: file.name,
    info: { mimetype: file.type, size: file.size },
    ...source,
    "m.mentions": {},
    [keyField]: said.key,
    ...threaded(said.spot),
  };
}
