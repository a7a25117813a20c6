/** What serving waits for, and what ends it. */
export function stopSignal(): { readonly stop: Promise<void>; readonly end: () => void } {
  let end: () => void = () => {};
  const stop = new Promise<void>((resolve) => {
    end = resolve;
  });
  return { stop, end: () => end() };
}
