/** Shapes that a page and a picture draw alike; points from the upper left corner, in pt. */
export type Shape =
  | {
      readonly kind: "line";
      readonly points: readonly (readonly [x: number, y: number])[];
      readonly width: number;
      readonly gray: number;
      readonly dash?: readonly [on: number, off: number];
    }
  | {
      readonly kind: "circle";
      readonly x: number;
      readonly y: number;
      readonly radius: number;
      readonly filled: boolean;
    }
  | {
      readonly kind: "text";
      readonly x: number;
      /** of the letters' base line */
      readonly y: number;
      readonly says: string;
      readonly size: number;
      readonly anchor: "start" | "middle" | "end";
      readonly bold?: true;
      readonly gray?: number;
      /** read from below, along the left edge */
      readonly upright?: true;
    };

export interface Drawing {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
}
