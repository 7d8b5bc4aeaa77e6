import { hueColour } from "./hue-colour";

export interface PencilSignProps {
  readonly hue: number;
  readonly className?: string | undefined;
}

/** A pencil, tip at the lower left, with a band in its owner's hue. 24 × 24 units, for the eye only. */
export function PencilSign({ hue, className }: PencilSignProps) {
  return (
    <svg className={className} viewBox="0 0 24 24" aria-hidden="true" focusable="false">
      <path d="M1 23 3.2 15.6 8.4 20.8Z" fill="#f3e3c0" stroke="#2a2926" strokeWidth="1.2" />
      <path d="M1 23 1.9 20 4 22.1Z" fill="#2a2926" />
      <path
        d="M3.2 15.6 15.6 3.2 20.8 8.4 8.4 20.8Z"
        fill="#fbf7ee"
        stroke="#2a2926"
        strokeWidth="1.2"
      />
      <path d="M7.9 10.9 15.6 3.2 20.8 8.4 13.1 16.1Z" fill={hueColour(hue)} />
      <path
        d="M15.6 3.2 17.4 1.4a1.5 1.5 0 0 1 2.1 0l3.1 3.1a1.5 1.5 0 0 1 0 2.1L20.8 8.4Z"
        fill="#2a2926"
      />
    </svg>
  );
}
