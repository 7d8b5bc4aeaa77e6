import { ZodError, type z } from "zod";
import { complaint } from "../../shared/expecting";
import { ApiRefusal } from "./answer";

/** Parses a request's body. Errors: ApiRefusal 422 with one line on what was expected. */
export function parse<Schema extends z.ZodType>(schema: Schema, body: unknown): z.infer<Schema> {
  return parseWith((value) => schema.parse(value), body);
}

/** The same with a parser that throws ZodError. */
export function parseWith<Result>(read: (body: unknown) => Result, body: unknown): Result {
  try {
    return read(body);
  } catch (error) {
    if (error instanceof ZodError) throw new ApiRefusal(422, "bad-request", complaint(error));
    throw error;
  }
}
