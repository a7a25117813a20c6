#!/usr/bin/env node
import { storeProblem } from "../../src/record/store.ts";
import type { Exit, Io } from "./command.ts";
import { runCommand } from "./run-command.ts";

// what the program writes is its owner's alone: the store, its copies, exports, keys
process.umask(0o077);

const io: Io = {
  input: process.stdin,
  line: (text) => {
    process.stdout.write(`${text}\n`);
  },
  complain: (text) => {
    process.stderr.write(`${text}\n`);
  },
};

// the reader of a pipe may leave early ("| head"): that is no fault
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") process.exit(0);
  throw error;
});

runCommand(process.argv.slice(2), io).then(
  (exit: Exit) => {
    process.exitCode = exit;
  },
  (error: unknown) => {
    io.complain(storeProblem(error, "The store") ?? sentenceOf(error));
    process.exitCode = 1;
  },
);

function sentenceOf(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  return process.env.READBACK_TRACE === undefined
    ? `Something went wrong that this program did not expect: ${error.message} (READBACK_TRACE=1 shows where).`
    : (error.stack ?? error.message);
}
