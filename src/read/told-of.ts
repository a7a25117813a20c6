import type { Building } from "./items.ts";
import { role } from "./word.ts";

/** "1.9 on lead two and lead three's only 200": the last of the list has a value of its own. */
export function toldOf(build: Building, end: number): boolean {
  if (build.tokens[end - 1]?.apostrophe === true) return true;
  return ((build.tokens[end]?.word?.roles ?? 0) & role.is) !== 0;
}
