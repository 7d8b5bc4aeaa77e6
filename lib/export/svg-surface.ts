import type { Surface } from "./surface";
import { svgText } from "./svg-text";

interface Pen {
  globalAlpha: number;
  fillStyle: string | object;
  strokeStyle: string | object;
  lineWidth: number;
  lineCap: Surface["lineCap"];
  lineJoin: Surface["lineJoin"];
  font: string;
  textAlign: Surface["textAlign"];
}

interface State extends Pen {
  readonly scaleX: number;
  readonly scaleY: number;
  readonly moveX: number;
  readonly moveY: number;
  readonly dash: readonly number[];
  /** Groups opened by clip() since the save() before this state. */
  readonly groups: number;
}

const FRESH: State = {
  globalAlpha: 1,
  fillStyle: "#000000",
  strokeStyle: "#000000",
  lineWidth: 1,
  lineCap: "butt",
  lineJoin: "miter",
  font: '400 10px "sans-serif"',
  textAlign: "start",
  scaleX: 1,
  scaleY: 1,
  moveX: 0,
  moveY: 0,
  dash: [],
  groups: 0,
};

const ANCHORS: Readonly<Record<Surface["textAlign"], string>> = {
  left: "start",
  start: "start",
  center: "middle",
  right: "end",
  end: "end",
};

/** Units: mm. */
interface PrintSize {
  readonly width: number;
  readonly height: number;
}

/**
 * Writes what is drawn on it as SVG. Moves and scales are worked into the numbers, so that every
 * place in the file is a place on the page; text stays text and can be searched.
 *
 * Units:   those of the page, y down, one decimal
 */
export class SvgSurface implements Surface {
  globalAlpha = FRESH.globalAlpha;
  fillStyle: string | object = FRESH.fillStyle;
  strokeStyle: string | object = FRESH.strokeStyle;
  lineWidth = FRESH.lineWidth;
  lineCap: Surface["lineCap"] = FRESH.lineCap;
  lineJoin: Surface["lineJoin"] = FRESH.lineJoin;
  font = FRESH.font;
  textAlign: Surface["textAlign"] = FRESH.textAlign;

  readonly #width: number;
  readonly #height: number;
  readonly #millimetres: PrintSize | null;
  #scaleX = FRESH.scaleX;
  #scaleY = FRESH.scaleY;
  #moveX = FRESH.moveX;
  #moveY = FRESH.moveY;
  #dash: readonly number[] = FRESH.dash;
  #groups = 0;
  #path = "";
  #clips = 0;
  readonly #saved: State[] = [];
  readonly #parts: string[] = [];

  /** @param millimetres how large the file says it is; without them a unit is a CSS pixel */
  constructor(width: number, height: number, millimetres: PrintSize | null = null) {
    this.#width = width;
    this.#height = height;
    this.#millimetres = millimetres;
  }

