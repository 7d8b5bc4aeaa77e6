"use client";
import { passOn as words } from "../_words";
import { type PassOnRequest, useWorkspace } from "../_workspace";
import styles from "./pass-on.module.css";

const MOST = 0.2; // of a leg: further is another pose
const STEP = 0.005; // of a leg, as finely as a figure is placed

const WAYS = [
  { way: "up", label: words.height, hint: undefined },
  { way: "forward", label: words.forward, hint: undefined },
  { way: "aside", label: words.aside, hint: words.asideHint },
] as const;

/** Where the body goes, each way with a slider of its own. Shares of a leg. */
export function ShiftFields({ request }: { readonly request: PassOnRequest }) {
  const change = useWorkspace((workspace) => workspace.changePassOn);
  return WAYS.map(({ way, label, hint }) => (
    <label key={way} className={styles.slider} title={hint}>
      <span>
        {label}
        <b>{words.share(request[way])}</b>
      </span>
      <input
        type="range"
        min={-MOST}
        max={MOST}
        step={STEP}
        value={request[way]}
        aria-valuetext={`${words.share(request[way])} ${words.ofALeg}`}
        onChange={(event) => change({ [way]: Number(event.currentTarget.value) })}
      />
    </label>
  ));
}
