import { describe, expect, it } from "vitest";
import { readPictureHeader } from "../../shared/picture-header";
import reference from "../reference/picture-headers.json";

const bytesOf = (base64: string) => new Uint8Array(Buffer.from(base64, "base64"));
const JPEG = reference.rows.find(({ type }) => type === "image/jpeg")?.head ?? "";

describe("a picture's header", () => {
  it.each(reference.rows)("reads kind and size of $kind, $width by $height", (row) => {
    const { type, width, height } = row;
    expect(readPictureHeader(bytesOf(row.head))).toEqual({ type, width, height });
  });

  it.each(reference.rows)("says nothing of $kind that is cut short anywhere", (row) => {
    const bytes = bytesOf(row.head);
    const { type, width, height } = row;
    for (let length = 0; length < bytes.length; length += 1) {
      const read = readPictureHeader(bytes.subarray(0, length));
      if (read !== null) expect(read).toEqual({ type, width, height });
    }
    expect(readPictureHeader(bytes.subarray(0, 12))).toBeNull();
  });

  it("reads a progressive JPEG and one with filled markers", () => {
    const bytes = bytesOf(JPEG);
    const frame = bytes.findIndex((byte, at) => byte === 0xff && bytes[at + 1] === 0xc0);
    const progressive = bytes.with(frame + 1, 0xc2); // SOF2, ITU-T T.81 table B.1
    expect(readPictureHeader(progressive)).toMatchObject({ width: 641, height: 87 });
    const filled = Uint8Array.of(...bytes.subarray(0, frame), 0xff, 0xff, ...bytes.subarray(frame));
    expect(readPictureHeader(filled)).toMatchObject({ width: 641, height: 87 });
  });

  it("is not found in other kinds of file, whatever they are called", () => {
    const others = [
      "GIF89a\x10\0\x10\0",
      "<svg xmlns='http://www.w3.org/2000/svg'/>",
      "BM",
      "",
      "%PDF",
    ];
    for (const text of others) {
      expect(readPictureHeader(new TextEncoder().encode(text.padEnd(64, " ")))).toBeNull();
    }
    // A JPEG whose pixels begin before it said its size, and a picture of no pixels.
    expect(readPictureHeader(Uint8Array.of(0xff, 0xd8, 0xff, 0xda, 0, 4, 0, 0))).toBeNull();
    const png = bytesOf(reference.rows.find(({ kind }) => kind === "PNG")?.head ?? "");
    expect(readPictureHeader(png.with(18, 0).with(19, 0))).toBeNull();
  });
});
