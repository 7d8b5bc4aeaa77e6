import { type ParseArgsConfig, parseArgs } from "node:util";
import { Trouble } from "./trouble";

/**
 * Parses a command's arguments.
 * Errors: Trouble with the usage line for an option that is not known or lacks its value
 */
export function parseOptions<const T extends NonNullable<ParseArgsConfig["options"]>>(
  args: readonly string[],
  options: T,
  usage: string,
) {
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true, strict: true });
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    const [first = ""] = error.message.split(/[.\n]/);
    throw new Trouble(`${first.charAt(0).toLowerCase()}${first.slice(1)}; usage: ${usage}`);
  }
}
