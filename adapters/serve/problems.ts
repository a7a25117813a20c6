import type { z } from "zod";

/** Each mistake of a configuration in one sentence: its place, what is wrong, what would be right. */
export function problemsOf(error: z.ZodError, place: readonly string[] = []): readonly string[] {
  return error.issues.map((issue) => {
    const path = [...place, ...issue.path.map(String)].join(".");
    return `"${path}": ${wordsOf(issue)}.`;
  });
}

function wordsOf(issue: z.core.$ZodIssue): string {
  if (issue.code === "unrecognized_keys") {
    return `knows no ${issue.keys.map((key) => `"${key}"`).join(", ")}; take it out or mend its spelling`;
  }
  if (issue.code === "invalid_type" && issue.input === undefined) {
    return `is missing; it must be ${kindOf(issue.expected)}`;
  }
  if (issue.code === "invalid_type") return `must be ${kindOf(issue.expected)}`;
  if (issue.code === "invalid_value") return `must be one of ${issue.values.join(", ")}`;
  if (issue.code === "invalid_union") {
    return 'is not written as it should be; a secret is named as {"env": "NAME"} or {"file": "PATH"}, never written out';
  }
  return issue.message.replace(/\.$/, "");
}

const kinds: Readonly<Record<string, string>> = {
  string: "text in quotes",
  number: "a number",
  boolean: "true or false",
  object: "an object in {}",
  array: "a list in []",
  record: "an object in {}",
};
const kindOf = (expected: string): string => kinds[expected] ?? expected;
