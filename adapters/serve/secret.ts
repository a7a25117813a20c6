import { readFileSync } from "node:fs";
import { z } from "zod";

const known = new Set<string>();

/** Every secret read so far, so that the log can blot it out. */
export const knownSecrets = (): readonly string[] => [...known];

const source = z.union([
  z.strictObject({ env: z.string().min(1) }),
  z.strictObject({ file: z.string().min(1) }),
]);

/** A secret is named, never written into the file: `{"env": "NAME"}` or `{"file": "PATH"}`. */
export const secretSchema = source.transform((from, context) => {
  const value = "env" in from ? process.env[from.env] : contentOf(from.file);
  if (value === undefined || value.trim() === "") {
    const name =
      "env" in from
        ? `the environment variable ${from.env} is not set; set it before starting`
        : `the file ${from.file} is missing, empty or not readable for this user`;
    context.issues.push({ code: "custom", message: name, input: from });
    return z.NEVER;
  }
  // shorter ones would blot out ordinary words
  if (value.trim().length >= 6) known.add(value.trim());
  return value.trim();
});

function contentOf(path: string): string | undefined {
  try {
    return readFileSync(path, "utf8");
  } catch {
    return undefined;
  }
}
