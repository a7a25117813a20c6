import { itemKind } from "../item.ts";
import type { Note, Rule } from "../note.ts";

const well =
  /^(?:(?:but|and|so|ok) )*((?:the )?(?:\d{1,4}|[a-z]+(?: [a-z]+)?)(?:(?:,| and|, and| &| n) (?:the )?(?:\d{1,4}|[a-z]+(?: [a-z]+)?))+) (?:are|r) (?:all |both |still )?(?:fine|ok|okay|good|cool|cooling)$/;

/** "15 and the lobby are fine": rooms by number or name, of which nothing is measured. */
export const roomsWell: Rule = {
  name: "<rooms> are fine",
  needs: "number",
  apply: (note: Note) => {
    const { items } = note;
    // said in a line of its own
    if (note.plain.length > 200) return;
    const plain = note.plain.trim().replace(/[.!]+$/, "");
    const match = well.exec(plain);
    if (
      match === null ||
      items.some(({ label, unit }) => label !== undefined || unit !== undefined)
    )
      return;
    const places = (match[1] ?? "").split(/,? and |,| & | n /).map((one) => one.trim());
    // "13 and 14 are good" tells as well of amps
    if (places.every((place) => /^\d{1,2}$/.test(place))) return;
    for (const item of items) if (item.kind === itemKind.number) item.owner = roomsWell.name;
    note.statements.push({
      kind: "complaint",
      places: [],
      symptom: "fine",
      fine: places.map((place) => place.replace(/^the /, "")),
      said: note.text,
      spans: [[0, note.text.length]],
      rule: roomsWell.name,
    });
  },
};
