"use client";
import { type Frame, lastHeld } from "../../lib/motion";
import type { Panel, PanelId } from "../../lib/sheet";
import { useSheet } from "../_room";
import { GhostFeet, LoopHandles } from "../_time";
import { strip } from "../_words";
import { useWorkspace } from "../_workspace";
import styles from "./stage.module.css";
import { StemFoot } from "./stem-foot";
import { STRIP, type StripGeometry } from "./strip-geometry";
import type { Feet } from "./use-feet";

export interface RulerProps {
  readonly panels: readonly Panel[];
  readonly geometry: StripGeometry;
  readonly feet: Feet;
  /** Where panels would move to, while that is looked at. */
  readonly feetToBe: ReadonlyMap<PanelId, Frame>;
  readonly mayDraw: boolean;
}

const LINE_Y = 13; // px from the ruler's top
const HOLD_PX = 8; // a held pose's bar

/** The numbered line of frames. Moving a stem's foot along it changes the panel's frame. */
export function Ruler({ panels, geometry, feet, feetToBe, mayDraw }: RulerProps) {
  const exposure = useSheet((sheet) => sheet.head.exposure);
  const playFrame = useWorkspace((workspace) => workspace.playFrame);
  const frames = [...panels.map(feet.frameOf), ...feetToBe.values()];
  const first = Math.min(...frames);
  const last = Math.max(...frames);
  return (
    <fieldset className={styles.ruler} style={{ height: STRIP.ruler, width: geometry.width }}>
      <legend className="heard">{strip.ruler}</legend>
      <svg width={geometry.width} height={STRIP.ruler} aria-hidden="true">
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
          panels={panels}
          feetToBe={feetToBe}
          xOfFrame={geometry.frameX}
          lineY={LINE_Y}
          width={geometry.width}
          height={STRIP.ruler + STRIP.ghosts}
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
          frameAt={geometry.frameAt}
          feet={feet}
          mayDraw={mayDraw}
        />
      ))}
    </fieldset>
  );
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
