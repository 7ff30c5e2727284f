/** The sources of the published cases; a year or an author that the copy read does not give stays open. */
interface Source {
  readonly key: string;
  readonly author: string;
  readonly title: string;
  readonly year: string;
  readonly place: string;
}

function web(key: string, author: string, title: string, year: string, place: string): Source {
  return { key, author, title, year, place };
}

const NO_DATE = "no date";

export const brooks1892: Source = web("brooks-1892", "C. P. Brooks", "Cotton Manufacturing", "1892", "Blackburn");
export const scottishTartansAuthority: Source = web(
  "sta",
  "Scottish Tartans Authority",
  "Understanding Thread Counts",
  NO_DATE,
  "tartansauthority.com",
);
export const scotclans: Source = web("scotclans", "ScotClans", "Clan Campbell Tartans", NO_DATE, "scotclans.com");
export const tartanshop: Source = web("tartanshop", "Tartanshop", "Clan Buchan Tartans", NO_DATE, "tartanshop.com");
export const gordonVirginia: Source = web(
  "gordon-virginia",
  "House of Gordon, Virginia",
  "Tartans; District tartans",
  NO_DATE,
  "houseofgordonva.com",
);
export const gordonUsa: Source = web(
  "gordon-usa",
  "House of Gordon USA",
  "Gordon tartan",
  NO_DATE,
  "houseofgordonusa.org",
);
export const maclachlan: Source = web(
  "maclachlan",
  "Clan MacLachlan Association of North America",
  "Old and modern MacLachlan",
  NO_DATE,
  "cmana.net",
);
export const marylandTartan: Source = web(
  "maryland",
  "Maryland State Tartan",
  "Tartan FAQ",
  NO_DATE,
  "marylandstatetartan.org",
);
export const newHampshireTartan: Source = web(
  "new-hampshire",
  "Wikipedia",
  "New Hampshire state tartan, quoting RSA 3:21",
  NO_DATE,
  "wikipedia.org",
);
export const californiaTartan: Source = web(
  "california",
  "Wikipedia",
  "California state tartan, quoting Assembly Bill 614 of 2001",
  NO_DATE,
  "wikipedia.org",
);
export const stateTartans: Source = web(
  "state-tartans",
  "Wikipedia",
  "List of U.S. state tartans",
  NO_DATE,
  "wikipedia.org",
);
export const westVirginiaShawl: Source = web(
  "west-virginia",
  "Official West Virginia State Tartan",
  "International certificate",
  NO_DATE,
  "officialwvstatetartan.com",
);
export const wisconsinTartan: Source = web(
  "wisconsin",
  "Authentic Wisconsin",
  "Wisconsin tartan",
  NO_DATE,
  "authenticwisconsin.com",
);
export const capeBreton: Source = web(
  "cape-breton",
  "unnamed page quoting the Scottish Tartans Society",
  "Cape Breton tartan",
  NO_DATE,
  "magurdu.com",
);
export const highCollar: Source = web(
  "high-collar",
  "High Collar",
  "Tartan: weaving and design",
  NO_DATE,
  "highcollarmagazine.com",
);
export const plaidProject: Source = web(
  "color-play-plaid",
  "author not seen",
  "Color-Play Plaid, chapter of a rigid-heddle project book, title page not seen",
  NO_DATE,
  "place not seen",
);
export const paradise2021: Source = web(
  "paradise-2021",
  "Weaving from Paradise",
  "Project 12: planning and winding the warp",
  "2021",
  "weavingfromparadise.guildford.nz",
);
export const weaveAway2012: Source = web(
  "weave-away-2012",
  "Weave Away",
  "How to make a houndstooth scarf, 16 December",
  "2012",
  "weave-away.blogspot.com",
);
export const weaveAway2013: Source = web(
  "weave-away-2013",
  "Weave Away",
  "Half way, 2 January",
  "2013",
  "weave-away.blogspot.com",
);
export const weeFolkArt: Source = web(
  "wee-folk-art",
  "Wee Folk Art",
  "Woven Asymmetric Plaid Scarf",
  NO_DATE,
  "weefolkart.com",
);
export const durhamWeaver: Source = web(
  "durham-weaver",
  "S. J. Foulkes",
  "Durham Weaver",
  "2014 to 2023",
  "durhamweaver64.blogspot.com",
);
export const degarmo: Source = web("degarmo", "degarmo.net", "Inkle design notes", NO_DATE, "degarmo.net");
export const lynneRides2017: Source = web(
  "lynne-rides-2017",
  "Lynne Rides",
  "Weaving: original programming project",
  "2017",
  "lynnerides.blogspot.com",
);
export const neilson: Source = web(
  "neilson",
  "Rosalie Neilson",
  "4-shaft warp rep sampler",
  NO_DATE,
  "rosalieneilson.com",
);
export const textilesOfIndia: Source = web(
  "textiles-of-india",
  "Textiles of India",
  "Glossary: shepherd's check",
  NO_DATE,
  "textilesofindia.in",
);
export const sutton: Source = web(
  "sutton",
  "Ann Sutton, as reported by Bergdala Spinnhus",
  "Colour-and-Weave Design",
  NO_DATE,
  "bergdalaspinnhus.com",
);
export const elliot: Source = web(
  "elliot",
  "Elliot Clan Society",
  "Weaving the Elliot tartan",
  NO_DATE,
  "elliotclan.com",
);
export const electowiki: Source = web("electowiki", "electowiki", "Hamilton method", NO_DATE, "electowiki.org");
export const birgen: Source = web(
  "birgen",
  "M. Birgen",
  "Math of Democracy, section Apportionment",
  NO_DATE,
  "workbook published as source text",
);
export const gauthmath: Source = web(
  "gauthmath",
  "Gauthmath",
  "Solved exercise 1811945446321286",
  NO_DATE,
  "gauthmath.com",
);
export const solvely: Source = web("solvely", "Solvely", "Solved exercise 459845938", NO_DATE, "solvely.ai");
export const eduCom: Source = web("edu-com", "edu.com", "Solved exercise 801462", NO_DATE, "edu.com");
export const evenRhythms: Source = web(
  "even-rhythms",
  "Tidal Club forum",
  "Bresenham and Euclidean patterns, topic 2016",
  NO_DATE,
  "club.tidalcycles.org",
);
export const dupras2011: Source = web(
  "dupras-2011",
  "M. Dupras",
  "Message to the Pd mailing list, 26 May",
  "2011",
  "Pd mailing list",
);
export const becker: Source = web("becker", "Joshua Becker", "Euclidean rhythm", NO_DATE, "iris.joshua-becker.com");
export const apostolico: Source = web(
  "apostolico",
  "A. Apostolico, G. Landau and S. Skiena",
  "Matching for run-length encoded strings, abstract",
  "1999",
  "Journal of Complexity",
);
export const yarnLife2007: Source = web(
  "yarn-life-2007",
  "Yarn Life",
  "I've reached Acceptance",
  "2007",
  "yarnlife.blogspot.com",
);
export const allFiberArts1999: Source = web(
  "all-fiber-arts-1999",
  "All Fiber Arts",
  "Warping Board",
  "1999",
  "allfiberarts.com",
);
export const wonky2023: Source = web(
  "yarns-from-the-lake-2023",
  "Yarns from the Lake",
  "Post of 20 June",
  "2023",
  "yarnsfromthelake.com",
);
export const dustBunnies2013: Source = web(
  "dust-bunnies-2013",
  "Dust Bunnies Under My Loom",
  "Posts of January",
  "2013",
  "dustbunniesundermyloom.blogspot.com",
);
export const lunaticFringe: Source = web(
  "lunatic-fringe",
  "Lunatic Fringe Yarns",
  "A Whole Lot of Counting Going On!",
  NO_DATE,
  "lunaticfringeyarns.com",
);
export const sharma2005: Source = {
  key: "sharma-2005",
  author: "G. Sharma, W. Wu and E. N. Dalal",
  title:
    "The CIEDE2000 color-difference formula: implementation notes, supplementary test data, and mathematical observations",
  year: "2005",
  place: "Color Research and Application 30(1), pp. 21-30",
};
