/** A value as JSON whose fields stand in one order, however it was built. */
export function inOneOrder(value: unknown): string {
  if (typeof value !== "object" || value === null) return JSON.stringify(value) ?? "null";
  if (Array.isArray(value)) return `[${value.map(inOneOrder).join(",")}]`;
  const fields = Object.entries(value)
    .filter(([, part]) => part !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, part]) => `${JSON.stringify(name)}:${inOneOrder(part)}`);
  return `{${fields.join(",")}}`;
}
