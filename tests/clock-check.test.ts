import { createServer } from "node:http";
import { afterEach, expect, test } from "vitest";
import { clockCheck } from "../adapters/serve/clock-check.ts";

const open: (() => void)[] = [];
afterEach(() => {
  for (const close of open.splice(0)) close();
});

/** A server whose answers carry that date, or none. */
async function dated(date: string | undefined): Promise<string> {
  const server = createServer((_, response) => {
    response.sendDate = false;
    if (date !== undefined) response.setHeader("date", date);
    response.end("{}");
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  open.push(() => server.close());
  const address = server.address();
  return `http://127.0.0.1:${typeof address === "object" ? address?.port : 0}/`;
}

const noon = Date.parse("2026-05-12T12:00:00Z");

test.each([
  [0, true, "Chat: the clock agrees with the server's."],
  [59, true, "Chat: the clock agrees with the server's."],
  [-59, true, "Chat: the clock agrees with the server's."],
  [61, false, "1 minute ahead of the server's; set it right"],
  [-600, false, "10 minutes behind the server's; set it right"],
  [3 * 3600, false, "180 minutes ahead of the server's; set it right"],
])("a clock %i seconds ahead of the server's", async (seconds, ok, says) => {
  const url = await dated(new Date(noon).toUTCString());
  const lines = await clockCheck("Chat", url, () => noon + seconds * 1000);
  expect(lines).toEqual([{ ok, says: expect.stringContaining(says) }]);
});

test("a server that names no date, or none that can be read, or does not answer: no line", async () => {
  for (const url of [await dated(undefined), await dated("soon"), "http://127.0.0.1:9/"])
    expect(await clockCheck("Chat", url, () => noon)).toEqual([]);
});
