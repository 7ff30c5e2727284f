// A folder served on this machine under a path, as a page host would.
import { readFile } from "node:fs/promises";
import { createServer } from "node:http";
import { extname, join, normalize } from "node:path";

const TYPES = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript",
  ".css": "text/css",
  ".svg": "image/svg+xml",
  ".md": "text/markdown; charset=utf-8",
  ".txt": "text/plain; charset=utf-8",
};

/** Serves `folder` under `base`; gives the address and how to stop. */
export async function served(folder, base) {
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url, "http://localhost");
    const asked = pathname.startsWith(base) ? pathname.slice(base.length) : null;
    const file = asked === "" || asked?.endsWith("/") ? `${asked}index.html` : asked;
    const path = file === null ? null : normalize(join(folder, decodeURIComponent(file)));
    if (path === null || !path.startsWith(folder)) {
      response.writeHead(404).end();
      return;
    }
    readFile(path).then(
      (body) =>
        response.writeHead(200, { "content-type": TYPES[extname(path)] ?? "application/octet-stream" }).end(body),
      () => response.writeHead(404).end(),
    );
  });
  await new Promise((resolve) => server.listen(0, "127.0.0.1", resolve));
  return { address: `http://127.0.0.1:${server.address().port}${base}`, stop: () => server.close() };
}
