import type { ApiError } from "../../shared/api-answers";

/** What came of asking the hub: an answer, its refusal, or silence. */
export type Answer<T> =
  | { readonly kind: "answer"; readonly value: T }
  | {
      readonly kind: "refused";
      readonly status: number;
      readonly code: string;
      readonly message: string;
    }
  | { readonly kind: "unreachable" };

/** How long a question waits for its answer. A request that changes something waits as long as it takes. */
const PATIENCE_MS = 15_000;

/**
 * Asks one of the hub's HTTP doors. The answer's shape is the hub's promise (`shared/api-answers`).
 *
 * Errors: none; a refusal and a silent line are answers too
 */
export async function askHub<T>(
  method: "GET" | "POST" | "PATCH" | "DELETE",
  path: string,
  body?: unknown,
): Promise<Answer<T>> {
  let response: Response;
  try {
    response = await fetch(path, {
      method,
      ...(method === "GET" ? { signal: AbortSignal.timeout(PATIENCE_MS) } : {}),
      ...(body === undefined
        ? {}
        : { headers: { "content-type": "application/json" }, body: JSON.stringify(body) }),
    });
  } catch {
    return { kind: "unreachable" };
  }
  const said: unknown = await response.json().catch(() => null);
  if (response.ok) return { kind: "answer", value: said as T };
  const { code, message } = readError(said);
  return { kind: "refused", status: response.status, code, message };
}

function readError(said: unknown): ApiError {
  if (typeof said === "object" && said !== null && "code" in said && "message" in said) {
    return { code: String(said.code), message: String(said.message) };
  }
  return { code: "unknown", message: "the server refused without saying why" };
}