  save(): void {
    this.#saved.push({
      ...penOf(this),
      scaleX: this.#scaleX,
      scaleY: this.#scaleY,
      moveX: this.#moveX,
      moveY: this.#moveY,
      dash: this.#dash,
      groups: this.#groups,
    });
    this.#groups = 0;
  }

  restore(): void {
    const state = this.#saved.pop();
    if (state === undefined) return; // a canvas shrugs here, too
    this.#parts.push("</g>".repeat(this.#groups));
    Object.assign(this, penOf(state));
    this.#scaleX = state.scaleX;
    this.#scaleY = state.scaleY;
    this.#moveX = state.moveX;
    this.#moveY = state.moveY;
    this.#dash = state.dash;
    this.#groups = state.groups;
  }

  translate(x: number, y: number): void {
    this.#moveX += x * this.#scaleX;
    this.#moveY += y * this.#scaleY;
  }

  scale(x: number, y: number): void {
    this.#scaleX *= x;
    this.#scaleY *= y;
  }

  beginPath(): void {
    this.#path = "";
  }

  moveTo(x: number, y: number): void {
    this.#path += `M${this.#at(x, y)}`;
  }

  lineTo(x: number, y: number): void {
    this.#path += `L${this.#at(x, y)}`;
  }

  quadraticCurveTo(cpx: number, cpy: number, x: number, y: number): void {
    this.#path += `Q${this.#at(cpx, cpy)} ${this.#at(x, y)}`;
  }

  bezierCurveTo(c1x: number, c1y: number, c2x: number, c2y: number, x: number, y: number): void {
    this.#path += `C${this.#at(c1x, c1y)} ${this.#at(c2x, c2y)} ${this.#at(x, y)}`;
  }

  closePath(): void {
    this.#path += "Z";
  }

  fill(): void {
    this.#put(`fill="${paint(this.fillStyle)}"`);
  }

  stroke(): void {
    const scale = this.#lineScale();
    const dash = this.#dash.map((length) => decimal(length * scale)).join(" ");
    this.#put(
      [
        `fill="none" stroke="${paint(this.strokeStyle)}"`,
        `stroke-width="${decimal(this.lineWidth * scale, 2)}"`,
        this.lineCap === "butt" ? "" : `stroke-linecap="${this.lineCap}"`,
        this.lineJoin === "miter" ? "" : `stroke-linejoin="${this.lineJoin}"`,
        dash === "" ? "" : `stroke-dasharray="${dash}"`,
      ]
        .filter((attribute) => attribute !== "")
        .join(" "),
    );
  }

  clip(): void {
    this.#clips += 1;
    this.#groups += 1;
    const id = `clip${this.#clips}`;
    this.#parts.push(
      `<clipPath id="${id}"><path d="${this.#path}"/></clipPath><g clip-path="url(#${id})">`,
    );
  }

  setLineDash(segments: number[]): void {
    this.#dash = segments;
  }

  fillText(text: string, x: number, y: number): void {
    const { weight, size, family } = readFont(this.font);
    const [left, top] = this.#at(x, y).split(",");
    const anchor = ANCHORS[this.textAlign];
    this.#parts.push(
      `<text x="${left}" y="${top}" font-family="${svgText(family)}"`,
      ` font-size="${decimal(size * this.#lineScale())}" font-weight="${weight}"`,
      anchor === "start" ? "" : ` text-anchor="${anchor}"`,
      ` fill="${paint(this.fillStyle)}"${this.#opacity()}>${svgText(text)}</text>\n`,
    );
  }

  /** The whole file. `title` is what a reader program announces. */
  toSvg(title: string): string {
    const [width, height] = [decimal(this.#width), decimal(this.#height)];
    const size = this.#millimetres;
    const [wide, high] =
      size === null ? [width, height] : [`${decimal(size.width)}mm`, `${decimal(size.height)}mm`];
    return [
      `<svg xmlns="http://www.w3.org/2000/svg" width="${wide}" height="${high}"`,
      ` viewBox="0 0 ${width} ${height}" role="img">\n<title>${svgText(title)}</title>\n`,
      ...this.#parts,
      "</svg>\n",
    ].join("");
  }

  #put(paintedWith: string): void {
    if (this.#path === "") return;
    this.#parts.push(`<path d="${this.#path}" ${paintedWith}${this.#opacity()}/>\n`);
  }

  #opacity(): string {
    return this.globalAlpha >= 1 ? "" : ` opacity="${decimal(this.globalAlpha, 2)}"`;
  }

  #at(x: number, y: number): string {
    const left = x * this.#scaleX + this.#moveX;
    return `${decimal(left)},${decimal(y * this.#scaleY + this.#moveY)}`;
  }

  #lineScale(): number {
    return Math.sqrt(Math.abs(this.#scaleX * this.#scaleY));
  }
}

function penOf(pen: Pen): Pen {
  const { globalAlpha, fillStyle, strokeStyle, lineWidth, lineCap, lineJoin, font, textAlign } =
    pen;
  return { globalAlpha, fillStyle, strokeStyle, lineWidth, lineCap, lineJoin, font, textAlign };
}

function paint(style: string | object): string {
  if (typeof style !== "string") throw new TypeError("SvgSurface needs a colour, got an object");
  return svgText(style);
}

function decimal(value: number, digits = 1): string {
  if (!Number.isFinite(value)) throw new RangeError(`SvgSurface needs finite places, got ${value}`);
  const rounded = Number(value.toFixed(digits));
  return String(rounded === 0 ? 0 : rounded); // no "-0"
}

const FONT = /^(\d+) ([\d.]+)px "?([^",]+)"?/;

function readFont(font: string): { weight: string; size: number; family: string } {
  const [, weight, size, family] = FONT.exec(font) ?? [];
  if (weight === undefined || size === undefined || family === undefined) {
    throw new TypeError(`SvgSurface needs a font like '400 16px "Family"', got ${font}`);
  }
  return { weight, size: Number(size), family };
}
