import { mkdirSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { FileOut } from "../../src/model.ts";
import { sealOfBytes } from "../../src/record/sealed.ts";
import type { Exit, Io } from "./command.ts";

/** Writes each file whole or not at all as it comes, and tells its path. */
export async function writeFiles(
  files: AsyncIterable<FileOut>,
  folder: string,
  io: Io,
): Promise<Exit> {
  for await (const { name, type, bytes } of files) {
    const path = join(folder, name);
    const problem = tryTo(() => {
      mkdirSync(folder, { recursive: true });
      writeFileSync(`${path}.part`, bytes);
      renameSync(`${path}.part`, path);
    });
    if (problem !== undefined) {
      // half a file helps nobody, least of all on a full disk
      tryTo(() => rmSync(`${path}.part`, { force: true }));
      io.complain(`The files can't be written to ${folder}: ${problem}.`);
      return 1;
    }
    io.line(path);
    const seal = type === "application/json" ? sealOfBytes(bytes) : undefined;
    if (seal !== undefined) io.complain(`Seal of ${name} and all that it lists: ${seal}`);
  }
  return 0;
}

function tryTo(write: () => void): string | undefined {
  try {
    write();
    return undefined;
  } catch (error) {
    return reason(error);
  }
}

const reasons = new Map([
  ["ENOSPC", "the disk is full"],
  ["EDQUOT", "this user's share of the disk is used up"],
  ["EFBIG", "no file may grow so large there"],
  ["EIO", "the disk reports an error"],
  ["EACCES", "there is no permission to write there"],
  ["EPERM", "there is no permission to write there"],
  ["EROFS", "that disk is read-only"],
  ["ENOTDIR", "a part of that path is a file"],
  ["EEXIST", "there is a file of that name"],
  ["EISDIR", "there is a folder of a file's name"],
]);

function reason(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const code = "code" in error ? String(error.code) : "";
  return reasons.get(code) ?? error.message;
}
