import type { JobReading } from "../model.ts";
import { figures } from "./figures.ts";
import { sentence } from "./wording.ts";

/** An earlier reply with what no longer stands of it, so that nobody acts on the old figure. */
export function mendedText(
  said: string,
  changed: readonly { readonly old: JobReading; readonly by?: JobReading }[],
): string {
  const lines = changed.map(({ old, by }) =>
    sentence(
      by === undefined
        ? `No longer stands: ${figures([old])}`
        : `Changed: ${figures([old])} is now ${figures([by])}`,
    ),
  );
  return [said, ...lines].join("\n");
}
