/** Names of one kind of part: the office writes "BB-2", the roof says "box 2". */
const kinds: readonly (readonly [form: RegExp, kind: string])[] = [
  [/^(?:branch (?:box|controller|selector|unit)|(?:selector|mode) box|box|bb|bs|bc)$/, "branch"],
  [/^(?:outdoor(?: unit)?|ou|odu|cu|condens(?:er|ing unit))$/, "outdoor"],
  [/^(?:indoor(?: unit)?|iu|idu)$/, "indoor"],
];

/** A part's name with its kind told one way: "branch 2", "branch 1 port 3". */
function plainPart(tag: string): string {
  const [whole = "", port] = tag.toLowerCase().split(/[\s-]*\bport[\s-]*/);
  const [, said = "", number = ""] = /^([a-z ]+?)[\s-]*(\d+[a-z]?|[a-z])$/.exec(whole.trim()) ?? [];
  const kind = kinds.find(([form]) => form.test(said))?.[1] ?? said;
  const name = number === "" ? whole.replaceAll(/[\s-]/g, "") : `${kind} ${number}`;
  return port === undefined ? name : `${name} port ${port}`;
}

/** The name among those known that a said one means: letter for letter, else the only one of its kind and number. */
export function knownPart(known: readonly string[], said: string): string | undefined {
  const bare = (tag: string): string => tag.toLowerCase().replaceAll(/[\s-]/g, "");
  const exact = known.find((tag) => bare(tag) === bare(said));
  if (exact !== undefined) return exact;
  const alike = known.filter((tag) => plainPart(tag) === plainPart(said));
  return alike.length === 1 ? alike[0] : undefined;
}
