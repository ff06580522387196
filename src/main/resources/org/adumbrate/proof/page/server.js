/** The program behind the page. */

async function answer(response) {
  if (!response.ok) throw new Error(response.status === 403 ? "this page is no longer let in; open it again from the terminal" : (await response.text()) || `the program answered ${response.status}`);
  return response.json();
}

/** Asks for something; what is given goes into the address. */
export async function ask(path, given = {}) {
  const query = String(new URLSearchParams(Object.entries(given).filter(([, value]) => value != null)));
  return answer(await fetch(query ? `${path}?${query}` : path, { headers: { Accept: "application/json" } }));
}

/** Sends a wish. */
export async function send(path, wish = {}) {
  return answer(await fetch(path, { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(wish) }));
}

/**
 * What the program tells by itself, until the page is closed.
 * @param {(kind: string, told: object) => void} hear also of `lost` and `found`, when the program cannot be reached and when it can be again
 */
export function listen(hear) {
  const source = new EventSource("/events");
  for (const kind of ["state", "scene", "findings", "delivery", "ended"]) {
    source.addEventListener(kind, (event) => {
      if (kind === "ended") source.close();
      hear(kind, event.data ? JSON.parse(event.data) : {});
    });
  }
  source.addEventListener("error", () => hear("lost", {}));
  source.addEventListener("open", () => hear("found", {}));
  return source;
}
