import { parseArgs } from "node:util";
import type { Command, Exit, Given, Io, Option } from "./command.ts";
import { commands } from "./commands.ts";

/** Runs one command line; without a command it is the chat. */
export async function runCommand(args: readonly string[], io: Io): Promise<Exit> {
  const [first, ...rest] = args;
  if (first === "help" || first === "--help" || first === "-h") {
    io.line(usage());
    return 0;
  }
  const named = first !== undefined && !first.startsWith("-");
  const name = named ? first : "chat";
  const command = commands.find((known) => known.name === name);
  if (command === undefined) {
    io.complain(`There is no command "${name}". ${known()}`);
    return 2;
  }
  const given = parse(command, named ? rest : args);
  if (typeof given === "string") {
    io.complain(`${given} Usage: readback ${command.name} ${command.usage}`.trimEnd());
    return 2;
  }
  if (given.options.help === true) {
    io.line(usageOf(command));
    return 0;
  }
  return command.run(given, io);
}

const helpOption: Option = { type: "boolean", short: "h", about: "this" };

function parse(command: Command, args: readonly string[]): Given | string {
  const all: Readonly<Record<string, Option>> = { help: helpOption, ...command.options };
  const options = Object.fromEntries(
    Object.entries(all).map(([name, { type, short }]) => [
      name,
      short === undefined ? { type } : { type, short },
    ]),
  );
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      options,
      allowPositionals: true,
      strict: true,
    });
    const [fewest, most] = command.words;
    const help = values.help === true;
    if (!help && positionals.length < fewest) return `${command.name} needs more than that.`;
    if (!help && positionals.length > most) {
      return `${command.name} does not know what to do with "${positionals[most]}".`;
    }
    const plain: Record<string, string | boolean> = {};
    for (const [name, value] of Object.entries(values)) {
      if (typeof value === "string" || typeof value === "boolean") plain[name] = value;
    }
    return { words: positionals, options: plain };
  } catch (error) {
    return error instanceof Error ? firstSentence(error.message) : String(error);
  }
}

/** The option parser adds advice for programmers after its first sentence. */
function firstSentence(message: string): string {
  const end = message.search(/\.\s|\n|\. To specify/);
  const text = end < 0 ? message : message.slice(0, end);
  return `${text.replace(/[.\s]+$/, "")}.`;
}

const known = (): string => `Known: ${commands.map(({ name }) => name).join(", ")}.`;

function usageOf(command: Command): string {
  const options = Object.entries(command.options).map(
    ([name, { about, short }]) =>
      `    ${`--${name}${short === undefined ? "" : `, -${short}`}`.padEnd(14)} ${about}`,
  );
  return [
    `readback ${command.name} ${command.usage}`.trimEnd(),
    `    ${command.about}`,
    ...options,
  ].join("\n");
}

function usage(): string {
  return commands.map(usageOf).join("\n");
}
