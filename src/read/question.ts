import type { OpenQuestion } from "../model.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import type { Note } from "./note.ts";
import { vacOrVolts } from "./vac-or-volts.ts";
import { role } from "./word.ts";

/** Does the number look like a measurement, or is it talk between people? */
function looksMeasured(note: Note, draft: Draft): boolean {
  if (draft.thing === "level" || draft.unit?.dimension === "percent") return false;
  // "28 bar, ambient same": like something that nobody told
  if (draft.same && draft.question === undefined) return false;
  if (
    draft.question !== undefined ||
    draft.points !== undefined ||
    draft.place !== undefined ||
    draft.named !== undefined ||
    draft.hint !== undefined
  )
    return true;
  if (wasAndNow(note, draft)) return true;
  if (pointed(note, draft) || readOff(note, draft) || draft.quantity === "mass") return true;
  // "box -2, stat -5": what it is set to, or what it shows
  if (/^(?:stat|tstat|thermostat)$/.test(note.items[draft.index - 1]?.text ?? "")) return true;
  const joint = note.items[draft.index - 1]?.text;
  if ((joint === "and" || joint === "&") && note.items[draft.index - 2]?.kind === itemKind.subject)
    return false;
  if (draft.subject !== undefined || draft.thing !== undefined) return !plainBehind(note, draft);
  if (draft.action !== undefined) return chargeTalk(note.items, draft);
  if (anotherIn(note, draft)) {
    draft.action = note.context.action ?? "charged";
    return true;
  }
  const words = note.items.filter(
    (item) =>
      item.kind === itemKind.word &&
      !/^(?:first|second|third|last|next|one|other)$/.test(item.text) &&
      (item.roles &
        (role.only | role.is | role.article | role.conjunction | role.not | role.about)) ===
        0,
  );
  return words.length <= 1 && note.items.filter(({ text }) => text !== ".").length <= 6;
}

/** "it was 14 yesterday 9 now": what changed is read off something, whatever it was. */
function wasAndNow({ items, plain }: Note, draft: Draft): boolean {
  if (/\b(?:oclock|hours?|hrs?|mins?|minutes|days?)\b/.test(plain)) return false;
  if (items.length > 9 || draft.unit !== undefined || plainNoun(items[draft.index + 1]))
    return false;
  return /^(?:it|its|that|this|reading)\b.* (?:was|were) .*\d.* now\b|\bnow (?:its|it's|at|only) ?\d/.test(
    plain,
  );
}

const plainNoun = (item: Item | undefined): boolean =>
  item?.kind === itemKind.word && item.roles === 0 && item.signs === undefined;

const onThem =
  /^(?:on|at|across|the|all|each|every|both|of|them|em|legs?|phases?|leads?|three|two|3|2|lines?|pairs?|windings?|board)$/;

/** "reads 3 on all the legs": off a meter, of which nothing else is told. */
function readOff({ items }: Note, draft: Draft): boolean {
  if (
    draft.index > 2 ||
    !/^(?:reads|reading|shows|showing|getting)$/.test(items[draft.index - 1]?.text ?? "")
  )
    return false;
  const behind = items.slice(draft.index + 1).filter(({ kind }) => kind !== itemKind.sign);
  return behind.length > 1 && behind.every(({ text }) => onThem.test(text));
}

/** "legs 12.9 13.1 12.8 after": figures with a point in a row are read off a meter, whatever was talked of. */
function pointed(note: Note, draft: Draft): boolean {
  const { items } = note;
  const exact = (item: Item | undefined): boolean =>
    item?.kind === itemKind.number &&
    item.unit === undefined &&
    !item.fraction &&
    !Number.isInteger(item.value);
  const beside = (step: number): Item | undefined => {
    const next = items[draft.index + step];
    return /^(?:,|\/|and|&)$/.test(next?.text ?? "") ? items[draft.index + 2 * step] : next;
  };
  return exact(items[draft.index]) && (exact(beside(1)) || exact(beside(-1)));
}

/** A plain word behind a bare number: it counts or names something. */
function plainBehind(note: Note, draft: Draft): boolean {
  return plainNoun(note.items[draft.index + 1]);
}

/** "another four in" while gas is being weighed. */
function anotherIn(note: Note, draft: Draft): boolean {
  if (note.context.action === undefined || draft.unit !== undefined) return false;
  return (
    note.items[draft.index - 1]?.text === "another" &&
    /^(?:in|out|back)$/.test(note.items[draft.index + 1]?.text ?? "")
  );
}

/** "put 3 in", "added three": a charge said with nothing counted behind the number. */
function chargeTalk(items: readonly Item[], draft: Draft): boolean {
  const gone = items[draft.index - 1]?.text === "back" && draft.before.length === 1;
  if (gone && !items.some((item) => item.unit?.dimension === "mass")) return false;
  const next = items[draft.index + 1];
  if (next === undefined || next.text === "more" || next.text === "back") return true;
  if (next.label?.action !== undefined) return true;
  return countsOn(next);
}

function countsOn(next: Item): boolean {
  return (next.roles !== 0 || next.kind !== itemKind.word) && next.kind !== itemKind.label;
}

function told(note: Note, draft: Draft): string {
  const item = note.items[draft.index];
  if (item === undefined) return "";
  return item.spoken
    ? String(Number(draft.value.toPrecision(9)))
    : note.text.slice(item.from, item.numberTo);
}

function ask(note: Note, text: string): void {
  if (note.ask.length === 0) note.ask.push(text);
}

function unread(note: Note, draft: Draft): void {
  const item = note.items[draft.index];
  if (item === undefined) return;
  item.owner = "asked";
  note.unread.push([item.from, item.to]);
  draft.gone = true;
}

