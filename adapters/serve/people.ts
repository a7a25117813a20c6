import { z } from "zod";

/**
 * Somebody whom the bot listens to. `person` is the name that stands in the record; the others are
 * the account's full id on each platform ("U024BE7LH", "@bram:chat.example"), never a display name.
 */
export const personSchema = z
  .strictObject({
    person: z.string().min(1),
    role: z.enum(["tech", "dispatcher", "office"]),
    slack: z
      .string()
      .regex(
        /^[UW][A-Z0-9]{2,}$/,
        "a Slack member id looks like U024BE7LH: in the profile, “Copy member ID”",
      )
      .optional(),
    matrix: z
      .string()
      .regex(/^@[^:\s]+:\S+$/, "a Matrix id looks like @bram:chat.example")
      .optional(),
  })
  .readonly();

export type Person = z.output<typeof personSchema>;
