import type { Drawing, Shape } from "./drawing.ts";
import { legendOf } from "./legend.ts";
import { markShapes } from "./marks.ts";
import type { Plot, Series } from "./plot.ts";
import { type Scale, scaleOf } from "./scales.ts";

const small = 7.5;
const ink = 0;
const faint = 0.82;
const dashes = { solid: undefined, dashed: [4, 3], none: undefined } as const;

interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A plot as shapes on a sheet of so many pt; black on white, told apart by marks and dashes. */
export function draw(plot: Plot, width: number, height: number): Drawing {
  const legend = legendOf(plot, width - 60);
  const note = plot.note === "" ? 0 : 12;
  const frame: Frame = {
    left: 52,
    right: width - 12,
    top: 22 + legend.height,
    bottom: height - 32 - note,
  };
  const points = plot.series.flatMap((series) => series.points);
  const limits = plot.limits.map(({ at }) => at);
  const x = scaleOf(
    plot.x,
    points.map((point) => point[0]),
    [frame.left + 6, frame.right - 6],
  );
  const y = scaleOf(
    plot.y,
    [...points.map((point) => point[1]), ...limits],
    [frame.bottom - 4, frame.top + 4],
  );
  const shapes: readonly Shape[] = [
    text(frame.left - 44, 12, plot.title, { size: 9.5, bold: true }),
    ...legend.shapes,
    ...axes(plot, frame, { x, y }),
    ...plot.limits.flatMap(({ at, says }) =>
      limitShapes(frame, y.at(at), { says, under: isMostlyOver(points, at) }),
    ),
    ...plot.series.flatMap((series) => seriesShapes(series, x, y)),
    ...(note === 0 ? [] : [text(frame.left - 44, height - 4, plot.note, { size: 8 })]),
  ];
  return { width, height, shapes };
}

function text(
  x: number,
  y: number,
  says: string,
  style: {
    readonly size: number;
    readonly anchor?: "start" | "middle" | "end";
    readonly bold?: true;
    readonly upright?: true;
  },
): Shape {
  return { kind: "text", x, y, says, anchor: "start", ...style };
}

function axes(
  plot: Plot,
  { left, right, top, bottom }: Frame,
  { x, y }: { readonly x: Scale; readonly y: Scale },
): readonly Shape[] {
  const every = Math.ceil(x.ticks.length / 12);
  return [
    ...y.ticks.flatMap(({ value, says }): Shape[] => {
      const at = y.at(value);
      return [
        {
          kind: "line",
          points: [
            [left, at],
            [right, at],
          ],
          width: 0.5,
          gray: faint,
        },
        text(left - 4, at + 2.5, says, { size: small, anchor: "end" }),
      ];
    }),
    ...x.ticks
      .filter((_, index) => index % every === 0)
      .flatMap(({ value, says }): Shape[] => {
        const at = x.at(value);
        return [
          {
            kind: "line",
            points: [
              [at, bottom],
              [at, bottom + 3],
            ],
            width: 0.7,
            gray: ink,
          },
          text(at, bottom + 11, says, { size: small, anchor: "middle" }),
        ];
      }),
    {
      kind: "line",
      points: [
        [left, top],
        [left, bottom],
        [right, bottom],
      ],
      width: 0.8,
      gray: ink,
    },
    text((left + right) / 2, bottom + 22, plot.x.says, { size: small, anchor: "middle" }),
    text(left - 38, (top + bottom) / 2, plot.y.says, {
      size: small,
      anchor: "middle",
      upright: true,
    }),
  ];
}

/** Where most values lie over a limit its words stand under it, clear of them. */
const isMostlyOver = (points: readonly (readonly [number, number])[], limit: number): boolean =>
  points.filter((point) => point[1] > limit).length * 2 > points.length;

function limitShapes(
  { left, right }: Frame,
  at: number,
  { says, under }: { readonly says: string; readonly under: boolean },
): readonly Shape[] {
  return [
    {
      kind: "line",
      points: [
        [left, at],
        [right, at],
      ],
      width: 0.9,
      gray: 0.25,
      dash: [1.5, 2],
    },
    text(right - 2, under ? at + 8.5 : at - 3, says, { size: small, anchor: "end" }),
  ];
}

function seriesShapes(series: Series, x: Scale, y: Scale): readonly Shape[] {
  const places = series.points.map((point) => [x.at(point[0]), y.at(point[1])] as const);
  const dash = dashes[series.line];
  const line: readonly Shape[] =
    series.line === "none" || places.length < 2
      ? []
      : [
          {
            kind: "line",
            points: places,
            width: 1.1,
            gray: ink,
            ...(dash === undefined ? {} : { dash }),
          },
        ];
  // marks that touch each other are a smear: of very many only some are drawn
  const every = Math.ceil(places.length / 120);
  const marks = places
    .filter((_, index) => index % every === 0 || index === places.length - 1)
    .flatMap(([px, py]) => markShapes(series.mark, px, py));
  return [...line, ...marks];
}
