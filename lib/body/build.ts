/** How the character is built, as far as a walk needs to know. */
export interface Build {
  /** Stature in head heights, 7.5 for an ordinary adult. */
  readonly headsTall: number;
  /** Leg length (hip joint to sole) as a share of stature. */
  readonly legShare: number;
  /** Stature in metres, or null while the character has none: then nothing is said in metres. */
  readonly statureMetres: number | null;
}
