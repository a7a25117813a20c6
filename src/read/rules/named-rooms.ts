import type { Note, Rule } from "../note.ts";

const before =
  "conference|break|dining|living|waiting|meeting|server|exam|board|class|locker|mail|lunch|family|storage|training|computer|music|art|master|guest|north|south|east|west|front|back|rear|upper|lower|main|first|second|third|fourth|top|ground|corner";
const noun =
  "rooms?|bedrooms?|bathrooms?|classrooms?|lobby|kitchen|bar|offices?|gym|library|hall|hallway|corridor|reception|cafeteria|cafe|auditorium|studio|salon|lounge|den|attic|basement|pantry|foyer|laundry|restaurant|ballroom|nursery|chapel|sanctuary|workshop|warehouse|showroom|boardroom|breakroom|upstairs|downstairs|floor|wing|lab";
const name = `(?:(?:the|a|her|his|their) )?(?:(?:${before}) )?(?:${noun})`;
const ill =
  "(?:too |still |really |pretty |kinda )?(?:warm|hot|cold|stuffy|humid|freezing|muggy)|not cooling|not heating|no cool|no cooling|no heat|no air";
const verb = "(?: is| are|'s)?(?: all| both| still| getting| feeling| a bit)?";
const well = "(?:fine|ok|okay|good|comfortable|alright|normal|cool|cooling)";
// "hot in the kitchen, lobby is fine": what is well begins anew
const list = `${name}(?:(?:, and |, | and | & )(?!${name}${verb} ${well}\\b)${name}){0,6}`;
const fine = new RegExp(`\\b(${name}(?:(?:, and |, | and | & )${name}){0,6})${verb} ${well}\\b`);
const placed = new RegExp(`\\b(${ill}) (?:in|at|on) (${list})\\b`);
// "the kitchen hot water pump" is no warm kitchen
const told = new RegExp(
  `\\b(${list})${verb} (${ill})\\b(?! (?:water|gas|deck|aisle|air|line|side|box|plate))`,
);
/** Said in a sentence or two. */
const longest = 300;

/** "the conference room and the lobby": each by its name. */
function namesOf(said: string | undefined): string[] {
  const names = (said ?? "").split(/, and |, | and | & /);
  return names
    .map((one) => one.replace(/^(?:the|a|her|his|their) /, ""))
    .filter((one) => one !== "");
}

/** "warm in the conference room and the lobby but the back offices are fine": rooms by name, nothing measured. */
export const namedRooms: Rule = {
  name: "<symptom> in <rooms by name>",
  heads: "warm|hot|cold|stuffy|humid|freezing|muggy|cooling|heating|cool|heat|air",
  apply: (note: Note) => {
    const { plain, statements } = note;
    if (note.readings.length > 0 || note.holds.question || plain.length > longest) return;
    if (statements.some(({ kind }) => /^(?:complaint|open_job|question)$/.test(kind))) return;
    const there = placed.exec(plain);
    const match = there ?? told.exec(plain);
    if (match === null) return;
    const [symptom, places] = there === null ? [match[2], match[1]] : [match[1], match[2]];
    const rest = fine.exec(plain.slice(match.index + match[0].length));
    const end = match.index + match[0].length;
    statements.push({
      kind: "complaint",
      places: namesOf(places),
      symptom: symptom ?? "",
      fine: namesOf(rest?.[1]),
      said: note.text.slice(match.index, end),
      spans: [[match.index, end]],
      rule: namedRooms.name,
    });
  },
};
