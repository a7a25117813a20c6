import { greetingAhead, whoseJob } from "../../vocabulary.ts";
import { itemKind } from "../item.ts";
import type { Note, Rule } from "../note.ts";
import { gasSaid } from "./loose-code.ts";

const head = new RegExp(
  String.raw`^\s*${greetingAhead}(?:new job|new call|open job|open a job|job for|new ticket)\s*[:,-]?\s*`,
);

/** Where the head "new job" ends in the plain text, if the message begins with it. */
function headEnd(plain: string): number {
  const match = head.exec(plain);
  return match === null ? -1 : match[0].length;
}

/** "rack B": machines that are told apart by a letter. */
const lettered = /^(?:rack|chiller|tower|boiler|system) [A-Z]$/i;

interface Tag {
  readonly name: string;
  readonly from: number;
  readonly to: number;
}

/** The unit's tag within the first part: "RTU-1". */
function tagIn(note: Note, from: number, to: number): Tag | undefined {
  const item = note.items.find(
    (one) =>
      one.kind === itemKind.subject &&
      one.subject !== "" &&
      one.from >= from &&
      one.to <= to &&
      (/\d/.test(one.subject ?? "") || lettered.test(one.subject ?? "")),
  );
  return item?.subject === undefined
    ? (halfRack(note, from, to) ?? coldBox(note, from, to))
    : { name: item.subject, from: item.from, to: item.to };
}

const half = /\b(?:rack|pack) (?:lt|mt|it|ht|[a-z])(?![a-z])/;

/** "rack LT": told apart by what it keeps cold. */
function halfRack({ plain }: Note, from: number, to: number): Tag | undefined {
  const match = half.exec(plain.slice(from, to));
  if (match === null) return undefined;
  const at = from + match.index;
  const [rack = "", name = ""] = match[0].split(" ");
  return { name: `${rack} ${name.toUpperCase()}`, from: at, to: at + match[0].length };
}

/** "dairy case 3": a box by what lies in it, and its number. */
function coldBox({ items, plain }: Note, from: number, to: number): Tag | undefined {
  const at = items.findIndex(
    (one, i) =>
      one.label?.place === "box" &&
      one.from >= from &&
      items[i + 1]?.kind === itemKind.number &&
      (items[i + 1]?.to ?? to) <= to &&
      items[i + 1]?.unit === undefined,
  );
  const [box, number] = [items[at], items[at + 1]];
  if (at < 0 || box === undefined || number === undefined) return undefined;
  return { name: plain.slice(box.from, number.to), from: box.from, to: number.to };
}

const oneName = /^[\s,]*(@?\p{Lu}\p{Ll}+(?: (?:and|&|n|\+|with) @?\p{Lu}\p{Ll}+)?)[\s.!]*$/u;

/** ". R-448A": what is in it, said last. */
const gasBehind = /[.,]? ?\bR-?\d{2,4}[A-Za-z]{0,2}\.?\s*$/;

/** The last sentence, if it begins with a name: "Sorrel", "Dov when you can". */
function assignedIn(text: string): { readonly name: string; readonly from: number } | undefined {
  const said = text.replace(gasBehind, "");
  const at = said.lastIndexOf(". ");
  if (at < 0) return undefined;
  const tail = said.slice(at + 2).trim();
  const name = /^\p{Lu}[\p{L}'][\p{L}'-]*/u.exec(tail)?.[0];
  return name === undefined || tail.split(" ").length > 8 ? undefined : { name, from: at };
}

/** "… Hall condensing unit six": what kind of unit it is goes with it, not with the site. */
const kindOfUnit = /\s+(condensing|outdoor|indoor|packaged|package|make-?up air|air handling)$/i;

/** "Job for Marek: Tamarack Grocer, …", "new job Olaf: Brickyard Lofts RTU-5": whose it is stands before the colon, a site of several words behind it. */
function forWhom(
  text: string,
  head: number,
): { readonly name: string; readonly to: number } | undefined {
  const said = whoseJob.exec(text.slice(head));
  return said?.[1] === undefined ? undefined : { name: said[1], to: head + said[0].length };
}

const placeOf = (site: string): { readonly site?: string } => (site === "" ? {} : { site });

const rooms = /^(?:suites?|rooms?|rm|apt|apartment|flat|unit|office|#)$/;

/** "…, R-448A", "OU-1 410A, …": what is in the unit is told with the call. */
function sayGas(note: Note, from: number): void {
  const { items, text, statements } = note;
  for (const [i, item] of items.entries()) {
    if (item.from < from || rooms.test(items[i - 1]?.text ?? "")) continue;
    const gas = gasSaid(note, i);
    if (gas === undefined) continue;
    const span = [item.from, items[gas.end - 1]?.to ?? item.to] as const;
    const said = { said: text.slice(...span), spans: [span], rule: openJob.name };
    statements.push({ kind: "nameplate", field: "refrigerant", value: gas.value, ...said });
    return;
  }
}

/** "New job: <site> <tag>, <complaint>. <person>" */
export const openJob: Rule = {
  name: "new job: <site> <unit>, <complaint>. <person>",
  heads: "new|open|job",
  apply: (note) => {
    const start = headEnd(note.plain);
    if (start < 0) return;
    const { text } = note;
    const whose = forWhom(text, start);
    const head = whose?.to ?? start;
    const behindAll = assignedIn(text);
    const assigned = whose ?? behindAll;
    const end = whose === undefined ? (behindAll?.from ?? text.length) : text.length;
    const comma = text.indexOf(",", head);
    const cut = comma < 0 || comma > end ? end : comma;
    const tag = tagIn(note, head, cut);
    const site = text
      .slice(head, tag?.from ?? cut)
      .replace(/[\s,.]+$/, "")
      .trim();
    const named = /^unit \d/.test(tag?.name ?? "") ? kindOfUnit.exec(site) : null;
    // "new job cedar clinic ou-2 not cooling": without a comma it begins behind the tag
    const behind = tag?.to ?? cut;
    // "case 3 warm, Otis"
    const trouble = text.slice(behind, cut).trim() !== "" && oneName.test(text.slice(cut, end));
    const complaint = text
      .slice(Math.min(cut === end || trouble ? behind : cut + 1, end), trouble ? cut : end)
      .replace(/^[\s,:-]+|[\s.]+$/g, "")
      .trim();
    sayGas(note, behind);
    for (const item of note.items) item.owner = openJob.name;
    const last = text.trimEnd().length;
    note.statements.push({
      kind: "open_job",
      ...placeOf(named === null ? site : site.slice(0, named.index)),
      ...(tag === undefined ? {} : { equipment: `${named?.[1] ?? ""} ${tag.name}`.trim() }),
      ...(complaint === "" ? {} : { complaint }),
      ...(assigned === undefined ? {} : { assigned: assigned.name }),
      said: text.slice(0, last),
      spans: [[0, last]],
      rule: openJob.name,
    });
  },
};
