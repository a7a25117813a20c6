import { escaped } from "./escaped.ts";

interface Row {
  readonly job: string;
  readonly place: string;
  readonly state: string;
  readonly more: string[];
}

/** "41 OU-3 Saltbox Lofts, Tamsin parts 1 h 12 min": number, place and, after the last comma, who and how long. */
const jobLine = /^(\d+) (.+), ([^,]+)$/;

/**
 * The board's plain text as a table: a heading and a table for each group, a row for each job with
 * what is to be done about it. A line that is no job stands as it is.
 */
export function boardHtml(text: string): string {
  const parts: string[] = [];
  let rows: Row[] = [];
  const close = (): void => {
    if (rows.length > 0) parts.push(`<table>${heads}${rows.map(rowHtml).join("")}</table>`);
    rows = [];
  };
  const [head = "", ...lines] = text.split("\n");
  parts.push(`<p><strong>${escaped(head)}</strong></p>`);
  for (const line of lines) {
    const [, job, place, state] = jobLine.exec(line) ?? [];
    const last = rows.at(-1);
    if (job !== undefined && place !== undefined && state !== undefined) {
      rows.push({ job, place, state, more: [] });
    } else if (line.startsWith("   ") && last !== undefined) {
      last.more.push(line.trim());
    } else {
      close();
      parts.push(`<p>${escaped(line.trim())}</p>`);
    }
  }
  close();
  return parts.join("");
}

const heads = "<tr><th>Job</th><th>Where</th><th>Who, since</th></tr>";

function rowHtml({ job, place, state, more }: Row): string {
  const about = [`<strong>${escaped(place)}</strong>`, ...more.map(escaped)].join("<br>");
  return `<tr><td>${escaped(job)}</td><td>${about}</td><td>${escaped(state)}</td></tr>`;
}
