// The links between the pages of a site: those that lead nowhere, and the pages to which none leads.

/** What stands beside the pages and is no page of the site: the app, the printed sheets, files to take, the page of the class. */
export const isOfAnother = (file: string): boolean => /^(?:plan-a-warp|sheets|take)\/|^class\.html$/u.test(file);

const placesOf = (text: string): ReadonlySet<string> =>
  new Set([...text.matchAll(/ id="([^"]+)"/gu)].map(([, id = ""]) => id));

/** Of pages by their files, standing under `base`: each link to no page or no place on one, and each page that no other names. */
export function linkFaults(
  texts: ReadonlyMap<string, string>,
  base: string,
): { readonly dead: readonly string[]; readonly unreached: readonly string[] } {
  const places = new Map([...texts].map(([file, text]) => [file, placesOf(text)]));
  const reached = new Set<string>();
  const dead = [...texts].flatMap(([file, text]) =>
    [...text.matchAll(/<a [^>]*?href="([^"]+)"/gu)].flatMap(([, href = ""]) => {
      const to = new URL(href, `http://site${base}${file}`);
      // The app is built by itself and has tests of its own.
      if (isOfAnother(to.pathname.slice(base.length))) return [];
      if (to.host !== "site" || /\.(?:md|txt|svg|json|xlsx|js|html\.md)$/u.test(to.pathname)) return [];
      const path = decodeURIComponent(to.pathname.slice(base.length)).replace(/(^|\/)$/u, "$1index.html");
      const place = decodeURIComponent(to.hash.slice(1));
      if (path !== file) reached.add(path);
      const known = places.get(path);
      return known !== undefined && (place === "" || known.has(place)) ? [] : [`${file}: ${href}`];
    }),
  );
  const unreached = [...texts.keys()].filter((file) => file !== "404.html" && !isOfAnother(file) && !reached.has(file));
  return { dead, unreached };
}
