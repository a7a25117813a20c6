import type { types } from "@slack/bolt";

/** Slack's limits, from its Block Kit reference; the sum over a message was found in practice. */
const limits = { header: 150, section: 3000, blocks: 50, whole: 11_000 } as const;

/** A group of the board begins with a line like "Crew at work: 3". */
const opensGroup = (line: string): boolean => /^\S.*: \d+$/.test(line);

/**
 * The board as blocks: its first line as header, then a section a group, all plain text so that
 * nothing that people wrote becomes a link or a call. What does not fit is counted at the end.
 */
export function boardBlocks(text: string, key: string): types.KnownBlock[] {
  const [head = "", ...lines] = text.split("\n");
  const kept = fitting(lines, limits.whole - head.length);
  const left = lines.length - kept.length;
  const groups = grouped(kept).slice(0, limits.blocks - 2);
  const blocks: types.KnownBlock[] = [
    {
      type: "header",
      text: plain([...head].slice(0, limits.header).join("")),
      block_id: `${key}.0`,
    },
    ...groups.map(
      (group, index): types.KnownBlock => ({
        type: "section",
        text: plain(group),
        block_id: `${key}.${index + 1}`,
      }),
    ),
  ];
  if (left === 0) return blocks;
  const more = plain(`${left} more lines do not fit here; ask the bot for a job by its number.`);
  return [...blocks, { type: "context", elements: [more], block_id: `${key}.more` }];
}

const plain = (text: string): types.PlainTextElement => ({
  type: "plain_text",
  text,
  emoji: false,
});

function fitting(lines: readonly string[], room: number): readonly string[] {
  let used = 0;
  return lines.filter((line) => {
    // in JSON a line's end takes two characters, a quote as well
    used += JSON.stringify(line).length + 60 * Number(opensGroup(line));
    return used <= room;
  });
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
