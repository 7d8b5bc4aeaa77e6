import type { Store } from "./store";
import type { StoreErrorCode } from "./store-error";

export interface StoreThreadData {
  readonly file: string;
  /** Another thread has brought the tables to their newest form. */
  readonly migrated: boolean;
}

/** A method of the store, asked for across the thread; `open` only asks whether it has opened. */
export interface Call {
  readonly id: number;
  readonly method: keyof Store | "open";
  readonly args: readonly unknown[];
}

export type Reply =
  | { readonly id: number; readonly result: unknown }
  | { readonly id: number; readonly error: { code: StoreErrorCode; message: string } };
