import type { Span, Understood } from "../model.ts";
import { classOf } from "./carrier.ts";
import type { Context } from "./context.ts";
import { type Item, itemKind } from "./item.ts";
import { understand } from "./read.ts";
import { asides, isDue, remarks } from "./rules/list.ts";
import { type Token, tokenKind } from "./token.ts";

/** Why a message was read so, as data: for the command line's verbose reading. */
export interface Explanation {
  readonly tokens: readonly { readonly text: string; readonly kind: string; readonly span: Span }[];
  readonly items: readonly {
    readonly text: string;
    readonly kind: string;
    readonly span: Span;
    /** what it says of a value: P points, L place, Q quantity, R rating, S subject, T time, … */
    readonly says: string;
    readonly value?: number;
    readonly unit?: string;
    /** the rule that took it, so that no other could */
    readonly taken_by?: string;
  }[];
  /** every rule in its order: not due for lack of its words, or tried, and whether it took something */
  readonly rules: readonly {
    readonly name: string;
    readonly due: boolean;
    readonly took: number;
  }[];
  readonly understood: Understood;
}

const itemNames = new Map<number, string>(
  Object.entries(itemKind).map(([name, kind]) => [kind, name]),
);
const tokenNames = new Map<number, string>(
  Object.entries(tokenKind).map(([name, kind]) => [kind, name]),
);

function tokenOf(token: Token): Explanation["tokens"][number] {
  return { text: token.text, kind: tokenNames.get(token.kind) ?? "", span: [token.from, token.to] };
}

function itemOf(item: Item, text: string): Explanation["items"][number] {
  const owner = item.owner;
  item.owner = undefined;
  const says = classOf(item);
  item.owner = owner;
  return {
    text: text.slice(item.from, item.to),
    kind: itemNames.get(item.kind) ?? "",
    span: [item.from, item.to],
    says,
    ...(Number.isNaN(item.value) ? {} : { value: item.value }),
    ...(item.unit === undefined ? {} : { unit: item.unit.figure }),
    ...(owner === undefined ? {} : { taken_by: owner }),
  };
}

/** Reads a message and keeps what happened on the way: tokens, items, rules, and which rule took what. */
export function explain(text: string, context: Context): Explanation {
  const { note, tokens, understood } = understand(text, context);
  const took = (name: string): number =>
    understood.readings.filter((one) => one.rule === name).length +
    understood.statements.filter((one) => one.rule === name).length;
  return {
    tokens: tokens.map(tokenOf),
    items: note.items.map((item) => itemOf(item, text)),
    rules: [...asides, ...remarks].map((rule) => ({
      name: rule.name,
      due: isDue(rule, note),
      took: took(rule.name),
    })),
    understood,
  };
}
