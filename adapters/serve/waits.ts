/** Pauses that end at once when it is time to stop. */
export interface Waits {
  readonly pause: (ms: number) => Promise<void>;
  readonly stop: () => void;
  readonly stopped: () => boolean;
}

export function waits(): Waits {
  let stopped = false;
  const ends = new Set<() => void>();
  return {
    pause: (ms) =>
      stopped
        ? Promise.resolve()
        : new Promise((resolve) => {
            const end = (): void => {
              clearTimeout(timer);
              ends.delete(end);
              resolve();
            };
            const timer = setTimeout(end, Math.min(ms, 2 ** 31 - 1));
            ends.add(end);
          }),
    stop: () => {
      stopped = true;
      for (const end of [...ends]) end();
    },
    stopped: () => stopped,
  };
}
