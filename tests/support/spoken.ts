const ones =
  "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(
    " ",
  );
const tens = ["", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];

function below100(n: number): string {
  if (n < 20) return ones[n] ?? "";
  const ten = tens[Math.floor(n / 10)] ?? "";
  return n % 10 === 0 ? ten : `${ten} ${ones[n % 10]}`;
}

/** "four hundred and eighty", "four hundred eighty", "four eighty" */
function whole(n: number, style: number): string {
  if (n < 100) return below100(n);
  if (n >= 1000)
    return style === 0 && n % 100 === 0 && n < 10_000 && n % 1000 !== 0
      ? `${below100(n / 100)} hundred`
      : `${whole(Math.floor(n / 1000), 1)} thousand${n % 1000 === 0 ? "" : ` ${whole(n % 1000, 1)}`}`;
  const hundreds = ones[Math.floor(n / 100)] ?? "";
  const rest = n % 100;
  if (rest === 0) return `${hundreds} hundred`;
  if (style === 0)
    return rest < 10 ? `${hundreds} oh ${ones[rest]}` : `${hundreds} ${below100(rest)}`;
  return `${hundreds} hundred ${style === 1 ? "and " : ""}${below100(rest)}`;
}

function spoken(n: number, style: number): string {
  const [int = "0", frac] = String(Math.abs(n)).split(".");
  const digits =
    frac === undefined ? "" : ` point ${[...frac].map((digit) => ones[Number(digit)]).join(" ")}`;
  const lead = frac !== undefined && int === "0" ? "" : whole(Number(int), style);
  return `${n < 0 ? "minus " : ""}${lead}${digits}`.trim();
}

/** A small number ("two") as it is spoken. */
export function digit(n: number): string {
  return ones[n] ?? "";
}

/** A number in figures, or spoken in one of three styles (0 to 2). */
export function say(n: number, style: number | undefined): string {
  return style === undefined ? String(n) : spoken(n, style);
}
