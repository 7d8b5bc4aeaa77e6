import { checkFiles } from "./check";
import { writeExample } from "./example";
import { printSheet } from "./print";
import { type Io, STANDARD_IO, Trouble } from "./trouble";

const HELP = `heelstrip: what will show in a walk, at the command line

  heelstrip check FILE... [--yardstick trade|life|this-walk|version] [--against OTHER.json] [--json]
      reads sheets (.json) and says what will show; the sheet's own yardstick unless another is asked for;
      by version OTHER's first whole step is the rule
  heelstrip print SHEET.json -o OUT.png|.svg [--page a4|a3|letter|tabloid] [--portrait] [--width 3840]
      prints the annotated sheet on one page, or on paper: several pages are OUT-1, OUT-2 and so on;
      exit 1 when something shows, like check
  heelstrip example [--name captured-walk|brindle] -o SHEET.json
      writes a captured walk as a sheet, or the drawn demo, to try the others on

Exit 0: nothing shows. 1: something does. 2: bad input or usage, said in one line.
70: a fault of its own.`;

/** Runs the command line. Answers its exit code; never throws for what a person can mend. */
export async function main(args: readonly string[], io: Io = STANDARD_IO): Promise<number> {
  const [command, ...rest] = args;
  if (command === "--help" || command === "-h" || command === "help") {
    io.out(HELP);
    return 0;
  }
  try {
    return await run(command, rest, io);
  } catch (error) {
    if (!(error instanceof Trouble)) throw error;
    for (const line of error.message.split("\n")) io.err(`heelstrip: ${line}`);
    return 2;
  }
}

async function run(command: string | undefined, args: string[], io: Io): Promise<number> {
  if (args.includes("--help")) {
    io.out(HELP);
    return 0;
  }
  switch (command) {
    case "check":
      return checkFiles(args, io);
    case "print":
      return printSheet(args, io);
    case "example":
      return writeExample(args, io);
    default: {
      const got = command === undefined ? "nothing" : `"${command}"`;
      throw new Trouble(`expected check, print, example or --help, got ${got}`);
    }
  }
}
