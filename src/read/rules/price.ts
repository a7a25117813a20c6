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

const pricing = /^(?:price|cost|costs|quote|quoted|bid|invoice|rental|paid)$/;

/** "$385/day", "312.60 for the motor", "forty bucks" */
export const prices: Rule = {
  name: "<currency> <number>",
  heads:
    "$|€|£|price|quote|quoted|cost|costs|paid|wants|rental|invoice|bid|dollars|dollar|bucks|buck|usd|cents|euro|euros|grand|each",
  needs: "number",
  apply: (note) => {
    const talk = note.items.some(
      (item) =>
        item.text === "$" ||
        item.text === "price" ||
        item.text === "quote" ||
        item.text === "quoted" ||
        item.text === "cost" ||
        item.text === "costs" ||
        item.text === "€" ||
        item.text === "paid" ||
        item.text === "wants" ||
        item.text === "rental" ||
        item.text === "invoice" ||
        item.text === "bid",
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
        items.slice(Math.max(0, i - 5), i).some((word) => pricing.test(word.text));
      const cents = talk && /^\d+\.\d\d$/.test(item.text) && item.unit === undefined;
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
