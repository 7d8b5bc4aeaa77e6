"use client";
import { memo } from "react";
import { PANEL } from "../../lib/body";
import { type Face, WHOLE_VIEW } from "../../lib/export";
import { placeOf, type Remark, type Review } from "../../lib/gait";
import { type Panel, type Sheet, walkOf } from "../../lib/sheet";
import { readerInUse, useReview, useSheet } from "../_room";
import { type LayerProps, useWorkspace } from "../_workspace";
import { labelWords } from "./label-words";
import styles from "./layer.module.css";
import { LayerLabel } from "./layer-label";
import { RemarkDrawing } from "./remark-drawing";
import { remarkNumbers } from "./remark-numbers";
import { seenAt } from "./seen-at";
import { SpotRings } from "./spot-rings";

/** Remarks on the drawing, where they happen. For the eye: the margin has the same in words. */
export const RemarkLayer = memo(function RemarkLayer({ panel, view, width }: LayerProps) {
  const review = useReview();
  const rank = useWorkspace((workspace) => workspace.glance ?? workspace.remark);
  const pointed = rank === null ? undefined : review?.remarks[rank];
  const here = (remark: Remark) =>
    remark.spots.some((spot) => spot.panel === panel.id && spot.view === view);
  const found = seenAt(review, panel.id).filter(here);
  const pointedHere = pointed !== undefined && here(pointed) ? pointed : null;
  if (review === null || (found.length === 0 && pointedHere === null)) return null;
  const pixel = PANEL.width / width;
  return (
    <svg
      className={styles.layer}
      viewBox={`0 0 ${PANEL.width} ${PANEL.height}`}
      aria-hidden="true"
      focusable="false"
    >
      <Found found={found} pointed={pointedHere} {...{ review, panel, view, width }} />
      {pointedHere?.spots
        .filter((spot) => spot.panel === panel.id && spot.view === view)
        .map(({ joints }) => (
          <SpotRings
            key={joints.join(" ")}
            marks={panel.marks[view]}
            joints={joints}
            level={pointedHere.level}
            pixel={pixel}
          />
        ))}
    </svg>
  );
});

interface FoundProps extends Pick<LayerProps, "panel" | "view" | "width"> {
  readonly review: Review;
  readonly found: readonly Remark[];
  readonly pointed: Remark | null;
}

const whole = (sheet: Sheet) => sheet;

/** Sizes of a paper on screen, pixels: how large its words are, and whether there is room for any. */
const LEAST_LABELLED_PX = 60;
const NARROW_PX = 125; // several amounts would cover the figure: numbers lead to the margin, which has them
const SMALL_PAPER_PX = 150;
const LABEL_PX = { small: 12, large: 14 } as const;

/** So many are drawn whole in one view, and more would cover the figure. */
const MOST_WHOLE = 2;

/** The upper right corner, where the panel's signs hang. Pixels. */
const CORNER_PX = { width: 34, height: 32 } as const;

/** The gravest are drawn whole, the others as numbers; the one that is pointed at alone is. */
function Found({ review, found, pointed, panel, view, width }: FoundProps) {
  const { layOutRemarks, measureShipped, shapeOn } = readerInUse();
  const sheet = useSheet(whole);
  const numbers = remarkNumbers(review);
  const pixel = PANEL.width / width;
  const size = width < SMALL_PAPER_PX ? LABEL_PX.small : LABEL_PX.large;
  const face: Face = { size: size * pixel, weight: 700 };
  const alone = pointed !== null && pointed.panels.at(-1) === panel.id;
  const fits = (text: string) => measureShipped(text, face) <= WHOLE_VIEW.width;
  const ordered = alone ? [pointed, ...found.filter((one) => one !== pointed)] : found;
  const laid = layOutRemarks({
    remarks: ordered.map((remark) => ({ remark })),
    on: (remark) =>
      shapeOn(remark, { panel, view, window: WHOLE_VIEW, ...groundOf(sheet, review) }),
    window: WHOLE_VIEW,
    pixel,
    face,
    mostWhole: alone ? 1 : MOST_WHOLE,
    keepClear: view === "side" ? [corner(pixel)] : [],
    words: ({ remark }, drawn) => {
      const amount = drawn && (alone || ordered.length === 1 || width >= NARROW_PX);
      const text = amount ? labelWords(remark, fits) : String(numbers.get(remark) ?? "");
      return { text: width < LEAST_LABELLED_PX ? "" : text, numbered: !amount };
    },
  });
  return (
    <>
      {laid.map(({ one: { remark }, shape, whole: drawn }) =>
        drawn ? (
          <RemarkDrawing
            key={keyOf(remark)}
            shape={shape}
            level={remark.level}
            pixel={pixel}
            pointed={remark === pointed}
          />
        ) : null,
      )}
      {laid.map(({ one: { remark }, numbered, text, box }) =>
        text === "" ? null : (
          <LayerLabel
            key={keyOf(remark)}
            {...{ text, box, pixel, numbered }}
            level={remark.level}
          />
        ),
      )}
    </>
  );
}

function corner(pixel: number) {
  const [width, height] = [CORNER_PX.width * pixel, CORNER_PX.height * pixel];
  return { x: PANEL.width - width, y: 0, width, height };
}

function groundOf(sheet: Sheet, { legLength }: Review) {
  const walk = walkOf(sheet);
  return {
    panels: sheet.panels,
    load: sheet.head.load ?? 0,
    stretchOf: (panel: Panel) => {
      const place = placeOf(panel, walk);
      const leg = legLength.kind === "value" ? legLength.value : PANEL.plainLeg;
      return { place: Number.isFinite(place) ? place : 0, legLength: leg };
    },
  };
}

const keyOf = ({ check, title, panels }: Remark): string => `${check} ${title} ${panels.join(" ")}`;
