import { z } from "zod";
import { fileSchema, type SlackFile } from "./events.ts";
import type { Working } from "./working.ts";

export type Download =
  | { readonly kind: "bytes"; readonly bytes: Buffer }
  /** trying again may help */
  | { readonly kind: "later"; readonly why: string }
  | { readonly kind: "never"; readonly why: string };

const largest = 25_000_000;
const infoSchema = z.object({ file: fileSchema });

/** Brings a file that somebody sent. The token goes to Slack's own hosts only. */
export async function download(working: Working, shown: SlackFile): Promise<Download> {
  try {
    const file = await known(working, shown);
    if (file.url_private == null) return { kind: "never", why: "it has no address" };
    if ((file.size ?? 0) > largest) return { kind: "never", why: "it is larger than 25 MB" };
    return await fetched(working, file, file.url_private);
  } catch (error) {
    return { kind: "later", why: error instanceof Error ? error.message : String(error) };
  }
}

/** Files from other workspaces come without their facts. */
async function known(working: Working, file: SlackFile): Promise<SlackFile> {
  if (file.file_access !== "check_file_info" && file.url_private != null) return file;
  return infoSchema.parse(await working.client.files.info({ file: file.id })).file;
}

function isSlacks(working: Working, url: URL): boolean {
  const { api_url } = working.config;
  if (api_url !== undefined && url.origin === new URL(api_url).origin) return true;
  return url.protocol === "https:" && /(?:^|\.)slack(?:-files)?\.com$/.test(url.hostname);
}

async function fetched(working: Working, file: SlackFile, address: string): Promise<Download> {
  let url = new URL(address);
  // a redirect followed by itself would drop the token, or carry it elsewhere
  for (let hop = 0; hop < 4; hop++) {
    if (!isSlacks(working, url))
      return { kind: "never", why: `it lies elsewhere (${url.hostname})` };
    const answer = await fetch(url, {
      headers: { authorization: `Bearer ${working.config.bot_token}` },
      redirect: "manual",
      signal: AbortSignal.timeout(60_000),
    });
    const next = answer.headers.get("location");
    if (answer.status < 300 || answer.status >= 400 || next === null) return taken(file, answer);
    url = new URL(next, url);
  }
  return { kind: "never", why: "it is redirected without end" };
}

async function taken(file: SlackFile, answer: Response): Promise<Download> {
  if (answer.status >= 500 || answer.status === 429) {
    return { kind: "later", why: `HTTP ${answer.status}` };
  }
  if (!answer.ok) return { kind: "never", why: `HTTP ${answer.status}` };
  const type = answer.headers.get("content-type") ?? "";
  if (type.startsWith("text/html") && file.mimetype?.startsWith("text/html") !== true) {
    return { kind: "never", why: "a login page came instead: give the app files:read" };
  }
  const bytes = Buffer.from(await answer.arrayBuffer());
  if (file.size != null && bytes.length !== file.size) {
    return { kind: "later", why: `${bytes.length} of ${file.size} bytes came` };
  }
  return { kind: "bytes", bytes };
}
