import type { JobStatement } from "../model.ts";
import type { Status } from "../vocabulary.ts";
import { alongWith } from "./along-with.ts";
import type { Standing } from "./standing.ts";

const ends: ReadonlySet<Status> = new Set(["left_site", "done", "waiting_for_parts", "no_access"]);

/** "we are both out of here", "we're leaving": all who are there. */
const allGo =
  /\b(?:we(?:['’]?re| are)?(?: both| all)? (?:out\b(?! of)|out of here|leaving|left\b(?! (?:the|a|it))|heading out|gone\b)|(?:both|(?:the )?(?:two|three|pair) of us)(?: of us)?(?: are)? (?:out\b(?! of)|off\b|away\b|leaving|heading out)|we(?:['’]?re| are)(?: both| all)? (?:off|away)\s*(?:$|[.,!]))/i;
/** "leaving w petra", "teo's with me": the two of them. */
const goesWith = [
  /\b(?:leaving|left|heading out|out|gone)[,.;]? (?:and )?@?(\p{L}[\p{L}'-]+) (?:too|also|as well)\b/iu,
  // "leaving til the board shows up, jude too"
  /[,.;] ?(?:and )?@?(\p{L}[\p{L}'-]+) (?:too|also|as well)\s*[.!]?\s*$/iu,
  /\b(?:leaving|left|heading out|out of here|gone) (?:w|with)[/ ]+@?(\p{L}[\p{L}'-]+)/iu,
  /\b(?:me|myself|i) (?:and|n|&|\+) @?(\p{L}[\p{L}'-]+)(?: are| r)?(?: both)? (?:out|off|leaving|gone|heading out)\b/iu,
  /(?<!\p{L})(\p{L}[\p{L}'-]+) (?:and|n|&|\+) (?:me|myself|i)(?: are| r)?(?: both)? (?:out|off|leaving|gone|heading out)\b/iu,
  /(?<!\p{L})(\p{L}+?)(?:['’]?s| is| comes| came| rides| riding) (?:w|with)[/ ]+me\b/iu,
];

const statusOf = ({ statement }: JobStatement): Status | undefined =>
  statement.kind === "status" ? statement.status : undefined;

interface Told {
  readonly statements: readonly JobStatement[];
  readonly standing: readonly Standing[];
  /** whom the desk sent */
  readonly sent: readonly (string | undefined)[];
}

/**
 * The statements, and those of whom somebody else spoke: who came "w/ Mo" came with him where Mo
 * himself only says that he goes or tells of the work, and who says "we are both out" ends the other's visit too.
 */
export function withOthers(
  statements: readonly JobStatement[],
  standing: readonly Standing[],
  sent: readonly (string | undefined)[] = [],
): readonly JobStatement[] {
  const texts = new Map(standing.map(({ entry }) => [entry.message, entry.text ?? ""]));
  const told = { statements, standing, sent };
  const here = new Set<string>();
  /** who rides with whom */
  const beside = new Map<string, string>();
  /** whose coming another alone told of */
  const brought = new Set<string>();
  return statements.flatMap((one): readonly JobStatement[] => {
    const status = statusOf(one);
    const text = texts.get(one.message) ?? "";
    if (status === undefined) return [one];
    const named = alongWith(text);
    if (status === "on_the_way" && named !== undefined) beside.set(one.who, named);
    if (status === "on_site") {
      here.add(one.who);
      brought.delete(one.who);
      const other = cameAlong(named ?? beside.get(one.who), one, told);
      beside.delete(one.who);
      if (other === undefined || here.has(other)) return [one];
      here.add(other);
      brought.add(other);
      return [{ ...one, who: other }, one];
    }
    here.delete(one.who);
    brought.delete(one.who);
    if (!ends.has(status)) return [one];
    const gone = [...here].filter(
      (who) =>
        allGo.test(text) ||
        isNamed(who, text) ||
        // who was brought and says nothing more goes with whom he came
        (brought.has(who) && !tellsLater(who, one, standing)),
    );
    for (const who of gone) {
      here.delete(who);
      brought.delete(who);
    }
    return [one, ...gone.map((who) => ({ ...one, who }))];
  });
}

const isNamed = (who: string, text: string): boolean =>
  goesWith.some((form) => form.exec(text)?.[1]?.toLowerCase() === who.toLowerCase());

/** Does he tell anything of the work there behind a moment? */
function tellsLater(who: string, { at }: JobStatement, standing: readonly Standing[]): boolean {
  return standing.some(
    ({ entry, note, instant, fate }) =>
      fate === "stands" &&
      entry.who === who &&
      instant > Date.parse(at) &&
      (note.readings.length > 0 || note.statements.some(isOfWork)),
  );
}

const isOfWork = ({ kind }: { readonly kind: string }): boolean =>
  /^(?:action|observation|part|status)$/.test(kind);

/** Who was named along, where the next that he says of himself is that he goes, or tells of the work there. */
function cameAlong(
  name: string | undefined,
  { at }: JobStatement,
  { statements, standing, sent }: Told,
): string | undefined {
  if (name === undefined) return undefined;
  const from = Date.parse(at);
  const next = statements.find(
    (one) =>
      one.who.toLowerCase() === name && statusOf(one) !== undefined && Date.parse(one.at) > from,
  );
  const status = next === undefined ? undefined : statusOf(next);
  if (status !== undefined && ends.has(status)) return next?.who;
  // who was sent, and is named as coming along, is there without a word of his own
  const own = sent.find((who) => who?.toLowerCase() === name);
  if (own !== undefined && next === undefined) return own;
  const until = next === undefined ? Number.POSITIVE_INFINITY : Date.parse(next.at);
  return standing.find(
    ({ entry, note, instant, fate }) =>
      fate === "stands" &&
      entry.who.toLowerCase() === name &&
      instant > from &&
      instant < until &&
      (note.readings.length > 0 ||
        note.statements.some(({ kind }) => kind === "action" || kind === "observation")),
  )?.entry.who;
}
