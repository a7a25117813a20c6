import { backupCommand } from "./backup.ts";
import { chatCommand } from "./chat.ts";
import type { Command } from "./command.ts";
import { eraseCommand } from "./erase.ts";
import { exportCommand } from "./export.ts";
import { importCommand } from "./import.ts";
import { judgeCommand } from "./judge.ts";
import { readCommand } from "./read.ts";
import { replayCommand } from "./replay.ts";
import { serveCommand } from "./serve.ts";
import { showCommand } from "./show.ts";
import { verifyCommand } from "./verify.ts";

/** Every command; a new one is its file and a line here. */
export const commands: readonly Command[] = [
  chatCommand,
  readCommand,
  judgeCommand,
  replayCommand,
  showCommand,
  exportCommand,
  importCommand,
  serveCommand,
  verifyCommand,
  backupCommand,
  eraseCommand,
];
