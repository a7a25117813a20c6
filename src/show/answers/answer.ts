import type { ReplyInput, Statement } from "../../model.ts";

export type Question = Extract<Statement, { kind: "question" }>;

/** Answers one kind of question, in plain lines; "" where there is nothing to say. */
export type Answer = (input: ReplyInput, question: Question) => string;
