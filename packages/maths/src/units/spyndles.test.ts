import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { encyclopedicDictionaryOfPolymers, fibreGarden, webster1913, woodhouseKilgour1921 } from "#ci/sources.js";
import { inUnit, sum } from "../engine/quantity/index.js";
import { cottonHanks, cottonLeas, linenLeas } from "./hanks.js";
import { inches, metres, yards } from "./length.js";
import { cottonSpindles, heers, juteHanks, juteSpyndles } from "./spyndles.js";

const reeling = "section on reeling, yarn table";

describe("the lengths of yarn that a reel measures off", () => {
  cited(
    "a spyndle of jute",
    published(woodhouseKilgour1921, reeling, "14400", "14400"),
    inUnit,
    [juteSpyndles(1), yards],
    yards,
  );
  cited(
    "a hank of jute",
    published(woodhouseKilgour1921, reeling, "3600", "3600"),
    inUnit,
    [juteHanks(1), yards],
    yards,
  );
  cited("a heer", published(woodhouseKilgour1921, reeling, "600", "600"), inUnit, [heers(1), yards], yards);
  cited(
    "a cut of 120 threads of 2 1/2 yards",
    published(woodhouseKilgour1921, reeling, "300", "300"),
    inUnit,
    [linenLeas(1), yards],
    yards,
  );
  cited(
    "24 mill-hanks of 6 cuts",
    published(woodhouseKilgour1921, "reeling", "3", "3"),
    inUnit,
    [linenLeas(144), juteSpyndles],
    juteSpyndles,
  );
  cited(
    "a heer is a 24th of a spyndle",
    published(webster1913, "Heer", "1/24", "1/24"),
    inUnit,
    [heers(1), juteSpyndles],
    juteSpyndles,
  );
  cited(
    "a spindle of cotton",
    published(webster1913, "Spindle, sense 5", "15120", "15120"),
    inUnit,
    [cottonSpindles(1), yards],
    yards,
  );
  cited(
    "a spindle of linen",
    published(webster1913, "Spindle, sense 5", "14400", "14400"),
    inUnit,
    [juteSpyndles(1), yards],
    yards,
  );
  cited("a lea of linen", published(webster1913, "Lea", "300", "300"), inUnit, [linenLeas(1), yards], yards);
  cited("a lea of cotton", published(webster1913, "Lea", "120", "120"), inUnit, [cottonLeas(1), yards], yards);
  cited(
    "a skein of eighty turns round a reel of 54 inches",
    published(webster1913, "Skein", "eighty turns", "1"),
    inUnit,
    [inches(4320), cottonLeas],
    cottonLeas,
  );
  cited(
    "a lea is a seventh of a hank of 840 yards",
    published(encyclopedicDictionaryOfPolymers, "Lea, sense 1", "120", "120"),
    inUnit,
    [cottonLeas(1), yards],
    yards,
  );
  cited(
    "a lea as a count unit of linen",
    published(encyclopedicDictionaryOfPolymers, "Lea, sense 3", "300", "300"),
    inUnit,
    [linenLeas(1), yards],
    yards,
  );
  cited(
    "1854 yards on a cone of 10/2",
    published(fibreGarden, "mercerised cotton", "696", "1695.2976", "misprint: a leading 1 is dropped"),
    inUnit,
    [yards(1854), metres],
    metres,
  );

  it("of a spindle differ between cotton and jute by 720 yards", () => {
    expect(sum(juteSpyndles(1), yards(720)).in(cottonSpindles)).toBe(1);
    expect(cottonSpindles(1).in(cottonHanks)).toBe(18);
  });

  it("of a spyndle are four hanks of 12 cuts", () => {
    expect(juteSpyndles(1).in(juteHanks)).toBe(4);
  });
});
