/** How events come in: Slack calls us, or we hold a socket to Slack. */
export interface Transport {
  /** Resolves once events can come; says how. */
  readonly open: () => Promise<string>;
  /** Resolves when nothing is handled any more. */
  readonly close: () => Promise<void>;
}

export interface TransportOptions {
  /** Keeps what an event holds; it was not kept where this rejects, and Slack must bring it again. */
  readonly handle: (body: unknown, retry: number) => Promise<void>;
  readonly connected: (is: boolean) => void;
  /** after every new connection: something may have been missed */
  readonly joined: () => void;
  readonly failed: (fields: { readonly why: string; readonly final: boolean }) => void;
}
