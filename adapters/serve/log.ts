/** Facts about an event: ids, counts, times, the cause of a failure. Never a message's text, never a secret. */
export type LogFields = Readonly<Record<string, string | number | boolean | null | undefined>>;

/** Writes one line of JSON an event. */
export interface Log {
  readonly info: (event: string, fields?: LogFields) => void;
  readonly warn: (event: string, fields?: LogFields) => void;
  readonly error: (event: string, fields?: LogFields) => void;
}

/** `write` takes one line without its end; `secrets` are blotted out wherever they turn up. */
export function makeLog(
  write: (line: string) => void,
  secrets: () => readonly string[],
  now: () => number,
): Log {
  const at = (level: string) => (event: string, fields?: LogFields) => {
    const line = JSON.stringify({ at: new Date(now()).toISOString(), level, event, ...fields });
    write(secrets().reduce((text, secret) => text.replaceAll(secret, "[secret]"), line));
  };
  return { info: at("info"), warn: at("warn"), error: at("error") };
}
