import { itemKind } from "../item.ts";
import type { Note, Rule } from "../note.ts";

const well =
  /^((?:the )?[a-z0-9][a-z0-9,& ]*) (?:are|r) (?:all |both |still )?(?:fine|ok|okay|good|cool|cooling)$/;
const opening = /^(?:(?:but|and|so|ok) )+/;
const parting = /,? and |, | & | n /;
const place = /^(?:the )?(?:\d{1,4}|[a-z]+(?: [a-z]+)?)$/;

/** "15 and the lobby are fine": rooms by number or name, of which nothing is measured. */
export const roomsWell: Rule = {
  name: "<rooms> are fine",
  needs: "number",
  apply: (note: Note) => {
    const { items } = note;
    // said in a line of its own
    if (note.plain.length > 200) return;
    const plain = note.plain.trim().replace(/[.!]+$/, "");
    const match = well.exec(plain.replace(opening, ""));
    if (
      match === null ||
      items.some(({ label, unit }) => label !== undefined || unit !== undefined)
    )
      return;
    const places = (match[1] ?? "").split(parting);
    if (places.length < 2 || !places.every((one) => place.test(one))) return;
    // "13 and 14 are good" tells as well of amps
    if (places.every((one) => /^\d{1,2}$/.test(one))) return;
    for (const item of items) if (item.kind === itemKind.number) item.owner = roomsWell.name;
    note.statements.push({
      kind: "complaint",
      places: [],
      symptom: "fine",
      fine: places.map((one) => one.replace(/^the /, "")),
      said: note.text,
      spans: [[0, note.text.length]],
      rule: roomsWell.name,
    });
  },
};
