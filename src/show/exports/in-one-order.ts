/** A value as JSON whose fields stand in one order, however it was built. */
export function inOneOrder(value: unknown): string {
  return JSON.stringify(ordered(value));
}

function ordered(value: unknown): unknown {
  if (typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) return value.map(ordered);
  const fields = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(fields.map(([name, part]) => [name, ordered(part)]));
}
