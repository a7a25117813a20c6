// Runs every measurement, each in a process of its own, and writes one table: table.md beside it.
// Figures of another machine, or of a busy one, are not to be compared: its load stands above them.
import { execFileSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { cpus, loadavg } from "node:os";
import { fileURLToPath } from "node:url";

const here = (name) => fileURLToPath(new URL(name, import.meta.url));
const run = (name) =>
  execFileSync(process.execPath, [here(name)], { encoding: "utf8", maxBuffer: 2 ** 26 });
const load = () =>
  loadavg()
    .map((one) => one.toFixed(1))
    .join(" ");

const parts = [
  ["Messages, one by one, on the disk", "durable.mjs"],
  ["Growth of the store", "growth.mjs"],
  ["500 technicians at once", "load.mjs"],
  ["Physics and judging", "physics.mjs"],
];
const lines = [
  "# What was measured",
  "",
  `Node ${process.version}, ${cpus().length} processors, load before: ${load()}.`,
  "",
  "## Reading, beside the libraries",
  "",
  "```",
  run("read.mjs").trim(),
  "```",
];
for (const [title, name] of parts) {
  const rows = run(name)
    .trim()
    .split("\n")
    .map((line) => JSON.parse(line));
  lines.push("", `## ${title}`, "", "| what | value | target |", "| --- | ---: | --- |");
  for (const { what, value, unit, target } of rows) {
    lines.push(`${`| ${what} | ${value} ${unit}`.trimEnd()} | ${target ?? ""} |`);
  }
}
lines.push("", `Load after: ${load()}.`, "");
const table = lines.join("\n");
writeFileSync(here("table.md"), table);
console.log(table);
