import type { JobReading } from "../model.ts";
import { figures } from "./figures.ts";
import { sentence } from "./wording.ts";

/** An earlier reply with what no longer stands of it, so that nobody acts on the old figure. */
export function mendedText(
  said: string,
  changed: readonly { readonly old: JobReading; readonly by?: JobReading }[],
): string {
  const gone = changed.filter(({ by }) => by === undefined).map(({ old }) => old);
  const now = changed.flatMap(({ old, by }) =>
    by === undefined ? [] : [sentence(`Changed: ${figures([old])} is now ${figures([by])}`)],
  );
  const lines = gone.length === 0 ? now : [...now, sentence(`No longer stands: ${figures(gone)}`)];
  return [said, ...lines].join("\n");
}
