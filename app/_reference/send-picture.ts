import type { PictureStored } from "../../shared/api-answers";
import { reference as words } from "../_words";
import { PictureError } from "./picture-error";

export interface Sending {
  readonly signal: AbortSignal;
  /** The share of the bytes that has left. */
  readonly onSent: (share: number) => void;
}

/**
 * Brings a picture's bytes to the hub. By XMLHttpRequest, since fetch does not tell how far it is.
 * Answers its id, once the hub has it on its disk.
 *
 * Errors:  PictureError when the hub refuses or does not answer; AbortError when stopped
 */
export function sendPicture(
  sheetId: string,
  blob: Blob,
  { signal, onSent }: Sending,
): Promise<string> {
  return new Promise((resolve, reject) => {
    const request = new XMLHttpRequest();
    const stop = () => {
      request.abort();
      reject(signal.reason);
    };
    request.upload.onprogress = ({ loaded, total }) => onSent(total === 0 ? 0 : loaded / total);
    request.onerror = () => reject(new PictureError(words.why.unreachable, { again: true }));
    request.onload = () => {
      const answer = read(request.responseText);
      if (request.status === 201 && isStored(answer)) resolve(answer.picture);
      else reject(refusal(request.status, answer));
    };
    request.onloadend = () => signal.removeEventListener("abort", stop);
    signal.addEventListener("abort", stop);
    if (signal.aborted) return stop();
    request.open("POST", `/api/sheets/${sheetId}/pictures`);
    request.send(blob);
  });
}

function read(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null; // a proxy in between answered in words of its own
  }
}

function isStored(answer: unknown): answer is PictureStored {
  return typeof answer === "object" && answer !== null && "picture" in answer;
}

/** 5xx is the hub's own trouble and may pass; all else stays as it is. */
function refusal(status: number, answer: unknown): PictureError {
  const told = typeof answer === "object" && answer !== null && "message" in answer;
  const message = told ? String(answer.message) : `status ${status}`;
  return new PictureError(words.why.refused(message), { again: status >= 500 });
}
