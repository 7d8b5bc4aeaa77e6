import { isId, type Stroke, StrokeError, unpackStroke } from "../ink";
import type { InkStroke, StrokeId } from "./sheet";

/**
 * A stroke from its bytes, or null when they are none that we can read.
 * @param skipped told the id of a stroke that cannot be read
 */
export function readStroke(
  id: StrokeId,
  bytes: unknown,
  skipped: (id: StrokeId) => void,
): InkStroke | null {
  const stroke = bytes instanceof Uint8Array && isId(id) ? unpackedOrNull(bytes) : null;
  if (stroke === null) {
    skipped(id);
    return null;
  }
  return { id, ...stroke };
}

function unpackedOrNull(bytes: Uint8Array): Stroke | null {
  try {
    return unpackStroke(bytes);
  } catch (error) {
    if (error instanceof StrokeError) return null;
    throw error;
  }
}
