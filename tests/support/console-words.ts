/** What a browser says on its console of a line that is down. */
export const LINE_DOWN = /WebSocket connection to|net::ERR_/;

/** What it says of an answer that is a refusal. */
export const REFUSAL = /status of 40[0-9]/;
