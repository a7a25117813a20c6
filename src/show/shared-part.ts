import type { ReplyInput } from "../model.ts";
import { sentence } from "./wording.ts";

/** What the complaining rooms share, as the places check found it; "" where it found nothing. */
export function sharedPart(input: ReplyInput): string {
  const found = input.judgement.findings.find(
    ({ check, level }) => check === "places" && level === "watch",
  );
  return found === undefined ? "" : `${sentence(found.says)} Start there.`;
}
