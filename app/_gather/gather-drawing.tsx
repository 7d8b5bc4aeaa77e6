"use client";
import type { RefObject } from "react";
import { PANEL } from "../../lib/body";
import type { InkStroke } from "../../lib/sheet";
import styles from "./gather.module.css";
import { boxRound, cornersOf, ROOM_FOR_HANDLES, shownBox, turnHandle } from "./gather-box";
import { wayOf } from "./way-of";

export interface GatherDrawingProps {
  readonly strokes: readonly InkStroke[];
  /** The paper's width in CSS pixels. */
  readonly width: number;
  /** Moved with the hand, without React. */
  readonly held: RefObject<SVGGElement | null>;
  readonly outline: RefObject<SVGPathElement | null>;
}

const HANDLE_PX = 5; // half a side

/** The gathered strokes, their box and its handles; and the line drawn round others. */
export function GatherDrawing({ strokes, width, held, outline }: GatherDrawingProps) {
  const pixel = PANEL.width / width;
  const ink = boxRound(strokes);
  const box = ink === null ? null : shownBox(ink, pixel);
  const half = HANDLE_PX * pixel;
  const turn = box === null ? null : turnHandle(box, pixel);
  const handles = width >= ROOM_FOR_HANDLES;
  return (
    <svg
      className={styles.drawing}
      viewBox={`0 0 ${PANEL.width} ${PANEL.height}`}
      aria-hidden="true"
      focusable="false"
    >
      <g ref={held}>
        {strokes.map(({ id, points }) => (
          <path key={id} className={styles.line} d={wayOf(points)} />
        ))}
        {box !== null && (
          <rect
            className={styles.box}
            x={box.left}
            y={box.top}
            width={box.right - box.left}
            height={box.bottom - box.top}
          />
        )}
        {box !== null && turn !== null && handles && (
          <>
            <line
              className={styles.box}
              x1={turn.x}
              y1={turn.y}
              x2={turn.x}
              y2={turn.y < box.top ? box.top : box.bottom}
            />
            <circle className={styles.handle} cx={turn.x} cy={turn.y} r={half * 1.2} />
            {cornersOf(box).map(({ corner }) => (
              <rect
                key={`${corner.x > box.left} ${corner.y > box.top}`}
                className={styles.handle}
                x={corner.x - half}
                y={corner.y - half}
                width={2 * half}
                height={2 * half}
              />
            ))}
          </>
        )}
      </g>
      <path ref={outline} className={styles.outline} />
    </svg>
  );
}
