import type { Connection } from "./client.ts";
import { Trouble } from "./trouble.ts";

/** What a phone's picture or a short film needs, and far below what fills a disk by mistake. */
export const mostFileBytes = 50 * 1024 * 1024;

/**
 * A file's bytes as the server has them. Asks the way that current servers want first, then the
 * older one that they refuse and older servers alone know.
 */
export async function downloadFile(connection: Connection, url: string): Promise<Uint8Array> {
  const place = /^mxc:\/\/([^/?#]+)\/([^/?#]+)$/.exec(url);
  const [, server, id] = place ?? [];
  if (server === undefined || id === undefined) throw new Trouble("refused", "not a media address");
  const path = `${encodeURIComponent(server)}/${encodeURIComponent(id)}`;
  try {
    return (await connection.download(`/_matrix/client/v1/media/download/${path}`)).bytes;
  } catch (error) {
    const unknown = error instanceof Trouble && (error.status === 404 || error.status === 400);
    if (!unknown) throw error;
    return (await connection.download(`/_matrix/media/v3/download/${path}`)).bytes;
  }
}
