// Tells the address at which a browser opens the page: straight from the disk, with no server.
process.stdout.write(`Open this page in a browser:\n${new URL("index.html", import.meta.url).href}\n`);
