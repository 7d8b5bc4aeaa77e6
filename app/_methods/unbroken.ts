const NO_BREAK = "\u00a0";

/** A number keeps its unit or its sign on the line: "4.1 %", "± 3", "5 of". */
export function unbroken(text: string): string {
  return text.replace(/(?<=\d) (?=%|°|cm\b|mm\b)|(?<=[±<>]) (?=\d)/g, NO_BREAK);
}
