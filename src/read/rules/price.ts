import { type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

const money: ReadonlySet<string> = new Set([
  "dollars",
  "dollar",
  "bucks",
  "buck",
  "usd",
  "cents",
  "euro",
  "euros",
  "grand",
  "each",
]);

const pricing =
  /^(?:price|priced|pricing|cost|costs|costing|quote|quoted|quoting|bid|bidding|invoice|invoiced|receipts?|rental|paid|owe|owes|owed|owing|charges|charging|estimate|estimated|billed|billing)$/;
/** what is paid for by itself: "eleven hundred for the labor" */
const forLabor = /^(?:labor|labour|parts|materials?|crane|rental|freight|shipping)$/;

/** "$385/day", "312.60 for the motor", "forty bucks" */
export const prices: Rule = {
  name: "<currency> <number>",
  heads:
    "$|€|£|price|priced|pricing|quote|quoted|quoting|cost|costs|costing|paid|owe|owes|owed|owing|wants|rental|receipt|receipts|invoice|invoiced|bid|bidding|estimate|estimated|billed|billing|dollars|dollar|bucks|buck|usd|cents|euro|euros|grand|each",
  needs: "number",
  apply: (note) => {
    const talk = note.items.some(
      ({ text }) => text === "$" || text === "€" || text === "wants" || pricing.test(text),
    );
    const { items } = note;
    items.forEach((item, i) => {
      if (!freeNumber(item)) return;
      const sign = textAt(note.items, i - 1);
      const marked = sign === "$" || sign === "€" || sign === "£";
      const asked =
        talk &&
        item.unit === undefined &&
        item.value >= 20 &&
        (items.slice(Math.max(0, i - 5), i).some((word) => pricing.test(word.text)) ||
          (textAt(items, i + 1) === "for" &&
            items.slice(i + 2, i + 4).some((word) => forLabor.test(word.text))));
      // "total static 1.30, unit wants .8": a figure behind its own name is no money
      const cents =
        talk &&
        /^\d+\.\d\d$/.test(item.text) &&
        item.unit === undefined &&
        items[i - 1]?.label?.quantity === undefined;
      if (
        !marked &&
        !cents &&
        !asked &&
        !(money.has(textAt(note.items, i + 1)) && textAt(note.items, i + 1) !== "each")
      )
        return;
      state(note, prices.name, [marked ? i - 1 : i, i + 1], { kind: "note", about: "price" });
    });
  },
};
