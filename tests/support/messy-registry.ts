/** An office's list as it comes: Windows-1252, semicolons, titles, merged headings, and rows of every kind of wrong. */
export interface Messy {
  readonly bytes: Uint8Array;
  /** lines that must be refused, in order */
  readonly bad: readonly number[];
  /** lines that are kept and must be named */
  readonly looked: readonly number[];
  /** rows that must be kept */
  readonly good: number;
}

const above = [
  "Liste der Geräte, Nord;;;;;;;;",
  ";;;;;;;;",
  ";Unit;;;Nameplate;;;;Remarks",
  ";Tag;Site;Fed from;Volts;Full charge (kg);Metering;Serial #;Notes",
];

type Kind = "good" | "bad" | "looked";

/** A row by its number: most are good, every eleventh is wrong in its own way. */
function row(n: number): { readonly cells: readonly string[]; readonly kind: Kind } {
  const site = `Müller Straße ${Math.floor(n / 50)}`;
  const tag = `IU-${n}`;
  const parent = n % 50 === 0 ? "" : `IU-${n - (n % 50)}`;
  const fine = [tag, site, parent, "208", "3,6", "expansion valve", `S${n}`, 'dach, "süd"'];
  if (n % 11 !== 5 || n % 50 === 0) return { cells: fine, kind: "good" };
  const wrong: readonly (readonly [Kind, number, string])[] = [
    ["bad", 0, ""],
    ["bad", 3, "208/230"],
    ["bad", 4, "viel"],
    ["bad", 4, "0"],
    ["bad", 5, "teapot"],
    ["bad", 2, tag],
    ["looked", 2, "BB-99"],
    ["bad", 7, "zuÃ¼ck"],
    ["bad", 0, `IU-${n - (n % 50)}`],
  ];
  const [kind, at, cell] = wrong[Math.floor(n / 11) % wrong.length] ?? ["bad", 0, ""];
  return { cells: fine.map((old, index) => (index === at ? cell : old)), kind };
}

const quoted = (cell: string): string =>
  /[";]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;

export function messyRegistry(rows: number): Messy {
  const lines = [...above];
  const bad: number[] = [];
  const looked: number[] = [];
  for (let n = 0; n < rows; n++) {
    const { cells, kind } = row(n);
    lines.push(["", ...cells].map(quoted).join(";"));
    if (kind === "bad") bad.push(lines.length);
    if (kind === "looked") looked.push(lines.length);
  }
  // a circle of three
  const circle = [rows - 3, rows - 2, rows - 1];
  for (const [index, n] of circle.entries()) {
    const line = above.length + n + 1;
    const site = "Rundweg";
    const cells = ["", `R-${index}`, site, `R-${(index + 1) % 3}`, "", "", "", "", ""];
    lines[line - 1] = cells.join(";");
    if (!bad.includes(line)) bad.push(line);
  }
  bad.sort((a, b) => a - b);
  const kept = looked.filter((line) => !bad.includes(line));
  return {
    bytes: Buffer.from(`${lines.join("\r\n")}\r\n`, "latin1"),
    bad,
    looked: kept,
    good: rows - bad.length,
  };
}
