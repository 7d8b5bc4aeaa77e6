/** Playing the strip. */
export const play = {
  play: "Play the strip",
  stop: "Stop",
  hint: "Play and stop: space",
  stage: "The strip at speed",
  empty: "The strip is empty",
  speed: "Speed",
  speeds: { 1: "full", 0.5: "½", 0.25: "¼" },
  cycles: "Cycles before it begins again",
  times: { 0: "loop", 1: "×1", 2: "×2", 4: "×4" },
  shown: "Views",
  views: { both: "both", side: "side", front: "front" },
} as const;
