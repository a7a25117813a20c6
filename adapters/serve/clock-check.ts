import type { CheckLine } from "../chat-platform.ts";

/** Readings are filed to the minute; our choice, no source. */
const mostApartMs = 60_000;
const waitMs = 10_000;

/**
 * Whether this machine's clock agrees with that of the server behind `url`, as the answer's date
 * says. No line where it does not say, or does not answer: that is another line's business.
 */
export async function clockCheck(
  platform: string,
  url: string,
  now: () => number,
): Promise<readonly CheckLine[]> {
  const began = now();
  const told = await fetch(url, { signal: AbortSignal.timeout(waitMs), redirect: "manual" }).then(
    async (response) => {
      await response.body?.cancel();
      return response.headers.get("date");
    },
    () => null,
  );
  const theirs = Date.parse(told ?? "");
  if (Number.isNaN(theirs)) return [];
  // it was said at some moment between the two, to the second
  const apartMs = Math.round((began + now()) / 2) - theirs;
  if (Math.abs(apartMs) <= mostApartMs)
    return [{ ok: true, says: `${platform}: the clock agrees with the server's.` }];
  const minutes = Math.max(1, Math.round(Math.abs(apartMs) / 60_000));
  const says = `${platform}: this machine's clock is ${minutes} minute${minutes === 1 ? "" : "s"} ${apartMs > 0 ? "ahead of" : "behind"} the server's; set it right, or times and what counts as late will be wrong.`;
  return [{ ok: false, says }];
}
