/** The fields that have a value: what was not said is absent, never undefined. */
export type Given<T extends object> = { [K in keyof T]?: Exclude<T[K], undefined> };

/** Drops the fields that are undefined. */
export function given<T extends object>(fields: T): Given<T> {
  const known: Given<T> = {};
  for (const key in fields) {
    const value = fields[key];
    if (isGiven(value)) known[key] = value;
  }
  return known;
}

function isGiven<V>(value: V): value is Exclude<V, undefined> {
  return value !== undefined;
}
