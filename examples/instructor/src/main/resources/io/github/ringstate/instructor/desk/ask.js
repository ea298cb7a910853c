/* Requests to the tool on this machine. A study is answered line by line and ended by the next one. */

const TYPE = "application/vnd.ringstate.desk+json";

export const tab = (() => {
  const known = sessionStorage.getItem("tab");
  const name = known || Array.from(crypto.getRandomValues(new Uint8Array(12)), (b) => b.toString(16).padStart(2, "0")).join("");
  sessionStorage.setItem("tab", name);
  return name;
})();

async function post(action, body, signal) {
  const answer = await fetch(action, {
    method: "POST",
    headers: { "Content-Type": TYPE },
    body: JSON.stringify(body),
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

let under = null;

/* Hands over each line as it comes; of a study that is overtaken, no line more. */
export async function study(body, hear) {
  if (under) {
    under.abort();
  }
  const own = new AbortController();
  under = own;
  try {
    const answer = await post("study", { tab, ...body }, own.signal);
    const reader = answer.body.pipeThrough(new TextDecoderStream()).getReader();
    let rest = "";
    for (;;) {
      const { done, value } = await reader.read();
      if (done || own !== under) {
        return;
      }
      const lines = (rest + value).split("\n");
      rest = lines.pop();
      for (const line of lines) {
        if (own === under) {
          hear(JSON.parse(line));
        }
      }
    }
  } catch (failed) {
    if (own === under) {
      throw failed;
    }
  }
}