function sayOf(note: Note, draft: Draft): string {
  const points = draft.points?.[0];
  const name =
    points !== undefined
      ? points.join(" to ")
      : (draft.subject ?? draft.place?.replace(/_/g, " ") ?? "");
  return name === "" ? told(note, draft) : `${name} ${told(note, draft)}`;
}

/** A loose pair ("twenty two nine") counts where a value like it stands beside it. */
function loose(note: Note, draft: Draft, drafts: readonly Draft[]): boolean {
  const item = note.items[draft.index];
  if (item?.loose !== true) return false;
  // "the tag says twelve four": pounds and ounces, or tenths
  if (draft.quantity === "mass" && !draft.ownUnit) return true;
  // "eighteen four" amps: 184 is said "one eighty four"
  if (draft.quantity === "current" && draft.value >= 10 && draft.rating === undefined) return false;
  const like = note.context.readings.some((reading) => {
    const ratio = draft.value / Number(reading.figure.number);
    return reading.quantity === draft.quantity && ratio > 0.5 && ratio < 2;
  });
  const beside = drafts.some(
    (other) =>
      other !== draft &&
      !other.gone &&
      other.quantity === draft.quantity &&
      note.items[other.index]?.loose !== true &&
      draft.value / other.value > 0.5 &&
      draft.value / other.value < 2,
  );
  return !(like || beside || bothDraw(note, draft, drafts)) || draft.action !== undefined;
}

/** "drawing eighteen six on L1 and eighteen nine on L2", three in a row: legs said alike bear each other out. */
function bothDraw(note: Note, draft: Draft, drafts: readonly Draft[]): boolean {
  if (draft.quantity !== "current") return false;
  const alike = drafts.filter(
    (other) =>
      other !== draft &&
      !other.gone &&
      other.quantity === "current" &&
      (other.points === undefined) === (draft.points === undefined) &&
      note.items[other.index]?.loose === true &&
      Math.abs(draft.value - other.value) < 0.1 * draft.value,
  );
  return alike.length > (draft.points === undefined ? 1 : 0);
}

/** Which question, if any, a draft needs. */
function missing(
  note: Note,
  draft: Draft,
  drafts: readonly Draft[],
): "unit" | "quantity" | "choice" | undefined {
  if (draft.question === "choice" || draft.question === "unit" || draft.question === "quantity")
    return draft.question;
  if (draft.same || draft.over || draft.zero) return undefined;
  if (vacOrVolts(note, draft)) return "quantity";
  if (loose(note, draft, drafts))
    return draft.quantity === "mass" || draft.action !== undefined ? "unit" : "choice";
  if (draft.quantity === undefined)
    return draft.action !== undefined || draft.rating === "nameplate_charge" ? "unit" : "quantity";
  if (draft.quantity === "mass" && draft.unit === undefined) return "unit";
  return undefined;
}

function askedDraft(note: Note, draft: Draft): OpenQuestion["drafts"][number] {
  const points = draft.points?.[0];
  return {
    number: draft.value,
    figure: told(note, draft),
    ...(draft.quantity === undefined ? {} : { quantity: draft.quantity }),
    ...(draft.unit === undefined ? {} : { unit: draft.unit.figure }),
    ...(points === undefined ? {} : { points }),
    ...(draft.place === undefined ? {} : { at: draft.place }),
    ...(draft.subject === undefined ? {} : { subject: draft.subject }),
    ...(draft.action === undefined ? {} : { action: draft.action }),
  };
}

/** Asks once for what cannot be known, and takes those numbers out of the readings. */
export function question(note: Note, drafts: readonly Draft[]): void {
  const open = drafts.filter((draft) => !draft.gone && missing(note, draft, drafts) !== undefined);
  const asked = open.filter((draft) => looksMeasured(note, draft));
  const [first] = asked;
  if (first !== undefined)
    note.open = {
      missing: missing(note, first, drafts) ?? "quantity",
      drafts: asked.map((draft) => askedDraft(note, draft)),
    };
  for (const draft of open) {
    const kind = missing(note, draft, drafts);
    const measured = looksMeasured(note, draft);
    if (measured && kind !== undefined) askFor(note, open, draft, kind);
    unread(note, draft);
  }
  for (const draft of drafts) if (!draft.gone && draft.quantity === undefined) draft.gone = true;
}

function askFor(
  note: Note,
  open: readonly Draft[],
  draft: Draft,
  kind: "unit" | "quantity" | "choice",
): void {
  if (kind === "choice") {
    const both = open
      .filter((other) => other.question === "choice")
      .map((other) => told(note, other));
    ask(
      note,
      both.length > 1 ? `${both.join(" or ")}?` : `${sayOf(note, draft)}: say it again, please?`,
    );
  } else if (
    kind === "unit" &&
    (draft.action !== undefined || draft.quantity === "mass" || draft.rating === "nameplate_charge")
  ) {
    const kilos = /^k?g$/.test(
      note.context.readings.findLast(({ quantity }) => quantity === "mass")?.figure.unit ?? "",
    );
    ask(
      note,
      kilos || note.context.units === "si"
        ? `${told(note, draft)} kg or g?`
        : `${told(note, draft)} pounds or ounces?`,
    );
  } else if (kind === "unit" && draft.quantity === "valve_opening")
    ask(note, `${sayOf(note, draft)} percent or steps?`);
  else if (kind === "unit") ask(note, `${sayOf(note, draft)}: in what unit?`);
  else ask(note, `${sayOf(note, draft)}: what was measured, in what unit?`);
}
