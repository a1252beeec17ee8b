// The plan is one object in SI; fields name their places in it by pointers (RFC 6901).

/** The tokens of a pointer. */
function tokens(pointer) {
  return pointer
    .split("/")
    .slice(1)
    .map((token) => token.replace(/~1/g, "/").replace(/~0/g, "~"));
}

/** What stands at a pointer; undefined for nothing. */
export function get(plan, pointer) {
  return tokens(pointer).reduce(
    (node, token) => (node === undefined || node === null ? undefined : node[token]),
    plan,
  );
}

/** Puts a value at a pointer and makes what lies above it. */
export function put(plan, pointer, value) {
  const path = tokens(pointer);
  const last = path.pop();
  let node = plan;
  path.forEach((token, i) => {
    if (node[token] === undefined || node[token] === null) {
      node[token] = /^\d+$/.test(path[i + 1] ?? last) ? [] : {};
    }
    node = node[token];
  });
  node[last] = value;
}

/** Takes away what stands at a pointer, and what lies above it while that is empty and may go. */
export function drop(plan, pointer, keep) {
  const path = tokens(pointer);
  const last = path.pop();
  const node = get(plan, path.length === 0 ? "" : "/" + path.join("/"));
  if (node === undefined || node === null) {
    return;
  }
  if (Array.isArray(node)) {
    node.splice(Number(last), 1);
  } else {
    delete node[last];
  }
  const above = "/" + path.join("/");
  if (path.length > 0 && Object.keys(node).length === 0 && !keep(above)) {
    drop(plan, above, keep);
  }
}

/** A plan as part of an address: JSON, deflated, in the letters that addresses may hold. */
export async function packed(plan) {
  const bytes = new TextEncoder().encode(JSON.stringify(plan));
  const deflated = await through(bytes, new CompressionStream("deflate-raw"));
  let binary = "";
  deflated.forEach((byte) => {
    binary += String.fromCharCode(byte);
  });
  return btoa(binary).replace(/\+/g, "-").replace(/\//g, "_").replace(/=+$/, "");
}

/** The plan that a part of an address holds. */
export async function unpacked(text) {
  const binary = atob(text.replace(/-/g, "+").replace(/_/g, "/"));
  const bytes = Uint8Array.from(binary, (letter) => letter.charCodeAt(0));
  const inflated = await through(bytes, new DecompressionStream("deflate-raw"));
  return JSON.parse(new TextDecoder().decode(inflated));
}

async function through(bytes, stream) {
  return new Uint8Array(
    await new Response(new Blob([bytes]).stream().pipeThrough(stream)).arrayBuffer(),
  );
}
