/**
 * The little of a canvas that drawing needs. A CanvasRenderingContext2D fits as it is; so do the
 * SVG writer beside this file and a test's notebook. Nothing is added until a drawing needs it.
 *
 * Units:   whatever the caller has translated and scaled to; `lineWidth` and dashes likewise
 */
export interface Surface {
  save(): void;
  restore(): void;
  translate(x: number, y: number): void;
  scale(x: number, y: number): void;
  beginPath(): void;
  moveTo(x: number, y: number): void;
  lineTo(x: number, y: number): void;
  quadraticCurveTo(cpx: number, cpy: number, x: number, y: number): void;
  bezierCurveTo(c1x: number, c1y: number, c2x: number, c2y: number, x: number, y: number): void;
  closePath(): void;
  fill(): void;
  stroke(): void;
  clip(): void;
  setLineDash(segments: number[]): void;
  fillText(text: string, x: number, y: number): void;
  globalAlpha: number;
  // A canvas may also hold gradients here; drawings only ever set colours.
  fillStyle: string | object;
  strokeStyle: string | object;
  lineWidth: number;
  lineCap: "butt" | "round" | "square";
  lineJoin: "bevel" | "miter" | "round";
  font: string;
  textAlign: "center" | "end" | "left" | "right" | "start";
}
