const jobLine = /^\d+ /;
/** A group of the board begins with a line like "Crew at work: 3". */
export const opensGroup = (line: string): boolean => /^\S.*: \d+$/.test(line);

/**
 * A board with as many jobs as fit a platform, from the top, where whoever must act stands; how many
 * do not fit is said in its last line.
 */
export function fitBoard(text: string, fits: (board: string) => boolean): string {
  if (fits(text)) return text;
  const lines = text.split("\n");
  const starts = lines.flatMap((line, index) => (index > 0 && jobLine.test(line) ? [index] : []));
  const shortened = (jobs: number): string => {
    const kept = lines.slice(0, starts[jobs]);
    const last = kept.at(-1);
    if (kept.length > 1 && last !== undefined && opensGroup(last)) kept.pop();
    const left = starts.length - jobs;
    return [
      ...kept,
      `${left} more ${left === 1 ? "job does" : "jobs do"} not fit here; ask for one by its number.`,
    ].join("\n");
  };
  let jobs = 0;
  let tooMany = starts.length;
  while (tooMany - jobs > 1) {
    const middle = (jobs + tooMany) >> 1;
    if (fits(shortened(middle))) jobs = middle;
    else tooMany = middle;
  }
  return shortened(jobs);
}
