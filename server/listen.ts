import type { Server } from "node:http";

/** Errors: Error in one line, saying which setting to change, if the port cannot be had. */
export function listen(server: Server, host: string, port: number, setting = "PORT") {
  return new Promise<void>((resolve, reject) => {
    const refuse = (error: NodeJS.ErrnoException) => {
      reject(new Error(complaint(error, `port ${port} on ${host}`, setting), { cause: error }));
    };
    server.once("error", refuse);
    server.listen(port, host, () => {
      server.off("error", refuse);
      resolve();
    });
  });
}

function complaint({ code, message }: NodeJS.ErrnoException, where: string, setting: string) {
  if (code === "EADDRINUSE") {
    return `${where} is taken: stop what runs there, or choose another with ${setting}`;
  }
  if (code === "EACCES") {
    return `${where} needs more rights than this process has: choose one above 1023 with ${setting}`;
  }
  if (code === "EADDRNOTAVAIL") {
    return `${where} cannot be had: HOST needs an address of this machine`;
  }
  return `cannot listen on ${where}: ${message}`;
}
