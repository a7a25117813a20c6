import { Readable } from "node:stream";
import { runCommand } from "../../adapters/command-line/run-command.ts";

export interface Ran {
  readonly exit: number;
  readonly out: readonly string[];
  readonly complaints: string;
}

/** Runs one command line in this process, on a text as its standard input. */
export async function run(args: readonly string[], input: string | Buffer = ""): Promise<Ran> {
  const out: string[] = [];
  const complaints: string[] = [];
  const exit = await runCommand(args, {
    input: Readable.from(input.length === 0 ? [] : [Buffer.from(input)]),
    line: (text) => out.push(text),
    complain: (text) => complaints.push(text),
  });
  return { exit, out, complaints: complaints.join("\n") };
}
