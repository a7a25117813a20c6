import type { types } from "@slack/bolt";
import { fitBoard, opensGroup } from "../serve/board-fit.ts";

/** Slack's limits, from its Block Kit reference; the sum over a message was found in practice. */
const limits = { header: 150, section: 3000, blocks: 50, whole: 11_000 } as const;

/**
 * The board as blocks: its first line as header, then a section a group, all plain text so that
 * nothing that people wrote becomes a link or a call. What does not fit is counted at the end.
 */
export function boardBlocks(text: string, key: string): types.KnownBlock[] {
  const [head = "", ...lines] = fitBoard(text, fits).split("\n");
  return [
    {
      type: "header",
      text: plain([...head].slice(0, limits.header).join("")),
      block_id: `${key}.0`,
    },
    ...grouped(lines).map(
      (group, index): types.KnownBlock => ({
        type: "section",
        text: plain(group),
        block_id: `${key}.${index + 1}`,
      }),
    ),
  ];
}

const plain = (text: string): types.PlainTextElement => ({
  type: "plain_text",
  text,
  emoji: false,
});

function fits(board: string): boolean {
  const [, ...lines] = board.split("\n");
  // in JSON a line's end takes two characters, a quote as well
  const used = lines.reduce<number>(
    (sum, line) => sum + JSON.stringify(line).length + 60 * Number(opensGroup(line)),
    limits.header,
  );
  return used <= limits.whole && grouped(lines).length < limits.blocks;
}

function grouped(lines: readonly string[]): readonly string[] {
  const groups: string[] = [];
  for (const line of lines) {
    const last = groups.at(-1);
    const full = last !== undefined && last.length + line.length + 1 > limits.section;
    if (last === undefined || full || opensGroup(line)) groups.push(line.slice(0, limits.section));
    else groups[groups.length - 1] = `${last}\n${line}`;
  }
  return groups.filter((group) => group.trim() !== "");
}
