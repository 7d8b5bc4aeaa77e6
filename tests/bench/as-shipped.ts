import { build } from "esbuild";

/**
 * A bench's module put together as the page has it. What runs TypeScript as it lies here names every function that
 * is made while it runs, so that code of many small functions takes half as long again as it does on the page.
 *
 * Errors:  those of the build
 */
export async function asShipped(file: string): Promise<unknown> {
  const { outputFiles } = await build({
    entryPoints: [file],
    bundle: true,
    write: false,
    platform: "node",
    format: "esm",
    target: "es2023",
  });
  const [code] = outputFiles;
  if (code === undefined) throw new TypeError(`${file} was put together into nothing`);
  return import(`data:text/javascript;base64,${Buffer.from(code.contents).toString("base64")}`);
}
