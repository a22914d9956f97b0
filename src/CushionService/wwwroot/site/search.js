// A thorough search as it goes on: the same order at each effort in one stream, each answer shown as it comes. Stopping the stream
// cancels the search in the service.

import { bought, say } from "./words.js";

const EFFORTS = ["quick", "standard", "thorough"];

export async function searchLonger(order, list, state, signal) {
  list.replaceChildren();
  const lines = EFFORTS.map((effort) => JSON.stringify({ ...order, effort })).join("\n");
  try {
    state.textContent = say("js.searching", { effort: say(EFFORTS[0]) });
    const response = await fetch("/v1/quotes/stream", {
      method: "POST",
      headers: {
        "Content-Type": "application/x-ndjson",
        Accept: "application/x-ndjson",
        "Accept-Language": document.documentElement.lang,
      },
      body: `${lines}\n`,
      signal,
    });
    if (!response.ok) {
      throw new Error(`${response.status}`);
    }
    let at = 0;
    for await (const line of linesOf(response.body)) {
      const answer = JSON.parse(line);
      list.append(Object.assign(document.createElement("li"), { textContent: said(EFFORTS[at], answer) }));
      at += 1;
      state.textContent = at < EFFORTS.length ? say("js.searching", { effort: say(EFFORTS[at]) }) : "";
    }
  } catch (fault) {
    state.textContent = signal.aborted ? say("js.stopped") : say("js.none", { reason: fault.message });
  }
}

function said(effort, { yardage, title }) {
  if (!yardage) {
    return title;
  }
  const length = yardage.map((line) => `${line.label ?? line.fabric} ${bought(line.soldLength, line.soldUnit)}`).join(", ");
  return say("js.effort", { effort: say(effort), length, proven: yardage.every((line) => line.provenMinimal) ? say("js.proven") : "" });
}

async function* linesOf(body) {
  const reader = body.pipeThrough(new TextDecoderStream()).getReader();
  let rest = "";
  for (let { value, done } = await reader.read(); !done; { value, done } = await reader.read()) {
    const parts = (rest + value).split("\n");
    rest = parts.pop();
    yield* parts.filter((part) => part.trim() !== "");
  }
  if (rest.trim() !== "") {
    yield rest;
  }
}
