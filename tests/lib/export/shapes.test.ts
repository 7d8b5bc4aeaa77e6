import { describe, expect, it } from "vitest";
import {
  drawMark,
  drawSign,
  fillOutline,
  type Surface,
  traceArrowHead,
  traceBox,
  traceSide,
} from "../../../lib/export";
import { recorder } from "./recorder";

describe("what is drawn, call by call", () => {
  it("takes a canvas's 2D context as it is", () => {
    // Compiled, not run: the types say whether a context may stand where a surface is asked for.
    const asSurface = (context: CanvasRenderingContext2D): Surface => context;
    expect(asSurface).toBeTypeOf("function");
  });

  it("rounds an outline off through the middles of its edges, and closes it", () => {
    const paper = recorder();
    fillOutline(paper, [
      [0, 0],
      [4, 0],
      [4, 4],
    ]);
    expect(paper.calls).toBe("begin M2,2 Q0,0,2,0 Q4,0,4,2 Q4,4,2,2 Z fill");
  });

  it("fills no outline that encloses nothing", () => {
    const paper = recorder();
    fillOutline(paper, [
      [0, 0],
      [4, 0],
    ]);
    fillOutline(paper, []);
    expect(paper.calls).toBe("");
  });

  it("draws a box", () => {
    const paper = recorder();
    traceBox(paper, { x: 1, y: 2, width: 3, height: 4 });
    expect(paper.calls).toBe("begin M1,2 L4,2 L4,6 L1,6 Z");
  });

  it("points an arrow's head at its tip", () => {
    const paper = recorder();
    traceArrowHead(paper, { x: 0, y: 0 }, { x: 10, y: 0 }, 4);
    expect(paper.calls).toBe("begin M10,0 L6,2 L6,-2 Z");
  });

  it("points an arrow of no length somewhere instead of nowhere", () => {
    const paper = recorder();
    traceArrowHead(paper, { x: 5, y: 5 }, { x: 5, y: 5 }, 4);
    expect(paper.calls).not.toContain("NaN");
  });
});

describe("left and right without colour", () => {
  const shapeOf = (side: "left" | "right" | null) => {
    const paper = recorder();
    traceSide(paper, side, { x: 0, y: 0 }, 10);
    return paper.calls.replace(/[-\d.,]/g, "");
  };

  it("draws left round, right with four straight edges on its points, neither square", () => {
    expect(shapeOf("left")).toBe("begin M C C C C Z");
    const right = recorder();
    traceSide(right, "right", { x: 0, y: 0 }, 10);
    expect(right.calls).toBe("begin M13,0 L0,13 L-13,0 L0,-13 Z");
    const middle = recorder();
    traceSide(middle, null, { x: 0, y: 0 }, 10);
    expect(middle.calls).toBe("begin M-8.5,-8.5 L8.5,-8.5 L8.5,8.5 L-8.5,8.5 Z");
  });

  it("draws each joint by its side's shape", () => {
    const curved = (joint: "left-knee" | "right-knee" | "head") => {
      const paper = recorder();
      drawMark(paper, joint, { x: 0, y: 0, precision: 1 }, 1);
      return paper.calls.includes("C");
    };
    expect([curved("left-knee"), curved("right-knee"), curved("head")]).toEqual([
      true,
      false,
      false,
    ]);
  });
});

describe("signs without colour", () => {
  const callsOf = (kind: "shows" | "may-show" | "tidy" | "on-purpose", count?: number) => {
    const paper = recorder();
    drawSign(paper, kind, { x: 0, y: 0 }, 10, count);
    return paper.calls;
  };

  it("tells the levels apart by shape: two triangles, a filled dot, an open ring", () => {
    expect(callsOf("shows")).toContain("L");
    expect(callsOf("tidy")).toMatch(/C.*fill$/);
    expect(callsOf("on-purpose")).toMatch(/C.*stroke$/);
  });

  it("fills what shows in its colour and leaves what may show hollow", () => {
    const fills: (string | object)[] = [];
    for (const kind of ["shows", "may-show"] as const) {
      const paper = recorder();
      const fill = paper.fill;
      paper.fill = () => {
        fills.push(paper.fillStyle, paper.strokeStyle);
        fill();
      };
      drawSign(paper, kind, { x: 0, y: 0 }, 10);
      fills.push(paper.strokeStyle);
    }
    const [shows, , showsRim, may, , mayRim] = fills;
    expect(shows).toBe(showsRim);
    expect(may).not.toBe(mayRim);
  });

  it("counts up to nine and then says that there are more", () => {
    expect(callsOf("shows", 9)).toContain('"9"');
    expect(callsOf("shows", 12)).toContain('"+"');
  });
});
