/**
 * What one look at the machine can show, as mutually exclusive outcomes. A sign is written
 * "group:outcome" ("insulation:ground_fault"). One test is one group, so that correlated findings
 * of a test count once.
 */
export interface SignGroup {
  readonly group: string;
  /**
   * How often each outcome shows at a call whose cause does not touch this group: P(outcome |
   * looked at, cause elsewhere). For a test they sum to 1; for remarks (`remarks`) they are the
   * odds that the remark is made at all, and need not.
   */
  readonly background: Readonly<Record<string, number>>;
  /**
   * True for things that are mentioned only when they strike someone: silence then means nothing
   * and outcomes do not exclude each other.
   */
  readonly remarks?: true;
  /** "common practice, no source" where the frequencies are ours */
  readonly source: string;
}
