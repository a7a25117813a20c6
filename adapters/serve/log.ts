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
    write(secrets().reduce(blotted, line));
  };
  return { info: at("info"), warn: at("warn"), error: at("error") };
}

/** Quotes and strokes of a secret stand otherwise in JSON; in an address it is written in another way again. */
function blotted(line: string, secret: string): string {
  const forms = [secret, JSON.stringify(secret).slice(1, -1), encodeURIComponent(secret)];
  return forms.reduce((text, form) => text.replaceAll(form, "[secret]"), line);
}

/** For a person at a terminal: only what went wrong, in a sentence. */
export function plainLog(complain: (line: string) => void): Log {
  const say = (event: string, fields?: LogFields): void =>
    complain(String(fields?.says ?? fields?.why ?? event));
  return { info: () => {}, warn: say, error: say };
}
