/**
 * Somebody's text as it may go to a terminal: on one line, with what would steer the terminal written
 * out. A sheet may come from anyone, and its title is printed.
 *
 * @example
 * onOneLine("up\n\u001b[2Jand off"); // => "up \\u001b[2Jand off"
 */
export function onOneLine(text: string): string {
  return withoutControls(text.replace(/[\s\u0085]*[\n\r\v\f\u0085\u2028\u2029][\s\u0085]*/g, " "));
}

/**
 * Lines with every control character but the line break written as JSON writes it, so that JSON stays
 * the same JSON.
 */
export function withoutControls(lines: string): string {
  return lines.replace(/\p{Cc}/gu, (control) =>
    control === "\n" ? control : `\\u${control.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );
}
