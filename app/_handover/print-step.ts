/** How far a print is. `page` counts from 1. */
export type PrintStep =
  | { readonly stage: "layout" | "fonts" }
  | {
      readonly stage: "page" | "picture";
      readonly page: number;
      readonly pages: number;
    };
