/* Requests to the tool on this machine. A study is answered line by line and ended by the next one. */

const TYPE = "application/vnd.ringstate.desk+json";
const RECORDING = "application/vnd.ringstate.desk+recording";

const fresh = () => Array.from(crypto.getRandomValues(new Uint8Array(12)), (b) => b.toString(16).padStart(2, "0")).join("");

/* A name is held by the page that has it until that page goes: a copy of the page finds it taken. */
function held(name) {
  return new Promise((answer) => {
    navigator.locks.request(`ringstate-desk-${name}`, { ifAvailable: true }, (lock) => {
      answer(lock !== null);
      return lock === null ? undefined : new Promise(() => {});
    }).catch(() => answer(true));
  });
}

/* The name of this page. A browser that duplicates a page copies its name too. */
export const tab = await (async () => {
  const known = sessionStorage.getItem("tab");
  const name = known && (!navigator.locks || await held(known)) ? known : fresh();
  if (name !== known && navigator.locks) {
    await held(name);
  }
  sessionStorage.setItem("tab", name);
  return name;
})();

async function post(action, body, signal, recording) {
  const head = JSON.stringify(body);
  const answer = await fetch(action, {
    method: "POST",
    headers: { "Content-Type": recording ? RECORDING : TYPE },
    body: recording ? new Blob([head, "\n", recording]) : head,
    credentials: "omit",
    cache: "no-store",
    signal,
  });
  if (!answer.ok) {
    throw new Error(await answer.text());
  }
  return answer;
}

export async function ask(action, body) {
  return (await post(action, body)).json();
}

export async function bytes(action, body) {
  return post(action, body);
}

/* A recording goes along behind the question, straight from its file. */
export async function review(body, recording, signal) {
  return post("review", body, signal, recording);
}

/* The tool is told now and then that its page is there. */
export function stay() {
  setInterval(() => post("here", {}).catch(() => {}), 20000);
}

let under = null;

/* No line more is wanted of the study under way. */
export function cease() {
  if (under) {
    under.abort();
    under = null;
  }
}

/* Hands over each line as it comes; of a study that is overtaken, no line more. */
export async function study(body, hear) {
  cease();
  const own = new AbortController();
  under = own;
  try {
    const answer = await post("study", { tab, ...body }, own.signal);
    const reader = answer.body.pipeThrough(new TextDecoderStream()).getReader();
    let rest = "";
    let whole = false;
    for (;;) {
      const { done, value } = await reader.read();
      if (own !== under) {
        return;
      }
      if (done && !whole) {
        throw new TypeError("broken off");
      }
      if (done) {
        return;
      }
      const lines = (rest + value).split("\n");
      rest = lines.pop();
      for (const text of lines) {
        const line = JSON.parse(text);
        if (own !== under) {
          return;
        }
        if (line.overtaken) {
          throw new Error(line.overtaken);
        }
        hear(line);
        whole = whole || line.done === true;
      }
    }
  } catch (failed) {
    if (own === under) {
      throw failed;
    }
  }
}
