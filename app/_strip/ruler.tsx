"use client";
import { type Frame, lastHeld } from "../../lib/motion";
import type { Panel, PanelId } from "../../lib/sheet";
import { useSheet } from "../_room";
import { GhostFeet, LoopHandles } from "../_time";
import { strip } from "../_words";
import { useWorkspace } from "../_workspace";
import styles from "./stage.module.css";
import { StemFoot } from "./stem-foot";
import type { StripGeometry } from "./strip-geometry";
import type { Feet } from "./use-feet";

export interface RulerProps {
  readonly panels: readonly Panel[];
  /** Panels that are not there yet, while that is looked at. */
  readonly added: readonly Panel[];
  readonly geometry: StripGeometry;
  readonly feet: Feet;
  /** Where panels would move to, while that is looked at. */
  readonly feetToBe: ReadonlyMap<PanelId, Frame>;
  /** Pixels, with the rows of figures under the line. */
  readonly height: number;
  readonly mayDraw: boolean;
}

const LINE_Y = 13; // px from the ruler's top
const HOLD_PX = 8; // a held pose's bar

/** The numbered line of frames. Moving a stem's foot along it changes the panel's frame. */
export function Ruler({ panels, added, geometry, feet, feetToBe, height, mayDraw }: RulerProps) {
  const exposure = useSheet((sheet) => sheet.head.exposure);
  const playFrame = useWorkspace((workspace) => workspace.playFrame);
  const frames = [...panels.map(feet.frameOf), ...feetToBe.values()];
  const first = Math.min(...frames);
  const last = Math.max(...frames);
  const roomy = withRoom(panels, (panel) => geometry.frameX(feet.frameOf(panel)));
  return (
    <fieldset className={styles.ruler} style={{ height, width: geometry.width }}>
      <legend className="heard">{strip.ruler}</legend>
      <svg width={geometry.width} height={height} aria-hidden="true">
        {panels.length > 0 && <path d={rulerPath(first, last, geometry.frameX)} />}
        {panels.map((panel) => {
          if (panel.hold === 0) return null;
          const from = geometry.frameX(feet.frameOf(panel));
          const to = geometry.frameX(lastHeld({ ...panel, frame: feet.frameOf(panel) }, exposure));
          return (
            <rect
              key={panel.id}
              className={styles.hold}
              x={from}
              width={to - from}
              y={LINE_Y - HOLD_PX / 2}
              height={HOLD_PX}
              rx={HOLD_PX / 2}
            />
          );
        })}
        {playFrame !== null && (
          <path
            className={styles.playhead}
            d={`M${geometry.frameX(playFrame) - 6},0 h12 l-6,11 Z`}
          />
        )}
      </svg>
      {feetToBe.size > 0 && (
        <GhostFeet
          panels={[...panels, ...added]}
          feetToBe={feetToBe}
          xOfFrame={geometry.frameX}
          lineY={LINE_Y}
          width={geometry.width}
          height={height}
        />
      )}
      {panels.length > 1 && (
        <LoopHandles
          panels={panels}
          xOfFrame={geometry.frameX}
          frameAt={geometry.frameAt}
          mayDraw={mayDraw}
        />
      )}
      {panels.map((panel) => (
        <StemFoot
          key={panel.id}
          panel={panel}
          frame={feet.frameOf(panel)}
          x={geometry.frameX(feet.frameOf(panel))}
          hasRoom={roomy.has(panel.id)}
          frameAt={geometry.frameAt}
          feet={feet}
          mayDraw={mayDraw}
        />
      ))}
    </fieldset>
  );
}

const SHOT_NUMBER_PX = 40;

/** The panels whose shot's number can be written without running into another. */
function withRoom(panels: readonly Panel[], xOf: (panel: Panel) => number): ReadonlySet<PanelId> {
  let last = Number.NEGATIVE_INFINITY;
  const shown = panels
    .toSorted((a, b) => xOf(a) - xOf(b))
    .filter((panel) => {
      if (xOf(panel) - last < SHOT_NUMBER_PX) return false;
      last = xOf(panel);
      return true;
    });
  return new Set(shown.map(({ id }) => id));
}

const LEAST_TICK_PX = 5; // closer ticks run into a grey bar
const TICK_EVERY = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 5000, 10_000] as const;

/** The line and its ticks as one path: as many ticks as can be told apart, whatever the frames. */
function rulerPath(first: Frame, last: Frame, xOf: (frame: Frame) => number): string {
  const perFrame = xOf(first + 1) - xOf(first);
  const every = TICK_EVERY.find((frames) => frames * perFrame >= LEAST_TICK_PX) ?? last - first + 1;
  let path = `M${xOf(first) - 14},${LINE_Y}H${xOf(last) + 14}`;
  for (let frame = first; frame <= last; frame += every) {
    path += `M${xOf(frame)},${LINE_Y - 4}v8`;
  }
  return path;
}
