/** One thing that can be measured. */
export interface Quantity {
  /** the name that files, the record and replies share */
  readonly name: string;
  /** canonical UCUM unit of `value`; null where the value is text */
  readonly unit: string | null;
}
