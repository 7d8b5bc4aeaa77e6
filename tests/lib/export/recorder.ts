import type { Surface } from "../../../lib/export";

/** A surface that writes down what is drawn on it, as text to be compared. */
export interface Recorder extends Surface {
  readonly calls: string;
}

export function recorder(): Recorder {
  const said: string[] = [];
  const say = (word: string, ...numbers: number[]) => {
    said.push(word + numbers.map((value) => Number(value.toFixed(1))).join(","));
  };
  return {
    get calls() {
      return said.join(" ");
    },
    save: () => undefined,
    restore: () => undefined,
    translate: (x, y) => say("translate", x, y),
    scale: (x, y) => say("scale", x, y),
    beginPath: () => say("begin"),
    moveTo: (x, y) => say("M", x, y),
    lineTo: (x, y) => say("L", x, y),
    quadraticCurveTo: (...at) => say("Q", ...at),
    bezierCurveTo: (...at) => say("C", ...at),
    closePath: () => say("Z"),
    fill: () => say("fill"),
    stroke: () => say("stroke"),
    clip: () => say("clip"),
    setLineDash: (segments) => say("dash", ...segments),
    fillText: (text, x, y) => say(`"${text}"`, x, y),
    globalAlpha: 1,
    fillStyle: "",
    strokeStyle: "",
    lineWidth: 1,
    lineCap: "butt",
    lineJoin: "miter",
    font: "",
    textAlign: "left",
  };
}
