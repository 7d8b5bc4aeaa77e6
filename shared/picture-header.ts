/** The kinds of picture that may lie under the paper. */
export const PICTURE_TYPES = ["image/png", "image/jpeg", "image/webp"] as const;
export type PictureType = (typeof PICTURE_TYPES)[number];

export interface PictureHeader {
  readonly type: PictureType;
  /** Pixels, as stored: an orientation noted in the file is not applied. */
  readonly width: number;
  readonly height: number;
}

/**
 * What a picture says of itself in its first bytes, whatever its name says. Null for bytes that are
 * none of the three kinds, or end before they have said how large they are.
 *
 * Source:  PNG (W3C, third edition) §11.2.2; JPEG, ITU-T T.81 §B.2.2; WebP, RFC 9649 §2.5 to 2.7
 */
export function readPictureHeader(bytes: Uint8Array): PictureHeader | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  try {
    return readPng(view) ?? readJpeg(view) ?? readWebp(view);
  } catch (error) {
    if (error instanceof RangeError) return null; // the bytes end too soon
    throw error;
  }
}

const PNG_SIGNATURE = [0x89_50_4e_47, 0x0d_0a_1a_0a] as const;
const PNG_IHDR = 0x49_48_44_52; // the chunk that comes first

function readPng(view: DataView): PictureHeader | null {
  if (view.getUint32(0) !== PNG_SIGNATURE[0] || view.getUint32(4) !== PNG_SIGNATURE[1]) return null;
  if (view.getUint32(12) !== PNG_IHDR) return null;
  return sized("image/png", view.getUint32(16), view.getUint32(20));
}

const JPEG_START = 0xff_d8;
const JPEG_SCAN = 0xda; // pixels follow; the frame's header has come before
const JPEG_FILL = 0xff; // a marker may begin with any number of these

function readJpeg(view: DataView): PictureHeader | null {
  if (view.getUint16(0) !== JPEG_START) return null;
  for (let at = 2; ; ) {
    if (view.getUint8(at) !== JPEG_FILL) return null;
    const marker = view.getUint8(at + 1);
    if (marker === JPEG_FILL) {
      at += 1;
      continue;
    }
    if (isFrame(marker)) return sized("image/jpeg", view.getUint16(at + 7), view.getUint16(at + 5));
    if (marker === JPEG_SCAN) return null;
    at += 2 + view.getUint16(at + 2);
  }
}

/** SOF0 to SOF15; three codes among them mean other things. */
function isFrame(marker: number): boolean {
  return marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
}

const RIFF = 0x52_49_46_46;
const WEBP = 0x57_45_42_50;
const VP8 = 0x56_50_38_20;
const VP8L = 0x56_50_38_4c;
const VP8X = 0x56_50_38_58;

function readWebp(view: DataView): PictureHeader | null {
  if (view.getUint32(0) !== RIFF || view.getUint32(8) !== WEBP) return null;
  const data = 20; // after the chunk's name and size
  switch (view.getUint32(12)) {
    case VP8: {
      const side = (at: number) => view.getUint16(data + at, true) & 0x3f_ff; // two bits scale
      return sized("image/webp", side(6), side(8));
    }
    case VP8L: {
      const bits = view.getUint32(data + 1, true); // 14 bits each, less one
      return sized("image/webp", (bits & 0x3f_ff) + 1, ((bits >>> 14) & 0x3f_ff) + 1);
    }
    case VP8X: {
      const width = view.getUint32(data + 4, true) & 0xff_ff_ff; // three bytes each, less one
      const height = view.getUint32(data + 6, true) >>> 8;
      return sized("image/webp", width + 1, height + 1);
    }
    default:
      return null;
  }
}

function sized(type: PictureType, width: number, height: number): PictureHeader | null {
  return width > 0 && height > 0 ? { type, width, height } : null;
}
