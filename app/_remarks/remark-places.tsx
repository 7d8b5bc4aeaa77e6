"use client";
import { useReview } from "../_room";
import { remarks as words } from "../_words";
import { useWorkspaceStore } from "../_workspace";
import type { RankedRemark } from "./group-remarks";
import { keepTogether } from "./keep-together";
import { LevelSign } from "./level-sign";
import styles from "./margin.module.css";
import { remarkNumbers } from "./remark-numbers";
import { useGlance } from "./use-glance";
import { usePointing } from "./use-pointing";

export interface RemarkPlacesProps {
  readonly remarks: readonly RankedRemark[];
  /** The one that the card speaks of. */
  readonly told: RankedRemark;
  readonly onAsk: (rank: number) => void;
}

/** The places where something is so: each leads there, and the card then speaks of it. */
export function RemarkPlaces({ remarks, told, onAsk }: RemarkPlacesProps) {
  return (
    <ul className={styles.places} aria-label={words.places(remarks.length)}>
      {inFrameOrder(remarks).map((one) => (
        <li key={one.rank}>
          <Place one={one} told={one === told} onAsk={onAsk} />
        </li>
      ))}
    </ul>
  );
}

const inFrameOrder = (remarks: readonly RankedRemark[]): readonly RankedRemark[] =>
  remarks.toSorted((a, b) => (a.remark.frames.at(-1) ?? 0) - (b.remark.frames.at(-1) ?? 0));

interface PlaceProps {
  readonly one: RankedRemark;
  readonly told: boolean;
  readonly onAsk: (rank: number) => void;
}

function Place({ one, told, onAsk }: PlaceProps) {
  const { remark, rank } = one;
  const workspace = useWorkspaceStore();
  const number = remarkNumbers(useReview()).get(remark);
  const { pointed, pointOut } = usePointing(one);
  const [first = 0, last = first] = [remark.frames[0], remark.frames.at(-1)];
  const frames = first === last ? String(first) : words.frames(first, last);
  const press = () => {
    onAsk(rank);
    if (pointed) workspace.getState().pointOut(null);
    else pointOut();
  };
  return (
    <button
      type="button"
      aria-pressed={pointed}
      aria-current={told}
      aria-label={words.placeNamed(remark.title, first, last)}
      onClick={press}
      {...useGlance(rank)}
    >
      <LevelSign level={remark.level} />
      {number !== undefined && <b>{number}</b>} {keepTogether(words.place(frames))}
    </button>
  );
}
