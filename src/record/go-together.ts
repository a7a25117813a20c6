import type { JobStatement } from "../model.ts";
import type { Status } from "../vocabulary.ts";
import { alongWith } from "./along-with.ts";
import type { Standing } from "./standing.ts";

const ends: ReadonlySet<Status> = new Set(["left_site", "done", "waiting_for_parts", "no_access"]);

/** "we are both out of here", "we're leaving": all who are there. */
const allGo =
  /\b(?:we(?:['’]?re| are)?(?: both| all)? (?:out\b(?! of)|out of here|leaving|left\b(?! (?:the|a|it))|heading out|gone\b)|both (?:of us )?(?:out\b(?! of)|leaving|heading out))/i;
/** "leaving w petra": the two of them. */
const goesWith =
  /\b(?:leaving|left|heading out|out of here|gone) (?:w|with)[/ ]+@?(\p{L}[\p{L}'-]+)/iu;

const statusOf = ({ statement }: JobStatement): Status | undefined =>
  statement.kind === "status" ? statement.status : undefined;

/**
 * The statements, and those of whom somebody else spoke: who came "w/ Mo" came with him where Mo
 * himself only says that he goes, and who says "we are both out" ends the other's visit too.
 */
export function withOthers(
  statements: readonly JobStatement[],
  standing: readonly Standing[],
): readonly JobStatement[] {
  const texts = new Map(standing.map(({ entry }) => [entry.message, entry.text ?? ""]));
  const here = new Set<string>();
  return statements.flatMap((one): readonly JobStatement[] => {
    const status = statusOf(one);
    const text = texts.get(one.message) ?? "";
    if (status === undefined) return [one];
    if (status === "on_site") {
      here.add(one.who);
      const other = cameAlong(alongWith(text), one, statements);
      if (other === undefined || here.has(other)) return [one];
      here.add(other);
      return [{ ...one, who: other }, one];
    }
    here.delete(one.who);
    if (!ends.has(status)) return [one];
    const gone = allGo.test(text) ? [...here] : [...here].filter((who) => isNamed(who, text));
    for (const who of gone) here.delete(who);
    return [one, ...gone.map((who) => ({ ...one, who }))];
  });
}

const isNamed = (who: string, text: string): boolean =>
  goesWith.exec(text)?.[1]?.toLowerCase() === who.toLowerCase();

/** Who was named along, where the next that he says of himself is that he goes. */
function cameAlong(
  name: string | undefined,
  { at }: JobStatement,
  statements: readonly JobStatement[],
): string | undefined {
  if (name === undefined) return undefined;
  const next = statements.find(
    (one) =>
      one.who.toLowerCase() === name &&
      statusOf(one) !== undefined &&
      Date.parse(one.at) > Date.parse(at),
  );
  const status = next === undefined ? undefined : statusOf(next);
  return status !== undefined && ends.has(status) ? next?.who : undefined;
}
