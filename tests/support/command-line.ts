import { main } from "../../bin/cli";

/** Runs the command line in this process. */
export async function heelstrip(...args: string[]) {
  const out: string[] = [];
  const err: string[] = [];
  const code = await main(args, { out: (line) => out.push(line), err: (line) => err.push(line) });
  return { code, out: out.join("\n"), err };
}
