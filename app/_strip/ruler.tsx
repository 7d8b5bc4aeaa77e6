"use client";
import type { Frame } from "../../lib/motion";
import type { Panel, PanelId } from "../../lib/sheet";
import { GhostFeet } from "../_time";
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

/** The numbered line of frames. Moving a stem's foot along it changes the panel's frame. */
export function Ruler({ panels, geometry, feet, feetToBe, mayDraw }: RulerProps) {
  const playFrame = useWorkspace((workspace) => workspace.playFrame);
  const frames = panels.map(feet.frameOf);
  const first = Math.min(...frames);
  const last = Math.max(...frames, ...feetToBe.values());
  const ticks = panels.length === 0 ? [] : range(first, last);
  return (
    <fieldset className={styles.ruler} style={{ height: STRIP.ruler, width: geometry.width }}>
      <legend className="heard">{strip.ruler}</legend>
      <svg width={geometry.width} height={STRIP.ruler} aria-hidden="true">
        <line
          x1={geometry.frameX(first) - 14}
          x2={geometry.frameX(last) + 14}
          y1={LINE_Y}
          y2={LINE_Y}
        />
        {ticks.map((frame) => (
          <line
            key={frame}
            x1={geometry.frameX(frame)}
            x2={geometry.frameX(frame)}
            y1={LINE_Y - 4}
            y2={LINE_Y + 4}
          />
        ))}
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

function range(first: number, last: number): number[] {
  return Array.from({ length: last - first + 1 }, (_, index) => first + index);
}
